// @ts-check
/** Forms that were begun: kept over a reload, an update, a full disk. No entry yet, and never handed in. */
import { DRAFTS, read, write } from "./db.js";

const PREFIX = "cellarslate-draft:";
const KEPT_DAYS = 7;

/**
 * @param {string} name such as `ferment_reading:F3-K` @param {any} values plain data
 */
export async function keepDraft(name, values) {
  const draft = { values, kept_at: new Date().toISOString() };
  try {
    await write([DRAFTS], (tx) => tx.objectStore(DRAFTS).put(draft, name));
  } catch {
    // A full database still leaves the small store of its own that every site has.
    localStorage.setItem(PREFIX + name, JSON.stringify(draft));
  }
}

/** @param {string} name @returns {Promise<any>} the values, or null */
export async function getDraft(name) {
  const spare = localStorage.getItem(PREFIX + name);
  const draft = spare ? JSON.parse(spare) : await read([DRAFTS], (tx) => tx.objectStore(DRAFTS).get(name));
  if (!draft || Date.parse(draft.kept_at) < Date.now() - KEPT_DAYS * 86_400_000) return null;
  return draft.values;
}

/** @param {string} name */
export async function dropDraft(name) {
  localStorage.removeItem(PREFIX + name);
  await write([DRAFTS], (tx) => tx.objectStore(DRAFTS).delete(name));
}
