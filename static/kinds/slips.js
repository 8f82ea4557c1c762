// @ts-check
/** How a box may have been typed otherwise than it was meant: digits, point, sign, key, unit. Twin of webapp/kinds/slips.py. */
import { OutOfDomain } from "../trade/errors.js";
import { toCanonical } from "../trade/units.js";
import { showNumber } from "./digits.js";
import { figure, message } from "./message.js";

/**
 * @typedef {import("./kinds.js").Field} Field
 * @typedef {import("./message.js").Message} Message
 * @typedef {[raw: string, unit: string, message: Message, weight: number]} Slip as typed
 */

const FACTORS = [0.1, 10, 0.01, 100, 0.001, 1000]; // 1040 is often typed for 1.040
/** By digit, the keys beside it: on the keypad, on a number block, in a row. */
const BESIDE = ["89", "24", "135", "246", "1357", "2468", "3579", "468", "5790", "680"];
/** By digit, those that are taken for it in handwriting and on a worn dial. */
const LOOKS_LIKE = ["68", "74", "7", "85", "91", "63", "058", "12", "306", "4"];
/** How often it is this, against two digits swapped. */
const [SWAPPED, POINT, UNIT, KEY, SIGN, TWICE, MISREAD, LOST] = [1, 0.9, 0.9, 0.25, 0.25, 0.25, 0.25, 0.15];

/** All that a box may have been meant to hold, each figure once. @param {Field} spec @param {string} asTyped @param {number} typed in `unit` @param {string} unit @returns {Slip[]} */
export function slipsOf(spec, asTyped, typed, unit) {
  const text = showNumber(Math.abs(typed), spec.decimals);
  const sign = typed < 0 ? "-" : "";
  const with_ = (/** @type {string[]} */ raws, /** @type {string} */ id, /** @type {number} */ weight) =>
    raws.map((raw) => /** @type {Slip} */ ([sign + raw, unit, message(id), weight]));
  /** @type {Slip[]} */
  const all = [
    ...with_(swaps(text), "slip-swapped", SWAPPED),
    ...with_(FACTORS.map((factor) => showNumber(Math.abs(typed) * factor, spec.decimals)), "slip-point", POINT),
    ...spec.units.filter((other) => other !== unit).map((other) => /** @type {Slip} */ ([asTyped, other, inUnit(spec, typed, other, unit), UNIT])),
    ...with_(others(text, BESIDE), "slip-key", KEY),
    ...with_(twice(text), "slip-twice", TWICE),
    ...with_(others(text, LOOKS_LIKE), "slip-misread", MISREAD),
    ...with_(lost(asTyped.replace(/^[+-]+/, ""), text), "slip-lost", LOST),
    [sign ? text : `-${text}`, unit, message("slip-sign"), SIGN],
  ];
  const seen = new Set([sign + text + unit]);
  return all.filter(([raw, as]) => !seen.has(raw + as) && seen.add(raw + as));
}

/** Which unit was meant, or, of one that the field is not thought in, the figure in the field's own. @param {Field} spec @param {number} typed @param {string} other @param {string} unit */
function inUnit(spec, typed, other, unit) {
  const isOwn = other === spec.units[0];
  try {
    if (!isOwn) return message("slip-meant", { meant: figure(showNumber(toCanonical(typed, other), spec.decimals), spec.units[0]) });
  } catch (error) {
    if (!(error instanceof OutOfDomain)) throw error;
  }
  return message("slip-unit", { meant: { unit: other }, typed: { unit } });
}

/** Nobody types a leading zero. @param {string} raw */
const isTyped = (raw) => !/^0[0-9]/.test(raw);

/** Each pair of neighbouring digits swapped, over the point too. @param {string} text */
function swaps(text) {
  const places = [...text].flatMap((char, at) => (/[0-9]/.test(char) ? [at] : []));
  return places.slice(1).map((b, n) => {
    const chars = [...text];
    [chars[places[n]], chars[b]] = [chars[b], chars[places[n]]];
    return chars.join("");
  }).filter(isTyped);
}

/** In the place of each digit, one at a time, those that a table has for it. @param {string} text @param {string[]} table */
const others = (text, table) => [...text].flatMap((char, at) =>
  [...(table[Number.parseInt(char, 10)] ?? "")].map((other) => text.slice(0, at) + other + text.slice(at + 1))).filter(isTyped);

/** A digit that was not typed, in each place before the point. @param {string} asTyped @param {string} text */
function lost(asTyped, text) {
  const [, whole, rest] = /^([0-9]*)(.*)$/s.exec(/^[0-9]{1,9}([.][0-9]{1,4})?$/.test(asTyped) ? asTyped : text) ?? ["", "", ""];
  return [...`${whole} `].flatMap((_, at) => [..."0123456789"].map((digit) => whole.slice(0, at) + digit + whole.slice(at) + rest)).filter(isTyped);
}

/** One of two equal digits beside each other taken away. @param {string} text */
const twice = (text) => [...text].flatMap((char, at) => (char === text[at - 1] && /[0-9]/.test(char) ? [text.slice(0, at) + text.slice(at + 1)] : []));
