// One browser for all journeys, and a page for each: a context of its own, at its width and in its light.
import { createRequire } from "node:module";
import { readFileSync } from "node:fs";
import { chromium } from "playwright-core";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

export function launch() {
  return chromium.launch({
    executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
  });
}

/** A page of the service. What it asked for, logged or raised is kept, and judged when the journey ends. */
export async function openPage(browser, base, { width = 1440, scheme = "light", key = "", heldBack = [] } = {}) {
  const context = await browser.newContext({ viewport: { width, height: 900 }, colorScheme: scheme, baseURL: base, permissions: ["clipboard-read", "clipboard-write"] });
  if (key) {
    await context.addInitScript(([place, text]) => sessionStorage.setItem(place, text), ["swapsolver-key", key]);
  }

  const page = await context.newPage();
  page.problems = [];
  page.setDefaultTimeout(20_000);
  page.on("request", (request) => {
    if (new URL(request.url()).origin !== new URL(base).origin && !request.url().startsWith("blob:")) {
      page.problems.push(`asked another origin: ${request.url()}`);
    }
  });
  page.on("dialog", async (dialog) => {
    if (dialog.type() !== "beforeunload") {
      page.problems.push(`a dialog: ${dialog.message()}`);
    }

    await dialog.accept();
  });
  page.on("pageerror", (fault) => page.problems.push(`a script failed: ${fault.message}`));
  page.on("console", (line) => {
    if (line.type() === "error" && !heldBack.some((expected) => line.text().includes(expected))) {
      page.problems.push(`the browser logged: ${line.text()}`);
    }
  });
  return page;
}

/** Fails where the page, as it stands now, has a barrier that axe knows, or is wider than its window. */
export async function standsUp(page, what) {
  await page.evaluate(axe);
  const found = await page.evaluate(() => window.axe.run(document, { resultTypes: ["violations"] }));
  const barriers = found.violations.flatMap((one) => one.nodes.map((node) => `${one.id}: ${node.html.slice(0, 160)}`));
  if (barriers.length > 0) {
    throw new Error(`${what}: ${barriers.length} barriers: ${barriers.slice(0, 5).join("; ")}`);
  }

  const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  if (wide > 0) {
    throw new Error(`${what}: ${wide} px wider than its window`);
  }
}
