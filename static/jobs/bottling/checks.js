// @ts-check
/** What the checks of a line come to, from the tank's card alone: the last, the average, the spread, when the next is due. Pure. */
import { heldLimit } from "../../kinds/limits.js";
import { bottlesOf, euFillAllowedPct, meanOf, spreadOf, usFillAllowedPct } from "../../trade/bottling.js";

export const EVERY_MIN = 30; // common practice, no source: every half hour or so
const COUNT_USUAL = 5;

/**
 * @typedef {[at: number, value: number][]} Points [s since 1970]
 * @typedef {{last: number, mean: number, spread: number|null, count: number, over: number, under: number}} Spread
 */

/** @param {Points} points @param {number} middle what they should be @returns {Spread|null} */
export function spreadAbout(points, middle) {
  const values = points.map(([, value]) => value);
  if (!values.length) return null;
  return {
    last: values[values.length - 1], mean: meanOf(values), spread: values.length > 1 ? spreadOf(values) : null, count: values.length,
    over: values.filter((value) => value > middle).length, under: values.filter((value) => value < middle).length,
  };
}

/** @param {Points} points @param {number} nowMs @returns {{dueAt: number, isLate: boolean, inMin: number}|null} [ms since 1970] */
export function nextDue(points, nowMs) {
  if (!points.length) return null;
  const dueAt = (points[points.length - 1][0] + EVERY_MIN * 60) * 1000;
  return { dueAt, isLate: nowMs > dueAt, inMin: Math.ceil((dueAt - nowMs) / 60_000) };
}

/**
 * What a bottle of this size may be off by. @param {number|null} sizeL @param {boolean} isUs
 * @returns {{allowedPct: number, low: number, high: number|null, words: string}|null}
 */
export function fillLimits(sizeL, isUs) {
  if (!sizeL || sizeL < 0.005 || sizeL > 10) return null;
  const allowedPct = isUs ? usFillAllowedPct(sizeL * 1000) : euFillAllowedPct(sizeL * 1000);
  return {
    allowedPct, low: 100 - allowedPct, high: isUs ? 100 + allowedPct : null,
    words: isUs ? "about as many over as under (27 CFR 19.356)" : "100 on average (76/211/EEC, from memory)",
  };
}

/** @param {number|null} labelPct @param {any} card of the tank @returns {{low: number, high: number}|null} */
export function strengthLimits(labelPct, card) {
  const most = heldLimit("label_pct", card);
  return labelPct ? { low: labelPct - most, high: labelPct + most } : null;
}

/** @param {number|null|undefined} volumeL @param {number|null} sizeL @returns {number|null} bottles that the tank fills */
export const bottlesLeft = (volumeL, sizeL) => (volumeL && sizeL ? bottlesOf(volumeL, sizeL * 1000) : null);

/**
 * Some fills to what an entry keeps: average, least, most, count. @param {number[]} fills [% of the label]
 * @returns {{mean: string, least: string, most: string, count: string}|null}
 */
export function inEntry(fills) {
  if (!fills.length) return null;
  const text = (/** @type {number} */ value) => value.toFixed(1);
  return { mean: text(meanOf(fills)), least: text(Math.min(...fills)), most: text(Math.max(...fills)), count: String(fills.length) };
}

export { COUNT_USUAL };
