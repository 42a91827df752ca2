// Several answers to one question: one is looked at, the others can be chosen.
import type { ComponentChildren } from "preact";
import { useEffect, useState } from "preact/hooks";
import type { Answer } from "contract/answer_pb";
import type { BakeChange } from "contract/bake_pb";
import { AnswerView } from "./AnswerView";

export function Alternatives(props: { answers: readonly Answer[]; bake?: BakeChange | undefined; before?: (answer: Answer) => ComponentChildren }) {
  const [chosen, setChosen] = useState(0);
  useEffect(() => setChosen(0), [props.answers]);
  const answer = props.answers[chosen] ?? props.answers[0];
  return (
    <>
      {props.answers.length > 1 && (
        <fieldset class="alternatives">
          <legend>{props.answers.length} loaves would do, the nearest first</legend>
          {props.answers.map((one, place) => (
            <label key={place} class="chip">
              <input type="radio" name="alternative" checked={place === chosen} onChange={() => setChosen(place)} />
              <span>
                {place + 1}: {newIn(one) || "nothing new"}
              </span>
            </label>
          ))}
        </fieldset>
      )}
      {answer && props.before?.(answer)}
      {answer && <AnswerView answer={answer} bake={chosen === 0 ? props.bake : undefined} />}
    </>
  );
}

function newIn(answer: Answer): string {
  return answer.changes
    .filter((change) => change.beforeGrams === 0)
    .map((change) => change.displayName)
    .join(" and ");
}
