// @ts-check
/**
 * Sums of reducing: what a tank reads once water is in, what the mix shrinks and warms by.
 * Twin of webapp/trade/reducing.py, which has units, ranges and sources.
 */
import { glassIndication, litresFromMass } from "./alcoholometry.js";
import { densityFromMassFraction, massFractionFromStrength } from "./density.js";
import { checkRange, interpolate } from "./numeric.js";
import { strengthWithWater } from "./sums.js";

const MOLE_FRACTIONS = [0, 0.01, 0.02, 0.03, 0.04, 0.05, 0.06, 0.08, 0.1, 0.12, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 1];
const MIXING_J_MOL = [
  0, -175, -308, -414, -501, -572, -630, -715, -768, -797, -810, -783, -727, -666, -554, -463, -383, -307, -239, -164, -102, 0,
];
const MASS_FRACTIONS = [0, 0.025, 0.05, 0.075, 0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1];
const HEAT_J_G_K = [4.18, 4.32, 4.42, 4.49, 4.53, 4.56, 4.54, 4.47, 4.38, 4.15, 3.9, 3.66, 3.41, 3.14, 2.81, 2.43];
const ETHANOL_G_MOL = 46.07;
const WATER_G_MOL = 18.015;

/**
 * @param {number} netKg spirit before @param {number} strengthPct % vol at 20 °C @param {number} waterKg
 * @param {number} tempC of the mix
 * @returns {number} L at tempC
 */
export function dipWithWaterL(netKg, strengthPct, waterKg, tempC) {
  const fraction = mixedFraction(netKg, strengthPct, waterKg);
  return ((netKg + waterKg) / densityFromMassFraction(fraction, tempC)) * 1000;
}

/**
 * @param {number} netKg @param {number} strengthPct @param {number} waterKg @param {number} tempC
 * @returns {number} % on a glass made for 20 °C
 */
export const glassWithWater = (netKg, strengthPct, waterKg, tempC) => glassIndication(strengthWithWater(netKg, strengthPct, waterKg), tempC);

/** @param {number} waterKg @param {number} tempC 0 to 40 @returns {number} L at tempC */
export function waterVolumeL(waterKg, tempC) {
  checkRange("water", waterKg, 0, 1e9, "kg", "check_figure");
  checkRange("water_temperature", tempC, 0, 40, "degC", "read_water_again");
  return (waterKg / densityFromMassFraction(0, tempC)) * 1000;
}

/** @param {number} netKg @param {number} strengthPct @param {number} waterKg @returns {number} L at 20 °C that the mix is less than its parts */
export function shrinkageL(netKg, strengthPct, waterKg) {
  const mixed = dipWithWaterL(netKg, strengthPct, waterKg, 20);
  return litresFromMass(netKg, strengthPct) + litresFromMass(waterKg, 0) - mixed;
}

/**
 * @param {number} netKg @param {number} strengthPct @param {number} tempC @param {number} waterKg @param {number} waterTempC
 * @returns {number} °C just after, with no heat lost
 */
export function mixedTempC(netKg, strengthPct, tempC, waterKg, waterTempC) {
  checkRange("temperature", tempC, -20, 40, "degC", "read_spirit_again");
  checkRange("water_temperature", waterTempC, 0, 40, "degC", "read_water_again");
  const before = massFractionFromStrength(strengthPct);
  const after = mixedFraction(netKg, strengthPct, waterKg);
  const given = netKg * mixingJG(before) - (netKg + waterKg) * mixingJG(after);
  const spirit = netKg * interpolate(before, MASS_FRACTIONS, HEAT_J_G_K);
  const water = waterKg * HEAT_J_G_K[0];
  const taken = (netKg + waterKg) * interpolate(after, MASS_FRACTIONS, HEAT_J_G_K);
  return (spirit * tempC + water * waterTempC) / (spirit + water) + given / taken;
}

/** @param {number} netKg @param {number} strengthPct @param {number} waterKg */
function mixedFraction(netKg, strengthPct, waterKg) {
  checkRange("net_weight", netKg, 1e-3, 1e9, "kg", "gauge_first");
  checkRange("water", waterKg, 0, 1e9, "kg", "check_figure");
  return (massFractionFromStrength(strengthPct) * netKg) / (netKg + waterKg);
}

/** Enthalpy of mixing of a gram of the mix, J/g. @param {number} massFraction */
function mixingJG(massFraction) {
  const ethanol = massFraction / ETHANOL_G_MOL;
  const moles = ethanol + (1 - massFraction) / WATER_G_MOL;
  return interpolate(ethanol / moles, MOLE_FRACTIONS, MIXING_J_MOL) * moles;
}
