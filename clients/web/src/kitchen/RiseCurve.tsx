// The gas of soda and powder against time.
import { GasPoint_Stage as Stage, type PredictRiseResponse } from "contract/baking_service_pb";
import type { Estimate } from "contract/estimate_pb";
import { Curve } from "../charts/Curve";
import { CautionList } from "../parts/Cautions";
import { trimmed } from "../words/figures";

const stages: Partial<Record<Stage, string>> = { [Stage.MIXING]: "mixing", [Stage.BENCH]: "on the bench", [Stage.OVEN]: "in the oven" };

export function RiseCurve({ rise }: { rise: PredictRiseResponse }) {
  const isGas = rise.volumeAtBowlMillilitres > 0;
  const inOven = rise.gas.find((point) => point.stage === Stage.OVEN);
  return (
    <>
      <p class="minutes">
        {rise.workingWindow ? (
          <strong>Into the oven within about {range(rise.workingWindow, 1)} minutes of mixing.</strong>
        ) : (
          <strong>No gas of soda or powder.</strong>
        )}
      </p>
      {isGas && (
        <Curve
          what="Gas against time"
          told={`${rise.volumeAtBowlMillilitres.toFixed(0)} mL in all after ${rise.gas.at(-1)?.minute ?? 0} minutes`}
          x={{ title: "after wetting the soda", unit: "min", decimals: 0 }}
          y={{ title: "gas", unit: "mL", decimals: 0 }}
          series={[
            { title: "freed so far", points: rise.gas.map((point) => [point.minute, point.millilitres] as const) },
            { title: "still held by the batter", points: rise.gas.map((point) => [point.minute, point.heldMillilitres] as const) },
          ]}
          rules={inOven ? [{ at: inOven.minute, along: "x", words: "into the oven" }] : []}
          rows={rise.gas}
          columns={[
            { title: "minute", isFigure: true, of: (point) => trimmed(point.minute, 1) },
            { title: "freed [mL]", isFigure: true, of: (point) => point.millilitres.toFixed(0) },
            { title: "held [mL]", isFigure: true, of: (point) => point.heldMillilitres.toFixed(0) },
            { title: "where", of: (point) => stages[point.stage] ?? "" },
          ]}
        />
      )}
      <ul class="told">
        {rise.phBatter && <li>pH of the batter: {range(rise.phBatter, 1)}</li>}
        {rise.phCrumb && <li>pH of the crumb: {range(rise.phCrumb, 1)}</li>}
        {rise.neutralisedPercent && <li>Soda that acid uses up: {range(rise.neutralisedPercent, 0)} %</li>}
        {rise.sodaLeft && <li>Soda left in 100 g of crumb: {range(rise.sodaLeft, 2)} g</li>}
        {rise.leaveningCutPercent && <li>Less soda and powder at this height: {range(rise.leaveningCutPercent, 0)} %</li>}
        {isGas && <li>The wait loses {rise.lostOnBenchPercent.toFixed(0)} % of the gas.</li>}
        {rise.salty && <li>The water is saltier than the pH is worked out for: take it as a rougher figure.</li>}
      </ul>
      <CautionList cautions={rise.cautions} />
    </>
  );
}

function range(estimate: Estimate, decimals: number): string {
  const write = (figure: number) => figure.toFixed(decimals);
  return write(estimate.low) === write(estimate.high) ? write(estimate.value) : `${write(estimate.value)} (${write(estimate.low)} to ${write(estimate.high)})`;
}
