// @ts-check
/**
 * Fit a still's stages, its reflux and the alcohol in its pot to a run.
 * Twin of webapp/trade/runfit.py, which has the method; the same steps, so that phone and book agree.
 */
import { columnStrengthPct, makeColumn, moleFraction } from "./batch.js";
import { READ_PCT, dot, filter, inverse } from "./filter.js";
import { exponential } from "./vle.js";

/** @typedef {import("./batch.js").Pot} Pot */
/** @typedef {import("./track.js").Track} Track */
/** @typedef {{ mean: number[], spread: number[][], driftPct: number, habitPct: number[] }} Prior */
/** @typedef {{ logs: number[], covariance: number[][], driftPct: number, driftVar: number, driftSlopes: number[],
 *   slips: number[] }} Fit */
/** @typedef {import("./filter.js").Seen} Seen */
/** @typedef {{ charge: Pot, lpa: number, track: Track, prior: Prior, wanted: number[][] }} Given */

export const NUDGE = 0.02;
export const FADE = 0.25;
const ROUNDS = 3;
const SEARCHES = 12;
const ENOUGH = 1e-6;
const SLIP = 4.5;
const OUT = 1e4;
const LEAST_TO_JUDGE = 4;
const STAGES_MOST = 6;
const REFLUX_MOST = 50;

/** @param {number[]} logs */
export function columnOf(logs) {
  return makeColumn(
    1 + Math.min(exponential(Math.min(logs[0], 3)), STAGES_MOST),
    Math.min(exponential(Math.min(logs[1], 5)), REFLUX_MOST),
  );
}

/** @param {number[]} tenths @param {number} share of the pure alcohol charged */
export function atShare(tenths, share) {
  const place = Math.min(Math.max(share, 0), 1) * 10;
  const i = Math.min(Math.floor(place), 9);
  return tenths[i] + (place - i) * (tenths[i + 1] - tenths[i]);
}

/** @param {Pot} charge @param {number[]} logs @param {number} ethanolMol @param {number} waterMol off so far @returns {Pot} */
export function potAt(charge, logs, ethanolMol, waterMol) {
  const full = charge.ethanolMol * exponential(logs[2]);
  return {
    ethanolMol: Math.max(full - ethanolMol, full * 1e-6),
    waterMol: Math.max(charge.waterMol - waterMol, charge.waterMol * 1e-3),
  };
}

/** @param {number[]} logs @param {number} which @param {number} by */
export function nudged(logs, which, by) {
  return logs.map((value, i) => (i === which ? value + by : value));
}

/** @param {Pot} charge @param {number} lpa @param {Track} track @param {Prior} prior @returns {Fit} */
export function fitRun(charge, lpa, track, prior) {
  const given = { charge, lpa, track, prior, wanted: inverse(prior.spread) };
  const noise = new Array(track.minutes.length - track.since).fill(READ_PCT * READ_PCT);
  const others = byTheOthers(given, noise);
  const slips = others.off ? [noise.length - 1] : [];
  for (const slip of slips) noise[slip] *= OUT;
  let found = search(given, noise, others.logs);
  for (let round = 0; round < ROUNDS - 1; round++) {
    const { sizes } = found.seen;
    let worst = 0;
    for (let i = 1; i < sizes.length; i++) if (Math.abs(sizes[i]) > Math.abs(sizes[worst])) worst = i;
    const near = slips.some((slip) => Math.abs(worst - slip) <= 1);
    if (Math.abs(sizes[worst]) <= SLIP || near || noise.length < LEAST_TO_JUDGE) break;
    slips.push(worst);
    noise[worst] *= OUT;
    found = search(given, noise, found.logs);
  }
  const { logs, seen } = found;
  return {
    logs, covariance: inverse(curvature(seen.slopes, given.wanted)), driftPct: seen.driftPct, driftVar: seen.driftVar,
    driftSlopes: seen.driftSlopes, slips: slips.map((i) => track.places[track.since + i]),
  };
}

/** The still by all readings but the last, and whether the last is too far off. @param {Given} given @param {number[]} noise */
function byTheOthers(given, noise) {
  const { track, lpa, prior, wanted } = given;
  if (noise.length < LEAST_TO_JUDGE) return { logs: [...prior.mean], off: false };
  const before = { ...given, track: { ...track, minutes: track.minutes.slice(0, -1) } };
  const { logs, seen } = search(before, noise.slice(0, -1), [...prior.mean]);
  const { misses, slopes } = missesAndSlopes(given, logs);
  const last = noise.length - 1;
  const end = track.litres.length - 1;
  const fade = exponential(-Math.max(track.litres[end] - track.litres[end - 1], 0) / (FADE * lpa));
  const steep = seen.driftSlopes.map((slope, j) => slopes[j][last] - fade * slope);
  const covariance = inverse(curvature(seen.slopes, wanted));
  let variance = fade * fade * seen.driftVar + prior.driftPct * prior.driftPct * (1 - fade * fade) + noise[last];
  variance += dot(steep, covariance.map((row) => dot(row, steep)));
  return { logs, off: Math.abs(misses[last] - fade * seen.driftPct) > SLIP * Math.sqrt(variance) };
}

/** @param {Given} given @param {number[]} noise @param {number[]} logs */
function search(given, noise, logs) {
  const { prior, wanted } = given;
  let damping = 1e-3;
  let seen = look(given, noise, logs);
  let cost = costOf(seen, given, logs);
  for (let turn = 0; turn < SEARCHES; turn++) {
    const off = logs.map((value, i) => value - prior.mean[i]);
    const pull = wanted.map((row, j) => dot(seen.slopes[j], seen.misses) - dot(row, off));
    const damped = curvature(seen.slopes, wanted)
      .map((row, i) => row.map((value, j) => value * (i === j ? 1 + damping : 1)));
    const step = inverse(damped).map((row) => dot(row, pull));
    const tried = logs.map((value, i) => value + Math.min(Math.max(step[i], -1), 1));
    const then = look(given, noise, tried);
    const newCost = costOf(then, given, tried);
    if (newCost <= cost) {
      const gained = cost - newCost;
      damping /= 5;
      logs = tried;
      seen = then;
      cost = newCost;
      if (gained <= ENOUGH * (1 + cost)) break;
    } else {
      damping *= 8;
    }
  }
  return { logs, seen };
}

/** @param {Seen} seen @param {Given} given @param {number[]} logs */
function costOf(seen, { prior, wanted }, logs) {
  const off = logs.map((value, i) => value - prior.mean[i]);
  return dot(seen.misses, seen.misses) + dot(off, wanted.map((row) => dot(row, off)));
}

/** @param {number[][]} slopes @param {number[][]} wanted */
function curvature(slopes, wanted) {
  return wanted.map((row, i) => row.map((value, j) => value + dot(slopes[i], slopes[j])));
}

/**
 * @param {Given} given @param {number[]} logs @param {import("./batch.js").Column} column
 * @returns {number[]} % vol above model and habit
 */
function missesOf({ charge, lpa, track, prior }, logs, column) {
  const found = [];
  for (let i = track.since; i < track.minutes.length; i++) {
    const pot = potAt(charge, logs, track.ethanolMol[i], track.waterMol[i]);
    found.push(track.strengths[i] - atShare(prior.habitPct, track.lpas[i] / lpa)
      - columnStrengthPct(column, moleFraction(pot)));
  }
  return found;
}

/** The misses, and the slopes of the model at each reading. @param {Given} given @param {number[]} logs */
function missesAndSlopes(given, logs) {
  const column = columnOf(logs);
  const misses = missesOf(given, logs, column);
  const slopes = [0, 1, 2].map((j) => {
    const [up, down] = [NUDGE, -NUDGE].map((by) => nudged(logs, j, by))
      .map((moved) => missesOf(given, moved, j === 2 ? column : columnOf(moved)));
    return down.map((low, i) => (low - up[i]) / (2 * NUDGE));
  });
  return { misses, slopes };
}

/** @param {Given} given @param {number[]} noise @param {number[]} logs @returns {Seen} */
function look(given, noise, logs) {
  const { misses, slopes } = missesAndSlopes(given, logs);
  const { track, lpa, prior } = given;
  return filter(track.litres.slice(track.since), FADE * lpa, prior.driftPct * prior.driftPct, noise, misses, slopes);
}
