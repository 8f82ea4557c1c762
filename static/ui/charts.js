// @ts-check
import uPlot from "../vendor/uplot/uPlot.esm.js";
import { drawBands, drawLevels, drawLineLabels, drawMarks, Labels } from "./chartink.js";
import { dataTable } from "./charttable.js";
import { formatDate, formatNumber, formatTime } from "./format.js";

/**
 * @typedef {[x: number, y: number|null]} Point x in the axis's unit, or [s since 1970, UTC] where xIsTime
 * @typedef {{label: string, points: Point[]}} Line
 * @typedef {{from: number, to: number, weight: "heads"|"hearts"|"tails", label: string}} Band
 * @typedef {{x: number, label: string, weight?: "heads"|"hearts"|"tails"}} Mark an upright line: a cut
 * @typedef {{y: number, label: string}} Level a dotted line across: the strength of the next cut
 * @typedef {object} Curve
 * @property {Line[]} series what was read; the first is the chalk line
 * @property {Line} [ghost] the run before, in dust
 * @property {Line} [expected] what is expected, dotted copper
 * @property {Band[]} [bands]
 * @property {Mark[]} [marks]
 * @property {Level[]} [levels]
 * @property {string} title says what the picture shows; caption of its table
 * @property {string} yLabel figure and unit, "% vol"
 * @property {string} [xLabel] "time", "litres collected"
 * @property {boolean} [xIsTime]
 * @property {number} [yDecimals]
 * @property {number} [height] [px]
 */

const TWO_DAYS_S = 172_800;

/**
 * Draw a curve into an element, with a hidden table of its figures. It follows its element's width and the theme.
 * @param {HTMLElement} el emptied first
 * @param {Curve} curve
 * @returns {{update(curve: Curve): void, destroy(): void}}
 */
export function drawCurve(el, curve) {
  let plot = build(el, curve);
  const resized = new ResizeObserver(() => plot.setSize({ width: innerWidth(el), height: plot.height }));
  const recolour = () => plot.redraw(false, true);
  const dark = matchMedia("(prefers-color-scheme: dark)");
  resized.observe(el);
  dark.addEventListener("change", recolour);
  document.addEventListener("themechange", recolour);
  document.fonts?.ready.then(recolour);
  return {
    update(next) {
      plot.destroy();
      plot = build(el, next);
    },
    destroy() {
      resized.disconnect();
      dark.removeEventListener("change", recolour);
      document.removeEventListener("themechange", recolour);
      plot.destroy();
      el.replaceChildren();
    },
  };
}

/** @param {HTMLElement} el */
function innerWidth(el) {
  const style = getComputedStyle(el);
  return Math.max(120, el.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight));
}

/** @param {HTMLElement} el @param {Curve} curve */
function build(el, curve) {
  /** @type {(Line & {ink: string, width: number, dash?: number[]})[]} */
  const lines = [
    ...(curve.ghost ? [{ ...curve.ghost, ink: "--dust", width: 1.5 }] : []),
    ...curve.series.map((line, index) => ({ ...line, ink: index ? "--note" : "--chalk", width: index ? 2 : 3 })),
    ...(curve.expected ? [{ ...curve.expected, ink: "--copper", width: 3, dash: [0.1, 6] }] : []),
  ];
  const colour = (/** @type {string} */ token) => getComputedStyle(el).getPropertyValue(token).trim();
  const font = `13px ${getComputedStyle(el).fontFamily}`;
  const picture = document.createElement("div");
  picture.setAttribute("aria-hidden", "true");
  el.classList.add("chart");
  el.replaceChildren(picture, dataTable(curve));
  const axis = { stroke: () => colour("--dust"), font, ticks: { show: false }, grid: { show: false } };
  const ink = { colour, font, labels: new Labels() };
  return new (/** @type {any} */ (uPlot))(
    {
      width: innerWidth(el),
      height: curve.height ?? 210,
      legend: { show: false },
      cursor: { show: false },
      padding: [4, 22, 0, 0],
      tzDate: siteDate,
      scales: { x: { time: Boolean(curve.xIsTime), range: xRange(curve) }, y: { range: yRange(curve) } },
      axes: [
        { ...axis, size: 26, gap: 4, space: 64, values: (_, values) => writeX(values, curve) },
        { ...axis, size: (_, values) => 14 + 7.5 * Math.max(1, ...(values ?? []).map((text) => text.length)), gap: 6, space: 36, values: (_, values) => values.map((y) => formatNumber(y, decimalsOf(values))) },
      ],
      series: [{}, ...lines.map(({ label, ink: token, width, dash }) => ({
        label, width, dash, cap: /** @type {"round"} */ ("round"), stroke: () => colour(token), spanGaps: true, points: { show: false },
      }))],
      hooks: {
        drawClear: [(u) => { ink.labels.clear(); drawBands(u, curve.bands ?? [], ink); drawLevels(u, curve.levels ?? [], ink); }],
        draw: [(u) => { drawMarks(u, curve.marks ?? [], ink); drawLineLabels(u, lines, ink); }],
      },
    },
    lines.length ? uPlot.join(lines.map(toColumns)) : [[], []],
    picture,
  );
}

/** @param {Line} line @returns {[number[], (number|null)[]]} */
function toColumns({ points }) {
  return [points.map((point) => point[0]), points.map((point) => point[1])];
}

/** Decimals that tell the axis's steps apart. @param {number[]} values */
function decimalsOf(values) {
  const step = values.length > 1 ? Math.abs(values[1] - values[0]) : 1;
  return Math.min(4, Math.max(0, Math.ceil(-Math.log10(step) - 1e-9)));
}

/** @param {number[]} values @param {Curve} curve */
function writeX(values, curve) {
  if (!curve.xIsTime) return values.map((x) => formatNumber(x, decimalsOf(values)));
  const isLong = values.length > 1 && values[values.length - 1] - values[0] > TWO_DAYS_S;
  return values.map((x) => (isLong ? formatDate(x * 1000).replace(/ \d{4}$/, "") : formatTime(x * 1000)));
}

/** Bands and marks belong in sight as well as the points. @param {Curve} curve */
function xRange(curve) {
  const extra = [...(curve.bands ?? []).flatMap((band) => [band.from, band.to]), ...(curve.marks ?? []).map((mark) => mark.x)];
  return (/** @type {uPlot} */ _, /** @type {number} */ low, /** @type {number} */ high) =>
    /** @type {[number, number]} */ ([Math.min(low, ...extra), Math.max(high, ...extra)]);
}

/** Room above for the labels of bands. @param {Curve} curve */
function yRange(curve) {
  return (/** @type {uPlot} */ _, /** @type {number} */ low, /** @type {number} */ high) => {
    const levels = (curve.levels ?? []).map((level) => level.y);
    const bottom = Math.min(low, ...levels);
    const top = Math.max(high, ...levels);
    const span = top - bottom || Math.abs(top) || 1;
    return /** @type {[number, number]} */ ([bottom - span * 0.08, top + span * (curve.bands?.length || curve.marks?.length ? 0.22 : 0.1)]);
  };
}

/** @param {number} seconds */
function siteDate(seconds) {
  const zone = document.documentElement.dataset.zone;
  const date = new Date(seconds * 1000);
  return zone ? uPlot.tzDate(date, zone) : date;
}

export { sparkline } from "./sparkline.js";
