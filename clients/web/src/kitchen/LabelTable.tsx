// A label, line by line in the order of its law.
import type { Label, LabelLine } from "contract/label_pb";

export function LabelTable({ label, lines }: { label: Label | undefined; lines: readonly LabelLine[] }) {
  if (!label) {
    return null;
  }

  return (
    <>
      <table class="label">
        <caption>
          {label.text}, as of {label.asOf}: {label.portion}
        </caption>
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col" class="figure">As printed</th>
            <th scope="col" class="figure">A day</th>
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <tr key={line.nutrient + line.unit} data-nutrient={line.nutrient}>
              <th scope="row" class={`depth-${line.depth}`}>
                {line.name}
              </th>
              <td class="figure">{line.amount === undefined ? line.printed : `${line.printed} ${line.unit}`}</td>
              <td class="figure">{line.percentDailyValue === undefined ? "" : `${line.percentDailyValue} %`}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <ul class="small">
        {[`Energy: ${label.energyMethodWords}`, `Carbohydrate: ${label.carbohydrateWords}`, ...label.notes].map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </>
  );
}
