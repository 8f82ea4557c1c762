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

/** What was declared, in the registry's order, with what is plain left out; and each kind that was asked for, whole. */
let declared = /** @type {{plain: any, kinds: any[]}} */ ({ plain: {}, kinds: [] });
/** @type {Map<string, Kind>} */
const whole = new Map();
/** The messages that every form needs, and whose numbers and dates go with them. @type {{locale: string, text: string} | null} */
let words = null;
/** @type {Promise<void> | null} */
let loading = null;

/** Load the declarations and the tables of the sums, once. @returns {Promise<void>} */
export function loadKinds() {
  loading ??= loadAll().catch((error) => {
    loading = null;
    throw error;
  });
  return loading;
}

/** @param {string} name @returns {Kind | undefined} undefined before `loadKinds`, and for a kind newer than this phone */
export function kindNamed(name) {
  const known = whole.get(name);
  if (known) return known;
  const short = declared.kinds.find((kind) => kind.name === name);
  if (!short) return undefined;
  const kind = wholeKind(short, declared.plain); // a form asks for one kind of many: the others need not be put together
  whole.set(name, kind);
  return kind;
}

/** Every kind, in the registry's order; `loadKinds` first. @returns {Kind[]} */
export const allKinds = () => declared.kinds.map(({ name }) => /** @type {Kind} */ (kindNamed(name)));

/** The messages that came with the kinds; `loadKinds` first. */
export function startingWords() {
  if (!words) throw new Error("The sentences are read before the kinds are loaded.");
  return words;
}

async function loadAll() {
  [declared, words] = await Promise.all([fetchData("kinds.json"), fetchData("words.json"), initTrade(fetchData)]);
  whole.clear();
}

/** Put back what is plain of a field, a rule and a figure, which is sent once. @param {any} short @param {any} plain of kinds.json @returns {Kind} */
function wholeKind(short, plain) {
  /** @param {"fields" | "rules" | "figures"} part */
  const withPlain = (part) => short[part].map((/** @type {any} */ one) => ({ ...plain[part], ...one }));
  return { ...short, fields: withPlain("fields"), rules: withPlain("rules"), figures: withPlain("figures") };
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
