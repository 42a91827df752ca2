// Names of things as the contract has them, in words.
import { Line_Size, type Formula, type Line } from "contract/formula_pb";

/** The id that a resource name ends with. */
export function idOf(resource: string): string {
  return resource.slice(resource.lastIndexOf("/") + 1);
}

/** A resource name or id in words. */
export function wordsOf(resource: string): string {
  return idOf(resource).replaceAll("-", " ");
}

export function nameOf(line: { ingredient: string; displayName: string }): string {
  return line.displayName || wordsOf(line.ingredient);
}

const sizes: Partial<Record<Line_Size, string>> = {
  [Line_Size.SMALL_US]: "small US",
  [Line_Size.MEDIUM_US]: "medium US",
  [Line_Size.LARGE_US]: "large US",
  [Line_Size.EXTRA_LARGE_US]: "extra large US",
  [Line_Size.JUMBO_US]: "jumbo US",
  [Line_Size.SMALL_EU]: "small EU",
  [Line_Size.MEDIUM_EU]: "medium EU",
  [Line_Size.LARGE_EU]: "large EU",
  [Line_Size.EXTRA_LARGE_EU]: "extra large EU",
};

/** What is counted, as '4 eggs, large US'; empty where nothing is. */
export function countWords(line: Line): string {
  if (line.count === undefined) {
    return "";
  }

  const size = line.size === undefined ? undefined : sizes[line.size];
  return `${pieces(line.ingredient, line.count)}${size ? `, ${size}` : ""}`;
}

export function pieces(ingredient: string, count: number): string {
  const parts = idOf(ingredient).split("-");
  const what = parts.includes("white") ? "white" : parts.includes("yolk") ? "yolk" : parts.includes("egg") ? "egg" : "piece";
  return `${Number(count.toFixed(2))} ${what}${count === 1 ? "" : "s"}`;
}

/** Slices, shape and oven of a formula in a line. */
export function bakeWords(formula: Formula): string {
  const words: string[] = [];
  if (formula.slices !== undefined) {
    words.push(`${formula.slices} ${formula.slices === 1 ? "slice" : "slices"}`);
  }

  const shape = formula.shape?.kind;
  if (shape?.case === "tin") {
    words.push(`tin of ${shape.value.lengthMm} x ${shape.value.widthMm} x ${shape.value.heightMm} mm`);
  } else if (shape?.case === "pieces") {
    words.push(`${shape.value.count} pieces`);
  } else if (shape?.case === "freeForm") {
    words.push("set on a tray");
  }

  if (formula.oven) {
    words.push(`oven at ${formula.oven.celsius} °C ${formula.oven.fan ? "with fan" : "without fan"}`);
  }

  return words.join("; ");
}

export function plural(count: number, one: string, many = `${one}s`): string {
  return count === 1 ? one : many;
}
