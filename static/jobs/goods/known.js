// @ts-check
/** What this phone knows of batches, lots and bottled goods: from the cards, and from what waits on its slate. */
import { loadKinds } from "../../kinds/kinds.js";
import { allCards, goods, unknownToCards } from "../../slate/cards.js";
import { withOwnGoods } from "./stock.js";

/** @returns {Promise<import("./stock.js").Goods[]>} bottlings, newest first */
export async function readGoods() {
  const [known, kept, cards] = await Promise.all([goods(), unknownToCards(), allCards(), loadKinds()]);
  return withOwnGoods(known, kept, new Map(cards.map((card) => [card.mark, card])));
}

/**
 * Batches that stand in vessels: each once, with all that is left of it.
 * @param {any[]} cards @param {{mash: boolean, byLot?: boolean}} wanted mash or spirit; by its lot where it has one
 * @returns {{name: string, what: string, litres: number, kg: number, marks: string[]}[]} the largest first
 */
export function batchesIn(cards, { mash, byLot = false }) {
  /** @type {Map<string, {name: string, what: string, litres: number, kg: number, marks: string[]}>} */
  const found = new Map();
  for (const { mark, name, holds } of cards) {
    const batch = (byLot && holds?.lot) || holds?.name;
    if (!batch || Boolean(holds.mash) !== mash) continue;
    /** @type {{name: string, what: string, litres: number, kg: number, marks: string[]}} */
    const one = found.get(batch) ?? { name: batch, what: holds.what ?? "", litres: 0, kg: 0, marks: [] };
    one.litres += holds.volume_l ?? 0;
    one.kg += holds.mass_kg ?? 0;
    one.marks.push(name || mark);
    found.set(batch, one);
  }
  return [...found.values()].sort((a, b) => b.litres - a.litres || b.kg - a.kg);
}
