// @ts-check
/** The phone's data for the pages: cards with the slate's own entries laid over them, and the kinds by name. */
import { allKinds, isInWords, kindNamed, loadKinds } from "../kinds/kinds.js";
import { allCards, getCard, unknownToCards, withWaiting } from "../slate/cards.js";
import { loadLater } from "../words/catalogue.js";

/** @param {string} mark @returns {Promise<any|null>} the vessel's card as the book had it, with what this phone has logged since */
export async function readCard(mark) {
  const [card, kept] = await Promise.all([getCard(mark), unknownToCards(), loadKinds()]);
  return card ? withWaiting(card, kept) : null;
}

/** @returns {Promise<any[]>} every card, by name */
export async function readCards() {
  const [cards, kept] = await Promise.all([allCards(), unknownToCards(), loadKinds()]);
  return cards.map((card) => withWaiting(card, kept)).sort(byName);
}

/** @param {string[]} [shown] those whose fields are shown @returns {Promise<Map<string, any>>} the kinds as declared */
export async function kindsByName(shown = []) {
  await withWords(shown);
  return new Map(allKinds().map((kind) => [kind.name, kind]));
}

/** @param {string} name @returns {Promise<any|null>} the kind as declared, or null */
export async function getKind(name) {
  await withWords([name]);
  return kindNamed(name) ?? null;
}

/** The words of some kinds come with the jobs; until they are on the phone their figures have no names. @param {string[]} names */
async function withWords(names) {
  await loadKinds();
  if (!names.every(isInWords)) await loadLater().catch(() => {});
}

/** F2 before F10. @param {any} a @param {any} b */
const byName = (a, b) => (a.name || a.mark).localeCompare(b.name || b.mark, "en", { numeric: true });
