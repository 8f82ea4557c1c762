// @ts-check
/**
 * Fit a still and its charge to a run.
 * Twin of webapp/trade/runfit.py, which has the method; the same steps, so that phone and book agree.
 */
import { makeColumn, standColumn, stepColumn, streamPct } from "./column.js";
import { READ_PCT, SHIFT_PCT, filter } from "./filter.js";
import { dot, inverse, solve } from "./matrices.js";
import { exponential } from "./vle.js";

/** @typedef {import("./batch.js").Pot} Pot */
/** @typedef {import("./column.js").Column} Column */
/** @typedef {import("./track.js").Track} Track */
/** @typedef {{ pot: Pot, volumeL: number, lpa: number, sections: number, stepL: number, fadeL: number }} Charged */
/** @typedef {{ mean: number[], spread: number[][], driftPct: number, habitPct: number[] }} Prior */
/** @typedef {{ logs: number[], covariance: number[][], driftPct: number, driftVar: number, driftSlopes: number[],
 *   slips: number[] }} Fit */
/** @typedef {import("./filter.js").Seen} Seen */
/** @typedef {{ charged: Charged, seen: Track, prior: Prior, wanted: number[][], noise: number[] }} Given */

export const NUDGE = 0.03;
const FADE = 0.25;
const ROUNDS = 2;
const SEARCHES = 6;
const ENOUGH = 1e-3;
const FURTHEST = 0.7;
const SLIP = 4.5;
const SUSPECT = 1.5;
const OUT = 1e4;
const LEAST_TO_JUDGE = 4;
const STEPS = 60;
const STEPS_MOST = 60;
const EFFICIENCY_MOST = 1.15;
const REFLUX_RANGE = [0.02, 50];
const HELD_SHARE = 0.02;
const HIGHEST = [1, 6, 1, 4, 4];

/** @param {Pot} pot @param {number} volumeL @param {number} lpa @param {number} sections @returns {Charged} */
export const chargedOf = (pot, volumeL, lpa, sections) => ({ pot, volumeL, lpa, sections, stepL: lpa / 0.7 / STEPS, fadeL: FADE * lpa });

const PLATES_UNKNOWN = 2;
const SECTIONS_MOST = 8;

/** @param {number | null | undefined} plates @returns {number} the plates, and the helm or dephlegmator */
export const sectionsOf = (plates) => Math.min(Math.max(Math.floor((plates ?? PLATES_UNKNOWN) + 0.5), 0) + 1, SECTIONS_MOST);

/** @param {number[]} tenths @param {number} share of the pure alcohol charged */
export function atShare(tenths, share) {
  const place = Math.min(Math.max(share, 0), 1) * 10;
  const i = Math.min(Math.floor(place), 9);
  return tenths[i] + (place - i) * (tenths[i + 1] - tenths[i]);
}

/** @param {Charged} charged @param {number[]} logs */
function columnOf({ pot, volumeL, sections }, logs) {
  const [efficiency, , factor, held, filled] = logs.map((value, i) => exponential(Math.min(value, HIGHEST[i])));
  const make = { sections, efficiency: Math.min(efficiency, EFFICIENCY_MOST), heldL: Math.min(held, HELD_SHARE * volumeL), filled };
  return makeColumn({ ethanolMol: pot.ethanolMol * factor, waterMol: pot.waterMol }, make);
}

/** @param {number[]} logs @param {number} rootFlow @returns {number} moles that flow back for each that runs off */
export function refluxAt(logs, rootFlow) {
  return Math.min(Math.max(exponential(Math.min(logs[1], HIGHEST[1])) / rootFlow, REFLUX_RANGE[0]), REFLUX_RANGE[1]);
}

/** Run a still down along the readings. @param {Charged} charged @param {Track} seen @param {number[]} logs @returns {{ column: Column, strengths: number[] }} */
export function play(charged, seen, logs) {
  const column = columnOf(charged, logs);
  const strengths = [];
  let litres = 0;
  let ethanol = 0;
  let both = 0;
  let turned = 0;
  for (let i = 0; i < seen.minutes.length; i++) {
    const reflux = refluxAt(logs, seen.rootFlows[i]);
    const steps = Math.min(Math.max(Math.ceil((seen.litres[i] - litres) / charged.stepL), 1), STEPS_MOST);
    const moreEthanol = (seen.ethanolMol[i] - ethanol) / steps;
    const more = (seen.ethanolMol[i] + seen.waterMol[i] - both) / steps;
    const stepL = (seen.litres[i] - litres) / steps;
    for (let k = 1; k <= steps; k++) {
      while (turned < seen.stands.length && seen.stands[turned][0] <= seen.litres[i] - stepL * (steps - k)) {
        standColumn(column, sectionsOf(seen.stands[turned++][1]));
      }
      stepColumn(column, ethanol + moreEthanol * k, both + more * k, more * (reflux + 1), more * reflux);
    }
    litres = seen.litres[i];
    ethanol = seen.ethanolMol[i];
    both = seen.ethanolMol[i] + seen.waterMol[i];
    strengths.push(streamPct(column));
  }
  return { column, strengths };
}

/** @param {number[]} logs @param {number} which */
export const nudged = (logs, which) => logs.map((value, i) => (i === which ? value + NUDGE : value));

/** @param {Charged} charged @param {Track} seen @param {Prior} prior @returns {Fit} */
export function fitRun(charged, seen, prior) {
  const noise = seen.minutes.map(() => READ_PCT * READ_PCT);
  const given = { charged, seen, prior, wanted: inverse(prior.spread), noise };
  /** @type {number[]} */
  const slips = [];
  let found = search(given, [...prior.mean]);
  const last = noise.length - 1;
  if (noise.length >= LEAST_TO_JUDGE && Math.abs(found.now.sizes[last]) > SUSPECT) {
    const others = byTheOthers(given);
    if (others.off) {
      slips.push(last);
      noise[last] *= OUT;
      found = search(given, others.logs);
    }
  }
  for (let round = 0; round < ROUNDS; round++) {
    const { sizes } = found.now;
    let worst = 0;
    for (let i = 1; i < sizes.length; i++) if (Math.abs(sizes[i]) > Math.abs(sizes[worst])) worst = i;
    const near = slips.some((slip) => Math.abs(worst - slip) <= 1);
    if (Math.abs(sizes[worst]) <= SLIP || near || noise.length < LEAST_TO_JUDGE) break;
    slips.push(worst);
    noise[worst] *= OUT;
    found = search(given, found.logs);
  }
  const { logs, now } = found;
  const leapt = seen.leaps.includes(noise.length) ? SHIFT_PCT * SHIFT_PCT : 0;
  return {
    logs, covariance: inverse(curvature(now.slopes, given.wanted)), driftPct: now.driftPct, driftVar: now.driftVar + leapt,
    driftSlopes: now.driftSlopes, slips: slips.map((i) => seen.places[i]),
  };
}

/** The still by all readings but the last, and whether the last is too far off. @param {Given} given */
function byTheOthers(given) {
  const { charged, seen, prior, wanted, noise } = given;
  const last = noise.length - 1;
  const before = { ...given, seen: { ...seen, minutes: seen.minutes.slice(0, -1) }, noise: noise.slice(0, -1) };
  const { logs, now } = search(before, [...prior.mean]);
  const misses = missesOf(given, logs);
  const slopes = slopesOf(given, logs, misses);
  const fade = exponential(-Math.max(seen.litres[last] - seen.litres[last - 1], 0) / charged.fadeL);
  const steep = now.driftSlopes.map((slope, j) => slopes[j][last] - fade * slope);
  const covariance = inverse(curvature(now.slopes, wanted));
  let variance = fade * fade * now.driftVar + prior.driftPct * prior.driftPct * (1 - fade * fade) + noise[last];
  variance += dot(steep, covariance.map((row) => dot(row, steep)));
  variance += seen.leaps.includes(last) ? SHIFT_PCT * SHIFT_PCT : 0;
  return { logs, off: Math.abs(misses[last] - fade * now.driftPct) > SLIP * Math.sqrt(variance) };
}

/** @param {Given} given @param {number[]} start */
function search(given, start) {
  const { prior, wanted } = given;
  let logs = start;
  let damping = 1e-3;
  let misses = missesOf(given, logs);
  let slopes = slopesOf(given, logs, misses);
  let now = filtered(given, misses, slopes);
  let cost = costOf(now, given, logs);
  for (let turn = 0; turn < SEARCHES; turn++) {
    const off = logs.map((value, i) => value - prior.mean[i]);
    const pull = wanted.map((row, j) => dot(now.slopes[j], now.misses) - dot(row, off));
    const damped = curvature(now.slopes, wanted)
      .map((row, i) => row.map((value, j) => value * (i === j ? 1 + damping : 1)));
    const step = solve(damped, pull);
    const tried = logs.map((value, i) => value + Math.min(Math.max(step[i], -FURTHEST), FURTHEST));
    misses = missesOf(given, tried);
    const then = filtered(given, misses, slopes);
    const newCost = costOf(then, given, tried);
    if (!(newCost <= cost)) {
      damping *= 8;
      continue;
    }
    const gained = cost - newCost;
    damping /= 5;
    [logs, now, cost] = [tried, then, newCost];
    if (gained <= ENOUGH * (1 + cost)) break;
    slopes = slopesOf(given, logs, misses);
    now = filtered(given, misses, slopes);
  }
  return { logs, now };
}

/** @param {Seen} now @param {Given} given @param {number[]} logs */
function costOf(now, { prior, wanted }, logs) {
  const off = logs.map((value, i) => value - prior.mean[i]);
  return dot(now.misses, now.misses) + dot(off, wanted.map((row) => dot(row, off)));
}

/** @param {number[][]} slopes @param {number[][]} wanted */
const curvature = (slopes, wanted) => wanted.map((row, i) => row.map((value, j) => value + dot(slopes[i], slopes[j])));

/** Strength as read less model and habit at each reading [% vol]. @param {Given} given @param {number[]} logs */
function missesOf({ charged, seen, prior }, logs) {
  return play(charged, seen, logs).strengths
    .map((strength, i) => seen.strengths[i] - atShare(prior.habitPct, seen.lpas[i] / charged.lpa) - strength);
}

/** @param {Given} given @param {number[]} logs @param {number[]} misses */
const slopesOf = (given, logs, misses) => logs.map((_, j) => missesOf(given, nudged(logs, j)).map((moved, i) => (misses[i] - moved) / NUDGE));

/** @param {Given} given @param {number[]} misses @param {number[][]} slopes */
function filtered({ charged, seen, prior, noise }, misses, slopes) {
  return filter(seen.litres, charged.fadeL, prior.driftPct * prior.driftPct, noise, misses, slopes, seen.leaps);
}
