// @ts-check
/** What has run off, from flow times minutes and from dips of the receivers; against each other, and in the receiver now open. */
import { heldLimit } from "../../kinds/limits.js";
import { densityFromMassFraction, densityFromStrength } from "../../trade/density.js";

/**
 * @typedef {{at: number, minutes: number, litres: number, lpa: number, kg: number}} Point collected since the first drop, as it flowed [ms, min, L, L, kg]
 * @typedef {{at: number, minutes: number, strength: number|null, flow: number|null, vapour: number|null, temp: number|null, dip: number|null, remnant: number, receiver: string, plates: number|null, entry: string}} Line
 * @typedef {{zero: number, lines: Line[], points: Point[], by: "flow"|"dips"|""}} Stream
 */

/** @param {any} run @param {string} event @returns {any} the last such event */
const eventOf = (run, event) => run.cuts.filter((/** @type {any} */ cut) => cut.event === event).at(-1);

/**
 * The stream over the safe, in order of time.
 * @param {any} run as the card has it @returns {Stream}
 */
export function streamOf(run) {
  const byEntry = new Map([...run.cuts, ...run.readings, ...(run.end ? [run.end] : [])].map((line) => [line.entry, line]));
  const raw = [...byEntry.values()].sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
  const drop = eventOf(run, "first_drop");
  const first = raw.find((line) => line.true_strength != null || line.flow != null);
  const zero = Date.parse(drop?.at ?? first?.at ?? run.started_at);
  const lines = raw.filter((line) => Date.parse(line.at) >= zero).map((line) => ({
    at: Date.parse(line.at), minutes: (Date.parse(line.at) - zero) / 60_000, strength: line.true_strength ?? null, flow: line.flow ?? null,
    vapour: line.vapour_temp ?? null, temp: line.temp ?? null, dip: line.dip ?? null, remnant: line.remnant_l ?? 0,
    receiver: line.receiver ?? "", plates: line.plates ?? null, entry: line.entry,
  }));
  const flows = lines.filter((line) => line.flow !== null);
  const dips = dipTotals(run, lines);
  const isFlow = flows.length >= 2 || (flows.length === 1 && dips.length === 0);
  const points = isFlow ? byFlow(zero, flows, lines) : dips.length ? byDips(zero, dips, lines) : [];
  return { zero, lines, points, by: isFlow && flows.length ? "flow" : dips.length ? "dips" : "" };
}

/** Trapezoids from the first drop on, at the first flow read until then. @param {number} zero @param {Line[]} flows @param {Line[]} lines */
function byFlow(zero, flows, lines) {
  if (!flows.length) return [];
  const times = [...new Set([zero, ...lines.map((line) => line.at)])].sort((a, b) => a - b);
  const flowAt = (/** @type {number} */ at) => between(flows.map((line) => [line.at, /** @type {number} */ (line.flow)]), at);
  return summed(zero, times, lines, (from, to) => ((flowAt(from) + flowAt(to)) / 2) * ((to - from) / 3_600_000));
}

/** @param {number} zero @param {[number, number][]} dips time and litres since the first drop @param {Line[]} lines */
function byDips(zero, dips, lines) {
  const known = /** @type {[number, number][]} */ ([[zero, 0], ...dips]);
  const last = known[known.length - 1][0];
  const times = [...new Set([...known.map(([at]) => at), ...lines.map((line) => line.at)])].filter((at) => at <= last).sort((a, b) => a - b);
  return summed(zero, times, lines, (from, to) => between(known, to) - between(known, from));
}

/** @param {number} zero @param {number[]} times @param {Line[]} lines @param {(from: number, to: number) => number} litresIn @returns {Point[]} */
function summed(zero, times, lines, litresIn) {
  const strengths = lines.filter((line) => line.strength !== null).map((line) => /** @type {[number, number]} */ ([line.at, /** @type {number} */ (line.strength)]));
  const point = { at: zero, minutes: 0, litres: 0, lpa: 0, kg: 0 };
  const points = [{ ...point }];
  for (let n = 1; n < times.length; n += 1) {
    const litres = litresIn(times[n - 1], times[n]);
    const pct = strengths.length ? (between(strengths, times[n - 1]) + between(strengths, times[n])) / 2 : NaN;
    point.at = times[n];
    point.minutes = (times[n] - zero) / 60_000;
    point.litres += litres;
    if (Number.isFinite(pct)) {
      point.lpa += (litres * pct) / 100;
      point.kg += (litres * densityFromStrength(clamp(pct), 20)) / 1000;
    }
    points.push({ ...point });
  }
  return points;
}

/** Each dip as litres since the first drop: what the receivers before it had at their last dip, and what has come into this one. @param {any} run @param {Line[]} lines @returns {[number, number][]} */
function dipTotals(run, lines) {
  /** @type {Map<string, number>} */
  const got = new Map();
  return lines.filter((line) => line.dip !== null).map((line) => {
    got.set(line.receiver || run.receiver || "", Math.max(0, /** @type {number} */ (line.dip) - line.remnant));
    return [line.at, [...got.values()].reduce((sum, litres) => sum + litres, 0)];
  });
}

/** @param {Stream} stream @param {number} at [ms] @returns {Point} collected by then; held at the last reading */
export function collectedAt(stream, at) {
  const pick = (/** @type {"litres"|"lpa"|"kg"} */ name) => between(stream.points.map((point) => [point.at, point[name]]), at);
  return { at, minutes: (at - stream.zero) / 60_000, litres: pick("litres"), lpa: pick("lpa"), kg: pick("kg") };
}

/**
 * The receiver now open: since when, what it got, and the strength of all of it together.
 * @param {any} run @param {Stream} stream
 * @returns {{since: number, until: number, litres: number, lpa: number, strength: number|null}|null} null where neither flow nor dip was read
 */
export function openReceiver(run, stream) {
  if (stream.points.length < 2) return null;
  const until = run.ended_at ? Date.parse(run.ended_at) : stream.points[stream.points.length - 1].at;
  const opened = run.cuts.filter((/** @type {any} */ cut) => cut.event === "heads_cut" || cut.event === "hearts_cut").map((/** @type {any} */ cut) => Date.parse(cut.at));
  const since = Math.max(stream.zero, ...opened);
  return { since, until, ...shareOf(stream, since, until) };
}

/** @param {Stream} stream @param {number} since @param {number} until @returns {{litres: number, lpa: number, strength: number|null}} */
export function shareOf(stream, since, until) {
  const [from, to] = [collectedAt(stream, since), collectedAt(stream, until)];
  const [litres, lpa, kg] = [to.litres - from.litres, to.lpa - from.lpa, to.kg - from.kg];
  return { litres, lpa, strength: kg > 0 ? mixedStrength(lpa, kg) : null };
}

/** Volumes do not add, mass does. @param {number} lpa [L] @param {number} kg */
function mixedStrength(lpa, kg) {
  const share = (lpa * densityFromMassFraction(1, 20)) / 1000 / kg;
  return Math.min(100, (lpa * densityFromMassFraction(clamp(share, 1), 20)) / 10 / kg);
}

/**
 * The last dip of the receiver now open against what has flowed into it (checks of the book: dip_flow).
 * @param {any} run @param {Stream} stream @param {any} [card] of the still
 * @returns {{at: number, flowed: number, got: number, off: number, most: number, isApart: boolean}|null} [L, L, % of the dip, %]
 */
export function compared(run, stream, card) {
  const dip = stream.lines.filter((line) => line.dip !== null && (!line.receiver || line.receiver === run.receiver)).at(-1);
  if (!dip || stream.by !== "flow") return null;
  const open = openReceiver(run, stream);
  if (!open || dip.at <= open.since) return null;
  const flowed = shareOf(stream, open.since, dip.at).litres;
  const got = Math.max(0, /** @type {number} */ (dip.dip) - dip.remnant);
  // What differs by no more, and what is too little for a jug and a watch.
  const [most, leastL] = [heldLimit("flow_pct", card, run), heldLimit("flow_least_l", card, run)];
  const off = ((flowed - got) / Math.max(got, leastL)) * 100;
  return { at: dip.at, flowed, got, off, most, isApart: Math.max(flowed, got) >= leastL && Math.abs(off) > most };
}

/** Straight between two, held beyond either end. @param {[number, number][]} known rising @param {number} at */
export function between(known, at) {
  if (!known.length) return NaN;
  if (at <= known[0][0]) return known[0][1];
  for (let n = 1; n < known.length; n += 1) {
    const [[x0, y0], [x1, y1]] = [known[n - 1], known[n]];
    if (at <= x1) return x1 > x0 ? y0 + ((y1 - y0) * (at - x0)) / (x1 - x0) : y1;
  }
  return known[known.length - 1][1];
}

/** @param {number} value @param {number} [most] */
const clamp = (value, most = 100) => Math.min(most, Math.max(0, value));
