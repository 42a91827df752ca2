// What goes into the bowl, to weigh by, with each caution at its line.
import type { Formula } from "contract/formula_pb";
import { grams } from "../words/figures";
import { bakeWords, countWords, nameOf } from "../words/names";

export function Bowl({ formula, cautions }: { formula: Formula; cautions?: Map<string, string[]> }) {
  const whole = formula.lines.reduce((sum, line) => sum + (line.grams ?? 0), 0);
  return (
    <>
      <table class="bowl">
        <caption>{formula.displayName || "The formula"}, to weigh</caption>
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col" class="figure">Grams</th>
          </tr>
        </thead>
        <tbody>
          {formula.lines.map((line, place) => (
            <tr key={place} data-ingredient={line.ingredient} data-grams={line.grams}>
              <th scope="row">
                {nameOf(line)} {line.count !== undefined && <small>{countWords(line)}</small>}
                {cautions?.get(line.ingredient)?.map((caution) => (
                  <small class="line-caution" key={caution}>
                    Caution: {caution}
                  </small>
                ))}
              </th>
              <td class="figure">{grams(line.grams ?? 0)}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">in all</th>
            <td class="figure">{grams(whole)}</td>
          </tr>
        </tfoot>
      </table>
      <p class="bake-line">{bakeWords(formula)}</p>
    </>
  );
}
