// @ts-check
/**
 * A still in the course of its run: sections that hold liquid, over a pot that empties.
 * Twin of webapp/trade/column.py, which has the method; the same steps, so that phone and book agree.
 */
import { moleFractionFromStrength, vapourMoleFraction } from "./vle.js";

/** @typedef {import("./batch.js").Pot} Pot */
/** @typedef {{ sections: number, efficiency: number, heldL: number, filled: number }} Make */
/** @typedef {{ liquids: number[], vapours: number[], vapourSlopes: number[], strengths: number[],
 *   strengthSlopes: number[] }} Tables */
/** @typedef {{ make: Make, ethanolMol: number, allMol: number, liquids: number[], heldMol: number[], top: number }} Column */

const LINE = 240;
const FILLS = 10;
const MOLES_A_LITRE = 30;
const WATER_ML = 18.07;
const MORE_ML = 40.3;
const LEAST_MOLES = 0.05;
const TRACE = 1e-6;

/** @type {Tables | undefined} */
let kept;

/** @param {Pot} charge @param {Make} make @returns {Column} as the first drop comes */
export function makeColumn(charge, make) {
  const [ethanolMol, allMol] = [charge.ethanolMol, charge.ethanolMol + charge.waterMol];
  const first = vapourOver(ethanolMol / allMol);
  const held = (make.heldL * 1000) / (WATER_ML + MORE_ML * first);
  /** @type {Column} */
  const column = {
    make, ethanolMol, allMol, liquids: new Array(make.sections).fill(first),
    heldMol: new Array(make.sections).fill(held), top: first,
  };
  const through = (make.filled * (make.heldL * make.sections * MOLES_A_LITRE)) / FILLS;
  for (let i = 0; i < FILLS; i++) stepColumn(column, 0, 0, through, through);
  return column;
}

/** @param {Column} column @param {number} ethanolOff since the first drop [mol] @param {number} allOff @param {number} rising @param {number} falling meanwhile [mol] */
export function stepColumn(column, ethanolOff, allOff, rising, falling) {
  const { make, liquids, heldMol } = column;
  let held = 0;
  let heldEthanol = 0;
  for (let k = 0; k < make.sections; k++) {
    heldEthanol += heldMol[k] * liquids[k];
    held += heldMol[k];
  }
  const ethanol = Math.max(column.ethanolMol - ethanolOff - heldEthanol, column.ethanolMol * TRACE);
  const rest = Math.max(column.allMol - allOff - held, column.allMol * LEAST_MOLES);
  let vapour = vapourOver(Math.min(ethanol / rest, 1));
  const { liquids: grid, vapours, vapourSlopes } = tables();
  const share = make.efficiency;
  for (let k = 0; k < make.sections; k++) {
    const liquid = liquids[k];
    const above = k + 1 < make.sections ? liquids[k + 1] : column.top;
    const i = Math.min(Math.floor(Math.sqrt(liquid) * LINE), LINE - 1);
    const steep = vapourSlopes[i];
    const over = vapours[i] + steep * (liquid - grid[i]);
    const gained = rising * share * (vapour - over) + falling * (above - liquid);
    const then = Math.min(Math.max(liquid + gained / (heldMol[k] + falling + rising * share * steep), 0), 1);
    vapour += share * (over + steep * (then - liquid) - vapour);
    liquids[k] = then;
    heldMol[k] = (make.heldL * 1000) / (WATER_ML + MORE_ML * then);
  }
  column.top = Math.min(Math.max(vapour, 0), 1);
}

/** Put sections in below the helm or take them out, until so many stand. @param {Column} column @param {number} sections */
export function standColumn(column, sections) {
  const { liquids, heldMol, make, top } = column;
  while (liquids.length > Math.max(sections, 1)) {
    liquids.pop();
    heldMol.pop();
  }
  while (liquids.length < sections) {
    liquids.push(top);
    heldMol.push((make.heldL * 1000) / (WATER_ML + MORE_ML * top));
  }
  column.make = { ...make, sections: liquids.length };
}

/** @param {Column} column @returns {number} the stream [% vol] */
export function streamPct({ top }) {
  const { liquids, strengths, strengthSlopes } = tables();
  const i = Math.min(Math.floor(Math.sqrt(top) * LINE), LINE - 1);
  return strengths[i] + strengthSlopes[i] * (top - liquids[i]);
}

/** @param {number} liquid */
function vapourOver(liquid) {
  const { liquids, vapours, vapourSlopes } = tables();
  const i = Math.min(Math.floor(Math.sqrt(liquid) * LINE), LINE - 1);
  return vapours[i] + vapourSlopes[i] * (liquid - liquids[i]);
}

/** @returns {Tables} */
function tables() {
  if (kept) return kept;
  const liquids = Array.from({ length: LINE + 1 }, (_, i) => (i / LINE) * (i / LINE));
  const vapours = liquids.map((x) => (x > 0 && x < 1 ? vapourMoleFraction(x) : x));
  const streams = Array.from({ length: 101 }, (_, pct) => moleFractionFromStrength(pct));
  let k = 0;
  const strengths = liquids.map((x) => {
    while (k < 99 && streams[k + 1] < x) k++;
    return k + (x - streams[k]) / (streams[k + 1] - streams[k]);
  });
  const slopes = (/** @type {number[]} */ ys) => liquids.slice(1).map((x, i) => (ys[i + 1] - ys[i]) / (x - liquids[i]));
  kept = { liquids, vapours, vapourSlopes: slopes(vapours), strengths, strengthSlopes: slopes(strengths) };
  return kept;
}
