// @ts-check
/** What a run sheet shows, worked out from the card alone, so that any phone and any reload shows the same. */
import { curveInUnits } from "../../shell/inunits.js";
import { formatTime } from "../../ui/format.js";
import { capital } from "../../shell/words.js";
import { t } from "../../words/t.js";

/**
 * @typedef {"heads"|"hearts"|"tails"} Part
 * @typedef {{words: string, event: string, to: Part|null}} Step the next cut: its words, its event, the part that begins
 */

const TOGETHER_MS = 60_000;

/** @returns {Record<Part, Step>} */
const NEXT = () => ({
  heads: { words: t("floor-cut_to_hearts"), event: "heads_cut", to: "hearts" },
  hearts: { words: t("floor-state-cut_to_tails"), event: "hearts_cut", to: "tails" },
  tails: { words: t("floor-state-end_the_run"), event: "", to: null },
});

/** @param {any} run @param {string} event @returns {any} the last such event, or undefined */
export const eventOf = (run, event) => run.cuts.filter((/** @type {any} */ cut) => cut.event === event).at(-1);

/** @param {any} run @returns {Part} the fraction that runs now */
export const partNow = (run) => (eventOf(run, "hearts_cut") ? "tails" : eventOf(run, "heads_cut") ? "hearts" : "heads");

/** A stripping run has one receiver and no cuts: all that comes is low wines. @param {any} run */
export const isStripping = (run) => Boolean(run.receivers?.hearts && !run.receivers.heads && !run.receivers.tails && !eventOf(run, "heads_cut") && !eventOf(run, "hearts_cut"));

/** A fraction in words. @param {string} part heads, hearts, tails or low_wines */
export const partName = (part) => t("floor-part", { part });

/** What comes now, in words. @param {any} run @returns {string} */
export const partWords = (run) => partName(isStripping(run) ? "low_wines" : partNow(run));

/** What comes before any cut. @param {any} run */
export const firstPart = (run) => partName(isStripping(run) ? "low_wines" : "heads");

/** @param {any} run @returns {Step} */
export const nextStep = (run) => NEXT()[isStripping(run) ? "tails" : partNow(run)];

/** @param {any} run @returns {any} the last reading with a true strength, or undefined */
export const lastReading = (run) => run.readings.filter((/** @type {any} */ reading) => reading.true_strength != null).at(-1);

/**
 * The flow as it was read last, and whether strengths were read since: the sum of what has run off goes on with it.
 * @param {any} run @returns {{flow: number, at: string, isOld: boolean}|null} [L/h]
 */
export function flowNow(run) {
  const lines = [...run.readings, ...run.cuts].sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
  const last = lines.filter((line) => line.flow != null).at(-1);
  return last ? { flow: last.flow, at: last.at, isOld: lines.some((line) => line.true_strength != null && Date.parse(line.at) > Date.parse(last.at)) } : null;
}

/** @param {any} run */
export const runTitle = (run) => capital([run.what, t("floor-run"), run.name].filter(Boolean).join(" "));

/** @param {string} at @returns {number} [s since 1970] */
const seconds = (at) => Date.parse(at) / 1000;

/** @param {any} run @returns {[number, number][]} */
const strengths = (run) => run.readings.filter((/** @type {any} */ one) => one.true_strength != null).map((/** @type {any} */ one) => [seconds(one.at), one.true_strength]);

/**
 * The curve so far, with the run before laid under it from the same start.
 * @param {any} run @param {any} [before]
 * @returns {any} as drawCurve takes it, or null while there is nothing to draw
 */
export function curveOf(run, before) {
  const points = strengths(run);
  if (!points.length) return null;
  const moved = before ? seconds(run.started_at) - seconds(before.started_at) : 0;
  const ghost = before ? strengths(before).map(([x, y]) => [x + moved, y]) : [];
  const lastCut = before && eventOf(before, nextStep(run).event);
  return curveInUnits({
    title: t("floor-true_strength_over_time"), yLabel: "% vol", xIsTime: true, yDecimals: 1, height: 210,
    series: [{ label: "", points }],
    ...(ghost.length > 1 ? { ghost: { label: before.name || t("floor-run_before"), points: ghost } } : {}),
    bands: bandsOf(run, points), marks: cutMarks(run, (at) => at / 1000, true),
    levels: lastCut?.true_strength ? [{ y: lastCut.true_strength, label: t("floor-state-last_time", { step: nextStep(run).words }) }] : [],
  }, "pct_vol");
}

/** @param {any} run @param {[number, number][]} points */
function bandsOf(run, points) {
  const [heads, hearts, drop] = ["heads_cut", "hearts_cut", "first_drop"].map((event) => eventOf(run, event));
  const begin = Math.min(points[0][0], drop ? seconds(drop.at) : Infinity);
  const now = run.ended_at ? seconds(run.ended_at) : Math.max(points[points.length - 1][0], ...run.cuts.map((/** @type {any} */ cut) => seconds(cut.at)));
  const bands = [{ from: begin, to: heads ? seconds(heads.at) : now, weight: isStripping(run) ? "hearts" : "heads", label: firstPart(run) }];
  if (heads) bands.push({ from: seconds(heads.at), to: hearts ? seconds(hearts.at) : now, weight: "hearts", label: t("floor-hearts") });
  if (hearts) bands.push({ from: seconds(hearts.at), to: now, weight: "tails", label: t("floor-tails") });
  return bands.filter((band) => band.to > band.from);
}

/** The cuts as upright lines; of those that were logged twice within a minute one line says so. @param {any} run @param {(at: number) => number} toX from [ms] @param {boolean} [isNamed] whether the line says which cut it is */
export function cutMarks(run, toX, isNamed = false) {
  const together = cutsTogether(run);
  return run.cuts.filter((/** @type {any} */ cut) => cut.event === "heads_cut" || cut.event === "hearts_cut").map((/** @type {any} */ cut) => {
    const name = cut.event === "heads_cut" ? t("floor-state-heads_cut") : t("floor-state-hearts_cut");
    const alike = together.get(cut.entry);
    const also = `${cut.typed_at ? t("floor-state-logged", { typed_at: formatTime(cut.typed_at) }) : ""}${alike ? t("floor-state-logged_twice") : ""}`;
    const label = alike && alike[0] !== cut ? "" : `${isNamed ? `${name} ` : ""}${formatTime(cut.at)}${also}`;
    return { x: toX(Date.parse(cut.at)), weight: cut.event === "heads_cut" ? "heads" : "tails", label, spoken: name + also };
  });
}

/** Cuts of one sort within a minute: two phones at one cut, most likely. @param {any} run @returns {Map<string, any[]>} by the entry of each, all of them in order of time */
export function cutsTogether(run) {
  const found = new Map();
  for (const cut of run.cuts) {
    const alike = run.cuts.filter((/** @type {any} */ one) => one.event === cut.event && Math.abs(Date.parse(one.at) - Date.parse(cut.at)) <= TOGETHER_MS);
    if (alike.length > 1 && cut.event && cut.event !== "other") found.set(cut.entry, alike);
  }
  return found;
}

/**
 * The receivers as the charge named them, with what each is doing.
 * @param {any} run @param {(mark: string) => string} nameOf
 * @returns {{part: string, mark: string, name: string, state: string, isOpen: boolean, fraction: any}[]}
 */
export function receiversOf(run, nameOf) {
  const now = partNow(run);
  return /** @type {Part[]} */ (["heads", "hearts", "tails"]).flatMap((part) => {
    const cut = part === "hearts" ? eventOf(run, "heads_cut") : part === "tails" ? eventOf(run, "hearts_cut") : null;
    const mark = cut?.receiver ?? run.receivers?.[part] ?? "";
    if (!mark) return [];
    const isLow = isStripping(run); // its one receiver stands where the charge says hearts
    const isOpen = !run.ended_at && (part === now || isLow);
    const order = ["heads", "hearts", "tails"];
    const state = isOpen ? "open" : isLow ? "closed" : order.indexOf(part) < order.indexOf(now) || run.ended_at ? "closed" : "waiting";
    return [{ part: isLow ? "low_wines" : part, mark, name: nameOf(mark), state, isOpen, fraction: run.fractions.find((/** @type {any} */ one) => one.fraction === (isLow ? "low_wines" : part)) }];
  });
}
