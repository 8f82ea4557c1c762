// @ts-check
/** The words of the screen, in the phone's language. */
import { hasWords, loadWords } from "../kinds/kinds.js";
import { catalogue, patternOf } from "./catalogue.js";
import { formatNumber } from "./number.js";
import { Shown } from "./values.js";

/**
 * A message of the catalogue as text; `loadWords` first. A number stands in it as figures are written here, and chooses the
 * plural; a text stands as it is.
 * @param {string} id @param {Record<string, string | number | null | undefined>} [params] @returns {string}
 */
export function t(id, params) {
  if (!hasWords()) return id; // a worker that hands in says nothing
  const pattern = patternOf(id);
  if (pattern === undefined) return id;
  if (typeof pattern === "string") return pattern;
  const { bundle, locale } = catalogue();
  return bundle.formatPattern(pattern, Object.fromEntries(Object.entries(params ?? {}).map(([name, value]) => [name, valueOf(value, locale)])));
}

/** @param {string | number | null | undefined} value @param {string} locale */
const valueOf = (value, locale) => (typeof value === "number" ? new Shown(value, locale, (figure) => formatNumber(figure)) : String(value ?? ""));

export { loadWords };
