// The bags of this kitchen, and what is known of every food on the shelf.
import { useState } from "preact/hooks";
import { Choice } from "../parts/Field";
import { IngredientChoice } from "../parts/IngredientChoice";
import { Station } from "../parts/Station";
import { BagForm } from "./BagForm";
import { FoodView } from "./FoodView";
import type { Stock } from "./Kitchen";

export function PantryBench({ stock, refresh }: { stock: Stock; refresh: () => void }) {
  const [looked, setLooked] = useState("");
  const own = stock.pantry.filter((food) => food.own);
  return (
    <>
      <h2>Packets in the pantry</h2>
      <div class="pair">
        <div>
          <Station of="bowl" title="Look up a food" id="shelf">
            {own.length > 0 && (
              <Choice id="own-food" label="This kitchen's own" value={own.some((food) => food.name === looked) ? looked : ""} onValue={setLooked}>
                <option value="">choose</option>
                {own.map((food) => (
                  <option key={food.name} value={food.name}>
                    {food.displayName}
                  </option>
                ))}
              </Choice>
            )}
            <IngredientChoice id="any-food" label="Any food on the shelf" pantry={stock.pantry} value={looked} onValue={setLooked} none="choose" />
          </Station>
          {looked && (
            <FoodView
              key={looked}
              name={looked}
              changed={refresh}
              gone={() => {
                setLooked("");
                refresh();
              }}
            />
          )}
        </div>
        <BagForm
          pantry={stock.pantry}
          added={(name) => {
            setLooked(name);
            refresh();
          }}
        />
      </div>
    </>
  );
}
