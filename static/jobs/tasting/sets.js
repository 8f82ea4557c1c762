// @ts-check
/** Which sets of glasses wait for somebody: those of the tastings on this phone that no entry answers, on the slate or in the book. */
import { getMeta } from "../../slate/db.js";
import { all } from "../../slate/queue.js";
import { struckBy } from "../../slate/strikes.js";

/** @typedef {{person: string, set_no: number, codes: string[]}} Serving */
/** @typedef {{name: string, question: string, method: string, sets: Serving[], answered: [string, number][]}} Tasting */

/** @param {string} person code @returns {Promise<{tasting: Tasting, open: Serving[]}[]>} tastings of which this person is a taster, those with nothing open too */
export async function setsOf(person) {
  /** @type {Tasting[]} */
  const tastings = ((await getMeta("tastings")) ?? []).filter((/** @type {Tasting} */ one) => one.sets.some((set) => set.person === person));
  if (!tastings.length) return [];
  const kept = await all();
  const struck = struckBy(kept.map((one) => one.entry));
  const said = new Set(kept.filter((one) => one.entry.kind === "tasting_answer" && one.state !== "refused" && !struck.has(one.id) && one.entry.person === person)
    .map((one) => `${one.entry.values.session?.raw} ${one.entry.values.set_no?.raw}`));
  return tastings.map((tasting) => ({
    tasting,
    open: tasting.sets.filter((set) => set.person === person && !said.has(`${tasting.name} ${set.set_no}`) && !tasting.answered.some(([who, no]) => who === person && no === set.set_no)),
  }));
}
