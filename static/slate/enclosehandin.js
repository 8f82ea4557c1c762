// @ts-check
/**
 * Pictures, papers and voice notes on their way to the book: after their entries, in pieces, each time from where the
 * book is. A line that breaks costs a piece; entries never wait for one.
 */
import { NoAnswer, ask, readAnswer } from "./ask.js";
import { fileOf, noteFile, pruneFiles, waitingNames } from "./enclosures.js";
import { tell } from "./news.js";
import { counts } from "./queue.js";
import { t } from "../words/later.js";

const WAIT_MS = 30_000;
const [PIECE_LEAST, PIECE_MOST] = [8 * 1024, 256 * 1024];
const QUICK_MS = 1500;
const LOCK = "cellarslate-enclosures";

let pieceBytes = 64 * 1024;
/** @type {Promise<void> | null} */
let running = null;

/** @typedef {() => Promise<void>} EntriesFirst lets an entry that was logged meanwhile go before the next piece */

/**
 * Hand in what waits, one after the other; what does not go this time goes with the next round of entries.
 * @param {() => Promise<unknown>} drain hands entries in @param {() => {standing: string}} status of that
 * @returns {Promise<void>}
 */
export function handInFiles(drain, status) {
  const entriesFirst = async () => {
    while (status().standing === "sending") await new Promise((done) => setTimeout(done, 100));
    if (status().standing === "idle" && (await counts()).waiting) await drain();
  };
  running ??= underLock(entriesFirst).finally(() => { running = null; });
  return running;
}

/** @param {EntriesFirst} entriesFirst */
async function underLock(entriesFirst) {
  if (!navigator.locks) return handInAll(entriesFirst);
  await navigator.locks.request(LOCK, { ifAvailable: true }, (lock) => (lock ? handInAll(entriesFirst) : undefined));
}

/** @param {EntriesFirst} entriesFirst */
async function handInAll(entriesFirst) {
  for (const sha256 of await waitingNames()) {
    try {
      await handInOne(sha256, entriesFirst);
    } catch (error) {
      if (!(error instanceof NoAnswer)) throw error;
      if (error.status === 404) continue; // its entry is not in the book yet
      if (error.status !== 422) return; // no signal, no room, not let in: later
      await noteFile(sha256, { state: "refused", words: error.message });
    }
    tell("enclosed", { sha256 });
  }
  await pruneFiles();
}

/** @param {string} sha256 @param {EntriesFirst} entriesFirst */
async function handInOne(sha256, entriesFirst) {
  let place = await ask(`/api/enclosures/${sha256}/place`);
  const file = place.is_whole ? null : await fileOf(sha256);
  if (!place.is_whole && !file) return; // the browser has thrown it out
  let begunAnew = 0;
  while (file && !place.is_whole) {
    await entriesFirst();
    const from = Math.min(place.has, file.size);
    try {
      place = await putPiece(sha256, file, from);
    } catch (error) {
      if (!(error instanceof NoAnswer) || error.status !== 409 || begunAnew++) throw error;
      place = { has: 0, is_whole: false }; // spoilt on its way: once more from its beginning
    }
  }
  await noteFile(sha256, { state: "had", had_at: new Date().toISOString(), words: "" });
}

/** @param {string} sha256 @param {Blob} file @param {number} from @returns {Promise<{has: number, is_whole: boolean}>} */
async function putPiece(sha256, file, from) {
  const piece = file.slice(from, from + pieceBytes);
  const stop = new AbortController();
  const timer = setTimeout(() => stop.abort(), WAIT_MS);
  const begunAt = performance.now();
  try {
    const response = await fetch(`/api/enclosures/${sha256}`, {
      method: "PUT", body: piece, signal: stop.signal, redirect: "error", cache: "no-store", credentials: "same-origin",
      headers: { "Content-Type": "application/octet-stream", "Content-Range": `bytes ${from}-${from + piece.size - 1}/${file.size}` },
    });
    const answer = readAnswer(response, await response.text());
    if (performance.now() - begunAt < QUICK_MS) pieceBytes = Math.min(PIECE_MOST, pieceBytes * 2);
    return answer;
  } catch (error) {
    if (error instanceof NoAnswer && error.reason === "refused") throw error;
    pieceBytes = Math.max(PIECE_LEAST, pieceBytes / 2); // a weak signal carries less
    throw error instanceof NoAnswer ? error : new NoAnswer(stop.signal.aborted ? "timeout" : "network", t("floor-enclosed-not_reached"));
  } finally {
    clearTimeout(timer);
  }
}
