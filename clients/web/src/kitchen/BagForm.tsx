// A packet's panel, put on the shelf as a food of this kitchen.
import { useState } from "preact/hooks";
import type { Ingredient } from "contract/ingredient_pb";
import type { AddIngredientResponse } from "contract/ingredient_service_pb";
import { NutritionPanel_Basis as Basis } from "contract/nutrition_panel_pb";
import { ingredients } from "../asking/service";
import { useAsking } from "../asking/useAsking";
import { CautionList } from "../parts/Cautions";
import { Choice, TextField } from "../parts/Field";
import { IngredientChoice } from "../parts/IngredientChoice";
import { Station } from "../parts/Station";
import { FaultNote, Waiting } from "../parts/Waiting";
import { typed } from "../words/figures";

const panel = [
  { id: "servingG", label: "For", unit: "g" },
  { id: "energyKcal", label: "Energy", unit: "kcal" },
  { id: "fatG", label: "Fat", unit: "g" },
  { id: "saturatedFatG", label: "Saturated fat", unit: "g" },
  { id: "carbohydrateG", label: "Carbohydrate", unit: "g" },
  { id: "fibreG", label: "Fibre", unit: "g" },
  { id: "sugarsG", label: "Sugars", unit: "g" },
  { id: "polyolsG", label: "Polyols", unit: "g" },
  { id: "proteinG", label: "Protein", unit: "g" },
  { id: "saltG", label: "Salt", unit: "g" },
  { id: "sodiumMg", label: "Sodium", unit: "mg" },
] as const;

type Printed = Partial<Record<(typeof panel)[number]["id"], string>>;

export function BagForm({ pantry, added }: { pantry: readonly Ingredient[]; added: (name: string) => void }) {
  const [called, setCalled] = useState("");
  const [id, setId] = useState("");
  const [like, setLike] = useState("");
  const [basis, setBasis] = useState<string>(String(Basis.EU));
  const [printed, setPrinted] = useState<Printed>({});
  const [contains, setContains] = useState("");
  const [mayContain, setMayContain] = useState("");
  const [isStated, setStated] = useState(false);
  const [price, setPrice] = useState("");
  const [isAnew, setAnew] = useState(false);
  const saving = useAsking<AddIngredientResponse>();
  const bagId = id.trim() || idFrom(called);
  const cost = typed(price);
  const put = async (signal: AbortSignal) => {
    const known = await ingredients.addIngredient(
      {
        ingredientId: bagId,
        displayName: called.trim(),
        like,
        panel: { basis: Number(basis), ...Object.fromEntries(panel.map((one) => [one.id, (printed[one.id] ?? "").trim()])) },
        ...(isStated ? { allergens: { contains: listOf(contains), mayContain: listOf(mayContain) } } : {}),
        ...(cost === undefined ? {} : { pricePerKg: cost }),
        replace: isAnew,
      },
      { signal },
    );
    added(known.ingredient?.name ?? `ingredients/${bagId}`);
    return known;
  };
  return (
    <Station of="slice" title="A new packet" id="bag" lead="Type what the packet prints, as it prints it. What it does not print stays empty.">
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void saving.ask(put);
        }}
      >
        <div class="fields">
          <TextField id="bag-name" label="Called" value={called} onValue={setCalled} hint="as the packet says it" />
          <TextField id="bag-id" label="Id" value={id} onValue={setId} hint={bagId ? `empty: ${bagId}` : "small letters, digits and hyphens"} />
        </div>
        <IngredientChoice id="bag-like" label="In a batter it is like" pantry={pantry} value={like} onValue={setLike} none="nothing known here" hint="What the packet does not print is taken from it." />
        <Choice id="bag-basis" label="The panel follows the law of" value={basis} onValue={setBasis}>
          <option value={String(Basis.EU)}>European Union or United Kingdom: carbohydrate without fibre</option>
          <option value={String(Basis.US)}>United States: carbohydrate with fibre</option>
        </Choice>
        <div class="fields">
          {panel.map((one) => (
            <TextField key={one.id} id={`bag-${one.id}`} label={one.label} unit={one.unit} numeric value={printed[one.id] ?? ""} onValue={(text) => setPrinted({ ...printed, [one.id]: text })} />
          ))}
          <TextField id="bag-price" label="Price" unit="money/kg" numeric value={price} onValue={setPrice} wrong={Number.isNaN(cost ?? 0) ? `'${price}' is no price.` : undefined} />
        </div>
        <label class="check">
          <input type="checkbox" checked={isStated} onChange={(event) => setStated(event.currentTarget.checked)} />I read the allergens on the packet
        </label>
        {isStated && (
          <div class="fields">
            <TextField id="bag-contains" label="Contains" value={contains} onValue={setContains} hint="as milk, tree nuts; empty: none" />
            <TextField id="bag-may" label="May contain" value={mayContain} onValue={setMayContain} />
          </div>
        )}
        <label class="check">
          <input type="checkbox" checked={isAnew} onChange={(event) => setAnew(event.currentTarget.checked)} />
          It takes the place of a packet with this id
        </label>
        <button type="submit" class="main" disabled={bagId === "" || Number.isNaN(cost ?? 0)}>
          Put it on the shelf
        </button>
        <Waiting asking={saving} what="Reading the panel." />
        <FaultNote fault={saving.fault} again={saving.again} />
        <div role="status">
          {saving.stage === "answered" && saving.answer && (
            <>
              <p>
                <strong>{saving.answer.ingredient?.displayName} is on the shelf.</strong>
              </p>
              {saving.answer.notes.map((note) => (
                <p key={note}>{note}</p>
              ))}
              <CautionList cautions={saving.answer.cautions} />
            </>
          )}
        </div>
      </form>
    </Station>
  );
}

function idFrom(words: string): string {
  return words.trim().toLowerCase().replaceAll(/[^a-z0-9]+/g, "-").replaceAll(/^-+|-+$/g, "").slice(0, 64);
}

function listOf(words: string): string[] {
  return words.split(",").map((one) => one.trim()).filter(Boolean);
}
