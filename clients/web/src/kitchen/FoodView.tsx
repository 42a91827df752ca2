// What is known of one food, and what the kitchen measures of it or pays for it.
import { useEffect, useState } from "preact/hooks";
import type { Ingredient } from "contract/ingredient_pb";
import { ingredients } from "../asking/service";
import { useAsking } from "../asking/useAsking";
import { FigureTable } from "../charts/FigureTable";
import { CautionList } from "../parts/Cautions";
import { TextField } from "../parts/Field";
import { Station } from "../parts/Station";
import { FaultNote, Waiting } from "../parts/Waiting";
import { trimmed, typed } from "../words/figures";
import { wordsOf } from "../words/names";

export function FoodView({ name, changed, gone }: { name: string; changed: () => void; gone: () => void }) {
  const reading = useAsking<Ingredient>();
  useEffect(() => void reading.ask((signal) => ingredients.getIngredient({ name }, { signal })), [name]);
  const food = reading.answer;
  return (
    <Station of="balance" title={food?.displayName ?? wordsOf(name)} id="food">
      <Waiting asking={reading} what="Looking it up." />
      <FaultNote fault={reading.fault} again={reading.again} />
      {food && (
        <>
          <p>{food.about}</p>
          {food.notFor && <p class="small">Not good for: {food.notFor}</p>}
          <p class="small">{food.made}</p>
          <p>
            Allergens: {food.allergensKnown ? [...new Set([...food.allergensUs, ...food.allergensEu])].map(wordsOf).join(", ") || "none by its facts" : "never stated: read the packet"}
          </p>
          <CautionList cautions={food.cautions} />
          <FigureTable
            summary={`All ${food.facts.length} figures, with range and source`}
            caption={`Figures of ${food.displayName}`}
            rows={food.facts}
            columns={[
              { title: "What", of: (fact) => factWords(fact.fact) },
              { title: "Typical", isFigure: true, of: (fact) => trimmed(fact.value, 3) },
              { title: "Range", isFigure: true, of: (fact) => `${trimmed(fact.low, 3)} to ${trimmed(fact.high, 3)}` },
              { title: "Unit", of: (fact) => fact.unit },
              { title: "From", of: (fact) => `${fact.mark}: ${fact.source}` },
            ]}
          />
          <MeasureForm food={food} changed={(now) => { void reading.ask(() => Promise.resolve(now)); changed(); }} />
          <Forget food={food} left={(now) => (now ? void reading.ask(() => Promise.resolve(now)) : gone())} />
        </>
      )}
    </Station>
  );
}

/** `waterBoundBatterGPerG` is read as `water bound batter g per g`. */
function factWords(id: string): string {
  return id.replaceAll(/([A-Z])/g, " $1").replaceAll(/(\d+)/g, " $1").replaceAll(/\s+/g, " ").toLowerCase();
}

function MeasureForm({ food, changed }: { food: Ingredient; changed: (food: Ingredient) => void }) {
  const [values, setValues] = useState({ price: "", dry: "", drained: "", acidity: "" });
  const [said, setSaid] = useState("");
  const saving = useAsking<void>();
  const method = useAsking<string>();
  const [price, dry, drained, acidity] = [values.price, values.dry, values.drained, values.acidity].map(typed);
  const isWrong = [price, dry, drained, acidity].some((figure) => Number.isNaN(figure ?? 0));
  const isEmpty = price === undefined && acidity === undefined && (dry === undefined || drained === undefined);
  const write = async (signal: AbortSignal) => {
    const known = await ingredients.measureIngredient(
      {
        name: food.name,
        ...(price === undefined ? {} : { pricePerKg: price }),
        ...(acidity === undefined ? {} : { acidityPercent: acidity }),
        ...(dry === undefined || drained === undefined ? {} : { soak: { dryG: dry, drainedG: drained } }),
      },
      { signal },
    );
    setSaid(`Written down: ${known.measured.map((fact) => `${factWords(fact.fact)} ${trimmed(fact.value, 3)} ${fact.unit}`).join(", ")}.`);
    setValues({ price: "", dry: "", drained: "", acidity: "" });
    if (known.ingredient) {
      changed(known.ingredient);
    }
  };
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void saving.ask(write);
      }}
    >
      <h4>What this kitchen measures or pays</h4>
      <div class="fields">
        <TextField id="food-price" label="Price" unit="money/kg" numeric value={values.price} onValue={(text) => setValues({ ...values, price: text })} />
        <TextField id="food-dry" label="Soaking test: dry" unit="g" numeric value={values.dry} onValue={(text) => setValues({ ...values, dry: text })} />
        <TextField id="food-drained" label="Soaking test: drained" unit="g" numeric value={values.drained} onValue={(text) => setValues({ ...values, drained: text })} />
        {food.role === "acid" && <TextField id="food-acidity" label="Acidity on a vinegar's label" unit="%" numeric value={values.acidity} onValue={(text) => setValues({ ...values, acidity: text })} />}
      </div>
      {isWrong && <p class="wrong">One of these is not a number: give numbers, as 12.5.</p>}
      <p class="share">
        <button type="submit" disabled={isWrong || isEmpty}>
          Write it down
        </button>
        <button type="button" class="quiet" onClick={() => void method.ask(async (signal) => (await ingredients.measureIngredient({ name: food.name }, { signal })).method)}>
          How the test is done
        </button>
      </p>
      {method.answer && <p>{method.answer}</p>}
      <p role="status">{said}</p>
      <FaultNote fault={saving.fault ?? method.fault} />
    </form>
  );
}

function Forget({ food, left }: { food: Ingredient; left: (now: Ingredient | undefined) => void }) {
  const [isSure, setSure] = useState(false);
  const forgetting = useAsking<void>();
  const what = food.own ? "this packet" : "what was measured of it";
  return (
    <>
      {isSure ? (
        <p class="share">
          <strong>Forget {what}? It cannot be taken back.</strong>
          <button
            type="button"
            onClick={() =>
              void forgetting.ask(async (signal) => {
                const { ingredient } = await ingredients.deleteIngredient({ name: food.name }, { signal });
                setSure(false);
                left(ingredient);
              })
            }
          >
            Forget it
          </button>
          <button type="button" class="quiet" onClick={() => setSure(false)}>
            Keep it
          </button>
        </p>
      ) : (
        <button type="button" class="quiet" onClick={() => setSure(true)}>
          Forget {what}
        </button>
      )}
      <FaultNote fault={forgetting.fault} />
    </>
  );
}
