// @ts-check
/** Computed figures in the units of a house: metric as they come, or US. Twin of webapp/words/houseunits.py. */
import { OutOfDomain } from "./errors.js";
import { fixed } from "./numeric.js";
import { fromCanonical } from "./units.js";

/** @type {Record<string, string>} canonical unit to the US one */
const US = { kg: "lb", L: "gal", LPA: "proof_gal", pct_vol: "proof", degC: "degF", L_h: "gal_h" };
/** @type {Record<string, number>} of differences, and of limits of the law */
const APART = { pct_vol: 2, degC: 1.8 };

/** The units set on this phone, else the house's. @returns {"metric"|"us"} */
export const unitsChoice = () => ((globalThis.localStorage?.getItem("units") || globalThis.document?.documentElement.dataset.units) === "us" ? "us" : "metric");

/** @param {string} unit @returns {string} */
export const unitIn = (unit) => (unitsChoice() === "us" && US[unit]) || unit;

/** @param {number} value canonical @param {string} unit its unit @param {boolean} [isApart] how far two figures are apart */
export function valueIn(value, unit, isApart = false) {
  const other = unitIn(unit);
  if (other === unit) return value;
  if (isApart && unit in APART) return value * APART[unit];
  try {
    return fromCanonical(value, other);
  } catch (error) {
    if (error instanceof OutOfDomain) return value * (APART[unit] ?? fromCanonical(1, other));
    throw error;
  }
}

/** A gallon is nearly four litres. @param {number} decimals @param {string} unit */
export const decimalsIn = (decimals, unit) => (/^gal/.test(unitIn(unit)) ? decimals + 1 : decimals);

/** The roundest digits that a figure can mean: 50 gal is kept as 189.3 L. @param {string} text digits with a point, a sign at most; anything else stays @param {string} unit @param {boolean} [isApart] */
export function textIn(text, unit, isApart = false) {
  if (unitIn(unit) === unit || !/^[+-]?[0-9]*\.?[0-9]+$/.test(text)) return text;
  const decimals = text.split(".")[1]?.length ?? 0;
  const [finer, value] = [decimalsIn(decimals, unit), valueIn(Number(text), unit, isApart)];
  const half = Math.abs(valueIn(1, unit, true)) * 0.5 * 10 ** -decimals + 1e-9;
  const round = [...Array(finer).keys()].map((places) => Number(fixed(value, places))).find((one) => Math.abs(one - value) <= half);
  const said = fixed(round ?? value, finer).replace(decimals ? /$^/ : /\.0$/, "");
  return text.startsWith("+") ? `+${said}` : said;
}
