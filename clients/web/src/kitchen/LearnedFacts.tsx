// What the kitchen learned of its own facts; each can be turned off, or forgotten.
import { useEffect } from "preact/hooks";
import type { Estimate } from "contract/estimate_pb";
import { ChooseLearnedFactRequest_Choice as Choice, type LearnedFact } from "contract/trial_service_pb";
import { trials } from "../asking/service";
import { useAsking } from "../asking/useAsking";
import { Station } from "../parts/Station";
import { FaultNote, Waiting } from "../parts/Waiting";
import { trimmed } from "../words/figures";

export function LearnedFacts() {
  const listing = useAsking<LearnedFact[]>();
  const choosing = useAsking<void>();
  const read = async (signal: AbortSignal) => (await trials.listLearnedFacts({ pageSize: 1000 }, { signal })).facts;
  useEffect(() => void listing.ask(read), []);
  const choose = (name: string, choice: Choice) =>
    void choosing.ask(async (signal) => {
      await trials.chooseLearnedFact({ name, choice }, { signal });
      await listing.ask(read);
    });
  return (
    <Station of="balance" title="What the kitchen learned" id="learned">
      <Waiting asking={listing} what="Fetching what was learned." />
      <FaultNote fault={listing.fault} again={listing.again} />
      <FaultNote fault={choosing.fault} again={choosing.again} />
      {listing.answer?.length === 0 && <p>Nothing yet. Every bake that is written down teaches something.</p>}
      <ul class="plain-list">
        {listing.answer?.map((fact) => (
          <li key={fact.name} data-fact={fact.name}>
            <strong>{fact.title}</strong> {fact.unit !== "1" && <span class="unit">[{fact.unit}]</span>}
            {!fact.used && <em> turned off</em>}
            <small>
              before {range(fact.prior)}; now {range(fact.now)}; measured {fact.evidence.length} {fact.evidence.length === 1 ? "time" : "times"}
            </small>
            <p class="share">
              <button type="button" onClick={() => choose(fact.name, fact.used ? Choice.TURN_OFF : Choice.USE)} aria-label={`${fact.used ? "Turn off" : "Turn on"} ${fact.title}`}>
                {fact.used ? "Turn off" : "Turn on"}
              </button>
              <button type="button" class="quiet" onClick={() => choose(fact.name, Choice.FORGET)} aria-label={`Forget what was measured of ${fact.title}`}>
                Forget what was measured
              </button>
            </p>
          </li>
        ))}
      </ul>
    </Station>
  );
}

function range(estimate: Estimate | undefined): string {
  return estimate === undefined ? "not known" : `${trimmed(estimate.value, 3)} (${trimmed(estimate.low, 3)} to ${trimmed(estimate.high, 3)})`;
}
