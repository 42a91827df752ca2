// What the readers' page does where things are not as usual.
import { equal, holds, journey } from "../journey.mjs";
import { nutFree } from "./reader.mjs";

journey("Without a connection the page says so, keeps the question, and asks again when told to", { width: 360, logs: ["ERR_INTERNET_DISCONNECTED"] }, async ({ page, standsUp }) => {
  await page.goto("/?formula=hazelnut-tin-loaf");
  await page.getByRole("heading", { name: "The bowl", exact: true }).waitFor();
  await page.getByRole("checkbox", { name: "milk" }).check();
  await page.context().setOffline(true);
  await page.getByRole("button", { name: "Work it out" }).click();
  await page.locator(".reply-side > .fault-place").getByText("The service cannot be reached.").waitFor();
  await standsUp(page, "no connection");
  equal(true, await page.getByRole("checkbox", { name: "milk" }).isChecked(), "the question");
  await page.context().setOffline(false);
  await page.locator(".reply-side > .fault-place").getByRole("button", { name: "Try again" }).click();
  await page.getByRole("heading", { name: /made without milk/ }).waitFor();
});

journey("A slow service is remarked on, can be stopped, and asked again", { scheme: "dark" }, async ({ page, standsUp }) => {
  await page.goto("/?formula=hazelnut-tin-loaf");
  await page.getByRole("heading", { name: "The bowl", exact: true }).waitFor();
  await page.getByRole("checkbox", { name: "tree nuts" }).check();
  let isSlow = true;
  await page.route("**/swapsolver.v1.SubstitutionService/VaryFormula", async (route) => {
    if (!isSlow) {
      await route.continue();
    }
  });
  await page.getByRole("button", { name: "Work it out" }).click();
  await page.getByText("It takes longer than usual").waitFor();
  await standsUp(page, "a slow service");
  await page.getByRole("button", { name: "Stop" }).click();
  await page.getByText("Stopped.").waitFor();
  isSlow = false;
  await page.getByRole("button", { name: "Try again" }).click();
  await page.getByRole("heading", { name: /made without tree nuts/ }).waitFor();
});

journey("A service that fails is said to have failed, and nothing is lost", { logs: ["500"] }, async ({ page }) => {
  await page.goto("/?formula=hazelnut-tin-loaf");
  await page.getByRole("heading", { name: "The bowl", exact: true }).waitFor();
  await page.route("**/VaryFormula", (route) => route.fulfill({ status: 500, body: "" }));
  await page.getByRole("checkbox", { name: "egg" }).check();
  await page.getByRole("button", { name: "Work it out" }).click();
  await page.getByText("The service failed.").waitFor();
  equal(true, await page.getByRole("checkbox", { name: "egg" }).isChecked(), "the question");
});

journey("A figure that is none is named beside its field, and costs no call", { width: 768 }, async ({ page, standsUp }) => {
  await page.goto("/?formula=hazelnut-tin-loaf");
  await page.getByRole("heading", { name: "The bowl", exact: true }).waitFor();
  const asked = [];
  page.on("request", (request) => asked.push(request.url()));
  await page.getByRole("textbox", { name: "Slices" }).fill("a few");
  await page.getByRole("textbox", { name: "Length" }).fill("300");
  await page.getByRole("button", { name: "Work it out" }).click();
  await page.getByText("'a few' is no number of slices: give a whole number, 1 to 1000.").waitFor();
  await page.getByText("give length, width and height inside").waitFor();
  equal("true", await page.getByRole("textbox", { name: "Slices" }).getAttribute("aria-invalid"), "the wrong field");
  holds(!asked.some((url) => url.includes("ReformulationService")), "it was asked all the same");
  await standsUp(page, "a wrong figure");
});

journey("A link with hostile text does nothing but what a link may", {}, async ({ page }) => {
  const nasty = encodeURIComponent("<img src=x onerror=alert(1)>");
  await page.goto(`/?formula=${nasty}&without=${nasty},tree-nuts&instead=${nasty}~x&slices=${nasty}&tin=${nasty}`);
  await page.getByRole("radio", { name: "Hazelnut tin loaf" }).waitFor();
  equal(0, await page.locator("img").count(), "pictures that nobody asked for");
  await page.goto("/?formula=hazelnut-tin-loaf&without=no-such-thing");
  await page.getByText("Something in the question cannot be read.").waitFor();
  await page.locator(".fault").getByText("no-such-thing").first().waitFor();
});

journey("A formula that is not there is said not to be there, with the shelf still to choose from", {}, async ({ page, standsUp }) => {
  await page.goto("/?formula=hazelnut-tin-loav");
  await page.getByText("It is not there.").waitFor();
  await page.getByRole("radio", { name: "Hazelnut tin loaf" }).check();
  await page.getByRole("heading", { name: "The bowl", exact: true }).waitFor();
  await standsUp(page, "after a name that is not known");
});

journey("On paper stands the answer alone, in ink on white", {}, async ({ page }) => {
  await page.goto(nutFree);
  await page.getByRole("heading", { name: /made without tree nuts/ }).waitFor();
  await page.locator("#answer-oven .minutes").waitFor();
  await page.emulateMedia({ media: "print", colorScheme: "dark" });
  equal(false, await page.locator(".question").isVisible(), "the question on paper");
  equal(false, await page.getByRole("button", { name: "Print" }).isVisible(), "buttons on paper");
  equal(true, await page.locator("#answer-bowl table").isVisible(), "the bowl on paper");
  equal(["rgb(255, 255, 255)", "rgb(0, 0, 0)"], await page.evaluate(() => [getComputedStyle(document.body).backgroundColor, getComputedStyle(document.body).color]), "paper and ink");
  const paper = (await page.pdf({ format: "A4" })).toString("latin1");
  const sheets = paper.match(/\/Type\s*\/Page[^s]/g)?.length ?? 0;
  holds(sheets >= 1 && sheets <= 4, `${sheets} sheets`);
});

// 200 % zoom of a window of 1280 px leaves 640 px, and of one of 640 px 320 px (WCAG 2.2, 1.4.4 and 1.4.10).
for (const width of [640, 320]) {
  journey(`At 200 % zoom, which leaves ${width} px, everything is there and nothing runs off`, { width }, async ({ page, standsUp }) => {
    await page.goto(nutFree);
    await page.getByRole("heading", { name: /made without tree nuts/ }).waitFor();
    await page.locator("#answer-oven .minutes").waitFor();
    await standsUp(page, "the answer");
    const outside = await page.evaluate(() => [...document.querySelectorAll("main *")].filter((part) => part.getBoundingClientRect().right > window.innerWidth + 1 && !part.closest(".wide, .unseen")).map((part) => part.outerHTML.slice(0, 80)));
    equal([], outside, "parts that run off");
  });
}

for (const width of [1440, 768, 360]) {
  journey(`With letters twice as large the answer is still whole, at ${width} px`, { width }, async ({ page, standsUp }) => {
    await page.goto(nutFree);
    await page.getByRole("heading", { name: /made without tree nuts/ }).waitFor();
    await page.locator("#answer-oven .minutes").waitFor();
    // As a browser's own setting of letters does: everything is measured in the letters of the root.
    await page.evaluate(() => document.documentElement.style.setProperty("font-size", "200%"));
    await standsUp(page, "large letters");
  });
}
