// @ts-check
/**
 * The desk's only script: it draws the curves of a vessel, a run or a bottling, walks a map of places by arrow keys, and
 * helps with the search box. What takes longer than its page comes after it. All but the curves works without script.
 */
import { fillFrom } from "./desk/fill.js";
import { setUpFindBox } from "./desk/findbox.js";
import { walkByKeys } from "./desk/map.js";
import { drawCurve as draw } from "./ui/charts.js";
import { formatTime } from "./ui/format.js";
import { loadWords } from "./words/t.js";

/** A curve says what it shows: its words come first. @param {HTMLElement} el @param {any} curve */
const drawCurve = (el, curve) => void loadWords().catch(() => {}).then(() => draw(el, curve));

const CUTS = ["heads_cut", "hearts_cut", "first_drop"];

/** @param {string} at */
const seconds = (at) => Date.parse(at) / 1000;

/** @param {HTMLElement} place */
function drawRun(place) {
  const run = JSON.parse(place.dataset.run ?? "{}");
  if (!run.points?.length) return;
  const points = run.points.map((/** @type {[string, number, number|null]} */ [at, value]) => [seconds(at), value]);
  const late = run.cuts.filter((/** @type {any} */ cut) => cut.typed_at && CUTS.includes(cut.event))
    .map((/** @type {any} */ cut) => ({ x: seconds(cut.at), weight: "tails", label: run.words.late.replace("{at}", formatTime(cut.at)).replace("{typed_at}", formatTime(cut.typed_at)) }));
  const cuts = run.cuts.filter((/** @type {any} */ cut) => CUTS.includes(cut.event));
  const end = points.at(-1)[0];
  const from = (/** @type {string} */ event) => cuts.find((/** @type {any} */ cut) => cut.event === event)?.at;
  const [heads, tails] = [from("heads_cut"), from("hearts_cut")].map((at) => (at ? seconds(at) : undefined));
  /** @type {import("./ui/charts.js").Band[]} */
  const bands = [{ from: points[0][0], to: heads ?? end, weight: run.first === "heads" ? "heads" : "hearts", label: run.words[run.first] }];
  if (heads) bands.push({ from: heads, to: tails ?? end, weight: "hearts", label: run.words.hearts });
  if (tails) bands.push({ from: tails, to: end, weight: "tails", label: run.words.tails });
  const el = document.createElement("div");
  el.className = "chart";
  place.append(el);
  drawCurve(el, {
    title: run.words.title, yLabel: run.unit, xIsTime: true, height: 320, bands, marks: late,
    series: [{ label: run.words.line, points }],
  });
}

/** Runs over the share of pure alcohol that has come, so that a small charge lies beside a large one. @param {HTMLElement} place */
function drawBeside(place) {
  const given = JSON.parse(place.dataset.beside ?? "[]");
  const runs = given.map((/** @type {any} */ run) => ({ label: run.name, points: overAlcohol(run) }));
  const series = runs.filter((/** @type {any} */ run) => run.points.length > 1);
  if (series.length < 2) return;
  const el = document.createElement("div");
  el.className = "chart";
  place.append(el);
  drawCurve(el, { title: given[0].title, yLabel: given[0].unit, xLabel: given[0].pureUnit, height: 320, series });
}

/** @param {{points: [string, number, number|null, number][], pure: number}} run @returns {[number, number][]} by flow times minutes, trapezoids */
function overAlcohol({ points, pure }) {
  const read = points.filter((point) => point[2] !== null);
  let lpa = 0;
  return read.map(([at, shown, flow, pct], n) => {
    if (n) {
      const [then, , flowThen, pctThen] = read[n - 1];
      lpa += ((Number(flow) + Number(flowThen)) / 2) * ((seconds(at) - seconds(then)) / 3600) * ((pct + pctThen) / 200);
    }
    return [lpa * pure, shown];
  });
}

/** A picture whose points and levels the page brings along. @param {HTMLElement} place */
function drawGiven(place) {
  const given = JSON.parse(place.dataset.chart ?? "{}");
  if (!given.points?.length) return;
  const points = given.points.map((/** @type {[string, number]} */ [at, value]) => [seconds(at), value]);
  const el = document.createElement("div");
  place.append(el);
  drawCurve(el, { title: given.title, yLabel: given.unit, yDecimals: given.decimals, xIsTime: true, height: 220, levels: given.levels, series: [{ label: "", points }] });
}

/** Curves as the page has them, for drawCurve. @param {HTMLElement} place */
function drawCharts(place) {
  for (const chart of JSON.parse(place.dataset.charts ?? "[]")) {
    const el = document.createElement("div");
    el.className = "chart";
    place.append(el);
    drawCurve(el, chart);
  }
}

// The rooms are one line, and on a small screen longer than it: the present one is brought into sight.
document.querySelector(".top__rooms [aria-current]")?.scrollIntoView({ block: "nearest", inline: "center" });
document.querySelectorAll("[data-charts]").forEach((place) => drawCharts(/** @type {HTMLElement} */ (place)));
document.querySelectorAll("[data-beside]").forEach((place) => drawBeside(/** @type {HTMLElement} */ (place)));
document.querySelectorAll("[data-run]").forEach((place) => drawRun(/** @type {HTMLElement} */ (place)));
document.querySelectorAll("[data-chart]").forEach((place) => drawGiven(/** @type {HTMLElement} */ (place)));
document.querySelectorAll("[data-places]").forEach((map) => walkByKeys(/** @type {HTMLElement} */ (map)));
document.querySelectorAll("[data-find]").forEach((form) => setUpFindBox(/** @type {HTMLFormElement} */ (form)));
document.querySelectorAll("[data-fills]").forEach((link) => fillFrom(/** @type {HTMLAnchorElement} */ (link)));
