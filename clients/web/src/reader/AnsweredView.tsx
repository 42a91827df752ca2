// What came of a wish: the changes of each step first, then the loaf, or what stands in the way.
import { useEffect, useRef, useState } from "preact/hooks";
import type { Conflict } from "contract/answer_pb";
import { CheckSwapResponse_Verdict as Verdict } from "contract/balance_service_pb";
import type { Formula } from "contract/formula_pb";
import { Alternatives } from "../parts/Alternatives";
import { AnswerView } from "../parts/AnswerView";
import { ChangeList } from "../parts/ChangeList";
import { ConflictNote } from "../parts/ConflictNote";
import { ReadingTable } from "../parts/ReadingTable";
import { grams } from "../words/figures";
import { LoafAsItStands } from "./LoafAsItStands";
import { type Answered, type Step, wayOutOf } from "./ask";
import type { Wish } from "./wish";

export function AnsweredView({ answered, askAgain }: { answered: Answered; askAgain: (wish: Wish) => void }) {
  const heading = useRef<HTMLHeadingElement>(null);
  const [shown, setShown] = useState<{ formula: Formula; words: string }>();
  useEffect(() => {
    setShown(undefined);
    heading.current?.focus();
  }, [answered]);
  const last = answered.steps.at(-1);
  if (!last) {
    return null;
  }

  return (
    <div class="answered">
      <h2 ref={heading} tabIndex={-1}>
        {verdict(answered, last)}
      </h2>
      {answered.steps.slice(0, -1).map((step, place) => (
        <section key={place} class="step" aria-label={`Step ${place + 1}`}>
          <h3>
            Step {place + 1}: {step.title}
          </h3>
          <StepWords step={step} />
          {step.answers[0] && <ChangeList changes={step.answers[0].changes} />}
        </section>
      ))}
      {answered.steps.length > 1 && (
        <h3>
          Step {answered.steps.length}: {last.title}
        </h3>
      )}
      <StepWords step={last} />
      {answered.isWhole ? (
        <WholeLoaf key={answered.wish.formula} step={last} />
      ) : (
        <>
          <ConflictNote conflict={last.conflict} ways={(conflict) => way(conflict, answered.wish, askAgain, setShown)} />
          {last.nearest && !shown && (
            <details>
              <summary>The nearest loaf, which does not meet every wish</summary>
              <AnswerView answer={last.nearest} />
            </details>
          )}
          {shown && <LoafAsItStands formula={shown.formula} title={shown.words} bandsOf={answered.wish.formula} />}
        </>
      )}
    </div>
  );
}

function way(conflict: Conflict, wish: Wish, askAgain: (wish: Wish) => void, show: (shown: { formula: Formula; words: string }) => void) {
  const out = wayOutOf(conflict, wish);
  if (out) {
    return { words: out.words, take: () => askAgain(out.wish) };
  }

  const { formula } = conflict;
  return formula ? { words: "Show the loaf that would do", take: () => show({ formula, words: "The loaf that gives way on this" }) } : undefined;
}

function verdict(answered: Answered, last: Step): string {
  if (!answered.isWhole) {
    return last.check ? "No. It does not balance, and no repair was found." : "No loaf meets all of these wishes.";
  }

  const name = last.answers[0]?.formula?.displayName ?? last.check?.swapped?.displayName ?? "";
  const check = answered.steps.find((step) => step.check)?.check;
  return check?.verdict === Verdict.DOES_NOT_BALANCE
    ? "No, not the same weight. What would work instead stands here."
    : check?.verdict === Verdict.BALANCES_WITH_REPAIR
      ? "Yes, if other lines are corrected as here."
      : `Yes: ${name}`;
}

/** What is to be said of a step beside its changes. */
function StepWords({ step }: { step: Step }) {
  return (
    <>
      {step.check && step.check.reasons.length > 0 && (
        <ul class="reasons">
          {step.check.reasons.map((reason) => (
            <li key={reason}>{reason}</li>
          ))}
        </ul>
      )}
      {step.check && step.check.verdict !== Verdict.BALANCES && (
        <details>
          <summary>Readings with the swap as proposed</summary>
          <ReadingTable readings={step.check.readings} caption="Readings with the swap as proposed" />
        </details>
      )}
      {step.factor !== undefined && step.factor > 0 && step.answers.length > 0 && (
        <p>The batter is {grams(step.factor)} times the formula's; 'becomes' is counted from the formula at that size.</p>
      )}
      {step.check?.reply && (
        <details>
          <summary>The same in a sentence or two, to pass on</summary>
          <p class="reply">{step.check.reply}</p>
        </details>
      )}
    </>
  );
}

function WholeLoaf({ step }: { step: Step }) {
  return step.check?.verdict === Verdict.BALANCES && step.check.swapped ? (
    <LoafAsItStands formula={step.check.swapped} title="The loaf with the swap" cautions={step.check.cautions} />
  ) : (
    <Alternatives answers={step.answers} bake={step.bake} />
  );
}
