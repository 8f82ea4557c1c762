// @ts-check
/** What the pages ask of the phone: cards with the slate's own entries laid over them, and the kinds by name. */
import { loadKinds } from "../kinds/kinds.js";
import { allCards, freshAt, getCard, withWaiting } from "../slate/cards.js";
import { all } from "../slate/queue.js";

/** @param {string} mark @returns {Promise<any|null>} the vessel's card as the book had it, with what this phone has logged since */
export async function readCard(mark) {
  const [card, kept, fresh] = await Promise.all([getCard(mark), all(), freshAt()]);
  return card ? withWaiting(card, kept, fresh) : null;
}

/** @returns {Promise<any[]>} every card, by name */
export async function readCards() {
  const [cards, kept, fresh] = await Promise.all([allCards(), all(), freshAt()]);
  const touched = new Set(kept.flatMap((one) => [one.entry.mark, one.entry.values.still?.raw]));
  const laidOver = cards.map((card) => (touched.has(card.mark) ? withWaiting(card, kept, fresh) : card));
  return (await Promise.all(laidOver)).sort(byName);
}

/** @returns {Promise<Map<string, any>>} the kinds as declared */
export const kindsByName = async () => new Map((await loadKinds()).map((kind) => [kind.name, kind]));

/** @param {string} name @returns {Promise<any|null>} the kind as declared, or null */
export const getKind = async (name) => (await kindsByName()).get(name) ?? null;

/** F2 before F10. @param {any} a @param {any} b */
const byName = (a, b) => (a.name || a.mark).localeCompare(b.name || b.mark, "en", { numeric: true });
