// @ts-check
/** Computed figures in the units of this phone: metric as they come, or US. What was read keeps the unit it was read in. */
import { decimalsIn, unitIn, valueIn } from "../trade/houseunits.js";
import { symbol } from "../trade/units.js";
import { formatNumber, formatQuantity } from "../ui/format.js";

export { unitsChoice } from "../trade/houseunits.js";

/** @type {Record<string, string>} what the sign of a strength leaves unsaid */
const BASIS = { pct_vol: "true at 20 °C", proof: "true at 60 °F" };

/** @param {"metric"|"us"} choice */
export function setUnitsChoice(choice) {
  localStorage.setItem("units", choice);
  for (const name of Object.keys(localStorage)) if (name.startsWith("unit:")) localStorage.removeItem(name);
}

/** @param {number} value canonical @param {string} unit its unit @returns {{value: number, unit: string}} */
export const inUnits = (value, unit) => ({ value: valueIn(value, unit), unit: unitIn(unit) });

/** @param {number} value @param {string} unit @param {number} decimals in the canonical unit */
export function shownInUnits(value, unit, decimals) {
  const shown = inUnits(value, unit);
  return formatQuantity(shown.value, decimalsIn(decimals, unit), symbol(shown.unit));
}

/** A true strength as figure and words: 73.7 and "% vol true at 20 °C", or 147.3 and "proof true at 60 °F". @param {number} pct */
export function strengthShown(pct) {
  const { value, unit } = inUnits(pct, "pct_vol");
  return { figure: formatNumber(value, 1), sign: symbol(unit), words: `${symbol(unit)} ${BASIS[unit]}` };
}
