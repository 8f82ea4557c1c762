// @ts-check
/** Computed figures in the units of this phone: metric as they come, or US. What was read keeps the unit it was read in. */
import { fromCanonical, symbol } from "../trade/units.js";
import { formatNumber, formatQuantity } from "../ui/format.js";

/** @type {Record<string, string>} canonical unit to the US one */
const US = { kg: "lb", L: "gal", LPA: "proof_gal", pct_vol: "proof", degC: "degF", L_h: "gal_h" };
/** @type {Record<string, string>} what the sign of a strength leaves unsaid */
const BASIS = { pct_vol: "true at 20 °C", proof: "true at 60 °F" };

/** @returns {"metric"|"us"} the units set on this phone, else the house's */
export const unitsChoice = () => ((localStorage.getItem("units") || document.documentElement.dataset.units) === "us" ? "us" : "metric");

/** @param {"metric"|"us"} choice */
export function setUnitsChoice(choice) {
  localStorage.setItem("units", choice);
  for (const name of Object.keys(localStorage)) if (name.startsWith("unit:")) localStorage.removeItem(name);
}

/** @param {number} value canonical @param {string} unit its unit @returns {{value: number, unit: string}} as it came where there is no way over */
export function inUnits(value, unit) {
  const other = unitsChoice() === "us" ? US[unit] : undefined;
  if (!other) return { value, unit };
  try {
    return { value: fromCanonical(value, other), unit: other };
  } catch {
    return { value, unit };
  }
}

/** @param {number} value @param {string} unit @param {number} decimals */
export function shownInUnits(value, unit, decimals) {
  const shown = inUnits(value, unit);
  return formatQuantity(shown.value, decimals, symbol(shown.unit));
}

/** A true strength as figure and words: 73.7 and "% vol true at 20 °C", or 147.3 and "proof true at 60 °F". @param {number} pct */
export function strengthShown(pct) {
  const { value, unit } = inUnits(pct, "pct_vol");
  return { figure: formatNumber(value, 1), sign: symbol(unit), words: `${symbol(unit)} ${BASIS[unit]}` };
}
