// @ts-check
/** How far the figures of a form may be off, k = 2: comes after the form, with the jobs. */
import { uncertainFigures, useAccuracies } from "../kinds/uncertainty.js";
import { instruments } from "../slate/cards.js";
import { loadLater } from "../trade/datafiles.js";
import { decimalsIn, valueIn } from "../trade/houseunits.js";
import { expanded, standardOf } from "../trade/uncertainty.js";

/** Everything that `offBy` needs. */
export async function ready() {
  const [own] = await Promise.all([instruments(), loadLater("instruments")]);
  useAccuracies(own);
}

/** @param {any} read as readEntry gives it @param {number | null} capacityL of the vessel @returns {Record<string, string>} by the name of the figure */
export function offBy(read, capacityL) {
  const found = uncertainFigures(read, capacityL);
  return Object.fromEntries(read.kind.figures.filter((/** @type {any} */ { name }) => found[name]).map((/** @type {any} */ { name, unit, decimals }) => {
    const digits = decimalsIn(decimals, unit);
    return [name, expanded(valueIn(standardOf(found[name]), unit, true), digits).toFixed(digits)];
  }));
}
