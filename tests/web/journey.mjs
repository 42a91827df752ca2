// What a journey is: a sentence that is true of the pages, the window it is walked in, and the walk.
export const journeys = [];

/**
 * @param {string} sentence What is true where the walk succeeds.
 * @param {{ width?: number, scheme?: "light" | "dark", who?: "reader" | "owner" | "looker", logs?: string[] }} window
 * @param {(walk: object) => Promise<void>} walk
 */
export function journey(sentence, window, walk) {
  journeys.push({ sentence, window, walk });
}

export function equal(expected, found, what) {
  if (JSON.stringify(expected) !== JSON.stringify(found)) {
    throw new Error(`${what}: expected ${JSON.stringify(expected)}, found ${JSON.stringify(found)}`);
  }
}

export function holds(truth, what) {
  if (!truth) {
    throw new Error(what);
  }
}
