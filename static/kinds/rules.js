// @ts-check
/** Checks between the fields of one entry, and sentences that name what was read. With read.js the twin of webapp/kinds/read.py. */
import { textIn, unitIn } from "../trade/houseunits.js";
import { symbol } from "../trade/units.js";
import { declared, figure as figureParam, message } from "./message.js";
import { fixedEven } from "./digits.js";
import { strip } from "./strip.js";

/**
 * @typedef {import("./read.js").Read} Read
 * @typedef {import("./kinds.js").Rule} Rule
 */

/** @param {Rule} rule @param {Read} read @returns {import("./read.js").Problem | null} */
export function checkRule(rule, read) {
  const [left, right] = [sideOf(rule.left, read), sideOf(rule.right, read)];
  if (!isBroken(rule, left, right, read)) return null;
  const weight = /** @type {any} */ (rule.weight);
  const params = Object.fromEntries([...rule.words.matchAll(/\{(\w+)\}/g)].map(([, name]) => [name, paramOf(name, read)]));
  const said = message(`rule-${read.kind.name}-${rule.code}`, params);
  const expects = exchanged(rule, read);
  return { code: rule.code, weight, field: rule.right.split("|")[0], message: said, ...(expects.length ? { expects } : {}) };
}

/** What two figures in the wrong order would be if each stood in the box of the other. @param {Rule} rule @param {Read} read */
function exchanged(rule, read) {
  const [left, right] = [read.values[rule.left], read.values[rule.right]];
  if (!["lt", "le"].includes(rule.op) || typeof left !== "number" || typeof right !== "number" || left === right) return [];
  return [{ of: rule.left, low: right, high: right }, { of: rule.right, low: left, high: left }];
}

/** @param {Rule} rule @param {any} left @param {any} right @param {Read} read */
function isBroken(rule, left, right, read) {
  if (rule.op === "any_of") return left === null && right === null;
  if (rule.op === "needs") return left !== null && left !== 0 && right === null;
  if (left === null || right === null) return false;
  if (rule.op === "lt") return !(left < right);
  if (rule.op === "le") return !(left <= right);
  return left === right && !isNear(rule, read);
}

/** @param {string} name a field or figure; `event=heads_cut|hearts_cut` is true where the field holds one of these;
 * `volume|net_weight` is the first of them that is there @param {Read} read */
function sideOf(name, read) {
  const [field, wanted] = name.split("=", 2);
  if (wanted === undefined) return name.split("|").map((each) => valueOf(each, read)).find((value) => value !== null) ?? null;
  return wanted.split("|").includes(read.values[field]) || null;
}

/** @param {Rule} rule @param {Read} read */
function isNear(rule, read) {
  if (!rule.near) return false;
  const [name, centre, half] = rule.near;
  const value = valueOf(name, read);
  return value === null || Math.abs(value - centre) <= half;
}

/** @param {string} name @param {Read} read */
const valueOf = (name, read) => read.figures[name] ?? read.values[name] ?? null;

/** The sentence with `{field}` replaced by what was read, or by the figure. @param {string} words @param {Read} read */
export const fill = (words, read) => words.replace(/\{(\w+)\}/g, (_, name) => shown(name, read)).replace(/(, |: | at | to | from )\u2013(?=$|,| at | to | from )/g, "");

/** A field as typed with its unit, or a figure rounded with its unit, as a parameter of a message. @param {string} name @param {Read} read */
function paramOf(name, read) {
  const given = read.entry.values[name];
  const spec = read.kind.fields.find((field) => field.name === name);
  if (given?.raw) {
    if (spec?.sort === "choice" || spec?.sort === "yes_no") return declared("choice", read.kind.name, name, given.raw);
    return figureParam(String(given.raw), spec?.units.includes(given.unit) ? given.unit : "");
  }
  const figure = read.kind.figures.find((one) => one.name === name);
  return figure && name in read.figures ? figureParam(fixedEven(read.figures[name], figure.decimals), figure.unit) : "–";
}

/** A field as typed with its unit, or a figure rounded with its unit, for sentences. @param {string} name @param {Read} read */
export function shown(name, read) {
  const given = read.entry.values[name];
  if (given?.raw) {
    const spec = read.kind.fields.find((field) => field.name === name);
    if (spec?.sort === "choice" || spec?.sort === "yes_no") {
      return spec.choices.find(([value]) => value === given.raw)?.[1] ?? given.raw;
    }
    return given.unit ? strip(`${given.raw} ${symbol(given.unit)}`) : String(given.raw);
  }
  const figure = read.kind.figures.find((one) => one.name === name);
  if (!figure || !(name in read.figures)) return "–";
  return `${textIn(fixedEven(read.figures[name], figure.decimals), figure.unit)} ${symbol(unitIn(figure.unit))}`;
}
