// @ts-check
/**
 * Cases as they come off the line, counted by taps on this phone: how many bottles that makes, and how fast. Kept for the fill that
 * stands in the tank; it becomes an entry only through a check or the close.
 */

const TAPS_MOST = 12;
const FRESH_MS = 40 * 60_000; // a break is no speed
const SPAN_MS = 60_000; // and a few taps in a row, for cases that stood there already, are none either

/** @typedef {{fill: string, cases: number, perCase: number, taps: number[]}} Tally taps: when the last cases came [ms] */

/**
 * @param {string} mark of the tank @param {string} fill that stands in it @param {number} perCase as the house packed last; 0 where nobody has said
 * @param {number} filled bottles at the last check: whoever begins to tap later goes on from there @returns {Tally}
 */
export function readTally(mark, fill, perCase, filled) {
  /** @type {Tally|null} */
  const kept = JSON.parse(localStorage.getItem(`line:${mark}`) ?? "null");
  return kept?.fill === fill ? kept : begunTally(fill, perCase, filled);
}

/** @param {string} fill @param {number} perCase @param {number} filled @returns {Tally} */
export const begunTally = (fill, perCase, filled) => ({ fill, cases: perCase ? Math.floor(filled / perCase) : 0, perCase, taps: [] });

/** @param {string} mark @param {Tally} tally */
export const keepTally = (mark, tally) => localStorage.setItem(`line:${mark}`, JSON.stringify(tally));

/** @param {Tally} tally @param {number} step 1, or -1 to take one back @param {number} nowMs @returns {Tally} */
export function counted(tally, step, nowMs) {
  const cases = Math.max(tally.cases + step, 0);
  if (cases === tally.cases) return tally;
  const taps = step > 0 ? [...tally.taps, nowMs].slice(-TAPS_MOST) : tally.taps.slice(0, -1);
  return { ...tally, cases, taps };
}

/**
 * What the cases say of the line, in the shape of a speed by checks.
 * @param {Tally} tally @param {number} nowMs @returns {import("./checks.js").Speed|null} null before the fourth case, and after a break
 */
export function speedByCases({ cases, perCase, taps }, nowMs) {
  let from = 0;
  taps.forEach((at, n) => { if (n && at - taps[n - 1] > FRESH_MS) from = n; });
  const used = taps.slice(from);
  const [first, last] = [used[0], used[used.length - 1]];
  if (!perCase || used.length < 4 || nowMs - last > FRESH_MS || last - first < SPAN_MS) return null;
  const rate = (/** @type {number} */ begin, /** @type {number} */ end) => ((end - begin) * perCase * 3_600_000) / (used[end] - used[begin]);
  const half = Math.floor((used.length - 1) / 2);
  const halves = [rate(0, half), rate(half, used.length - 1)];
  return { perHour: rate(0, used.length - 1), low: Math.min(...halves), high: Math.max(...halves), last: cases * perCase, at: last / 1000 };
}
