// @ts-check
/** What a chart's axes reach, where their ticks stand and how they are written. */
import { formatDate, formatMinute, formatNumber, formatTime, parseMinute } from "./format.js";

/** @typedef {import("./charts.js").Curve} Curve */

const DAY_S = 86_400;
const MONTH_S = 28 * DAY_S;
const LEAST_TIME_S = 600; // ticks are whole minutes: a narrower axis would say one minute twice
const STEPS_S = [60, 120, 300, 600, 900, 1800, 3600, 7200, 10_800, 21_600, 43_200, DAY_S, 2 * DAY_S, 7 * DAY_S, 14 * DAY_S];
const STEPS_MONTHS = [1, 2, 3, 6, 12, 24, 60, 120];

/** Decimals that tell the axis's steps apart. @param {number[]} values */
export function decimalsOf(values) {
  if (values.length === 1) return [0, 1, 2, 3].find((count) => Math.abs(values[0] - Number(values[0].toFixed(count))) < 1e-9) ?? 4;
  const step = values.length ? Math.abs(values[1] - values[0]) : 1;
  const whole = Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
  const isFine = Math.abs(step * 10 ** whole - Math.round(step * 10 ** whole)) < 1e-6; // a step of 2.5 needs one more
  return Math.min(4, isFine ? whole : whole + 1);
}

/**
 * Where an axis has its ticks: round figures or times, never one alone.
 * @param {number} low @param {number} high above low @param {number} most how many have room @param {boolean} [isTime] [s since 1970]
 * @returns {number[]} at least two, rising
 */
export function ticksOf(low, high, most, isTime = false) {
  const room = Math.max(2, most);
  const found = isTime ? timeTicks(low, high, room) : figureTicks(low, high, room);
  return found.length > 1 ? found : [low, high];
}

/** @param {number} low @param {number} high @param {number} room */
function figureTicks(low, high, room) {
  const tens = 10 ** Math.floor(Math.log10((high - low) / room));
  return widest([1, 2, 2.5, 5, 10, 20].map((step) => () => multiples(low, high, step * tens)), room);
}

/** By the site's clock: full hours stand on full hours, days begin at its midnight. @param {number} low @param {number} high @param {number} room */
function timeTicks(low, high, room) {
  const [from, to] = [onWall(low), onWall(high)];
  const [first, last] = [from, to].map((at) => new Date(at * 1000)).map((at) => at.getUTCFullYear() * 12 + at.getUTCMonth());
  const months = (/** @type {number} */ step) => multiples(first, last, step).map((month) => Date.UTC(Math.floor(month / 12), month % 12) / 1000).filter((at) => at >= from && at <= to);
  const steps = [...STEPS_S.map((step) => () => ((to - from) / step > 99 ? null : multiples(from, to, step))), ...STEPS_MONTHS.map((step) => () => months(step))];
  return widest(steps, room).map(fromWall);
}

/** The finest that has room; where it would stand alone, the one before. @param {(() => number[]|null)[]} steps fine to coarse; null where far too many @param {number} room */
function widest(steps, room) {
  /** @type {number[]} */
  let finer = [];
  for (const step of steps) {
    const ticks = step();
    if (!ticks) continue;
    if (ticks.length <= room) return ticks.length > 1 ? ticks : finer;
    finer = ticks;
  }
  return finer;
}

/** @param {number} low @param {number} high @param {number} step @returns {number[]} */
function multiples(low, high, step) {
  const ticks = [];
  for (let n = Math.ceil(low / step - 1e-9); n * step <= high + step * 1e-9; n += 1) ticks.push(Number((n * step).toPrecision(12)));
  return ticks;
}

/** @param {number} at [s since 1970, UTC] @returns {number} the site's clock at that moment, as if it were UTC */
const onWall = (at) => Date.parse(`${formatMinute(at * 1000)}:00Z`) / 1000 + (at % 60);

/** @param {number} wall */
const fromWall = (wall) => parseMinute(new Date(wall * 1000).toISOString()).getTime() / 1000;

/** No two ticks beside each other are written alike: where the steps are hours, midnight says its day. @param {number[]} values @param {Curve} curve */
export function writeX(values, curve) {
  if (!curve.xIsTime) return values.map((x) => formatNumber(x, decimalsOf(values)));
  const step = values.length > 1 ? values[1] - values[0] : 0;
  const day = (/** @type {number} */ x) => formatDate(x * 1000);
  if (step >= MONTH_S - DAY_S) return values.map((x) => day(x).replace(/^\d+ /, ""));
  if (step >= DAY_S * 0.9) return values.map((x) => day(x).replace(/ \d{4}$/, ""));
  const isOneDay = day(values[0]) === day(values[values.length - 1]);
  return values.map((x) => (!isOneDay && formatTime(x * 1000) === "00:00" ? day(x).replace(/ \d{4}$/, "") : formatTime(x * 1000)));
}

/** Bands and marks belong in sight as well as the points. Worked out here: of one point the drawing library makes years. @param {Curve} curve @returns {() => [number, number]} */
export function xRange(curve) {
  const lines = [...curve.series, ...(curve.ghost ? [curve.ghost] : []), ...(curve.ghosts ?? []), ...(curve.expected ? [curve.expected] : [])];
  const all = [
    ...lines.flatMap((line) => line.points.map((point) => point[0])), ...(curve.bands ?? []).flatMap((band) => [band.from, band.to]),
    ...(curve.marks ?? []).map((mark) => mark.x),
  ];
  return () => widened(all.length ? Math.min(...all) : 0, all.length ? Math.max(...all) : 0, curve.xIsTime ? LEAST_TIME_S : 0);
}

/** A lone reading stands in the middle. @param {number} low @param {number} high @param {number} least @returns {[number, number]} */
function widened(low, high, least) {
  const wanted = least || (high > low ? 0 : Math.abs(high) || 1);
  const more = Math.max(0, (wanted - (high - low)) / 2);
  return [low - more, high + more];
}

/** Room above for the labels of bands. @param {Curve} curve */
export function yRange(curve) {
  return (/** @type {any} */ _, /** @type {number} */ low, /** @type {number} */ high) => {
    const levels = (curve.levels ?? []).map((level) => level.y);
    const bottom = Math.min(low, ...levels);
    const top = Math.max(high, ...levels);
    const span = top - bottom || Math.abs(top) || 1;
    return /** @type {[number, number]} */ ([bottom - span * 0.08, top + span * (curve.bands?.length || curve.marks?.length ? 0.22 : 0.1)]);
  };
}
