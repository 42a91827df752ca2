// The figures behind a picture, folded away until somebody wants them.
import type { ComponentChildren } from "preact";

export interface Column<Row> {
  title: string;
  isFigure?: boolean;
  of: (row: Row) => ComponentChildren;
}

export function FigureTable<Row>(props: { summary: string; caption: string; rows: readonly Row[]; columns: readonly Column<Row>[] }) {
  return (
    <details class="behind">
      <summary>{props.summary}</summary>
      <div class="wide" tabIndex={0} role="region" aria-label={props.caption}>
        <table>
          <caption>{props.caption}</caption>
          <thead>
            <tr>
              {props.columns.map((column) => (
                <th key={column.title} scope="col" class={column.isFigure ? "figure" : undefined}>
                  {column.title}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {props.rows.map((row, place) => (
              <tr key={place}>
                {props.columns.map((column, first) =>
                  first === 0 ? (
                    <th key={column.title} scope="row" class={column.isFigure ? "figure" : undefined}>
                      {column.of(row)}
                    </th>
                  ) : (
                    <td key={column.title} class={column.isFigure ? "figure" : undefined}>
                      {column.of(row)}
                    </td>
                  ),
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
