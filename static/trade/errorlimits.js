// @ts-check
/**
 * Limits of error: how far an instrument of a class may be off, as laws print it.
 * Twin of webapp/trade/error_limits.py, which has units, ranges and sources.
 */
import { data } from "./datafiles.js";

const STEPS = [1, 2, 5];

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
