// How the batter rises and the loaf bakes, with their curves.
import { useEffect, useState } from "preact/hooks";
import type { BakeFormulaResponse, PredictRiseResponse } from "contract/baking_service_pb";
import { baking } from "../asking/service";
import { useAsking } from "../asking/useAsking";
import { TextField } from "../parts/Field";
import { Station } from "../parts/Station";
import { FaultNote, Waiting } from "../parts/Waiting";
import { typed } from "../words/figures";
import { BakeCurve } from "./BakeCurve";
import { subjectOf } from "./draft";
import type { BenchProps } from "./FormulaBenches";
import { RiseCurve } from "./RiseCurve";

interface Kitchen {
  altitude: string;
  wait: string;
  core: string;
  isCold: boolean;
}

export function OvenBench({ draft }: BenchProps) {
  const [kitchen, setKitchen] = useState<Kitchen>({ altitude: "", wait: "", core: "", isCold: false });
  const [wrong, setWrong] = useState("");
  const rise = useAsking<PredictRiseResponse>();
  const bake = useAsking<BakeFormulaResponse>();
  const ask = () => {
    const none = [kitchen.altitude, kitchen.wait, kitchen.core].find((text) => Number.isNaN(typed(text) ?? 0));
    setWrong(none === undefined ? "" : `'${none}' is not a number: give a number, as 3.`);
    if (none !== undefined) {
      return;
    }

    const [altitudeMetres, waitMinutes, coreCelsius] = [typed(kitchen.altitude), typed(kitchen.wait), typed(kitchen.core)];
    const height = altitudeMetres === undefined ? {} : { altitudeMetres };
    const subject = subjectOf(draft);
    void rise.ask((signal) => baking.predictRise({ subject, ...height, ...(waitMinutes === undefined ? {} : { waitMinutes }) }, { signal }));
    void bake.ask((signal) => baking.bakeFormula({ subject, ...height, ...(coreCelsius === undefined ? {} : { coreCelsius }), coldStart: kitchen.isCold }, { signal }));
  };
  useEffect(ask, []);
  return (
    <>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          ask();
        }}
      >
        <div class="fields">
        <TextField id="altitude" label="Kitchen above the sea" unit="m" numeric value={kitchen.altitude} onValue={(altitude) => setKitchen({ ...kitchen, altitude })} hint="empty: 0" />
        <TextField id="wait" label="From mixing to the oven" unit="min" numeric value={kitchen.wait} onValue={(wait) => setKitchen({ ...kitchen, wait })} hint="empty: 3" />
        <TextField id="core" label="Core to bake to" unit="°C" numeric value={kitchen.core} onValue={(core) => setKitchen({ ...kitchen, core })} hint="empty: 4 below boiling" wrong={wrong || undefined} />
        </div>
        <label class="check">
          <input type="checkbox" checked={kitchen.isCold} onChange={(event) => setKitchen({ ...kitchen, isCold: event.currentTarget.checked })} />
          into a cold oven
        </label>
        <p class="share">
          <button type="submit">Work it out</button>
        </p>
      </form>
      <div class="stations">
        <Station of="bowl" title="Rise" id="rise">
          <Waiting asking={rise} what="Working out the rise." />
          <FaultNote fault={rise.fault} again={rise.again} />
          {rise.answer && rise.stage === "answered" && <RiseCurve rise={rise.answer} />}
        </Station>
        <Station of="oven" title="Bake" id="bake">
          <Waiting asking={bake} what="Working out the bake." />
          <FaultNote fault={bake.fault} again={bake.again} />
          {bake.answer && bake.stage === "answered" && <BakeCurve bake={bake.answer} />}
        </Station>
      </div>
    </>
  );
}
