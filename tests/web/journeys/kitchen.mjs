// What the baker does with a formula on the bench.
import { equal, holds, journey } from "../journey.mjs";
import { typed } from "../first-use.mjs";

export const owner = { who: "owner" };
const loaf = (id, more = {}) => ({ displayName: `Bench loaf ${id}`, lines: [{ ingredient: "ingredients/almond-meal", grams: 200 }, { ingredient: "ingredients/egg-whole", count: 3 }, { ingredient: "ingredients/water", grams: 120 }, { ingredient: "ingredients/psyllium-husk-powder", grams: 15 }, { ingredient: "ingredients/salt", grams: 4 }], slices: 10, ...more });

export async function keep(call, key, id, more) {
  equal(200, (await call("POST", `/v1/formulas?formula_id=${id}`, loaf(id, more), key)).status, `saving ${id}`);
}

export async function bench(page, id) {
  await page.goto(`/kitchen#/formulas/${id}`);
  await page.getByText("Readings of these grams, with their ranges").waitFor();
}

journey("A wrong key is refused in words, and the right one opens the kitchen", { width: 360, logs: ["401"] }, async ({ page, owner: key, standsUp }) => {
  await page.goto("/kitchen");
  await standsUp(page, "the door");
  await page.getByLabel("Key").fill("nobody.knows-this");
  await page.getByRole("button", { name: "Enter" }).click();
  await page.getByText("The key is missing or not known.").waitFor();
  await standsUp(page, "a wrong key");
  await page.getByLabel("Key").fill(key);
  await page.getByRole("button", { name: "Enter" }).click();
  await page.getByRole("link", { name: "Hazelnut tin loaf" }).waitFor();
  await standsUp(page, "inside");
});

for (const [width, scheme] of [[360, "dark"], [768, "light"], [1440, "dark"]]) {
  journey(`Grams are turned and the readings move against the bands of the saved loaf, at ${width} px in ${scheme === "dark" ? "the dark" : "the light"}`, { ...owner, width, scheme }, async ({ page, call, owner: key, standsUp }) => {
    const id = `turned-${width}`;
    await keep(call, key, id);
    await bench(page, id);
    const hydration = page.locator("#bench-balance tr[data-balance='hydration']");
    const before = Number(await hydration.getAttribute("data-value"));
    await standsUp(page, "the bench");
    await page.getByLabel("water [g]").fill("260");
    await hydration.getByText(/^too high/).waitFor();
    holds(Number(await hydration.getAttribute("data-value")) > before, "more water is not wetter");
    await page.getByLabel("water [g]").fill("some");
    await page.getByText("'some' is no mass: give grams").waitFor();
    equal(true, await page.getByRole("button", { name: "Save as a new revision" }).isDisabled(), "saving what is no mass");
    await standsUp(page, "a wrong mass");
  });
}

journey("Of two tabs the second is told, keeps its grams, and overwrites nothing", { ...owner, logs: ["409"] }, async ({ page, open, call, owner: key, standsUp }) => {
  await keep(call, key, "two-tabs");
  await bench(page, "two-tabs");
  const other = await open();
  await bench(other, "two-tabs");
  await page.getByLabel("water [g]").fill("130");
  await page.getByRole("button", { name: "Save as a new revision" }).click();
  await page.getByText("Saved as revision 2.").waitFor();
  await other.getByLabel("water [g]").fill("140");
  await other.getByRole("button", { name: "Save as a new revision" }).click();
  await other.getByText("Somebody else saved this formula meanwhile.").waitFor();
  await standsUp(other, "two tabs");
  equal("140", await other.getByLabel("water [g]").inputValue(), "the grams of the second tab");
  equal(130, (await call("GET", "/v1/formulas/two-tabs", undefined, key)).json.lines[2].grams, "what is saved");
  await other.getByRole("button", { name: "Keep my grams, on top of the other revision" }).click();
  await other.getByText("Your grams stand against the other revision now").waitFor();
  await other.getByRole("button", { name: "Save as a new revision" }).click();
  await other.getByText("Saved as revision 3.").waitFor();
  equal(140, (await call("GET", "/v1/formulas/two-tabs", undefined, key)).json.lines[2].grams, "what is saved in the end");
});

journey("A reload, and a service that is out of reach, lose no gram", { ...owner, logs: ["ERR_INTERNET_DISCONNECTED"] }, async ({ page, call, owner: key }) => {
  await keep(call, key, "kept-grams");
  await bench(page, "kept-grams");
  await page.getByLabel("water [g]").fill("133");
  await page.reload();
  await page.getByText("Readings of these grams, with their ranges").waitFor();
  equal("133", await page.getByLabel("water [g]").inputValue(), "after a reload");
  await page.context().setOffline(true);
  await page.getByRole("button", { name: "Save as a new revision" }).click();
  await page.locator("form").getByText("The service cannot be reached.").waitFor();
  equal("133", await page.getByLabel("water [g]").inputValue(), "without a connection");
  await page.context().setOffline(false);
  await page.locator("form").getByRole("button", { name: "Try again" }).click();
  await page.getByText("Saved as revision 2.").waitFor();
});

journey("What is published in the kitchen a reader can ask about, its name shown as letters and not as markup", owner, async ({ page, open, call, owner: key, standsUp }) => {
  const nasty = "<img src=x onerror=alert(1)> & Söhne";
  await keep(call, key, "hostile-name", { displayName: nasty, description: "\u202Eloaf\u202C <script>alert(2)</script>" });
  await bench(page, "hostile-name");
  await page.getByRole("heading", { name: nasty }).waitFor();
  await page.getByRole("button", { name: "Publish the newest revision" }).click();
  await page.getByText("Revision 1 is published").waitFor();
  const reader = await open({ who: "reader", width: 360 });
  await reader.goto("/?formula=hostile-name");
  await reader.getByRole("heading", { name: nasty }).waitFor();
  equal(0, await reader.locator("main img, main script").count(), "markup out of a name");
  await standsUp(reader, "a hostile name");
});

journey("A reader's key may look and not save: the page says so and keeps the grams", { who: "looker", logs: ["403"] }, async ({ page, call, owner: key }) => {
  await keep(call, key, "only-looked-at");
  await bench(page, "only-looked-at");
  await page.getByLabel("water [g]").fill("121");
  await page.getByRole("button", { name: "Save as a new revision" }).click();
  await page.getByText("This key may not do that.").waitFor();
  equal("121", await page.getByLabel("water [g]").inputValue(), "the grams");
});

journey("Grams that are typed have their readings, each time, and the page says how long it took", owner, async ({ page, call, owner: key, told }) => {
  await keep(call, key, "quick-loaf");
  await bench(page, "quick-loaf");
  told.typingToReadings = await typed(page, 5);
  holds(told.typingToReadings.every((time) => time > 0), told.typingToReadings.join(", "));
});
