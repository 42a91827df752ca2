// The pages that are opened first, what stands there once they can be used, and who opens them; and what is done there most.
export const firstUse = [
  { place: "/", ready: (page) => page.getByRole("radio"), who: "reader" },
  { place: "/kitchen", ready: (page) => page.getByRole("link", { name: "Hazelnut tin loaf" }), who: "owner" },
];

/** Types the grams of water of an opened formula so many times, each once the last has its readings: how long each took [ms]. */
export async function typed(page, times) {
  const seen = () => page.evaluate(() => performance.getEntriesByName("typing-to-readings").length);
  const before = await seen();
  for (let time = 0; time < times; time++) {
    await page.getByLabel("water [g]").fill(String(121 + time));
    await page.waitForFunction((least) => performance.getEntriesByName("typing-to-readings").length >= least, before + time + 1);
  }

  return page.evaluate((least) => performance.getEntriesByName("typing-to-readings").slice(least).map((one) => one.duration), before);
}
