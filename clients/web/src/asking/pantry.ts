// All ingredients that this caller may see, for choosing from.
import type { Ingredient } from "contract/ingredient_pb";
import { ingredients } from "./service";

/** More than a list to choose from can hold; a table of foods may have thousands. */
const most = 2000;

export async function wholePantry(signal: AbortSignal): Promise<Ingredient[]> {
  const found: Ingredient[] = [];
  let pageToken = "";
  do {
    const page = await ingredients.listIngredients({ pageSize: 500, pageToken }, { signal });
    found.push(...page.ingredients);
    pageToken = page.nextPageToken;
  } while (pageToken && found.length < most);
  return found.sort((one, other) => one.displayName.localeCompare(other.displayName, "en"));
}
