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
  // The formulas stand there as soon as they are known: the pantry is longer.
  const shelf = useAsking<Formula[]>();
  const pantry = useAsking<Ingredient[]>();
  const refresh = () => {
    void shelf.ask(allFormulas);
    void pantry.ask(wholePantry);
  };
  useEffect(refresh, []);
  useUsable(shelf.answer !== undefined);
  const stock: Stock | undefined = shelf.answer && pantry.answer && { shelf: shelf.answer, pantry: pantry.answer };
  return (
    <div class="kitchen">
      <div class="side">
        <h1>Kitchen</h1>
        <Waiting asking={shelf} what="Fetching the formulas." />
        <FaultNote fault={shelf.fault} again={shelf.again} />
        <Waiting asking={pantry} what="Looking into the pantry." />
        <FaultNote fault={pantry.fault} again={pantry.again} />
        {shelf.answer && <FormulaSide shelf={shelf.answer} place={place} />}
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
        {stock && place.formula && (
          <FormulaBenches key={place.formula} name={place.formula} bench={place.bench} stock={stock} refresh={refresh} />
        )}
        {stock && place.isPantry && <PantryBench stock={stock} refresh={refresh} />}
        {stock && !place.formula && !place.isPantry && <p class="lead">Choose a formula to work on, or look into the pantry.</p>}
      </div>
    </div>
  );
}
