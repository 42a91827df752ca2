// Readings that follow the typing: the newest grams are always asked about, older questions are stopped, and the ranges and
// cautions come once the typing rests.
import { useEffect, useRef, useState } from "preact/hooks";
import type { BalanceFormulaResponse } from "contract/balance_service_pb";
import type { Formula } from "contract/formula_pb";
import { balances } from "../asking/service";
import { type Fault, faultOf } from "../asking/fault";

/** Typing that rests so long is worth the whole question [ms]. */
const rest = 450;

export interface Live {
  /** Readings of the newest grams that were answered. */
  now?: BalanceFormulaResponse;
  /** Cautions, ranges and repair of the newest grams that rested. */
  whole?: BalanceFormulaResponse;
  isBehind: boolean;
  fault?: Fault;
  again: () => void;
}

export function useLive(formula: Formula, saved: Formula, isFit: boolean): Live {
  const [live, setLive] = useState<Omit<Live, "again">>({ isBehind: true });
  const [round, setRound] = useState(0);
  const began = useRef(0);
  const key = JSON.stringify([formula.lines.map((line) => [line.ingredient, line.grams, line.count, line.text]), formula.slices, saved.etag]);
  useEffect(() => {
    if (!isFit) {
      return;
    }

    began.current = performance.now();
    const stop = new AbortController();
    const question = { subject: { case: "formula" as const, value: formula }, bandsOf: { subject: { case: "formula" as const, value: saved } } };
    setLive((before) => ({ ...before, isBehind: true }));
    balances.balanceFormula({ ...question, typicalOnly: true }, { signal: stop.signal }).then(
      (now) => !stop.signal.aborted && setLive(({ whole }) => ({ now, ...(whole ? { whole } : {}), isBehind: true })),
      (reason) => !stop.signal.aborted && setLive((before) => ({ ...before, fault: faultOf(reason) })),
    );
    const timer = setTimeout(() => {
      balances.balanceFormula(question, { signal: stop.signal }).then(
        (whole) => !stop.signal.aborted && setLive({ now: whole, whole, isBehind: false }),
        (reason) => !stop.signal.aborted && setLive((before) => ({ ...before, fault: faultOf(reason) })),
      );
    }, rest);
    return () => {
      stop.abort();
      clearTimeout(timer);
    };
  }, [key, isFit, round]);
  useEffect(() => {
    if (live.now && began.current > 0) {
      performance.measure("typing-to-readings", { start: began.current, end: performance.now() });
      began.current = 0;
    }
  }, [live.now]);
  return { ...live, again: () => setRound((before) => before + 1) };
}
