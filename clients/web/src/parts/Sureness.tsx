// How sure an answer is, and on what that hangs.
import type { Answer } from "contract/answer_pb";
import { kitchens } from "../words/figures";
import { nameOf } from "../words/names";

export function Sureness({ answer }: { answer: Answer }) {
  const near = answer.readings.filter((reading) => answer.binding.includes(reading.balance) && !reading.balance.endsWith("-mass")).map((reading) => reading.title);
  return (
    <div class="sureness">
      <p class="sure" data-chance={answer.chanceOfBalance}>
        <meter min="0" max="1" value={answer.chanceOfBalance} aria-label="Kitchens in which it balances" />
        Balances in <strong>{kitchens(answer.chanceOfBalance)} of 100 kitchens</strong>, as ingredients vary.
      </p>
      {answer.decisive.length > 0 && (
        <>
          <p>What decides it most:</p>
          <ul>
            {answer.decisive.map((fact) => (
              <li key={fact.words}>{fact.words}</li>
            ))}
          </ul>
        </>
      )}
      {near.length > 0 && <p>Little room is left in: {near.join(", ")}.</p>}
      {answer.slack.map((slack) => (
        <p key={slack.words}>{slack.words}</p>
      ))}
      {answer.bestSoFar && <p>The time ran out before this was proven the best.</p>}
      {answer.notes.map((note) => (
        <p key={note}>{note}</p>
      ))}
      {answer.replacement?.timingWords && <p>{answer.replacement.timingWords}</p>}
    </div>
  );
}

export function doseWords(answer: Answer): string {
  return answer.replacement?.doses.map((dose) => `${dose.grams} g ${nameOf({ ingredient: dose.ingredient, displayName: dose.displayName })}`).join(" and ") ?? "";
}
