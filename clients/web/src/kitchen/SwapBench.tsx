// Everything that may stand in for a line, judged pair by pair as it comes.
import { useState } from "preact/hooks";
import { CheckSwapResponse_Verdict as Verdict } from "contract/balance_service_pb";
import type { ChartSwapsResponse } from "contract/substitution_service_pb";
import { substitutions } from "../asking/service";
import { useStream } from "../asking/useStream";
import { Station } from "../parts/Station";
import { FaultNote, Waiting } from "../parts/Waiting";
import { grams, kitchens } from "../words/figures";
import { subjectOf } from "./draft";
import type { BenchProps } from "./FormulaBenches";

const verdicts: Partial<Record<Verdict, string>> = { [Verdict.BALANCES]: "yes", [Verdict.BALANCES_WITH_REPAIR]: "with repair", [Verdict.DOES_NOT_BALANCE]: "no" };

export function SwapBench({ draft }: BenchProps) {
  const [chosen, setChosen] = useState<string[]>([]);
  const [hidesNo, setHidesNo] = useState(true);
  const charting = useStream<ChartSwapsResponse>();
  const { pieces } = charting;
  const lines = [...new Set(pieces.map((pair) => pair.ingredient))];
  return (
    <>
      <Station of="balance" title="Lines to look at" id="swaps-question" lead="None tapped: all of them, which takes longer.">
        <form
          onSubmit={(event) => {
            event.preventDefault();
            void charting.start((signal) => substitutions.chartSwaps({ subject: subjectOf(draft), ingredients: chosen }, { signal }));
          }}
        >
          <fieldset class="chips" aria-label="Lines to look at">
            {draft.lines.map((line) => (
              <label key={line.id} class="chip">
                <input
                  type="checkbox"
                  checked={chosen.includes(line.ingredient)}
                  onChange={() => setChosen(chosen.includes(line.ingredient) ? chosen.filter((one) => one !== line.ingredient) : [...chosen, line.ingredient])}
                />
                <span>{line.displayName}</span>
              </label>
            ))}
          </fieldset>
          <p class="share">
            <button type="submit" class="main">
              Judge the swaps
            </button>
            {charting.stage === "asking" && (
              <button type="button" onClick={charting.stop}>
                Stop
              </button>
            )}
          </p>
        </form>
      </Station>
      <Waiting asking={charting} what={`Judging: ${pieces.length} of ${pieces[0]?.pairs ?? "all"} pairs.`} />
      <FaultNote fault={charting.fault} again={charting.again} />
      {pieces.length > 0 && (
        <>
          {charting.stage === "answered" && pieces.length < pieces[0]!.pairs && (
            <p>
              The time ran out: {pieces.length} of {pieces[0]!.pairs} pairs were judged.
            </p>
          )}
          <label class="check">
            <input type="checkbox" checked={hidesNo} onChange={(event) => setHidesNo(event.currentTarget.checked)} />
            Only what balances, as it is or with repair
          </label>
          {lines.map((ingredient) => (
            <SwapTable key={ingredient} pairs={pieces.filter((pair) => pair.ingredient === ingredient)} hidesNo={hidesNo} />
          ))}
          <p class="small">
            Of 100: kitchens in which every band holds, as ingredients vary. Judged by the facts of the ingredients; check the label of every packet, and bake a trial first.
          </p>
        </>
      )}
    </>
  );
}

function SwapTable({ pairs, hidesNo }: { pairs: readonly ChartSwapsResponse[]; hidesNo: boolean }) {
  const shown = pairs.filter((pair) => !hidesNo || pair.verdict !== Verdict.DOES_NOT_BALANCE).sort((one, other) => one.verdict - other.verdict || other.chanceOfBalance - one.chanceOfBalance);
  const name = pairs[0]!.displayName;
  return (
    <section class="station" aria-label={`In place of ${name}`}>
      <h3 class="station-title">In place of {name}</h3>
      {shown.length === 0 ? (
        <p>Nothing that was judged so far balances.</p>
      ) : (
        <div class="wide">
          <table class="swaps" aria-label={`Swaps for ${name}`}>
            <thead>
              <tr>
                <th scope="col">What</th>
                <th scope="col">Balances</th>
                <th scope="col" class="figure">Dose</th>
                <th scope="col" class="figure">Of 100</th>
                <th scope="col">Why</th>
              </tr>
            </thead>
            <tbody>
              {shown.map((pair) => (
                <tr key={pair.pair} data-replacement={pair.replacement} data-verdict={verdicts[pair.verdict]} data-dose={pair.doseGrams}>
                  <th scope="row">{pair.replacement ? pair.replacementDisplayName : "nothing"}</th>
                  <td>{verdicts[pair.verdict]}</td>
                  <td class="figure">{pair.doseGrams !== undefined && pair.replacement ? `${grams(pair.doseGrams)} g` : ""}</td>
                  <td class="figure sure">{kitchens(pair.chanceOfBalance)}</td>
                  <td>
                    {pair.reason}
                    {pair.changes.length > 0 && <small>Besides: {pair.changes.map((change) => `${change.displayName} ${grams(change.beforeGrams)} to ${grams(change.afterGrams)} g`).join(", ")}.</small>}
                    {pair.cautions.map((caution) => (
                      <small key={caution} class="line-caution">
                        Caution: {caution}
                      </small>
                    ))}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </section>
  );
}
