// @ts-check
/**
 * Units: what each code means, the way to the canonical unit and back, and typed numbers.
 * Twin of webapp/trade/units.py; both read units.json.
 */
import { data } from "./datafiles.js";
import { NotANumber } from "./errors.js";
import { fixed } from "./numeric.js";
import { lpaFromProofGallons, proofFromStrength, proofGallonsFromLpa, strengthFromProof } from "./proof.js";
import {
  brixFromGravity, brixFromKmw, brixFromOechsle, gravityFromBrix, gravityFromKmw, gravityFromPlato, kmwFromBrix, kmwFromGravity, oechsleFromBrix,
  platoFromGravity,
} from "./scales.js";

/**
 * @typedef {object} UnitFacts
 * @property {string} symbol
 * @property {string} quantity
 * @property {string} canonical
 * @property {number} [shift]
 * @property {number} [factor]
 * @property {string} [via]
 * @property {number} [range_factor]
 */

const MOST_CHARACTERS = 15;
const MOST_PASTED = 200;
const BLANKS = /[ \u00a0\u2009\u202f]/g;
// The blanks above and line ends, at either end only: other white space is no part of a figure.
const ENDS = /^[ \u00a0\u2009\u202f\t\r\n]+|[ \u00a0\u2009\u202f\t\r\n]+$/g;
const TYPED = /^[+-]?(?:(?:[0-9]+|[0-9]{1,3}(?: [0-9]{3})+)(?:[.,][0-9]*)?|[.,][0-9]+)$/;

/** Curves named by "via": to the canonical unit, and back.
 * @type {Record<string, [(value: number) => number, (value: number) => number]>} */
const CURVES = {
  brix: [gravityFromBrix, brixFromGravity],
  plato: [gravityFromPlato, platoFromGravity],
  kmw: [gravityFromKmw, kmwFromGravity],
  oechsle_refractometer: [brixFromOechsle, oechsleFromBrix],
  kmw_refractometer: [brixFromKmw, kmwFromBrix],
  proof: [strengthFromProof, proofFromStrength],
  proof_gallon: [lpaFromProofGallons, proofGallonsFromLpa],
};

/**
 * @param {number} value as read
 * @param {string} unit
 * @returns {number} in canonicalUnit(unit)
 */
export function toCanonical(value, unit) {
  const facts = factsOf(unit);
  if (facts.via) return CURVES[facts.via][0](value);
  return (value + (facts.shift ?? 0)) * (facts.factor ?? 1);
}

/**
 * @param {number} value in canonicalUnit(unit)
 * @param {string} unit
 * @returns {number} in the unit
 */
export function fromCanonical(value, unit) {
  const facts = factsOf(unit);
  if (facts.via) return CURVES[facts.via][1](value);
  return value / (facts.factor ?? 1) - (facts.shift ?? 0);
}

/** @param {string} unit */
export const canonicalUnit = (unit) => factsOf(unit).canonical;

/** @param {string} unit */
export const quantityOf = (unit) => factsOf(unit).quantity;

/** @param {string} unit */
export const symbol = (unit) => factsOf(unit).symbol;

/**
 * The number that a person typed, with point or comma. One separator, standing once, is the decimal point.
 * @param {string} text
 * @returns {number}
 */
export function parseNumber(text) {
  // A pasted page is told off before anything looks at it closely.
  let typed = text.length <= MOST_PASTED ? text.replace(ENDS, "") : text;
  if (!typed) throw new NotANumber("empty");
  // Code points, as Python counts them: an emoji is one character, not two.
  if ([...typed.slice(0, MOST_PASTED)].length > MOST_CHARACTERS) {
    throw new NotANumber("too_long");
  }
  typed = typed.replace(BLANKS, " ").replace(/\u2212/g, "-");
  if ((typed.match(/[.,]/g) ?? []).length > 1) {
    throw new NotANumber("two_signs");
  }
  if (!TYPED.test(typed)) {
    throw new NotANumber("not_plain");
  }
  return Number(typed.replace(/ /g, "").replace(",", ".")) + 0;
}

/**
 * A figure for the screen, rounded half up, with a point and no grouping.
 * @param {number} value finite, within 1e9 either way
 * @param {number} decimals 0 to 6
 */
export function formatNumber(value, decimals) {
  if (!(Math.abs(value) <= 1e9 && decimals >= 0 && decimals <= 6)) {
    throw new RangeError(`cannot show ${value} with ${decimals} decimals`);
  }
  return fixed(value, decimals);
}

/**
 * @param {string} unit
 * @returns {UnitFacts}
 */
function factsOf(unit) {
  const units = data("units");
  if (!Object.hasOwn(units, unit)) throw new TypeError(`no such unit: ${unit}`);
  return units[unit];
}
