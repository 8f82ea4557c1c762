// @ts-check
/**
 * What the cards on this phone cannot show yet. A page reads it whole once; after that only what has changed is read
 * anew, so that a long slate costs a page nothing at each entry.
 */
import { ENTRIES, getMeta, read } from "./db.js";
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
  const fresh = (await getMeta("cards_fresh_at")) ?? null;
  const ids = [...changed];
  changed = new Set();
  const isWhole = !held;
  const here = (held ??= new Map());
  try {
    for (const one of await (isWhole ? readAll(fresh) : readThese(ids))) if (one) here.set(one.id, one);
  } catch (error) {
    held = null;
    throw error;
  }
  const isTaken = (/** @type {Kept} */ { state }) => state !== "refused" && state !== "clash";
  return [...here.values()].filter((one) => one.state === "waiting" || (isTaken(one) && fresh !== null && (one.settled_at ?? "") > fresh)).reverse();
}

/** @param {string | null} fresh when the cards came @returns {Promise<Kept[]>} */
async function readAll(fresh) {
  const found = await read([ENTRIES], (tx) => {
    const store = tx.objectStore(ENTRIES);
    return Promise.all([store.index("line").getAll(WAITING), fresh === null ? [] : store.index("settled").getAll(IDBKeyRange.lowerBound(fresh, true))]);
  });
  return found.flat().sort(byLogged);
}

/** @param {string[]} ids @returns {Promise<(Kept | undefined)[]>} */
const readThese = (ids) => (ids.length ? read([ENTRIES], (tx) => Promise.all(ids.map((id) => tx.objectStore(ENTRIES).get(id)))) : Promise.resolve([]));
