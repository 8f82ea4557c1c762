// @ts-check
import { decimalsOf, ticksOf, writeX, xRange, yRange } from "./chartaxes.js";
import { drawBands, drawLevels, drawLineLabels, drawMarks, drawUnits, Labels, takeLines } from "./chartink.js";
import { dataTable, ghostsOf } from "./charttable.js";
import { formatNumber } from "./format.js";
import { wear } from "./sheet.js";
import { t } from "../words/t.js";

/**
 * @typedef {[x: number, y: number|null]} Point x in the axis's unit, or [s since 1970, UTC] where xIsTime
 * @typedef {{label: string, points: Point[]}} Line
 * @typedef {{from: number, to: number, weight: "heads"|"hearts"|"tails"|"doubt", label: string, at?: number, area?: [x: number, y: number][]}} Band
 *   of doubt: `at` is the best guess within it, `area` its outline where that is no upright span
 * @typedef {{x: number, label: string, spoken?: string, weight?: "heads"|"hearts"|"tails"}} Mark an upright line: a cut; `spoken`: what it is, in full
 * @typedef {{y: number, label: string}} Level a dotted line across: the strength of the next cut
 * @typedef {object} Curve
 * @property {Line[]} series what was read; the first is the chalk line
 * @property {Line} [ghost] the run before, in dust
 * @property {Line[]} [ghosts] more of them
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

const X_TICK_PX = 64;
const Y_TICK_PX = 36;

/** @type {Promise<any>|undefined} */
let library;

/** The drawing library, fetched for the first curve: a page never waits for it, nor falls with it. */
function loadLibrary() {
  library ??= Promise.all([import("../vendor/uplot/uplot.min.js"), wear("vendor/uplot/uPlot.min.css")]).then(([module]) => module.default);
  return library;
}

/**
 * Draw a curve into an element, with a hidden table of its figures. It follows its element's width and the theme. The table
 * stands at once; should the picture fail, the table is shown in its place.
 * @param {HTMLElement} el emptied first
 * @param {Curve} curve
 * @returns {{update(curve: Curve): void, destroy(): void}}
 */
export function drawCurve(el, curve) {
  /** @type {any} */
  let plot = null;
  let drawn = 0;
  const show = async (/** @type {Curve} */ next) => {
    const turn = ++drawn;
    plot?.destroy();
    plot = null;
    const table = dataTable(next);
    const picture = document.createElement("div");
    picture.setAttribute("aria-hidden", "true");
    el.classList.add("chart");
    el.replaceChildren(picture, table);
    try {
      const uPlot = await loadLibrary();
      if (turn === drawn) plot = build(uPlot, el, picture, next);
    } catch (error) {
      console.warn(t("floor-charts-the_curve_could_not"), error);
      table.className = "table-wrap";
    }
  };
  const recolour = () => plot?.redraw(false, true);
  const resized = new ResizeObserver(() => plot?.setSize({ width: innerWidth(el), height: plot.height }));
  const dark = matchMedia("(prefers-color-scheme: dark)");
  resized.observe(el);
  dark.addEventListener("change", recolour);
  document.addEventListener("themechange", recolour);
  document.fonts?.ready.then(recolour);
  show(curve);
  return {
    update: show,
    destroy() {
      drawn += 1;
      resized.disconnect();
      dark.removeEventListener("change", recolour);
      document.removeEventListener("themechange", recolour);
      plot?.destroy();
      el.replaceChildren();
    },
  };
}

/** @param {HTMLElement} el */
function innerWidth(el) {
  const style = getComputedStyle(el);
  return Math.max(120, el.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight));
}

/** @param {any} uPlot @param {HTMLElement} el @param {HTMLElement} picture @param {Curve} curve */
function build(uPlot, el, picture, curve) {
  /** @type {(Line & {ink: string, width: number, dash?: number[]})[]} */
  const lines = [
    ...ghostsOf(curve).map((ghost) => ({ ...ghost, ink: "--dust", width: 1.5 })),
    ...curve.series.map((line, index) => ({ ...line, ink: index ? "--note" : "--chalk", width: index ? 2 : 3 })),
    ...(curve.expected ? [{ ...curve.expected, ink: "--copper", width: 3, dash: [0.1, 6] }] : []),
  ];
  const colour = (/** @type {string} */ token) => getComputedStyle(el).getPropertyValue(token).trim();
  const font = `13px ${getComputedStyle(el).fontFamily}`;
  const axis = { stroke: () => colour("--dust"), font, ticks: { show: false }, grid: { show: false } };
  const ink = { colour, font, labels: new Labels() };
  return new uPlot(
    {
      width: innerWidth(el),
      height: curve.height ?? 210,
      legend: { show: false },
      cursor: { show: false },
      padding: [curve.yLabel ? 18 : 4, 22, 0, 0],
      scales: { x: { time: Boolean(curve.xIsTime), range: xRange(curve) }, y: { range: yRange(curve) } },
      axes: [
        { ...axis, size: 26 + (namesX(curve) ? 16 : 0), gap: 4, splits: splitsOf("width", X_TICK_PX, Boolean(curve.xIsTime)), values: (/** @type {any} */ _, /** @type {number[]} */ values) => writeX(values, curve) },
        {
          ...axis, gap: 6, splits: splitsOf("height", Y_TICK_PX, false),
          size: (/** @type {any} */ _, /** @type {string[]|null} */ values) => 14 + 7.5 * Math.max(1, ...(values ?? []).map((text) => text.length)),
          values: (/** @type {any} */ _, /** @type {number[]} */ values) => values.map((y) => formatNumber(y, decimalsOf(values))),
        },
      ],
      series: [{}, ...lines.map(({ label, points, ink: token, width, dash }) => ({
        label, width, dash, cap: /** @type {"round"} */ ("round"), stroke: () => colour(token), spanGaps: true,
        points: { show: points.length === 1, size: 10, fill: () => colour(token) }, // a line of one point would not be seen
      }))],
      hooks: {
        drawClear: [(/** @type {any} */ u) => { ink.labels.clear(); takeLines(u, lines, curve.marks ?? [], ink); drawBands(u, curve.bands ?? [], ink); drawLevels(u, curve.levels ?? [], ink); }],
        draw: [(/** @type {any} */ u) => { drawMarks(u, curve.marks ?? [], ink); drawLineLabels(u, lines, ink); drawUnits(u, curve.yLabel, namesX(curve), ink); }],
      },
    },
    lines.length ? uPlot.join(lines.map(toColumns)) : [[], []],
    picture,
  );
}

/** What stands under an axis; time needs no name. @param {Curve} curve */
const namesX = (curve) => (curve.xIsTime ? "" : curve.xLabel ?? "");

/** @param {"width"|"height"} side @param {number} each [px] that one tick wants @param {boolean} isTime */
const splitsOf = (side, each, isTime) => (/** @type {any} */ u, /** @type {number} */ _, /** @type {number} */ low, /** @type {number} */ high) =>
  ticksOf(low, high, Math.floor((u.bbox[side] / devicePixelRatio || u[side]) / each), isTime);

/** @param {Line} line @returns {[number[], (number|null)[]]} */
function toColumns({ points }) {
  return [points.map((point) => point[0]), points.map((point) => point[1])];
}

export { sparkline } from "./sparkline.js";
