// How a loaf bakes: minutes, the core to probe for, the tin.
import { useEffect } from "preact/hooks";
import type { BakeChange, TinFill } from "contract/bake_pb";
import type { BakeFormulaResponse } from "contract/baking_service_pb";
import type { Estimate } from "contract/estimate_pb";
import type { Formula } from "contract/formula_pb";
import { baking } from "../asking/service";
import { useAsking } from "../asking/useAsking";
import { trimmed } from "../words/figures";
import { CautionList } from "./Cautions";
import { FaultNote, Waiting } from "./Waiting";

/** Asks for the bake as soon as a formula is shown: it is a forecast beside the answer, and the answer does not wait for it. */
export function Oven({ formula, said }: { formula: Formula; said: readonly string[] }) {
  const asking = useAsking<BakeFormulaResponse>();
  const { ask } = asking;
  useEffect(() => void ask((signal) => baking.bakeFormula({ subject: { case: "formula", value: formula } }, { signal })), [formula, ask]);
  const bake = asking.stage === "answered" ? asking.answer : undefined;
  return (
    <>
      <Waiting asking={asking} what="Working out the bake." />
      <FaultNote fault={asking.fault} again={asking.again} />
      {bake && <BakeWords bake={bake} said={said} />}
    </>
  );
}

export function BakeWords({ bake, said }: { bake: BakeFormulaResponse; said: readonly string[] }) {
  return (
    <>
      {bake.timeToCoreMinutes && (
        <p class="minutes">
          <strong>{rangeWords(bake.timeToCoreMinutes)} minutes</strong> to a core of {trimmed(bake.coreTargetCelsius, 1)} °C.
          {bake.probeFromMinute !== undefined && ` Probe from minute ${bake.probeFromMinute.toFixed(0)}.`}
        </p>
      )}
      {bake.coolToSliceMinutes && <p>On a rack, out of its tin, it may be sliced after {rangeWords(bake.coolToSliceMinutes)} minutes.</p>}
      <Tin fill={bake.fill} />
      <CautionList cautions={bake.cautions.filter((caution) => !said.includes(caution))} />
    </>
  );
}

export function ResizedOven({ bake, said }: { bake: BakeChange; said: readonly string[] }) {
  return (
    <>
      {bake.ratio && bake.afterMinutes && bake.beforeMinutes && (
        <p class="minutes">
          <strong>{bake.ratio.value.toFixed(2)} times the minutes</strong> of the loaf as it stands, to a core of {trimmed(bake.coreTargetCelsius, 1)} °C:{" "}
          {rangeWords(bake.afterMinutes)} in place of {rangeWords(bake.beforeMinutes)}. Probe from minute {bake.probeFromMinute.toFixed(0)}.
        </p>
      )}
      {bake.coolToSliceMinutes && <p>On a rack, out of its tin, it may be sliced after {rangeWords(bake.coolToSliceMinutes)} minutes.</p>}
      <Tin fill={bake.fill} />
      <CautionList cautions={bake.cautions.filter((caution) => !said.includes(caution))} />
    </>
  );
}

function Tin({ fill }: { fill: TinFill | undefined }) {
  return fill?.bakedMm && fill.fullPercent ? (
    <p>
      The baked loaf stands {fill.bakedMm.value.toFixed(0)} mm high ({fill.bakedMm.low.toFixed(0)} to {fill.bakedMm.high.toFixed(0)}) and takes{" "}
      {fill.fullPercent.value.toFixed(0)} % of its tin.
      {fill.nearest.length > 0 && ` Would fill well: ${fill.nearest.map((tin) => `${tin.displayName} (${tin.fullPercent.toFixed(0)} %)`).join("; ")}.`}
    </p>
  ) : null;
}

export function rangeWords(estimate: Estimate): string {
  const [value, low, high] = [estimate.value, estimate.low, estimate.high].map((figure) => figure.toFixed(0));
  return low === high ? value! : `${value} (${low} to ${high})`;
}
