// Marks the moment from which somebody can work with the page, for the browser's own timeline.
import { useEffect } from "preact/hooks";

export function useUsable(isUsable: boolean): void {
  useEffect(() => {
    if (isUsable && performance.getEntriesByName("usable").length === 0) {
      performance.mark("usable");
    }
  }, [isUsable]);
}
