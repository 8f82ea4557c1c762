// @ts-check
/** A book restored from an older backup has lost entries; the phones still have them, and offer them again. */
import { ENTRIES, META, write } from "./db.js";
import { tell } from "./news.js";
import { put } from "./queue.js";

const TIMES_MAX = 3; // for what is in a gap: a book that never fills it would be asked for ever

/**
 * Put settled entries back in the line that the book may not have: in a gap of a device's counter, above it, or all of
 * them where the book has no longer the head it had (another phone may have used the same numbers).
 * Only those the same book had taken.
 * @param {{devices: Record<string, {seen: number, gaps: [number, number][]}>, book_id: string, has_head?: boolean}} answer
 * @returns {Promise<number>} how many wait again
 */
export async function offerAgain({ devices, book_id: bookId, has_head: hasHead }) {
  const count = await write([ENTRIES, META], async (tx) => {
    const store = tx.objectStore(ENTRIES);
    const again = new Map(); // by id: gaps may overlap
    /** @param {any} found @param {IDBKeyRange} [range] */
    const offer = async (found, range) => {
      for (const kept of await found.getAll(range)) {
        if (!isTaken(kept) || kept.receipt?.book_id !== bookId || (range && kept.offered >= TIMES_MAX)) continue;
        again.set(kept.id, { before: kept, kept: { ...kept, state: "waiting", offered: kept.offered + (range ? 1 : 0) } });
      }
    };
    if (hasHead === false) await offer(store);
    else {
      for (const [device, { seen, gaps }] of Object.entries(devices ?? {})) {
        for (const [low, high] of [...(gaps ?? []), [seen + 1, Number.MAX_SAFE_INTEGER]]) {
          await offer(store.index("device_seq"), IDBKeyRange.bound([device, low], [device, high]));
        }
      }
    }
    await put(tx, [...again.values()]);
    return again.size;
  });
  if (count) tell("slate");
  if (count) void import("./enclosures.js").then((later) => later.waitAgain(), () => {}); // their pictures too
  return count;
}

/** @param {import("./queue.js").Kept} kept */
const isTaken = (kept) => kept.state === "entered" || kept.state === "known" || kept.state === "queried";
