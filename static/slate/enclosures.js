// @ts-check
/**
 * Pictures, papers and voice notes on this phone, by the SHA-256 of their bytes: each once. One is on the disk before its
 * entry can name it; it stays until the book has it, and 30 days beyond while there is room. Entries come first: where
 * room is short no picture is taken, and what the book has already is let go.
 */
import { BYTES, ENCLOSURES, ENTRIES, META, SlateFull, read, write } from "./db.js";
import { t } from "../words/later.js";

/**
 * @typedef {{sha256: string, type: string, size: number, state: "waiting" | "had" | "refused", made_at: string, had_at: string | null, words: string}} Enclosure
 *   `had`: the book has it; `refused`: the book will never take it, and `words` say why
 */

const KEPT_DAYS = 30;
const UNNAMED_DAYS = 3; // a form that was never logged
/** What is left to entries, whatever else wants room. [bytes] */
export const ROOM_LEAST = 20_000_000;
const NO_ROOM = t("floor-enclosed-no_room");

/** There is no room for a picture; entries go on. */
export class NoRoom extends Error {
  constructor() {
    super(NO_ROOM);
    this.name = "NoRoom";
  }
}

/** Whether this browser can name a file by its bytes: it does so only for a page that came safely. */
export const canEnclose = () => Boolean(globalThis.crypto?.subtle);

/**
 * Keep a file. Resolves once it is on the disk.
 * @param {Blob} blob @returns {Promise<Enclosure>} @throws {NoRoom}
 */
export async function keep(blob) {
  const bytes = await blob.arrayBuffer();
  const sha256 = await digestOf(bytes);
  await makeRoomFor(bytes.byteLength);
  /** @type {Enclosure} */
  const fresh = { sha256, type: blob.type.split(";")[0], size: bytes.byteLength, state: "waiting", made_at: new Date().toISOString(), had_at: null, words: "" };
  const put = () => write([ENCLOSURES, BYTES, META], async (tx) => {
    const known = await tx.objectStore(ENCLOSURES).get(sha256);
    if (known) return known; // the same picture twice
    await Promise.all([tx.objectStore(ENCLOSURES).put(fresh), tx.objectStore(BYTES).put(bytes, sha256), tx.objectStore(META).put(true, "enclosing")]);
    return fresh;
  });
  try {
    return await put();
  } catch (error) {
    if (!(error instanceof SlateFull)) throw error;
    if (!(await letGo())) throw new NoRoom();
    return put().catch((again) => {
      throw again instanceof SlateFull ? new NoRoom() : again;
    });
  }
}

/** @param {ArrayBuffer} bytes @returns {Promise<string>} SHA-256 in hex */
export async function digestOf(bytes) {
  const hash = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return [...hash].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** @param {string} sha256 @returns {Promise<Blob | null>} its bytes, where this phone has them */
export async function fileOf(sha256) {
  const [about, bytes] = await read([ENCLOSURES, BYTES], (tx) => Promise.all([tx.objectStore(ENCLOSURES).get(sha256), tx.objectStore(BYTES).get(sha256)]));
  return bytes ? new Blob([bytes], { type: about?.type ?? "" }) : null;
}

/** @param {string} sha256 @returns {Promise<Enclosure | undefined>} */
export const about = (sha256) => read([ENCLOSURES], (tx) => tx.objectStore(ENCLOSURES).get(sha256));

/** @returns {Promise<string[]>} the names of those that the book has not got, without reading one of them */
export const waitingNames = () => read([ENCLOSURES], (tx) => tx.objectStore(ENCLOSURES).index("state").getAllKeys("waiting"));

/** @returns {Promise<{waiting: number, refused: number}>} */
export async function countEnclosures() {
  const [waiting, refused] = await read([ENCLOSURES], (tx) => Promise.all(["waiting", "refused"].map((state) => tx.objectStore(ENCLOSURES).index("state").count(state))));
  return { waiting, refused };
}

/** @param {string} sha256 @param {Partial<Enclosure>} change */
export async function noteFile(sha256, change) {
  await write([ENCLOSURES, META], async (tx) => {
    const store = tx.objectStore(ENCLOSURES);
    const before = await store.get(sha256);
    if (before) await store.put({ ...before, ...change });
    await tx.objectStore(META).put((await store.index("state").count("waiting")) > 0, "enclosing");
  });
}

/** Take one back before its entry was logged. @param {string} sha256 */
export const drop = (sha256) => write([ENCLOSURES, BYTES], (tx) => Promise.all([tx.objectStore(ENCLOSURES).delete(sha256), tx.objectStore(BYTES).delete(sha256)]));

/** The book may have lost what it had: it is asked again about each. */
export async function waitAgain() {
  await write([ENCLOSURES, META], async (tx) => {
    const had = await tx.objectStore(ENCLOSURES).index("state").getAll("had");
    await Promise.all(had.map((/** @type {Enclosure} */ one) => tx.objectStore(ENCLOSURES).put({ ...one, state: "waiting", had_at: null })));
    await tx.objectStore(META).put(true, "enclosing");
  });
}

/** Let go what the book has. @returns {Promise<number>} how many */
export async function letGo() {
  return write([ENCLOSURES, BYTES], async (tx) => {
    const had = await tx.objectStore(ENCLOSURES).index("state").getAllKeys("had");
    await Promise.all(had.flatMap((/** @type {string} */ name) => [tx.objectStore(ENCLOSURES).delete(name), tx.objectStore(BYTES).delete(name)]));
    return had.length;
  });
}

/** Let go what the book has had for 30 days, and what was taken for a form that nobody logged. */
export async function pruneFiles(nowMs = Date.now()) {
  await write([ENCLOSURES, BYTES, ENTRIES], async (tx) => {
    const store = tx.objectStore(ENCLOSURES);
    const before = (/** @type {number} */ days) => new Date(nowMs - days * 86_400_000).toISOString();
    const all = /** @type {Enclosure[]} */ (await store.getAll());
    const stale = all.filter((one) => one.state === "waiting" && one.made_at < before(UNNAMED_DAYS));
    const named = stale.length ? new Set((await tx.objectStore(ENTRIES).getAll()).flatMap((/** @type {any} */ kept) => kept.entry.enclosed ?? [])) : new Set();
    const gone = [...all.filter((one) => one.state === "had" && (one.had_at ?? "") < before(KEPT_DAYS)), ...stale.filter((one) => !named.has(one.sha256))];
    await Promise.all(gone.flatMap(({ sha256 }) => [store.delete(sha256), tx.objectStore(BYTES).delete(sha256)]));
  });
}

/** @param {number} size [bytes] */
async function makeRoomFor(size) {
  const isRoom = async () => {
    const { quota = Infinity, usage = 0 } = (await navigator.storage?.estimate?.()) ?? {};
    return quota - usage > ROOM_LEAST + size;
  };
  if ((await isRoom()) || ((await letGo()) && (await isRoom()))) return;
  throw new NoRoom();
}
