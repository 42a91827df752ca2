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
  /** What an answer that was taken onto the bench is baked in and cut into; absent where none was. */
  taken?: Formula;
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
  const { shape, oven, bakeLossPercent, description, steps } = draft.taken ?? draft.saved;
  return create(FormulaSchema, {
    ...draft.saved,
    shape,
    oven,
    bakeLossPercent,
    description,
    steps,
    displayName: draft.displayName,
    slices: slices !== undefined && slices > 0 ? slices : undefined,
    lines: draft.lines.map((line) => (line.saved ? line.saved : create(LineSchema, { ingredient: line.ingredient, grams: typed(line.grams) ?? 0 }))),
  });
}

/** What is asked about: the saved formula by its name as long as nothing was turned, else the grams as they stand on the bench. */
export function subjectOf(draft: Draft): { case: "name"; value: string } | { case: "formula"; value: Formula } {
  const { saved } = draft;
  return isUntouched(draft)
    ? { case: "name", value: saved.revision === undefined ? saved.name : `${saved.name}/revisions/${saved.revision}` }
    : { case: "formula", value: formulaOf(draft) };
}

export function isUntouched(draft: Draft): boolean {
  const { saved } = draft;
  return (
    draft.taken === undefined &&
    draft.lines.length === saved.lines.length &&
    draft.lines.every((line, place) => line.saved === saved.lines[place]) &&
    draft.displayName === saved.displayName &&
    draft.slices.trim() === (saved.slices === undefined ? "" : String(saved.slices))
  );
}

/** A formula that was found, on the bench in place of what stood there; saving it is a new revision of the same formula. */
export function taking(draft: Draft, found: Formula): Draft {
  return {
    saved: draft.saved,
    taken: found,
    displayName: draft.displayName,
    slices: found.slices === undefined ? "" : String(found.slices),
    lines: found.lines.map((line) => ({
      id: ++lastId,
      ingredient: line.ingredient,
      displayName: nameOf(line),
      grams: grams(line.grams ?? 0),
      // What is counted stays counted, until its grams are turned.
      ...(line.count === undefined ? {} : { saved: create(LineSchema, { ingredient: line.ingredient, grams: line.grams, count: line.count, size: line.size }) }),
    })),
  };
}

/** The bench after its grams were saved: they are those of the saved formula now. */
export function asSaved({ taken: _, ...draft }: Draft, saved: Formula): Draft {
  const isSame = saved.lines.length === draft.lines.length;
  return { ...draft, saved, lines: draft.lines.map((line, place) => (isSame ? { ...line, saved: saved.lines[place] } : line)) };
}

const place = (name: string) => `swapsolver-draft:${name}`;

export function keepDraft(draft: Draft): void {
  const { saved, taken, lines, ...typedIn } = draft;
  sessionStorage.setItem(
    place(saved.name),
    JSON.stringify({
      ...typedIn,
      saved: toJsonString(FormulaSchema, saved),
      taken: taken && toJsonString(FormulaSchema, taken),
      lines: lines.map((line) => ({ ...line, saved: line.saved && (saved.lines.indexOf(line.saved) >= 0 ? saved.lines.indexOf(line.saved) : toJsonString(LineSchema, line.saved)) })),
    }),
  );
}

interface Kept extends Omit<Draft, "saved" | "taken" | "lines"> {
  saved: string;
  taken?: string;
  /** A saved line stands by its number in the saved formula, or by itself. */
  lines: (Omit<DraftLine, "saved"> & { saved?: string | number })[];
}

export function keptDraft(name: string): Draft | undefined {
  const text = sessionStorage.getItem(place(name));
  if (!text) {
    return undefined;
  }

  const { saved: savedText, taken, lines, ...typedIn } = JSON.parse(text) as Kept;
  const saved = fromJsonString(FormulaSchema, savedText);
  const lineOf = (kept: string | number) => (typeof kept === "number" ? saved.lines[kept] : fromJsonString(LineSchema, kept));
  return {
    ...typedIn,
    saved,
    ...(taken ? { taken: fromJsonString(FormulaSchema, taken) } : {}),
    lines: lines.map(({ saved: kept, ...line }) => ({ ...line, id: ++lastId, ...(kept === undefined ? {} : { saved: lineOf(kept) }) })),
  };
}

export function dropDraft(name: string): void {
  sessionStorage.removeItem(place(name));
}
