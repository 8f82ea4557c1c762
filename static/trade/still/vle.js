// @ts-check
/**
 * Boiling ethanol and water at 101.325 kPa: which vapour rises from which liquid, and how hot.
 * Twin of webapp/trade/vle.py, which has units, ranges and sources; only + - * /, so that the bits agree.
 */
import { massFractionFromStrength } from "../density.js";
import { checkRange } from "../numeric.js";
import { VLE } from "./vle_data.js";

const EULER = 2.718281828459045;
const TERMS = 18;
const STEPS = 60;

/** @param {number} strengthPct % vol at 20 °C, 0 to 100 */
export function moleFractionFromStrength(strengthPct) {
  const massFraction = massFractionFromStrength(strengthPct);
  const ethanol = massFraction / VLE.molar_g_mol[0];
  const water = (1 - massFraction) / VLE.molar_g_mol[1];
  return ethanol / (ethanol + water);
}

/** @param {number} liquid mol/mol, 0 to 1 @returns {number} mol/mol */
export function vapourMoleFraction(liquid) {
  checkRange("mole_fraction", liquid, 0, 1, "mol_mol", "fraction_not_percent");
  const [ethanol, water] = partialPressures(liquid, boilingTempC(liquid));
  return ethanol / (ethanol + water);
}

/** @param {number} x @returns {number} e to that power, the very bits of the book */
export function exponential(x) {
  const whole = Math.floor(x + 0.5);
  const part = x - whole;
  let power = 1;
  for (let i = TERMS; i > 0; i--) power = 1 + (power * part) / i;
  let base = EULER;
  let count = whole;
  if (whole < 0) {
    base = 1 / EULER;
    count = -whole;
  }
  while (count >= 1) {
    const half = Math.floor(count / 2);
    if (count - 2 * half === 1) power *= base;
    base *= base;
    count = half;
  }
  return power;
}

/** @param {number} x 0.01 to 100 @returns {number} its natural logarithm */
export function logarithm(x) {
  let found = 0;
  for (let step = 0; step < STEPS; step++) {
    const power = exponential(found);
    found += (2 * (x - power)) / (x + power);
  }
  return found;
}

/** @param {number} x mol/mol of the liquid @returns {number} °C, by secant steps on the pressure */
function boilingTempC(x) {
  let before = 78;
  let after = 90;
  let [ethanol, water] = partialPressures(x, before);
  let miss = ethanol + water - VLE.pressure_mmhg;
  for (let step = 0; step < STEPS; step++) {
    [ethanol, water] = partialPressures(x, after);
    const now = ethanol + water - VLE.pressure_mmhg;
    if (now === miss || Math.abs(after - before) < 1e-11) break;
    const next = after - (now * (after - before)) / (now - miss);
    before = after;
    after = next;
    miss = now;
  }
  return after;
}

/** @param {number} x @param {number} tempC @returns {[number, number]} mmHg of ethanol and of water */
function partialPressures(x, tempC) {
  const [a12, b12] = VLE.tau_12;
  const [a21, b21] = VLE.tau_21;
  const kelvin = tempC + 273.15;
  const w = 1 - x;
  const tau12 = a12 + b12 / kelvin;
  const tau21 = a21 + b21 / kelvin;
  const g12 = exponential(-VLE.alpha * tau12);
  const g21 = exponential(-VLE.alpha * tau21);
  const one = x + w * g21;
  const two = w + x * g12;
  const ln1 = w * w * (tau21 * (g21 / one) * (g21 / one) + (tau12 * g12) / (two * two));
  const ln2 = x * x * (tau12 * (g12 / two) * (g12 / two) + (tau21 * g21) / (one * one));
  return [x * exponential(ln1 + lnPure(0, tempC)), w * exponential(ln2 + lnPure(1, tempC))];
}

/** @param {number} which @param {number} tempC */
function lnPure(which, tempC) {
  const [a, b, c] = VLE.antoine_log10_mmhg[which];
  return 2.302585092994046 * (a - b / (c + tempC));
}
