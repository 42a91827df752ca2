// Signs for the stations of a bake, drawn here. They stand beside words and say nothing alone.
const shapes = {
  bowl: "M3 10h18a9 9 0 0 1-18 0zM16 3l-4 6",
  balance: "M12 4v15M7 20h10M4 7h16M4 7l-2 6h5l-3-6M20 7l-3 6h5l-2-6",
  oven: "M4 4h16v16H4zM4 9h16M7 6.5h.01M10 6.5h.01M8 12.5h8v5H8z",
  slice: "M5 20V10a4 4 0 0 1 3-6h8a4 4 0 0 1 3 6v10zM12 8v12",
  out: "M5 12h14",
  in: "M5 12h14M12 5v14",
  more: "M6 14l6-6 6 6",
  less: "M6 10l6 6 6-6",
  care: "M12 4 22 20H2zM12 10v5M12 17.5v.01",
} as const;

export type GlyphName = keyof typeof shapes;

export function Glyph({ of }: { of: GlyphName }) {
  return (
    <svg class="glyph" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <path d={shapes[of]} />
    </svg>
  );
}
