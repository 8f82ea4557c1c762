// @ts-check
/** The part of a card that a form needs: the context for readEntry, and the ghosts. */
import { formatAgo } from "../ui/format.js";

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
 * The last value of a field as it was read, and when.
 * @param {any} card or null @param {any} kind @param {any} field
 * @returns {{raw: string, unit: string, when: string, at: string}|null}
 */
export function lastOf(card, kind, field) {
  const last = field.ghost ? card?.last?.[kind.name]?.[field.name] : null;
  if (!last?.raw) return null;
  return { raw: last.raw, unit: last.unit ?? "", when: formatAgo(last.at), at: last.at };
}
