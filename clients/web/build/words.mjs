// Writes the names of readings and of goals, as `data/` has them, into `obj/contract/client/kitchen_words.ts`: the pages know no others.
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";

const here = path.resolve(import.meta.dirname, "..");
const data = path.join(here, "..", "..", "data");
const read = (...place) => JSON.parse(readFileSync(path.join(data, ...place), "utf8"));
const readings = readdirSync(path.join(data, "balances"))
  .sort()
  .map((file) => read("balances", file))
  .filter((balance) => balance.target !== undefined)
  .map(({ id, title, unit, target }) => ({ id, title, unit, better: target.better }));
const goals = Object.entries(read("practice", "goals.json").goals).map(([id, { title }]) => ({ id, title }));
writeFileSync(
  path.join(here, "obj", "contract", "client", "kitchen_words.ts"),
  [
    "// Written by build/words.mjs.",
    "export interface NamedReading {\n  id: string;\n  title: string;\n  unit: string;\n  better: string;\n}",
    `export const namedReadings: readonly NamedReading[] = ${JSON.stringify(readings, null, 2)};`,
    `export const goals: readonly { id: string; title: string }[] = ${JSON.stringify(goals, null, 2)};`,
    "",
  ].join("\n"),
);
