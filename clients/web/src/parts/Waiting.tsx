// What a question is doing: asked and not yet answered, or failed, each with a way on.
import { useEffect, useState } from "preact/hooks";
import type { Asking } from "../asking/useAsking";
import type { Fault } from "../asking/fault";
import { Glyph } from "./Glyph";

/** After so long a wait is remarked on [ms]. */
const long = 3000;

export function Waiting({ asking, what }: { asking: Pick<Asking<unknown>, "stage" | "stop">; what: string }) {
  return (
    <div class="waiting" role="status">
      {asking.stage === "asking" && <Asked what={what} stop={asking.stop} />}
    </div>
  );
}

function Asked({ what, stop }: { what: string; stop: () => void }) {
  const [isLong, setLong] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setLong(true), long);
    return () => clearTimeout(timer);
  }, []);
  return (
    <p>
      <span class="turning" aria-hidden="true" />
      {what} {isLong && "It takes longer than usual; nothing is lost while you wait."}{" "}
      {isLong && (
        <button type="button" class="quiet" onClick={stop}>
          Stop
        </button>
      )}
    </p>
  );
}

export function FaultNote({ fault, again }: { fault: Fault | undefined; again?: (() => void) | undefined }) {
  return (
    <div role="alert" class="fault-place">
      {fault && (
        <div class="fault">
          <p>
            <Glyph of="care" />
            <strong>{fault.title}</strong> {fault.wayOut}
          </p>
          {fault.fields.length > 0 && (
            <ul>
              {fault.fields.map((wrong) => (
                <li key={wrong.field + wrong.words}>
                  <b class="field-path">{wrong.field}</b>: {wrong.words}
                </li>
              ))}
            </ul>
          )}
          {again && (
            <button type="button" onClick={again}>
              Try again
            </button>
          )}
        </div>
      )}
    </div>
  );
}
