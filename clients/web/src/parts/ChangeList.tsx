// What to add, to leave out and to change, before anything else.
import type { Change } from "contract/answer_pb";
import { grams } from "../words/figures";
import { nameOf, pieces } from "../words/names";
import { Glyph, type GlyphName } from "./Glyph";

interface Group {
  title: string;
  sign: GlyphName;
  changes: Change[];
}

export function ChangeList({ changes }: { changes: readonly Change[] }) {
  const real = changes.filter((change) => change.beforeGrams !== change.afterGrams);
  const groups: Group[] = [
    { title: "Leave out", sign: "out" as const, changes: real.filter((change) => change.afterGrams === 0) },
    { title: "Add", sign: "in" as const, changes: real.filter((change) => change.beforeGrams === 0) },
    { title: "Take more", sign: "more" as const, changes: real.filter((change) => change.beforeGrams > 0 && change.afterGrams > change.beforeGrams) },
    { title: "Take less", sign: "less" as const, changes: real.filter((change) => change.afterGrams > 0 && change.afterGrams < change.beforeGrams) },
  ].filter((group) => group.changes.length > 0);
  if (groups.length === 0) {
    return <p class="unchanged">Nothing else changes.</p>;
  }

  return (
    <div class="changes">
      {groups.map((group) => (
        <section key={group.title} class={`change change-${group.sign}`}>
          <h3 class="change-title">
            <Glyph of={group.sign} />
            {group.title}
          </h3>
          <ul>
            {group.changes.map((change) => (
              <li key={change.ingredient} data-ingredient={change.ingredient} data-before={change.beforeGrams} data-after={change.afterGrams}>
                <strong>{nameOf(change)}</strong> <span class="amount">{amount(change)}</span>
                {change.reason && <small>{change.reason}</small>}
              </li>
            ))}
          </ul>
        </section>
      ))}
    </div>
  );
}

function amount(change: Change): string {
  const [before, after] = [one(change, change.beforeGrams, change.beforeCount), one(change, change.afterGrams, change.afterCount)];
  return change.afterGrams === 0 ? before : change.beforeGrams === 0 ? after : `${before} becomes ${after}`;
}

function one(change: Change, mass: number, count: number | undefined): string {
  return count !== undefined && count > 0 ? `${pieces(change.ingredient, count)} (${grams(mass)} g)` : `${grams(mass)} g`;
}
