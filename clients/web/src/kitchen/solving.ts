// Puts a question about the formula on the bench to the service.
import type { Answer, Conflict, HabitsSchema } from "contract/answer_pb";
import type { MessageInitShape } from "@bufbuild/protobuf";
import type { BakeChange } from "contract/bake_pb";
import { reformulations, substitutions } from "../asking/service";
import { diets } from "../words/diets";
import { grams, typed } from "../words/figures";
import { type Draft, subjectOf } from "./draft";

export const tasks = [
  { id: "without", title: "Leave something out" },
  { id: "instead", title: "Replace one ingredient" },
  { id: "towards", title: "Move its readings" },
  { id: "size", title: "Bake another size" },
] as const;

export interface AimedReading {
  reading: string;
  low: string;
  high: string;
}

/** What is asked, as it was typed. */
export interface Wanted {
  task: (typeof tasks)[number]["id"];
  without: string[];
  diet: string;
  ingredient: string;
  stock: string;
  goals: string[];
  aims: AimedReading[];
  slices: string;
  tin: [length: string, width: string, height: string];
  carbs: string;
  weighedEgg: boolean;
  newIngredients: string;
  sureness: string;
}

export const nothingWanted: Wanted = {
  task: "without",
  without: [],
  diet: "",
  ingredient: "",
  stock: "",
  goals: [],
  aims: [],
  slices: "",
  tin: ["", "", ""],
  carbs: "",
  weighedEgg: false,
  newIngredients: "",
  sureness: "",
};

export interface Solved {
  title: string;
  answers: Answer[];
  conflict: Conflict[];
  nearest?: Answer | undefined;
  bake?: BakeChange | undefined;
  notes: string[];
}

/** Why a wish cannot be asked yet; empty where it can. */
export function wrongIn(wanted: Wanted): string {
  const figures: [name: string, text: string][] = [
    ["net carbs", wanted.carbs],
    ["sureness", wanted.sureness],
    ["slices", wanted.slices],
    ["what is left", wanted.stock],
    ...wanted.tin.map((side): [string, string] => ["tin", side]),
    ...wanted.aims.flatMap((aim): [string, string][] => [[aim.reading, aim.low], [aim.reading, aim.high]]),
  ];
  const wrong = figures.find(([, text]) => Number.isNaN(typed(text) ?? 0));
  if (wrong) {
    return `'${wrong[1]}' is not a number for ${wrong[0]}: give a number, as 2.5.`;
  }

  const missing = {
    without: wanted.without.length === 0 && !wanted.diet && !wanted.carbs.trim() && "Say what is to be left out, or a way of eating, or a limit.",
    instead: !wanted.ingredient && "Choose the ingredient that goes out.",
    towards: wanted.goals.length + wanted.aims.length === 0 && "Choose what it is to become, or a reading to move.",
    size: !wanted.slices.trim() && !wanted.tin.every((side) => side.trim()) && "Give slices, or all three sides of a tin.",
  }[wanted.task];
  const open = wanted.task === "towards" && wanted.aims.find((aim) => !aim.low.trim() && !aim.high.trim());
  return missing || (open ? `Say how low or how high ${open.reading} may be.` : "");
}

export async function solve(draft: Draft, wanted: Wanted, signal: AbortSignal): Promise<Solved> {
  const subject = subjectOf(draft);
  const habits = habitsOf(wanted);
  const options = { signal };
  switch (wanted.task) {
    case "without": {
      const diet = diets.find((one) => one.id === wanted.diet)?.diet;
      const found = await substitutions.varyFormula({ subject, without: wanted.without, ...(diet === undefined ? {} : { diet }), habits }, options);
      return { ...found, title: "A variant", notes: [] };
    }
    case "instead": {
      const stockGrams = typed(wanted.stock);
      const found = await substitutions.replaceIngredient({ subject, ingredient: wanted.ingredient, ...(stockGrams === undefined ? {} : { stockGrams }), habits: { ...habits, answers: 3 } }, options);
      return { ...found, title: "A replacement", notes: found.further.length > 0 ? [`${found.further.length} more doses would keep every band.`] : [] };
    }
    case "towards": {
      const targets = [
        ...wanted.goals.map((name) => ({ name })),
        ...wanted.aims.map((aim) => ({ name: aim.reading, ...limits(aim.low, aim.high) })),
      ];
      const found = await reformulations.reformulateFormula({ subject, targets, habits }, options);
      return { ...found, title: "Moved readings", notes: [] };
    }
    case "size": {
      const [lengthMm, widthMm, heightMm] = wanted.tin.map(typed);
      const slices = typed(wanted.slices);
      const isTin = lengthMm !== undefined && widthMm !== undefined && heightMm !== undefined;
      const found = await reformulations.resizeFormula(
        { subject, size: isTin ? { case: "tin", value: { lengthMm, widthMm, heightMm } } : { case: undefined }, ...(slices === undefined ? {} : { slices }), habits },
        options,
      );
      return { ...found, title: "Another size", notes: found.factor > 0 ? [`The batter is ${grams(found.factor)} times what stands on the bench.`] : [] };
    }
  }
}

function limits(low: string, high: string) {
  const [least, most] = [typed(low), typed(high)];
  return { ...(least === undefined ? {} : { low: least }), ...(most === undefined ? {} : { high: most }) };
}

export function habitsOf(wanted: Pick<Wanted, "carbs" | "weighedEgg" | "newIngredients" | "sureness">): MessageInitShape<typeof HabitsSchema> {
  const [carbs, most, sureness] = [typed(wanted.carbs), typed(wanted.newIngredients), typed(wanted.sureness)];
  return {
    weighedEgg: wanted.weighedEgg,
    ...(most === undefined ? {} : { newIngredients: most }),
    ...(sureness === undefined ? {} : { surenessPercent: sureness }),
    limits: carbs === undefined ? [] : [{ balance: "net-carbohydrate", high: carbs }],
  };
}
