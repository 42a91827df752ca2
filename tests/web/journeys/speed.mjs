// How heavy the pages are and how soon they can be used, by the browser's own measures. These walk alone.
import { equal, holds, journey } from "../journey.mjs";

/** Most that a page may weigh, packed as it travels, with all that it asks for until it can be used [bytes]. */
const mostBytes = 250_000;

/** Longest from the start of the navigation until the page can be used, on a processor slowed to a quarter [ms]. */
const longest = 1500;

for (const [place, ready, who] of [["/", (page) => page.getByRole("radio"), "reader"], ["/kitchen", (page) => page.getByRole("link", { name: "Hazelnut tin loaf" }), "owner"]]) {
  journey(`${place} weighs less than 250 kB and can be used within 1.5 s on a processor slowed to a quarter`, { width: 360, isAlone: true, who }, async ({ page, told }) => {
    const client = await page.context().newCDPSession(page);
    await client.send("Network.enable");
    await client.send("Emulation.setCPUThrottlingRate", { rate: 4 });
    let bytes = 0;
    client.on("Network.loadingFinished", (event) => {
      bytes += event.encodedDataLength;
    });
    const times = [];
    for (let round = 0; round < 3; round++) {
      await client.send("Network.clearBrowserCache");
      bytes = 0;
      await page.goto(place);
      await ready(page).first().waitFor();
      // The page marks when its first controls stand; long tasks after that would hold a finger up.
      times.push(await page.evaluate(async () => {
        const marked = performance.getEntriesByName("usable")[0]?.startTime ?? Number.POSITIVE_INFINITY;
        const busy = await new Promise((resolve) => {
          new PerformanceObserver((list) => resolve(list.getEntries().filter((task) => task.startTime + task.duration > marked && task.startTime <= marked).map((task) => task.startTime + task.duration))).observe({ type: "longtask", buffered: true });
          setTimeout(() => resolve([]), 100);
        });
        return Math.max(marked, ...busy);
      }));
      holds(bytes > 10_000 && bytes < mostBytes, `${bytes} bytes`);
    }

    times.sort((one, other) => one - other);
    Object.assign(told, { bytes, usableMilliseconds: times });
    holds(times[1] <= longest, `usable after ${times.join(", ")} ms`);
    equal([], page.problems, "problems");
  });
}
