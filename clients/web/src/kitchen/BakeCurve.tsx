// The core of the loaf from the oven's door to the knife.
import { CorePoint_Stage as Stage } from "contract/bake_pb";
import type { BakeFormulaResponse } from "contract/baking_service_pb";
import { Curve } from "../charts/Curve";
import { BakeWords, rangeWords } from "../parts/Oven";
import { trimmed } from "../words/figures";

export function BakeCurve({ bake }: { bake: BakeFormulaResponse }) {
  const onRack = bake.curve.find((point) => point.stage === Stage.RACK);
  const hottest = Math.max(...bake.curve.map((point) => point.coreCelsius));
  return (
    <>
      {bake.curve.length > 0 && (
        <Curve
          what="Core temperature against time"
          told={`${hottest.toFixed(0)} °C at its hottest`}
          x={{ title: "in the oven since", unit: "min", decimals: 0 }}
          y={{ title: "core", unit: "°C", decimals: 1 }}
          series={[{ title: "core", points: bake.curve.map((point) => [point.minute, point.coreCelsius] as const) }]}
          rules={[
            { at: bake.coreTargetCelsius, along: "y", words: `core target ${trimmed(bake.coreTargetCelsius, 1)} °C` },
            ...(onRack ? [{ at: onRack.minute, along: "x" as const, words: "onto the rack" }] : []),
          ]}
          rows={bake.curve}
          columns={[
            { title: "minute", isFigure: true, of: (point) => trimmed(point.minute, 1) },
            { title: "core [°C]", isFigure: true, of: (point) => point.coreCelsius.toFixed(1) },
            { title: "where", of: (point) => (point.stage === Stage.RACK ? "on the rack" : "in the oven") },
          ]}
        />
      )}
      <BakeWords bake={bake} said={[]} />
      {bake.anchorTrial && <p>These minutes are held against {bake.anchorTrial} of this kitchen.</p>}
      {bake.variations.length > 0 && (
        <table>
          <caption>Done otherwise, one thing at a time</caption>
          <thead>
            <tr>
              <th scope="col">What</th>
              <th scope="col" class="figure">Times</th>
              <th scope="col" class="figure">Minutes</th>
            </tr>
          </thead>
          <tbody>
            {bake.variations.map((one) => (
              <tr key={one.displayName}>
                <th scope="row">{one.displayName}</th>
                <td class="figure">{one.ratio?.value.toFixed(2)}</td>
                <td class="figure">{one.minutes && rangeWords(one.minutes)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </>
  );
}
