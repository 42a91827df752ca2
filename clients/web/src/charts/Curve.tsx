// Curves against time and the table of the same figures behind them: one thing in two shapes.
import { type Axis, Plot, type Rule, type Series } from "./Plot";
import { type Column, FigureTable } from "./FigureTable";

interface CurveProps<Row> {
  /** What is shown, as 'Gas against time'. */
  what: string;
  /** The most telling of its figures, in words. */
  told: string;
  x: Axis;
  y: Axis;
  series: readonly Series[];
  rules: readonly Rule[];
  rows: readonly Row[];
  columns: readonly Column<Row>[];
}

export function Curve<Row>({ what, told, x, y, series, rules, rows, columns }: CurveProps<Row>) {
  return (
    <>
      <Plot words={`${what}: ${told}. The figures stand in the table below.`} x={x} y={y} series={series} rules={rules} />
      <FigureTable summary="The figures behind the picture" caption={what} rows={rows} columns={columns} />
    </>
  );
}
