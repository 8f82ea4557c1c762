// @ts-check
/**
 * Between the two worlds: % vol and litres at 20 °C, proof and gallons at 60 °F, through mass of alcohol.
 * Twin of webapp/trade/proof.py, which has units, ranges and sources.
 */
import { data } from "./datafiles.js";
import {
  PROOF_TEMP_C, coefficientsAt, densityFromStrength, massFractionAt, massFractionFromStrength,
  strengthFromMassFraction, volumeShareAt,
} from "./density.js";
import { proofGallonsPerPound, wineGallonsPerPound } from "./gauging.js";
import { checkRange, polynomial, roundHalfUp } from "./numeric.js";

/**
 * @param {number} proof at 60 °F, 0 to 200
 * @returns {number} % vol at 20 °C
 */
export function strengthFromProof(proof) {
  return strengthFromMassFraction(massFractionAt(proof, PROOF_TEMP_C, "proof", "proof", 200));
}

/**
 * @param {number} strengthPct % vol at 20 °C, 0 to 100
 * @returns {number} proof at 60 °F
 */
export function proofFromStrength(strengthPct) {
  return volumeShareAt(massFractionFromStrength(strengthPct), PROOF_TEMP_C, 200);
}

/** @returns {number} litres of pure alcohol at 20 °C in one proof gallon: 1.9018, computed */
export function lpaPerProofGallon() {
  const ethanol60F = polynomial(coefficientsAt(PROOF_TEMP_C), 1);
  const ethanol20C = polynomial(coefficientsAt(20), 1);
  return (data("gauging").us_gallon_l / 2) * (ethanol60F / ethanol20C);
}

/**
 * @param {number} lpa L at 20 °C; a difference may be negative
 * @returns {number} proof gallons
 */
export function proofGallonsFromLpa(lpa) {
  checkRange("pure_alcohol", lpa, -1e9, 1e9, "LPA", "check_figure");
  return lpa / lpaPerProofGallon();
}

/**
 * @param {number} proofGallons
 * @returns {number} L of pure alcohol at 20 °C
 */
export function lpaFromProofGallons(proofGallons) {
  checkRange("proof_gallons", proofGallons, -1e9, 1e9, "proof_gal", "check_figure");
  return proofGallons * lpaPerProofGallon();
}

/**
 * @param {number} volume20L L at 20 °C
 * @param {number} strengthPct % vol at 20 °C
 * @returns {number} L at 60 °F
 */
export function volume60fFrom20c(volume20L, strengthPct) {
  checkRange("volume", volume20L, 0, 1e9, "L", "check_figure");
  return volume20L * (densityFromStrength(strengthPct, 20) / densityFromStrength(strengthPct, PROOF_TEMP_C));
}

/**
 * @param {number} volume60fL L at 60 °F
 * @param {number} strengthPct % vol at 20 °C
 * @returns {number} L at 20 °C
 */
export function volume20cFrom60f(volume60fL, strengthPct) {
  checkRange("volume", volume60fL, 0, 1e9, "L", "check_figure");
  return volume60fL * (densityFromStrength(strengthPct, PROOF_TEMP_C) / densityFromStrength(strengthPct, 20));
}

/**
 * @param {number} netLb as the scale in air shows it
 * @param {number} strengthPct % vol at 20 °C, 0 to 100
 * @returns {number} L at 20 °C
 */
export function litresFromPounds(netLb, strengthPct) {
  checkPounds(netLb);
  const gallons = netLb * wineGallonsPerPound(gaugedProof(strengthPct));
  return volume20cFrom60f(gallons * data("gauging").us_gallon_l, strengthPct);
}

/**
 * @param {number} netLb as the scale in air shows it
 * @param {number} strengthPct % vol at 20 °C, 0 to 100
 * @returns {number} L of pure alcohol at 20 °C
 */
export function lpaFromPounds(netLb, strengthPct) {
  checkPounds(netLb);
  return lpaFromProofGallons(netLb * proofGallonsPerPound(gaugedProof(strengthPct)));
}

/** Proof as it is gauged, to the nearest tenth: Table 4 runs in tenths. @param {number} strengthPct */
const gaugedProof = (strengthPct) => roundHalfUp(proofFromStrength(strengthPct), 1);

/** @param {number} netLb */
function checkPounds(netLb) {
  checkRange("net_weight", netLb, 0, 1e8, "lb", "check_weights");
}
