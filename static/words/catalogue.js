// @ts-check
/** The catalogue of the phone's language: what every page needs, and what comes after it: the jobs and the questions of the book. */
import { FluentBundle, FluentResource } from "../vendor/fluent/fluent.min.js";
import { fetchWords, language, startingWords, takeKindWords } from "../kinds/kinds.js";
import { FUNCTIONS } from "./values.js";

/** @typedef {{bundle: any, locale: string, said: Record<string, string>}} Catalogue */

/** A message within a message. */
const WITHIN = /\{ ?([a-z][\w-]*) ?\}/g;

/** @type {Catalogue | null} */
let made = null;
/** @type {Promise<void> | null} */
let loading = null;

/** The messages that are on this phone so far; `loadKinds` or `loadWords` first. @returns {Catalogue} */
export function catalogue() {
  if (!made) {
    const { locale, said } = startingWords();
    const options = /** @type {any} */ ({ functions: FUNCTIONS, useIsolating: false });
    made = { bundle: new FluentBundle(locale, options), locale, said: { ...said } };
  }
  return made;
}

/** @param {string} id */
export const hasMessage = (id) => catalogue().said[id] !== undefined;

/**
 * A message as the bundle fills it in. It is read when it is said for the first time: a page says some dozens of a thousand.
 * @param {string} id @returns {any} undefined where there is none
 */
export function patternOf(id) {
  const { bundle, said } = catalogue();
  const text = said[id];
  if (text === undefined || !/[{\n]/.test(text)) return text;
  read(id);
  return bundle.getMessage(id)?.value;
}

/** @param {string} id */
function read(id) {
  const { bundle, said } = catalogue();
  const text = said[id];
  if (text === undefined || bundle.hasMessage(id)) return;
  bundle.addResource(new FluentResource(`${id} = ${text}\n`));
  for (const [, within] of text.matchAll(WITHIN)) read(within);
}

/** Load the messages that come after the first install; without them the words are said that the book sent. @returns {Promise<void>} */
export function loadQuestions() {
  return loadLater().catch(() => {});
}

/** Load the words of the jobs and of the book's questions; fails where they are not on this phone yet. @returns {Promise<void>} */
export function loadLater() {
  loading ??= fetchWords(`${language()}-later`).then(({ said, kinds }) => {
    Object.assign(catalogue().said, said);
    takeKindWords(kinds);
  }).catch((error) => {
    loading = null; // tried anew with the next page
    throw error;
  });
  return loading;
}
