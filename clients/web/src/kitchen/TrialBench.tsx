// What was baked of this formula and measured, which test would help most, and what the kitchen learned.
import { useEffect } from "preact/hooks";
import type { SuggestTrialsResponse, Trial } from "contract/trial_service_pb";
import { trials } from "../asking/service";
import { useAsking } from "../asking/useAsking";
import { Station } from "../parts/Station";
import { FaultNote, Waiting } from "../parts/Waiting";
import { trimmed } from "../words/figures";
import { dayOf } from "../words/moments";
import { subjectOf } from "./draft";
import type { BenchProps } from "./FormulaBenches";
import { LearnedFacts } from "./LearnedFacts";
import { TrialForm } from "./TrialForm";

/** Trials that are shown; older ones are reached by the console. */
const most = 200;

export function TrialBench({ draft }: BenchProps) {
  const { name } = draft.saved;
  const listing = useAsking<Trial[]>();
  const helping = useAsking<SuggestTrialsResponse>();
  const read = () => {
    void listing.ask(async (signal) => (await trials.listTrials({ parent: name, pageSize: most }, { signal })).trials);
    void helping.ask((signal) => trials.suggestTrials({ subject: subjectOf(draft) }, { signal }));
  };
  useEffect(read, [name]);
  const isShipped = draft.saved.revision === undefined;
  return (
    <div class="pair">
      <div>
        <Station of="oven" title="Write a bake down" id="trial-new">
          {isShipped ? <p>Save this formula as one of this kitchen first: trials are kept with its revisions.</p> : <TrialForm formula={name} added={read} />}
        </Station>
      </div>
      <div>
        <Station of="slice" title="Bakes so far" id="trial-list">
          <Waiting asking={listing} what="Fetching the trials." />
          <FaultNote fault={listing.fault} again={listing.again} />
          {listing.answer?.length === 0 && <p>None was written down yet.</p>}
          <ul class="plain-list">
            {listing.answer?.map((trial) => (
              <li key={trial.name} data-trial={trial.name}>
                <strong>{trialTitle(trial)}</strong>
                <small>{measured(trial)}</small>
                {trial.note && <p class="note">{trial.note}</p>}
              </li>
            ))}
          </ul>
        </Station>
        <Station of="balance" title="Tests that would help most" id="trial-help">
          <Waiting asking={helping} what="Weighing up which test helps." />
          <FaultNote fault={helping.fault} again={helping.again} />
          {helping.answer?.suggestions.length === 0 && <p>No test would sharpen these answers much.</p>}
          <ol>
            {helping.answer?.suggestions.map((one) => (
              <li key={one.fact}>
                {one.test}
                <small>
                  {one.why} It is {one.spreadPercent.toFixed(0)} % wide for that now, and would be {one.spreadAfterPercent.toFixed(0)} %.
                </small>
              </li>
            ))}
          </ol>
        </Station>
        <LearnedFacts key={listing.answer?.length} />
      </div>
    </div>
  );
}

function trialTitle(trial: Trial): string {
  const number = trial.name.slice(trial.name.lastIndexOf("/") + 1);
  return [`Trial ${number}`, `revision ${trial.revision}`, dayOf(trial.createTime)].filter(Boolean).join(", ");
}

function measured(trial: Trial): string {
  const figures: [words: string, figure: number | undefined, unit: string][] = [
    ["baked for", trial.minutes, "min"],
    ["core", trial.coreCelsius, "°C"],
    ["batter", trial.batterMassG, "g"],
    ["out of the oven", trial.bakedMassG, "g"],
    ["cooled", trial.cooledMassG, "g"],
    ["high", trial.heightMm, "mm"],
    ["wide", trial.widthMm, "mm"],
    ["foretold", trial.foretold?.minutes, "min"],
  ];
  return figures
    .filter(([, figure]) => figure !== undefined)
    .map(([words, figure, unit]) => `${words} ${trimmed(figure!, 1)} ${unit}`)
    .join("; ");
}
