// @ts-check
/** A second look at the still before it is logged: a strength that rises, one that the vapour speaks against, a warm distillate. */
import { strengthField } from "../../form/strengths.js";
import { heldLimit } from "../../kinds/limits.js";
import { figure, message } from "../../kinds/message.js";
import { fixedEven } from "../../kinds/digits.js";
import { changedSince } from "./changes.js";
import { eventOf } from "./state.js";
import { shownInUnits, strengthShown } from "../../shell/inunits.js";
import { vapourTempC } from "../../trade/still.js";
import { formatTime } from "../../ui/format.js";
import { t } from "../../words/later.js";

/** A suggested strength may lie so far below the last one; common practice, no source. */
const BELOW_PCT = 15;
/** Spirit runs no colder than the water that cools it; common practice, no source. */
const LEAST_C = 5;

/** @typedef {import("../../form/look.js").Problem} Problem */

/**
 * @param {any} run or null @param {any} card @param {number} heightM
 * @returns {(read: any) => Problem[]}
 */
export function secondLook(run, card, heightM) {
  const offsetC = card?.still?.vapour_offset_c ?? 0;
  return (read) => [
    ...warm(read, heldLimit("warm_c", card, run)), ...(run ? [...risen(run, read, heldLimit("slope_pct", card, run)), ...fell(run, read, card)] : []),
    ...against(read, heightM, offsetC, heldLimit("vapour_off_c", card, run)),
  ];
}

/** @param {any} read @param {number} warmC @returns {Problem[]} */
function warm(read, warmC) {
  const temp = read.values.temp;
  if (typeof temp !== "number" || temp <= warmC) return [];
  return [{
    code: "distillate_warm", weight: "ask", field: "temp", expects: [{ of: "temp", low: LEAST_C, high: warmC }],
    words: t("floor-second-spirit_runs_at_above", { temp: shownInUnits(temp, "degC", 1), warm_c: shownInUnits(warmC, "degC", Number.isInteger(warmC) ? 0 : 1) }),
  }];
}

/** After the heads cut it only falls, unless plates or water were changed. @param {any} run @param {any} read @param {number} slopePct @returns {Problem[]} */
function risen(run, read, slopePct) {
  const now = read.figures.true_strength;
  if (now == null || !eventOf(run, "heads_cut") || read.values.event === "heads_cut") return [];
  const last = run.readings.filter((/** @type {any} */ line) => line.true_strength != null).at(-1);
  if (!last || now <= last.true_strength + slopePct || wasChanged(run, read)) return [];
  return [{
    code: "strength_slope", weight: "ask", field: strengthField(read), expects: [{ of: "true_strength", low: last.true_strength - BELOW_PCT, high: last.true_strength + slopePct, near: last.true_strength }],
    words: t("floor-second-true_is_above_of", { at: pctWords(now), true_strength: pctWords(last.true_strength), last: formatTime(last.at) }),
  }];
}

/** In the hearts: what a run takes an hour for does not come in minutes. @param {any} run @param {any} read @param {any} card @returns {Problem[]} */
function fell(run, read, card) {
  const now = read.figures.true_strength;
  const isHearts = eventOf(run, "heads_cut") && !eventOf(run, "hearts_cut") && read.values.event !== "hearts_cut" && read.kind.name !== "run_end";
  const last = run.readings.filter((/** @type {any} */ line) => line.true_strength != null).at(-1);
  if (now == null || !isHearts || !last || wasChanged(run, read)) return [];
  const most = heldLimit("fall_pct", card, run);
  const apartS = (Date.now() - Date.parse(last.at)) / 1000;
  const off = last.true_strength - now;
  if (apartS < 0 || apartS > heldLimit("fall_min", card, run) * 60 || off <= most + 1e-9) return [];
  const apart = apartS < 120 ? [Math.round(apartS), "s"] : [Math.round(apartS / 60), "min"];
  const pct = (/** @type {number} */ value) => figure(fixedEven(value, 1), "pct_vol");
  return [{
    code: "strength_fell", weight: "ask", field: strengthField(read),
    message: message("strength_fell", { now: pct(now), off: pct(off), last: pct(last.true_strength), apart: { span: [apart] } }),
    expects: [{ of: "true_strength", low: last.true_strength - most, high: last.true_strength + most, near: last.true_strength }],
  }];
}

/** @param {any} run @param {any} read */
function wasChanged(run, read) {
  const last = run.readings.filter((/** @type {any} */ line) => line.true_strength != null).at(-1);
  return changedSince(run, last) || [["plates", 0.5], ["cooling_temp", 2]].some(([name, step]) => {
    const before = run.readings.filter((/** @type {any} */ line) => line[name] != null).at(-1)?.[name];
    return before != null && read.values[name] != null && Math.abs(read.values[name] - before) >= Number(step);
  });
}

/** @param {any} read @param {number} heightM @param {number} offsetC @param {number} offC @returns {Problem[]} */
function against(read, heightM, offsetC, offC) {
  const [now, vapour] = [read.figures.true_strength, read.values.vapour_temp];
  if (now == null || vapour == null) return [];
  const wanted = usualC(now, heightM, offsetC);
  if (wanted === null || Math.abs(vapour - wanted) <= offC) return [];
  return [{
    code: "vapour_strength", weight: "ask", field: "vapour_temp", expects: [{ of: "vapour_temp", low: wanted - offC, high: wanted + offC, near: wanted }, { of: "true_strength", low: 20, high: 95 }],
    words: t("floor-second-vapour_and_spirit_of", { vapour: shownInUnits(vapour, "degC", 1), at: pctWords(now), wanted: shownInUnits(wanted, "degC", 1) }),
  }];
}

/** @param {number} pct @param {number} heightM @param {number} offsetC @returns {number|null} */
function usualC(pct, heightM, offsetC) {
  try {
    return vapourTempC(pct, heightM) + offsetC;
  } catch {
    return null;
  }
}

/** @param {number} pct */
function pctWords(pct) {
  const { figure, sign } = strengthShown(pct);
  return `${figure} ${sign.replace(" vol", "")}`;
}
