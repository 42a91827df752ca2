// The sentences of all journeys, as JSON.
import { journeys } from "./all.mjs";

process.stdout.write(JSON.stringify(journeys.map((one) => one.sentence)));
