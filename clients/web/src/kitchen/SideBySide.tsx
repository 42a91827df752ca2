// Figures before and after, and what lies between; what changed is marked by a sign and not by a colour alone.
export interface Pair {
  key: string;
  title: string;
  unit: string;
  before: number | undefined;
  after: number | undefined;
}

export function SideBySide({ caption, rows, write }: { caption: string; rows: readonly Pair[]; write: (figure: number) => string }) {
  return (
    <table class="pairs">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col" class="figure">First</th>
          <th scope="col" class="figure">Second</th>
          <th scope="col" class="figure">Change</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.key} class={difference(row, write) === "same" ? undefined : "moved"} data-row={row.key} data-before={row.before} data-after={row.after}>
            <th scope="row">
              {row.title} {row.unit && <small>{row.unit}</small>}
            </th>
            <td class="figure">{row.before === undefined ? "-" : write(row.before)}</td>
            <td class="figure">{row.after === undefined ? "-" : write(row.after)}</td>
            <td class="figure">{difference(row, write)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function difference({ before, after }: Pair, write: (figure: number) => string): string {
  if (before === undefined || after === undefined) {
    return before === after ? "" : before === undefined ? "added" : "left out";
  }

  const between = write(Math.abs(after - before));
  return before === after || Number(between) === 0 ? "same" : `${after > before ? "+" : "−"}${between}`;
}
