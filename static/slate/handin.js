// @ts-check
/**
 * Hand in: send what waits, let go only what the book has answered for. Correctness lies in the book, which takes an
 * entry any number of times; locks and waits here only save work.
 */
import { NoAnswer, ask } from "./ask.js";
import { takeBatch } from "./batch.js";
import { refresh } from "./cards.js";
import { META, getMeta } from "./db.js";
import { become, device, introduce, noteAnswer, session } from "./device.js";
import { localStamp } from "./entry.js";
import { listen, tell } from "./news.js";
import { note, prune, settle, waiting } from "./queue.js";
import { offerAgain } from "./again.js";
import { loadWords, t } from "../words/t.js";

/**
 * @typedef {"idle" | "sending" | "no_signal" | "foreign" | "signed_out" | "busy"} Standing
 * @typedef {{isUrged?: boolean, isLooking?: boolean}} How
 * @typedef {{standing: Standing, words: string, next_at: number | null}} Status `next_at`: next try, since 1970 [ms]
 */

const ENTRIES_MAX = 200;
const WAIT_FIRST_MS = 5000;
const WAIT_MAX_MS = 300_000;
const LOOK_EVERY_MS = 60_000;
const LOOK_AGAIN_MS = 10 * 60_000;
const LOCK = "cellarslate-hand-in";
const TOO_LARGE = () => t("floor-handin-this_entry_is_too");

/** @type {Status} */
let status = { standing: "idle", words: "", next_at: null };
let failures = 0;
let entriesMax = ENTRIES_MAX;
/** @type {Promise<Status> | null} */
let running = null;
/** @type {How | null} */
let wanted = null;
/** @type {ReturnType<typeof setTimeout> | undefined} */
let timer;

/** Begin handing in by itself: now, when the page is seen, when a network comes, by the clock, after each log. */
export async function start() {
  listen("slate", (detail) => detail?.id && drain());
  listen("device", () => drain({ isUrged: true })); // let in again: what waited goes at once
  addEventListener("online", () => drain({ isUrged: true }));
  document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && drain({ isUrged: true }));
  setInterval(() => document.visibilityState === "visible" && drain(), LOOK_EVERY_MS);
  prune().catch(() => {});
  const handedInAt = await getMeta("handed_in_at");
  return drain({ isUrged: true, isLooking: !handedInAt || Date.parse(handedInAt) < Date.now() - LOOK_AGAIN_MS });
}

/** @returns {Status} */
export const handinStatus = () => status;

/** @param {(status: Status) => void} callback also for what another tab does @returns {() => void} stops it */
export const onHandin = (callback) => listen("handin", callback);

/** Hand in now, by a person's tap: no wait holds it back. @returns {Promise<Status>} */
export const handInNow = () => drain({ isUrged: true, isLooking: true });

/**
 * @param {How} [how] urged: cancels the wait; looking: asks the book how far it has seen this phone, even if nothing waits
 * @returns {Promise<Status>} once the round is over that this call began or joined
 */
export function drain({ isUrged = false, isLooking = false } = {}) {
  if (!running && !isUrged && status.next_at && Date.now() < status.next_at) return Promise.resolve(status);
  wanted = { isUrged: isUrged || wanted?.isUrged, isLooking: isLooking || wanted?.isLooking };
  running ??= rounds();
  return running;
}

async function rounds() {
  clearTimeout(timer);
  /** @type {unknown} */
  let failure = null;
  while (wanted) {
    const how = wanted;
    wanted = null;
    if (failure && !how.isUrged) break;
    try {
      await underLock(() => handInAll(Boolean(how.isLooking)), Boolean(how.isUrged));
      failure = null;
    } catch (error) {
      failure = error;
    }
  }
  running = null;
  if (failure) waitAfter(failure);
  else {
    failures = 0;
    // Pictures come after entries; where none wait, nothing of theirs is even loaded.
    if (await getMeta("enclosing")) void import("./enclosehandin.js").then((later) => later.handInFiles(drain, handinStatus), () => {});
    say({ standing: "idle", words: "", next_at: null });
  }
  return status;
}

/** @param {() => Promise<void>} work @param {boolean} isUrged */
async function underLock(work, isUrged) {
  if (!navigator.locks) return work();
  if (!isUrged) return navigator.locks.request(LOCK, { ifAvailable: true }, (lock) => (lock ? work() : undefined));
  // A tap waits a moment for the other tab, then goes ahead: a frozen tab must not hold the slate back.
  const patience = new AbortController();
  const timeout = setTimeout(() => patience.abort(), 2000);
  try {
    return await navigator.locks.request(LOCK, { signal: patience.signal }, () => {
      clearTimeout(timeout);
      return work();
    });
  } catch (error) {
    if (patience.signal.aborted && /** @type {any} */ (error)?.name === "AbortError") return work();
    throw error;
  } finally {
    clearTimeout(timeout);
  }
}

/** @param {boolean} isLooking */
async function handInAll(isLooking) {
  await loadWords().catch(() => {}); // what is kept beside an entry is said in words
  const leftOut = new Set();
  const known = await knownDevice();
  if (!known?.enrolled) isLooking = false; // the book has seen nothing of this phone yet
  let batch = takeBatch(await next(leftOut), entriesMax);
  let head = await getMeta("head");
  // Offered again at most once a round, or a book that never fills its gap would keep us here.
  let mayOfferAgain = true;
  /** What the answer before said is being written down meanwhile. @type {Promise<void>} */
  let settling = Promise.resolve();
  try {
    while (batch.length || isLooking) {
      isLooking = false;
      say({ standing: "sending", words: "", next_at: null });
      const answer = await handInBatch(batch, known?.id ?? batch[0]?.device, head, leftOut);
      await settling;
      if (!answer) {
        batch = takeBatch(await next(leftOut), entriesMax);
        continue;
      }
      entriesMax = ENTRIES_MAX;
      head = answer.head;
      // Before this answer's own head is kept: it covers what the phone knew until now.
      if (mayOfferAgain) await offerAgain(answer);
      mayOfferAgain = false;
      // Read before the answer is written down: the store lets nobody read while it is written to.
      batch = takeBatch(await next(new Set([...leftOut, ...batch.map((kept) => kept.id)])), entriesMax);
      settling = takeAnswer(answer, known);
      settling.catch(() => {}); // thrown where it is waited for
    }
  } finally {
    await settling; // an answer that has come is written down, whatever becomes of the next
  }
  await refresh();
}

/** @param {Set<string>} leftOut ids set aside: for this round, or because their answer is being written down */
const next = async (leftOut) => (await waiting(entriesMax + leftOut.size)).filter((kept) => !leftOut.has(kept.id));

/** @returns {Promise<import("./device.js").Device | null>} this phone as the book knows it, even if the slate was lost here */
async function knownDevice() {
  const own = await device();
  if (own?.enrolled) return own;
  const { device: known } = await session();
  return known ? { ...known, enrolled: true } : own;
}

/**
 * @param {import("./queue.js").Kept[]} batch @param {string | undefined} deviceId @param {any} head of the book, as last known @param {Set<string>} leftOut
 * @returns {Promise<any>} the answer, or null where the batch must be cut smaller
 */
async function handInBatch(batch, deviceId, head, leftOut) {
  const heads = (await getMeta("heads")) ?? [];
  const body = { now: localStamp(), device: deviceId ?? "", head, heads, entries: batch.map((kept) => kept.entry) };
  try {
    const answer = await ask("/api/hand-in", { body });
    if (!isReceipt(answer, batch)) throw new NoAnswer("foreign", t("floor-handin-the_answer_was_not"));
    return answer;
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error;
    if (error.reason === "timeout") entriesMax = Math.max(1, Math.floor(batch.length / 2)); // a weak signal carries less
    const isOfBatch = [400, 413, 422].includes(error.status) || (error.status === 500 && failures > 1);
    if (error.reason !== "refused" || !isOfBatch || !batch.length) throw error;
    if (batch.length > 1) {
      entriesMax = Math.ceil(batch.length / 2);
      return null;
    }
    // One entry alone is at fault: it steps aside, its neighbours go on.
    leftOut.add(batch[0].id);
    entriesMax = ENTRIES_MAX;
    await note(batch[0].id, error.status === 413 ? { state: "refused", words: TOO_LARGE() } : { words: error.message });
    return null;
  }
}

/** @param {any} answer @param {import("./queue.js").Kept[]} batch one result for each entry, in order */
function isReceipt(answer, batch) {
  const results = answer?.results;
  return Array.isArray(results) && results.length === batch.length && batch.every((kept, at) => results[at]?.id === kept.id);
}

/** All of it in one transaction: the book's word is on the phone whole or not at all. @param {any} answer @param {import("./device.js").Device | null} known */
async function takeAnswer(answer, known) {
  await settle(answer.results, answer.book_id, async (tx) => {
    const meta = tx.objectStore(META);
    await noteAnswer(meta, answer);
    await meta.put(answer.head, "head");
    if (answer.heads) await meta.put(answer.heads, "heads"); // what the book said it holds: it is asked again by it
    await meta.put(new Date().toISOString(), "handed_in_at");
    await meta.put(answer.book_id, "book_id");
  });
  const own = await device();
  // A book of an earlier version says nothing of keys.
  if (known?.enrolled && typeof answer.key === "string") await introduce(known.id, answer.key);
  // Only now, with the counter set by the answer: this phone may have lost its slate, and must not count from 1 again.
  if (known?.enrolled && own?.id !== known.id) await become(known);
}

/** @param {unknown} error */
function waitAfter(error) {
  const reason = error instanceof NoAnswer ? error : null;
  if (!reason) console.error(error);
  failures += 1;
  const backoffMs = Math.min(WAIT_MAX_MS, WAIT_FIRST_MS * 2 ** (failures - 1)) * (0.5 + Math.random() / 2);
  const waitMs = Math.max(backoffMs, (reason?.retryAfterS ?? 0) * 1000);
  timer = setTimeout(() => drain({ isUrged: true }), waitMs);
  say({ ...explain(reason, error), next_at: Date.now() + waitMs });
}

/** @param {NoAnswer | null} reason @param {unknown} error @returns {{standing: Standing, words: string}} */
function explain(reason, error) {
  const kept = t("floor-handin-the_slate_keeps_everything");
  if (!reason) return { standing: "busy", words: `${/** @type {any} */ (error)?.message ?? t("floor-handin-something_failed")} ${kept}` };
  if (reason.status === 401) return { standing: "signed_out", words: t("floor-handin-this_phone_must_be") };
  if (reason.reason === "foreign") return { standing: "foreign", words: `${reason.message} ${kept}` };
  if (reason.reason === "refused") return { standing: "busy", words: `${reason.message} ${kept}` };
  return { standing: "no_signal", words: `${reason.message} ${kept}` };
}

/** @param {Status} now */
function say(now) {
  status = now;
  tell("handin", now);
}

