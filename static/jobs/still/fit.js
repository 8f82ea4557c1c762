// @ts-check
/**
 * Fit a still's stages, its reflux and the alcohol in its pot to a run.
 * Twin of webapp/trade/runfit.py, which has the method; the same steps, so that phone and book agree.
 */
import { columnStrengthPct, makeColumn, moleFraction } from "./batch.js";
import { exponential } from "./vle.js";

/** @typedef {import("./batch.js").Pot} Pot */
/** @typedef {import("./track.js").Track} Track */
/** @typedef {{ mean: number[], spread: number[][], driftPct: number, habitPct: number[] }} Prior */
/** @typedef {{ logs: number[], covariance: number[][], driftPct: number, driftVar: number, driftSlopes: number[],
 *   slips: number[] }} Fit */
/** @typedef {{ misses: number[], slopes: number[][], sizes: number[], driftPct: number, driftVar: number,
 *   driftSlopes: number[] }} Seen */
/** @typedef {{ charge: Pot, lpa: number, track: Track, prior: Prior, wanted: number[][] }} Given */

export const NUDGE = 0.02;
export const FADE = 0.25;
const READ_PCT = 0.5;
const ROUNDS = 3;
const SEARCHES = 14;
const SLIP = 4.5;
const OUT = 1e4;
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
  /** @type {number[]} */
  const slips = [];
  let found = search(given, noise, [...prior.mean]);
  for (let round = 0; round < ROUNDS - 1; round++) {
    const { sizes } = found.seen;
    let worst = 0;
    for (let i = 1; i < sizes.length; i++) if (Math.abs(sizes[i]) > Math.abs(sizes[worst])) worst = i;
    const near = slips.some((slip) => Math.abs(worst - slip) <= 1);
    if (Math.abs(sizes[worst]) <= SLIP || near || noise.length < 4) break;
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
      if (gained <= 1e-7 * (1 + cost)) break;
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

/** @param {Given} given @param {number[]} logs @returns {number[]} % vol above model and habit */
function missesOf({ charge, lpa, track, prior }, logs) {
  const column = columnOf(logs);
  const found = [];
  for (let i = track.since; i < track.minutes.length; i++) {
    const pot = potAt(charge, logs, track.ethanolMol[i], track.waterMol[i]);
    found.push(track.strengths[i] - atShare(prior.habitPct, track.lpas[i] / lpa)
      - columnStrengthPct(column, moleFraction(pot)));
  }
  return found;
}

/** @param {Given} given @param {number[]} noise @param {number[]} logs @returns {Seen} */
function look(given, noise, logs) {
  const misses = missesOf(given, logs);
  const columns = [0, 1, 2].map((j) => {
    const up = missesOf(given, nudged(logs, j, NUDGE));
    const down = missesOf(given, nudged(logs, j, -NUDGE));
    return down.map((low, i) => (low - up[i]) / (2 * NUDGE));
  });
  const { track, lpa, prior } = given;
  return filter(track.litres.slice(track.since), FADE * lpa, prior.driftPct * prior.driftPct, noise, misses, columns);
}

/**
 * Kalman's filter of a drift that fades, read with noise: it whitens misses and slopes alike.
 * @param {number[]} litres @param {number} fadeL @param {number} driftVar @param {number[]} noise
 * @param {number[]} misses @param {number[][]} columns @returns {Seen}
 */
function filter(litres, fadeL, driftVar, noise, misses, columns) {
  const held = [0, 0, 0, 0];
  let variance = driftVar;
  let before = litres[0];
  /** @type {number[][]} */
  const white = [[], [], [], []];
  const sizes = [];
  for (let k = 0; k < misses.length; k++) {
    const fade = exponential(-Math.max(litres[k] - before, 0) / fadeL);
    before = litres[k];
    variance = fade * fade * variance + driftVar * (1 - fade * fade);
    const error = Math.sqrt(variance + noise[k]);
    const gain = variance / (variance + noise[k]);
    const values = [misses[k], columns[0][k], columns[1][k], columns[2][k]];
    for (let j = 0; j < 4; j++) {
      const expected = fade * held[j];
      white[j].push((values[j] - expected) / error);
      held[j] = expected + gain * (values[j] - expected);
      if (j === 0) sizes.push((values[0] - expected) / Math.sqrt(variance + READ_PCT * READ_PCT));
    }
    variance *= 1 - gain;
  }
  return {
    misses: white[0], slopes: white.slice(1), sizes, driftPct: held[0], driftVar: variance, driftSlopes: held.slice(1),
  };
}

/** @param {number[]} one @param {number[]} other */
export function dot(one, other) {
  let total = 0;
  for (let i = 0; i < one.length; i++) total += one[i] * other[i];
  return total;
}

/** @param {number[][]} m symmetric, of three rows */
function inverse(m) {
  const [a, b, c] = m[0];
  const [d, e] = [m[1][1], m[1][2]];
  const f = m[2][2];
  const one = d * f - e * e;
  const two = c * e - b * f;
  const three = b * e - c * d;
  const whole = a * one + b * two + c * three;
  return [
    [one / whole, two / whole, three / whole],
    [two / whole, (a * f - c * c) / whole, (b * c - a * e) / whole],
    [three / whole, (b * c - a * e) / whole, (a * d - b * b) / whole],
  ];
}
