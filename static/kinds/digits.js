// @ts-check
/** Figures as texts of digits, as the book writes them. Twin of show_number in webapp/kinds/slips.py. */
import { formatNumber } from "../trade/units.js";

const SHOWN_MOST = 1e9;

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
