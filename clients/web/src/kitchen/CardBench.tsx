// The card of the formula, to look at and to take away in every format.
import { useEffect, useState } from "preact/hooks";
import { PrintCardRequest_Format as Format, type PrintCardResponse } from "contract/card_service_pb";
import { Line_System as System } from "contract/formula_pb";
import { Label_Law as Law } from "contract/label_pb";
import { cards } from "../asking/service";
import { useAsking } from "../asking/useAsking";
import { CautionList } from "../parts/Cautions";
import { Choice, TextField } from "../parts/Field";
import { Allergens } from "../parts/Slice";
import { Station } from "../parts/Station";
import { FaultNote, Waiting } from "../parts/Waiting";
import { idOf } from "../words/names";
import { subjectOf } from "./draft";
import type { BenchProps } from "./FormulaBenches";
import { LabelTable } from "./LabelTable";

const laws: [law: Law, words: string][] = [
  [Law.US, "United States"],
  [Law.EU, "European Union"],
  [Law.UK, "United Kingdom"],
  [Law.AU_NZ, "Australia and New Zealand"],
  [Law.CA, "Canada"],
];

const measures: [system: System, words: string][] = [
  [System.SYSTEM_UNSPECIFIED, "grams alone"],
  [System.US_CUSTOMARY, "US cups and spoons too"],
  [System.METRIC, "metric cups and spoons too"],
  [System.AUSTRALIAN, "Australian cups and spoons too"],
  [System.UK_IMPERIAL, "UK pints and spoons too"],
];

interface Print {
  format: Format;
  words: string;
  ending: string;
  kind: string;
  of: (card: PrintCardResponse) => string | undefined;
}

const prints: Print[] = [
  { format: Format.HTML, words: "Page to print (HTML)", ending: "html", kind: "text/html", of: (card) => card.html },
  { format: Format.MARKDOWN, words: "Text (Markdown)", ending: "md", kind: "text/markdown", of: (card) => card.markdown },
  { format: Format.CSV, words: "Table (CSV)", ending: "csv", kind: "text/csv", of: (card) => card.csv },
  { format: Format.JSONLD, words: "Linked data (JSON-LD)", ending: "jsonld", kind: "application/ld+json", of: (card) => card.jsonld },
  { format: Format.SVG, words: "Pictures (SVG)", ending: "svg", kind: "image/svg+xml", of: (card) => card.svg },
];

export function CardBench({ draft }: BenchProps) {
  const [law, setLaw] = useState(Law.US);
  const [system, setSystem] = useState(System.SYSTEM_UNSPECIFIED);
  const [version, setVersion] = useState("");
  const showing = useAsking<PrintCardResponse>();
  const taking = useAsking<string>();
  const asked = { subject: subjectOf(draft), label: law, measures: system, version };
  useEffect(() => void showing.ask((signal) => cards.printCard({ ...asked, format: Format.MARKDOWN }, { signal })), [law, system]);
  const take = (print: Print) =>
    void taking.ask(async (signal) => {
      const card = await cards.printCard({ ...asked, format: print.format }, { signal });
      save(`${idOf(draft.saved.name)}.${print.ending}`, print.kind, print.of(card) ?? "");
      return `${print.words} was handed to the browser.`;
    });
  const card = showing.stage === "answered" ? showing.answer : undefined;
  return (
    <>
      <Station of="slice" title="How it is printed" id="card-question">
        <div class="fields">
          <Choice id="card-law" label="Label by the law of" value={String(law)} onValue={(chosen: string) => setLaw(Number(chosen))}>
            {laws.map(([one, words]) => (
              <option key={one} value={String(one)}>
                {words}
              </option>
            ))}
          </Choice>
          <Choice id="card-measures" label="Measures" value={String(system)} onValue={(chosen: string) => setSystem(Number(chosen))}>
            {measures.map(([one, words]) => (
              <option key={one} value={String(one)}>
                {words}
              </option>
            ))}
          </Choice>
          <TextField id="card-version" label="Version on the card" value={version} onValue={setVersion} hint="empty: a fingerprint of the formula" />
        </div>
        <p class="share">
          {prints.map((print) => (
            <button key={print.ending} type="button" onClick={() => take(print)}>
              {print.words}
            </button>
          ))}
        </p>
        <Waiting asking={taking} what="Printing." />
        <p role="status">{taking.stage === "answered" && taking.answer}</p>
        <FaultNote fault={taking.fault} again={taking.again} />
      </Station>
      <Waiting asking={showing} what="Printing." />
      <FaultNote fault={showing.fault} again={showing.again} />
      {card && (
        <div class="stations">
          <Station of="bowl" title="The card" id="card-text">
            <pre class="card-text" tabIndex={0} aria-label="The card as text">
              {card.markdown}
            </pre>
          </Station>
          <Station of="slice" title="Its label" id="card-label">
            <LabelTable label={card.labelLaw} lines={card.label} />
            <Allergens statement={card.allergens} />
            {card.statements.map((words) => (
              <p key={words}>{words}</p>
            ))}
            <CautionList cautions={card.cautions} />
          </Station>
        </div>
      )}
    </>
  );
}

/** Hands a file to the browser, as a download. */
function save(name: string, kind: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: `${kind};charset=utf-8` }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
