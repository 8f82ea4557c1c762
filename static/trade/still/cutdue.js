// @ts-check
/**
 * When the next cut is due: the minute and the litres at which the stream will have fallen to a chosen strength.
 * A forecast of strength alone. Twin of webapp/trade/cutdue.py, which has units, ranges and sources.
 * Needs the tables of the sums (initTrade).
 */
import { OutOfDomain } from "../errors.js";
import { brief, fixed } from "../numeric.js";
import { between, crossing, lookAhead, minutesOf } from "./ahead.js";
import { chargePot } from "./batch.js";
import { chargedOf, fitRun, sectionsOf } from "./fit.js";
import { flowNow, priorOf } from "./prior.js";
import { makeTrack, middle } from "./track.js";

/** @typedef {import("./fit.js").Charged} Charged */
/** @typedef {import("./prior.js").Known} Known */
/** @typedef {import("./track.js").Run} Run */
/** @typedef {import("./track.js").Track} Track */
/** @typedef {import("./ahead.js").Span} Span */
/** @typedef {import("./ahead.js").Ahead} Ahead */
/** @typedef {{ state: "due", minutes: Span, collected_l: Span, curve: number[][], strength_average_pct: number,
 *   left_out: number[], changed_at: number | null, runs: number, tried: number, kept: number } | { state: "too_little", why: string, words: string }
 *   | { state: "past", words: string }} Forecast */

const TARGET_PCT = [5, 90];
const LEAST_READINGS = 3;
const WIDEST_MIN = 55;
const CURVE_POINTS = 30;
const BEYOND = 1.12;

/** @type {Record<string, string>} */
const WORDS = {
  no_charge: "Too little to say: the charge of this run is not logged. Log litres and strength of the charge.",
  few_readings: "Too little to say: log {more} of the stream.",
  no_flow: "Too little to say: log the flow, or dip the receiver.",
  odd_readings: "Too little to say: the readings rise and fall. Read the stream again.",
  far: "Too little to say: the cut is still far off. Another reading will help.",
  wide: "Too little to say: it could be any time within {width} minutes. Another reading will help.",
  out_of_range: "No forecast at {target} % vol: it runs from {low} to {high} % vol.",
  past: "The stream has passed {target} % vol.",
};

/** @type {(code: string, figures: Record<string, string>) => string} */
let saying = (code, figures) => WORDS[code].replace(/\{(\w+)\}/g, (_, name) => figures[name]);

/** Let a catalogue say why there is no forecast; `which` tells "another" reading from the "first". @param {(code: string, figures: Record<string, string>) => string} other */
export const sayBy = (other) => {
  saying = other;
};

/** @param {Run} run @param {Known | null} prior @param {number} targetPct % vol, 5 to 90 @returns {Forecast} */
export function forecastCut(run, prior, targetPct) {
  const [least, most] = TARGET_PCT;
  if (!(targetPct >= least && targetPct <= most)) {
    return tooLittle("out_of_range", { target: brief(targetPct), low: brief(least), high: brief(most) });
  }
  const seen = foresee(run, prior, targetPct);
  if (typeof seen === "string") {
    if (seen === "past") return { state: "past", words: saying("past", { target: brief(targetPct) }) };
    return tooLittle(seen, { more: run.readings.length ? "another reading" : "the first readings", which: run.readings.length ? "another" : "first" });
  }
  const { track, ahead, litres } = seen;
  const [at, soonest, latest] = litres;
  const last = track.minutes.length - 1;
  const nowL = track.litres[last];
  const minutes = minutesOf(ahead, litres, track.minutes[last], seen.flowSpread);
  if (minutes.high - minutes.low > WIDEST_MIN) return tooLittle("wide", { width: fixed(minutes.high - minutes.low, 0) });
  return {
    state: "due",
    minutes,
    collected_l: { at: nowL + at, low: nowL + soonest, high: nowL + latest },
    curve: curveOf(track, ahead, at),
    strength_average_pct: averageOf(track, ahead, at, run.receiver_since || 0),
    left_out: seen.leftOut,
    changed_at: track.since ? track.minutes[track.since] : null,
    runs: prior ? prior.runs : 0,
    tried: prior ? prior.tried : 0,
    kept: prior ? prior.kept : 0,
  };
}

/**
 * The forecast in litres, however wide; or the word for why there is none, or "past".
 * @param {Run} run @param {Known | null} known @param {number} targetPct
 * @returns {{ track: Track, ahead: Ahead, litres: number[], leftOut: number[], flowSpread: number } | string}
 */
function foresee(run, known, targetPct) {
  const ready = makeReady(run, known ? known.flow_l_h : null);
  if (typeof ready === "string") return ready;
  const { track, charged } = ready;
  const usual = priorOf(known, run.still?.plates, middle(track.rootFlows));
  const fit = fitRun(charged, track, usual.still);
  const last = track.minutes.length - 1;
  if (!fit.slips.includes(track.places[last]) && track.strengths[last] <= targetPct) return "past";
  const flowLh = flowNow(track, charged.lpa, usual);
  if (!flowLh || flowLh <= 0) return "no_flow";
  const ahead = lookAhead({ charged, seen: track, usual, flowLh, targetPct }, fit);
  if (ahead.litres.length < 2) return "odd_readings";
  const litres = [];
  for (const strengths of ahead.bands) {
    const found = crossing(ahead.litres, strengths, targetPct);
    if (found === null) return "far";
    litres.push(found);
  }
  return { track, ahead, litres, leftOut: [...track.leftOut, ...fit.slips].sort((a, b) => a - b), flowSpread: usual.flowSpread };
}

/** @param {Run} run @param {number | null} usualFlowLh @returns {{ track: Track, charged: Charged } | string} or why not */
function makeReady(run, usualFlowLh) {
  const lpa = run.charge?.lpa_l || 0;
  const volumeL = run.charge?.volume_l || 0;
  let pot;
  try {
    pot = chargePot(volumeL, lpa);
  } catch (reason) {
    if (!(reason instanceof OutOfDomain)) throw reason;
    return "no_charge";
  }
  const { readings } = run;
  if (readings.length < LEAST_READINGS) return "few_readings";
  if (readings.some(({ strength_pct: strength }) => !(strength >= 0 && strength <= 97))) return "odd_readings";
  if (readings.some(({ minutes }, i) => i > 0 && minutes < readings[i - 1].minutes)) return "odd_readings";
  const track = makeTrack(run, usualFlowLh);
  if (!track) return "no_flow";
  if (track.minutes.length < LEAST_READINGS) return "few_readings";
  return { track, charged: chargedOf(pot, volumeL, lpa, sectionsOf(run.still?.plates)) };
}

/** @param {Track} track @param {Ahead} ahead @param {number} at @returns {number[][]} minutes, % vol, L, LPA */
function curveOf(track, ahead, at) {
  const last = track.minutes.length - 1;
  const end = Math.min(at * BEYOND, ahead.litres[ahead.litres.length - 1]);
  const points = [];
  for (let i = 0; i <= CURVE_POINTS; i++) {
    const off = (end * i) / CURVE_POINTS;
    points.push([
      track.minutes[last] + between(ahead.litres, ahead.minutes, off), between(ahead.litres, ahead.bands[0], off),
      track.litres[last] + off, track.lpas[last] + between(ahead.litres, ahead.lpas, off),
    ]);
  }
  return points;
}

/** @param {Track} track @param {Ahead} ahead @param {number} at @param {number} sinceMin @returns {number} % vol */
function averageOf(track, ahead, at, sinceMin) {
  const last = track.minutes.length - 1;
  let litres = 0;
  let lpa = 0;
  if (sinceMin > 0) {
    let k = 0;
    while (k < last && track.minutes[k] < sinceMin) k++;
    const before = k ? track.minutes[k - 1] : 0;
    let share = track.minutes[k] > before ? (sinceMin - before) / (track.minutes[k] - before) : 1;
    share = Math.min(Math.max(share, 0), 1);
    const lowL = k ? track.litres[k - 1] : 0;
    const lowLpa = k ? track.lpas[k - 1] : 0;
    litres = lowL + share * (track.litres[k] - lowL);
    lpa = lowLpa + share * (track.lpas[k] - lowLpa);
  }
  const heldL = track.litres[last] + at - litres;
  const heldLpa = track.lpas[last] + between(ahead.litres, ahead.lpas, at) - lpa;
  return heldL > 0 ? (100 * heldLpa) / heldL : track.strengths[last];
}

/** @param {string} why @param {Record<string, string>} [parts] @returns {Forecast} */
function tooLittle(why, parts = {}) {
  return { state: "too_little", why, words: saying(why, parts) };
}
