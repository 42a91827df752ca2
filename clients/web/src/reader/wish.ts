// What a reader asks for, and how it stands in a link.
export interface Swap {
  /** Resource name of the line. */
  from: string;
  /** Resource name of what comes in; `whatever` where the kitchen is to choose. */
  to: string;
}

export const whatever = "whatever";

export interface Wish {
  /** Resource name of the published formula; empty before one was chosen. */
  formula: string;
  /** Ids of allergens, groups or ingredients to leave out. */
  without: string[];
  diet: string;
  swaps: Swap[];
  /** As typed; empty where not asked for. */
  slices: string;
  tin: [length: string, width: string, height: string];
  carbs: string;
  weighedEgg: boolean;
  newIngredients: string;
}

export const noWish: Wish = { formula: "", without: [], diet: "", swaps: [], slices: "", tin: ["", "", ""], carbs: "", weighedEgg: false, newIngredients: "" };

const known = /^[a-z0-9][a-z0-9-]{0,63}$/;
const figure = /^[0-9.,]{1,8}$/;
const fit = (text: string | null, shape: RegExp): string => (text !== null && shape.test(text) ? text : "");

/** Reads the address of the page. What cannot be a wish is passed over: a link is anybody's text. */
export function wishOf(address: string): Wish {
  const query = new URLSearchParams(address);
  const formula = fit(query.get("formula"), known);
  const tin = (query.get("tin") ?? "").split("x");
  return {
    formula: formula && `formulas/${formula}`,
    without: (query.get("without") ?? "").split(",").filter((id) => known.test(id)),
    diet: fit(query.get("diet"), known),
    swaps: (query.get("instead") ?? "")
      .split(",")
      .map((swap) => swap.split("~"))
      .filter((swap) => swap.length === 2 && swap.every((id) => known.test(id)))
      .map(([from, to]) => ({ from: `ingredients/${from}`, to: to === whatever ? whatever : `ingredients/${to}` })),
    slices: fit(query.get("slices"), figure),
    tin: [fit(tin[0] ?? "", figure), fit(tin[1] ?? "", figure), fit(tin[2] ?? "", figure)],
    carbs: fit(query.get("carbs"), figure),
    weighedEgg: query.get("eggs") === "weighed",
    newIngredients: fit(query.get("new"), /^[0-5]$/),
  };
}

/** The address of a wish, from its `?` on. */
export function addressOf(wish: Wish): string {
  const parts: [string, string][] = [
    ["formula", idOf(wish.formula)],
    ["without", wish.without.join(",")],
    ["diet", wish.diet],
    ["instead", wish.swaps.map((swap) => `${idOf(swap.from)}~${idOf(swap.to)}`).join(",")],
    ["slices", wish.slices.trim()],
    ["tin", wish.tin.every((side) => side.trim()) ? wish.tin.map((side) => side.trim()).join("x") : ""],
    ["carbs", wish.carbs.trim()],
    ["eggs", wish.weighedEgg ? "weighed" : ""],
    ["new", wish.newIngredients],
  ];
  const said = parts.filter(([, value]) => value).map(([name, value]) => `${name}=${value}`);
  return said.length > 0 ? `?${said.join("&")}` : "";
}

function idOf(resource: string): string {
  return resource.slice(resource.lastIndexOf("/") + 1);
}

/** Whether anything is asked for beside the formula as it stands. */
export function asksForSomething(wish: Wish): boolean {
  return addressOf({ ...wish, formula: "", weighedEgg: false, newIngredients: "" }) !== "" || wish.tin.some((side) => side.trim() !== "");
}
