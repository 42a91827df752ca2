// Solving the formula on the bench again, with whatever answers come.
import { useEffect, useRef, useState } from "preact/hooks";
import type { Formula } from "contract/formula_pb";
import type { BalanceFormulaResponse } from "contract/balance_service_pb";
import { balances } from "../asking/service";
import { useAsking } from "../asking/useAsking";
import { Alternatives } from "../parts/Alternatives";
import { AnswerView } from "../parts/AnswerView";
import { ConflictNote } from "../parts/ConflictNote";
import { Station } from "../parts/Station";
import { FaultNote, Waiting } from "../parts/Waiting";
import type { BenchProps } from "./FormulaBenches";
import { subjectOf } from "./draft";
import { nothingWanted, type Solved, solve, type Wanted, wrongIn } from "./solving";
import { SolveFields } from "./SolveFields";
import { TakeButton } from "./TakeButton";

export function SolveBench({ draft, take }: BenchProps) {
  const [wanted, setWanted] = useState<Wanted>(nothingWanted);
  const [wrong, setWrong] = useState("");
  const solving = useAsking<Solved>();
  const weighed = useAsking<BalanceFormulaResponse>();
  useEffect(() => void weighed.ask((signal) => balances.balanceFormula({ subject: subjectOf(draft), typicalOnly: true }, { signal })), []);
  return (
    <>
      <Station of="balance" title="Question" id="solve-question" lead="It is asked of the grams as they stand on the bench.">
        <form
          onSubmit={(event) => {
            event.preventDefault();
            const found = wrongIn(wanted);
            setWrong(found);
            if (!found) {
              void solving.ask((signal) => solve(draft, wanted, signal));
            }
          }}
        >
          <SolveFields draft={draft} wanted={wanted} change={setWanted} allergens={weighed.answer?.allergens} />
          <p role="alert" class="wrong">
            {wrong}
          </p>
          <button type="submit" class="main">
            Solve
          </button>
        </form>
      </Station>
      <Waiting asking={solving} what="Solving." />
      <FaultNote fault={solving.fault} again={solving.again} />
      {solving.answer && solving.stage === "answered" && <SolvedView solved={solving.answer} take={take} />}
    </>
  );
}

function SolvedView({ solved, take }: { solved: Solved; take: (found: Formula) => void }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), [solved]);
  const isFound = solved.answers.length > 0;
  const { nearest } = solved;
  return (
    <section aria-label="What came of it">
      <h3 ref={heading} tabIndex={-1}>
        {isFound ? solved.title : "No loaf meets all of these wishes."}
      </h3>
      {solved.notes.map((note) => (
        <p key={note}>{note}</p>
      ))}
      {isFound && <Alternatives answers={solved.answers} bake={solved.bake} before={(answer) => <TakeButton found={answer.formula} take={take} />} />}
      {!isFound && (
        <>
          <ConflictNote
            conflict={solved.conflict}
            ways={({ formula }) => (formula ? { words: "Take the loaf that would do onto the bench", take: () => take(formula) } : undefined)}
          />
          {nearest && (
            <details>
              <summary>The nearest loaf, which does not meet every wish</summary>
              <TakeButton found={nearest.formula} take={take} />
              <AnswerView answer={nearest} />
            </details>
          )}
        </>
      )}
    </section>
  );
}
