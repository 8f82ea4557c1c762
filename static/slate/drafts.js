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
 * @param {string} name @param {string} person @returns {Promise<Begun|null>} null where there is none, or it is too old to speak
 */
export async function getDraft(name, person) {
  const spare = localStorage.getItem(PREFIX + nameOf(name, person));
  const draft = spare ? JSON.parse(spare) : await read([DRAFTS], async (tx) => {
    const store = tx.objectStore(DRAFTS);
    const [own, nobodys] = await Promise.all([store.get(nameOf(name, person)), store.get(name)]);
    return own ?? nobodys;
  });
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
