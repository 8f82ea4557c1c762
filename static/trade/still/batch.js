// @ts-check
/**
 * What is in a pot and what leaves it, in moles.
 * Twin of webapp/trade/batch.py, which has units, ranges and sources.
 */
import { densityFromStrength } from "../density.js";
import { checkRange } from "../numeric.js";
import { VLE } from "./vle_data.js";

const STRONGEST = 97;

/** @typedef {{ ethanolMol: number, waterMol: number }} Pot */

/** @type {[number, number][] | null} */
let kept = null;

/** @param {number} volumeL @param {number} lpa @returns {Pot} */
export function chargePot(volumeL, lpa) {
  checkRange("charge", volumeL, 1e-3, 1e6, "L", "check_charge");
  checkRange("pure_alcohol_charged", lpa, 1e-6, volumeL, "L", "check_charge_strength");
  const [ethanolMol, waterMol] = molesIn(volumeL, (100 * lpa) / volumeL);
  return { ethanolMol, waterMol };
}

/** @param {number} volumeL @param {number} strengthPct @returns {[number, number]} mol of ethanol and of water */
export function molesIn(volumeL, strengthPct) {
  const ethanolGL = (strengthPct / 100) * densityFromStrength(100, 20);
  const waterGL = densityFromStrength(strengthPct, 20) - ethanolGL;
  return [(volumeL * ethanolGL) / VLE.molar_g_mol[0], (volumeL * waterGL) / VLE.molar_g_mol[1]];
}

/** @param {number} volumeL @param {number} strengthPct @returns {[number, number]} molesIn by a table */
export function streamMoles(volumeL, strengthPct) {
  const moles = molesALitre();
  const strength = Math.min(Math.max(strengthPct, 0), STRONGEST);
  const i = Math.min(Math.floor(strength), STRONGEST - 1);
  const share = strength - i;
  const [ethanol, water] = moles[i];
  const [more, less] = moles[i + 1];
  return [volumeL * (ethanol + share * (more - ethanol)), volumeL * (water + share * (less - water))];
}

function molesALitre() {
  kept ??= Array.from({ length: STRONGEST + 1 }, (_, i) => molesIn(1, i));
  return kept;
}
