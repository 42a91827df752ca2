// Figures as the console writes them: the same question shows the same figures in both.
import { Reading_Standing, type Reading } from "contract/reading_pb";

/** Grams without decimals where they are whole, else with one or two. */
export function grams(figure: number): string {
  return trimmed(figure, 2);
}

/** At most so many decimals, none that say nothing. */
export function trimmed(figure: number, decimals: number): string {
  return Number(figure.toFixed(decimals)).toString();
}

export function fixed(figure: number | undefined, decimals: number): string {
  return figure === undefined ? "not known" : figure.toFixed(decimals);
}

const mostDecimals = 6;

function decimalsFor(size: number): number {
  return size === 0 ? 0 : size < 1 ? 3 : size < 10 ? 2 : size < 100 ? 1 : 0;
}

export interface ReadingWords {
  value: string;
  band: string;
  range: string;
  standing: string;
}

/** Value and band of a reading with the same decimals; a value outside its band never looks like the end of it. */
export function readingWords(reading: Reading): ReadingWords {
  const { low, high } = reading.band ?? {};
  let decimals = decimalsFor(Math.max(Math.abs(reading.value), Math.abs(low ?? 0), Math.abs(high ?? 0)));
  const write = (figure: number) => figure.toFixed(decimals);
  const looksInside = () =>
    (reading.standing === Reading_Standing.BELOW && low !== undefined && write(low) === write(reading.value)) ||
    (reading.standing === Reading_Standing.ABOVE && high !== undefined && write(high) === write(reading.value));
  while (decimals < mostDecimals && looksInside()) {
    decimals++;
  }

  return { value: write(reading.value), band: bandWords(low, high, write), range: rangeWords(reading, write), standing: standingWords(reading) };
}

function bandWords(low: number | undefined, high: number | undefined, write: (figure: number) => string): string {
  if (low !== undefined && high !== undefined) {
    return low === high ? `${write(low)} only` : `${write(low)} to ${write(high)}`;
  }

  return low !== undefined ? `at least ${write(low)}` : high !== undefined ? `at most ${write(high)}` : "no limit";
}

function rangeWords(reading: Reading, write: (figure: number) => string): string {
  const [low, high] = [write(reading.low), write(reading.high)];
  return low === high ? "" : `${low} to ${high}`;
}

export function standingWords(reading: Reading): string {
  if (reading.band === undefined) {
    return "";
  }

  return reading.standing === Reading_Standing.BELOW ? "too low" : reading.standing === Reading_Standing.ABOVE ? "too high" : "inside";
}

/** The masses of each role say something only where they are outside. */
export function tellsSomething(reading: Reading): boolean {
  return reading.standing !== Reading_Standing.INSIDE || !reading.balance.endsWith("-mass");
}

/** Kitchens of a hundred; neither end is printed unless it is meant. */
export function kitchens(chance: number): string {
  const share = chance * 100;
  return share >= 100 ? "100" : share > 99 ? "99" : share > 0 && share < 1 ? "fewer than 1" : share.toFixed(0);
}

/** Reads what somebody typed, with a point or a comma; undefined where nothing stands there, NaN where it is no figure. */
export function typed(text: string): number | undefined {
  const plain = text.trim().replace(",", ".");
  return plain === "" ? undefined : /^\d{0,7}(\.\d{0,6})?$/.test(plain) && plain !== "." ? Number(plain) : Number.NaN;
}
