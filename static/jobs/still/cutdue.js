// @ts-check
/**
 * When the next cut is due: the minute and the litres at which the stream will have fallen to a chosen strength.
 * A forecast of strength alone. Twin of webapp/trade/cutdue.py, which has units, ranges and sources.
 * Needs the tables of the sums (initTrade).
 */
import { OutOfDomain } from "../../trade/errors.js";
import { brief, fixed } from "../../trade/numeric.js";
import { chargePot, runDown } from "./batch.js";
import { FADE, NUDGE, atShare, columnOf, dot, fitRun, nudged, potAt } from "./fit.js";
import { flowNow, priorOf } from "./prior.js";
import { makeTrack } from "./track.js";
import { exponential } from "./vle.js";

/** @typedef {import("./batch.js").Pot} Pot */
/** @typedef {import("./fit.js").Fit} Fit */
/** @typedef {import("./prior.js").Known} Known */
/** @typedef {import("./prior.js").Usual} Usual */
/** @typedef {import("./track.js").Run} Run */
/** @typedef {import("./track.js").Track} Track */
/** @typedef {{ at: number, low: number, high: number }} Span */
/** @typedef {{ state: "due", minutes: Span, collected_l: Span, curve: number[][], strength_average_pct: number,
 *   left_out: number[], changed_at: number | null } | { state: "too_little", why: string, words: string }
 *   | { state: "past", words: string }} Forecast */
/** @typedef {{ litres: number[], lpas: number[], minutes: number[], bands: number[][] }} Ahead */

const TARGET_PCT = [5, 90];
const LEAST_READINGS = 3;
const SIDE = 1.2815515655446004;
const STEPS = 80;
const WIDE_MIN = 25;
const CURVE_POINTS = 30;
const BEYOND = 1.12;

/** @type {Record<string, string>} */
const WORDS = {
  no_charge: "Too little to say: the charge of this run is not logged. Log litres and strength of the charge.",
  few_readings: "Too little to say: log {more} of the stream.",
  no_flow: "Too little to say: log the flow, or dip the receiver.",
  odd_readings: "Too little to say: the readings rise and fall. Read the stream again.",
  wide: "Too little to say: it could be any time within {width} minutes. Another reading will help.",
  out_of_range: "No forecast at {target} % vol: it runs from {low} to {high} % vol.",
  past: "The stream has passed {target} % vol.",
};

/** @param {Run} run @param {Known | null} prior @param {number} targetPct % vol, 5 to 90 @returns {Forecast} */
export function forecastCut(run, prior, targetPct) {
  const [least, most] = TARGET_PCT;
  if (!(targetPct >= least && targetPct <= most)) {
    return tooLittle("out_of_range", { target: brief(targetPct), low: brief(least), high: brief(most) });
  }
  const usual = priorOf(prior, run.still?.plates);
  const ready = makeReady(run, usual.flowLh);
  if (typeof ready === "string") {
    return tooLittle(ready, { more: run.readings.length ? "another reading" : "the first readings" });
  }
  const { track, pot, lpa } = ready;
  const fit = fitRun(pot, lpa, track, usual.still);
  const last = track.minutes.length - 1;
  if (!fit.slips.includes(track.places[last]) && track.strengths[last] <= targetPct) {
    return { state: "past", words: say("past", { target: brief(targetPct) }) };
  }
  const flowLh = flowNow(track, lpa, usual);
  if (!flowLh || flowLh <= 0) return tooLittle("no_flow");
  const ahead = lookAhead(pot, lpa, track, fit, usual, targetPct, flowLh);
  if (ahead.litres.length < 2) return tooLittle("odd_readings");
  const [at, soonest, latest] = ahead.bands.map((strengths) => crossing(ahead.litres, strengths, targetPct));
  if (at === null || soonest === null || latest === null) return tooLittle("wide", { width: "90" });
  const now = track.minutes[last];
  const minutes = minutesOf(ahead, [at, soonest, latest], now, usual.flowSpread);
  if (minutes.high - minutes.low > Math.max(WIDE_MIN, minutes.at - now)) {
    return tooLittle("wide", { width: fixed(minutes.high - minutes.low, 0) });
  }
  const nowL = track.litres[last];
  return {
    state: "due",
    minutes,
    collected_l: { at: nowL + at, low: nowL + soonest, high: nowL + latest },
    curve: curveOf(track, ahead, at),
    strength_average_pct: averageOf(track, ahead, at, run.receiver_since || 0),
    left_out: [...track.leftOut, ...fit.slips].sort((a, b) => a - b),
    changed_at: track.since ? track.minutes[track.since] : null,
  };
}

/** @param {Run} run @param {number | null} usualFlowLh @returns {{ track: Track, pot: Pot, lpa: number } | string} or why not */
function makeReady(run, usualFlowLh) {
  const lpa = run.charge?.lpa_l || 0;
  let pot;
  try {
    pot = chargePot(run.charge?.volume_l || 0, lpa);
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
  if (track.minutes.length - track.since < LEAST_READINGS) return "few_readings";
  return { track, pot, lpa };
}

/**
 * @param {Pot} pot @param {number} lpa @param {Track} track @param {Fit} fit @param {Usual} usual
 * @param {number} targetPct @param {number} flowLh @returns {Ahead}
 */
function lookAhead(pot, lpa, track, fit, usual, targetPct, flowLh) {
  const last = track.minutes.length - 1;
  const fadeL = FADE * lpa;
  const nowLpa = track.lpas[last];
  const leftL = Math.max(lpa * exponential(fit.logs[2]) - nowLpa, 0.02 * lpa);
  const offL = (1.4 * leftL) / (targetPct / 100);
  /** @param {number[]} logs @param {number} driftPct */
  const runWith = (logs, driftPct) => runDown(
    potAt(pot, logs, track.ethanolMol[last], track.waterMol[last]), columnOf(logs), offL, STEPS,
    (off, lpaOff) => atShare(usual.still.habitPct, (nowLpa + lpaOff) / lpa) + driftPct * exponential(-off / fadeL),
  );
  const middle = runWith(fit.logs, fit.driftPct);
  const sides = [0, 1, 2].map((j) => [NUDGE, -NUDGE]
    .map((by) => runWith(nudged(fit.logs, j, by), fit.driftPct - by * fit.driftSlopes[j])));
  const count = Math.min(middle.length, ...sides.flat().map((side) => side.length));
  /** @type {Ahead} */
  const found = { litres: [], lpas: [], minutes: [], bands: [[], [], []] };
  let minute = 0;
  for (let i = 0; i < count; i++) {
    if (i) {
      const share = (nowLpa + (middle[i].lpa + middle[i - 1].lpa) / 2) / lpa;
      const passed = middle[i].volumeL - middle[i - 1].volumeL;
      minute += (60 * passed) / (flowLh * atShare(usual.flowShape, share));
    }
    const slopes = sides.map(([more, less]) => (more[i].strengthPct - less[i].strengthPct) / (2 * NUDGE));
    const off = SIDE * Math.sqrt(varianceOf(fit, usual.still.driftPct, middle[i].volumeL / fadeL, slopes));
    found.litres.push(middle[i].volumeL);
    found.lpas.push(middle[i].lpa);
    found.minutes.push(minute);
    [0, -off, off].forEach((by, k) => found.bands[k].push(middle[i].strengthPct + by));
  }
  return found;
}

/** @param {Fit} fit @param {number} driftPct @param {number} faded @param {number[]} slopes */
function varianceOf(fit, driftPct, faded, slopes) {
  const fade = exponential(-faded);
  const known = fit.driftVar * fade * fade + driftPct * driftPct * (1 - fade * fade);
  return known + dot(slopes, fit.covariance.map((row) => dot(row, slopes)));
}

/** @param {number[]} litres @param {number[]} strengths @param {number} targetPct @returns {number | null} litres from now */
function crossing(litres, strengths, targetPct) {
  const i = strengths.findIndex((strength) => strength <= targetPct);
  if (i < 0) return null;
  if (i === 0) return 0;
  const fall = strengths[i - 1] - strengths[i];
  const share = fall > 0 ? (strengths[i - 1] - targetPct) / fall : 1;
  return litres[i - 1] + share * (litres[i] - litres[i - 1]);
}

/** @param {number[]} xs @param {number[]} ys @param {number} x */
function between(xs, ys, x) {
  let k = 1;
  while (k < xs.length - 1 && xs[k] < x) k++;
  const share = Math.min((x - xs[k - 1]) / (xs[k] - xs[k - 1]), 1);
  return ys[k - 1] + share * (ys[k] - ys[k - 1]);
}

/** @param {Ahead} ahead @param {number[]} litres @param {number} now @param {number} flowSpread @returns {Span} */
function minutesOf(ahead, litres, now, flowSpread) {
  const [at, soonest, latest] = litres.map((off) => between(ahead.litres, ahead.minutes, off));
  const byFlow = at * SIDE * flowSpread;
  const early = at - soonest;
  const late = latest - at;
  return {
    at: now + at,
    low: Math.max(now + at - Math.sqrt(early * early + byFlow * byFlow), now),
    high: now + at + Math.sqrt(late * late + byFlow * byFlow),
  };
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
  return { state: "too_little", why, words: say(why, parts) };
}

/** @param {string} why @param {Record<string, string>} parts */
function say(why, parts) {
  return WORDS[why].replace(/\{(\w+)\}/g, (_, name) => parts[name]);
}
