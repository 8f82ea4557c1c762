// @ts-check
/**
 * The phone's one database, and the only file that names its object stores. Its layout only ever grows: a store or an
 * index is added under a new version number, none is taken away, so that an older entry stays readable.
 */
import { openDB } from "../vendor/idb/idb.js";
import { recount } from "./tally.js";
import { t } from "../words/t.js";

export const ENTRIES = "entries"; // by id; indexes `state`, `device_seq`, `line`, `settled`
export const CARDS = "cards"; // by mark
export const META = "meta"; // by name, any plain value
export const DRAFTS = "drafts"; // by name: a form that was begun
export const ENCLOSURES = "enclosures"; // by sha256: what is known of a picture, paper or voice note; index `state`
export const BYTES = "enclosed_bytes"; // by sha256: its bytes

const NAME = "cellarslate";
const VERSION = 3;
const FULL = () => t("floor-db-this_phones_storage_is");
const NEWER = () => t("floor-db-a_newer_cellarslate_has");

/** The phone cannot keep more. `message` says what to do; the form must keep its values. */
export class SlateFull extends Error {
  constructor() {
    super(FULL());
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
    blocked: () => say(t("floor-db-an_older_cellarslate_is")),
    blocking: (/** @type {number} */ _current, /** @type {number|null} */ _wanted, /** @type {IDBVersionChangeEvent} */ event) => {
      // A newer page wants to add to the layout: stand aside at once, nothing of ours is half done.
      /** @type {any} */ (event.target).close();
      opening = null;
      say(NEWER());
    },
    terminated: () => {
      opening = null;
    },
  }).catch((/** @type {any} */ error) => {
    opening = null;
    throw new SlateClosed(error?.name === "VersionError" ? NEWER() : cannotOpen(error), error);
  });
  return opening;
}

/** @param {any} db @param {number} from @param {number | null} _to @param {any} tx */
async function grow(db, from, _to, tx) {
  if (from < 1) {
    const entries = db.createObjectStore(ENTRIES, { keyPath: "id" });
    entries.createIndex("state", "state");
    entries.createIndex("device_seq", ["device", "seq"]); // not unique: a copied phone may count twice
    db.createObjectStore(CARDS, { keyPath: "mark" });
    db.createObjectStore(META);
    db.createObjectStore(DRAFTS);
  }
  if (from < 2) {
    const entries = tx.objectStore(ENTRIES);
    entries.createIndex("line", ["state", "logged_at", "seq"]);
    entries.createIndex("settled", "settled_at"); // what was never settled is not in it
    if (from) await tx.objectStore(META).put(await recount(entries), "tally"); // an older slate has none
  }
  if (from < 3) {
    db.createObjectStore(ENCLOSURES, { keyPath: "sha256" }).createIndex("state", "state");
    db.createObjectStore(BYTES);
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

/** The names asked for in this turn, and what will be found under them. @type {{names: string[], found: Promise<any[]>} | null} */
let asked = null;

/**
 * Read one small value. All that are asked for in one turn are read in one transaction: a page that starts asks for many.
 * @param {string} name @returns {Promise<any>} undefined where there is none
 */
export function getMeta(name) {
  const turn = (asked ??= { names: [], found: Promise.resolve().then(readAsked) });
  const at = turn.names.push(name) - 1;
  return turn.found.then((found) => found[at]);
}

/** @returns {Promise<any[]>} */
function readAsked() {
  const names = asked?.names ?? [];
  asked = null;
  return read([META], (tx) => Promise.all(names.map((name) => tx.objectStore(META).get(name))));
}

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
    if (mode === "readwrite") await done; // what was read is read
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
  t("floor-db-this_browser_does_not", { name: error?.name ?? "unknown" });

/** @param {string} words */
function say(words) {
  for (const callback of blockedCallbacks) callback(words);
}
