// Puts a wish to the service. What one method cannot hold is asked in steps: swaps first, then what is left out, then the size,
// each of the formula that the step before gave.
import type { Answer, Conflict } from "contract/answer_pb";
import { type CheckSwapResponse, CheckSwapResponse_Verdict } from "contract/balance_service_pb";
import type { BakeChange } from "contract/bake_pb";
import type { Formula } from "contract/formula_pb";
import { balances, reformulations, substitutions } from "../asking/service";
import { diets } from "../words/diets";
import { typed } from "../words/figures";
import { idOf, wordsOf } from "../words/names";
import { whatever, type Wish } from "./wish";

export interface Step {
  title: string;
  answers: Answer[];
  conflict: Conflict[];
  nearest?: Answer | undefined;
  /** Where one swap was proposed as it is. */
  check?: CheckSwapResponse;
  /** How many times the batter became, where the size was asked for. */
  factor?: number;
  bake?: BakeChange | undefined;
}

export interface Answered {
  wish: Wish;
  steps: Step[];
  /** Whether every step has an answer. */
  isWhole: boolean;
}

export type WrongWish = Partial<Record<"slices" | "tin" | "carbs", string>>;

/** What of a wish can be told wrong before anything is asked. */
export function wrongIn(wish: Wish): WrongWish {
  const wrong: WrongWish = {};
  const [slices, carbs, sides] = [typed(wish.slices), typed(wish.carbs), wish.tin.map(typed)];
  if (slices !== undefined && !(Number.isInteger(slices) && slices >= 1 && slices <= 1000)) {
    wrong.slices = `'${wish.slices}' is no number of slices: give a whole number, 1 to 1000.`;
  }

  if (carbs !== undefined && !(carbs >= 0)) {
    wrong.carbs = `'${wish.carbs}' is not a number: give grams a slice, as 2.5.`;
  }

  if (sides.some((side) => side !== undefined) && sides.some((side) => side === undefined || !(side > 0 && side <= 1000))) {
    wrong.tin = `'${wish.tin.join(" x ")}' is no tin: give length, width and height inside, each above 0 and at most 1000 mm.`;
  }

  return wrong;
}

type Subject = { case: "name"; value: string } | { case: "formula"; value: Formula };

export async function ask(wish: Wish, signal: AbortSignal): Promise<Answered> {
  const steps: Step[] = [];
  let subject: Subject = { case: "name", value: wish.formula };
  const isResized = wish.slices.trim() !== "" || wish.tin.some((side) => side.trim() !== "");
  const isVaried = wish.without.length > 0 || wish.diet !== "" || (wish.carbs.trim() !== "" && !isResized && wish.swaps.length === 0);
  const asked = [
    ...(wish.swaps.some((swap) => swap.to !== whatever) ? [check] : []),
    ...wish.swaps.filter((swap) => swap.to === whatever).map((swap) => replace(swap.from)),
    ...(isVaried ? [vary] : []),
    ...(isResized ? [resize] : []),
  ];
  for (const [place, one] of asked.entries()) {
    // A cap on carbs is on the loaf that is baked in the end.
    const step: Step = await one(wish, subject, habitsOf(wish, place === asked.length - 1), signal);
    steps.push(step);
    const found = step.answers[0]?.formula ?? (step.check?.verdict === CheckSwapResponse_Verdict.BALANCES ? step.check.swapped : undefined);
    if (!found) {
      return { wish, steps, isWhole: false };
    }

    subject = { case: "formula", value: found };
  }

  return { wish, steps, isWhole: true };
}

function habitsOf(wish: Wish, isLast: boolean) {
  const [carbs, most] = [typed(wish.carbs), typed(wish.newIngredients)];
  return {
    weighedEgg: wish.weighedEgg,
    ...(most === undefined ? {} : { newIngredients: most }),
    limits: isLast && carbs !== undefined ? [{ balance: "net-carbohydrate", high: carbs }] : [],
  };
}

type Habits = ReturnType<typeof habitsOf>;

async function check(wish: Wish, subject: Subject, habits: Habits, signal: AbortSignal): Promise<Step> {
  const swaps = wish.swaps.filter((swap) => swap.to !== whatever);
  const checked = await balances.checkSwap({ subject, swaps, habits }, { signal });
  const title = swaps.map((swap) => `${wordsOf(swap.to)} instead of ${wordsOf(swap.from)}`).join(", ");
  return { title, answers: checked.repair ? [checked.repair] : [], conflict: checked.conflict, check: checked };
}

function replace(from: string) {
  return async (_: Wish, subject: Subject, habits: Habits, signal: AbortSignal): Promise<Step> => {
    const { answers, conflict, nearest } = await substitutions.replaceIngredient({ subject, ingredient: from, habits: { ...habits, answers: 3 } }, { signal });
    return { title: `whatever fits instead of ${wordsOf(from)}`, answers, conflict, nearest };
  };
}

async function vary(wish: Wish, subject: Subject, habits: Habits, signal: AbortSignal): Promise<Step> {
  const diet = diets.find((one) => one.id === wish.diet);
  const { answers, conflict, nearest } = await substitutions.varyFormula({ subject, without: wish.without, ...(diet ? { diet: diet.diet } : {}), habits }, { signal });
  const parts = [wish.without.length > 0 ? `without ${wish.without.map(wordsOf).join(", ")}` : "", diet?.words ?? "", ...habits.limits.map((limit) => `at most ${limit.high} g net carbs a slice`)];
  return { title: parts.filter(Boolean).join(", "), answers, conflict, nearest };
}

async function resize(wish: Wish, subject: Subject, habits: Habits, signal: AbortSignal): Promise<Step> {
  const [lengthMm, widthMm, heightMm] = wish.tin.map(typed);
  const slices = typed(wish.slices);
  const isTin = lengthMm !== undefined && widthMm !== undefined && heightMm !== undefined;
  const resized = await reformulations.resizeFormula(
    { subject, size: isTin ? { case: "tin", value: { lengthMm, widthMm, heightMm } } : { case: undefined }, ...(slices === undefined ? {} : { slices }), habits },
    { signal },
  );
  const title = [isTin ? `for a tin of ${lengthMm} x ${widthMm} x ${heightMm} mm` : "", slices === undefined ? "" : `in ${slices} slices`].filter(Boolean).join(", ");
  return { title, answers: resized.answers, conflict: resized.conflict, nearest: resized.nearest, factor: resized.factor, bake: resized.bake };
}

/** What a conflict's wish is taken back by; undefined where the reader did not make it. */
export function wayOutOf(conflict: Conflict, wish: Wish): { words: string; wish: Wish } | undefined {
  const left = conflict.wish.startsWith("without:") ? conflict.wish.slice("without:".length) : "";
  if (left && wish.without.includes(left)) {
    return { words: `Ask again with ${wordsOf(left)} left in`, wish: { ...wish, without: wish.without.filter((id) => id !== left) } };
  }

  if (left && wish.diet && (left === `not-${wish.diet}` || left === "dairy")) {
    return { words: `Ask again without '${wish.diet}'`, wish: { ...wish, diet: "" } };
  }

  const swap = wish.swaps.find((one) => idOf(one.from) === left);
  if (swap) {
    return { words: `Ask again with ${wordsOf(swap.from)} left in`, wish: { ...wish, swaps: wish.swaps.filter((one) => one !== swap) } };
  }

  if (conflict.wish === "net-carbohydrate" && wish.carbs && conflict.relaxedValue !== undefined) {
    const enough = Number((Math.ceil(conflict.relaxedValue * 100 - 1e-9) / 100).toFixed(2)).toString();
    return { words: `Allow ${enough} g net carbs a slice and ask again`, wish: { ...wish, carbs: enough } };
  }

  if (conflict.wish === "whole-eggs" && conflict.formula) {
    return { words: "Weigh the eggs and ask again", wish: { ...wish, weighedEgg: true } };
  }

  return conflict.wish === "new-ingredients" && conflict.relaxedValue !== undefined && conflict.relaxedValue <= 5
    ? { words: `Allow ${conflict.relaxedValue} new ingredients and ask again`, wish: { ...wish, newIngredients: String(conflict.relaxedValue) } }
    : undefined;
}
