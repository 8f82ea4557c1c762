// @ts-check
/** How a figure is written: the site's decimal mark, thin-spaced thousands. */

const THIN = "\u202f";
export const MINUS = "\u2212";

/** The site's decimal mark, from `<html data-decimal>`, else from the browser's language. */
export function decimalMark() {
  const set = globalThis.document?.documentElement.dataset.decimal;
  if (set === "," || set === ".") return set;
  const parts = new Intl.NumberFormat().formatToParts(1.5);
  return parts.find((part) => part.type === "decimal")?.value === "," ? "," : ".";
}

/** Whose dates and orders go with the page's language. @returns {string} */
export function pageLocale() {
  const said = globalThis.document?.documentElement.lang ?? "";
  return !said || said.startsWith("en") ? "en-GB" : said;
}

/**
 * @param {number|null|undefined} value
 * @param {number} [decimals] fixed number of decimals
 * @returns {string} "1 610", "0.998", "−3.5"; a dash for nothing
 */
export function formatNumber(value, decimals = 0) {
  if (value === null || value === undefined || !Number.isFinite(value)) return "–";
  /** @type {Record<string, string>} */
  const written = { minusSign: MINUS, group: THIN, decimal: decimalMark() };
  const isZero = Math.abs(value) < 0.5 * 10 ** -decimals; // Else "−0.0" is written.
  return new Intl.NumberFormat("en-GB", { minimumFractionDigits: decimals, maximumFractionDigits: decimals })
    .formatToParts(isZero ? 0 : value)
    .map((part) => written[part.type] ?? part.value)
    .join("");
}
