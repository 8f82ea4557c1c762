// @ts-check
/**
 * What the cards on this phone cannot show yet. A page reads it whole once; after that only what has changed is read
 * anew, so that a long slate costs a page nothing at each entry.
 */
import { ENTRIES, META, read } from "./db.js";
import { listen } from "./news.js";
import { WAITING, byLogged } from "./queue.js";

/** @typedef {import("./queue.js").Kept} Kept */

/** Entries that wait or are settled, by id, in the order logged; null where all must be read. @type {Map<string, Kept> | null} */
let held = null;
/** What has changed since it was read. @type {Set<string>} */
let changed = new Set();
/** One after the other. @type {Promise<any>} */
let turn = Promise.resolve();

listen("slate", (detail) => {
  if (Array.isArray(detail?.ids)) for (const id of detail.ids) changed.add(id);
  else held = null;
});
// A page that was left and kept may have missed what other tabs said.
addEventListener("pageshow", ({ persisted }) => {
  if (persisted) held = null;
});

/** @returns {Promise<Kept[]>} entries that wait, and those settled after the cards came; newest first, to be read only */
export function unknownToCards() {
  const found = turn.then(bringUp);
  turn = found.catch(() => {});
  return found;
}

/** @returns {Promise<Kept[]>} */
async function bringUp() {
  const ids = [...changed];
  changed = new Set();
  const isWhole = !held;
  const here = (held ??= new Map());
  try {
    // When the cards came and what they lack, in one turn at the database: a start waits for it.
    const { fresh, found } = await read([META, ENTRIES], async (tx) => {
      const since = (await tx.objectStore(META).get("cards_fresh_at")) ?? null;
      const store = tx.objectStore(ENTRIES);
      return { fresh: since, found: await Promise.all(isWhole ? lacking(store, since) : ids.map((id) => store.get(id))) };
    });
    for (const one of isWhole ? found.flat().sort(byLogged) : found) if (one) here.set(one.id, one);
    const isTaken = (/** @type {Kept} */ { state }) => state !== "refused" && state !== "clash";
    return [...here.values()].filter((one) => one.state === "waiting" || (isTaken(one) && fresh !== null && (one.settled_at ?? "") > fresh)).reverse();
  } catch (error) {
    held = null;
    throw error;
  }
}

/** @param {any} store of entries @param {string | null} since when the cards came @returns {Promise<Kept[]>[]} */
const lacking = (store, since) => [store.index("line").getAll(WAITING), ...(since === null ? [] : [store.index("settled").getAll(IDBKeyRange.lowerBound(since, true))])];
