// @ts-check
/** What an instrument shows, put right by its correction. Twin of webapp/kinds/corrections.py, which says why. */
import { canonicalUnit, fromCanonical, toCanonical } from "../trade/units.js";

/** @typedef {{unit: string, offset: number, table: [number, number][]}} Correction in the instrument's own unit */

/** @type {Map<string, Correction>} */
const HOUSE = new Map();

/** Take the corrections in force from the house's list of instruments. @param {any[]} instruments */
export function useCorrections(instruments) {
  HOUSE.clear();
  for (const one of instruments) if (one.correction) HOUSE.set(one.id, one.correction);
}

/** @param {Record<string, Correction> | undefined} given those of a context, else the house's @param {any} value as typed @returns {Correction | undefined} */
export function correctionOf(given, value) {
  const id = String(value.instrument ?? "").trim();
  return id ? (given ? given[id] : HOUSE.get(id)) : undefined;
}

/** @param {number} typed @param {string} unit @param {string} firstUnit of the field @param {Correction} correction */
export function putRight(typed, unit, firstUnit, correction) {
  let own = correction.unit || firstUnit;
  if (!alike(own, unit)) own = alike(firstUnit, unit) ? firstUnit : unit;
  const shown = own === unit ? typed : fromCanonical(toCanonical(typed, unit), own);
  const right = shown + (ofTable(correction.table, shown) + correction.offset);
  return own === unit ? right : fromCanonical(toCanonical(right, own), unit);
}

/** @param {[number, number][]} table @param {number} shown */
function ofTable(table, shown) {
  if (!table.length) return 0;
  if (shown <= table[0][0]) return table[0][1];
  for (let n = 1; n < table.length; n += 1) {
    const [[low, atLow], [high, atHigh]] = [table[n - 1], table[n]];
    if (shown <= high) return atLow + (atHigh - atLow) * ((shown - low) / (high - low));
  }
  return table[table.length - 1][1];
}

/** @param {string} one @param {string} other */
function alike(one, other) {
  try {
    return canonicalUnit(one) === canonicalUnit(other);
  } catch {
    return false;
  }
}
