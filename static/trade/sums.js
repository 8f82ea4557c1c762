// @ts-check
/**
 * The live sums by name: what a form shows at once and the book computes again.
 * Twin of webapp/trade/sums.py. Sums on a proof glass need loadTable1() first.
 */
import { litresFromMass, litresPureAlcohol, massFromLitres, strengthFromDensityMeter, trueStrengthFromGlass, volumeAt20 } from "./alcoholometry.js";
import { volumeOfDip } from "./dipping.js";
import { massFractionFromStrength, strengthFromMassFraction } from "./density.js";
import { OutOfDomain } from "./errors.js";
import { obscurationProof, proofGallonsFromPounds, wineGallonsFromPounds } from "./gauging.js";
import { checkRange } from "./numeric.js";
import { obscuration, obscurationLeast, obscurationMost, strengthByDistillation, volumeOfDense } from "./obscured.js";
import {
  litresFromPounds, lpaFromPounds, proofFromStrength, proofGallonsFromLpa, strengthFromProof, volume60fFrom20c,
} from "./proof.js";
import {
  alcoholFromGravityFall, potentialAlcoholFromBrix, potentialAlcoholFromGravity, presumptiveLpa,
  strengthByTwoInstruments,
} from "./sugar.js";
import { trueProof } from "./table1.js";
import { fromCanonical, quantityOf, toCanonical } from "./units.js";

/** @typedef {{value: number, unit: string}} Quantity a value as read, with its unit */
/**
 * @typedef {object} Sum
 * @property {string} name
 * @property {string[]} inputs
 * @property {string} unit of the answer
 * @property {number} decimals worth showing
 * @property {(...inputs: any[]) => number} run
 */

/** The unit in which an input is handed to its sum, and which a bare number is taken to have.
 * @type {Record<string, string | null>} */
export const INPUT_UNITS = {
  glass: null, temp: "degC", volume: "L", strength: "pct_vol", gross: "kg", tare: "kg", net: "kg", lpa: "LPA",
  a: "LPA", b: "LPA",
  original_gravity: "SG", gravity: "SG", juice_share: "pct", sugar: null, target: "pct_vol", water: "kg",
  water_volume: "L", size: "L", number: "count", solids: "g_100mL",
  refractometer: "Bx", density: "kg_m3", sample_volume: "L", sample_temp: "degC", distillate_volume: "L", distillate_temp: "degC",
  dip: "cm", dips: null, seen: "pct_vol", extract: "g_L",
};

/**
 * @param {string} name
 * @param {Record<string, Quantity | number | string | null | undefined>} values
 * @returns {number | null} null while an input is missing
 */
export function compute(name, values) {
  if (!Object.hasOwn(SUMS, name)) throw new TypeError(`no such sum: ${name}`);
  const { inputs, run } = SUMS[name];
  const given = inputs.map((input) => values[input] ?? null);
  if (given.some((value) => value === null)) return null;
  return run(...inputs.map((input, i) => inInputUnit(input, /** @type {Quantity | number | string} */ (given[i]))));
}

/**
 * @param {string} input
 * @param {Quantity | number | string} given
 */
function inInputUnit(input, given) {
  const unit = INPUT_UNITS[input];
  if (typeof given === "string") return given;
  if (typeof given === "number") {
    if (unit === null) throw new TypeError(`${input} needs its unit`);
    return given;
  }
  if (unit === null || input === "temp") return given; // the sum itself looks at the unit
  if (quantityOf(given.unit) !== quantityOf(unit)) throw new TypeError(`${given.unit} does not fit ${input}`);
  return toCanonical(given.value, given.unit);
}

/**
 * A temperature in the unit wanted, untouched if it was read in it: Table 1 counts hundredths.
 * @param {Quantity | number} temp
 * @param {string} unit
 */
function tempIn(temp, unit) {
  const given = typeof temp === "number" ? { value: temp, unit: "degC" } : temp;
  if (quantityOf(given.unit) !== "temperature") throw new TypeError(`${given.unit} does not fit temp`);
  return given.unit === unit ? given.value : fromCanonical(toCanonical(given.value, given.unit), unit);
}

/**
 * @param {Quantity} glass
 * @param {Quantity | number} temp
 * @returns {number}
 */
function trueStrengthOf(glass, temp) {
  if (glass.unit === "proof_glass") return strengthFromProof(trueProofOf(glass, temp));
  if (glass.unit === "pct_glass") return trueStrengthFromGlass(glass.value, tempIn(temp, "degC"));
  throw new TypeError(`${glass.unit} is no glass reading`);
}

/**
 * @param {Quantity} glass
 * @param {Quantity | number} temp
 * @returns {number}
 */
function trueProofOf(glass, temp) {
  if (glass.unit === "proof_glass") return trueProof(glass.value, tempIn(temp, "degF"));
  return proofFromStrength(trueStrengthOf(glass, temp));
}

/**
 * @param {number} volume
 * @param {number} strength
 * @param {Quantity | number} temp
 */
const volume20 = (volume, strength, temp) => volumeAt20(volume, strength, tempIn(temp, "degC"));

/**
 * @param {number} gross
 * @param {number} tare
 */
function net(gross, tare) {
  if (tare >= 0 && tare <= gross && gross < Infinity) return gross - tare;
  throw new OutOfDomain("tare", tare, 0, gross, "tare_too_heavy");
}

/**
 * @param {number} a
 * @param {number} b
 */
function total(a, b) {
  for (const part of [a, b]) checkRange("pure_alcohol", part, -1e9, 1e9, "LPA", "check_figure");
  return a + b;
}

/** @param {string} dips @param {number} dip @param {Quantity | number} temp */
function dipped(dips, dip, temp) {
  if (!dips) throw new OutOfDomain("dip", dip, null, null, "no_dip_table");
  return volumeOfDip(dips, dip, tempIn(temp, "degC"));
}

/** @param {Quantity} reading */
function potentialAlcohol(reading) {
  if (reading.unit === "Bx") return potentialAlcoholFromBrix(reading.value);
  if (quantityOf(reading.unit) !== "gravity") throw new TypeError(`${reading.unit} is no measure of sugar`);
  return potentialAlcoholFromGravity(toCanonical(reading.value, reading.unit));
}

/**
 * @param {number} netKg
 * @param {Quantity} reading
 * @param {number} juicePct
 */
function presumptive(netKg, reading, juicePct) {
  if (reading.unit !== "Bx") throw new TypeError("presumptive_lpa needs a refractometer reading in Bx");
  return presumptiveLpa(netKg, reading.value, juicePct / 100);
}

/** @param {number} netKg @param {number} strength @param {number} target */
export function waterToTargetKg(netKg, strength, target) {
  checkRange("net_weight", netKg, 0, 1e9, "kg", "gauge_first");
  if (!(target > 0 && target <= strength)) {
    throw new OutOfDomain("target", target, 0, strength, "target_too_strong");
  }
  return netKg * (massFractionFromStrength(strength) / massFractionFromStrength(target) - 1);
}

/** @param {number} netKg @param {number} strength @param {number} waterKg */
export function strengthWithWater(netKg, strength, waterKg) {
  checkRange("net_weight", netKg, 1e-3, 1e9, "kg", "gauge_first");
  checkRange("water", waterKg, 0, 1e9, "kg", "check_figure");
  return strengthFromMassFraction((massFractionFromStrength(strength) * netKg) / (netKg + waterKg));
}

/** @param {number} size @param {number} number */
function volumeOfCount(size, number) {
  checkRange("size", size, 0, 1e6, "L", "check_figure");
  checkRange("number", number, 0, 1e7, "", "count_again");
  return size * number;
}

const OBSCURATION_FROM = 0.4; // g/100 mL; below it the hydrometer's proof may stand: 27 CFR 30.31

/** @param {number} strength @param {number} solids */
function unhiddenStrength(strength, solids) {
  if (solids < OBSCURATION_FROM) return strength;
  const seen = proofFromStrength(strength);
  return strengthFromProof(seen + obscurationProof(solids, seen));
}

/** @param {number} kg */
const pounds = (kg) => fromCanonical(kg, "lb");

/** @type {[string, string[], string, number, (...inputs: any[]) => number][]} */
const LIST = [
  ["true_strength", ["glass", "temp"], "pct_vol", 1, trueStrengthOf],
  ["true_proof", ["glass", "temp"], "proof", 1, trueProofOf],
  ["volume_20", ["volume", "strength", "temp"], "L", 1, volume20],
  ["lpa_volume", ["volume", "strength", "temp"], "LPA", 2, (v, s, t) => litresPureAlcohol(volume20(v, s, t), s)],
  ["net_mass", ["gross", "tare"], "kg", 1, net],
  ["net_fruit", ["gross", "tare"], "kg", 0, net],
  ["volume_from_mass", ["net", "strength"], "L", 1, (m, s) => litresFromMass(m, s)],
  ["lpa_mass", ["net", "strength"], "LPA", 2, (m, s) => litresPureAlcohol(litresFromMass(m, s), s)],
  ["volume_weighed", ["net", "strength"], "L", 1, (m, s) => litresFromMass(m, s, true)],
  ["volume_weighed_us", ["net", "strength"], "L", 1, (m, s) => litresFromPounds(pounds(m), s)],
  ["lpa_weighed_us", ["net", "strength"], "LPA", 2, (m, s) => lpaFromPounds(pounds(m), s)],
  ["total", ["a", "b"], "LPA", 2, total],
  ["proof_gallons", ["lpa"], "proof_gal", 1, proofGallonsFromLpa],
  ["wine_gallons", ["volume", "strength"], "gal", 1, (v, s) => fromCanonical(volume60fFrom20c(v, s), "gal")],
  ["wine_gallons_weighed", ["net", "strength"], "gal", 1,
    (m, s) => wineGallonsFromPounds(pounds(m), proofFromStrength(s))],
  ["proof_gallons_weighed", ["net", "strength"], "proof_gal", 1,
    (m, s) => proofGallonsFromPounds(pounds(m), proofFromStrength(s))],
  ["alcohol_so_far", ["original_gravity", "gravity", "juice_share"], "pct_vol", 1,
    (og, g, pct) => alcoholFromGravityFall(og, g, pct / 100)],
  ["alcohol_by_both", ["refractometer", "gravity"], "pct_vol", 1, strengthByTwoInstruments],
  ["potential_alcohol", ["sugar"], "pct_vol", 1, potentialAlcohol],
  ["presumptive_lpa", ["net", "sugar", "juice_share"], "LPA", 1, presumptive],
  ["mass_from_volume", ["volume", "strength"], "kg", 1, (v, s) => massFromLitres(v, s)],
  ["difference", ["a", "b"], "LPA", 2, (a, b) => total(a, -b)],
  ["water_mass", ["water_volume"], "kg", 1, (v) => massFromLitres(v, 0)],
  ["water_to_reduce", ["net", "strength", "target"], "kg", 1, waterToTargetKg],
  ["reduced_strength", ["net", "strength", "water"], "pct_vol", 1, strengthWithWater],
  ["reduced_volume", ["net", "strength", "water"], "L", 1,
    (m, s, water) => litresFromMass(m + water, strengthWithWater(m, s, water))],
  ["volume_of_count", ["size", "number"], "L", 2, volumeOfCount],
  ["unhidden_strength", ["strength", "solids"], "pct_vol", 1, unhiddenStrength],
  ["strength_by_distillation", ["sample_volume", "sample_temp", "distillate_volume", "distillate_temp", "strength"], "pct_vol", 1, strengthByDistillation],
  ["volume_of_dip", ["dips", "dip", "temp"], "L", 1, dipped],
  ["obscuration", ["strength", "seen"], "pct_vol", 1, obscuration],
  ["obscuration_least", ["strength", "extract"], "pct_vol", 1, obscurationLeast],
  ["obscuration_most", ["strength", "extract"], "pct_vol", 1, obscurationMost],
  ["volume_of_dense", ["net", "density", "temp", "strength"], "L", 1, (m, rho, t, s) => volumeOfDense(m, rho, tempIn(t, "degC"), s)],
  ["strength_by_density", ["density", "temp"], "pct_vol", 1, (rho, t) => strengthFromDensityMeter(rho, tempIn(t, "degC"))],
];

/** @type {Record<string, Sum>} */
export const SUMS = Object.fromEntries(
  LIST.map(([name, inputs, unit, decimals, run]) => [name, { name, inputs, unit, decimals, run }]),
);
