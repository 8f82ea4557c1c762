// @ts-check
/** The sentences that several pages share. */
import { formatDay, formatNumber } from "../ui/format.js";
import { shownInUnits } from "./inunits.js";

/** @param {number} count @param {string} one @param {string} many */
export const some = (count, one, many) => (count === 1 ? `1 ${one}` : `${formatNumber(count)} ${many}`);

/** @param {number} waiting @returns {string} */
export function onTheSlate(waiting) {
  return waiting > 1 ? `On the slate. ${formatNumber(waiting)} wait on this phone.` : "On the slate. It waits on this phone.";
}

/** @param {string} text */
export const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1);

/**
 * What a vessel holds, in two short lines.
 * @param {any} card @returns {[string, string]}
 */
export function holdsOf(card) {
  const held = card?.holds;
  if (!held) return [card?.title || "", "empty, by the book"];
  const name = held.name && held.name !== held.what ? `batch ${held.name}` : "";
  const first = capital([held.what, name].filter(Boolean).join(", "));
  const amount = held.volume_l != null ? shownInUnits(held.volume_l, "L", 0)
    : held.mass_kg != null ? shownInUnits(held.mass_kg, "kg", 0) : "";
  const strength = held.strength_pct != null ? `at ${shownInUnits(held.strength_pct, "pct_vol", 1)}` : "";
  const since = held.since && card.sort === "fermenter" ? formatDay(held.since) : "";
  return [first, [[amount, strength].filter(Boolean).join(" "), since].filter(Boolean).join(" · ")];
}

/** How long ago, in words that age well: "2 h ago". @param {Date|number|string} when @param {number} [now] [ms] */
export function agoWords(when, now = Date.now()) {
  const minutes = Math.round((now - new Date(when).getTime()) / 60_000);
  if (minutes < 2) return "just now";
  if (minutes < 90) return `${minutes} min ago`;
  if (minutes < 36 * 60) return `${Math.round(minutes / 60)} h ago`;
  return `${Math.round(minutes / 1440)} days ago`;
}

