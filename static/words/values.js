// @ts-check
/** Parameters as values of Fluent, and the functions that a message may call on them. Twin of webapp/words/values.py. */
import { FluentType } from "../vendor/fluent/fluent.min.js";
import { strip } from "../kinds/strip.js";
import { symbol } from "../trade/units.js";

/** A parameter on its way into a sentence. */
export class Shown extends FluentType {
  /** @param {any} param @param {string} locale @param {(param: any) => string} say */
  constructor(param, locale, say) {
    super(param);
    this.locale = locale;
    this.say = say;
  }

  toString() {
    return this.say(this.value);
  }
}

/** Digits with the decimal sign of a language; what is no plain figure stays as typed. @param {string} text @param {string} locale */
export const figureText = (text, locale) => (/^[+-]?[0-9]*\.[0-9]+$/.test(text) ? text.replace(".", decimalSign(locale)) : text);

/** @type {Map<string, string>} */
const signs = new Map();

/** @param {string} locale */
function decimalSign(locale) {
  const known = signs.get(locale);
  if (known !== undefined) return known;
  const sign = new Intl.NumberFormat(locale, { numberingSystem: "latn" }).formatToParts(1.5).find((part) => part.type === "decimal")?.value ?? ".";
  signs.set(locale, sign);
  return sign;
}

/** @param {string} text @param {string | undefined} unit */
export const withUnit = (text, unit) => (unit ? strip(`${text} ${symbol(unit)}`) : text);

/** The unit that is said with a figure in a sentence: a gravity is spoken bare. @param {string | undefined} unit */
export const spokenUnit = (unit) => (unit === "SG" ? "" : unit);

const SHOWN = (/** @type {any} */ shown) => (shown instanceof Shown ? shown : null);
const FIGURE = (/** @type {any} */ shown) => SHOWN(shown)?.value?.figure;

/** @param {any} shown */
const bare = (shown) => (FIGURE(shown) === undefined ? String(shown) : figureText(FIGURE(shown), shown.locale));

/** @param {any} shown */
function unit(shown) {
  const param = SHOWN(shown)?.value;
  const hasUnit = param?.figure !== undefined || param?.from !== undefined;
  return hasUnit ? withUnit(bare(shown), param.unit) : String(shown);
}

/** @param {any} shown */
function plural(shown) {
  const value = FIGURE(shown) ?? SHOWN(shown)?.value;
  if (!/^-?[0-9]+(\.[0-9]+)?$/.test(String(value))) return "other";
  const decimals = String(value).split(".")[1]?.length ?? 0;
  return new Intl.PluralRules(shown.locale, { minimumFractionDigits: decimals, maximumFractionDigits: decimals }).select(Math.abs(Number(value)));
}

/** @param {any} shown */
const isoDay = (shown) => SHOWN(shown)?.value?.day ?? SHOWN(shown)?.value?.time?.slice(0, 10) ?? String(shown);
/** @param {any} shown */
const clock = (shown) => SHOWN(shown)?.value?.time?.slice(11, 16) ?? String(shown);
/** @param {any} shown */
const lower = (shown) => String(shown).toLowerCase();
/** @param {any} shown */
const capital = (shown) => String(shown).replace(/^./u, (first) => first.toUpperCase());

/** @type {Record<string, (args: any[]) => any>} */
export const FUNCTIONS = Object.fromEntries(
  Object.entries({ BARE: bare, UNIT: unit, PLURAL: plural, ISO_DAY: isoDay, CLOCK: clock, LOWER: lower, CAPITAL: capital })
    .map(([name, made]) => [name, (/** @type {any[]} */ [shown]) => made(shown)]),
);
