// @ts-check
/**
 * A batch still: the strength that runs off as the pot loses its alcohol.
 * Twin of webapp/trade/batch.py, which has units, ranges, equations and sources.
 */
import { densityFromStrength } from "../density.js";
import { OutOfDomain } from "../errors.js";
import { checkRange } from "../numeric.js";
import { moleFractionFromStrength, vapourMoleFraction } from "./vle.js";
import { VLE } from "./vle_data.js";

const SECTIONS = 6;
const LINE = 240;
const STRONGEST = 97;
const LEAST_SHARE = 0.02;

/** @typedef {{ ethanolMol: number, waterMol: number }} Pot */
/** @typedef {{ volumeL: number, lpa: number, strengthPct: number, pot: Pot }} Moment */
/** @typedef {{ pots: number[] }} Column the pot [mol/mol] that gives each whole percent */

/** @type {{ liquids: number[], vapours: number[], streams: number[], moles: [number, number][] } | null} */
let tables = null;

/** @param {number} volumeL @param {number} lpa @returns {Pot} */
export function chargePot(volumeL, lpa) {
  checkRange("charge", volumeL, 1e-3, 1e6, "L", "check_charge");
  checkRange("pure_alcohol_charged", lpa, 1e-6, volumeL, "L", "check_charge_strength");
  const [ethanolMol, waterMol] = molesIn(volumeL, (100 * lpa) / volumeL);
  return { ethanolMol, waterMol };
}

/** @param {Pot} pot */
export function moleFraction(pot) {
  return pot.ethanolMol / (pot.ethanolMol + pot.waterMol);
}

/** @param {number} volumeL @param {number} strengthPct @returns {[number, number]} mol of ethanol and of water */
export function molesIn(volumeL, strengthPct) {
  const ethanolGL = (strengthPct / 100) * densityFromStrength(100, 20);
  const waterGL = densityFromStrength(strengthPct, 20) - ethanolGL;
  return [(volumeL * ethanolGL) / VLE.molar_g_mol[0], (volumeL * waterGL) / VLE.molar_g_mol[1]];
}

/** @param {number} volumeL @param {number} strengthPct @returns {[number, number]} molesIn by a table */
export function streamMoles(volumeL, strengthPct) {
  const { moles } = known();
  const strength = Math.min(Math.max(strengthPct, 0), STRONGEST);
  const i = Math.min(Math.floor(strength), STRONGEST - 1);
  const share = strength - i;
  const [ethanol, water] = moles[i];
  const [more, less] = moles[i + 1];
  return [volumeL * (ethanol + share * (more - ethanol)), volumeL * (water + share * (less - water))];
}

/** @param {number} stages @param {number} reflux @returns {Column} */
export function makeColumn(stages, reflux) {
  const { liquids, vapours, streams } = known();
  const share = (stages - 1) / SECTIONS;
  const back = Math.max(reflux / (reflux + 1), LEAST_SHARE);
  const slope = (1 - share) * back;
  const meets = liquids.map((x, i) => slope * x + share * vapours[i]);
  const last = liquids.length - 2;
  const pots = [0];
  for (let percent = 1; percent <= STRONGEST; percent++) {
    const fixed = (1 - back) * streams[percent];
    let vapour = streams[percent];
    for (let section = 0; section < SECTIONS; section++) {
      const wanted = vapour - (1 - share) * fixed;
      const i = Math.min(below(meets, wanted), last);
      const liquid = liquids[i] + ((wanted - meets[i]) / (meets[i + 1] - meets[i])) * (liquids[i + 1] - liquids[i]);
      vapour = back * liquid + fixed;
    }
    const i = Math.min(below(vapours, vapour), last);
    pots.push(liquids[i] + ((vapour - vapours[i]) / (vapours[i + 1] - vapours[i])) * (liquids[i + 1] - liquids[i]));
  }
  return { pots };
}

/** @param {Column} column @param {number} pot mol/mol @returns {number} % vol */
export function columnStrengthPct(column, pot) {
  const i = below(column.pots, pot);
  const low = column.pots[i];
  const high = column.pots[i + 1];
  const share = high > low ? (pot - low) / (high - low) : 0;
  return i + Math.min(Math.max(share, 0), 1);
}

/**
 * @param {Pot} pot
 * @param {Column} column
 * @param {number} offL
 * @param {number} steps
 * @param {((offL: number, lpa: number) => number) | null} [extra] what the stream reads above the model
 * @returns {Moment[]}
 */
export function runDown(pot, column, offL, steps, extra = null) {
  if (!(offL > 0) || steps < 1) {
    throw new OutOfDomain("distillate", offL, 0, null, "no_distillate");
  }
  /** @param {Pot} there @param {number} off @param {number} lpaOff */
  const stream = (there, off, lpaOff) => {
    const more = extra ? extra(off, lpaOff) : 0;
    return Math.min(Math.max(columnStrengthPct(column, moleFraction(there)) + more, 0), STRONGEST);
  };
  const stepL = offL / steps;
  let lpa = 0;
  let strengthPct = stream(pot, 0, 0);
  const found = [{ volumeL: 0, lpa: 0, strengthPct, pot }];
  for (let i = 1; i <= steps; i++) {
    const half = without(pot, stepL / 2, strengthPct);
    if (!half) break;
    const middle = stream(half, (i - 0.5) * stepL, lpa + ((stepL / 2) * strengthPct) / 100);
    const after = without(pot, stepL, middle);
    if (!after) break;
    pot = after;
    lpa += (stepL * middle) / 100;
    strengthPct = stream(pot, i * stepL, lpa);
    found.push({ volumeL: i * stepL, lpa, strengthPct, pot });
  }
  return found;
}

/** @param {Pot} pot @param {number} volumeL @param {number} strengthPct @returns {Pot | null} */
function without(pot, volumeL, strengthPct) {
  const [ethanol, water] = streamMoles(volumeL, strengthPct);
  const left = { ethanolMol: pot.ethanolMol - ethanol, waterMol: pot.waterMol - water };
  return left.ethanolMol > 0 && left.waterMol > 0 ? left : null;
}

/** The equilibrium line, closer together where the liquid is weak; vapour and moles in a litre at each whole percent. */
function known() {
  if (tables) return tables;
  const liquids = [];
  for (let i = 0; i <= LINE; i++) liquids.push((i / LINE) * (i / LINE));
  const vapours = liquids.map((x) => (x > 0 && x < 1 ? vapourMoleFraction(x) : x));
  const streams = [];
  /** @type {[number, number][]} */
  const moles = [];
  for (let percent = 0; percent <= STRONGEST; percent++) {
    streams.push(moleFractionFromStrength(percent));
    moles.push(molesIn(1, percent));
  }
  tables = { liquids, vapours, streams, moles };
  return tables;
}

/** @param {number[]} rising @param {number} value @returns {number} place of the last entry not above it, never the end */
function below(rising, value) {
  let low = 0;
  let high = rising.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (rising[middle] <= value) low = middle;
    else high = middle;
  }
  return low;
}
