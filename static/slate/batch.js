// @ts-check
/** How much goes into one hand-in: at most 200 entries, and well under the book's 512 KB. */

const BYTES_MAX = 400 * 1024;
const encoder = new TextEncoder();

/**
 * @template {{entry: any}} T
 * @param {T[]} found in the order to send @param {number} entriesMax
 * @returns {T[]} as many of the first as fit; one that is too large goes alone
 */
export function takeBatch(found, entriesMax) {
  let bytes = 0;
  let count = 0;
  for (const { entry } of found.slice(0, entriesMax)) {
    bytes += encoder.encode(JSON.stringify(entry)).length + 1;
    if (count > 0 && bytes > BYTES_MAX) break;
    count += 1;
  }
  return found.slice(0, count);
}
