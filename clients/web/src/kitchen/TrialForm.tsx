// The fields of a bake; whatever was not measured stays empty.
import { useState } from "preact/hooks";
import { trials } from "../asking/service";
import { useAsking } from "../asking/useAsking";
import { Choice, TextField } from "../parts/Field";
import { FaultNote, Waiting } from "../parts/Waiting";
import { typed } from "../words/figures";

const fields = [
  { id: "minutes", label: "In the oven", unit: "min" },
  { id: "coreCelsius", label: "Core when it came out", unit: "°C" },
  { id: "batterMassG", label: "Batter in its tin", unit: "g" },
  { id: "bakedMassG", label: "Out of the oven", unit: "g" },
  { id: "cooledMassG", label: "Cooled", unit: "g" },
  { id: "heightMm", label: "Greatest height", unit: "mm" },
  { id: "widthMm", label: "Greatest width", unit: "mm" },
  { id: "batterCelsius", label: "Batter", unit: "°C" },
  { id: "altitudeMetres", label: "Kitchen above the sea", unit: "m" },
] as const;

const crumb = [
  { id: "moistness", label: "Crumb, how moist", words: ["dry", "a little dry", "right", "a little moist", "gummy"] },
  { id: "openness", label: "Crumb, how open", words: ["dense", "a little dense", "right", "a little open", "with caves"] },
  { id: "firmness", label: "Crumb, how firm", words: ["falls apart", "a little soft", "right", "a little firm", "rubbery"] },
] as const;

type Typed = Partial<Record<(typeof fields)[number]["id"] | (typeof crumb)[number]["id"], string>>;

export function TrialForm({ formula, added }: { formula: string; added: () => void }) {
  const [values, setValues] = useState<Typed>({});
  const [note, setNote] = useState("");
  const [isCold, setCold] = useState(false);
  const [said, setSaid] = useState("");
  const saving = useAsking<void>();
  const wrong = fields.filter(({ id }) => Number.isNaN(typed(values[id] ?? "") ?? 0));
  const write = async (signal: AbortSignal) => {
    const figures = Object.fromEntries(fields.map(({ id }) => [id, typed(values[id] ?? "")]).filter(([, figure]) => figure !== undefined));
    const judged = Object.fromEntries(crumb.filter(({ id }) => values[id]).map(({ id }) => [id, Number(values[id])]));
    const trial = await trials.addTrial({ parent: formula, trial: { ...figures, ...(Object.keys(judged).length > 0 ? { crumb: judged } : {}), coldStart: isCold, note } }, { signal });
    setSaid(`Written down as trial ${trial.name.slice(trial.name.lastIndexOf("/") + 1)}.`);
    setValues({});
    setNote("");
    added();
  };
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        setSaid("");
        void saving.ask(write);
      }}
    >
      <p class="lead">Measure one thing at least. It is kept with the newest revision.</p>
      <div class="fields">
        {fields.map(({ id, label, unit }) => (
          <TextField
            key={id}
            id={`trial-${id}`}
            label={label}
            unit={unit}
            numeric
            value={values[id] ?? ""}
            onValue={(value) => setValues({ ...values, [id]: value })}
            wrong={wrong.some((one) => one.id === id) ? `'${values[id]}' is not a number.` : undefined}
          />
        ))}
        {crumb.map(({ id, label, words }) => (
          <Choice key={id} id={`trial-${id}`} label={label} value={values[id] ?? ""} onValue={(value: string) => setValues({ ...values, [id]: value })}>
            <option value="">not judged</option>
            {words.map((word, place) => (
              <option key={word} value={String(place + 1)}>
                {word}
              </option>
            ))}
          </Choice>
        ))}
      </div>
      <label class="check">
        <input type="checkbox" checked={isCold} onChange={(event) => setCold(event.currentTarget.checked)} />
        It went into a cold oven
      </label>
      <div class="field">
        <label for="trial-note">Notes on this bake</label>
        <textarea id="trial-note" value={note} maxLength={2000} onInput={(event) => setNote(event.currentTarget.value)} />
      </div>
      <button type="submit" class="main" disabled={wrong.length > 0}>
        Write it down
      </button>
      <Waiting asking={saving} what="Writing it down." />
      <p role="status">{said}</p>
      <FaultNote fault={saving.fault} again={saving.again} />
    </form>
  );
}
