// @ts-check
/** The sentences that several pages share. */
import { formatDay, formatNumber } from "../ui/format.js";
import { shownInUnits } from "./inunits.js";
import { t } from "../words/t.js";

/** @param {number} waiting @returns {string} */
export function onTheSlate(waiting) {
  return waiting > 1 ? t("floor-words-on_the_slate_wait", { waiting }) : t("floor-words-on_the_slate_it");
}

/** @param {string} text */
export const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1);

/**
 * What a vessel holds, in two short lines.
 * @param {any} card @returns {[string, string]}
 */
export function holdsOf(card) {
  const held = card?.holds;
  if (!held) return [card?.title || "", t("floor-empty_by_the_book")];
  const name = held.name && held.name !== held.what ? t("floor-words-batch", { name: held.name }) : "";
  const first = capital([held.what, name].filter(Boolean).join(", "));
  const amount = held.volume_l != null ? shownInUnits(held.volume_l, "L", 0)
    : held.mass_kg != null ? shownInUnits(held.mass_kg, "kg", 0) : "";
  const strength = held.strength_pct != null ? t("floor-words-at", { strength_pct: shownInUnits(held.strength_pct, "pct_vol", 1) }) : "";
  const since = held.since && card.sort === "fermenter" ? formatDay(held.since) : "";
  return [first, [[amount, strength].filter(Boolean).join(" "), since].filter(Boolean).join(" · ")];
}

/** How long ago, in words that age well: "2 h ago". @param {Date|number|string} when @param {number} [now] [ms] */
export function agoWords(when, now = Date.now()) {
  const minutes = Math.round((now - new Date(when).getTime()) / 60_000);
  if (minutes < 2) return t("floor-words-just_now");
  if (minutes < 90) return t("floor-words-min_ago", { minutes });
  if (minutes < 36 * 60) return t("floor-words-h_ago", { minutes: Math.round(minutes / 60) });
  return t("floor-words-days_ago", { minutes: Math.round(minutes / 1440) });
}

/** Why a text is no mark of ours, and what to do. @param {import("../trade/marks.js").BadMark} error */
export const markWords = (error) => t("floor-bad_mark", { why: error.code, mark: error.bare });
