// @ts-check
/**
 * US gauging by weight and volume: Table 6 gravities, gallons, reduction, obscuration (27 CFR part 30).
 * Twin of webapp/trade/gauging.py, which has units, ranges and sources.
 */
import { data } from "./datafiles.js";
import { checkRange, interpolate, roundHalfUp } from "./numeric.js";

const PROOFS = Array.from({ length: 201 }, (_, proof) => proof);

/**
 * @param {number} proof 0 to 200
 * @param {boolean} [inAir]
 * @returns {number} specific gravity 60/60 °F
 */
export function gravityOfProof(proof, inAir = true) {
  checkProof(proof);
  return interpolate(proof, PROOFS, data("gauging")[inAir ? "gravity_air" : "gravity_vacuum"]);
}

/**
 * @param {number} proof 0 to 200
 * @returns {number} lb/gal
 */
export function poundsPerWineGallon(proof) {
  return roundHalfUp(poundsPerGallon(proof), 5);
}

/**
 * @param {number} proof 0 to 200
 * @returns {number} gal/lb
 */
export function wineGallonsPerPound(proof) {
  return roundHalfUp(1 / poundsPerGallon(proof), 5);
}

/**
 * @param {number} proof 0 to 200
 * @returns {number} proof gal/lb
 */
export function proofGallonsPerPound(proof) {
  return roundHalfUp((wineGallonsPerPound(proof) * proof) / 100, 5);
}

/**
 * @param {number} netLb
 * @param {number} proof
 * @returns {number} gal, to 0.1
 */
export function wineGallonsFromPounds(netLb, proof) {
  checkPounds(netLb);
  return roundHalfUp(netLb * wineGallonsPerPound(proof), 1);
}

/**
 * @param {number} netLb
 * @param {number} proof
 * @returns {number} proof gal, to 0.1
 */
export function proofGallonsFromPounds(netLb, proof) {
  checkPounds(netLb);
  return roundHalfUp(netLb * proofGallonsPerPound(proof), 1);
}

/**
 * @param {number} wineGallons at 60 °F
 * @param {number} proof
 * @returns {number} proof gal, to 0.1
 */
export function proofGallonsFromWineGallons(wineGallons, proof) {
  checkGallons(wineGallons);
  checkProof(proof);
  return roundHalfUp((wineGallons * proof) / 100, 1);
}

/**
 * @param {number} solidsG100mL 0 to 0.6
 * @param {number} proof as the hydrometer has it, 80 to 100
 * @returns {number} proof hidden by the solids
 */
export function obscurationProof(solidsG100mL, proof) {
  checkRange("solids", solidsG100mL, 0, 0.6, "g_100mL", "distil_sample");
  checkRange("proof", roundHalfUp(proof, 1), 80, 100, "proof", "distil_sample");
  return solidsG100mL * 4;
}

/** @param {number} proof */
function poundsPerGallon(proof) {
  return data("gauging").water_lb_per_gallon * gravityOfProof(proof);
}

/** @param {number} proof */
function checkProof(proof) {
  checkRange("proof", proof, 0, 200, "proof", "check_figure");
}

/** @param {number} netLb */
function checkPounds(netLb) {
  checkRange("net_weight", netLb, 0, 1e9, "lb", "check_weights");
}

/** @param {number} gallons */
function checkGallons(gallons) {
  checkRange("volume", gallons, 0, 1e9, "gal", "check_dip");
}
