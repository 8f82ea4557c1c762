// @ts-check
/** The run drawn in three ways: against pure alcohol collected, against time, and vapour temperature against strength. */
import { cutMarks, eventOf, firstPart, isStripping, partNow } from "./state.js";
import { curveInUnits } from "../../shell/inunits.js";
import { vapourTempC } from "../../trade/still.js";
import { between, collectedAt, streamOf } from "./collect.js";
import { t } from "../../words/later.js";

/**
 * @typedef {"time"|"alcohol"|"vapour"} Way
 * @typedef {import("./collect.js").Stream} Stream
 * @typedef {{run: any, stream: Stream, ghosts: {run: any, isBest: boolean}[], due: any, target: {pct: number|null, words: string}|null, offsetC: number, heightM: number}} Shown
 */

const GHOSTS = 2;
const CUTS = ["hearts_cut", "heads_cut"];

/** On a phone laid on its side it stands over the cuts. */
const heightNow = () => (matchMedia("(orientation: landscape) and (max-height: 30rem)").matches ? 190 : 230);

/** @param {Way} way @param {Shown} shown @returns {any} as drawCurve takes it, or null while there is nothing to draw */
export function curveBy(way, shown) {
  if (way === "vapour") return againstVapour(shown);
  const { run, stream } = shown;
  const toX = way === "time" ? (/** @type {number} */ at) => at / 1000 : (/** @type {number} */ at) => collectedAt(stream, at).lpa;
  const points = strengths(stream).map(([at, pct]) => [toX(at), pct]);
  if (!points.length || (way === "alcohol" && stream.points.length < 2)) return null;
  return curveInUnits({
    title: way === "time" ? t("floor-true_strength_over_time") : t("floor-curve-true_strength_over_pure"),
    yLabel: "% vol", xIsTime: way === "time", xLabel: way === "time" ? t("floor-time") : t("floor-curve-l_pure_alcohol"), yDecimals: 1, height: heightNow(),
    series: [{ label: "", points: rising(points) }],
    ghosts: shown.ghosts.slice(0, GHOSTS).reverse().map((ghost) => ghostOf(ghost, run, way, toX)).filter((line) => line.points.length > 1),
    ...(ahead(way, shown) ? { expected: ahead(way, shown) } : {}),
    bands: bandsOf(run, stream, toX), marks: cutMarks(run, toX),
    levels: shown.target?.pct ? [{ y: shown.target.pct, label: shown.target.words }] : [],
  }, "pct_vol", way === "time" ? undefined : "LPA");
}

/** @param {Stream} stream @returns {[number, number][]} */
const strengths = (stream) => stream.lines.filter((line) => line.strength !== null).map((line) => [line.at, /** @type {number} */ (line.strength)]);

/** No two points above each other: the chart joins lines by x. @param {number[][]} points */
const rising = (points) => points.filter((point, n) => n === 0 || point[0] > points[n - 1][0]);

/** A run before, moved so that its last cut lies on ours. @param {{run: any, isBest: boolean}} ghost @param {any} run @param {Way} way @param {(at: number) => number} toX */
function ghostOf({ run: before, isBest }, run, way, toX) {
  const stream = streamOf(before);
  const own = way === "time" ? (/** @type {number} */ at) => at / 1000 : (/** @type {number} */ at) => collectedAt(stream, at).lpa;
  const cut = CUTS.find((event) => eventOf(run, event) && eventOf(before, event));
  const zeroOf = (/** @type {any} */ one) => Date.parse(one.cuts.find((/** @type {any} */ event) => event.event === "first_drop")?.at ?? one.started_at);
  const moved = cut ? toX(Date.parse(eventOf(run, cut).at)) - own(Date.parse(eventOf(before, cut).at)) : toX(zeroOf(run)) - own(zeroOf(before));
  const points = way === "alcohol" && stream.points.length < 2 ? [] : strengths(stream).map(([at, pct]) => [own(at) + moved, pct]);
  const isDrawn = (/** @type {number[]} */ [x]) => way === "time" || x >= 0; // shifted, a run before may begin before nothing
  return { label: [before.name || t("floor-run_before"), isBest && t("floor-best")].filter(Boolean).join(", "), points: rising(points.filter(isDrawn)) };
}

/** What is expected, from the last reading to a little past the cut. @param {Way} way @param {Shown} shown */
function ahead(way, { due, stream }) {
  if (due?.state !== "due") return null;
  const points = due.curve.map((/** @type {number[]} */ [minutes, pct, , lpa]) => [way === "time" ? stream.zero / 1000 + minutes * 60 : lpa, pct]);
  return points.length > 1 && points.every((/** @type {number[]} */ point) => Number.isFinite(point[0])) ? { label: "", points: rising(points) } : null;
}

/** @param {any} run @param {Stream} stream @param {(at: number) => number} toX */
function bandsOf(run, stream, toX) {
  const [heads, hearts] = ["heads_cut", "hearts_cut"].map((event) => eventOf(run, event)?.at).map((at) => (at ? Date.parse(at) : undefined));
  const now = run.ended_at ? Date.parse(run.ended_at) : Math.max(stream.zero, ...stream.lines.map((line) => line.at));
  const bands = [{ from: stream.zero, to: heads ?? now, weight: isStripping(run) ? "hearts" : "heads", label: firstPart(run) }];
  if (heads) bands.push({ from: heads, to: hearts ?? now, weight: "hearts", label: t("floor-hearts") });
  if (hearts) bands.push({ from: hearts, to: now, weight: "tails", label: t("floor-tails") });
  return partNow(run) === "heads" && run.ended_at && !isStripping(run) ? [] : bands.map((band) => ({ ...band, from: toX(band.from), to: toX(band.to) })).filter((band) => band.to > band.from);
}

/** Vapour temperature against strength: this still's readings on the line that its offset and height make usual. @param {Shown} shown */
function againstVapour({ run, stream, offsetC, heightM }) {
  const read = stream.lines.filter((line) => line.vapour !== null && line.strength !== null).map((line) => [/** @type {number} */ (line.vapour), /** @type {number} */ (line.strength)]);
  if (!read.length) return null;
  const [low, high] = [Math.min(...read.map(([x]) => x)) - 1, Math.max(...read.map(([x]) => x)) + 1];
  const line = [];
  for (let pct = 95; pct >= 20; pct -= 1) line.push([vapourTempC(pct, heightM) + offsetC, pct]);
  const usual = rising(line);
  const inside = usual.filter(([x]) => x > low && x < high);
  const ends = [low, high].filter((x) => x >= usual[0][0] && x <= usual[usual.length - 1][0]).map((x) => [x, between(/** @type {any} */ (usual), x)]);
  return curveInUnits({
    title: t("floor-curve-vapour_temperature_against_strength", { name: run.name ? `, ${run.name}` : "" }), yLabel: "% vol", xLabel: t("floor-curve-vapour_c"), yDecimals: 1, height: heightNow(),
    series: [{ label: t("floor-read"), points: rising(read.sort((a, b) => a[0] - b[0])) }],
    expected: { label: offsetC ? t("floor-curve-usual_for_this_still") : t("floor-curve-usual"), points: rising([...inside, ...ends].sort((a, b) => a[0] - b[0])) },
  }, "pct_vol", "degC");
}
