// The bowl on the bench: grams are turned, and the readings move with them; then the formula is saved as a new revision.
import { useState } from "preact/hooks";
import { type Fault, faultOf } from "../asking/fault";
import { formulas } from "../asking/service";
import { CautionList, place } from "../parts/Cautions";
import { TextField } from "../parts/Field";
import { IngredientChoice } from "../parts/IngredientChoice";
import { ReadingTable } from "../parts/ReadingTable";
import { Allergens, SliceTable } from "../parts/Slice";
import { Station } from "../parts/Station";
import { FaultNote } from "../parts/Waiting";
import { bakeWords } from "../words/names";
import { asSaved, type Draft, dropDraft, formulaOf, keepDraft, newLine, wrongLines } from "./draft";
import { readDraft } from "./FormulaBenches";
import type { Stock } from "./Kitchen";
import { useLive } from "./useLive";

export function BowlBench({ draft, change, stock, refresh }: { draft: Draft; change: (draft: Draft) => void; stock: Stock; refresh: () => void }) {
  const wrong = wrongLines(draft);
  const formula = formulaOf(draft);
  const live = useLive(formula, draft.saved, wrong.size === 0 && draft.lines.length > 0);
  const cautions = place(live.whole?.cautions ?? [], live.whole?.formula, live.whole?.allergens);
  const turn = (id: number, text: string) =>
    change({ ...draft, lines: draft.lines.map((line) => (line.id === id ? { id, ingredient: line.ingredient, displayName: line.displayName, grams: text } : line)) });
  return (
    <div class="pair">
      <div>
        <Station of="bowl" title="The bowl" id="bench-bowl" lead={bakeWords(formula)}>
          <ul class="turn-lines">
            {draft.lines.map((line) => (
              <li key={line.id} class="turn-line" data-ingredient={line.ingredient}>
                <label for={`grams-${line.id}`}>{line.displayName} [g]</label>
                <input
                  id={`grams-${line.id}`}
                  inputMode="decimal"
                  autocomplete="off"
                  value={line.grams}
                  aria-invalid={wrong.has(line.id) ? true : undefined}
                  aria-describedby={wrong.has(line.id) ? `wrong-${line.id}` : undefined}
                  onInput={(event) => turn(line.id, event.currentTarget.value)}
                />
                <button type="button" aria-label={`Take out ${line.displayName}`} onClick={() => change({ ...draft, lines: draft.lines.filter((one) => one.id !== line.id) })}>
                  take out
                </button>
                {wrong.has(line.id) && (
                  <small class="wrong" id={`wrong-${line.id}`}>
                    {wrong.get(line.id)}
                  </small>
                )}
                {cautions.byLine.get(line.ingredient)?.map((caution) => (
                  <small class="line-caution" key={caution}>
                    Caution: {caution}
                  </small>
                ))}
              </li>
            ))}
          </ul>
          <IngredientChoice
            id="new-line"
            label="Put in something else"
            pantry={stock.pantry.filter((one) => draft.lines.every((line) => line.ingredient !== one.name))}
            value=""
            none="choose"
            onValue={(name) => name && change({ ...draft, lines: [...draft.lines, newLine(name, stock.pantry.find((one) => one.name === name)!.displayName)] })}
          />
          <div class="row">
            <TextField id="display-name" label="Called" value={draft.displayName} onValue={(displayName) => change({ ...draft, displayName })} />
            <TextField id="slices" label="Slices" numeric value={draft.slices} onValue={(slices) => change({ ...draft, slices })} />
          </div>
        </Station>
        <Saving draft={draft} change={change} refresh={refresh} isFit={wrong.size === 0} />
      </div>
      <div>
        <Station of="balance" title="On the balance" id="bench-balance" lead="Bands are those of the formula as it was saved.">
          <FaultNote fault={live.fault} again={live.again} />
          {live.now && <ReadingTable readings={live.now.readings} caption={live.isBehind ? "Readings of these grams; ranges follow" : "Readings of these grams, with their ranges"} />}
        </Station>
        <Station of="slice" title="On the plate" id="bench-slice">
          {live.now?.nutrition && <SliceTable nutrition={live.now.nutrition} />}
          <Allergens statement={live.now?.allergens} />
          <CautionList cautions={[...cautions.first, ...cautions.allergens, ...cautions.oven, ...cautions.slice]} />
        </Station>
      </div>
    </div>
  );
}

function Saving({ draft, change, refresh, isFit }: { draft: Draft; change: (draft: Draft) => void; refresh: () => void; isFit: boolean }) {
  const [note, setNote] = useState("");
  const [said, setSaid] = useState("");
  const [fault, setFault] = useState<Fault>();
  const isShipped = draft.saved.revision === undefined;
  const name = draft.saved.name;
  const attempt = async (work: () => Promise<string>) => {
    setFault(undefined);
    setSaid("");
    try {
      setSaid(await work());
      refresh();
    } catch (reason) {
      setFault(faultOf(reason));
    }
  };
  const save = (etag: string | undefined) =>
    attempt(async () => {
      const saved = await formulas.updateFormula({ formula: { ...formulaOf(draft), etag }, note });
      change(asSaved(draft, saved));
      dropDraft(name);
      setNote("");
      return `Saved as revision ${saved.revision}.`;
    });
  const copy = () =>
    attempt(async () => {
      const made = await formulas.createFormula({ formula: formulaOf(draft), note });
      dropDraft(name);
      location.hash = `#/${made.name}`;
      return `Saved as ${made.displayName || made.name}.`;
    });
  const publish = () =>
    attempt(async () => {
      const published = await formulas.publishFormula({ name, revision: 0, etag: draft.saved.etag ?? "" });
      // What is on the bench and not saved stays there.
      const { etag, publishedRevision } = published;
      change({ ...draft, saved: { ...draft.saved, etag, publishedRevision } });
      return `Revision ${published.publishedRevision} is published: readers can ask about it.`;
    });
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void (isShipped ? copy() : save(draft.saved.etag));
      }}
    >
      <TextField id="note" label="Note to this revision" value={note} onValue={setNote} />
      <p class="share">
        <button type="submit" class="main" disabled={!isFit}>
          {isShipped ? "Save as a formula of this kitchen" : "Save as a new revision"}
        </button>
        {!isShipped && (
          <button type="button" disabled={!isFit} onClick={() => void copy()}>
            Save as another formula
          </button>
        )}
        {!isShipped && (
          <button type="button" onClick={() => void publish()}>
            Publish the newest revision
          </button>
        )}
      </p>
      <p role="status">{said}</p>
      <FaultNote fault={fault} again={fault?.kind === "stale" ? undefined : () => void (isShipped ? copy() : save(draft.saved.etag))} />
      {fault?.kind === "stale" && (
        <p class="share">
          <button type="button" onClick={() => void attempt(async () => {
            const theirs = await readDraft(name, new AbortController().signal);
            const mine = { ...draft, saved: theirs.saved };
            keepDraft(mine);
            change(mine);
            return "Your grams stand against the other revision now: look them over, then save.";
          })}>
            Keep my grams, on top of the other revision
          </button>
          <button type="button" onClick={() => void attempt(async () => {
            change(await readDraft(name, new AbortController().signal));
            dropDraft(name);
            return "These are the grams of the other revision.";
          })}>
            Take the other revision
          </button>
        </p>
      )}
    </form>
  );
}
