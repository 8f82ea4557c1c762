// @ts-check
/** The stream from now on, with its band, and where it falls to a strength. Twin of the middle of webapp/trade/cutdue.py. */
import { streamMoles } from "./batch.js";
import { standColumn, stepColumn, streamPct } from "./column.js";
import { NUDGE, atShare, nudged, play, refluxAt, sectionsOf } from "./fit.js";
import { dot } from "./matrices.js";
import { WANDER } from "./prior.js";
import { exponential } from "./vle.js";

/** @typedef {import("./fit.js").Charged} Charged */
/** @typedef {import("./fit.js").Fit} Fit */
/** @typedef {import("./prior.js").Usual} Usual */
/** @typedef {import("./track.js").Track} Track */
/** @typedef {{ at: number, low: number, high: number }} Span */
/** @typedef {{ litres: number[], lpas: number[], minutes: number[], bands: number[][] }} Ahead since now; strength
 *   as expected, at its low and its high side */
/** @typedef {{ volumeL: number, lpa: number, strengthPct: number }} Moment since now; strength by the model alone */
/** @typedef {{ charged: Charged, seen: Track, usual: Usual, flowLh: number, targetPct: number }} View */

const SIDE = 1.2815515655446004;
const STEPS_MOST = 150;
const BELOW_PCT = 30;
const SHIFTED = 0.1;

/** @param {View} view @param {number} lpa from now */
const shareOf = ({ seen, charged }, lpa) => (seen.lpas[seen.lpas.length - 1] + lpa) / charged.lpa;

/** @param {View} view @param {number} share */
const flowAt = ({ flowLh, usual }, share) => flowLh * atShare(usual.flowShape, share);

/** Habit, and the drift as it fades [% vol]. @param {View} view @param {Moment} moment @param {number} driftPct */
const extraOf = (view, moment, driftPct) => (
  atShare(view.usual.still.habitPct, shareOf(view, moment.lpa)) + driftPct * exponential(-moment.volumeL / view.charged.fadeL)
);

/** @param {View} view @param {number[]} logs @param {number} driftPct @param {number} shift of the log of the reflux @returns {Moment[]} */
function runOn(view, logs, driftPct, shift) {
  const { charged, seen } = view;
  const { column } = play(charged, seen, logs);
  const last = seen.minutes.length - 1;
  let ethanol = seen.ethanolMol[last];
  let both = seen.ethanolMol[last] + seen.waterMol[last];
  const leftL = Math.max(charged.lpa * exponential(logs[2]) - seen.lpas[last], 0.05 * charged.lpa);
  const steps = Math.min(Math.ceil((1.4 * leftL) / (view.targetPct / 100) / charged.stepL), STEPS_MOST);
  let before = { volumeL: 0, lpa: 0, strengthPct: streamPct(column) };
  const moments = [before];
  const moved = logs.map((value, i) => (i === 1 ? value + shift : value));
  const stands = seen.stands.map(([litres, plates]) => [litres - seen.litres[last], plates]).filter(([off]) => off > 0);
  for (let i = 0; i < steps; i++) {
    while (stands.length && stands[0][0] <= before.volumeL) standColumn(column, sectionsOf(/** @type {number[]} */ (stands.shift())[1]));
    const reads = Math.min(Math.max(before.strengthPct + extraOf(view, before, driftPct), 1), 97);
    const [moreEthanol, moreWater] = streamMoles(charged.stepL, reads);
    ethanol += moreEthanol;
    both += moreEthanol + moreWater;
    const reflux = refluxAt(moved, Math.sqrt(flowAt(view, shareOf(view, before.lpa))));
    const more = moreEthanol + moreWater;
    stepColumn(column, ethanol, both, more * (reflux + 1), more * reflux);
    before = {
      volumeL: before.volumeL + charged.stepL, lpa: before.lpa + (charged.stepL * reads) / 100, strengthPct: streamPct(column),
    };
    moments.push(before);
    if (before.strengthPct + extraOf(view, before, driftPct) < view.targetPct - BELOW_PCT) break;
  }
  return moments;
}

/** @param {View} view @param {Fit} fit @returns {Ahead} */
export function lookAhead(view, fit) {
  const { charged, usual } = view;
  const middle = runOn(view, fit.logs, fit.driftPct, 0);
  const sides = fit.driftSlopes.map((slope, j) => runOn(view, nudged(fit.logs, j), fit.driftPct - NUDGE * slope, 0));
  const other = runOn(view, fit.logs, fit.driftPct, SHIFTED);
  const count = Math.min(middle.length, other.length, ...sides.map((side) => side.length));
  /** @type {Ahead} */
  const found = { litres: [], lpas: [], minutes: [], bands: [[], [], []] };
  let minute = 0;
  let gained = 0;
  let surest = 0;
  for (let i = 0; i < count; i++) {
    const now = middle[i];
    const fade = exponential(-now.volumeL / charged.fadeL);
    const steep = sides.map((side, j) => (side[i].strengthPct - now.strengthPct) / NUDGE - fit.driftSlopes[j] * fade);
    const wander = ((other[i].strengthPct - now.strengthPct) / SHIFTED) * WANDER;
    const variance = varianceOf(fit, usual.still.driftPct, fade, steep);
    const error = Math.sqrt(variance + wander * wander * Math.min(now.volumeL / charged.fadeL, 1));
    if (i === 0) surest = error;
    const strength = now.strengthPct + extraOf(view, now, fit.driftPct) + usual.lean * (error - surest);
    if (i) {
      const passed = now.volumeL - middle[i - 1].volumeL;
      minute += (60 * passed) / flowAt(view, shareOf(view, (now.lpa + middle[i - 1].lpa) / 2));
      gained += (passed * (found.bands[0][i - 1] + strength)) / 200;
    }
    found.litres.push(now.volumeL);
    found.lpas.push(gained);
    found.minutes.push(minute);
    const off = SIDE * usual.widen * error;
    [0, -off, off].forEach((by, k) => found.bands[k].push(strength + by));
  }
  return found;
}

/** @param {Fit} fit @param {number} driftPct @param {number} fade @param {number[]} slopes */
function varianceOf(fit, driftPct, fade, slopes) {
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
