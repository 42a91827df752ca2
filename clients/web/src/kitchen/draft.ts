// A formula on the bench: what is typed, kept in this tab until it is saved, so that no fault and no reload loses a gram.
import { create, fromJsonString, toJsonString } from "@bufbuild/protobuf";
import { type Formula, FormulaSchema, LineSchema } from "contract/formula_pb";
import { grams, typed } from "../words/figures";
import { nameOf } from "../words/names";

export interface DraftLine {
  /** Stays with the line while others come and go. */
  id: number;
  ingredient: string;
  displayName: string;
  /** As typed. */
  grams: string;
  /** The saved line, where its count or words were not touched. */
  saved?: Formula["lines"][number];
}

export interface Draft {
  /** What was read; its etag goes with the next save. */
  saved: Formula;
  displayName: string;
  slices: string;
  lines: DraftLine[];
}

let lastId = 0;

export function draftOf(saved: Formula, read: Formula): Draft {
  return {
    saved,
    displayName: saved.displayName,
    slices: saved.slices === undefined ? "" : String(saved.slices),
    // Lines in words or counts stand in the grams that they were read as; they keep their words until their grams are turned.
    lines: read.lines.map((line, place) => ({
      id: ++lastId,
      ingredient: line.ingredient,
      displayName: nameOf(line),
      grams: grams(line.grams ?? 0),
      ...(read.lines.length === saved.lines.length ? { saved: saved.lines[place] } : {}),
    })),
  };
}

export function newLine(ingredient: string, displayName: string): DraftLine {
  return { id: ++lastId, ingredient, displayName, grams: "0" };
}

/** Lines that are no figure, by their id. */
export function wrongLines(draft: Draft): Map<number, string> {
  return new Map(
    draft.lines
      .filter((line) => !((typed(line.grams) ?? Number.NaN) >= 0))
      .map((line) => [line.id, `'${line.grams}' is no mass: give grams, as 120 or 4.5; 0 leaves the line out.`]),
  );
}

/** The formula as it is typed. */
export function formulaOf(draft: Draft): Formula {
  const slices = typed(draft.slices);
  return create(FormulaSchema, {
    ...draft.saved,
    displayName: draft.displayName,
    slices: slices !== undefined && slices > 0 ? slices : undefined,
    lines: draft.lines.map((line) => (line.saved ? line.saved : create(LineSchema, { ingredient: line.ingredient, grams: typed(line.grams) ?? 0 }))),
  });
}

const place = (name: string) => `swapsolver-draft:${name}`;

export function keepDraft(draft: Draft): void {
  sessionStorage.setItem(place(draft.saved.name), JSON.stringify({ ...draft, saved: toJsonString(FormulaSchema, draft.saved), lines: draft.lines.map((line) => ({ ...line, saved: line.saved && toJsonString(LineSchema, line.saved) })) }));
}

export function keptDraft(name: string): Draft | undefined {
  const text = sessionStorage.getItem(place(name));
  if (!text) {
    return undefined;
  }

  const kept = JSON.parse(text) as Omit<Draft, "saved" | "lines"> & { saved: string; lines: (Omit<DraftLine, "saved"> & { saved?: string })[] };
  return {
    ...kept,
    saved: fromJsonString(FormulaSchema, kept.saved),
    lines: kept.lines.map(({ saved, ...line }) => ({ ...line, id: ++lastId, ...(saved ? { saved: fromJsonString(LineSchema, saved) } : {}) })),
  };
}

export function dropDraft(name: string): void {
  sessionStorage.removeItem(place(name));
}
