// What is in one slice, and which allergens are in the loaf.
import type { AllergenSource, AllergenStatement, Nutrition, NutritionFacts } from "contract/reading_pb";
import { fixed } from "../words/figures";
import { wordsOf } from "../words/names";

const rows: [title: string, unit: string, of: (facts: NutritionFacts) => number | undefined, decimals: number][] = [
  ["net carbs", "g", (facts) => facts.netCarbsG, 2],
  ["energy", "kcal", (facts) => facts.energyKcal, 0],
  ["fat", "g", (facts) => facts.fatG, 1],
  ["of which saturated", "g", (facts) => facts.saturatedFatG, 1],
  ["carbohydrate with fibre", "g", (facts) => facts.carbohydrateG, 1],
  ["fibre", "g", (facts) => facts.fibreG, 1],
  ["sugars", "g", (facts) => facts.sugarsG, 1],
  ["polyols", "g", (facts) => facts.polyolsG, 1],
  ["protein", "g", (facts) => facts.proteinG, 1],
  ["sodium", "mg", (facts) => facts.sodiumMg, 0],
];

export function SliceTable({ nutrition }: { nutrition: Nutrition }) {
  const { perSlice, per100g } = nutrition;
  if (!perSlice || !per100g) {
    return null;
  }

  return (
    <>
      <table class="slice">
        <caption>In a slice of {perSlice.massG.toFixed(0)} g</caption>
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col" class="figure">A slice</th>
            <th scope="col" class="figure">100 g</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([title, unit, of, decimals]) => (
            <tr key={title} data-fact={title} data-value={of(perSlice)}>
              <th scope="row">{title}</th>
              <td class="figure">{withUnit(of(perSlice), decimals, unit)}</td>
              <td class="figure">{withUnit(of(per100g), decimals, unit)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="small">Net carbs: {nutrition.netCarbsConvention}</p>
    </>
  );
}

function withUnit(figure: number | undefined, decimals: number, unit: string): string {
  return figure === undefined ? "not known" : `${fixed(figure, decimals)} ${unit}`;
}

export function Allergens({ statement }: { statement: AllergenStatement | undefined }) {
  if (!statement) {
    return null;
  }

  return (
    <dl class="allergens">
      <Sources title="Contains (US list)" sources={statement.us} />
      <Sources title="Contains (EU list)" sources={statement.eu} />
      {statement.mayContain.length > 0 && <Sources title="May contain" sources={statement.mayContain} />}
      {statement.notStated.length > 0 && (
        <>
          <dt>Allergens never stated</dt>
          <dd>{statement.notStated.map(wordsOf).join(", ")}: read the packet</dd>
        </>
      )}
    </dl>
  );
}

function Sources({ title, sources }: { title: string; sources: readonly AllergenSource[] }) {
  return (
    <>
      <dt>{title}</dt>
      <dd>{sources.length === 0 ? "none by the facts of the ingredients" : sources.map((one) => `${wordsOf(one.allergen)} (${one.ingredients.map(wordsOf).join(", ")})`).join("; ")}</dd>
    </>
  );
}
