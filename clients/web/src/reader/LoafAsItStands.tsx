// A formula by itself: nothing asked for, or a loaf that gives way on one wish.
import { useEffect } from "preact/hooks";
import type { BalanceFormulaResponse } from "contract/balance_service_pb";
import type { Formula } from "contract/formula_pb";
import { balances } from "../asking/service";
import { useAsking } from "../asking/useAsking";
import { Bowl } from "../parts/Bowl";
import { CautionList, place } from "../parts/Cautions";
import { Oven } from "../parts/Oven";
import { ReadingTable } from "../parts/ReadingTable";
import { Allergens, SliceTable } from "../parts/Slice";
import { Station } from "../parts/Station";
import { FaultNote, Waiting } from "../parts/Waiting";

export function LoafAsItStands(props: { formula: Formula; title: string; bandsOf?: string; cautions?: readonly string[] }) {
  const { formula, bandsOf } = props;
  const asking = useAsking<BalanceFormulaResponse>();
  const { ask } = asking;
  useEffect(
    () =>
      void ask((signal) =>
        balances.balanceFormula(
          { subject: { case: "formula", value: formula }, ...(bandsOf ? { bandsOf: { subject: { case: "name" as const, value: bandsOf } } } : {}) },
          { signal },
        ),
      ),
    [formula, bandsOf, ask],
  );
  const answer = asking.stage === "answered" ? asking.answer : undefined;
  return (
    <>
      <h3 class="loaf-title">{props.title}</h3>
      <Waiting asking={asking} what="Weighing it up." />
      <FaultNote fault={asking.fault} again={asking.again} />
      {answer && <Loaf answer={answer} more={props.cautions ?? []} />}
    </>
  );
}

export function Loaf({ answer, more }: { answer: BalanceFormulaResponse; more: readonly string[] }) {
  const said = [...more, ...answer.cautions];
  const cautions = place(said, answer.formula, answer.allergens);
  return (
    <>
      <CautionList cautions={cautions.first} />
      <div class="stations">
        {answer.formula && (
          <Station of="bowl" title="Into the bowl" id="loaf-bowl">
            <Bowl formula={answer.formula} cautions={cautions.byLine} />
            <Allergens statement={answer.allergens} />
            <CautionList cautions={cautions.allergens} />
          </Station>
        )}
        <Station of="balance" title="On the balance" id="loaf-balance">
          <ReadingTable readings={answer.readings} caption="Readings against their bands" />
        </Station>
        {answer.formula && (
          <Station of="oven" title="In the oven" id="loaf-oven">
            <CautionList cautions={cautions.oven} />
            <Oven formula={answer.formula} said={said} />
          </Station>
        )}
        {answer.nutrition && (
          <Station of="slice" title="On the plate" id="loaf-slice">
            <SliceTable nutrition={answer.nutrition} />
            <CautionList cautions={cautions.slice} />
          </Station>
        )}
      </div>
    </>
  );
}
