// @ts-check
/**
 * From an entry as typed to canonical figures and problems. Twin of webapp/kinds/read.py: the same values, figures,
 * problems and messages (tests/kinds/test_read_agreement.py). `loadKinds` first; `loadTable1` before a proof glass.
 */
import { hasTable1 } from "../trade/datafiles.js";
import { NotANumber, OutOfDomain } from "../trade/errors.js";
import { compute } from "../trade/sums.js";
import { canonicalUnit, parseNumber, toCanonical } from "../trade/units.js";
import { correctionOf, putRight } from "./corrections.js";
import { declared, figure as figureParam, message } from "./message.js";
import { reasonOf } from "./reasons.js";
import { checkRule, fill } from "./rules.js";
import { showNumber } from "./digits.js";
import { strip } from "./strip.js";

/**
 * @typedef {import("./kinds.js").Kind} Kind
 * @typedef {import("./kinds.js").Field} Field
 * @typedef {import("./kinds.js").Range} Range
 * @typedef {import("./message.js").Message} Message
 * @typedef {{of: string, low: number, high: number, near?: number | null}} Expected the field or figure that would do from low to high [canonical unit]
 * @typedef {{code: string, weight: "refuse" | "stop" | "ask" | "note", field: string, message: Message, expects?: Expected[]}} Problem what was meant follows from `expects` (meant.js)
 * @typedef {{
 *   og?: number | null, tare_kg?: number | null, last?: Record<string, number>,
 *   limits?: Record<string, {usual?: Range | null, possible?: Range | null}>,
 *   corrections?: Record<string, import("./corrections.js").Correction>,
 * }} Context what the card knows of the vessel, for this kind
 * @typedef {{
 *   entry: any, kind: Kind, values: Record<string, any>, figures: Record<string, number>, problems: Problem[],
 *   context: Context, mark: string,
 * }} Read values and figures are canonical
 */

const TEXT_MAX = 2000;

/**
 * @param {Kind} kind @param {any} entry at least `values`: field -> {raw, unit, instrument} @param {Context} [context]
 * @returns {Read}
 */
export function readEntry(kind, entry, context = {}) {
  /** @type {Problem[]} */
  const problems = [];
  /** @type {Record<string, any>} */
  const values = {};
  for (const spec of kind.fields) {
    const value = readField(kind, spec, entry.values[spec.name] ?? {}, context, problems);
    if (value !== null) values[spec.name] = value;
  }
  const figures = readFigures(kind, entry, values, context, problems);
  const read = { entry, kind, values, figures, problems, context, mark: entry.mark ?? "" };
  for (const rule of kind.rules) {
    const problem = checkRule(rule, read);
    if (problem) problems.push(problem);
  }
  return read;
}

/** @param {Read} read @returns {string} the one line a list shows of an entry */
export const summary = (read) => (read.kind.summary ? fill(read.kind.summary, read) : read.kind.title);

/** @param {Field} spec @param {Context} context @returns {[Range, Range]} usual and possible: the vessel's own before the kind's */
export function limitsOf(spec, context) {
  const own = context.limits?.[spec.name] ?? {};
  return [own.usual ?? spec.usual, own.possible ?? spec.possible];
}

/** The words on a field's box, as a parameter of a message. @param {Kind} kind @param {Field} spec */
const labelOf = (kind, spec) => declared("label", kind.name, spec.name);

/** @param {Kind} kind @param {Field} spec @param {any} given @param {Context} context @param {Problem[]} problems */
function readField(kind, spec, given, context, problems) {
  const label = labelOf(kind, spec);
  const refuse = (/** @type {string} */ code, more = {}, id = code) => {
    problems.push({ code, weight: "refuse", field: spec.name, message: message(id, { label, ...more }) });
    return null;
  };
  const raw = strip(String(given.raw || ""));
  if (!raw) return spec.required ? refuse("missing", { sort: spec.sort }, spec.label.endsWith("?") ? "missing-question" : "missing") : null;
  if (spec.sort === "number") return readNumber(kind, spec, raw, given, context, problems);
  if (spec.sort === "choice" && !spec.choices.some(([value]) => value === raw)) {
    return refuse("no_such_choice");
  }
  if (spec.sort === "yes_no" && raw !== "yes" && raw !== "no") return refuse("no_such_choice", {}, "no_such_choice-yes_no");
  if (spec.sort === "date" && !isDate(raw)) {
    return refuse("no_date", { typed: [...raw].slice(0, 20).join("") });
  }
  if (raw.length > TEXT_MAX && [...raw].length > TEXT_MAX) {
    return refuse("too_long", { most: TEXT_MAX });
  }
  return raw;
}

/** @param {Kind} kind @param {Field} spec @param {string} raw @param {any} given @param {Context} context @param {Problem[]} problems */
function readNumber(kind, spec, raw, given, context, problems) {
  const unit = given.unit || "";
  const correction = correctionOf(context.corrections, given);
  const found = (/** @type {string} */ code, /** @type {any} */ weight, /** @type {any} */ more, id = code) => {
    problems.push({ code, weight, field: spec.name, message: message(id, { label: labelOf(kind, spec), ...more }) });
    return null;
  };
  if (!spec.units.includes(unit)) {
    return found("no_such_unit", "refuse", { units: { list: spec.units.map((each) => ({ unit: each })) } });
  }
  try {
    const typed = parseNumber(raw);
    const value = toCanonical(correction ? putRight(typed, unit, spec.units[0], correction) : typed, unit);
    const problem = checkRange(kind, spec, value, typed, unit, context);
    if (problem) problems.push(problem);
    return value;
  } catch (error) {
    if (error instanceof NotANumber) return found("no_number", "refuse", { reason: reasonOf(error) });
    if (error instanceof OutOfDomain) return found("impossible", "stop", { reason: reasonOf(error) }, "impossible-outside");
    throw error;
  }
}

/** @param {Kind} kind @param {Field} spec @param {number} value @param {number} typed @param {string} unit @param {Context} context @returns {Problem | null} */
function checkRange(kind, spec, value, typed, unit, context) {
  const [usual, possible] = limitsOf(spec, context);
  const shownAs = measured(value, unit);
  const isImpossible = isOutside(shownAs, possible);
  const act = spec.danger.filter(([least]) => value >= least).length - 1;
  const [label, given] = [labelOf(kind, spec), figureParam(showNumber(typed, spec.decimals), unit)];
  if (act >= 0 && !isImpossible) {
    // A figure that may mean danger is never talked down: nothing smaller is offered beside it.
    const said = message("danger", { label, figure: given, act: declared("danger", kind.name, spec.name, String(act)) });
    return { code: "danger", weight: "ask", field: spec.name, message: said };
  }
  if (!isImpossible && !isOutside(shownAs, usual)) return null;
  const expects = [usualOf(spec, usual, context.last?.[spec.name])];
  if (isImpossible) {
    const said = message("impossible", { label, figure: given, possible: span(possible, spec) });
    return { code: "impossible", weight: "stop", field: spec.name, message: said, expects };
  }
  const said = message("unusual", { label, figure: given, usual: span(usual, spec) });
  return { code: "unusual", weight: "ask", field: spec.name, message: said, expects };
}

/** What is usual in a field: near its last value, and not above it where it can only fall. @param {Field} spec @param {Range} usual @param {number | null | undefined} last @returns {Expected} */
function usualOf(spec, [low, high], last) {
  const most = last != null && spec.falls != null ? last + spec.falls : Infinity;
  return { of: spec.name, low: low ?? -Infinity, high: Math.min(high ?? Infinity, most), near: last };
}

/** A canonical value as ranges look at it: a proof reading is about twice the percentage; good enough to ask, never used as a strength. @param {number} value @param {string} unit */
export const measured = (value, unit) => (unit === "proof_glass" ? value / 2 : value);

/** @param {number} value @param {Range} range */
const isOutside = (value, [low, high]) => (low !== null && value < low) || (high !== null && value > high);

/** @param {Range} range @param {Field} spec */
function span([low, high], spec) {
  const shown = (/** @type {number | null} */ end) => (end === null ? null : showNumber(end, null));
  return { from: shown(low), to: shown(high), unit: spec.units[0] };
}

/** @param {Kind} kind @param {any} entry @param {Record<string, any>} values @param {Context} context @param {Problem[]} problems @param {Set<string>} [only] */
function readFigures(kind, entry, values, context, problems, only) {
  /** @type {Record<string, number>} */
  const figures = {};
  for (const figure of kind.figures) {
    if (figure.name in figures || only?.has(figure.name) === false || !isTypedSo(figure, entry, values)) continue;
    if (figure.given && figure.given in values) {
      figures[figure.name] = values[figure.given];
      continue;
    }
    /** @type {Record<string, any>} */
    const inputs = {};
    for (const [name, sources] of Object.entries(figure.inputs)) inputs[name] = inputOf(sources, entry, values, figures, context);
    // Table 1 comes on demand; until then the figure is simply not there yet.
    if (!hasTable1() && Object.values(inputs).some((input) => input?.unit === "proof_glass")) continue;
    try {
      const found = compute(figure.sum, inputs);
      if (found !== null) figures[figure.name] = found;
    } catch (error) {
      if (!(error instanceof OutOfDomain)) throw error;
      if (figure.only_shown) continue;
      const said = message("outside_tables", { label: declared("figure", kind.name, figure.name), reason: reasonOf(error) });
      problems.push({ code: "outside_tables", weight: "stop", field: firstField(kind, figure), message: said });
    }
  }
  return figures;
}

/**
 * The figures of an entry as they would be with these canonical values.
 * @param {Kind} kind @param {any} entry @param {Record<string, any>} values @param {Context} context
 * @param {Set<string>} [only] the names of those that are wanted, and of those that they are worked out from
 */
export const figuresOf = (kind, entry, values, context, only) => readFigures(kind, entry, values, context, [], only);

/** @param {import("./kinds.js").Figure} figure @param {any} entry @param {Record<string, any>} values */
function isTypedSo({ typed }, entry, values) {
  if (!typed) return true;
  const first = typed[0].split("|").find((name) => name in values);
  return first !== undefined && entry.values[first].unit === typed[1];
}

/** @param {string[]} sources @param {any} entry @param {Record<string, any>} values @param {Record<string, number>} figures @param {any} context */
function inputOf(sources, entry, values, figures, context) {
  for (const source of sources) {
    if (source.startsWith("=")) return Number(source.slice(1));
    if (source.startsWith("@")) {
      if (["number", "string"].includes(typeof context[source.slice(1)])) return context[source.slice(1)];
    } else if (source in figures) {
      return figures[source];
    } else if (typeof values[source] === "number") {
      const unit = entry.values[source].unit || "";
      return unit ? { value: values[source], unit: canonicalUnit(unit) } : values[source];
    }
  }
  return null;
}

/** @param {Kind} kind @param {import("./kinds.js").Figure} figure */
function firstField(kind, figure) {
  const names = Object.values(figure.inputs).flat();
  return names.find((name) => kind.fields.some((field) => field.name === name)) ?? "";
}

/** @param {string} raw */
function isDate(raw) {
  const parts = /^(\d{4})-(\d\d)-(\d\d)$/.exec(raw);
  if (!parts) return false;
  const [year, month, day] = parts.slice(1).map(Number);
  return year > 0 && month >= 1 && month <= 12 && day >= 1 && day <= new Date(Date.UTC(2000 + (year % 400), month, 0)).getUTCDate();
}
