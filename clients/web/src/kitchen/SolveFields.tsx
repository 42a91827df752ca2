// The question at the solving bench.
import type { AllergenStatement } from "contract/reading_pb";
import { goals, namedReadings } from "kitchen_words";
import { Choice, TextField } from "../parts/Field";
import { LeaveOut } from "../parts/LeaveOut";
import type { Draft } from "./draft";
import { type AimedReading, tasks, type Wanted } from "./solving";

interface FieldsProps {
  draft: Draft;
  wanted: Wanted;
  change: (wanted: Wanted) => void;
  allergens: AllergenStatement | undefined;
}

export function SolveFields(props: FieldsProps) {
  const { wanted, change } = props;
  return (
    <>
      <fieldset class="chips">
        <legend>What is wanted</legend>
        {tasks.map((task) => (
          <label key={task.id} class="chip">
            <input type="radio" name="task" checked={wanted.task === task.id} onChange={() => change({ ...wanted, task: task.id })} />
            <span>{task.title}</span>
          </label>
        ))}
      </fieldset>
      {wanted.task === "without" && <Without {...props} />}
      {wanted.task === "instead" && <Instead {...props} />}
      {wanted.task === "towards" && <Towards {...props} />}
      {wanted.task === "size" && <Size {...props} />}
      <Habits {...props} />
    </>
  );
}

function Without({ draft, wanted, change, allergens }: FieldsProps) {
  const toggle = (id: string) => change({ ...wanted, without: wanted.without.includes(id) ? wanted.without.filter((one) => one !== id) : [...wanted.without, id] });
  return (
    <>
      <fieldset class="chips">
        <legend>Lines to do without</legend>
        {draft.lines.map((line) => {
          const id = line.ingredient.slice("ingredients/".length);
          return (
            <label key={line.id} class="chip">
              <input type="checkbox" checked={wanted.without.includes(id)} onChange={() => toggle(id)} />
              <span>{line.displayName}</span>
            </label>
          );
        })}
      </fieldset>
      <LeaveOut allergens={allergens} wish={wanted} change={change} />
    </>
  );
}

function Instead({ draft, wanted, change }: FieldsProps) {
  return (
    <div class="row">
      <Choice id="goes-out" label="Goes out" value={wanted.ingredient} onValue={(ingredient) => change({ ...wanted, ingredient })}>
        <option value="">choose</option>
        {draft.lines.map((line) => (
          <option key={line.id} value={line.ingredient}>
            {line.displayName}
          </option>
        ))}
      </Choice>
      <TextField id="stock" label="What is left of it and stays in use" unit="g" numeric value={wanted.stock} onValue={(stock) => change({ ...wanted, stock })} hint="for acids, bases and powders; empty: all of it goes" />
    </div>
  );
}

function Towards({ wanted, change }: FieldsProps) {
  const aim = (place: number, next: Partial<AimedReading>) => change({ ...wanted, aims: wanted.aims.map((one, at) => (at === place ? { ...one, ...next } : one)) });
  return (
    <>
      <fieldset class="chips">
        <legend>What it is to become</legend>
        {goals.map((goal) => (
          <label key={goal.id} class="chip">
            <input
              type="checkbox"
              checked={wanted.goals.includes(goal.id)}
              onChange={() => change({ ...wanted, goals: wanted.goals.includes(goal.id) ? wanted.goals.filter((one) => one !== goal.id) : [...wanted.goals, goal.id] })}
            />
            <span>{goal.title}</span>
          </label>
        ))}
      </fieldset>
      {wanted.aims.map((one, place) => {
        const named = namedReadings.find((reading) => reading.id === one.reading);
        return (
          <fieldset key={one.reading} class="aim">
            <legend>
              {named?.title} <span class="unit">[{named?.unit}]</span>
            </legend>
            <div class="row">
              <TextField id={`aim-low-${one.reading}`} label="at least" numeric value={one.low} onValue={(low) => aim(place, { low })} />
              <TextField id={`aim-high-${one.reading}`} label="at most" numeric value={one.high} onValue={(high) => aim(place, { high })} />
              <button type="button" onClick={() => change({ ...wanted, aims: wanted.aims.filter((_, at) => at !== place) })}>
                Leave {named?.title} alone
              </button>
            </div>
          </fieldset>
        );
      })}
      <Choice id="aim-more" label="Move one reading to a figure" value="" onValue={(reading: string) => reading && change({ ...wanted, aims: [...wanted.aims, { reading, low: "", high: "" }] })}>
        <option value="">choose a reading</option>
        {namedReadings
          .filter((reading) => wanted.aims.every((one) => one.reading !== reading.id))
          .map((reading) => (
            <option key={reading.id} value={reading.id}>
              {reading.title} [{reading.unit}]
            </option>
          ))}
      </Choice>
    </>
  );
}

function Size({ draft, wanted, change }: FieldsProps) {
  const [length, width, height] = wanted.tin;
  return (
    <>
      <TextField id="want-slices" label="Slices" numeric value={wanted.slices} onValue={(slices) => change({ ...wanted, slices })} hint={draft.slices ? `${draft.slices} on the bench` : "as many as you need"} />
      <fieldset class="tin">
        <legend>
          Tin, inside <span class="unit">[mm]</span>
        </legend>
        <TextField id="want-length" label="Length" numeric value={length} onValue={(value) => change({ ...wanted, tin: [value, width, height] })} />
        <TextField id="want-width" label="Width" numeric value={width} onValue={(value) => change({ ...wanted, tin: [length, value, height] })} />
        <TextField id="want-height" label="Height" numeric value={height} onValue={(value) => change({ ...wanted, tin: [length, width, value] })} />
      </fieldset>
    </>
  );
}

function Habits({ wanted, change }: FieldsProps) {
  return (
    <details>
      <summary>Limits and habits</summary>
      <div class="row">
        <TextField id="want-carbs" label="Net carbs a slice, at most" unit="g" numeric value={wanted.carbs} onValue={(carbs) => change({ ...wanted, carbs })} />
        <TextField id="want-sure" label="Balances in, of 100 kitchens, at least" numeric value={wanted.sureness} onValue={(sureness) => change({ ...wanted, sureness })} hint="50 to 99; empty: no such wish" />
      </div>
      <Choice id="want-new" label="New ingredients, at most" value={wanted.newIngredients} onValue={(newIngredients) => change({ ...wanted, newIngredients })}>
        <option value="">2, as usual</option>
        {["0", "1", "2", "3", "4", "5"].map((count) => (
          <option key={count} value={count}>
            {count}
          </option>
        ))}
      </Choice>
      <label class="check">
        <input type="checkbox" checked={wanted.weighedEgg} onChange={(event) => change({ ...wanted, weighedEgg: event.currentTarget.checked })} />
        Eggs may be weighed and need not come whole
      </label>
    </details>
  );
}
