// A picture of one quantity against another: lines, dots and a table of the same figures behind it.
import type { ComponentChildren } from "preact";
import { scaleLinear } from "d3-scale";
import { line } from "d3-shape";
import { useRoom } from "./useRoom";

export interface Axis {
  title: string;
  unit: string;
  /** Decimals in the table. */
  decimals: number;
}

export interface Series {
  title: string;
  points: readonly (readonly [x: number, y: number])[];
}

export interface Dot {
  x: number;
  y: number;
  words: string;
  isChosen?: boolean;
  /** A dot of another kind: a square. */
  isOrigin?: boolean;
  choose?: () => void;
}

/** A level or a moment that the picture names. */
export interface Rule {
  at: number;
  along: "x" | "y";
  words: string;
}

interface PlotProps {
  /** What the picture shows, in a sentence, for those who do not see it. */
  words: string;
  x: Axis;
  y: Axis;
  series?: readonly Series[];
  dots?: readonly Dot[];
  rules?: readonly Rule[];
  /** Whether the figures start at zero. */
  fromZero?: boolean;
  children?: ComponentChildren;
}

export function Plot({ words, x, y, series = [], dots = [], rules = [], fromZero = true, children }: PlotProps) {
  const { place, room } = useRoom();
  const { width, letter } = room;
  const height = Math.round(Math.min(26 * letter, Math.max(14 * letter, width * 0.5)));
  const edge = { left: 3.6 * letter, right: letter, top: 2 * letter, bottom: 3.4 * letter };
  const all = [...series.flatMap((one) => one.points), ...dots.map((dot) => [dot.x, dot.y] as const)];
  const across = scaleLinear().domain(span(all.map(([at]) => at).concat(levels(rules, "x")), fromZero)).nice().range([edge.left, width - edge.right]);
  const up = scaleLinear().domain(span(all.map(([, at]) => at).concat(levels(rules, "y")), fromZero)).nice().range([height - edge.bottom, edge.top]);
  const path = line<readonly [number, number]>(([at]) => across(at), ([, at]) => up(at));
  const ticks = Math.max(3, Math.floor(width / (6 * letter)));
  const [bottom, top] = up.range() as [number, number];
  return (
    <figure class="chart">
      <div ref={place}>
        <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} role="img" aria-label={words}>
          {across.ticks(ticks).map((at) => (
            <g key={at}>
              <line class="rule" x1={across(at)} x2={across(at)} y1={top} y2={bottom} />
              <text x={across(at)} y={bottom + 1.3 * letter} text-anchor="middle">
                {across.tickFormat(ticks)(at)}
              </text>
            </g>
          ))}
          {up.ticks(5).map((at) => (
            <g key={at}>
              <line class="rule" x1={edge.left} x2={width - edge.right} y1={up(at)} y2={up(at)} />
              <text x={edge.left - 0.4 * letter} y={up(at) + 0.35 * letter} text-anchor="end">
                {up.tickFormat(5)(at)}
              </text>
            </g>
          ))}
          <path class="axis" d={`M${edge.left} ${top}V${bottom}H${width - edge.right}`} />
          <text class="axis-title" x={width - edge.right} y={height - 0.6 * letter} text-anchor="end">
            {titleOf(x)}
          </text>
          <text class="axis-title" x={0} y={0.8 * letter}>
            {titleOf(y)}
          </text>
          {rules.map((rule) => (
            <g key={rule.words}>
              {rule.along === "y" ? (
                <line class="level" x1={edge.left} x2={width - edge.right} y1={up(rule.at)} y2={up(rule.at)} />
              ) : (
                <line class="level" x1={across(rule.at)} x2={across(rule.at)} y1={top} y2={bottom} />
              )}
              <text
                x={rule.along === "y" ? width - edge.right - 0.3 * letter : across(rule.at) + (across(rule.at) > width / 2 ? -0.3 : 0.3) * letter}
                y={rule.along === "y" ? up(rule.at) - 0.35 * letter : bottom - 0.5 * letter}
                text-anchor={rule.along === "y" || across(rule.at) > width / 2 ? "end" : "start"}
              >
                {rule.words}
              </text>
            </g>
          ))}
          {series.map((one, place) => (
            <path key={one.title} class={place === 0 ? "curve" : "curve second"} d={path(one.points as [number, number][]) ?? ""} />
          ))}
          {dots.map((dot) => (
            <DotMark key={dot.words} dot={dot} x={across(dot.x)} y={up(dot.y)} letter={letter} />
          ))}
        </svg>
      </div>
      {series.length > 1 && (
        <figcaption>
          {series.map((one, place) => (
            <span key={one.title} class="legend">
              <svg viewBox="0 0 32 8" width="32" height="8" aria-hidden="true">
                <path class={place === 0 ? "curve" : "curve second"} d="M1 4H31" />
              </svg>
              {one.title}
            </span>
          ))}
        </figcaption>
      )}
      {children}
    </figure>
  );
}

/** A dot can be clicked where it can be chosen; the same choice stands beside the picture for the keyboard. */
function DotMark({ dot, x, y, letter }: { dot: Dot; x: number; y: number; letter: number }) {
  const half = (dot.isChosen ? 0.55 : 0.4) * letter;
  const kind = dot.isChosen ? "dot chosen" : "dot";
  return (
    <g class={dot.choose ? "choosable" : undefined} onClick={dot.choose} data-dot={dot.words}>
      {dot.choose && <circle class="reach" cx={x} cy={y} r={1.2 * letter} />}
      {dot.isOrigin ? <rect class="dot" x={x - half} y={y - half} width={2 * half} height={2 * half} /> : <circle class={kind} cx={x} cy={y} r={half} />}
    </g>
  );
}

function titleOf(axis: Axis): string {
  return axis.unit ? `${axis.title} [${axis.unit}]` : axis.title;
}

function levels(rules: readonly Rule[], along: Rule["along"]): number[] {
  return rules.filter((rule) => rule.along === along).map((rule) => rule.at);
}

function span(figures: readonly number[], fromZero: boolean): [number, number] {
  const [low, high] = [Math.min(...figures, ...(fromZero ? [0] : [])), Math.max(...figures)];
  const room = high > low ? 0 : Math.max(1, Math.abs(high) * 0.1);
  return Number.isFinite(low) && Number.isFinite(high) ? [low - room * Number(!fromZero), high + room] : [0, 1];
}
