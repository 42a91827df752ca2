// Where somebody stands in the kitchen; it is in the address, so that a reload and the browser's back lead there.
import { useEffect, useState } from "preact/hooks";

export interface Place {
  /** Resource name of the formula, or empty. */
  formula: string;
}

function placeOf(hash: string): Place {
  const id = hash.replace(/^#\/?formulas\//, "");
  return { formula: /^[a-z0-9][a-z0-9-]{0,63}$/.test(id) ? `formulas/${id}` : "" };
}

export function addressOf(formula: string): string {
  return `#/${formula}`;
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
