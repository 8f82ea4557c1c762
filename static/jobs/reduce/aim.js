// @ts-check
/** The strength that a tank goes down to, as the book or the cards know it, and where that comes from. */
import { formatDate } from "../../ui/format.js";
import { t } from "../../words/later.js";

/** @typedef {{pct: number, words: string}} Aim `pct` % vol at 20 °C */

/** @param {any} card of the tank @param {any[]} cards of the house @returns {Aim|null} */
export function aimOf(card, cards) {
  if (card.planned?.target_pct) return { pct: card.planned.target_pct, words: "" }; // the plan has a line of its own
  if (card.holds?.label_strength_pct) return { pct: card.holds.label_strength_pct, words: t("floor-aim-target_as_its_label") };
  const since = Date.parse(card.holds?.since ?? "") || 0;
  const own = lastAim(card);
  if (own && own.at >= since) return { pct: own.pct, words: t("floor-aim-target_as_aimed_at", { date: formatDate(own.at) }) };
  const [other] = cards.flatMap((one) => { const aim = one.sort === "tank" ? lastAim(one) : null; return aim ? [{ ...aim, name: one.name || one.mark }] : []; }).sort((a, b) => b.at - a.at);
  return other ? { pct: other.pct, words: t("floor-aim-target_as_last_in", { name: other.name, other: formatDate(other.at) }) } : null;
}

/** @param {any} card @returns {{pct: number, at: number}|null} */
function lastAim(card) {
  const found = [card.last.reduce?.target, card.last.bottling_gauge?.label_strength].filter((one) => one?.value > 0).map((one) => ({ pct: one.value, at: Date.parse(one.at) }));
  return found.sort((a, b) => b.at - a.at)[0] ?? null;
}
