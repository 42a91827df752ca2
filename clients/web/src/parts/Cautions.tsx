// Cautions, each at the place where its danger is. One that has no such place stands with the changes; none is left away.
import type { Formula } from "contract/formula_pb";
import type { AllergenStatement } from "contract/reading_pb";
import { nameOf } from "../words/names";
import { Glyph } from "./Glyph";

export interface PlacedCautions {
  /** By resource name of the line. */
  byLine: Map<string, string[]>;
  oven: string[];
  slice: string[];
  allergens: string[];
  first: string[];
}

const aboutOven = /core has reached|core temperature|in the oven|slice at|raw inside|probe/i;
const aboutSlice = /^net carbs|^a slice|estimates with ranges/i;
const aboutAllergens = /allergen|label of every packet|^contains by|^may contain|free-from|^this brings in/i;

export function place(cautions: readonly string[], formula: Formula | undefined, allergens?: AllergenStatement): PlacedCautions {
  const placed: PlacedCautions = { byLine: new Map(), oven: [], slice: [], allergens: [], first: [] };
  for (const caution of new Set([...cautions, ...(allergens?.caution ? [allergens.caution] : [])])) {
    const line = formula?.lines.find((one) => caution.startsWith(`About ${nameOf(one)}: `));
    if (line) {
      placed.byLine.set(line.ingredient, [...(placed.byLine.get(line.ingredient) ?? []), caution.slice(`About ${nameOf(line)}: `.length)]);
    } else {
      (aboutAllergens.test(caution) ? placed.allergens : aboutOven.test(caution) ? placed.oven : aboutSlice.test(caution) ? placed.slice : placed.first).push(caution);
    }
  }

  return placed;
}

export function CautionList({ cautions }: { cautions: readonly string[] }) {
  return cautions.length === 0 ? null : (
    <ul class="cautions" aria-label="Cautions">
      {cautions.map((caution) => (
        <li key={caution}>
          <Glyph of="care" />
          <span>{caution}</span>
        </li>
      ))}
    </ul>
  );
}
