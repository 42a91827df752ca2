// The bowl of the chosen formula: a line is tapped to leave it out, or to use something else.
import { useState } from "preact/hooks";
import type { Formula, Line } from "contract/formula_pb";
import type { Ingredient } from "contract/ingredient_pb";
import { IngredientChoice } from "../parts/IngredientChoice";
import { grams } from "../words/figures";
import { countWords, idOf, nameOf, wordsOf } from "../words/names";
import { whatever, type Wish } from "./wish";

interface BowlProps {
  formula: Formula;
  pantry: readonly Ingredient[];
  wish: Wish;
  change: (wish: Wish) => void;
}

export function TappableBowl(props: BowlProps) {
  const [open, setOpen] = useState("");
  return (
    <ul class="tap-lines">
      {props.formula.lines.map((line) => (
        <TappableLine
          key={line.ingredient}
          {...props}
          line={line}
          isOpen={open === line.ingredient}
          setOpen={(isOpen) => setOpen(isOpen ? line.ingredient : "")}
        />
      ))}
    </ul>
  );
}

function TappableLine({ line, pantry, wish, change, isOpen, setOpen }: BowlProps & { line: Line; isOpen: boolean; setOpen: (isOpen: boolean) => void }) {
  const id = idOf(line.ingredient);
  const isOut = wish.without.includes(id);
  const swap = wish.swaps.find((one) => one.from === line.ingredient);
  const others = { without: wish.without.filter((one) => one !== id), swaps: wish.swaps.filter((one) => one.from !== line.ingredient) };
  const name = nameOf(line);
  const state = isOut ? "left out" : swap ? (swap.to === whatever ? "whatever fits instead" : `${wordsOf(swap.to)} instead`) : "";
  const leaveOut = () => {
    change({ ...wish, ...others, without: isOut ? others.without : [...others.without, id] });
    setOpen(false);
  };
  const use = (to: string) => {
    change({ ...wish, ...others, swaps: to ? [...others.swaps, { from: line.ingredient, to }] : others.swaps });
    setOpen(false);
  };
  return (
    <li class={state ? "tap-line changed" : "tap-line"} data-ingredient={line.ingredient}>
      <span class={isOut ? "tap-name struck" : "tap-name"}>
        {name} {line.count !== undefined && <small>{countWords(line)}</small>}
        {state && <strong class="tap-state">{state}</strong>}
      </span>
      <span class="figure">{grams(line.grams ?? 0)} g</span>
      <span class="tap-buttons">
        <button type="button" aria-pressed={isOut} onClick={leaveOut} aria-label={`Without ${name}`}>
          without
        </button>
        <button type="button" aria-expanded={isOpen} aria-pressed={swap !== undefined} onClick={() => setOpen(!isOpen)} aria-label={`Instead of ${name}`}>
          instead of
        </button>
      </span>
      {isOpen && (
        <div class="tap-choice">
          <IngredientChoice
            id={`instead-${id}`}
            label={`Instead of ${name}`}
            pantry={pantry.filter((one) => one.name !== line.ingredient)}
            first={pantry.find((one) => one.name === line.ingredient)?.role}
            value={swap && swap.to !== whatever ? swap.to : ""}
            onValue={use}
            none="choose"
            hint="The same weight is tried first, and mended where it does not balance."
          />
          <button type="button" onClick={() => use(whatever)}>
            Whatever fits best
          </button>
          {swap && (
            <button type="button" class="quiet" onClick={() => use("")}>
              Keep {name}
            </button>
          )}
        </div>
      )}
    </li>
  );
}
