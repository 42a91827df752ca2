// How many slices, which tin, how many carbs a slice.
import type { Formula } from "contract/formula_pb";
import { TextField } from "../parts/Field";
import type { WrongWish } from "./ask";
import type { Wish } from "./wish";

export function SizeFields({ formula, wish, wrong, change }: { formula: Formula; wish: Wish; wrong: WrongWish; change: (wish: Wish) => void }) {
  const tin = formula.shape?.kind.case === "tin" ? formula.shape.kind.value : undefined;
  const [length, width, height] = wish.tin;
  return (
    <div class="sizes">
      <TextField
        id="slices"
        label="Slices"
        numeric
        value={wish.slices}
        onValue={(slices) => change({ ...wish, slices })}
        hint={formula.slices === undefined ? "as many as you need" : `${formula.slices} as it stands`}
        wrong={wrong.slices}
      />
      <fieldset class="tin">
        <legend>
          Tin, inside <span class="unit">[mm]</span>
        </legend>
        <TextField id="tin-length" label="Length" numeric value={length} onValue={(value) => change({ ...wish, tin: [value, width, height] })} wrong={wrong.tin} />
        <TextField id="tin-width" label="Width" numeric value={width} onValue={(value) => change({ ...wish, tin: [length, value, height] })} />
        <TextField id="tin-height" label="Height" numeric value={height} onValue={(value) => change({ ...wish, tin: [length, width, value] })} />
        <small class="hint">{tin ? `${tin.lengthMm} x ${tin.widthMm} x ${tin.heightMm} as it stands` : "it has no tin as it stands"}</small>
      </fieldset>
      <TextField
        id="carbs"
        label="Net carbs a slice, at most"
        unit="g"
        numeric
        value={wish.carbs}
        onValue={(carbs) => change({ ...wish, carbs })}
        hint="leave empty for no limit of your own"
        wrong={wrong.carbs}
      />
    </div>
  );
}
