// @ts-check
/** What a chart's axes reach and how they are written. */
import { formatDate, formatNumber, formatTime } from "./format.js";

/** @typedef {import("./charts.js").Curve} Curve */

const TWO_DAYS_S = 172_800;
const TWO_YEARS_S = 63_072_000;

/** Decimals that tell the axis's steps apart. @param {number[]} values */
export function decimalsOf(values) {
  if (values.length === 1) return [0, 1, 2, 3].find((count) => Math.abs(values[0] - Number(values[0].toFixed(count))) < 1e-9) ?? 4;
  const step = values.length ? Math.abs(values[1] - values[0]) : 1;
  const whole = Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
  const isFine = Math.abs(step * 10 ** whole - Math.round(step * 10 ** whole)) < 1e-6; // a step of 2.5 needs one more
  return Math.min(4, isFine ? whole : whole + 1);
}

/** @param {number[]} values @param {Curve} curve */
export function writeX(values, curve) {
  if (!curve.xIsTime) return values.map((x) => formatNumber(x, decimalsOf(values)));
  const span = values.length > 1 ? values[values.length - 1] - values[0] : 0;
  if (span <= TWO_DAYS_S) return values.map((x) => formatTime(x * 1000));
  return values.map((x) => formatDate(x * 1000).replace(span > TWO_YEARS_S ? /^\d+ / : / \d{4}$/, ""));
}

/** Bands and marks belong in sight as well as the points. @param {Curve} curve */
export function xRange(curve) {
  const extra = [...(curve.bands ?? []).flatMap((band) => [band.from, band.to]), ...(curve.marks ?? []).map((mark) => mark.x)];
  return (/** @type {any} */ _, /** @type {number} */ low, /** @type {number} */ high) =>
    /** @type {[number, number]} */ ([Math.min(low, ...extra), Math.max(high, ...extra)]);
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

/** @param {any} uPlot @param {number} seconds */
export function siteDate(uPlot, seconds) {
  const zone = document.documentElement.dataset.zone;
  const date = new Date(seconds * 1000);
  return zone ? uPlot.tzDate(date, zone) : date;
}
