// Judges printed cards: `node check.mjs FOLDER` reads every .html and .jsonld file of the folder and writes what was found
// to standard output as JSON, one entry a file. Nothing is fetched from a network.
import { readFile, readdir, mkdtemp, rm } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { HtmlValidate } from "html-validate";
import { chromium } from "playwright-core";
import { judgeLinkedData } from "./linked-data.mjs";

const require = createRequire(import.meta.url);
const folder = path.resolve(process.argv[2]);
const files = (await readdir(folder)).sort();
const found = {};

// The conformance and accessibility presets; what the others add is taste.
const validator = new HtmlValidate({ extends: ["html-validate:standard", "html-validate:a11y"], elements: ["html5"], rules: { "long-title": "off" } });

async function valid(file) {
  const report = await validator.validateFile(path.join(folder, file));
  return report.results.flatMap((result) => result.messages.map((message) => `${message.line}: ${message.ruleId}: ${message.message}`));
}

// A busy machine's browser now and then has no frame to give yet; what it shows is judged all the same.
async function picture(page, file, tries = 5) {
  try {
    await page.screenshot({ path: file, fullPage: true });
  } catch (fault) {
    if (tries <= 1 || !/Unable to capture screenshot/.test(fault.message)) {
      throw fault;
    }

    await page.waitForTimeout(500);
    await picture(page, file, tries - 1);
  }
}

async function look(page, file, width) {
  await page.setViewportSize({ width, height: 900 });
  await page.goto(pathToFileURL(path.join(folder, file)).href);
  await picture(page, path.join(folder, `${file}.${width}.png`));
  return page.evaluate(() => ({
    wide: document.documentElement.scrollWidth - window.innerWidth,
    outside: [...document.querySelectorAll("body *")].filter((part) => part.getBoundingClientRect().right > window.innerWidth + 1).length,
    tall: document.documentElement.scrollHeight,
  }));
}

async function accessible(page, scheme) {
  await page.emulateMedia({ colorScheme: scheme });
  await page.evaluate(await readFile(require.resolve("axe-core/axe.min.js"), "utf8"));
  const result = await page.evaluate(() => window.axe.run(document, { resultTypes: ["violations"] }));
  return result.violations.flatMap((one) => one.nodes.map((node) => `${scheme}: ${one.id}: ${node.html.slice(0, 200)}`));
}

const profile = await mkdtemp(path.join(tmpdir(), "card-checks-"));
const browser = await chromium.launchPersistentContext(profile, {
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  headless: true,
  args: ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
});
try {
  const page = await browser.newPage();
  let alarms = [];
  page.on("dialog", async (dialog) => {
    alarms.push(`dialog: ${dialog.message()}`);
    await dialog.dismiss();
  });
  await browser.route("**", async (route) => {
    if (route.request().url().startsWith("file:")) {
      await route.continue();
    } else {
      alarms.push(`asked for ${route.request().url()}`);
      await route.abort();
    }
  });
  for (const file of files.filter((name) => name.endsWith(".html"))) {
    alarms = [];
    const invalid = await valid(file);
    const phone = await look(page, file, 360);
    const sheet = await look(page, file, 794);
    const barriers = [...(await accessible(page, "light")), ...(await accessible(page, "dark"))];
    const words = await page.evaluate(() => ({
      title: document.title,
      heading: document.querySelector("h1").innerText,
      scripts: [...document.scripts].filter((script) => script.type !== "application/ld+json").length,
    }));
    await page.emulateMedia({ media: "print", colorScheme: "light" });
    const pages = {};
    for (const format of ["A4", "Letter"]) {
      pages[format] = (await page.pdf({ format, preferCSSPageSize: false })).toString("latin1").match(/\/Type\s*\/Page[^s]/g)?.length ?? 0;
    }

    await page.emulateMedia({ media: "screen" });
    found[file] = { invalid, phone, sheet, barriers, alarms, pages, ...words };
  }
} finally {
  await browser.close();
  await rm(profile, { recursive: true, force: true });
}

for (const file of files.filter((name) => name.endsWith(".jsonld"))) {
  found[file] = await judgeLinkedData(JSON.parse(await readFile(path.join(folder, file), "utf8")));
}

process.stdout.write(JSON.stringify(found, null, 2));
