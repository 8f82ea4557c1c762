// @ts-check
/**
 * Uncertainty: what the limits of error of instruments leave open of a figure (JCGM 100:2008, law of propagation).
 * Twin of webapp/trade/uncertainty.py, which has units, ranges and sources.
 */
import { data } from "./datafiles.js";

export const COVERAGE = 2;
const STEPS = [1, 2, 5];

/**
 * @typedef {{value: number, shared: Record<string, number>, own: number}} Uncertain
 * @typedef {{name: string, value: number, error: string, shared: number, own: number, step: number}} Input
 */

/** The combined standard uncertainty. @param {Uncertain} figure */
export function standardOf({ shared, own }) {
  let square = own;
  for (const part of Object.values(shared)) square += part * part;
  return Math.sqrt(square);
}

/** @param {number} limit */
export const standardFromLimit = (limit) => limit / Math.sqrt(3);

/** @param {number} interval */
export const standardFromInterval = (interval) => interval / Math.sqrt(12);

/** @param {string} accuracy @param {number | null} intervalPct @returns {number} % vol */
export function glassLimitPct(accuracy, intervalPct) {
  const { interval_pct: usual, limit_intervals: classes, usual: most } = data("instruments").alcoholometer;
  if (intervalPct !== null && intervalPct !== usual) return intervalPct;
  return (classes[accuracy] ?? classes[most]) * usual;
}

/** @param {number | null} intervalProof @returns {number} proof */
export const proofLimit = (intervalProof) => intervalProof ?? data("instruments").proof_hydrometer.interval_proof;

/** @param {number | null} intervalC @returns {number} °C */
export function thermometerLimitC(intervalC) {
  const { intervals_c: intervals, limits_c: limits, interval_c: usual } = data("instruments").thermometer;
  const interval = intervalC ?? usual;
  const n = intervals.findIndex((/** @type {number} */ step) => interval <= step);
  return n < 0 ? interval : limits[n];
}

/** @param {number} loadKg @returns {number} kg */
export function scaleIntervalKg(loadKg) {
  const { most_intervals: most, least_interval_kg: least } = data("instruments").scale;
  let [interval, decade, n] = [least, least, 0];
  while (interval * most < loadKg && decade < 1e6) {
    n += 1;
    if (n === STEPS.length) [n, decade] = [0, decade * 10];
    interval = STEPS[n] * decade;
  }
  return interval;
}

/** @param {number} loadKg @param {number} intervalKg @param {string} accuracy @returns {number} kg */
export function scaleLimitKg(loadKg, intervalKg, accuracy) {
  const { loads_intervals: classes, limits_intervals: limits, usual } = data("instruments").scale;
  const many = loadKg / intervalKg;
  const n = (classes[accuracy] ?? classes[usual]).filter((/** @type {number} */ most) => many > most + 1e-9).length;
  return limits[n] * intervalKg;
}

/** @param {number} volumeL @param {number | null} capacityL @returns {[number, number]} of the table and of the surface [L] */
export function dipLimitsL(volumeL, capacityL) {
  const { table_share: share, surface_m: surface } = data("instruments").tank;
  const side = cubeRoot(Math.max(volumeL, capacityL ?? 0) / 1000);
  return [share * volumeL, side * side * surface * 1000];
}

/**
 * @param {(at: Record<string, number>) => Record<string, number>} model @param {Input[]} inputs
 * @returns {Record<string, Uncertain>}
 */
export function propagate(model, inputs) {
  const at = Object.fromEntries(inputs.map(({ name, value }) => [name, value]));
  const middle = model(at);
  /** @type {Record<string, Uncertain>} */
  const figures = Object.fromEntries(Object.entries(middle).map(([name, value]) => [name, { value, shared: {}, own: 0 }]));
  for (const one of inputs) {
    const step = one.step || Math.sqrt(one.shared * one.shared + one.own * one.own);
    if (!(step > 0)) continue;
    const above = model({ ...at, [one.name]: one.value + step });
    const below = model({ ...at, [one.name]: one.value - step });
    for (const [name, figure] of Object.entries(figures)) {
      const slope = slopeOf(below[name], figure.value, above[name], step);
      if (one.error && one.shared && slope) figure.shared[one.error] = (figure.shared[one.error] ?? 0) + slope * one.shared;
      const alone = slope * (one.error ? one.own : Math.sqrt(one.shared * one.shared + one.own * one.own));
      figure.own += alone * alone;
    }
  }
  return figures;
}

/** @param {[number, Uncertain][]} terms weight and figure @returns {Uncertain} */
export function combine(terms) {
  /** @type {Uncertain} */
  const sum = { value: 0, shared: {}, own: 0 };
  for (const [weight, term] of terms) {
    sum.value += weight * term.value;
    sum.own += weight * weight * term.own;
    for (const [error, part] of Object.entries(term.shared)) sum.shared[error] = (sum.shared[error] ?? 0) + weight * part;
  }
  return sum;
}

/** @param {number} standard @param {number} decimals of its figure @returns {number} k = 2, rounded up */
export function expanded(standard, decimals) {
  const scale = 10 ** decimals;
  return Math.floor(COVERAGE * standard * scale + 1 - 1e-6) / scale;
}

/** @param {number | undefined} below @param {number} value @param {number | undefined} above @param {number} step */
function slopeOf(below, value, above, step) {
  if (above === undefined) return below === undefined ? 0 : (value - below) / step;
  return below === undefined ? (above - value) / step : (above - below) / (2 * step);
}

/** Newton's steps: powers are not the same to the last bit everywhere. @param {number} value */
function cubeRoot(value) {
  if (value <= 0) return 0;
  let root = Math.max(value, 1);
  for (let n = 0; n < 200; n += 1) {
    const better = root - (root * root * root - value) / (3 * root * root);
    if (!(better < root)) return root;
    root = better;
  }
  return root;
}
