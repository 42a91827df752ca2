// What the baker does at the other benches: solving, comparing, trading, foretelling, judging, writing down, printing, stocking.
import { readFileSync } from "node:fs";
import { equal, holds, journey } from "../journey.mjs";
import { keep, owner } from "./kitchen.mjs";
import { changesOn, readingsOn } from "./reader.mjs";

const told = (readings) => Object.fromEntries(readings.filter((one) => one.standing !== "INSIDE" || !one.balance.endsWith("-mass")).map((one) => [one.balance, one.value]));

async function go(page, id, bench) {
  await page.goto(`/kitchen#/formulas/${id}${bench && `/${bench}`}`);
  await page.getByRole("navigation", { name: "Benches" }).waitFor();
}

async function copyOfHazelnut(call, key, id) {
  equal(200, (await call("POST", "/v1/formulas/hazelnut-tin-loaf:copy", { formulaId: id, displayName: `Loaf ${id}` }, key)).status, `copying to ${id}`);
}

journey("At the bench a loaf without tree nuts is solved for, taken, saved, and has the console's numbers", { ...owner, scheme: "dark" }, async ({ page, call, ask, owner: key, standsUp }) => {
  await copyOfHazelnut(call, key, "solved-loaf");
  await go(page, "solved-loaf", "solve");
  await page.getByRole("button", { name: "Solve", exact: true }).click();
  await page.getByText("Say what is to be left out").waitFor();
  await page.getByRole("checkbox", { name: "tree nuts" }).check();
  await page.getByRole("button", { name: "Solve", exact: true }).click();
  await page.locator("#answer-oven .minutes").waitFor();
  await standsUp(page, "solved");
  const [best] = (await ask("variant", "formulas/solved-loaf", "--without", "tree-nuts")).answers;
  equal(told(best.readings), await readingsOn(page), "the readings");
  equal(Object.fromEntries(best.changes.map((one) => [one.ingredient, [one.beforeGrams, one.afterGrams]])), await changesOn(page), "the changes");
  await page.getByRole("button", { name: "Take this loaf onto the bench" }).click();
  await page.getByText("What stands on the bench is not saved.").waitFor();
  equal("180", await page.getByLabel("sunflower seed flour [g]").inputValue(), "what came in");
  equal(0, await page.getByLabel("hazelnut flour [g]").count(), "what went out");
  await page.getByText("Readings of these grams, with their ranges").waitFor();
  await page.getByRole("button", { name: "Save as a new revision" }).click();
  await page.getByText("Saved as revision 2.").waitFor();
  equal(0, await page.getByText("What stands on the bench is not saved.").count(), "unsaved grams");
  const saved = (await call("GET", "/v1/formulas/solved-loaf", undefined, key)).json;
  equal(best.formula.lines.map((line) => [line.ingredient, line.grams]), saved.lines.map((line) => [line.ingredient, line.grams]), "what is saved");
  equal(4, saved.lines.find((line) => line.ingredient === "ingredients/egg-whole").count, "eggs that are counted stay counted");
});

journey("No loaf meets the baker's wishes: what stands in the way can be taken onto the bench", { ...owner, width: 768 }, async ({ page, standsUp }) => {
  await go(page, "hazelnut-tin-loaf", "solve");
  await page.getByRole("radio", { name: "Bake another size" }).check();
  await page.getByLabel("Slices").fill("14");
  await page.getByText("Limits and habits").click();
  await page.getByLabel("Net carbs a slice, at most").fill("0.1");
  await page.getByRole("button", { name: "Solve", exact: true }).click();
  await page.getByRole("heading", { name: "No loaf meets all of these wishes." }).waitFor();
  await page.locator(".conflict li[data-wish='net-carbohydrate']").waitFor();
  await standsUp(page, "no answer");
  await page.locator(".conflict").getByRole("button", { name: "Take the loaf that would do onto the bench" }).first().click();
  await page.getByText("Readings of these grams, with their ranges").waitFor();
  await page.getByRole("button", { name: "Back to the saved formula" }).click();
  await page.getByText("What stands on the bench is not saved.").waitFor({ state: "detached" });
  equal("180", await page.getByLabel("hazelnut flour [g]").inputValue(), "the saved grams");
});

journey("Readings are moved by a baker's word, and one line is replaced, at 360 px", { ...owner, width: 360, scheme: "dark" }, async ({ page, standsUp }) => {
  await go(page, "hazelnut-tin-loaf", "solve");
  await page.getByRole("radio", { name: "Move its readings" }).check();
  await page.getByLabel("Move one reading to a figure").selectOption("protein");
  await page.getByLabel("at least", { exact: true }).fill("4.7");
  await page.getByRole("checkbox", { name: "less salt" }).check();
  await standsUp(page, "the question");
  await page.getByRole("button", { name: "Solve", exact: true }).click();
  await page.getByRole("heading", { name: "Moved readings" }).waitFor();
  const readings = await readingsOn(page);
  holds(readings.protein >= 4.7, `${readings.protein} g protein a slice`);
  await page.getByRole("radio", { name: "Replace one ingredient" }).check();
  await page.getByLabel("Goes out").selectOption("ingredients/cream-of-tartar");
  await page.getByRole("button", { name: "Solve", exact: true }).click();
  await page.getByRole("heading", { name: "A replacement" }).waitFor();
  await page.locator(".changes li[data-ingredient='ingredients/cream-of-tartar'][data-after='0']").waitFor();
  await standsUp(page, "the answer");
});

journey("Two revisions stand side by side, with the console's differences", { ...owner, width: 768, scheme: "dark" }, async ({ page, call, ask, owner: key, standsUp }) => {
  await copyOfHazelnut(call, key, "compared-loaf");
  const first = (await call("GET", "/v1/formulas/compared-loaf", undefined, key)).json;
  const wetter = { ...first, lines: first.lines.map((line) => (line.ingredient === "ingredients/water" ? { ...line, grams: 275 } : line)).filter((line) => line.ingredient !== "ingredients/salt") };
  equal(200, (await call("PATCH", "/v1/formulas/compared-loaf", wetter, key)).status, "the second revision");
  await go(page, "compared-loaf", "compare");
  const diff = await ask("formula", "diff", "compared-loaf");
  const rowsOf = (name) => page.getByRole("table", { name }).locator("tr[data-row]").evaluateAll((rows) => rows.map((row) => [row.dataset.row, row.dataset.before && Number(row.dataset.before), row.dataset.after && Number(row.dataset.after)]));
  await page.getByRole("table", { name: "Readings" }).waitFor();
  const moved = (await rowsOf("Lines, in grams")).filter(([, before, after]) => before !== after);
  equal(diff.lines.map((line) => [line.ingredient, line.beforeGrams, line.afterGrams]), moved.map((row) => row.map((one) => one ?? undefined)), "lines that changed");
  const readings = Object.fromEntries((await rowsOf("Readings")).map(([id, before, after]) => [id, [before, after]]));
  for (const reading of diff.readings.filter((one) => one.before !== one.after)) {
    equal([reading.before, reading.after], readings[reading.balance], reading.title);
  }

  equal("left out", await page.locator("tr[data-row='ingredients/salt'] td").last().textContent(), "a line that was left out");
  await standsUp(page, "side by side");
  await page.getByLabel("From").selectOption("formulas/vanilla-muffins");
  await page.locator("tr[data-row='ingredients/hazelnut-flour']").getByText("added").waitFor();
});

journey("A trade-off is traced, walked along by keys and by clicks, and the figures stand behind it", { ...owner, width: 768 }, async ({ page, standsUp }) => {
  await go(page, "almond-rolls", "trade");
  await page.getByLabel("Loaves, at most").selectOption("3");
  await page.getByRole("combobox", { name: "Against" }).selectOption("hydration");
  equal("higher", await page.getByRole("group", { name: "Against" }).getByLabel("Better is").inputValue(), "which way is better where neither is by itself");
  await page.getByRole("combobox", { name: "Against" }).selectOption("protein");
  await page.getByRole("button", { name: "Trace it" }).click();
  await page.getByText(/^Tracing:/).waitFor({ state: "detached", timeout: 60_000 });
  const points = page.locator(".points input");
  const count = await points.count();
  holds(count >= 2 && count <= 3, `${count} points`);
  const protein = async () => (await readingsOn(page)).protein;
  await points.first().focus();
  const least = await protein();
  await page.keyboard.press("ArrowRight");
  await page.waitForFunction((before) => Number(document.querySelector("#answer-balance tr[data-balance='protein']").dataset.value) !== before, least);
  holds((await protein()) > least, "along the curve the one is not better as the other is worse");
  const dots = page.locator(".chart g.choosable");
  equal(count, await dots.count(), "dots");
  const chosen = async () => page.locator(".chart .dot.chosen").count();
  equal(1, await chosen(), "the chosen dot");
  await dots.first().click();
  await page.waitForFunction((before) => Number(document.querySelector("#answer-balance tr[data-balance='protein']").dataset.value) === before, least);
  await page.getByText("The figures behind the picture").click();
  equal(count, await page.getByRole("region", { name: "net carbs against protein" }).locator("tbody tr").count(), "rows behind the picture");
  await standsUp(page, "the trade-off");
});

journey("Rise and bake are drawn, each with its table, by the service's own figures", { ...owner, width: 360 }, async ({ page, call, standsUp }) => {
  await go(page, "hazelnut-tin-loaf", "oven");
  await page.getByRole("img", { name: /^Gas against time/ }).waitFor();
  await page.getByRole("img", { name: /^Core temperature against time/ }).waitFor();
  await page.getByLabel("Kitchen above the sea").fill("1500");
  await page.getByRole("button", { name: "Work it out" }).click();
  const [rise, bake] = await Promise.all(["rise", "bake"].map(async (verb) => (await call("POST", `/v1/formulas:${verb}`, { name: "formulas/hazelnut-tin-loaf", altitudeMetres: 1500 })).json));
  await page.locator("#bake").getByText(`core target ${Number(bake.coreTargetCelsius.toFixed(1))} °C`).waitFor();
  await page.getByText("The figures behind the picture").first().click();
  await page.getByText("The figures behind the picture").last().click();
  equal(rise.gas.length, await page.getByRole("region", { name: "Gas against time" }).locator("tbody tr").count(), "minutes of gas");
  equal(bake.curve.length, await page.getByRole("region", { name: "Core temperature against time" }).locator("tbody tr").count(), "minutes of the core");
  await page.locator("#bake").getByText(`${bake.timeToCoreMinutes.value.toFixed(0)} (${bake.timeToCoreMinutes.low.toFixed(0)} to ${bake.timeToCoreMinutes.high.toFixed(0)}) minutes`).waitFor();
  await standsUp(page, "rise and bake");
  const curve = await page.locator("#bake path.curve").getAttribute("d");
  holds(curve.split("L").length === bake.curve.length, "the curve has not a point a minute");
});

journey("A swap chart comes pair by pair, with cautions where a swap brings in an allergen", { ...owner, width: 360, scheme: "dark" }, async ({ page, ask, standsUp }) => {
  await go(page, "hazelnut-tin-loaf", "swaps");
  await page.getByRole("checkbox", { name: "unsalted butter" }).check();
  await page.getByRole("button", { name: "Judge the swaps" }).click();
  await page.getByText(/^Judging:/).waitFor({ state: "detached" });
  await page.getByRole("checkbox", { name: "Only what balances" }).uncheck();
  await page.locator("tr[data-replacement='ingredients/tahini']").getByText("This brings in sesame").waitFor();
  const judged = await ask("chart", "formulas/hazelnut-tin-loaf", "--ingredient", "butter");
  const shown = await page.locator("tr[data-replacement]").evaluateAll((rows) => Object.fromEntries(rows.map((row) => [row.dataset.replacement, [row.dataset.verdict, row.dataset.dose ? Number(row.dataset.dose) : null]])));
  const words = { BALANCES: "yes", BALANCES_WITH_REPAIR: "with repair", DOES_NOT_BALANCE: "no" };
  equal(Object.fromEntries(judged.map((pair) => [pair.replacement, [words[pair.verdict], pair.doseGrams ?? null]]).sort()), Object.fromEntries(Object.entries(shown).sort()), "verdicts and doses");
  await standsUp(page, "the chart");
});

journey("A bake is written down, the kitchen learns from it, and the baker can turn that off", { ...owner, logs: ["400"] }, async ({ page, call, owner: key, standsUp }) => {
  await copyOfHazelnut(call, key, "baked-loaf");
  await go(page, "baked-loaf", "trials");
  await page.getByText("None was written down yet.").waitFor();
  await page.getByLabel("In the oven [min]").fill("soon");
  await page.getByText("'soon' is not a number.").waitFor();
  await page.getByLabel("In the oven [min]").fill("4000");
  await page.getByRole("button", { name: "Write it down" }).click();
  await page.locator("#trial-new .field-path").getByText("minutes").waitFor();
  equal("4000", await page.getByLabel("In the oven [min]").inputValue(), "what was typed");
  await page.getByLabel("In the oven [min]").fill("51");
  await page.getByLabel("Core when it came out [°C]").fill("96");
  await page.getByLabel("Crumb, how moist").selectOption("3");
  await page.getByLabel("Notes on this bake").fill("<b>first</b> bake");
  await page.getByRole("button", { name: "Write it down" }).click();
  await page.getByText("Written down as trial 1.").waitFor();
  const trial = page.locator("[data-trial='formulas/baked-loaf/trials/1']");
  await trial.getByText("baked for 51 min; core 96 °C").waitFor();
  await trial.getByText("<b>first</b> bake").waitFor();
  const fact = page.locator("[data-fact]").first();
  await fact.getByText("measured 1 time").waitFor();
  await standsUp(page, "trials");
  const kept = (await call("GET", "/v1/formulas/baked-loaf/trials/1", undefined, key)).json;
  equal([51, 96, 3], [kept.minutes, kept.coreCelsius, kept.crumb.moistness], "what is kept");
  await go(page, "baked-loaf", "oven");
  await page.getByText("These minutes are held against formulas/baked-loaf/trials/1 of this kitchen.").waitFor();
  await go(page, "baked-loaf", "trials");
  await fact.getByRole("button", { name: /^Turn off/ }).click();
  await fact.getByText("turned off", { exact: true }).waitFor();
  const name = (await call("GET", "/v1/learnedFacts", undefined, key)).json.facts[0].name;
  equal(200, (await call("POST", `/v1/${name}:choose`, { choice: "FORGET" }, key)).status, "forgetting it for the journeys to come");
});

journey("Cards are looked at and taken away in every format, as the service prints them", { ...owner, scheme: "dark" }, async ({ page, call, standsUp }) => {
  await go(page, "hazelnut-tin-loaf", "cards");
  await page.getByLabel("Label by the law of").selectOption("European Union");
  await page.locator("tr[data-nutrient='salt']").waitFor();
  await page.locator("#card-label").getByText("local law and licensed practice").first().waitFor();
  await standsUp(page, "a card");
  const take = async (words, ending) => {
    const [file] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: words }).click()]);
    equal(`hazelnut-tin-loaf.${ending}`, file.suggestedFilename(), words);
    return readFileSync(await file.path(), "utf8");
  };
  const { html } = (await call("POST", "/v1/formulas:card", { name: "formulas/hazelnut-tin-loaf", label: "EU", format: "HTML" })).json;
  equal(html, await take("Page to print (HTML)", "html"), "the page to print");
  holds((await take("Text (Markdown)", "md")).startsWith("# Hazelnut tin loaf"), "the text");
  holds((await take("Table (CSV)", "csv")).includes("hazelnut flour,g,180,"), "the table");
  equal("Recipe", JSON.parse(await take("Linked data (JSON-LD)", "jsonld"))["@type"], "the linked data");
  holds((await take("Pictures (SVG)", "svg")).includes("<svg"), "the pictures");
});

journey("A bag is put on the shelf by its panel, weighed in, and forgotten", { ...owner, width: 768, logs: ["400"] }, async ({ page, call, owner: key, standsUp }) => {
  await page.goto("/kitchen#/pantry");
  await page.getByLabel("Called").first().fill("Mill almond <i>no. 2</i>");
  await page.getByLabel("In a batter it is like").selectOption("ingredients/almond-meal");
  await page.getByLabel("The panel follows the law of").selectOption({ label: "United States: carbohydrate with fibre" });
  for (const [label, printed] of [["For", "28"], ["Energy", "900"], ["Fat", "14"], ["Carbohydrate", "6"], ["Fibre", "3"], ["Protein", "6"]]) {
    await page.locator("#bag").getByRole("textbox", { name: new RegExp(`^${label} \\[`) }).fill(printed);
  }

  await page.getByRole("button", { name: "Put it on the shelf" }).click();
  await page.locator("#bag .field-path").filter({ hasText: "energyKcal" }).first().waitFor();
  await standsUp(page, "a panel that cannot be");
  await page.locator("#bag").getByRole("textbox", { name: /^Energy/ }).fill("160");
  await page.getByLabel("I read the allergens on the packet").check();
  await page.getByLabel("Contains").fill("tree nuts");
  await page.getByRole("button", { name: "Put it on the shelf" }).click();
  await page.getByText("Mill almond <i>no. 2</i> is on the shelf.").waitFor();
  await page.getByRole("heading", { name: "Mill almond <i>no. 2</i>" }).waitFor();
  await page.getByText("Allergens: tree nuts").waitFor();
  await page.locator("#food").getByLabel("Price [money/kg]").fill("12.5");
  await page.locator("#food").getByRole("button", { name: "Write it down" }).click();
  await page.locator("#food").getByText(/^Written down: price/).waitFor();
  await standsUp(page, "a bag on the shelf");
  await keep(call, key, "bagged-loaf");
  await page.goto("/kitchen#/formulas/bagged-loaf");
  await page.getByLabel("Put in something else").selectOption({ label: "Mill almond <i>no. 2</i>" });
  await page.getByLabel("Mill almond <i>no. 2</i> [g]").fill("40");
  await page.getByText("Readings of these grams, with their ranges").waitFor();
  await page.goto("/kitchen#/pantry");
  await page.getByLabel("This kitchen's own").selectOption({ label: "Mill almond <i>no. 2</i>" });
  await page.getByRole("button", { name: "Forget this packet" }).click();
  await page.getByText("It cannot be taken back.").waitFor();
  await page.getByRole("button", { name: "Forget it", exact: true }).click();
  await page.getByLabel("This kitchen's own").waitFor({ state: "detached" });
  equal(404, (await call("GET", "/v1/ingredients/mill-almond-i-no-2-i", undefined, key)).status, "the forgotten bag");
});

journey("By the keyboard alone a baker comes from the door to a saved revision", {}, async ({ page, call, owner: key }) => {
  await keep(call, key, "keyed-loaf");
  await page.goto("/kitchen");
  await page.getByLabel("Key").waitFor();
  const focused = () => page.evaluate(() => (document.activeElement?.labels?.[0]?.innerText || document.activeElement?.getAttribute("aria-label") || document.activeElement?.innerText || "").trim());
  const tabTo = async (words, most = 90) => {
    for (let steps = 0; steps < most; steps++) {
      if (words.test(await focused())) {
        return;
      }

      await page.keyboard.press("Tab");
    }

    throw new Error(`${words} is not reached by the Tab key; ${await focused()} has the focus`);
  };
  await tabTo(/^Key/);
  await page.keyboard.type(key);
  await page.keyboard.press("Enter");
  await page.getByRole("link", { name: "Bench loaf keyed-loaf" }).waitFor();
  await tabTo(/^Bench loaf keyed-loaf/);
  await page.keyboard.press("Enter");
  await page.getByText("Readings of these grams, with their ranges").waitFor();
  await tabTo(/^water \[g\]/);
  await page.keyboard.press("Control+A");
  await page.keyboard.type("126");
  await tabTo(/^Save as a new revision/);
  equal("solid", await page.evaluate(() => getComputedStyle(document.activeElement).outlineStyle), "the ring around what has the focus");
  await page.keyboard.press("Enter");
  await page.getByText("Saved as revision 2.").waitFor();
  equal(126, (await call("GET", "/v1/formulas/keyed-loaf", undefined, key)).json.lines[2].grams, "what is saved");
});

journey("With letters twice as large, and at 200 % zoom, no bench of the kitchen runs off", { ...owner, width: 640 }, async ({ page, standsUp }) => {
  for (const [bench, ready] of [["", "Readings of these grams, with their ranges"], ["oven", "Done otherwise, one thing at a time"], ["cards", "Its label"], ["compare", "There is no earlier revision"], ["trials", "Save this formula as one of this kitchen first"]]) {
    await go(page, "hazelnut-tin-loaf", bench);
    await page.getByText(ready).first().waitFor();
    await standsUp(page, `${bench || "bowl"} at 200 % zoom`);
    await page.evaluate(() => document.documentElement.style.setProperty("font-size", "200%"));
    await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))));
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    holds(wide <= 0, `${bench || "bowl"} with letters twice as large: ${wide} px wider than its window`);
    await page.evaluate(() => document.documentElement.style.removeProperty("font-size"));
  }
});
