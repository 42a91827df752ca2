// How soon the pages can be used on a processor slowed to a quarter, by the browser's own marks, and in turn with them how long the
// same processor takes over a fixed script: `node measure.mjs ROUNDS` (PAGES_BASE, PAGES_OWNER). No test: a clock on the wall tells
// of the machine as much as of the page. JSON to standard output, all in milliseconds.
import { launch, openPage } from "./browser.mjs";
import { firstUse, typed } from "./first-use.mjs";

const { PAGES_BASE: base, PAGES_OWNER: owner } = process.env;
const rounds = Number(process.argv[2]);

async function slowed(key) {
  const page = await openPage(browser, base, { width: 360, key });
  const client = await page.context().newCDPSession(page);
  await client.send("Emulation.setCPUThrottlingRate", { rate: 4 });
  return { page, client };
}

/** The page marks when its first controls stand; a long task that goes on after that would hold a finger up. */
const usable = (page) => page.evaluate(async () => {
  const marked = performance.getEntriesByName("usable")[0]?.startTime ?? Number.POSITIVE_INFINITY;
  const busy = await new Promise((resolve) => {
    new PerformanceObserver((list) => resolve(list.getEntries().filter((task) => task.startTime + task.duration > marked && task.startTime <= marked).map((task) => task.startTime + task.duration))).observe({ type: "longtask", buffered: true });
    setTimeout(() => resolve([]), 100);
  });
  return Math.max(marked, ...busy);
});

/** Objects made, sorted and written as JSON: what scripts of pages do, and always the same. */
const fixed = (page) => page.evaluate(() => {
  const began = performance.now();
  let seed = 1;
  const rows = Array.from({ length: 60_000 }, (_, place) => ({ place, key: (seed = (seed * 48_271) % 2_147_483_647) }));
  rows.sort((one, other) => one.key - other.key);
  return JSON.parse(JSON.stringify(rows)).length === rows.length ? performance.now() - began : Number.NaN;
});

const browser = await launch();
try {
  const found = {};
  for (const { place, ready, who } of firstUse) {
    const { page, client } = await slowed(who === "owner" ? owner : "");
    const script = await slowed("");
    await script.page.goto("/health/live");
    found[place] = { usable: [], script: [] };
    for (let round = 0; round < rounds; round++) {
      await client.send("Network.clearBrowserCache");
      await page.goto(place);
      await ready(page).first().waitFor();
      found[place].usable.push(await usable(page));
      found[place].script.push(await fixed(script.page));
    }

    await page.context().close();
    await script.page.context().close();
  }

  // Typing is measured as the browser runs, not slowed.
  const page = await openPage(browser, base, { width: 1440, key: owner });
  await page.goto("/kitchen#/formulas/hazelnut-tin-loaf");
  await page.getByText("Readings of these grams, with their ranges").waitFor();
  process.stdout.write(JSON.stringify({ pages: found, typing: await typed(page, rounds) }));
} finally {
  await browser.close();
}
