// How heavy the pages are, as the browser counts it. How soon they can be used is measured beside other things: ../measure.mjs.
import { equal, holds, journey } from "../journey.mjs";
import { firstUse } from "../first-use.mjs";

/** Most that a page may weigh, packed as it travels, with all that it asks for until it can be used [bytes]. */
const mostBytes = 250_000;

for (const { place, ready, who } of firstUse) {
  journey(`${place} weighs less than 250 kB and says when it can be used`, { width: 360, who }, async ({ page, told }) => {
    const client = await page.context().newCDPSession(page);
    await client.send("Network.enable");
    let bytes = 0;
    client.on("Network.loadingFinished", (event) => {
      bytes += event.encodedDataLength;
    });
    await page.goto(place);
    await ready(page).first().waitFor();
    told.bytes = bytes;
    holds(bytes > 10_000 && bytes < mostBytes, `${bytes} bytes`);
    equal(1, await page.evaluate(() => performance.getEntriesByName("usable").length), "marks of the moment from which it can be used");
  });
}
