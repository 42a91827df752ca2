// One question at a time: a new one stops the one before, and a failed one can be asked again.
import { useCallback, useEffect, useRef, useState } from "preact/hooks";
import { faultOf, type Fault } from "./fault";

export interface Asking<T> {
  stage: "idle" | "asking" | "answered" | "failed";
  answer?: T;
  fault?: Fault;
  /** Asks; what was shown before stays until the new answer is there. */
  ask: (question: (signal: AbortSignal) => Promise<T>) => Promise<void>;
  again: () => void;
  stop: () => void;
  clear: () => void;
}

export function useAsking<T>(): Asking<T> {
  const [state, setState] = useState<{ stage: Asking<T>["stage"]; answer?: T; fault?: Fault }>({ stage: "idle" });
  const running = useRef<AbortController | undefined>(undefined);
  const last = useRef<((signal: AbortSignal) => Promise<T>) | undefined>(undefined);

  const ask = useCallback(async (question: (signal: AbortSignal) => Promise<T>) => {
    running.current?.abort();
    const mine = new AbortController();
    running.current = mine;
    last.current = question;
    setState((before) => ({ stage: "asking", answer: before.answer }));
    try {
      const answer = await question(mine.signal);
      if (running.current === mine) {
        setState({ stage: "answered", answer });
      }
    } catch (reason) {
      if (running.current === mine) {
        setState((before) => ({ stage: "failed", answer: before.answer, fault: faultOf(reason) }));
      }
    }
  }, []);
  const again = useCallback(() => void (last.current && ask(last.current)), [ask]);
  const stop = useCallback(() => running.current?.abort(), []);
  const clear = useCallback(() => {
    running.current?.abort();
    running.current = undefined;
    setState({ stage: "idle" });
  }, []);
  useEffect(() => () => running.current?.abort(), []);
  return { ...state, ask, again, stop, clear };
}
