// @ts-check
/** Slips of a strength as it was typed, judged by the true strength that each would give. Twin of strength_slips in checks/run.py. */
import { likelySlips } from "../kinds/slips.js";
import { trueStrengthFromGlass } from "../trade/alcoholometry.js";
import { parseNumber, toCanonical } from "../trade/units.js";

/** The field that a strength was typed into. @param {any} read */
export const strengthField = (read) => (read.values.strength != null ? "strength" : "glass");

/** @param {any} read @param {number|null} near true strength @param {(pct: number) => boolean} fits */
export function strengthSlips(read, near, fits) {
  const name = strengthField(read);
  const given = read.entry.values[name];
  const field = read.kind.fields.find((/** @type {any} */ one) => one.name === name);
  if (!given || given.unit === "proof_glass") return []; // its table may not be on the phone
  return likelySlips(field, parseNumber(given.raw), given.unit, [0, 100], near).filter((slip) => {
    const pct = trueOf(name, slip, read.values.temp);
    return pct !== null && fits(pct);
  }).map((slip) => ({ ...slip, field: name }));
}

/** @param {string} name @param {{raw: string, unit: string}} slip @param {number|undefined} temp @returns {number|null} */
function trueOf(name, slip, temp) {
  try {
    const value = toCanonical(parseNumber(slip.raw), slip.unit);
    if (name === "strength") return value;
    return temp == null ? null : trueStrengthFromGlass(value, temp);
  } catch {
    return null;
  }
}
