// An answer that comes piece by piece: what has come is shown at once, and stays where the rest fails or is stopped.
import { useCallback, useEffect, useRef, useState } from "preact/hooks";
import { type Fault, faultOf } from "./fault";
import type { Asking } from "./useAsking";

export interface Streaming<T> extends Omit<Asking<T[]>, "ask" | "answer"> {
  pieces: readonly T[];
  start: (question: (signal: AbortSignal) => AsyncIterable<T>) => Promise<void>;
}

export function useStream<T>(): Streaming<T> {
  const [state, setState] = useState<{ stage: Asking<T>["stage"]; pieces: T[]; fault?: Fault }>({ stage: "idle", pieces: [] });
  const running = useRef<AbortController | undefined>(undefined);
  const last = useRef<((signal: AbortSignal) => AsyncIterable<T>) | undefined>(undefined);

  const start = useCallback(async (question: (signal: AbortSignal) => AsyncIterable<T>) => {
    running.current?.abort();
    const mine = new AbortController();
    running.current = mine;
    last.current = question;
    setState({ stage: "asking", pieces: [] });
    const isMine = () => running.current === mine;
    try {
      for await (const piece of question(mine.signal)) {
        if (!isMine()) {
          return;
        }

        setState(({ pieces }) => ({ stage: "asking", pieces: [...pieces, piece] }));
      }

      if (isMine()) {
        setState(({ pieces }) => ({ stage: "answered", pieces }));
      }
    } catch (reason) {
      if (isMine()) {
        setState(({ pieces }) => ({ stage: "failed", pieces, fault: faultOf(reason) }));
      }
    }
  }, []);
  const again = useCallback(() => void (last.current && start(last.current)), [start]);
  const stop = useCallback(() => running.current?.abort(), []);
  const clear = useCallback(() => {
    running.current?.abort();
    running.current = undefined;
    setState({ stage: "idle", pieces: [] });
  }, []);
  useEffect(() => () => running.current?.abort(), []);
  return { ...state, start, again, stop, clear };
}
