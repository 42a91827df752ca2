// Where somebody stands in the kitchen; it is in the address, so that a reload and the browser's back lead there.
import { useEffect, useState } from "preact/hooks";

export const benches = ["bowl", "solve", "revisions", "trade-off", "oven", "trials", "swaps", "card"] as const;
export type Bench = (typeof benches)[number];

export interface Place {
  /** Resource name of the formula, or empty. */
  formula: string;
  bench: Bench;
  room: "formulas" | "pantry";
}

function placeOf(hash: string): Place {
  const [room, id, bench] = hash.replace(/^#\/?/, "").split("/");
  return {
    room: room === "pantry" ? "pantry" : "formulas",
    formula: room === "formulas" && id && /^[a-z0-9][a-z0-9-]{0,63}$/.test(id) ? `formulas/${id}` : "",
    bench: benches.find((one) => one === bench) ?? "bowl",
  };
}

export function addressOf(formula: string, bench: Bench = "bowl"): string {
  return `#/${formula}${bench === "bowl" ? "" : `/${bench}`}`;
}

export function usePlace(): Place {
  const [place, setPlace] = useState(() => placeOf(location.hash));
  useEffect(() => {
    const moved = () => setPlace(placeOf(location.hash));
    addEventListener("hashchange", moved);
    return () => removeEventListener("hashchange", moved);
  }, []);
  return place;
}
