// What is to be left out altogether: allergens of the formula, and ways of eating.
import type { AllergenStatement } from "contract/reading_pb";
import { Choice } from "./Field";
import { diets } from "../words/diets";
import { wordsOf } from "../words/names";

interface LeftOut {
  without: string[];
  diet: string;
}

export function LeaveOut<Wish extends LeftOut>({ allergens, wish, change }: { allergens: AllergenStatement | undefined; wish: Wish; change: (wish: Wish) => void }) {
  const present = [...new Set([...(allergens?.us ?? []), ...(allergens?.eu ?? [])].map((one) => one.allergen))];
  return (
    <>
      {present.length > 0 && (
        <fieldset class="chips">
          <legend>Leave out altogether</legend>
          {present.map((id) => (
            <label key={id} class="chip">
              <input
                type="checkbox"
                checked={wish.without.includes(id)}
                onChange={(event) => change({ ...wish, without: event.currentTarget.checked ? [...wish.without, id] : wish.without.filter((one) => one !== id) })}
              />
              <span>{wordsOf(id)}</span>
            </label>
          ))}
        </fieldset>
      )}
      <Choice id="diet" label="A way of eating" value={wish.diet} onValue={(diet) => change({ ...wish, diet })}>
        <option value="">none in particular</option>
        {diets.map((diet) => (
          <option key={diet.id} value={diet.id}>
            {diet.words}
          </option>
        ))}
      </Choice>
    </>
  );
}
