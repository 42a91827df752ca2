// The kitchen page: formulas at the side, and one bench at a time.
import { useEffect, useState } from "preact/hooks";
import type { Formula } from "contract/formula_pb";
import type { Ingredient } from "contract/ingredient_pb";
import { forgetKey } from "../asking/key";
import { wholePantry } from "../asking/pantry";
import { formulas } from "../asking/service";
import { useAsking } from "../asking/useAsking";
import { Frame } from "../parts/Frame";
import { useUsable } from "../parts/useUsable";
import { FaultNote, Waiting } from "../parts/Waiting";
import { hasKey, KeyDoor } from "./KeyDoor";
import { FormulaBenches } from "./FormulaBenches";
import { FormulaSide } from "./FormulaSide";
import { PantryBench } from "./PantryBench";
import { usePlace } from "./place";

export interface Stock {
  shelf: Formula[];
  pantry: Ingredient[];
}

async function takeStock(signal: AbortSignal): Promise<Stock> {
  const [shelf, pantry] = await Promise.all([allFormulas(signal), wholePantry(signal)]);
  return { shelf, pantry };
}

async function allFormulas(signal: AbortSignal): Promise<Formula[]> {
  const found: Formula[] = [];
  let pageToken = "";
  do {
    const page = await formulas.listFormulas({ pageSize: 500, pageToken }, { signal });
    found.push(...page.formulas);
    pageToken = page.nextPageToken;
  } while (pageToken && found.length < 5000);
  return found;
}

export function Kitchen() {
  const [isIn, setIn] = useState(hasKey);
  return <Frame page="kitchen">{isIn ? <Inside leave={() => setIn(false)} /> : <KeyDoor enter={() => setIn(true)} />}</Frame>;
}

function Inside({ leave }: { leave: () => void }) {
  const place = usePlace();
  const stock = useAsking<Stock>();
  const refresh = () => void stock.ask(takeStock);
  useEffect(refresh, []);
  useUsable(stock.answer !== undefined);
  return (
    <div class="kitchen">
      <div class="side">
        <h1>Kitchen</h1>
        <Waiting asking={stock} what="Taking stock." />
        <FaultNote fault={stock.fault} again={stock.again} />
        {stock.answer && <FormulaSide shelf={stock.answer.shelf} place={place} />}
        <p>
          <button
            type="button"
            class="quiet"
            onClick={() => {
              forgetKey();
              leave();
            }}
          >
            Forget the key
          </button>
        </p>
      </div>
      <div class="bench-side">
        {stock.answer && place.formula && (
          <FormulaBenches key={place.formula} name={place.formula} bench={place.bench} stock={stock.answer} refresh={refresh} />
        )}
        {stock.answer && place.isPantry && <PantryBench stock={stock.answer} refresh={refresh} />}
        {stock.answer && !place.formula && !place.isPantry && <p class="lead">Choose a formula to work on, or look into the pantry.</p>}
      </div>
    </div>
  );
}
