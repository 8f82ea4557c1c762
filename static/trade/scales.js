// @ts-check
/**
 * Scales of gravity: Brix, Plato, Oechsle and KMW by hydrometer, from specific gravity and back.
 * Twin of webapp/trade/scales.py, which has units, ranges and sources.
 */
import { data } from "./datafiles.js";
import { checkRange, invert, polynomial } from "./numeric.js";

/**
 * @param {number} gravity SG 20/20
 * @returns {number} °Bx by hydrometer
 */
export function brixFromGravity(gravity) {
  checkGravity(gravity);
  return polynomial(data("sugar").brix, gravity);
}

/**
 * @param {number} brix °Bx by hydrometer
 * @returns {number} SG 20/20
 */
export function gravityFromBrix(brix) {
  return invertScale(brix, data("sugar").brix, data("sugar").gravity, "brix", "Bx");
}

/**
 * @param {number} gravity SG 20/20
 * @returns {number} °P
 */
export function platoFromGravity(gravity) {
  const [low, high] = data("sugar").plato_gravity;
  checkRange("gravity", gravity, low, high, "SG", "check_scale");
  return polynomial(data("sugar").plato, gravity);
}

/**
 * @param {number} plato °P
 * @returns {number} SG 20/20
 */
export function gravityFromPlato(plato) {
  return invertScale(plato, data("sugar").plato, data("sugar").plato_gravity, "plato", "degP");
}

/**
 * @param {number} gravity SG 20/20
 * @returns {number} °Oe
 */
export function oechsleFromGravity(gravity) {
  checkGravity(gravity);
  return (gravity - 1) * 1000;
}

const KMW_LINEAR = 4.54;
const KMW_SQUARE = 0.022;

/** @param {number} kmw @returns {number} SG 20/20 */
export function gravityFromKmw(kmw) {
  const [low, high] = data("sugar").gravity;
  checkRange("sugar", kmw, kmwOf(low), kmwOf(high), "KMW", "check_scale");
  return 1 + (kmw * (KMW_LINEAR + KMW_SQUARE * kmw)) / 1000;
}

/** @param {number} gravity SG 20/20 @returns {number} degrees KMW */
export function kmwFromGravity(gravity) {
  checkGravity(gravity);
  return kmwOf(gravity);
}

/** @param {number} gravity */
const kmwOf = (gravity) => (Math.sqrt(KMW_LINEAR * KMW_LINEAR + 4 * KMW_SQUARE * ((gravity - 1) * 1000)) - KMW_LINEAR) / (2 * KMW_SQUARE);

// A refractometer is made for juice without alcohol: its scales go by the gravity of the sucrose solution that bends light alike.
/** @param {number} oechsle by refractometer @returns {number} °Bx by refractometer */
export const brixFromOechsle = (oechsle) => brixFromGravity(1 + oechsle / 1000);

/** @param {number} brix by refractometer @returns {number} °Oe by refractometer */
export const oechsleFromBrix = (brix) => oechsleFromGravity(gravityFromBrix(brix));

/** @param {number} kmw by refractometer @returns {number} °Bx by refractometer */
export const brixFromKmw = (kmw) => brixFromGravity(gravityFromKmw(kmw));

/** @param {number} brix by refractometer @returns {number} degrees KMW by refractometer */
export const kmwFromBrix = (brix) => kmwFromGravity(gravityFromBrix(brix));

/** @param {number} gravity */
export function checkGravity(gravity) {
  const [low, high] = data("sugar").gravity;
  checkRange("gravity", gravity, low, high, "SG", "check_scale");
}

/**
 * @param {number} value
 * @param {number[]} coefficients
 * @param {[number, number]} limits
 * @param {string} what
 * @param {string} unit
 */
function invertScale(value, coefficients, [low, high], what, unit) {
  checkRange(what, value, polynomial(coefficients, low), polynomial(coefficients, high), unit, "check_scale");
  return invert(coefficients, value, low, high);
}
