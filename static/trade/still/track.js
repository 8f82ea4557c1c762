// @ts-check
/**
 * The run as it was read: which readings count, and what had run off by each.
 * Twin of webapp/trade/runtrack.py, which says why.
 */
import { streamMoles } from "./batch.js";

const RISE_PCT = 2;
const SLIPS_MOST = 2;
const SMOOTHED = 3;
const ROOT_RANGE = [0.05, 90];
const DIP_SHARE = [0.6, 1.6];

/**
 * @typedef {{ minutes: number, strength_pct: number, flow_l_h?: number | null }} Reading minutes since the first drop
 * @typedef {{ charge?: { volume_l: number, lpa_l: number } | null, readings: Reading[],
 *   collected?: { minutes: number, volume_l: number }[], changes?: { minutes: number, plates?: number | null }[], still?: { plates?: number | null, height_m?: number | null },
 *   receiver_since?: number | null }} Run
 * @typedef {{ minutes: number[], strengths: number[], litres: number[], lpas: number[], ethanolMol: number[],
 *   waterMol: number[], flowsLh: (number | null)[], correction: number, places: number[], leftOut: number[],
 *   since: number, rootFlows: number[], settings: number[], leaps: number[], stands: [number, number][] }} Track rootFlows:
 *   of the flow at each reading, smoothed; leaps: readings at which the drift may leap, their number itself where the
 *   still was changed since; stands: plates in work from so many litres on
 */

/** @param {Run} run @param {number | null} usualFlowLh @returns {Track | null} null if nothing tells how much ran */
export function makeTrack(run, usualFlowLh) {
  const { readings } = run;
  const changes = [...(run.changes ?? [])].sort((a, b) => a.minutes - b.minutes);
  const told = readings.map(({ minutes }) => changes.filter((change) => change.minutes <= minutes).length);
  const { kept, leftOut, since } = tidy(readings.map((reading) => reading.strength_pct), told);
  const { litres, correction } = litresBy([...readings, ...changes].map(({ minutes }) => minutes), readings, run.collected ?? [], usualFlowLh);
  if (!litres) return null;
  const settings = kept.map((i) => told[i]);
  const after = [...settings, changes.length];
  const leaps = after.map((_, k) => k).filter((k) => k > 0 && (after[k] > after[k - 1] || (k === since && k < kept.length)));
  /** @type {[number, number][]} */
  const stands = [];
  changes.forEach(({ plates }, i) => {
    if (plates !== null && plates !== undefined) stands.push([litres[readings.length + i], plates]);
  });
  /** @type {Track} */
  const found = {
    minutes: [], strengths: [], litres: [], lpas: [], ethanolMol: [], waterMol: [], flowsLh: [],
    correction, places: kept, leftOut, since, rootFlows: [], settings, leaps, stands,
  };
  let beforeL = 0;
  let beforePct = 0;
  let lpa = 0;
  let ethanol = 0;
  let water = 0;
  for (const i of kept) {
    const strength = run.readings[i].strength_pct;
    const mean = found.minutes.length ? (beforePct + strength) / 2 : strength;
    const passed = litres[i] - beforeL;
    const more = streamMoles(passed, mean);
    lpa += (passed * mean) / 100;
    ethanol += more[0];
    water += more[1];
    found.minutes.push(run.readings[i].minutes);
    found.strengths.push(strength);
    found.litres.push(litres[i]);
    found.lpas.push(lpa);
    found.ethanolMol.push(ethanol);
    found.waterMol.push(water);
    found.flowsLh.push(run.readings[i].flow_l_h ?? null);
    beforeL = litres[i];
    beforePct = strength;
  }
  found.rootFlows = rootFlowsOf(found);
  return found;
}

/** @param {Track} found @returns {number[]} */
function rootFlowsOf({ minutes, litres, flowsLh, correction, settings }) {
  /** @type {[number, number][]} */
  const read = [];
  flowsLh.forEach((flow, i) => {
    if (flow) read.push([i, flow * correction]);
  });
  const last = minutes.length - 1;
  if (!read.length) {
    const passedH = Math.max(minutes[last] - minutes[0], 1) / 60;
    return minutes.map(() => rootOf((litres[last] - litres[0]) / passedH));
  }
  const roots = read.map(([i], j) => {
    const begin = Math.max(0, Math.min(j - 1, read.length - SMOOTHED));
    const near = read.slice(begin, begin + SMOOTHED).filter(([k]) => settings[k] === settings[i]);
    return rootOf(middle(near.map(([, flow]) => flow)));
  });
  let k = 0;
  return minutes.map((_, i) => {
    while (k < read.length - 1 && read[k][0] < i) k++;
    return roots[k];
  });
}

/** @param {number} flowLh */
const rootOf = (flowLh) => Math.min(Math.max(Math.sqrt(Math.max(flowLh, 0)), ROOT_RANGE[0]), ROOT_RANGE[1]);

/** @param {number[]} values @returns {number} the middle one, or the mean of the two in the middle */
export function middle(values) {
  const ordered = [...values].sort((a, b) => a - b);
  const half = Math.floor(values.length / 2);
  return ordered.length % 2 ? ordered[half] : (ordered[half - 1] + ordered[half]) / 2;
}

/** @param {number[]} strengths @param {number[]} settings how many changes were told by each @returns which readings count, which are slips, the first since the stream last rose for good */
export function tidy(strengths, settings) {
  const kept = strengths.map((_, i) => i);
  /** @type {number[]} */
  const leftOut = [];
  while (leftOut.length < SLIPS_MOST) {
    const slip = findSlip(kept.map((i) => [settings[i], strengths[i]]));
    if (slip === null) break;
    leftOut.push(...kept.splice(slip, 1));
  }
  let since = 0;
  for (let k = 1; k < kept.length; k++) {
    if (strengths[kept[k]] - strengths[kept[k - 1]] > RISE_PCT) since = k;
  }
  return { kept, leftOut: leftOut.sort((a, b) => a - b), since };
}

/** @param {[number, number][]} values setting and strength @returns {number | null} the place of the reading that alone makes the stream rise */
function findSlip(values) {
  if (values.length < 3) return null;
  const before = rises(values);
  for (let k = 1; k < values.length; k++) {
    if (!isRise(values[k - 1], values[k])) continue;
    let least = 0;
    let found = null;
    for (const place of [k - 1, k]) {
      if (rises(values.filter((_, i) => i !== place)) >= before) continue;
      const off = departure(values.map(([, strength]) => strength), place, k - 1, k);
      if (found === null || off > least) {
        least = off;
        found = place;
      }
    }
    if (found !== null) return found;
  }
  return null;
}

/** Whether the stream rises under the same setting, as far as was told. @param {[number, number]} before @param {[number, number]} after */
const isRise = (before, after) => before[0] === after[0] && after[1] - before[1] > RISE_PCT;

/** @param {[number, number][]} values */
function rises(values) {
  let count = 0;
  for (let k = 1; k < values.length; k++) if (isRise(values[k - 1], values[k])) count += 1;
  return count;
}

/** @param {number[]} values @param {number} place @param {number} first @param {number} second */
function departure(values, place, first, second) {
  const others = values.map((_, i) => i).filter((i) => i !== first && i !== second);
  others.sort((a, b) => Math.abs(a - place) - Math.abs(b - place) || a - b);
  const [a, b] = others;
  if (others.length < 2) return Math.abs(values[place] - values[a]);
  return Math.abs(values[place] - (values[a] + ((values[b] - values[a]) * (place - a)) / (b - a)));
}

/** @param {number[]} times @param {Reading[]} readings @param {{ minutes: number, volume_l: number }[]} dips @param {number | null} usualFlowLh */
function litresBy(times, readings, dips, usualFlowLh) {
  /** @type {[number, number][]} */
  let flows = [];
  for (const { minutes, flow_l_h: flow } of readings) if (flow !== null && flow !== undefined) flows.push([minutes, flow]);
  /** @type {[number, number][]} */
  const knots = [[0, 0]];
  for (const dip of [...dips].sort((a, b) => a.minutes - b.minutes || a.volume_l - b.volume_l)) {
    const [minute, volumeL] = knots[knots.length - 1];
    if (dip.minutes > minute && dip.volume_l >= volumeL) knots.push([dip.minutes, dip.volume_l]);
  }
  if (!flows.length && knots.length === 1) {
    if (!usualFlowLh) return { litres: null, correction: 1 };
    flows = [[0, usualFlowLh]];
  }
  const byFlow = times.map((minute) => runOff(flows, minute));
  if (knots.length === 1) return { litres: byFlow, correction: 1 };
  const atKnots = knots.map(([minute]) => runOff(flows, minute));
  const litres = times.map((minute, i) => byDips(minute, byFlow[i], knots, atKnots));
  const last = knots.length - 1;
  return { litres, correction: shareOf(knots[last][1], atKnots[last]) };
}

/** @param {[number, number][]} flows @param {number} minute */
function runOff(flows, minute) {
  if (!flows.length || minute <= 0) return 0;
  let total = 0;
  let before = 0;
  let flow = flows[0][1];
  for (const [at, value] of flows) {
    if (at <= before) {
      flow = value;
      continue;
    }
    if (at >= minute) {
      const there = flow + ((value - flow) * (minute - before)) / (at - before);
      return total + (((flow + there) / 2) * (minute - before)) / 60;
    }
    total += (((flow + value) / 2) * (at - before)) / 60;
    before = at;
    flow = value;
  }
  return total + (flow * (minute - before)) / 60;
}

/** @param {number} dippedL @param {number} byFlowL */
function shareOf(dippedL, byFlowL) {
  const share = byFlowL > 0 ? dippedL / byFlowL : 1;
  return share >= DIP_SHARE[0] && share <= DIP_SHARE[1] ? share : 1;
}

/** @param {number} minute @param {number} byFlowL @param {[number, number][]} knots @param {number[]} atKnots */
function byDips(minute, byFlowL, knots, atKnots) {
  const last = knots.length - 1;
  for (let i = 1; i <= last; i++) {
    const [a, low] = knots[i - 1];
    const [b, high] = knots[i];
    if (minute > b) continue;
    const ran = atKnots[i] - atKnots[i - 1];
    const share = ran > 0 ? (byFlowL - atKnots[i - 1]) / ran : b > a ? (minute - a) / (b - a) : 1;
    return low + (high - low) * share;
  }
  const [a, low] = knots[last - 1];
  const [b, high] = knots[last];
  if (atKnots[last] > 0) return high + (byFlowL - atKnots[last]) * shareOf(high, atKnots[last]);
  return b > a ? high + ((high - low) / (b - a)) * (minute - b) : high;
}
