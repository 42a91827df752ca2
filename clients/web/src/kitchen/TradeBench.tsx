// The best trade-off between two readings, to walk along point by point.
import { useState } from "preact/hooks";
import { Trade_Better as Better, type TraceFrontierResponse } from "contract/reformulation_service_pb";
import { namedReadings } from "kitchen_words";
import { reformulations } from "../asking/service";
import { useStream } from "../asking/useStream";
import { FigureTable } from "../charts/FigureTable";
import { type Axis, Plot } from "../charts/Plot";
import { AnswerView } from "../parts/AnswerView";
import { Choice } from "../parts/Field";
import { Station } from "../parts/Station";
import { FaultNote, Waiting } from "../parts/Waiting";
import { kitchens, trimmed } from "../words/figures";
import { subjectOf } from "./draft";
import type { BenchProps } from "./FormulaBenches";
import { TakeButton } from "./TakeButton";

interface Traded {
  reading: string;
  /** Empty: as it is usually wished for. */
  better: "" | "lower" | "higher";
}

export function TradeBench({ draft, take }: BenchProps) {
  const [first, setFirst] = useState<Traded>({ reading: "net-carbohydrate", better: "" });
  const [second, setSecond] = useState<Traded>({ reading: "protein", better: "" });
  const [most, setMost] = useState("9");
  const [chosen, setChosen] = useState(1);
  const tracing = useStream<TraceFrontierResponse>();
  const isSame = first.reading === second.reading;
  const trace = () => {
    setChosen(1);
    void tracing.start((signal) =>
      reformulations.traceFrontier({ subject: subjectOf(draft), trades: [tradeOf(first), tradeOf(second)], mostPoints: Number(most), habits: { answers: 1 } }, { signal }),
    );
  };
  const found = [...tracing.pieces].sort((one, other) => (one.first?.value ?? 0) - (other.first?.value ?? 0));
  const point = found.find((one) => one.point === chosen) ?? found[0];
  return (
    <>
      <Station of="balance" title="What is traded for what" id="trade-question">
        <form
          class="row"
          onSubmit={(event) => {
            event.preventDefault();
            trace();
          }}
        >
          <TradedFields id="first" label="One reading" traded={first} change={setFirst} />
          <TradedFields id="second" label="Against" traded={second} change={setSecond} />
          <Choice id="most-points" label="Loaves, at most" value={most} onValue={setMost}>
            {["3", "5", "9", "15", "25"].map((count) => (
              <option key={count} value={count}>
                {count}
              </option>
            ))}
          </Choice>
          <button type="submit" class="main" disabled={isSame}>
            Trace it
          </button>
        </form>
        {isSame && <p class="wrong">Choose two different readings.</p>}
      </Station>
      <Waiting asking={tracing} what={`Tracing: ${found.length} of at most ${found[0]?.mostPoints ?? most} loaves found.`} />
      <FaultNote fault={tracing.fault} again={tracing.again} />
      {tracing.stage === "answered" && found.length === 0 && <p>No loaf keeps the limits.</p>}
      {point && (
        <>
          <Curve found={found} point={point} choose={setChosen} />
          {point.answer && (
            <section aria-label="The chosen loaf">
              <TakeButton found={point.answer.formula} take={take} />
              <AnswerView answer={point.answer} />
            </section>
          )}
        </>
      )}
    </>
  );
}

function Curve({ found, point, choose }: { found: readonly TraceFrontierResponse[]; point: TraceFrontierResponse; choose: (point: number) => void }) {
  const [across, up] = [axisOf(point.first), axisOf(point.second)];
  const write = (axis: Axis, figure: number | undefined) => (figure === undefined ? "" : trimmed(figure, axis.decimals));
  const words = (one: TraceFrontierResponse) => `${write(across, one.first?.value)} / ${write(up, one.second?.value)}`;
  return (
    <Station of="slice" title="Along the trade-off" id="trade-curve" lead="Every round dot is a loaf that keeps its bands; the square is the loaf as it stands. No loaf is better in one without being worse in the other.">
      <Plot
        words={`Trade-off of ${across.title} against ${up.title}: ${found.length} loaves, from ${words(found[0]!)} to ${words(found.at(-1)!)}. The figures stand in the table below.`}
        x={across}
        y={up}
        fromZero={false}
        series={[{ title: "best trade-off", points: found.map((one) => [one.first?.value ?? 0, one.second?.value ?? 0] as const) }]}
        dots={[
          { x: point.firstBefore, y: point.secondBefore, words: "as it stands", isOrigin: true },
          ...found.map((one) => ({ x: one.first?.value ?? 0, y: one.second?.value ?? 0, words: `point ${one.point}`, isChosen: one === point, choose: () => choose(one.point) })),
        ]}
      />
      <fieldset class="points">
        <legend>
          Walk along it: {across.title} [{across.unit}] / {up.title} [{up.unit}]
        </legend>
        {found.map((one) => (
          <label key={one.point} class="chip">
            <input type="radio" name="point" checked={one === point} onChange={() => choose(one.point)} />
            <span>{words(one)}</span>
          </label>
        ))}
      </fieldset>
      <FigureTable
        summary="The figures behind the picture"
        caption={`${across.title} against ${up.title}`}
        rows={found}
        columns={[
          { title: titled(across), isFigure: true, of: (one) => write(across, one.first?.value) },
          { title: titled(up), isFigure: true, of: (one) => write(up, one.second?.value) },
          { title: "balances in, of 100 kitchens", isFigure: true, of: (one) => kitchens(one.answer?.chanceOfBalance ?? 0) },
          { title: "changes", of: (one) => one.answer?.changes.filter((change) => change.beforeGrams !== change.afterGrams).length ?? 0, isFigure: true },
        ]}
      />
    </Station>
  );
}

function axisOf(reading: TraceFrontierResponse["first"]): Axis {
  const size = Math.abs(reading?.value ?? 0);
  return { title: reading?.title ?? "", unit: reading?.unit ?? "", decimals: size < 1 ? 3 : size < 100 ? 2 : 0 };
}

function titled(axis: Axis): string {
  return `${axis.title} [${axis.unit}]`;
}

function tradeOf({ reading, better }: Traded) {
  return { reading, better: better === "lower" ? Better.LOWER : better === "higher" ? Better.HIGHER : Better.BETTER_UNSPECIFIED };
}

/** Where neither way is better by itself, a way has to be chosen: more, to begin with. */
function TradedFields({ id, label, traded, change }: { id: string; label: string; traded: Traded; change: (traded: Traded) => void }) {
  const named = namedReadings.find((one) => one.id === traded.reading);
  return (
    <fieldset class="traded" aria-label={label}>
      <Choice
        id={`${id}-reading`}
        label={label}
        value={traded.reading}
        onValue={(reading: string) => change({ reading, better: namedReadings.find((one) => one.id === reading)?.better === "neither" ? "higher" : "" })}
      >
        {namedReadings.map((one) => (
          <option key={one.id} value={one.id}>
            {one.title} [{one.unit}]
          </option>
        ))}
      </Choice>
      <Choice id={`${id}-better`} label="Better is" value={traded.better || (named?.better ?? "lower")} onValue={(better: string) => change({ ...traded, better: better as Traded["better"] })}>
        <option value="lower">less</option>
        <option value="higher">more</option>
      </Choice>
    </fieldset>
  );
}
