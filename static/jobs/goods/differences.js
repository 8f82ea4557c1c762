// @ts-check
/** A stock count against the book as it was when each was counted. Pure: the book's figures were put aside then, and shown to nobody. */
import { bottlesIn } from "./stock.js";

/**
 * @typedef {{place: string, lpa_l: number|null, volume_l: number|null, strength_pct: number|null, bottles: number|null}} Expected by the book
 * @typedef {{
 *   key: string, name: string, what: string, at: string, draft: any, expected: Expected|null,
 *   found: {state: "here"|"nothing"|"unknown", place: string, lpa_l: number|null, volume_l: number|null, strength_pct: number|null, bottles: number|null},
 * }} Counted one thing of a round; `draft` is the entry that it becomes, `at` when it was counted [ISO 8601]
 * @typedef {{counted: Counted, sort: "same"|"less"|"more"|"missing"|"elsewhere"|"unknown", lpa_l: number, bottles: number}} Difference found less expected [L of pure alcohol]
 */

/** Less than this is what a sum rounds. [L of pure alcohol] */
const NOTHING_LPA = 0.005;

/** @param {any} card @returns {Expected} */
export const expectedOf = (card) => ({
  place: card.place ?? "", lpa_l: card.holds?.lpa_l ?? (card.holds ? null : 0), volume_l: card.holds?.volume_l ?? (card.holds ? null : 0),
  strength_pct: card.holds?.strength_pct ?? null, bottles: null,
});

/** @param {import("./stock.js").Goods} one @returns {Expected} */
export const expectedGoods = (one) => ({ place: "", lpa_l: lpaOf(one, one.on_hand), volume_l: null, strength_pct: one.label_strength_pct, bottles: one.on_hand });

/** @param {import("./stock.js").Goods} one @param {number} bottles */
const lpaOf = (one, bottles) => (one.label_strength_pct ? (bottles * one.size_l * one.label_strength_pct) / 100 : null);

/** @param {import("./stock.js").Goods} one @param {{cases?: number, bottles?: number}} values as they were read @returns {Counted["found"]} */
export function foundGoods(one, values) {
  const bottles = bottlesIn(one, values);
  return { state: "here", place: "", lpa_l: lpaOf(one, bottles), volume_l: null, strength_pct: one.label_strength_pct, bottles };
}

/** @param {Counted} counted @returns {Difference} */
export function differenceOf(counted) {
  const { found, expected } = counted;
  const of = (/** @type {Difference["sort"]} */ sort, lpa_l = 0, bottles = 0) => ({ counted, sort, lpa_l, bottles });
  if (found.state === "unknown" || !expected) return of("unknown");
  if (found.state === "nothing") return of("missing", -(expected.lpa_l ?? 0));
  if (found.bottles !== null && expected.bottles !== null) {
    const off = found.bottles - expected.bottles;
    return of(off ? sideOf(off) : "same", (found.lpa_l ?? 0) - (expected.lpa_l ?? 0), off);
  }
  if (found.lpa_l !== null) {
    const off = found.lpa_l - (expected.lpa_l ?? 0);
    if (Math.abs(off) >= NOTHING_LPA) return of(sideOf(off), off);
  }
  return found.place && expected.place && found.place !== expected.place ? of("elsewhere") : of("same");
}

/** @param {number} off @returns {"less"|"more"} */
const sideOf = (off) => (off < 0 ? "less" : "more");

/** @param {Counted[]} all @returns {{off: Difference[], same: Difference[]}} what is off, the missing first, then the largest */
export function differencesOf(all) {
  const every = all.map(differenceOf);
  const rank = (/** @type {Difference} */ one) => (one.sort === "missing" ? 0 : one.sort === "unknown" ? 1 : 2);
  return {
    off: every.filter((one) => one.sort !== "same").sort((a, b) => rank(a) - rank(b) || Math.abs(b.lpa_l) - Math.abs(a.lpa_l)),
    same: every.filter((one) => one.sort === "same"),
  };
}
