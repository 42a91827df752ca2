// The published formulas, to choose one of.
import type { Formula } from "contract/formula_pb";
import { idOf } from "../words/names";

export function FormulaShelf(props: { shelf: readonly Formula[]; chosen: string; choose: (name: string) => void }) {
  return (
    <fieldset class="shelf">
      <legend>Formula</legend>
      {props.shelf.map((formula) => (
        <label key={formula.name} class="shelf-item">
          <input
            type="radio"
            name="formula"
            value={idOf(formula.name)}
            checked={formula.name === props.chosen}
            onChange={() => props.choose(formula.name)}
          />
          <span>{formula.displayName || idOf(formula.name)}</span>
        </label>
      ))}
    </fieldset>
  );
}
