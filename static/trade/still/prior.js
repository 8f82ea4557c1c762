// @ts-check
/**
 * What is known of a still before its run: the figures on its card, or what its plates say.
 * Twin of webapp/trade/stillprior.py.
 */
import { atShare } from "./fit.js";
import { logarithm } from "./vle.js";

/** @typedef {import("./fit.js").Prior} Prior */
/** @typedef {import("./track.js").Track} Track */
/** @typedef {{ mean: number[], spread: number[][], drift_pct: number, habit_pct: number[], flow_l_h: number | null,
 *   flow_shape: number[], flow_spread: number, lean: number, widen: number }} Known what the book learnt of a still, as its card carries it */
/** @typedef {{ still: Prior, flowLh: number | null, flowShape: number[], flowSpread: number,
 *   lean: number, widen: number }} Usual */

const PLATE_SHARE = 0.7;
const HELM_SHARE = 0.3;
const PLATES_UNKNOWN = 1.5;
const REFLUX = 2;
const REFLUX_BARE = 0.4;
const STILL_SPREAD = [0.5, 0.7, 0.12];
const STAGES_UNKNOWN_SPREAD = 0.9;
const DRIFT_PCT = 2;
const FLOW_SPREAD = 0.2;
const FLOWS_OF = 3;
const TENTHS = 11;

/** @param {Known | null | undefined} known @param {number | null | undefined} plates @returns {Usual} */
export function priorOf(known, plates) {
  if (known) {
    const still = {
      mean: known.mean, spread: known.spread, driftPct: known.drift_pct, habitPct: known.habit_pct,
    };
    return {
      still, flowLh: known.flow_l_h, flowShape: known.flow_shape, flowSpread: known.flow_spread,
      lean: known.lean, widen: known.widen,
    };
  }
  const unknown = plates === null || plates === undefined;
  const above = HELM_SHARE + PLATE_SHARE * (unknown ? PLATES_UNKNOWN : plates);
  const spread = [unknown ? STAGES_UNKNOWN_SPREAD : STILL_SPREAD[0], STILL_SPREAD[1], STILL_SPREAD[2]]
    .map((value, i) => [0, 1, 2].map((j) => (i === j ? value * value : 0)));
  const mean = [logarithm(above), logarithm(plates === 0 ? REFLUX_BARE : REFLUX), 0];
  const still = { mean, spread, driftPct: DRIFT_PCT, habitPct: new Array(TENTHS).fill(0) };
  return { still, flowLh: null, flowShape: new Array(TENTHS).fill(1), flowSpread: FLOW_SPREAD, lean: 0, widen: 1 };
}

/** @param {Track} track @param {number} lpa @param {Usual} usual @returns {number | null} L/h, to be multiplied by the shape */
export function flowNow(track, lpa, usual) {
  /** @type {number[]} */
  const read = [];
  track.flowsLh.forEach((flow, i) => {
    if (flow) read.push(flow / atShare(usual.flowShape, track.lpas[i] / lpa));
  });
  if (read.length) return middle(read.slice(-FLOWS_OF)) * track.correction;
  if (track.correction === 1 && usual.flowLh) return usual.flowLh;
  const last = track.minutes.length - 1;
  const runMin = track.minutes[last] - track.minutes[0];
  const runL = track.litres[last] - track.litres[0];
  return runMin > 0 && runL > 0 ? (runL / runMin) * 60 : usual.flowLh;
}

/** @param {number[]} values */
function middle(values) {
  const ordered = [...values].sort((a, b) => a - b);
  const half = Math.floor(values.length / 2);
  return ordered.length % 2 ? ordered[half] : (ordered[half - 1] + ordered[half]) / 2;
}
