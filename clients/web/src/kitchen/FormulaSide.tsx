// The formulas of the kitchen.
import { useState } from "preact/hooks";
import type { Formula } from "contract/formula_pb";
import { TextField } from "../parts/Field";
import { idOf } from "../words/names";
import { addressOf, pantryAddress, type Place } from "./place";

export function FormulaSide({ shelf, place }: { shelf: readonly Formula[]; place: Place }) {
  const [words, setWords] = useState("");
  const shown = shelf.filter((formula) => `${formula.displayName} ${formula.name}`.toLowerCase().includes(words.trim().toLowerCase()));
  const isElsewhere = place.formula !== "" || place.isPantry;
  return (
    <nav aria-label="Formulas">
      <details class="side-fold" open={!isElsewhere || !isNarrow()} key={place.formula}>
        <summary>Formulas and packets</summary>
      <p class="pantry-link">
        <a href={pantryAddress} aria-current={place.isPantry ? "page" : undefined}>
          Packets in the pantry
        </a>
      </p>
      {shelf.length > 8 && <TextField id="find-formula" label="Find a formula" value={words} onValue={setWords} />}
      <ul class="side-list">
        {shown.map((formula) => (
          <li key={formula.name}>
            <a href={addressOf(formula.name)} aria-current={place.formula === formula.name ? "page" : undefined}>
              {formula.displayName || idOf(formula.name)}
            </a>{" "}
            <small>{standing(formula)}</small>
          </li>
        ))}
      </ul>
      </details>
    </nav>
  );
}

/** On a phone the bench comes first. */
function isNarrow(): boolean {
  return matchMedia("(max-width: 60rem)").matches;
}

function standing(formula: Formula): string {
  if (formula.revision === undefined) {
    return "shipped";
  }

  return `revision ${formula.revision}${formula.publishedRevision === undefined ? "" : `, ${formula.publishedRevision} published`}`;
}
