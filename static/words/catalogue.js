// @ts-check
/** The catalogue of the phone's language: the part that every form needs, and the questions of the book, which come after it. */
import { FluentBundle, FluentResource } from "../vendor/fluent/fluent.min.js";
import { fetchData, startingWords } from "../kinds/kinds.js";
import { FUNCTIONS } from "./values.js";

/** @typedef {{bundle: any, locale: string}} Catalogue */

/** @type {Catalogue | null} */
let made = null;
/** @type {Promise<void> | null} */
let loading = null;

/** The messages that are on this phone so far; `loadKinds` first. They are read when the first sentence is made. @returns {Catalogue} */
export function catalogue() {
  if (!made) {
    const { locale, text } = startingWords();
    const options = /** @type {any} */ ({ functions: FUNCTIONS, useIsolating: false });
    const bundle = new FluentBundle(locale, options);
    bundle.addResource(new FluentResource(text));
    made = { bundle, locale };
  }
  return made;
}

/** Load the messages of the book's questions; without them the words are said that the book sent. @returns {Promise<void>} */
export function loadQuestions() {
  loading ??= fetchData("questions.json").then(({ text }) => {
    catalogue().bundle.addResource(new FluentResource(text));
  }).catch(() => {
    loading = null; // tried anew with the next page
  });
  return loading;
}
