// @ts-check
/** Parameters as values of Fluent, and the functions that a message may call on them. Twin of webapp/words/values.py. */
import { FluentType } from "../vendor/fluent/fluent.min.js";
import { strip } from "../kinds/strip.js";
import { textIn, unitIn, unitsChoice } from "../trade/houseunits.js";
import { symbol } from "../trade/units.js";

/** A parameter on its way into a sentence; `isTyped` where its figures keep the units they have. */
export class Shown extends FluentType {
  /** @param {any} param @param {string} locale @param {(param: any, isTyped: boolean) => string} say */
  constructor(param, locale, say, isTyped = false) {
    super(param);
    this.locale = locale;
    this.say = say;
    this.isTyped = isTyped;
  }

  toString() {
    return this.say(this.value, this.isTyped);
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
const bare = (shown, isApart = false) => (FIGURE(shown) === undefined ? String(shown)
  : figureText(shown.isTyped ? FIGURE(shown) : textIn(FIGURE(shown), shown.value.unit, isApart), shown.locale));

/** @param {any} shown */
const apart = (shown) => bare(shown, true);

/** @param {any} shown */
function unit(shown) {
  const param = SHOWN(shown)?.value;
  const hasUnit = param?.figure !== undefined || param?.from !== undefined;
  return hasUnit ? withUnit(bare(shown), shown.isTyped ? param.unit : unitIn(param.unit)) : String(shown);
}

/** @param {any} shown @param {any} [param] */
const asTyped = (shown, param = shown.value) => new Shown(param, shown.locale, shown.say, true);

/** What was typed; a strength that was worked out stands beside the figures of a gauge in bare percent. @param {any} shown */
function typed(shown) {
  const list = SHOWN(shown)?.value?.list;
  if (!list || unitsChoice() !== "us") return SHOWN(shown) ? asTyped(shown) : shown;
  return asTyped(shown, { list: list.map((/** @type {any} */ one) => (one.unit === "pct" ? { figure: textIn(one.figure, "pct_vol"), unit: "proof" } : one)) });
}

/** @param {any} shown a range @param {any} figure */
function like(shown, figure) {
  const [span, read] = [SHOWN(shown)?.value, SHOWN(figure)?.value];
  if (unitsChoice() !== "us" || !read) return shown;
  if (span.unit === read.unit) return asTyped(shown);
  if (read.unit !== "proof_glass") return shown;
  const end = (/** @type {string|null} */ text) => text && textIn(text, "pct_vol", true);
  return asTyped(shown, { from: end(span.from), to: end(span.to), unit: read.unit });
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
  Object.entries({ BARE: (/** @type {any} */ shown) => bare(shown), UNIT: unit, PLURAL: plural, ISO_DAY: isoDay, CLOCK: clock, LOWER: lower, CAPITAL: capital,
    APART: apart, TYPED: typed, LIKE: like, UNITS: unitsChoice })
    .map(([name, made]) => [name, (/** @type {any[]} */ args) => /** @type {any} */ (made)(...args)]),
);
