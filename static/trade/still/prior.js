// @ts-check
/**
 * What is known of a still before its run: the figures on its card, or what its plates say.
 * Twin of webapp/trade/stillprior.py.
 */
import { atShare } from "./fit.js";
import { middle } from "./track.js";
import { logarithm } from "./vle.js";

/** @typedef {import("./fit.js").Prior} Prior */
/** @typedef {import("./track.js").Track} Track */
/** @typedef {{ runs: number, mean: number[], spread: number[][], drift_pct: number, habit_pct: number[], flow_l_h: number | null,
 *   flow_shape: number[], flow_spread: number, lean: number, widen: number,
 *   tried: number, kept: number }} Known what the book learnt of a still, as its card carries it */
/** @typedef {{ still: Prior, flowLh: number | null, flowShape: number[], flowSpread: number,
 *   lean: number, widen: number }} Usual */

const STILL = [0.64, 1.8, 1, 1, 1];
const BARE = [0.3, 0.4, 1, 0.05, 1];
const STILL_SPREAD = [0.35, 0.6, 0.1, 0.8, 0.8];
const UNKNOWN_SPREAD = 0.7;
const DRIFT_PCT = 2;
const FLOW_SPREAD = 0.2;
export const WANDER = 0.05;
const FLOWS_OF = 3;
const TENTHS = 11;

/** @param {Known | null | undefined} known @param {number | null | undefined} plates @param {number} rootFlow @returns {Usual} */
export function priorOf(known, plates, rootFlow) {
  if (known) {
    const still = {
      mean: known.mean, spread: known.spread, driftPct: known.drift_pct, habitPct: known.habit_pct,
    };
    return {
      still, flowLh: known.flow_l_h, flowShape: known.flow_shape, flowSpread: known.flow_spread,
      lean: known.lean, widen: known.widen,
    };
  }
  const spreads = STILL_SPREAD.map((value, i) => (i === 0 && (plates === null || plates === undefined) ? UNKNOWN_SPREAD : value));
  const spread = spreads.map((value, i) => spreads.map((_, j) => (i === j ? value * value : 0)));
  const mean = (plates === 0 ? BARE : STILL).map(logarithm);
  mean[1] += logarithm(rootFlow);
  const still = { mean, spread, driftPct: DRIFT_PCT, habitPct: new Array(TENTHS).fill(0) };
  return { still, flowLh: null, flowShape: new Array(TENTHS).fill(1), flowSpread: FLOW_SPREAD, lean: 0, widen: 1 };
}

/** @param {Track} track @param {number} lpa @param {Usual} usual @returns {number | null} L/h, to be multiplied by the shape */
export function flowNow(track, lpa, usual) {
  /** @type {[number, number][]} */
  const all = [];
  track.flowsLh.forEach((flow, i) => {
    if (flow) all.push([track.settings[i], flow / atShare(usual.flowShape, track.lpas[i] / lpa)]);
  });
  const read = all.filter(([setting]) => setting === all[all.length - 1][0]).map(([, flow]) => flow);
  if (read.length) return middle(read.slice(-FLOWS_OF)) * track.correction;
  if (track.correction === 1 && usual.flowLh) return usual.flowLh;
  const last = track.minutes.length - 1;
  const runMin = track.minutes[last] - track.minutes[0];
  const runL = track.litres[last] - track.litres[0];
  return runMin > 0 && runL > 0 ? (runL / runMin) * 60 : usual.flowLh;
}
