// @ts-check
/**
 * Sums of the bottling line: fill by weight, what a bottle may be off by, average and spread, what a label may say.
 * Twin of webapp/trade/bottling.py, which has units, ranges and sources.
 */
import { litresFromMass } from "./alcoholometry.js";
import { OutOfDomain } from "./errors.js";
import { checkRange } from "./numeric.js";

/** @type {[number, number][]} from this size on [mL], percent either way */
const US_FILL = [[1000, 1.5], [376, 2], [101, 3], [0, 4.5]];
/** @type {[number, number|null, number|null][]} from this size on [mL], percent, or mL */
const EU_FILL = [[1000, 1.5, null], [500, null, 15], [300, 3, null], [200, null, 9], [100, 4.5, null], [50, null, 4.5], [5, 9, null]];
const COUNT_MOST = 10_000;

/**
 * @param {number} grossG @param {number} emptyG with its closure @param {number} strengthPct @param {number} sizeMl
 * @returns {number} % of the label
 */
export function fillFromWeightPct(grossG, emptyG, strengthPct, sizeMl) {
  checkRange("full_bottle", grossG, 0, 1e6, "g", "weigh_again");
  checkRange("bottle_size", sizeMl, 5, 100_000, "mL", "look_at_label");
  if (!(emptyG >= 0 && emptyG <= grossG)) {
    throw new OutOfDomain("empty_bottle", emptyG, 0, grossG, "empty_bottle_heavy");
  }
  return ((litresFromMass((grossG - emptyG) / 1000, strengthPct, true) * 1000) / sizeMl) * 100;
}

/** @param {number} sizeMl @returns {number} % of the label, either way */
export function usFillAllowedPct(sizeMl) {
  checkRange("bottle_size", sizeMl, 5, 100_000, "mL", "look_at_label");
  return /** @type {[number, number]} */ (US_FILL.find(([least]) => sizeMl >= least))[1];
}

/** @param {number} sizeMl @returns {number} % of the label, under it */
export function euFillAllowedPct(sizeMl) {
  checkRange("bottle_size", sizeMl, 5, 10_000, "mL", "look_at_label");
  const [, pct, ml] = /** @type {[number, number|null, number|null]} */ (EU_FILL.find(([least]) => sizeMl >= least));
  return pct !== null ? pct : ((ml ?? 0) / sizeMl) * 100;
}

/** @param {number[]} values @returns {number} */
export function meanOf(values) {
  checkValues(values, 1);
  let total = 0;
  for (const value of values) total += value;
  return total / values.length;
}

/** @param {number[]} values @returns {number} sample standard deviation */
export function spreadOf(values) {
  checkValues(values, 2);
  const mean = meanOf(values);
  let total = 0;
  for (const value of values) total += (value - mean) * (value - mean);
  return Math.sqrt(total / (values.length - 1));
}

/** @param {number} volume20L less what stays in the tank @param {number} sizeMl @returns {number} whole bottles */
export function bottlesOf(volume20L, sizeMl) {
  checkRange("volume", volume20L, 0, 1e9, "L", "check_dip");
  checkRange("bottle_size", sizeMl, 5, 100_000, "mL", "look_at_label");
  return Math.floor((volume20L * 1000 + 1) / sizeMl);
}

/** @param {number[]} values @param {number} least */
function checkValues(values, least) {
  if (!(values.length >= least && values.length <= COUNT_MOST)) {
    throw new OutOfDomain("number_of_checks", values.length, least, COUNT_MOST, "few_checks", { figures: { least: { figure: String(least) } } });
  }
  for (const value of values) checkRange("check", value, -1e9, 1e9, "", "look_again");
}
