// @ts-check
/**
 * The slate: entries that this phone holds. An entry is durable here before anybody says so, and it is let go only
 * after the book has answered for it, by id; settled ones stay for 30 days as a second copy.
 */
import { ENTRIES, META, SlateFull, getMeta, read, write } from "./db.js";
import { keepDraft } from "./drafts.js";
import { makeEntry } from "./entry.js";
import { listen, tell } from "./news.js";
import { shownBy } from "./shown.js";
import { signed } from "./signing.js";
import { count, tallyFrom } from "./tally.js";

/**
 * @typedef {import("./entry.js").Entry} Entry
 * @typedef {"waiting" | "entered" | "known" | "queried" | "clash" | "refused"} State
 * @typedef {{
 *   id: string, device: string, seq: number, state: State, entry: Entry, logged_at: string, settled_at: string | null,
 *   receipt: any, words: string, seen: boolean, offered: number,
 * }} Kept one entry on the slate: `receipt` is the book's result (queries, problems, book_no) with its `book_id`;
 *   `words` is said of it where it could not be handed in; `seen` once a person has dealt with a refusal or clash
 */

export const KEPT_DAYS = 30;
const SETTLED = ["entered", "known", "queried", "clash", "refused"];
/** What waits, in the order logged: a range of the index `line`. */
export const WAITING = IDBKeyRange.bound(["waiting"], ["waiting", []]);
const MAKE_ID = "abcdefghjkmnpqrstuvwxyz23456789";

/** What the next entry is made with, as last read: another tab may have gone on since. @type {Promise<{device: any, seq: number, signing: any, key: any, who: any}> | null} */
let next = null;

/** Read what the next entry is made with, so that logging it need not. */
export const prepare = () => (next ??= readNext());

async function readNext() {
  const [known, signing, key, who] = await Promise.all(["device", "signing", "signing_key", "who"].map(getMeta));
  // Logged before the book let this phone in: it names itself until then.
  const device = known ?? { id: makeDeviceId(), name: "", enrolled: false };
  return { device, seq: known ? ((await getMeta(`seq:${device.id}`)) ?? 0) : 0, signing, key, who };
}

/**
 * Keep an entry. Resolves once it is on the disk; then, and not before, it is "on the slate".
 * @param {import("./entry.js").Draft} draft
 * @returns {Promise<Kept>}
 * @throws {SlateFull} with words; the draft's values are kept beside the slate where that is still possible
 */
export async function log(draft) {
  try {
    const kept = await add(draft);
    tell("slate", { id: kept.id, ids: [kept.id] });
    return kept;
  } catch (error) {
    // Pictures that the book has already make room for an entry.
    if (error instanceof SlateFull && (await import("./enclosures.js").then((later) => later.letGo()).catch(() => 0))) return log(draft);
    if (error instanceof SlateFull) await keepDraft(`full:${draft.kind}:${draft.mark ?? ""}`, draft).catch(() => {});
    throw error;
  }
}

/**
 * Make and sign an entry, then keep it: no transaction stays open while something else is waited for. So its counter may
 * be taken meanwhile, by another tab or another tap; then it is made anew with the next.
 * @param {import("./entry.js").Draft} draft @returns {Promise<Kept>}
 */
async function add(draft) {
  for (;;) {
    const { device, seq: before, signing, key, who } = await prepare();
    const seq = before + 1;
    const shown = draft.shown ?? (who && who.code === draft.person ? shownBy(who) : "");
    const kept = asKept(await signed(makeEntry({ ...draft, shown }, { device: device.id, seq }), signing, key));
    const isKept = await write([ENTRIES, META], async (tx) => {
      const meta = tx.objectStore(META);
      const [known, counted, signs, holds] = await Promise.all([meta.get("device"), meta.get(`seq:${device.id}`), meta.get("signing"), meta.get("who")]);
      if (holds?.code !== who?.code || holds?.shown !== who?.shown) return false;
      if ((known && known.id !== device.id) || (counted ?? 0) !== before || signs?.id !== signing?.id) return false;
      // In one transaction: a counter without its entry would be a gap that nobody can fill.
      await Promise.all([meta.put(seq, `seq:${device.id}`), known ? null : meta.put(device, "device")]);
      await put(tx, [{ kept }]);
      return true;
    });
    next = isKept ? Promise.resolve({ device, seq, signing, key, who }) : null;
    if (isKept) return kept;
  }
}

/**
 * Put entries into the store, each in the place of what it was, and count the difference in the same transaction: what
 * it costs to log does not grow with what waits. Nobody puts an entry there otherwise.
 * @param {any} tx of entries and meta @param {{kept?: Kept, before?: Kept}[]} changes without `kept` one is let go
 */
export async function put(tx, changes) {
  const [store, meta] = [tx.objectStore(ENTRIES), tx.objectStore(META)];
  const tally = tallyFrom(await meta.get("tally"));
  for (const { kept, before } of changes) {
    if (before) count(tally, before, -1);
    if (kept) count(tally, kept, 1);
  }
  const asked = changes.map(({ kept, before }) => (!kept ? store.delete(before?.id) : before ? store.put(kept) : store.add(kept)));
  await Promise.all([...asked, meta.put(tally, "tally")]);
}

/** @param {Entry} entry @returns {Kept} */
export function asKept(entry) {
  return {
    id: entry.id, device: entry.device, seq: entry.seq, state: "waiting", entry, logged_at: new Date().toISOString(),
    settled_at: null, receipt: null, words: "", seen: false, offered: 0,
  };
}

/** @param {number} [most] @returns {Promise<Kept[]>} the entries that the book has not answered for, in the order logged */
export const waiting = (most) => read([ENTRIES], (tx) => tx.objectStore(ENTRIES).index("line").getAll(WAITING, most));

/** @returns {Promise<Kept[]>} everything on the slate, newest first */
export async function all() {
  const found = await read([ENTRIES], (tx) => tx.objectStore(ENTRIES).getAll());
  return found.sort(byLogged).reverse();
}

/** @param {string} id @returns {Promise<Kept | undefined>} */
export const get = (id) => read([ENTRIES], (tx) => tx.objectStore(ENTRIES).get(id));

/** @returns {Promise<{waiting: number, refused: number, queried: number, clash: number, oldest_at: string | null}>} how many entries of each state want attention */
export async function counts() {
  return read([ENTRIES, META], async (tx) => {
    const [tally, oldest] = await Promise.all([tx.objectStore(META).get("tally"), tx.objectStore(ENTRIES).index("line").get(WAITING)]);
    return { ...tallyFrom(tally), oldest_at: oldest?.logged_at ?? null };
  });
}

/**
 * Write down the book's results. Only this lets an entry go, and only by its id.
 * @param {any[]} results of one answer @param {string} bookId
 * @param {(tx: any) => Promise<void>} [also] what is kept of the answer in the same transaction
 * @returns {Promise<number>} how many were settled
 */
export async function settle(results, bookId, also) {
  const now = new Date().toISOString();
  const known = results.filter((result) => SETTLED.includes(result?.settled));
  const ids = await write([ENTRIES, META], async (tx) => {
    const found = await Promise.all(known.map(({ id }) => tx.objectStore(ENTRIES).get(id)));
    /** @type {Map<string, {kept: Kept, before: Kept}>} */
    const changes = new Map(); // by id: an answer that names an entry twice counts it once
    known.forEach((result, at) => {
      const before = found[at];
      if (!before) return;
      // "known" repeats the first receipt: an entry with open queries stays queried.
      const state = result.settled === "known" && result.queries?.length ? "queried" : result.settled;
      const words = (result.problems ?? []).map((/** @type {any} */ problem) => problem.words).join(" ");
      changes.set(before.id, { before, kept: { ...before, state, settled_at: now, receipt: { ...result, book_id: bookId }, words } });
    });
    await put(tx, [...changes.values()]);
    await also?.(tx);
    return [...changes.keys()];
  });
  if (ids.length) tell("slate", { ids });
  return ids.length;
}

/**
 * Note the result of a failed try on one entry. It stays on the slate, because the book has not answered.
 * @param {string} id @param {Partial<Kept>} note
 */
export async function note(id, note) {
  await write([ENTRIES, META], async (tx) => {
    const before = await tx.objectStore(ENTRIES).get(id);
    if (before) await put(tx, [{ before, kept: { ...before, ...note } }]);
  });
  tell("slate", { ids: [id] });
}

/** @param {string} id a refusal, clash or query that a person has dealt with; it stays, but no longer asks for attention */
export const markSeen = (id) => note(id, { seen: true });

/**
 * Try a refused entry again, for instance after its vessel has been put into the book.
 * @param {string} id
 */
export const tryAgain = (id) => note(id, { state: "waiting", seen: false, words: "" });

/** Let settled entries go that are older than 30 days. Refused and clashing ones only once somebody has seen them. */
export async function prune(nowMs = Date.now()) {
  const before = new Date(nowMs - KEPT_DAYS * 86_400_000).toISOString();
  const gone = (/** @type {Kept} */ kept) =>
    kept.state !== "waiting" && kept.settled_at !== null && kept.settled_at < before &&
    (kept.seen || kept.state === "entered" || kept.state === "known" || kept.state === "queried");
  await write([ENTRIES, META], async (tx) => {
    const store = tx.objectStore(ENTRIES);
    const old = (await store.index("settled").getAll(IDBKeyRange.upperBound(before, true))).filter(gone);
    await put(tx, old.map((/** @type {Kept} */ before) => ({ before })));
  });
}

/** @param {() => void} callback called after every change of the slate, in any tab @returns {() => void} stops it */
export const onChange = (callback) => listen("slate", callback);

export function makeDeviceId() {
  const bytes = crypto.getRandomValues(new Uint8Array(8));
  return `d-${[...bytes].map((byte) => MAKE_ID[byte % MAKE_ID.length]).join("")}`;
}

/** @param {Kept} a @param {Kept} b */
export const byLogged = (a, b) => (a.logged_at < b.logged_at ? -1 : a.logged_at > b.logged_at ? 1 : a.seq - b.seq);
