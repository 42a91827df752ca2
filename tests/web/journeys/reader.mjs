// What a reader does with a published formula.
import { equal, holds, journey } from "../journey.mjs";

export const nutFree = "/?formula=hazelnut-tin-loaf&without=tree-nuts";

/** The readings of the answer on the page, by balance, unrounded. */
export const readingsOn = (page, place = "#answer-balance") =>
  page.locator(`${place} tr[data-balance]`).evaluateAll((rows) => Object.fromEntries(rows.map((row) => [row.dataset.balance, Number(row.dataset.value)])));

export const changesOn = (page) =>
  page.locator(".changes li[data-ingredient]").evaluateAll((rows) => Object.fromEntries(rows.map((row) => [row.dataset.ingredient, [Number(row.dataset.before), Number(row.dataset.after)]])));

const shown = (readings) => Object.fromEntries(readings.filter((one) => one.standing !== "INSIDE" || !one.balance.endsWith("-mass")).map((one) => [one.balance, one.value]));

async function choose(page, title) {
  await page.goto("/");
  await page.getByRole("radio", { name: title }).check();
  await page.getByRole("heading", { name: "The bowl", exact: true }).waitFor();
}

for (const [width, scheme] of [[360, "light"], [768, "dark"], [1440, "light"]]) {
  journey(`A reader taps 'tree nuts' and gets a loaf without them, at ${width} px in ${scheme === "dark" ? "the dark" : "the light"}`, { width, scheme }, async ({ page, standsUp }) => {
    await choose(page, "Hazelnut tin loaf");
    await standsUp(page, "the question");
    await page.getByRole("checkbox", { name: "tree nuts" }).check();
    await page.getByRole("button", { name: "Work it out" }).click();
    await page.getByRole("heading", { name: /made without tree nuts/ }).waitFor();
    const changes = await changesOn(page);
    equal([180, 0], changes["ingredients/hazelnut-flour"], "the hazelnut flour");
    equal([0, 180], changes["ingredients/sunflower-seed-flour"], "what takes its place");
    // Changes come before the bowl, and the caution about a claim stands with the allergens.
    holds(await page.evaluate(() => document.querySelector(".changes").compareDocumentPosition(document.querySelector("#answer-bowl")) & Node.DOCUMENT_POSITION_FOLLOWING), "the changes stand after the bowl");
    await page.locator("#answer-bowl").getByText("That is no free-from claim").waitFor();
    await page.locator("#answer-oven").getByText("until the core has reached").waitFor();
    await page.locator("#answer-oven .minutes").waitFor();
    await standsUp(page, "the answer");
  });
}

journey("A line is tapped to leave it out", {}, async ({ page }) => {
  await choose(page, "Hazelnut tin loaf");
  await page.getByRole("button", { name: "Without cream of tartar" }).click();
  equal("true", await page.getByRole("button", { name: "Without cream of tartar" }).getAttribute("aria-pressed"), "the pressed button");
  await page.getByRole("button", { name: "Work it out" }).click();
  await page.locator(".changes li[data-ingredient='ingredients/cream-of-tartar'][data-after='0']").waitFor();
  equal("/?formula=hazelnut-tin-loaf&without=cream-of-tartar", new URL(page.url()).pathname + new URL(page.url()).search, "the address");
});

journey("A swap that does not balance says why, and what would work instead", { width: 768 }, async ({ page, ask, standsUp }) => {
  await choose(page, "Hazelnut tin loaf");
  await page.getByRole("button", { name: "Instead of baking soda" }).click();
  await standsUp(page, "the choice of another ingredient");
  await page.getByRole("combobox", { name: "Instead of baking soda" }).selectOption({ label: "double-acting baking powder" });
  await page.getByRole("button", { name: "Work it out" }).click();
  await page.getByRole("heading", { name: /No, not the same weight/ }).waitFor();
  const told = await ask("check", "formulas/hazelnut-tin-loaf", "--swap", "baking-soda=baking-powder-double-acting");
  equal("DOES_NOT_BALANCE", told.verdict, "the console's verdict");
  for (const reason of told.reasons) {
    await page.locator(".reasons").getByText(reason, { exact: true }).waitFor();
  }

  equal(Object.fromEntries(told.repair.changes.map((one) => [one.ingredient, [one.beforeGrams, one.afterGrams]])), await changesOn(page), "the repair");
  equal(shown(told.repair.readings), await readingsOn(page), "the readings of the repair");
  await standsUp(page, "the repair");
});

journey("A swap that balances as it is says so", {}, async ({ page }) => {
  await page.goto("/?formula=hazelnut-tin-loaf&instead=butter~coconut-oil");
  await page.locator(".answered h2").filter({ hasText: /^Yes/ }).waitFor();
  await page.locator(".changes li, #loaf-bowl tr").first().waitFor();
});

journey("Whatever fits best is asked for, and comes in equal millimoles", {}, async ({ page, ask }) => {
  await choose(page, "Hazelnut tin loaf");
  await page.getByRole("button", { name: "Instead of cream of tartar" }).click();
  await page.getByRole("button", { name: "Whatever fits best" }).click();
  await page.getByRole("button", { name: "Work it out" }).click();
  await page.getByRole("heading", { name: /^Yes/ }).waitFor();
  const told = await ask("replace", "formulas/hazelnut-tin-loaf", "--ingredient", "cream-of-tartar", "--answers", "3");
  equal(Object.fromEntries(told.answers[0].changes.map((one) => [one.ingredient, [one.beforeGrams, one.afterGrams]])), await changesOn(page), "the first replacement");
});

journey("No loaf meets the wishes: the page says what stands in the way, and one tap is a way out", { width: 360, scheme: "dark" }, async ({ page, standsUp }) => {
  await page.goto("/?formula=hazelnut-tin-loaf&without=tree-nuts&carbs=0.5");
  await page.getByRole("heading", { name: "No loaf meets all of these wishes." }).waitFor();
  await page.getByText("net carbs must be at most 0.5").waitFor();
  await standsUp(page, "no answer");
  await page.getByRole("button", { name: /^Allow 0\.\d+ g net carbs a slice and ask again$/ }).click();
  await page.getByRole("heading", { name: /^Yes/ }).waitFor();
  const carbs = Number(await page.locator("#answer-balance tr[data-balance='net-carbohydrate']").getAttribute("data-value"));
  const allowed = Number(new URL(page.url()).searchParams.get("carbs"));
  holds(carbs <= allowed && allowed < 1, `${carbs} g against ${allowed} g allowed`);
});

journey("No vegan loaf balances: the loaf that gives way is shown with the band that it misses", {}, async ({ page, standsUp }) => {
  await choose(page, "Hazelnut tin loaf");
  await page.getByRole("combobox", { name: "A way of eating" }).selectOption({ label: "vegan" });
  await page.getByRole("button", { name: "Work it out" }).click();
  await page.getByRole("button", { name: "Show the loaf that would do" }).click();
  const protein = page.locator("#loaf-balance tr[data-balance='setting-protein']");
  await protein.getByText(/^too low/).waitFor();
  await standsUp(page, "the loaf that gives way");
  await page.getByRole("button", { name: "Ask again without 'vegan'" }).waitFor();
});

journey("A larger loaf: twenty slices, the batter by the console's factor, and its minutes", {}, async ({ page, ask, standsUp }) => {
  await choose(page, "Hazelnut tin loaf");
  await page.getByRole("textbox", { name: "Slices" }).fill("20");
  await page.getByRole("button", { name: "Work it out" }).click();
  await page.locator("#answer-oven").getByText(/times the minutes/).waitFor();
  const told = await ask("resize", "formulas/hazelnut-tin-loaf", "--slices", "20");
  await page.getByText(`The batter is ${Number(told.factor.toFixed(2))} times the formula's`).waitFor();
  equal(shown(told.answers[0].readings), await readingsOn(page), "the readings of the larger loaf");
  equal(
    Object.fromEntries(told.answers[0].formula.lines.map((line) => [line.ingredient, line.grams])),
    await page.locator("#answer-bowl tr[data-ingredient]").evaluateAll((rows) => Object.fromEntries(rows.map((row) => [row.dataset.ingredient, Number(row.dataset.grams)]))),
    "the bowl of the larger loaf",
  );
  await standsUp(page, "the larger loaf");
});

journey("Another tin and no nuts at once: two steps, one loaf", { width: 360 }, async ({ page }) => {
  await page.goto("/?formula=hazelnut-tin-loaf&without=tree-nuts&tin=300x110x70");
  await page.getByRole("heading", { name: "Step 2: for a tin of 300 x 110 x 70 mm" }).waitFor();
  holds((await page.locator("#answer-bowl tr[data-ingredient='ingredients/hazelnut-flour']").count()) === 0, "hazelnut is in the bowl");
  await page.locator("#answer-bowl").getByText("tin of 300 x 110 x 70 mm").waitFor();
});

journey("A link holds the question: who opens it sees the same answer", {}, async ({ page, open }) => {
  await choose(page, "Hazelnut tin loaf");
  await page.getByRole("checkbox", { name: "tree nuts" }).check();
  await page.getByRole("button", { name: "Work it out" }).click();
  await page.getByRole("heading", { name: /made without tree nuts/ }).waitFor();
  await page.getByRole("button", { name: "Copy the link" }).click();
  await page.getByText("The link is copied").waitFor();
  const link = await page.evaluate(() => navigator.clipboard.readText());
  const other = await open({ width: 768 });
  await other.goto(link);
  await other.getByRole("heading", { name: /made without tree nuts/ }).waitFor();
  equal(await readingsOn(page), await readingsOn(other), "the readings behind the link");
  equal(await changesOn(page), await changesOn(other), "the changes behind the link");
});

journey("Page and console give the same numbers for the same question", {}, async ({ page, ask }) => {
  await page.goto(nutFree);
  await page.getByRole("heading", { name: /made without tree nuts/ }).waitFor();
  const told = await ask("variant", "formulas/hazelnut-tin-loaf", "--without", "tree-nuts");
  const [best] = told.answers;
  equal(shown(best.readings), await readingsOn(page), "the readings");
  equal(Object.fromEntries(best.changes.map((one) => [one.ingredient, [one.beforeGrams, one.afterGrams]])), await changesOn(page), "the changes");
  equal(best.chanceOfBalance, Number(await page.locator(".sure").getAttribute("data-chance")), "how sure it is");
  const facts = { "net carbs": "netCarbsG", energy: "energyKcal", fat: "fatG", fibre: "fibreG", protein: "proteinG", sodium: "sodiumMg" };
  for (const [title, name] of Object.entries(facts)) {
    equal(best.nutrition.perSlice[name], Number(await page.locator(`tr[data-fact='${title}']`).getAttribute("data-value")), title);
  }

  equal(3, await page.locator(".alternatives input").count(), "the alternatives");
  await page.locator(".alternatives input").nth(1).check();
  equal(Object.fromEntries(told.answers[1].changes.map((one) => [one.ingredient, [one.beforeGrams, one.afterGrams]])), await changesOn(page), "the changes of the second");
});

journey("By the keyboard alone a reader gets from the first formula to an answer", {}, async ({ page }) => {
  await page.goto("/");
  await page.getByRole("radio", { name: "Hazelnut tin loaf" }).waitFor();
  const focused = () => page.evaluate(() => document.activeElement === document.body ? "" : document.activeElement?.closest("label")?.innerText || document.activeElement?.getAttribute("aria-label") || document.activeElement?.innerText || "");
  const tabTo = async (words, most = 60) => {
    for (let steps = 0; steps < most; steps++) {
      if (words.test(await focused())) {
        return;
      }

      await page.keyboard.press("Tab");
    }

    throw new Error(`${words} is not reached by the Tab key; ${await focused()} has the focus`);
  };
  await tabTo(/To the content/);
  await tabTo(/Almond rolls/);
  await page.keyboard.press("Space");
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("ArrowDown");
  await page.getByRole("heading", { name: "The bowl", exact: true }).waitFor();
  await page.locator(".tap-line[data-ingredient='ingredients/hazelnut-flour']").waitFor();
  await tabTo(/Without hazelnut flour/);
  await page.keyboard.press("Enter");
  await tabTo(/^Work it out/);
  const outline = await page.evaluate(() => getComputedStyle(document.activeElement).outlineStyle);
  equal("solid", outline, "the ring around what has the focus");
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: /^Yes/ }).waitFor();
  holds(/^Yes/.test(await focused()), "the answer has not the focus");
});
