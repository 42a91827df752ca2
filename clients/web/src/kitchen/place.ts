// Where somebody stands in the kitchen; it is in the address, so that a reload and the browser's back lead there.
import { useEffect, useState } from "preact/hooks";

/** What a formula is worked on at. */
export const benches = [
  { id: "bowl", title: "Weigh" },
  { id: "solve", title: "Solve" },
  { id: "compare", title: "Compare" },
  { id: "trade", title: "Trade-off" },
  { id: "oven", title: "Rise and bake" },
  { id: "swaps", title: "Swap chart" },
  { id: "trials", title: "Trials" },
  { id: "cards", title: "Cards" },
] as const;

export type Bench = (typeof benches)[number]["id"];

export interface Place {
  /** Resource name of the formula, or empty. */
  formula: string;
  bench: Bench;
  /** Whether the bags are looked at, and no formula. */
  isPantry: boolean;
}

const pantry = "#/pantry";
const known = /^#\/?formulas\/([a-z0-9][a-z0-9-]{0,63})(?:\/([a-z]+))?$/;

function placeOf(hash: string): Place {
  const [, id, bench] = known.exec(hash) ?? [];
  return {
    formula: id ? `formulas/${id}` : "",
    bench: benches.find((one) => one.id === bench)?.id ?? "bowl",
    isPantry: hash === pantry,
  };
}

export function addressOf(formula: string, bench: Bench = "bowl"): string {
  return bench === "bowl" ? `#/${formula}` : `#/${formula}/${bench}`;
}

export const pantryAddress = pantry;

export function usePlace(): Place {
  const [place, setPlace] = useState(() => placeOf(location.hash));
  useEffect(() => {
    const moved = () => setPlace(placeOf(location.hash));
    addEventListener("hashchange", moved);
    return () => removeEventListener("hashchange", moved);
  }, []);
  return place;
}
