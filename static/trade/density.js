// @ts-check
/**
 * Density of ethanol-water mixtures by OIML R 22, its inverses, and where the mixture begins to freeze.
 * Twin of webapp/trade/density.py, which has units, ranges and sources.
 */
import { data } from "./datafiles.js";
import { OutOfDomain } from "./errors.js";
import { checkRange, fixed, interpolate, invert, polynomial } from "./numeric.js";

export const PROOF_TEMP_C = 140 / 9; // 60 °F

/** The formula's terms turned round: for each power of the mass fraction, a polynomial in t - 20.
 * @type {number[][] | null} */
let rows = null;
/** @type {Map<number, number[]>} */
const reference = new Map();

/**
 * @param {number} massFraction kg/kg, 0 to 1
 * @param {number} tempC -20 to 40
 * @returns {number} kg/m³
 */
export function densityFromMassFraction(massFraction, tempC) {
  checkRange("mass_fraction", massFraction, 0, 1, "kg_kg", "fraction_not_percent");
  checkLiquid(massFraction, tempC);
  return polynomial(coefficientsAt(tempC), massFraction);
}

/**
 * @param {number} strengthPct % vol at 20 °C, 0 to 100
 * @param {number} tempC -20 to 40
 * @returns {number} kg/m³
 */
export function densityFromStrength(strengthPct, tempC) {
  return densityFromMassFraction(massFractionFromStrength(strengthPct), tempC);
}

/**
 * @param {number} densityKgM3 at tempC
 * @param {number} tempC -20 to 40
 * @returns {number} kg/kg
 */
export function massFractionFromDensity(densityKgM3, tempC) {
  checkTemp(tempC);
  const coefficients = coefficientsAt(tempC);
  const massFraction = invert(coefficients, densityKgM3, 0, 1);
  if (Number.isNaN(massFraction)) {
    const low = polynomial(coefficients, 1);
    const high = polynomial(coefficients, 0);
    const shown = (/** @type {number} */ value) => ({ figure: fixed(value, 2), unit: "kg_m3" });
    const figures = { density: shown(densityKgM3), ethanol: shown(low), water: shown(high) };
    throw new OutOfDomain("density", densityKgM3, low, high, "no_such_density", { figures });
  }
  checkLiquid(massFraction, tempC);
  return massFraction;
}

/**
 * @param {number} strengthPct % vol at 20 °C, 0 to 100
 * @returns {number} kg/kg
 */
export function massFractionFromStrength(strengthPct) {
  return massFractionAt(strengthPct, 20, "strength", "pct_vol", 100);
}

/**
 * @param {number} massFraction kg/kg, 0 to 1
 * @returns {number} % vol at 20 °C
 */
export function strengthFromMassFraction(massFraction) {
  checkRange("mass_fraction", massFraction, 0, 1, "kg_kg", "fraction_not_percent");
  return volumeShareAt(massFraction, 20, 100);
}

/**
 * @param {number} massFraction kg/kg, 0 to 1
 * @returns {number} °C below which the mixture may be part ice
 */
export function freezingLimitC(massFraction) {
  checkRange("mass_fraction", massFraction, 0, 1, "kg_kg", "fraction_not_percent");
  const spirit = data("spirit");
  return interpolate(massFraction, spirit.freezing_mass_fraction, spirit.freezing_limit_c);
}

/**
 * The twelve coefficients of density against mass fraction at one temperature (not checked).
 * @param {number} tempC
 * @returns {number[]}
 */
export function coefficientsAt(tempC) {
  if (tempC !== 20 && tempC !== PROOF_TEMP_C) return computeCoefficients(tempC);
  let known = reference.get(tempC);
  if (!known) reference.set(tempC, (known = computeCoefficients(tempC)));
  return known;
}

/**
 * Strength by volume at a reference temperature, on a scale where pure ethanol is `whole`.
 * @param {number} massFraction
 * @param {number} tempC
 * @param {number} whole
 */
export function volumeShareAt(massFraction, tempC, whole) {
  const coefficients = coefficientsAt(tempC);
  return whole * ((massFraction * polynomial(coefficients, massFraction)) / polynomial(coefficients, 1));
}

/**
 * Mass fraction from strength by volume at a reference temperature.
 * @param {number} strength
 * @param {number} tempC
 * @param {string} what
 * @param {string} unit
 * @param {number} whole
 */
export function massFractionAt(strength, tempC, what, unit, whole) {
  checkRange(what, strength, 0, whole, unit, "check_figure");
  const coefficients = coefficientsAt(tempC);
  return invert([0, ...coefficients], (strength / whole) * polynomial(coefficients, 1), 0, 1);
}

/**
 * Throws where the temperature is outside the formula or the mixture may be part ice.
 * @param {number} massFraction
 * @param {number} tempC
 */
export function checkLiquid(massFraction, tempC) {
  checkTemp(tempC);
  if (tempC >= 0) return;
  const limit = freezingLimitC(massFraction);
  if (!(tempC < limit)) return;
  const above = fixed(limit + 0.05, 1); // rounded to the warm side
  const figures = { temp: { figure: fixed(tempC, 1), unit: "degC" }, above: { figure: above, unit: "degC" } };
  throw new OutOfDomain("temperature", tempC, limit, data("spirit").temp_c[1], "part_ice", { figures });
}

/** @param {number} tempC */
function computeCoefficients(tempC) {
  const spirit = data("spirit");
  rows ??= spirit.A.slice(1).map((/** @type {number} */ first, /** @type {number} */ i) => [
    first, ...spirit.C.filter((/** @type {number[]} */ terms) => i < terms.length)
      .map((/** @type {number[]} */ terms) => terms[i]),
  ]);
  const warmer = tempC - 20; // (t - 20) of the formula
  const all = /** @type {number[][]} */ (rows);
  const coefficients = [spirit.A[0] + warmer * polynomial(spirit.B, warmer)];
  for (let i = 0; i < all.length; i++) coefficients.push(polynomial(all[i], warmer));
  return coefficients;
}

/** @param {number} tempC */
function checkTemp(tempC) {
  const [low, high] = data("spirit").temp_c;
  checkRange("temperature", tempC, low, high, "degC", "check_thermometer");
}
