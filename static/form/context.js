// @ts-check
/** The part of a card that a form needs: the context for readEntry, and the ghosts. */
import { formatAgo } from "../ui/format.js";

const DAY_MS = 86_400_000;

/** @param {any} card or null @param {string} kindName @returns {any} context as readEntry takes it */
export function contextOf(card, kindName) {
  if (!card) return {};
  const last = Object.entries(card.last?.[kindName] ?? {});
  return {
    ...card.context,
    last: Object.fromEntries(last.map(([name, value]) => [name, /** @type {any} */ (value).value])),
    limits: card.limits?.[kindName] ?? {},
  };
}

/**
 * The last value of a field as it was read, and when. A figure of another fill or run tells nothing of this one; a receiver or a
 * choice may well be as last time.
 * @param {any} card or null @param {any} kind @param {any} field
 * @returns {{raw: string, unit: string, when: string, at: string}|null}
 */
export function lastOf(card, kind, field) {
  const last = field.ghost ? card?.last?.[kind.name]?.[field.name] : null;
  if (!last?.raw || (field.sort === "number" && !isOfThisFill(card, last.at))) return null;
  return { raw: last.raw, unit: last.unit ?? "", when: formatAgo(last.at), at: last.at };
}

/** Where the book knows of no fill or run, what was read within a day may be of the one that it has not heard of yet. @param {any} card @param {string} at */
function isOfThisFill(card, at) {
  const since = card.sort === "still" ? card.run?.started_at : card.holds?.since;
  return Date.parse(at) >= (since ? Date.parse(since) : Date.now() - DAY_MS);
}
