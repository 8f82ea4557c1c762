// @ts-check
/**
 * The phone's one database, and the only file that names its object stores. Its layout only ever grows: a store or an
 * index is added under a new version number, none is taken away, so that an older entry stays readable.
 */
import { openDB } from "../vendor/idb/idb.js";

export const ENTRIES = "entries"; // by id; index `state`, index `device_seq`
export const CARDS = "cards"; // by mark
export const META = "meta"; // by name, any plain value
export const DRAFTS = "drafts"; // by name: a form that was begun

const NAME = "cellarslate";
const VERSION = 1;
const FULL = "This phone's storage is full, so nothing was kept. Free some space, or save the slate to a file and hand it in.";
const NEWER = "A newer Cellarslate has the slate open. Close the other tabs, then open this page again.";

/** The phone cannot keep more. `message` says what to do; the form must keep its values. */
export class SlateFull extends Error {
  constructor() {
    super(FULL);
    this.name = "SlateFull";
  }
}

/** The slate cannot be opened or read. `message` says what to do. */
export class SlateClosed extends Error {
  /** @param {string} message @param {unknown} [cause] */
  constructor(message, cause) {
    super(message, { cause });
    this.name = "SlateClosed";
  }
}

/** @type {Promise<any> | null} */
let opening = null;
/** @type {Set<(words: string) => void>} */
const blockedCallbacks = new Set();
/** @type {Set<any>} transactions that may still ask for something */
const underWay = new Set();
// A page that is left but kept for the way back stands still in the midst of a transaction, and WebKit lets no other
// page at the same store until it ends: to the next page the slate would hang. What was under way is done again later.
addEventListener("pagehide", (event) => {
  if (!event.persisted) return;
  away = new Promise((resolve) => addEventListener("pageshow", resolve, { once: true })).then(() => {
    away = null;
  });
  underWay.forEach(abort);
});
/** What a page that was left would begin now waits until somebody comes back to it. @type {Promise<void> | null} */
let away = null;

/** @param {(words: string) => void} callback called when another tab's version stands in the way */
export function onBlocked(callback) {
  blockedCallbacks.add(callback);
}

function open() {
  opening ??= openDB(NAME, VERSION, {
    upgrade: grow,
    blocked: () => say("An older Cellarslate is open in another tab. Close it; the slate opens then."),
    blocking: (/** @type {number} */ _current, /** @type {number|null} */ _wanted, /** @type {IDBVersionChangeEvent} */ event) => {
      // A newer page wants to add to the layout: stand aside at once, nothing of ours is half done.
      /** @type {any} */ (event.target).close();
      opening = null;
      say(NEWER);
    },
    terminated: () => {
      opening = null;
    },
  }).catch((/** @type {any} */ error) => {
    opening = null;
    throw new SlateClosed(error?.name === "VersionError" ? NEWER : cannotOpen(error), error);
  });
  return opening;
}

/** @param {any} db @param {number} from */
function grow(db, from) {
  if (from < 1) {
    const entries = db.createObjectStore(ENTRIES, { keyPath: "id" });
    entries.createIndex("state", "state");
    entries.createIndex("device_seq", ["device", "seq"]); // not unique: a copied phone may count twice
    db.createObjectStore(CARDS, { keyPath: "mark" });
    db.createObjectStore(META);
    db.createObjectStore(DRAFTS);
  }
}

/**
 * Run `work` in one transaction and return what it returned, once the transaction is on the disk.
 * `work` must await nothing but the transaction's own requests.
 * @template T
 * @param {string[]} stores @param {(tx: any) => Promise<T>} work
 * @returns {Promise<T>}
 * @throws {SlateFull | SlateClosed}
 */
export async function write(stores, work) {
  // "strict": the browser reports completion only after the operating system has been told to write it out.
  return run(stores, "readwrite", work, { durability: "strict" });
}

/**
 * Run `work` in one reading transaction.
 * @template T
 * @param {string[]} stores @param {(tx: any) => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function read(stores, work) {
  return run(stores, "readonly", work, {});
}

/** Whether the slate has the layout of this version: a worker, which may be newer than the pages, opens no other. */
export async function isOwnLayout() {
  const all = (await indexedDB.databases?.()) ?? [];
  return all.some(({ name, version }) => name === NAME && version === VERSION);
}

/** @param {string} name @returns {Promise<any>} undefined where there is none */
export const getMeta = (name) => read([META], (tx) => tx.objectStore(META).get(name));

/** @param {string} name @param {any} value */
export const setMeta = (name, value) => write([META], (tx) => tx.objectStore(META).put(value, name));

/** @param {string[]} stores @param {"readonly" | "readwrite"} mode @param {(tx: any) => Promise<any>} work @param {object} options */
async function run(stores, mode, work, options) {
  const tx = await begin(stores, mode, options);
  const done = tx.done;
  done.catch(() => {}); // its failure is thrown below, once
  underWay.add(tx);
  try {
    const result = await work(tx);
    tx.commit?.(); // nothing more is asked of it: it ends at once, whatever becomes of the page
    underWay.delete(tx);
    await done;
    return result;
  } catch (error) {
    abort(tx);
    throw translate(tx.error ?? error);
  } finally {
    underWay.delete(tx);
  }
}

/** @param {string[]} stores @param {"readonly" | "readwrite"} mode @param {object} options */
async function begin(stores, mode, options) {
  const fresh = async () => {
    const db = await open();
    while (away) await away;
    return db.transaction(stores, mode, options);
  };
  try {
    return await fresh();
  } catch (error) {
    if (/** @type {any} */ (error)?.name !== "InvalidStateError") throw error;
    opening = null; // some phones drop the connection in the background: open it again, once
    return fresh();
  }
}

/** @param {any} tx */
function abort(tx) {
  try {
    tx.abort();
  } catch {
    // it has ended already
  }
}

/** @param {any} error */
function translate(error) {
  return error?.name === "QuotaExceededError" ? new SlateFull() : error;
}

/** @param {any} error */
const cannotOpen = (error) =>
  `This browser does not let the slate keep anything (${error?.name ?? "unknown"}). Leave private browsing, or use another browser.`;

/** @param {string} words */
function say(words) {
  for (const callback of blockedCallbacks) callback(words);
}
