// Every journey there is.
import "./journeys/reader.mjs";
import "./journeys/reader-states.mjs";
import "./journeys/kitchen.mjs";
import "./journeys/kitchen-benches.mjs";
import "./journeys/guards.mjs";
import "./journeys/weight.mjs";

export { journeys } from "./journey.mjs";
