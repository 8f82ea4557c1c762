// @ts-check
/** Likely slips of the thumb: swapped digits, a slipped point, °F typed as °C. Twin of webapp/kinds/slips.py. */
import { message } from "./message.js";
import { OutOfDomain, NotANumber } from "../trade/errors.js";
import { formatNumber, parseNumber, toCanonical } from "../trade/units.js";

/**
 * @typedef {import("./kinds.js").Field} Field
 * @typedef {import("./kinds.js").Range} Range
 * @typedef {import("./message.js").Message} Message
 * @typedef {{raw: string, unit: string, message: Message | null, value: number}} Slip as typed; `value` is canonical
 */

const MOST = 2;
const SHOWN_MOST = 1e9;
const FACTORS = [0.1, 10, 0.01, 100, 0.001, 1000]; // 1040 is often typed for 1.040
const TEMPERATURES = ["degC", "degF"];

/**
 * At most two likely figures, the likeliest first: usual, nearer to the last, not above a falling last.
 * @param {Field} spec @param {number} typed in `unit` @param {string} unit @param {Range} usual [canonical unit of the field]
 * @param {number | null | undefined} last [canonical unit]; without it the middle of the usual range stands in
 * @returns {Slip[]}
 */
export function likelySlips(spec, typed, unit, usual, last) {
  const text = showNumber(Math.abs(typed), spec.decimals);
  const sign = typed < 0 ? "-" : "";
  /** @type {Map<string, Slip>} */
  const found = new Map();
  const asTyped = asSlip(sign + text, unit, null);
  // A falling figure that rose is wrong however near it is.
  const off = asTyped && last != null && !rose(spec, asTyped.value, last) ? Math.abs(asTyped.value - last) : Infinity;
  for (const [raw, asUnit, why] of [...swaps(text, unit), ...points(typed, unit, spec.decimals), ...senses(spec, text, unit)]) {
    const slip = asSlip(sign + raw, asUnit, why);
    const isOther = slip && (slip.raw !== sign + text || slip.unit !== unit);
    const isNearer = isOther && Math.abs(slip.value - (last ?? 0)) < off;
    if (isNearer && fits(spec, slip.value, usual, last) && !found.has(slip.raw + slip.unit)) found.set(slip.raw + slip.unit, slip);
  }
  const centre = last ?? middle(usual);
  const far = (/** @type {Slip} */ slip) => (centre === null ? 0 : Math.abs(slip.value - centre));
  return [...found.values()].sort((a, b) => far(a) - far(b)).slice(0, MOST);
}

/**
 * A figure as it would be typed; without decimals given, at most three and no trailing zeros.
 * @param {number} value @param {number | null | undefined} decimals
 */
export function showNumber(value, decimals) {
  if (!(Math.abs(value) <= SHOWN_MOST)) return fixedEven(value, 0);
  if (decimals != null) return formatNumber(value, decimals);
  const text = formatNumber(value, 3);
  return text.includes(".") ? text.replace(/0+$/, "").replace(/\.$/, "") : text;
}

/**
 * Like toFixed, but a figure exactly between two goes to the even one, as in the book's sentences.
 * @param {number} value @param {number} decimals 0 to 20
 */
export function fixedEven(value, decimals) {
  const nearest = value.toFixed(decimals);
  const [whole, part] = Math.abs(value).toFixed(decimals + 60).split(".");
  if (!part || !/^50*$/.test(part.slice(decimals))) return nearest;
  const down = whole + (decimals ? `.${part.slice(0, decimals)}` : "");
  const isEven = Number(down.at(-1)) % 2 === 0;
  return isEven ? (value < 0 ? "-" : "") + down : nearest;
}

/** Swap each pair of neighbouring digits, over the point too; nobody types a leading zero. @param {string} text @param {string} unit */
function swaps(text, unit) {
  /** @type {[string, string, Message][]} */
  const swapped = [];
  const places = [...text].flatMap((char, at) => (/[0-9]/.test(char) ? [at] : []));
  for (let i = 0; i + 1 < places.length; i += 1) {
    const chars = [...text];
    const [a, b] = [places[i], places[i + 1]];
    [chars[a], chars[b]] = [chars[b], chars[a]];
    const raw = chars.join("");
    if (raw !== text && !/^0[0-9]/.test(raw)) swapped.push([raw, unit, message("slip-swapped")]);
  }
  return swapped;
}

/** @param {number} typed @param {string} unit @param {number | null} decimals @returns {[string, string, Message][]} */
const points = (typed, unit, decimals) =>
  FACTORS.map((factor) => [showNumber(Math.abs(typed) * factor, decimals), unit, message("slip-point")]);

/** @param {Field} spec @param {string} text @param {string} unit @returns {[string, string, Message][]} */
const senses = (spec, text, unit) =>
  spec.units
    .filter((other) => other !== unit && TEMPERATURES.includes(other) && TEMPERATURES.includes(unit))
    .map((other) => [text, other, message("slip-unit", { meant: { unit: other }, typed: { unit } })]);

/** @param {string} raw @param {string} unit @param {Message | null} why @returns {Slip | null} */
function asSlip(raw, unit, why) {
  try {
    return { raw, unit, message: why, value: toCanonical(parseNumber(raw), unit) };
  } catch (error) {
    if (error instanceof OutOfDomain || error instanceof NotANumber) return null;
    throw error;
  }
}

/** @param {Field} spec @param {number} value @param {Range} usual @param {number | null | undefined} last */
function fits(spec, value, [low, high], last) {
  if ((low !== null && value < low) || (high !== null && value > high)) return false;
  return last == null || !rose(spec, value, last);
}

/** @param {Field} spec @param {number} value @param {number} last */
const rose = (spec, value, last) => spec.falls !== null && value > last + spec.falls;

/** @param {Range} range */
const middle = ([low, high]) => (low !== null && high !== null ? (low + high) / 2 : null);
