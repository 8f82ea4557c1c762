// @ts-check
/** Forms that were begun: kept over a reload, an update, a full disk. No entry yet, never handed in, and one person's own. */
import { DRAFTS, read, write } from "./db.js";

const PREFIX = "cellarslate-draft:";
/** A shift: what was begun before it is read anew. */
const KEPT_H = 10;

/** @typedef {{values: any, begun_at: string, kept_at: string}} Begun what a form held, since when, and when it was kept last */

/**
 * Keep what a form holds.
 * @param {string} name such as `ferment_reading:F3-K` @param {any} values plain data
 * @param {{person?: string, begunAt?: string}} [whose] `begunAt`: of the form, where it was begun before; ISO 8601
 */
export async function keepDraft(name, values, { person = "", begunAt } = {}) {
  const now = new Date().toISOString();
  const draft = { values, begun_at: begunAt ?? now, kept_at: now };
  try {
    await write([DRAFTS], (tx) => tx.objectStore(DRAFTS).put(draft, nameOf(name, person)));
  } catch {
    // A full database still leaves the small store of its own that every site has.
    localStorage.setItem(PREFIX + nameOf(name, person), JSON.stringify(draft));
  }
}

/**
 * Read what this person began, else what an older version of the app kept under nobody's name.
 * @param {string} name @param {string|Promise<string>} person read beside the drafts where it is on its way
 * @returns {Promise<Begun|null>} null where there is none, or it is too old to speak
 */
export async function getDraft(name, person) {
  const kept = read([DRAFTS], async (tx) => {
    const [store, range] = [tx.objectStore(DRAFTS), IDBKeyRange.bound(name, `${name}:\uffff`)];
    const [names, drafts] = await Promise.all([store.getAllKeys(range), store.getAll(range)]);
    return new Map(names.map((/** @type {string} */ one, /** @type {number} */ i) => [one, drafts[i]]));
  });
  kept.catch(() => {}); // what the small store of its own has can do without
  const own = nameOf(name, await person);
  const spare = localStorage.getItem(PREFIX + own);
  const draft = spare ? JSON.parse(spare) : ((await kept).get(own) ?? (await kept).get(name));
  if (!draft || Date.parse(draft.kept_at) < Date.now() - KEPT_H * 3_600_000) return null;
  return { ...draft, begun_at: draft.begun_at ?? draft.kept_at };
}

/** @param {string} name @param {string} person */
export async function dropDraft(name, person) {
  localStorage.removeItem(PREFIX + nameOf(name, person));
  await write([DRAFTS], async (tx) => {
    await tx.objectStore(DRAFTS).delete(nameOf(name, person));
    await tx.objectStore(DRAFTS).delete(name);
  });
}

/** @param {string} name @param {string} person */
const nameOf = (name, person) => (person ? `${name}:${person}` : name);
