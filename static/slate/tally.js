// @ts-check
/** How many entries of a slate want attention: what waits, and what nobody has dealt with. */

/** @typedef {{waiting: number, refused: number, queried: number, clash: number}} Tally */

/** @param {Partial<Tally>} [known] @returns {Tally} */
export const tallyFrom = (known) => ({ waiting: 0, refused: 0, queried: 0, clash: 0, ...known });

/** @param {Tally} tally is changed @param {{state: string, seen: boolean}} kept @param {1 | -1} by */
export function count(tally, { state, seen }, by) {
  if (state === "waiting") tally.waiting += by;
  else if ((state === "refused" || state === "queried" || state === "clash") && !seen) tally[state] += by;
}

/** Count all anew. @param {any} entries store @returns {Promise<Tally>} */
export async function recount(entries) {
  const tally = tallyFrom();
  for (let cursor = await entries.openCursor(); cursor; cursor = await cursor.continue()) count(tally, cursor.value, 1);
  return tally;
}
