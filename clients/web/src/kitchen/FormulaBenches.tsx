// One formula on the bench.
import { useEffect, useState } from "preact/hooks";
import { balances, formulas } from "../asking/service";
import { useAsking } from "../asking/useAsking";
import { FaultNote, Waiting } from "../parts/Waiting";
import { idOf } from "../words/names";
import { BowlBench } from "./BowlBench";
import { type Draft, draftOf, keepDraft, keptDraft } from "./draft";
import type { Stock } from "./Kitchen";

export async function readDraft(name: string, signal: AbortSignal): Promise<Draft> {
  const saved = await formulas.getFormula({ name }, { signal });
  const read = await balances.balanceFormula({ subject: { case: "formula", value: saved }, typicalOnly: true }, { signal });
  return draftOf(saved, read.formula ?? saved);
}

export function FormulaBenches({ name, stock, refresh }: { name: string; stock: Stock; refresh: () => void }) {
  const loading = useAsking<void>();
  const [draft, setDraft] = useState<Draft>();
  const change = (next: Draft) => {
    setDraft(next);
    keepDraft(next);
  };
  useEffect(() => {
    void loading.ask(async (signal) => {
      setDraft(keptDraft(name) ?? (await readDraft(name, signal)));
    });
  }, [name]);
  return (
    <>
      <Waiting asking={loading} what="Fetching the formula." />
      <FaultNote fault={loading.fault} again={loading.again} />
      {draft && (
        <>
          <h2>{draft.displayName || idOf(name)}</h2>
          <BowlBench draft={draft} change={change} stock={stock} refresh={refresh} />
        </>
      )}
    </>
  );
}
