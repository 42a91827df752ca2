// Walks every journey once: `node walk.mjs FOLDER`. The environment says where the service is (PAGES_BASE), which program the
// console is (PAGES_CONSOLE), and which keys there are (PAGES_OWNER, PAGES_READER). What came of each goes to standard output.
import { execFile } from "node:child_process";
import { mkdirSync } from "node:fs";
import path from "node:path";
import { promisify } from "node:util";
import { launch, openPage, standsUp } from "./browser.mjs";
import { journeys } from "./all.mjs";

const run = promisify(execFile);
const { PAGES_BASE: base, PAGES_CONSOLE: program, PAGES_OWNER: owner, PAGES_READER: looker, PAGES_ONLY: only } = process.env;
const pictures = path.resolve(process.argv[2] ?? "pictures");
/** Two at a time: a journey waits for the service more than it works. */
const together = 2;

/** A verb of the console, asked of the same service; what comes as a stream is a line each. */
async function ask(...words) {
  const { stdout } = await run(program, [...words, "--json", "--server", process.env.PAGES_GRPC, "--key", owner], { maxBuffer: 1 << 26 }).catch((fault) => {
    if (fault.code === 1 && fault.stdout) {
      return fault;
    }

    throw fault;
  });
  const lines = stdout.trim().split("\n");
  return lines.length > 1 && lines.every((line) => line.startsWith("{") && line.endsWith("}")) ? lines.map((line) => JSON.parse(line)) : JSON.parse(stdout);
}

/** One HTTP/JSON call, as anybody can make it by hand. */
async function call(method, place, body, key) {
  const response = await fetch(new URL(place, base), {
    method,
    headers: { "content-type": "application/json", ...(key ? { authorization: `Bearer ${key}` } : {}) },
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  });
  const text = await response.text();
  return { status: response.status, text, json: text.startsWith("{") ? JSON.parse(text) : undefined };
}

const results = {};
const browser = await launch();

async function walkOne({ sentence, window, walk }) {
  const began = Date.now();
  const opened = [];
  const open = async (more = {}) => {
    const who = more.who ?? window.who ?? "reader";
    const page = await openPage(browser, base, { width: window.width, scheme: window.scheme, key: who === "owner" ? owner : who === "looker" ? looker : "", heldBack: window.logs, ...more });
    opened.push(page);
    return page;
  };
  const told = {};
  try {
    const page = await open();
    await walk({ page, open, base, ask, call, owner, looker, told, standsUp });
    const problems = opened.flatMap((one) => one.problems);
    if (problems.length > 0) {
      throw new Error(problems.join("; "));
    }

    results[sentence] = { passed: true, milliseconds: Date.now() - began, told };
  } catch (fault) {
    results[sentence] = { passed: false, milliseconds: Date.now() - began, told, problem: `${fault.message}\n${opened.flatMap((one) => one.problems).join("\n")}` };
  }

  for (const [place, page] of opened.entries()) {
    const file = `${sentence.replace(/[^a-z0-9]+/gi, "-").slice(0, 80)}${place || ""}.png`;
    await page.screenshot({ path: path.join(pictures, file), fullPage: true, timeout: 5000 }).catch(() => undefined);
    await page.context().close();
  }
}

try {
  mkdirSync(pictures, { recursive: true });
  const chosen = journeys.filter((one) => !only || new RegExp(only, "i").test(one.sentence));
  await Promise.all(Array.from({ length: together }, async () => {
    for (let next = chosen.shift(); next; next = chosen.shift()) {
      await walkOne(next);
    }
  }));
} finally {
  await browser.close();
}

process.stdout.write(JSON.stringify(results, null, 2));
