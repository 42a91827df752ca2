// The room that a picture has: it is drawn in the page's own pixels, so that its letters are as large as all others.
import { useEffect, useRef, useState } from "preact/hooks";

export interface Room {
  /** Width of the place [px]. */
  width: number;
  /** Size of the page's letters [px]. */
  letter: number;
}

const guess: Room = { width: 640, letter: 16 };

export function useRoom() {
  const place = useRef<HTMLDivElement>(null);
  const [room, setRoom] = useState(guess);
  useEffect(() => {
    const { current } = place;
    if (!current) {
      return;
    }

    const measure = () =>
      setRoom({ width: Math.max(200, Math.round(current.clientWidth)), letter: Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || guess.letter });
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(current);
    return () => watch.disconnect();
  }, []);
  return { place, room };
}
