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
/** The words that every page needs, whose numbers and dates go with them, and what the kinds are called. @type {{locale: string, said: Record<string, string>, kinds?: any[][], languages?: Record<string, string>} | null} */
let words = null;
/** The words of the later forms, by kind, once they are here. @type {Record<string, any[]> | null} */
let laterWords = null;
/** Its title, the short one, its line; the words of its fields, rules and figures. */
const WORDS_OF_KIND = 6;
/** @type {Promise<void> | null} */
let wording = null;
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
  const said = wordsOf(name);
  const kind = inWords(wholeKind(short, declared.plain), said && [...said, ...(laterWords?.[name] ?? [])]); // a form asks for one kind of many: the others need not be put together
  whole.set(name, kind);
  return kind;
}

/** Every kind, in the registry's order; `loadKinds` first. @returns {Kind[]} */
export const allKinds = () => declared.kinds.map(({ name }) => /** @type {Kind} */ (kindNamed(name)));

/** Whether all words of a kind are on this phone: those of the later forms come with the jobs. @param {string} name */
export const isInWords = (name) => laterWords !== null || (wordsOf(name)?.length ?? WORDS_OF_KIND) >= WORDS_OF_KIND;

/** Take the words of the later forms: of fields, rules and figures. @param {Record<string, any[]>} later by kind */
export function takeKindWords(later) {
  laterWords = later;
  whole.clear();
}

/** @param {string} name @returns {any[] | undefined} undefined where the words of no kind are known */
const wordsOf = (name) => words?.kinds?.[declared.kinds.findIndex((kind) => kind.name === name)];

/** The language of the page: a phone loads only its own. */
export const language = () => (globalThis.document?.documentElement.lang || "en").split("-")[0].toLowerCase();

/** Load the words that every page needs, once. @returns {Promise<void>} */
export function loadWords() {
  wording ??= fetchWords(language()).then((said) => {
    words = said;
  }).catch((error) => {
    wording = null;
    throw error;
  });
  return wording;
}

/** The languages that there are, each by its own name; `loadWords` first. @returns {[string, string][]} */
export const languages = () => Object.entries(words?.languages ?? {});

export const hasWords = () => words !== null;

/** The messages that every page needs; `loadKinds` or `loadWords` first. */
export function startingWords() {
  if (!words) throw new Error("The sentences are read before the kinds are loaded.");
  return words;
}

async function loadAll() {
  [declared] = await Promise.all([fetchData("kinds.json"), loadWords(), initTrade(fetchData)]);
  whole.clear();
}

/** Put back what is plain of a field, a rule and a figure, which is sent once. @param {any} short @param {any} plain of kinds.json @returns {Kind} */
function wholeKind(short, plain) {
  /** @param {"fields" | "rules" | "figures"} part */
  const withPlain = (part) => short[part].map((/** @type {any} */ one) => ({ ...plain[part], ...one }));
  return { ...short, fields: withPlain("fields"), rules: withPlain("rules"), figures: withPlain("figures") };
}

/**
 * A kind with its words in the phone's language, which come in the order of what they name.
 * @param {Kind} kind @param {any[] | undefined} said its title, short title and line, and the words of its fields, rules and figures @returns {Kind}
 */
function inWords(kind, said) {
  if (!said) return kind;
  const [title, short, summary, fields, rules, figures] = said;
  if (!fields) return { ...kind, title, short, summary };
  return {
    ...kind, title, short, summary, fields: kind.fields.map((field, at) => inWordsOfField(field, fields[at])),
    rules: kind.rules.map((rule, at) => ({ ...rule, words: rules[at] })), figures: kind.figures.map((figure, at) => ({ ...figure, label: figures[at] })),
  };
}

/** @param {Field} field @param {string | [string, string[], string[]]} said its label; with its choices and what to do in danger, where it has any @returns {Field} */
function inWordsOfField(field, said) {
  if (typeof said === "string") return { ...field, label: said };
  const [label, choices, danger] = said;
  return {
    ...field, label, choices: field.choices.map(([value], at) => [value, choices[at]]), danger: field.danger.map(([from], at) => [from, danger[at]]),
  };
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

/** @param {string} name of a file under /words: a language, or what comes later of it @returns {Promise<any>} */
export async function fetchWords(name) {
  const response = await fetch(`/words/${name}.json`);
  if (!response.ok) throw new Error("The words of this version are not on the phone. Open the app once with signal.");
  return response.json();
}
