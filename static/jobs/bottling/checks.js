// @ts-check
/** What the checks of a line come to, from the tank's card alone: average and spread, the line's speed, the next check, the end. Pure. */
import { heldLimit } from "../../kinds/limits.js";
import { bottlesOf, euFillAllowedPct, meanOf, spreadOf, usFillAllowedPct } from "../../trade/bottling.js";
import { t } from "../../words/later.js";

const COUNT_USUAL = 5;
const SPEED_MOST = 4; // counts that a speed is taken from
const PAUSE_S = 2 * 3600; // longer than between two checks: a break or a night, and no speed

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

/**
 * @typedef {{perHour: number, low: number, high: number, last: number, at: number}} Speed bottles an hour, on the whole and between any two
 *   counts; the last count and when it was read [s]
 * @typedef {{dueAt: number|null, isLate: boolean, inMin: number|null, atBottle: number|null, isByCount: boolean}} Due [ms since 1970]
 */

/**
 * The line's speed from the last counts, since the count began anew.
 * @param {Points} counts bottles filled so far @returns {Speed|null} null before the second count, and after a pause
 */
export function speedOf(counts) {
  let from = 0;
  counts.forEach(([at, count], n) => { if (n && (count <= counts[n - 1][1] || at - counts[n - 1][0] > PAUSE_S)) from = n; });
  const used = counts.slice(from).slice(-SPEED_MOST);
  if (used.length < 2) return null;
  const rates = used.slice(1).map(([at, count], n) => ((count - used[n][1]) / (at - used[n][0])) * 3600);
  const [[firstAt, first], [at, last]] = [used[0], used[used.length - 1]];
  return { perHour: ((last - first) / (at - firstAt)) * 3600, low: Math.min(...rates), high: Math.max(...rates), last, at };
}

/**
 * When the tank is through at this speed.
 * @param {Speed|null} speed @param {number|null} bottles that the tank fills in all
 * @returns {{at: number, soonest: number, latest: number, left: number}|null} [ms since 1970]
 */
export function endOf(speed, bottles) {
  if (!speed || bottles === null || bottles <= speed.last) return null;
  const left = bottles - speed.last;
  const after = (/** @type {number} */ perHour) => (speed.at + (left / perHour) * 3600) * 1000;
  return { at: after(speed.perHour), soonest: after(speed.high), latest: after(speed.low), left };
}

/** How many the line has filled by now, if it goes on as it did. @param {Speed|null} speed @param {number} nowMs @param {number|null} most */
export const expectedNow = (speed, nowMs, most) => (speed ? Math.min(Math.round(speed.last + (speed.perHour * Math.max(nowMs / 1000 - speed.at, 0)) / 3600), most ?? Infinity) : null);

/**
 * The next check: so many minutes or bottles after the last, whichever comes first.
 * @param {Points} checks @param {Points} counts @param {{check_min: number, check_bottles: number}} every 0 for never
 * @param {Speed|null} speed @param {number} nowMs @returns {Due|null} null before the first check
 */
export function nextDue(checks, counts, every, speed, nowMs) {
  if (!checks.length) return null;
  const [lastAt] = checks[checks.length - 1];
  const counted = counts.length ? counts[counts.length - 1] : null;
  const atBottle = every.check_bottles > 0 && counted && counted[0] === lastAt ? counted[1] + every.check_bottles : null;
  const byTime = every.check_min > 0 ? (lastAt + every.check_min * 60) * 1000 : null;
  const byCount = atBottle !== null && speed ? (speed.at + ((atBottle - speed.last) / speed.perHour) * 3600) * 1000 : null;
  const isByCount = byCount !== null && (byTime === null || byCount < byTime);
  const dueAt = isByCount ? byCount : byTime;
  return { dueAt, isLate: dueAt !== null && nowMs > dueAt, inMin: dueAt === null ? null : Math.ceil((dueAt - nowMs) / 60_000), atBottle, isByCount };
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
    words: isUs ? t("floor-checks-about_as_many_over") : t("floor-checks-100_on_average_76"),
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
