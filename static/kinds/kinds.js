// @ts-check
/** The kinds of entry as declared in webapp/kinds, and the tables their figures need; both lie in the worker's cache. */
import { initTrade } from "../trade/datafiles.js";

/**
 * @typedef {[number | null, number | null]} Range
 * @typedef {{
 *   name: string, label: string, sort: "number" | "choice" | "text" | "date" | "time" | "mark" | "yes_no", units: string[],
 *   usual: Range, possible: Range, required: boolean, choices: [string, string][], instrument: string | null,
 *   decimals: number | null, vessels: string[], ghost: boolean, danger: [number, string][], falls: number | null, help: string,
 *   typed_in: string,
 * }} Field
 * @typedef {{
 *   code: string, op: "lt" | "le" | "any_of" | "needs" | "differ_unless", left: string, right: string, weight: string,
 *   words: string, near: [string, number, number] | null,
 * }} Rule
 * @typedef {{
 *   name: string, label: string, unit: string, sum: string, inputs: Record<string, string[]>, decimals: number,
 *   given: string | null, big: boolean, only_shown: boolean, typed?: [string, string],
 * }} Figure
 * @typedef {{
 *   name: string, version: number, title: string, short: string, icon: string, about: string, fields: Field[],
 *   vessels: string[], needs_mark: boolean, role: string, rules: Rule[], figures: Figure[], summary: string,
 *   checks: string[], curve: string[], cautions: string[], run: boolean, floor: boolean,
 * }} Kind
 */

/** @type {Kind[]} */
let kinds = [];
/** The messages that every form needs, and whose numbers and dates go with them. @type {{locale: string, text: string} | null} */
let words = null;
/** @type {Promise<Kind[]> | null} */
let loading = null;

/** Load the declarations and the tables of the sums, once. @returns {Promise<Kind[]>} in the registry's order */
export function loadKinds() {
  loading ??= loadAll().catch((error) => {
    loading = null;
    throw error;
  });
  return loading;
}

/** @param {string} name @returns {Kind | undefined} undefined before `loadKinds`, and for a kind newer than this phone */
export const kindNamed = (name) => kinds.find((kind) => kind.name === name);

/** The messages that came with the kinds; `loadKinds` first. */
export function startingWords() {
  if (!words) throw new Error("The sentences are read before the kinds are loaded.");
  return words;
}

async function loadAll() {
  const [declared, said] = await Promise.all([fetchData("kinds.json"), fetchData("words.json"), initTrade(fetchData)]);
  [kinds, words] = [declaredKinds(declared), said];
  return kinds;
}

/** Put back what is plain of a field, a rule and a figure, which is sent once. @param {any} declared kinds.json @returns {Kind[]} */
export function declaredKinds({ plain, kinds: short }) {
  /** @param {any} kind @param {"fields" | "rules" | "figures"} part */
  const whole = (kind, part) => kind[part].map((/** @type {any} */ one) => ({ ...plain[part], ...one }));
  return short.map((/** @type {any} */ kind) => (
    { ...kind, fields: whole(kind, "fields"), rules: whole(kind, "rules"), figures: whole(kind, "figures") }));
}

/** What every start needs lies in one file; it is fetched once. @type {Promise<Record<string, any>> | null} */
let starting = null;

/** @param {string} name of a file under /data @returns {Promise<any>} */
export async function fetchData(name) {
  starting ??= fetch("/data/start.json").then((response) => (response.ok ? response.json() : {})).catch(() => {
    starting = null; // tried anew with the next page or tap
    return {};
  });
  const found = (await starting)[name];
  if (found) return found;
  const response = await fetch(`/data/${name}`);
  if (!response.ok) throw new Error(`The ${name} of this version is not on the phone. Open the app once with signal.`);
  return response.json();
}
