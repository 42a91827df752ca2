// Two revisions side by side: their lines, their readings, a slice of each, and how their goals fared.
import { useEffect, useState } from "preact/hooks";
import { type DiffRevisionsResponse, type FormulaRevision, GoalProgress_Standing as Standing } from "contract/formula_service_pb";
import { formulas } from "../asking/service";
import { useAsking } from "../asking/useAsking";
import { Choice } from "../parts/Field";
import { Station } from "../parts/Station";
import { FaultNote, Waiting } from "../parts/Waiting";
import { grams, trimmed } from "../words/figures";
import { dayOf } from "../words/moments";
import type { BenchProps } from "./FormulaBenches";
import { SideBySide } from "./SideBySide";
import { TakeButton } from "./TakeButton";

/** Revisions that can be chosen from; older ones are reached by the console. */
const most = 200;

export function CompareBench({ draft, stock, take }: BenchProps) {
  const { name } = draft.saved;
  const listing = useAsking<FormulaRevision[]>();
  const comparing = useAsking<DiffRevisionsResponse>();
  const [pair, setPair] = useState<[from: string, to: string]>(["", ""]);
  useEffect(
    () =>
      void listing.ask(async (signal) => {
        const revisions = draft.saved.revision === undefined ? [] : (await formulas.listRevisions({ name, pageSize: most }, { signal })).revisions;
        setPair([revisions[1]?.name ?? "", revisions[0]?.name ?? name]);
        return revisions;
      }),
    [name, draft.saved.revision],
  );
  const [from, to] = pair;
  useEffect(() => {
    if (from && to) {
      void comparing.ask((signal) => formulas.diffRevisions({ from, to }, { signal }));
    }
  }, [from, to]);
  const revisions = listing.answer ?? [];
  const others = stock.shelf.filter((formula) => formula.name !== name);
  const options = (
    <>
      {revisions.length === 0 && <option value={name}>{draft.saved.displayName}, as shipped</option>}
      {revisions.map((one) => (
        <option key={one.name} value={one.name}>
          {revisionWords(one)}
        </option>
      ))}
      <optgroup label="Other formulas, their newest">
        {others.map((one) => (
          <option key={one.name} value={one.name}>
            {one.displayName || one.name}
          </option>
        ))}
      </optgroup>
    </>
  );
  return (
    <Station of="balance" title="Two side by side" id="compare">
      <Waiting asking={listing} what="Fetching the revisions." />
      <FaultNote fault={listing.fault} again={listing.again} />
      {listing.answer && (
        <>
          <div class="row">
            <Choice id="compare-from" label="From" value={from} onValue={(chosen: string) => setPair([chosen, to])}>
              <option value="">choose</option>
              {options}
            </Choice>
            <Choice id="compare-to" label="To" value={to} onValue={(chosen: string) => setPair([from, chosen])}>
              {options}
            </Choice>
          </div>
          {revisions.length < 2 && !from && <p class="lead">There is no earlier revision to compare with. Another formula can stand beside it.</p>}
        </>
      )}
      <Waiting asking={comparing} what="Comparing." />
      <FaultNote fault={comparing.fault} again={comparing.again} />
      {from && comparing.answer && comparing.stage === "answered" && (
        <>
          <Differences found={comparing.answer} />
          <TakeButton found={comparing.answer.before} take={take} words="Take the first onto the bench" />
        </>
      )}
    </Station>
  );
}

function revisionWords(one: FormulaRevision): string {
  const number = one.name.slice(one.name.lastIndexOf("/") + 1);
  return [`revision ${number}`, dayOf(one.createTime), one.note].filter(Boolean).join(", ");
}

const fared: Partial<Record<Standing, string>> = {
  [Standing.REACHED]: "reached",
  [Standing.NEARER]: "nearer",
  [Standing.UNMOVED]: "unmoved",
  [Standing.FARTHER]: "farther",
  [Standing.NOT_READ]: "names no reading",
};

function Differences({ found }: { found: DiffRevisionsResponse }) {
  const moved = found.readings.filter((reading) => reading.before !== reading.after || !reading.balance.endsWith("-mass"));
  return (
    <>
      <SideBySide
        caption="Lines, in grams"
        rows={everyLine(found)}
        write={grams}
      />
      <SideBySide
        caption="Readings"
        rows={moved.map(({ balance, title, unit, before: first, after: second }) => ({ key: balance, title, unit, before: first, after: second }))}
        write={(figure) => (Math.abs(figure) < 1 ? trimmed(figure, 3) : trimmed(figure, 2))}
      />
      {found.goals.length > 0 && (
        <>
          <h4>Goals of the second</h4>
          <ul>
            {found.goals.map((goal) => (
              <li key={goal.goal}>
                {goal.goal}: <strong>{fared[goal.standing] ?? ""}</strong> {goal.words.join("; ")}
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

/** All lines of both, in the order of the second and then of the first; the service tells only those that changed. */
function everyLine(found: DiffRevisionsResponse) {
  const [before, after] = [found.before?.lines ?? [], found.after?.lines ?? []];
  return [...after, ...before.filter((line) => after.every((one) => one.ingredient !== line.ingredient))].map((line) => ({
    key: line.ingredient,
    title: line.displayName || line.ingredient,
    unit: "",
    before: before.find((one) => one.ingredient === line.ingredient)?.grams,
    after: after.find((one) => one.ingredient === line.ingredient)?.grams,
  }));
}
