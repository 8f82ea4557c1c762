// @ts-check
/** A book restored from an older backup has lost entries; the phones still have them, and offer them again. */
import { ENTRIES, write } from "./db.js";
import { tell } from "./news.js";

const TIMES_MAX = 3;

/**
 * Put settled entries back in the line that the book says it has not seen: in a gap of a device's counter, or above it.
 * Only those the same book had taken, and three times at most.
 * @param {Record<string, {seen: number, gaps: [number, number][]}>} devices as the answer reports them
 * @param {string} bookId
 * @returns {Promise<number>} how many wait again
 */
export async function offerAgain(devices, bookId) {
  const count = await write([ENTRIES], async (tx) => {
    const store = tx.objectStore(ENTRIES);
    let again = 0;
    for (const [device, { seen, gaps }] of Object.entries(devices ?? {})) {
      for (const [low, high] of [...(gaps ?? []), [seen + 1, Number.MAX_SAFE_INTEGER]]) {
        const range = IDBKeyRange.bound([device, low], [device, high]);
        for (const kept of await store.index("device_seq").getAll(range)) {
          if (!isTaken(kept) || kept.receipt?.book_id !== bookId || kept.offered >= TIMES_MAX) continue;
          await store.put({ ...kept, state: "waiting", offered: kept.offered + 1 });
          again += 1;
        }
      }
    }
    return again;
  });
  if (count) tell("slate");
  return count;
}

/** @param {import("./queue.js").Kept} kept */
const isTaken = (kept) => kept.state === "entered" || kept.state === "known" || kept.state === "queried";
