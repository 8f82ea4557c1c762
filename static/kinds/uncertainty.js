// @ts-check
/** The figures of an entry with their uncertainty. Twin of webapp/kinds/uncertainty.py, which says why. */
import { data } from "../trade/datafiles.js";
import { dipLimitsCm } from "../trade/dipping.js";
import { dipLimitsL, glassLimitPct, proofLimit, scaleIntervalKg, scaleLimitKg, thermometerLimitC } from "../trade/errorlimits.js";
import { propagate, standardFromInterval, standardFromLimit } from "../trade/uncertainty.js";
import { toCanonical } from "../trade/units.js";
import { figuresOf } from "./read.js";

/**
 * @typedef {{unit: string, accuracy: string, interval: number | null, doubtful: boolean}} Accuracy
 * @typedef {[number, number]} Limits limit of error and interval, in the field's canonical unit
 */

const CARRIED = new Set([
  "true_strength", "true_proof", "strength_by_density", "strength_by_distillation", "volume_of_dense", "volume_of_dip", "volume_20", "lpa_volume", "net_mass", "volume_from_mass", "volume_weighed", "volume_weighed_us",
  "lpa_mass", "lpa_weighed_us", "total", "difference", "proof_gallons", "unhidden_strength",
]);
const IN_SERVICE = 2;
const TABLE_STEPS = 4;
/** @type {Map<string, Accuracy>} */
const HOUSE = new Map();

/** Take what is known of each instrument from the house's list of them. @param {any[]} instruments */
export function useAccuracies(instruments) {
  HOUSE.clear();
  for (const { id, unit, accuracy, interval, doubtful } of instruments) {
    HOUSE.set(id, { unit: unit ?? "", accuracy: accuracy ?? "", interval: interval ?? null, doubtful: doubtful === true });
  }
}

/**
 * @param {any} read as readEntry gives it @param {number | null} [capacityL] of the vessel that was dipped
 * @param {Record<string, Accuracy>} [accuracies] the house's, where none are given
 * @returns {Record<string, import("../trade/uncertainty.js").Uncertain>} by the name of the figure
 */
export function uncertainFigures(read, capacityL = null, accuracies = Object.fromEntries(HOUSE)) {
  const { kind, entry, figures, context } = read;
  const wanted = new Set(carried(kind).map((figure) => figure.name).filter((name) => name in figures));
  const inputs = wanted.size ? inputsOf(read, accuracies, capacityL) : [];
  if (!inputs.length) return {};
  const found = propagate((at) => {
    const values = { ...read.values };
    const held = { ...context };
    for (const [name, value] of Object.entries(at)) (name.startsWith("@") ? held : values)[name.replace("@", "")] = value;
    return Object.fromEntries(Object.entries(figuresOf(kind, entry, values, held)).filter(([name]) => wanted.has(name)));
  }, inputs);
  return Object.fromEntries(Object.entries(found).filter(([, figure]) => figure.own || Object.keys(figure.shared).length));
}

/** @param {any} kind @returns {any[]} */
const carried = (kind) => kind.figures.filter((/** @type {any} */ figure) => CARRIED.has(figure.sum));

/** @param {any} read @param {Record<string, Accuracy>} accuracies @param {number | null} capacityL */
function inputsOf(read, accuracies, capacityL) {
  const sources = new Set(carried(read.kind).flatMap((figure) => [...Object.values(figure.inputs).flat(), figure.given]));
  const byTable = Object.keys(read.values).some((name) => read.entry.values[name]?.unit === "proof_glass");
  const found = [];
  for (const spec of read.kind.fields) {
    const value = read.values[spec.name];
    if (!sources.has(spec.name) || typeof value !== "number") continue;
    const id = namedIn(read, spec.name);
    const limits = spec.name === "dip" ? dipped(read, value, accuracies[id]) : limitsOf(spec, value, read.entry.values[spec.name]?.unit ?? "", accuracies[id], capacityL);
    if (!limits) continue;
    const named = id || (spec.instrument === "dip" ? read.mark : "");
    found.push(input(spec.name, value, named ? `${named}/${spec.name}` : "", limits, byTable && (spec.name === "glass" || spec.name === "temp")));
  }
  const { tare_kg: tare, strength_pct: strength } = read.context;
  if (tare && sources.has("@tare_kg")) found.push(input("@tare_kg", tare, `${read.mark}/tare`, scale(tare)));
  if (strength && sources.has("@strength_pct") && !("true_strength" in read.figures)) {
    found.push(input("@strength_pct", strength, `${read.mark}/strength`, strengthLimits()));
  }
  return found;
}

/** @param {string} name @param {number} value @param {string} error @param {Limits} limits @param {boolean} [isCoarse] */
function input(name, value, error, [limit, interval], isCoarse = false) {
  const [shared, own] = [standardFromLimit(limit), standardFromInterval(interval)];
  return { name, value, error, shared, own, step: isCoarse ? TABLE_STEPS * shared : 0 };
}

/** @param {any} read @param {string} name */
const namedIn = (read, name) => String(read.entry.values[name]?.instrument ?? "").trim();

/** @param {any} spec @param {number} value @param {string} unit @param {Accuracy | undefined} known @param {number | null} capacityL @returns {Limits | null} */
function limitsOf(spec, value, unit, known, capacityL) {
  const found = prescribed(spec, value, unit, known, capacityL);
  return found && known?.doubtful ? [found[0] * IN_SERVICE, found[1]] : found;
}

/** @param {any} read @param {number} dipCm @param {Accuracy | undefined} known @returns {Limits | null} */
function dipped(read, dipCm, known) {
  const [dips, temp] = [read.context.dips || read.context.cask_dips, read.values.temp];
  if (!dips || typeof temp !== "number") return null;
  try {
    const [vessel, surface] = dipLimitsCm(dips, dipCm, temp);
    return [known?.doubtful ? vessel * IN_SERVICE : vessel, surface * 2];
  } catch {
    return null;
  }
}

/** @param {any} spec @param {number} value @param {string} unit @param {Accuracy | undefined} known @param {number | null} capacityL @returns {Limits | null} */
function prescribed(spec, value, unit, known, capacityL) {
  const [accuracy, interval] = [known?.accuracy ?? "", known?.interval ?? null];
  if (unit === "pct_glass") return [glassLimitPct(accuracy, interval), interval || glassInterval()];
  if (unit === "proof_glass") return [proofLimit(interval), proofLimit(interval)];
  if (spec.instrument === "thermometer") {
    const step = interval === null ? null : widthOf(interval, known);
    return [thermometerLimitC(step), step || 0.1];
  }
  if (spec.instrument === "scale") return scale(value, known);
  if (spec.instrument === "dip") {
    const [table, surface] = dipLimitsL(value, capacityL);
    return [table, interval === null ? surface * 2 : widthOf(interval, known)];
  }
  if (unit === "kg_m3" || unit === "g_mL") {
    const { limit_kg_m3: limit, interval_kg_m3: step } = data("instruments").density_meter;
    return [limit, interval === null ? step : widthOf(interval, known)];
  }
  if (spec.instrument === "density meter") return strengthLimits();
  return spec.name === "wash_strength" ? [data("instruments").wash_strength_pct, 0] : null;
}

/** @param {number} loadKg @param {Accuracy} [known] @returns {Limits} */
function scale(loadKg, known) {
  const interval = known?.interval ?? null;
  const step = interval === null ? scaleIntervalKg(loadKg) : widthOf(interval, known);
  return [scaleLimitKg(loadKg, step, known?.accuracy ?? ""), step];
}

/** @returns {Limits} */
const strengthLimits = () => [glassLimitPct("", null), glassInterval()];

const glassInterval = () => data("instruments").alcoholometer.interval_pct;

/** @param {number} interval @param {Accuracy | undefined} known */
function widthOf(interval, known) {
  const unit = known?.unit ?? "";
  return ["degF", "lb", "gal", "g_mL"].includes(unit) ? toCanonical(interval, unit) - toCanonical(0, unit) : interval;
}
