// @ts-check
/**
 * A sentence before it is made: the id of a message in the catalogue, and the parameters that stand in it. Twin of
 * webapp/kinds/message.py; on the phone a parameter is the JSON that the book keeps of it.
 */

/**
 * @typedef {string | number | null | {[name: string]: any}} Param a text, a whole number, or {figure, unit}, {from, to, unit},
 *   {unit}, {time, seen}, {day}, {month}, {span}, {declared}, {list}, or a message
 * @typedef {{id: string, params: Record<string, Param>}} Message
 */

/** @param {string} id @param {Record<string, Param>} [params] @returns {Message} */
export const message = (id, params = {}) => ({ id, params });

/** A figure with its digits as they are to be shown. @param {string} text @param {string} [unit] @returns {Param} */
export const figure = (text, unit = "") => (unit ? { figure: text, unit } : { figure: text });

/** Words that a kind declares: ("label", kind, field), ("choice", kind, field, value), ... @param {string[]} path @returns {Param} */
export const declared = (...path) => ({ declared: path });
