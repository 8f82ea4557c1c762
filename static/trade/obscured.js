// @ts-check
/**
 * Spirit whose strength sugar or wood hides: what its distillate in the laboratory and its dry extract say of it.
 * Twin of webapp/trade/obscured.py, which has units, ranges and sources.
 */
import { scaleShare, strengthFromDensityMeter, volumeAt20 } from "./alcoholometry.js";
import { densityFromStrength } from "./density.js";
import { checkRange } from "./numeric.js";

const EXTRACT_KG_M3_PER_G_L = 0.385;
const [ALLOWED_PCT, ALLOWED_SHARE] = [0.3, 0.2];
const ROUNDS = 20;

/** @param {number} sampleL @param {number} sampleTempC @param {number} distillateL @param {number} distillateTempC @param {number} distillatePct @returns {number} % vol */
export function strengthByDistillation(sampleL, sampleTempC, distillateL, distillateTempC, distillatePct) {
  for (const volume of [sampleL, distillateL]) checkRange("volume", volume, 0.01, 10, "L", "check_figure");
  const alcohol = volumeAt20(distillateL, distillatePct, distillateTempC) * distillatePct;
  let strength = alcohol / sampleL;
  for (let n = 0; n < ROUNDS; n += 1) {
    strength = alcohol / volumeAt20(sampleL, Math.min(strength, 100), sampleTempC);
  }
  checkRange("strength", strength, 0, 100, "pct_vol", "check_figure");
  return strength;
}

/** @param {number} strengthPct @param {number} seenPct @returns {number} % vol */
export function obscuration(strengthPct, seenPct) {
  for (const strength of [strengthPct, seenPct]) checkRange("strength", strength, 0, 100, "pct_vol", "check_figure");
  return strengthPct - seenPct;
}

/** @param {number} strengthPct @param {number} extractGL @returns {number} % vol */
export function obscurationOfExtract(strengthPct, extractGL) {
  checkRange("extract", extractGL, 0, 600, "g_L", "check_figure");
  return strengthPct - strengthFromDensityMeter(densityFromStrength(strengthPct, 20) + EXTRACT_KG_M3_PER_G_L * extractGL, 20);
}

/** @param {number} strengthPct @param {number} extractGL @returns {number} % vol */
export const obscurationLeast = (strengthPct, extractGL) => obscurationOfExtract(strengthPct, extractGL) * (1 - ALLOWED_SHARE) - ALLOWED_PCT;

/** @param {number} strengthPct @param {number} extractGL @returns {number} % vol */
export const obscurationMost = (strengthPct, extractGL) => obscurationOfExtract(strengthPct, extractGL) * (1 + ALLOWED_SHARE) + ALLOWED_PCT;

/** @param {number} netKg @param {number} densityKgM3 @param {number} tempC @param {number} strengthPct @returns {number} L at 20 °C */
export function volumeOfDense(netKg, densityKgM3, tempC, strengthPct) {
  checkRange("net_weight", netKg, 0, 1e9, "kg", "check_weights");
  checkRange("density", densityKgM3, 600, 1400, "kg_m3", "check_figure");
  return volumeAt20((netKg / (densityKgM3 * scaleShare(densityKgM3))) * 1000, strengthPct, tempC);
}
