// One answer in full, along the way of the loaf: what changes, the bowl, the balance, the oven, the slice.
import type { Answer } from "contract/answer_pb";
import type { BakeChange } from "contract/bake_pb";
import { Bowl } from "./Bowl";
import { CautionList, place } from "./Cautions";
import { ChangeList } from "./ChangeList";
import { Oven, ResizedOven } from "./Oven";
import { ReadingTable } from "./ReadingTable";
import { Allergens, SliceTable } from "./Slice";
import { Station } from "./Station";
import { Sureness } from "./Sureness";

export function AnswerView({ answer, bake, withoutChanges }: { answer: Answer; bake?: BakeChange | undefined; withoutChanges?: boolean }) {
  const cautions = place(answer.cautions, answer.formula, answer.allergens);
  return (
    <>
      {!withoutChanges && <ChangeList changes={answer.changes} />}
      <CautionList cautions={cautions.first} />
      <div class="stations">
        {answer.formula && (
          <Station of="bowl" title="Into the bowl" id="answer-bowl">
            <Bowl formula={answer.formula} cautions={cautions.byLine} />
            <Allergens statement={answer.allergens} />
            <CautionList cautions={cautions.allergens} />
          </Station>
        )}
        <Station of="balance" title="On the balance" id="answer-balance">
          <ReadingTable readings={answer.readings} caption="Readings against their bands" />
          <Sureness answer={answer} />
        </Station>
        {answer.formula && (
          <Station of="oven" title="In the oven" id="answer-oven">
            <CautionList cautions={cautions.oven} />
            {bake ? <ResizedOven bake={bake} said={answer.cautions} /> : <Oven formula={answer.formula} said={answer.cautions} />}
          </Station>
        )}
        {answer.nutrition && (
          <Station of="slice" title="On the plate" id="answer-slice">
            <SliceTable nutrition={answer.nutrition} />
            <CautionList cautions={cautions.slice} />
          </Station>
        )}
      </div>
    </>
  );
}
