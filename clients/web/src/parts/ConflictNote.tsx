// Why there is no answer, and the ways out of it.
import type { Conflict } from "contract/answer_pb";

export function ConflictNote(props: { conflict: readonly Conflict[]; ways: (conflict: Conflict) => { words: string; take: () => void } | undefined }) {
  return (
    <div class="conflict">
      <p>{props.conflict.length === 1 ? "This stands in the way:" : "These stand in each other's way; if one gives way the rest can be kept:"}</p>
      <ul>
        {props.conflict.map((wish) => {
          const way = props.ways(wish);
          return (
            <li key={wish.wish} data-wish={wish.wish}>
              <p>{wish.words || wish.wish}</p>
              {way && (
                <button type="button" onClick={way.take}>
                  {way.words}
                </button>
              )}
            </li>
          );
        })}
      </ul>
    </div>
  );
}
