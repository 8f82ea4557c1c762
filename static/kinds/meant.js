// @ts-check
/** What was meant? From what a question expected to at most three figures to tap. Twin of webapp/kinds/meant.py. */
import { NotANumber, OutOfDomain } from "../trade/errors.js";
import { fromCanonical, parseNumber, toCanonical } from "../trade/units.js";
import { correctionOf, putRight } from "./corrections.js";
import { showNumber } from "./digits.js";
import { declared, message } from "./message.js";
import { figuresOf, limitsOf, measured } from "./read.js";
import { slipsOf } from "./slips.js";

/**
 * @typedef {import("./kinds.js").Kind} Kind
 * @typedef {import("./kinds.js").Field} Field
 * @typedef {import("./message.js").Message} Message
 * @typedef {import("./read.js").Read} Read
 * @typedef {import("./read.js").Expected} Expected
 * @typedef {{field: string, raw: string, unit: string}} Box an empty raw leaves it empty
 * @typedef {Box & {message: Message, also?: Box[]}} Suggestion
 * @typedef {{code: string, field: string, weight: string, expects?: Expected[]}} Asked
 * @typedef {{weight: number, boxes: Box[], message: Message, fits: boolean[]}} Likely
 */

const MOST = 3;
const TRIED_MOST = 6;
const LEAST = 0.2;
const SPEAKS_UP = 0.5;
const BY_RANGE = ["unusual", "impossible"];
/** @type {Record<string, [string, Record<string, string>]>} */
const OTHER_BOX = {
  strength: ["glass", { pct_vol: "pct_glass", proof: "proof_glass" }], glass: ["strength", { pct_glass: "pct_vol", proof_glass: "proof" }],
  cases: ["bottles", {}], bottles: ["cases", {}],
};
const [BOX, NET, ULLAGE, EXCHANGED, BY_CASE] = [0.7, 0.7, 0.6, 0.5, 0.6];

/**
 * For each question the figures that may have been meant, the likeliest first.
 * @param {Read} read @param {Asked[]} asked the questions to the entry as read @param {(entry: any) => Asked[]} judge those to it as it would be
 * @returns {Suggestion[][]}
 */
export function offers(read, asked, judge) {
  const others = namesOf(asked);
  /** @type {Likely[][]} */
  const kept = asked.map(() => []);
  for (const one of likeliest(read, asked)) {
    const then = namesOf(judge(withBoxes(read.entry, one.boxes)));
    const anew = [...then].filter((name) => !others.has(name)).length;
    asked.forEach((question, n) => {
      if (one.fits[n] && !then.has(nameOf(question))) kept[n].push({ ...one, weight: one.weight * SPEAKS_UP ** anew });
    });
  }
  return kept.map((found) => {
    const ranked = found.sort(byWeight);
    return ranked.slice(0, MOST).filter((one) => one.weight >= ranked[0].weight * LEAST).map(({ boxes: [first, ...also], message: why }) =>
      ({ ...first, message: why, ...(also.length ? { also } : {}) }));
  });
}

/** @param {Likely} a @param {Likely} b */
const byWeight = (a, b) => b.weight - a.weight;

/** @param {Asked[]} questions */
const namesOf = (questions) => new Set(questions.filter(({ weight }) => weight === "ask" || weight === "stop").map(nameOf));

/** @param {Asked} asked */
const nameOf = ({ code, field }) => (BY_RANGE.includes(code) ? `${code}:${field}` : code);

/** The entry with these boxes filled in or left empty; instruments and all else stay. @param {any} entry @param {Box[]} boxes */
export function withBoxes(entry, boxes) {
  const values = { ...entry.values };
  for (const { field, raw, unit } of boxes) {
    if (raw) values[field] = { ...values[field], raw, ...(unit ? { unit } : {}) };
    else delete values[field];
  }
  return { ...entry, values };
}

/** What is worth judging, the likeliest first, each entry once. @param {Read} read @param {Asked[]} asked */
function likeliest(read, asked) {
  const made = asked.flatMap((one) => (one.expects ?? []).map(({ of }) => madeOf(read.kind, of)));
  const fields = new Set(made.flatMap((one) => [...one.fields]));
  const figures = new Set(made.flatMap((one) => [...one.figures]));
  /** @type {Map<string, Likely>} */
  const found = new Map();
  for (const [weight, boxes, why] of ways(read, fields).sort(([a], [b]) => b - a)) {
    const key = boxes.map((box) => JSON.stringify(box)).sort().join();
    const values = found.has(key) ? null : valuesWith(read, boxes);
    if (!values) continue;
    const there = withBoxes(read.entry, boxes);
    const known = { ...asMeasured(values, there), ...figuresOf(read.kind, there, values, read.context, figures) };
    const near = asked.map(({ expects = [] }) => expects.map((each) => closeness(known, each)));
    const fits = near.map((some) => some.some(([, does]) => does));
    if (!fits.some(Boolean)) continue;
    const all = near.filter((some) => some.length).reduce((product, some) => product * Math.max(...some.map(([far]) => far)), 1);
    found.set(key, { weight: weight * all, boxes, message: why, fits });
  }
  const ranked = [...found.values()].sort(byWeight);
  return ranked.slice(0, TRIED_MOST).filter((one) => one.weight >= ranked[0].weight * LEAST);
}

/** Canonical values as ranges look at them. @param {Record<string, any>} values @param {any} entry */
const asMeasured = (values, entry) => Object.fromEntries(Object.entries(values).map(([name, value]) =>
  [name, typeof value === "number" ? measured(value, entry.values[name].unit) : value]));

/** The fields and the figures that a figure is worked out from. @param {Kind} kind @param {string} name */
function madeOf(kind, name) {
  /** @type {Set<string>} */
  const fields = new Set();
  /** @type {Set<string>} */
  const figures = new Set();
  const open = [name];
  for (let one = open.pop(); one !== undefined; one = open.pop()) {
    if (fieldOf(kind, one)) {
      fields.add(one);
    } else if (!figures.has(one)) {
      figures.add(one);
      for (const figure of kind.figures) {
        if (figure.name === one) open.push(...Object.values(figure.inputs).flat(), ...(figure.given ? [figure.given] : []));
      }
    }
  }
  return { fields, figures };
}

/** @param {Kind} kind @param {string} name */
const fieldOf = (kind, name) => kind.fields.find((field) => field.name === name);

/** How near a figure comes to what was expected of it, 0 to 1, and whether it would do. @param {Record<string, any>} known @param {Expected} expected @returns {[number, boolean]} */
function closeness(known, { of, low, high, near }) {
  const value = known[of];
  if (typeof value !== "number") return [0, false];
  const centre = near ?? (low + high) / 2;
  const width = Math.max(high - centre, centre - low);
  const does = low <= value && value <= high;
  return [Number.isFinite(width) ? 1 / (1 + ((value - centre) / (width || 1)) ** 2) : 1, does];
}

/** What may have been meant: how often it is so, the boxes as they would be, what happened. @param {Read} read @param {Set<string>} fields @returns {[number, Box[], Message][]} */
function ways(read, fields) {
  /** @type {Map<string, number>} */
  const typed = new Map(read.kind.fields.flatMap((spec) => {
    const number = typedIn(read, spec);
    return number === null ? [] : [/** @type {[string, number]} */ ([spec.name, number])];
  }));
  return read.kind.fields.filter(({ name }) => fields.has(name) && typed.has(name) && name !== "density").flatMap((spec) => {
    const number = /** @type {number} */ (typed.get(spec.name));
    const unit = read.entry.values[spec.name].unit;
    return [
      ...slipsOf(spec, textOf(read, spec.name), number, unit).map(([raw, as, why, weight]) => /** @type {[number, Box[], Message]} */ ([weight, [{ field: spec.name, raw, unit: as }], why])),
      ...otherBoxes(read, spec, typed, unit),
      ...reckoned(read, spec, number, unit).map(([weight, value, id]) =>
        /** @type {[number, Box[], Message]} */ ([weight, [{ field: spec.name, raw: showNumber(value, spec.decimals), unit }], message(id)])),
    ];
  });
}

/** The figure in a box that is empty, and exchanged with that of each other box. @param {Read} read @param {Field} spec @param {Map<string, number>} typed @param {string} unit @returns {[number, Box[], Message][]} */
function otherBoxes(read, spec, typed, unit) {
  const raw = textOf(read, spec.name);
  const [name, inIt] = OTHER_BOX[spec.name] ?? ["", {}];
  const other = typed.has(name) ? undefined : fieldOf(read.kind, name);
  const label = (/** @type {Field} */ field) => ({ label: declared("label", read.kind.name, field.name) });
  /** @type {[number, Box[], Message][]} */
  const found = [];
  if (other) found.push([BOX, [{ field: name, raw, unit: inIt[unit] ?? other.units[0] }, { field: spec.name, raw: "", unit: "" }], message("slip-box", label(other))]);
  for (const each of read.kind.fields) {
    if (!typed.has(each.name) || each.name === spec.name) continue;
    const its = read.entry.values[each.name].unit;
    const boxes = [{ field: spec.name, raw: textOf(read, each.name), unit: spec.units.includes(its) ? its : unit }, { field: each.name, raw, unit: each.units.includes(unit) ? unit : its }];
    found.push([EXCHANGED, boxes, message("slip-exchanged", label(each))]);
  }
  return found;
}

/** Figures that follow from another one: net for gross, what is empty for what is full, cases for bottles. @param {Read} read @param {Field} spec @param {number} typed @param {string} unit @returns {[number, number, string][]} */
function reckoned(read, spec, typed, unit) {
  const { tare_kg: listed, capacity_l: capacity } = /** @type {any} */ (read.context);
  const tare = read.values.tare ?? listed;
  /** @type {[number, number, string][]} */
  const found = [];
  if (tare && spec.name === "gross") found.push([NET, typed + fromCanonical(tare, unit), "slip-net"]);
  if (tare && spec.name === "net_weight") found.push([NET, typed - fromCanonical(tare, unit), "slip-gross"]);
  if (capacity && spec.instrument === "dip") found.push([ULLAGE, fromCanonical(capacity, unit) - typed, "slip-ullage"]);
  if (read.values.per_case && ["filled", "bottles"].includes(spec.name)) found.push([BY_CASE, typed * read.values.per_case, "slip-cases"]);
  return found;
}

/** @param {Read} read @param {Field} spec @returns {number | null} */
function typedIn(read, spec) {
  const given = read.entry.values[spec.name];
  if (spec.sort !== "number" || !given?.raw || !spec.units.includes(given.unit)) return null;
  return orNull(() => parseNumber(given.raw));
}

/** @param {Read} read @param {string} name */
const textOf = (read, name) => read.entry.values[name].raw.trim();

/** The canonical values with these boxes, or null where one of them cannot be. @param {Read} read @param {Box[]} boxes @returns {Record<string, any> | null} */
function valuesWith(read, boxes) {
  const values = { ...read.values };
  for (const { field, raw, unit } of boxes) {
    const spec = fieldOf(read.kind, field);
    if (!raw || !spec) {
      delete values[field];
      continue;
    }
    const correction = correctionOf(read.context.corrections, read.entry.values[field] ?? {});
    const value = orNull(() => {
      const number = parseNumber(raw);
      return toCanonical(correction ? putRight(number, unit, spec.units[0], correction) : number, unit);
    });
    const [low, high] = limitsOf(spec, read.context)[1];
    if (value === null || measured(value, unit) < (low ?? -Infinity) || measured(value, unit) > (high ?? Infinity)) return null;
    values[field] = value;
  }
  return values;
}

/** @param {() => number} make @returns {number | null} */
function orNull(make) {
  try {
    return make();
  } catch (error) {
    if (error instanceof OutOfDomain || error instanceof NotANumber) return null;
    throw error;
  }
}
