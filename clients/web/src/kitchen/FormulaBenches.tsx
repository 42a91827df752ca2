// One formula and its benches.
import { useEffect, useState } from "preact/hooks";
import type { Formula } from "contract/formula_pb";
import { balances, formulas } from "../asking/service";
import { useAsking } from "../asking/useAsking";
import { FaultNote, Waiting } from "../parts/Waiting";
import { idOf } from "../words/names";
import { BowlBench } from "./BowlBench";
import { CardBench } from "./CardBench";
import { type Draft, draftOf, formulaOf, keepDraft, keptDraft } from "./draft";
import type { Stock } from "./Kitchen";
import { OvenBench } from "./OvenBench";
import { addressOf, type Bench, benches } from "./place";
import { RevisionBench } from "./RevisionBench";
import { SolveBench } from "./SolveBench";
import { SwapBench } from "./SwapBench";
import { TradeBench } from "./TradeBench";
import { TrialBench } from "./TrialBench";

const titles: Record<Bench, string> = {
  bowl: "Bowl",
  solve: "Solve",
  revisions: "Revisions",
  "trade-off": "Trade-off",
  oven: "Rise and bake",
  trials: "Trials",
  swaps: "Swaps",
  card: "Card",
};

/** What every bench has before it: the formula as it is typed, and the way to put another on the bench. */
export interface BenchProps {
  formula: Formula;
  stock: Stock;
  take: (formula: Formula) => void;
}

export async function readDraft(name: string, signal: AbortSignal): Promise<Draft> {
  const saved = await formulas.getFormula({ name }, { signal });
  const read = await balances.balanceFormula({ subject: { case: "formula", value: saved }, typicalOnly: true }, { signal });
  return draftOf(saved, read.formula ?? saved);
}

export function FormulaBenches({ name, bench, stock, refresh }: { name: string; bench: Bench; stock: Stock; refresh: () => void }) {
  const loading = useAsking<void>();
  const [draft, setDraft] = useState<Draft>();
  const change = (next: Draft) => {
    setDraft(next);
    keepDraft(next);
  };
  const load = () =>
    void loading.ask(async (signal) => {
      setDraft(keptDraft(name) ?? (await readDraft(name, signal)));
    });
  useEffect(load, [name]);
  const take = (formula: Formula) => {
    if (draft) {
      change({ ...draftOf(draft.saved, formula), slices: formula.slices === undefined ? draft.slices : String(formula.slices), lines: draftOf(formula, formula).lines, saved: { ...draft.saved, ...(formula.shape ? { shape: formula.shape } : {}) } });
      location.hash = addressOf(name);
    }
  };
  return (
    <>
      <Waiting asking={loading} what="Fetching the formula." />
      <FaultNote fault={loading.fault} again={loading.again} />
      {draft && (
        <>
          <h2>{draft.displayName || idOf(name)}</h2>
          <nav aria-label="Benches" class="tabs">
            {benches.map((one) => (
              <a key={one} href={addressOf(name, one)} aria-current={one === bench ? "page" : undefined}>
                {titles[one]}
              </a>
            ))}
          </nav>
          {bench === "bowl" && <BowlBench draft={draft} change={change} stock={stock} refresh={refresh} />}
          {bench !== "bowl" && <OtherBench bench={bench} name={name} formula={formulaOf(draft)} stock={stock} take={take} />}
        </>
      )}
    </>
  );
}

function OtherBench({ bench, name, ...props }: BenchProps & { bench: Bench; name: string }) {
  switch (bench) {
    case "solve":
      return <SolveBench {...props} />;
    case "revisions":
      return <RevisionBench name={name} />;
    case "trade-off":
      return <TradeBench {...props} />;
    case "oven":
      return <OvenBench formula={props.formula} />;
    case "trials":
      return <TrialBench name={name} />;
    case "swaps":
      return <SwapBench formula={props.formula} />;
    default:
      return <CardBench formula={props.formula} />;
  }
}
