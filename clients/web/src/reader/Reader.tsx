// The readers' page: choose a formula, say what is to change, get a loaf that still bakes.
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import type { BalanceFormulaResponse } from "contract/balance_service_pb";
import type { Formula } from "contract/formula_pb";
import type { Ingredient } from "contract/ingredient_pb";
import { balances, formulas } from "../asking/service";
import { wholePantry } from "../asking/pantry";
import { useAsking } from "../asking/useAsking";
import { Frame } from "../parts/Frame";
import { LeaveOut } from "../parts/LeaveOut";
import { Station } from "../parts/Station";
import { useUsable } from "../parts/useUsable";
import { FaultNote, Waiting } from "../parts/Waiting";
import { AnsweredView } from "./AnsweredView";
import { type Answered, ask as askWish, wrongIn } from "./ask";
import { FormulaShelf } from "./FormulaShelf";
import { Loaf } from "./LoafAsItStands";
import { ShareBar } from "./ShareBar";
import { SizeFields } from "./SizeFields";
import { TappableBowl } from "./TappableBowl";
import { addressOf, asksForSomething, noWish, type Wish, wishOf } from "./wish";

interface Shop {
  shelf: Formula[];
  pantry: Ingredient[];
}

async function openShop(signal: AbortSignal): Promise<Shop> {
  const [shelf, pantry] = await Promise.all([publishedFormulas(signal), wholePantry(signal)]);
  return { shelf, pantry };
}

async function publishedFormulas(signal: AbortSignal): Promise<Formula[]> {
  const found: Formula[] = [];
  let pageToken = "";
  do {
    const page = await formulas.listFormulas({ filter: "published=true", pageSize: 200, pageToken }, { signal });
    found.push(...page.formulas);
    pageToken = page.nextPageToken;
  } while (pageToken && found.length < 1000);
  return found;
}

export function Reader() {
  const [wish, setWish] = useState<Wish>(() => wishOf(location.search));
  const shop = useAsking<Shop>();
  const chosen = useAsking<BalanceFormulaResponse>();
  const answer = useAsking<Answered>();
  const wrong = useMemo(() => wrongIn(wish), [wish]);
  const [isTried, setTried] = useState(false);
  const first = useRef(true);
  useUsable(shop.answer !== undefined);

  useEffect(() => void shop.ask(openShop), []);
  useEffect(() => {
    if (!wish.formula) {
      return;
    }

    answer.clear();
    void chosen.ask((signal) => balances.balanceFormula({ subject: { case: "name", value: wish.formula } }, { signal }));
    // A link that holds a question is answered as it is opened.
    if (first.current && asksForSomething(wish) && Object.keys(wrong).length === 0) {
      void answer.ask((signal) => askWish(wish, signal));
    }

    first.current = false;
  }, [wish.formula]);
  useEffect(() => {
    const back = () => setWish(wishOf(location.search));
    addEventListener("popstate", back);
    return () => removeEventListener("popstate", back);
  }, []);

  const change = (next: Wish) => {
    setWish(next);
    history.replaceState(null, "", `/${addressOf(next)}`);
  };
  const choose = (formula: string) => change({ ...noWish, formula });
  const askNow = (asked: Wish) => {
    setTried(true);
    if (Object.keys(wrongIn(asked)).length > 0) {
      const field = Object.keys(wrongIn(asked))[0] === "tin" ? "tin-length" : Object.keys(wrongIn(asked))[0]!;
      document.getElementById(field)?.focus();
      return;
    }

    setWish(asked);
    history.pushState(null, "", `/${addressOf(asked)}`);
    void answer.ask((signal) => askWish(asked, signal));
  };

  const formula = chosen.answer?.formula;
  const isStale = answer.answer !== undefined && addressOf(answer.answer.wish) !== addressOf(wish);
  return (
    <Frame page="reader">
      <div class="reader">
        <div class="question">
          <h1>Ask for a change</h1>
          <p class="lead">Choose a loaf, tap what you have not got or do not eat, and get grams that still bake.</p>
          <Waiting asking={shop} what="Fetching the formulas." />
          <FaultNote fault={shop.fault} again={shop.again} />
          {shop.answer && <FormulaShelf shelf={shop.answer.shelf} chosen={wish.formula} choose={choose} />}
          <Waiting asking={chosen} what="Weighing it up." />
          <FaultNote fault={chosen.fault} again={chosen.again} />
          {shop.answer && formula && chosen.stage !== "failed" && (
            <form
              onSubmit={(event) => {
                event.preventDefault();
                askNow(wish);
              }}
            >
              <Station of="bowl" level="h2" title="The bowl" id="ask-bowl" lead="Tap a line to go without it, or to use something else.">
                <TappableBowl formula={formula} pantry={shop.answer.pantry} wish={wish} change={change} />
                <LeaveOut allergens={chosen.answer?.allergens} wish={wish} change={change} />
              </Station>
              <Station of="slice" level="h2" title="Slice and tin" id="ask-slice">
                <SizeFields formula={formula} wish={wish} wrong={isTried ? wrong : {}} change={change} />
              </Station>
              <p class="ask">
                <button type="submit" class="main" disabled={!asksForSomething(wish)}>
                  Work it out
                </button>
                {asksForSomething(wish) && (
                  <button type="button" class="quiet" onClick={() => choose(wish.formula)}>
                    Start over
                  </button>
                )}
              </p>
            </form>
          )}
        </div>
        <div class="reply-side">
          <Waiting asking={answer} what="Solving." />
          <FaultNote fault={answer.fault} again={answer.again} />
          {isStale && answer.stage === "answered" && (
            <p class="stale" role="status">
              You changed the question since. <button type="button" onClick={() => askNow(wish)} disabled={!asksForSomething(wish)}>Work it out again</button>
            </p>
          )}
          {answer.answer && answer.stage !== "failed" && (
            <>
              <AnsweredView answered={answer.answer} askAgain={askNow} />
              <ShareBar />
            </>
          )}
          {!answer.answer && answer.stage !== "asking" && chosen.answer && chosen.stage === "answered" && (
            <>
              <h2>{formula?.displayName}</h2>
              {formula?.description && <p class="lead">{formula.description}</p>}
              <Loaf answer={chosen.answer} more={[]} />
              <ShareBar />
            </>
          )}
        </div>
      </div>
    </Frame>
  );
}
