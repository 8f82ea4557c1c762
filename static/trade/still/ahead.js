// @ts-check
/** The stream from now on, with its band, and where it falls to a strength. Twin of the middle of webapp/trade/cutdue.py. */
import { runDown } from "./batch.js";
import { dot } from "./filter.js";
import { FADE, NUDGE, atShare, columnOf, nudged, potAt } from "./fit.js";
import { exponential } from "./vle.js";

/** @typedef {import("./batch.js").Pot} Pot */
/** @typedef {import("./fit.js").Fit} Fit */
/** @typedef {import("./prior.js").Usual} Usual */
/** @typedef {import("./track.js").Track} Track */
/** @typedef {{ at: number, low: number, high: number }} Span */
/** @typedef {{ litres: number[], lpas: number[], minutes: number[], bands: number[][] }} Ahead since now; strength
 *   as expected, at its low and its high side */

const SIDE = 1.2815515655446004;
const STEPS = 80;

/**
 * @param {Pot} pot @param {number} lpa @param {Track} track @param {Fit} fit @param {Usual} usual
 * @param {number} targetPct @param {number} flowLh @returns {Ahead}
 */
export function lookAhead(pot, lpa, track, fit, usual, targetPct, flowLh) {
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
  let gained = 0;
  let surest = 0;
  for (let i = 0; i < count; i++) {
    const steep = sides.map(([more, less]) => (more[i].strengthPct - less[i].strengthPct) / (2 * NUDGE));
    const error = Math.sqrt(varianceOf(fit, usual.still.driftPct, middle[i].volumeL / fadeL, steep));
    if (i === 0) surest = error;
    const strength = middle[i].strengthPct + usual.lean * (error - surest);
    if (i) {
      const share = (nowLpa + (middle[i].lpa + middle[i - 1].lpa) / 2) / lpa;
      const passed = middle[i].volumeL - middle[i - 1].volumeL;
      minute += (60 * passed) / (flowLh * atShare(usual.flowShape, share));
      gained += (passed * (found.bands[0][i - 1] + strength)) / 200;
    }
    found.litres.push(middle[i].volumeL);
    found.lpas.push(gained);
    found.minutes.push(minute);
    const off = SIDE * usual.widen * error;
    [0, -off, off].forEach((by, k) => found.bands[k].push(strength + by));
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
export function crossing(litres, strengths, targetPct) {
  const i = strengths.findIndex((strength) => strength <= targetPct);
  if (i < 0) return null;
  if (i === 0) return 0;
  const fall = strengths[i - 1] - strengths[i];
  const share = fall > 0 ? (strengths[i - 1] - targetPct) / fall : 1;
  return litres[i - 1] + share * (litres[i] - litres[i - 1]);
}

/** @param {number[]} xs @param {number[]} ys @param {number} x */
export function between(xs, ys, x) {
  let k = 1;
  while (k < xs.length - 1 && xs[k] < x) k++;
  const share = Math.min((x - xs[k - 1]) / (xs[k] - xs[k - 1]), 1);
  return ys[k - 1] + share * (ys[k] - ys[k - 1]);
}

/** @param {Ahead} ahead @param {number[]} litres @param {number} now @param {number} flowSpread @returns {Span} */
export function minutesOf(ahead, litres, now, flowSpread) {
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
