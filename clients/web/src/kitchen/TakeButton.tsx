import type { Formula } from "contract/formula_pb";

/** Puts a found loaf onto the bench; nothing is saved by that. */
export function TakeButton({ found, take, words = "Take this loaf onto the bench" }: { found: Formula | undefined; take: (found: Formula) => void; words?: string }) {
  return found ? (
    <p>
      <button type="button" onClick={() => take(found)}>
        {words}
      </button>{" "}
      <small>Nothing is saved by that.</small>
    </p>
  ) : null;
}
