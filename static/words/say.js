// @ts-check
/** A message becomes a sentence of the phone's language. Twin of webapp/words/say.py; tests hold both equal. */
import { textIn, unitIn } from "../trade/houseunits.js";
import { symbol } from "../trade/units.js";
import { catalogue, hasMessage, patternOf } from "./catalogue.js";
import { declaredWords, isWorkedOut, ruleWords } from "./declared.js";
import { isolate } from "./isolate.js";
import { Shown, figureText, spokenUnit, withUnit } from "./values.js";

/** @typedef {import("../kinds/message.js").Message} Message */
/** @typedef {import("../kinds/message.js").Param} Param */

const NEAR_DAYS = 60; // a day this long ago is said without its year
const DAY_MS = 86_400_000;

/** The sentence that a message makes. @param {Message} message @returns {string} */
export function sentence({ id, params }) {
  const pattern = patternOf(id);
  if (pattern !== undefined) return typeof pattern === "string" ? pattern : catalogue().bundle.formatPattern(pattern, valuesOf(params));
  const words = ruleWords(id);
  if (words !== undefined) return words.replace(/\{(\w+)\}/g, (whole, name) => (name in params ? shown(params[name], !isWorkedOut(id, name)) : whole));
  return id === "no_such_message" ? id : sentence({ id: "no_such_message", params: { id } });
}

/**
 * What a question, a problem or a suggestion says: its message where this phone knows it, else the words that the book
 * made of it; closed off where a name in it runs from right to left. @param {{message?: Message | null, words?: string}} said @returns {string}
 */
export function say({ message, words = "" }) {
  if (!message) return words;
  return words && !knows(message.id) ? words : isolate(sentence(message));
}

/** @param {string} id */
const knows = (id) => hasMessage(id) || ruleWords(id) !== undefined;

/** Return a parameter as it stands in a sentence. @param {Param} param @param {boolean} [isTyped] its figures keep the units they have @returns {string} */
export function shown(param, isTyped = false) {
  if (param === null || typeof param !== "object") return String(param);
  const [unit, text] = isTyped || !param.unit ? [param.unit, same] : [unitIn(param.unit), (/** @type {string} */ figure) => textIn(figure, param.unit)];
  if ("figure" in param) return withUnit(figureText(text(param.figure), catalogue().locale), spokenUnit(unit));
  if ("from" in param) return rangeText(param.from && text(param.from), param.to && text(param.to));
  if ("time" in param) return timeText(param);
  if ("day" in param) return dated(param.day, { day: "numeric", month: "long", year: "numeric" });
  if ("month" in param) return dated(`${param.month}-01`, { month: "long", year: "numeric" });
  if ("span" in param) return param.span.map((/** @type {[number, string]} */ [many, unit]) => sentence({ id: `span-${unit}`, params: { many } })).join(" ");
  if ("declared" in param) return declaredWords(param.declared);
  if ("list" in param) return param.list.map((/** @type {Param} */ one) => shown(one, isTyped)).join(", ");
  if ("unit" in param) return symbol(param.unit);
  return sentence(/** @type {Message} */ (param));
}

/** @param {Record<string, Param>} params */
function valuesOf(params) {
  const { locale } = catalogue();
  return Object.fromEntries(Object.entries(params).map(([name, value]) => [name, typeof value === "string" ? value : new Shown(value, locale, shown)]));
}

const same = (/** @type {string} */ text) => text;

/** @param {string | null} from @param {string | null} to */
function rangeText(from, to) {
  const [low, high] = [{ figure: from }, { figure: to }];
  if (from === null) return sentence({ id: "range-up_to", params: { high } });
  if (to === null) return sentence({ id: "range-or_more", params: { low } });
  return sentence({ id: "range-between", params: { low, high } });
}

/** @param {any} time */
function timeText({ time, seen }) {
  const [day, clock] = [time.slice(0, 10), time.slice(11, 16)];
  const days = Math.round((Date.parse(`${seen}T00:00Z`) - Date.parse(`${day}T00:00Z`)) / DAY_MS);
  if (days === 0) return sentence({ id: "time-same_day", params: { clock } });
  if (days === 1) return sentence({ id: "time-day_before", params: { clock } });
  if (days < 0 || days >= NEAR_DAYS) return dated(day, { day: "numeric", month: "long", year: "numeric" });
  return sentence({ id: "time-day", params: { day: dated(day, { day: "numeric", month: "long" }), clock } });
}

/** @param {string} day @param {Intl.DateTimeFormatOptions} parts */
const dated = (day, parts) => new Intl.DateTimeFormat(catalogue().locale, { ...parts, timeZone: "UTC" }).format(new Date(`${day}T00:00Z`));
