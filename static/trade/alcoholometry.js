// @ts-check
/**
 * From what the instruments say to strength, litres at 20 °C and litres of pure alcohol (LPA).
 * Twin of webapp/trade/alcoholometry.py, which has units, ranges and sources.
 */
import { data } from "./datafiles.js";
import {
  checkLiquid, coefficientsAt, densityFromStrength, massFractionFromDensity, massFractionFromStrength,
  strengthFromMassFraction,
} from "./density.js";
import { OutOfDomain } from "./errors.js";
import { checkRange, fixed, invert, polynomial } from "./numeric.js";

export const GLASS_EXPANSION_PER_C = 25e-6;

/**
 * @param {number} indicationPct what a glass made for 20 °C shows, 0 to 100
 * @param {number} tempC -20 to 40
 * @param {number} [alphaPerC]
 * @returns {number} % vol at 20 °C
 */
export function trueStrengthFromGlass(indicationPct, tempC, alphaPerC = GLASS_EXPANSION_PER_C) {
  checkAlpha(alphaPerC);
  checkRange("glass_reading", indicationPct, 0, 100, "pct", "check_glass_figure");
  checkRange("temperature", tempC, -20, 40, "degC", "check_thermometer");
  const markDensity = polynomial(coefficientsAt(20), massFractionFromStrength(indicationPct));
  const density = markDensity * (1 - alphaPerC * (tempC - 20));
  const coefficients = coefficientsAt(tempC);
  const massFraction = invert(coefficients, density, 0, 1);
  if (Number.isNaN(massFraction)) throw beyondGlass(indicationPct, tempC, density, coefficients, alphaPerC);
  checkLiquid(massFraction, tempC);
  return strengthFromMassFraction(massFraction);
}

/**
 * @param {number} strengthPct % vol at 20 °C, 0 to 100
 * @param {number} tempC -20 to 40
 * @param {number} [alphaPerC]
 * @returns {number} what a glass made for 20 °C shows
 */
export function glassIndication(strengthPct, tempC, alphaPerC = GLASS_EXPANSION_PER_C) {
  checkAlpha(alphaPerC);
  const markDensity = densityFromStrength(strengthPct, tempC) / (1 - alphaPerC * (tempC - 20));
  const massFraction = invert(coefficientsAt(20), markDensity, 0, 1);
  if (Number.isNaN(massFraction)) {
    const figures = { temp: { figure: fixed(tempC, 1), unit: "degC" }, strength: { figure: fixed(strengthPct, 2), unit: "pct_vol" } };
    throw new OutOfDomain("glass_reading", NaN, 0, 100, "off_glass", { figures });
  }
  return strengthFromMassFraction(massFraction);
}

/**
 * @param {number} densityKgM3 true density at tempC
 * @param {number} tempC -20 to 40
 * @returns {number} % vol at 20 °C
 */
export function strengthFromDensityMeter(densityKgM3, tempC) {
  return strengthFromMassFraction(massFractionFromDensity(densityKgM3, tempC));
}

/**
 * @param {number} volumeL as dipped at tempC
 * @param {number} strengthPct % vol at 20 °C
 * @param {number} tempC
 * @returns {number} L at 20 °C
 */
export function volumeAt20(volumeL, strengthPct, tempC) {
  checkLitres(volumeL);
  return (volumeL * densityFromStrength(strengthPct, tempC)) / densityFromStrength(strengthPct, 20);
}

/**
 * @param {number} netKg
 * @param {number} strengthPct % vol at 20 °C
 * @param {boolean} [inAir] allow for buoyancy
 * @returns {number} L at 20 °C
 */
export function litresFromMass(netKg, strengthPct, inAir = false) {
  checkRange("net_weight", netKg, 0, 1e9, "kg", "check_weights");
  const density = densityFromStrength(strengthPct, 20);
  return (netKg / (inAir ? density * scaleShare(density) : density)) * 1000;
}

/**
 * @param {number} volume20L L at 20 °C
 * @param {number} strengthPct % vol at 20 °C
 * @param {boolean} [inAir] what a scale in air would show
 * @returns {number} kg
 */
export function massFromLitres(volume20L, strengthPct, inAir = false) {
  checkLitres(volume20L);
  const density = densityFromStrength(strengthPct, 20);
  return (volume20L * (inAir ? density * scaleShare(density) : density)) / 1000;
}

/**
 * @param {number} volume20L L at 20 °C
 * @param {number} strengthPct % vol at 20 °C
 * @returns {number} LPA
 */
export function litresPureAlcohol(volume20L, strengthPct) {
  checkLitres(volume20L);
  checkRange("strength", strengthPct, 0, 100, "pct_vol", "check_figure");
  return (volume20L * strengthPct) / 100;
}

/** @param {number} density */
export function scaleShare(density) {
  const { air_kg_m3: air, weights_kg_m3: weights } = data("spirit");
  return (1 - air / density) / (1 - air / weights);
}

/** @param {number} volumeL */
function checkLitres(volumeL) {
  checkRange("volume", volumeL, 0, 1e9, "L", "check_dip");
}

/** @param {number} alphaPerC */
function checkAlpha(alphaPerC) {
  checkRange("glass_expansion", alphaPerC, 0, 1e-4, "per_degC", "soda_lime");
}

/**
 * @param {number} reading
 * @param {number} tempC
 * @param {number} density
 * @param {number[]} coefficients
 * @param {number} alphaPerC
 */
function beyondGlass(reading, tempC, density, coefficients, alphaPerC) {
  const most = polynomial(coefficients, 0);
  const weak = density > most;
  const end = weak ? most : polynomial(coefficients, 1);
  const mark = invert(coefficientsAt(20), end / (1 - alphaPerC * (tempC - 20)), 0, 1);
  const limit = Number.isNaN(mark) ? NaN : strengthFromMassFraction(mark);
  const [low, high] = weak ? [limit, 100] : [0, limit];
  // Rounded inwards, so that what the sentence allows is allowed.
  const ends = weak ? [fixed(limit + 0.05, 1), "100"] : ["0", fixed(limit - 0.05, 1)];
  const figures = {
    reading: { figure: fixed(reading, 1) }, temp: { figure: fixed(tempC, 1), unit: "degC" },
    low: { figure: ends[0] }, high: { figure: ends[1] },
  };
  return new OutOfDomain("glass_reading", reading, low, high, weak ? "glass_too_weak" : "glass_too_strong", { figures });
}
