// One formula, at one of its benches.
import { useEffect, useRef, useState } from "preact/hooks";
import type { Formula } from "contract/formula_pb";
import { balances, formulas } from "../asking/service";
import { useAsking } from "../asking/useAsking";
import { FaultNote, Waiting } from "../parts/Waiting";
import { idOf } from "../words/names";
import { BenchTabs } from "./BenchTabs";
import { BowlBench } from "./BowlBench";
import { CardBench } from "./CardBench";
import { CompareBench } from "./CompareBench";
import { type Draft, draftOf, dropDraft, isUntouched, keepDraft, keptDraft, taking, wrongLines } from "./draft";
import type { Stock } from "./Kitchen";
import { OvenBench } from "./OvenBench";
import { addressOf, type Bench } from "./place";
import { SolveBench } from "./SolveBench";
import { SwapBench } from "./SwapBench";
import { TradeBench } from "./TradeBench";
import { TrialBench } from "./TrialBench";

/** What every bench works with. */
export interface BenchProps {
  draft: Draft;
  stock: Stock;
  /** Puts a found formula onto the bench, and goes to the bowl. */
  take: (found: Formula) => void;
}

const views: Record<Exclude<Bench, "bowl">, (props: BenchProps) => preact.JSX.Element> = {
  solve: SolveBench,
  compare: CompareBench,
  trade: TradeBench,
  oven: OvenBench,
  swaps: SwapBench,
  trials: TrialBench,
  cards: CardBench,
};

export async function readDraft(name: string, signal: AbortSignal): Promise<Draft> {
  const saved = await formulas.getFormula({ name }, { signal });
  const read = await balances.balanceFormula({ subject: { case: "formula", value: saved }, typicalOnly: true }, { signal });
  return draftOf(saved, read.formula ?? saved);
}

export function FormulaBenches({ name, bench, stock, refresh }: { name: string; bench: Bench; stock: Stock; refresh: () => void }) {
  const loading = useAsking<void>();
  const [draft, setDraft] = useState<Draft>();
  const heading = useRef<HTMLHeadingElement>(null);
  const change = (next: Draft) => {
    setDraft(next);
    keepDraft(next);
  };
  useEffect(() => {
    void loading.ask(async (signal) => {
      setDraft(keptDraft(name) ?? (await readDraft(name, signal)));
    });
  }, [name]);
  if (!draft) {
    return (
      <>
        <Waiting asking={loading} what="Fetching the formula." />
        <FaultNote fault={loading.fault} again={loading.again} />
      </>
    );
  }

  const take = (found: Formula) => {
    change(taking(draft, found));
    location.hash = addressOf(name);
    heading.current?.focus();
  };
  const View = bench === "bowl" ? undefined : views[bench];
  return (
    <>
      <h2 ref={heading} tabIndex={-1}>
        {draft.displayName || idOf(name)}
      </h2>
      {!isUntouched(draft) && (
        <p class="stale" role="status">
          What stands on the bench is not saved.{" "}
          <button
            type="button"
            onClick={() => {
              dropDraft(name);
              void loading.ask(async (signal) => setDraft(await readDraft(name, signal)));
            }}
          >
            Back to the saved formula
          </button>
        </p>
      )}
      <BenchTabs formula={name} bench={bench} />
      <FaultNote fault={loading.fault} again={loading.again} />
      {View === undefined ? (
        <BowlBench draft={draft} change={change} stock={stock} refresh={refresh} />
      ) : wrongLines(draft).size > 0 ? (
        <p>
          A line on the bench is no mass. <a href={addressOf(name)}>Mend it first.</a>
        </p>
      ) : (
        <View draft={draft} stock={stock} take={take} />
      )}
    </>
  );
}
