// @ts-check
import { formatDate, formatNumber, formatTime } from "./format.js";
import { t } from "../words/t.js";

/** A table longer than this is no help to listen to; it is thinned evenly and says so. */
const MOST_ROWS = 60;

/**
 * The figures of a chart as a table for those who do not see the picture.
 * @param {import("./charts.js").Curve} curve
 * @returns {HTMLElement}
 */
export function dataTable(curve) {
  const lines = [...curve.series, ...(curve.expected ? [curve.expected] : []), ...ghostsOf(curve)];
  const byLine = lines.map((line) => new Map(line.points));
  const all = [...new Set(lines.flatMap((line) => line.points.map((point) => point[0])))].sort((a, b) => a - b);
  const step = Math.ceil(all.length / MOST_ROWS) || 1;
  const decimals = curve.yDecimals ?? 1;
  const table = document.createElement("table");
  table.className = "table";
  const written = writer(curve, all);
  const thinned = step > 1 ? t("floor-charttable-one_row_in", { step }) : "";
  table.createCaption().textContent = `${curve.title}${written.day}. ${notes(curve, written.x)}${thinned}`;
  const parts = curve.bands?.length ? ["part"] : [];
  addRow(table.createTHead(), "th", [curve.xLabel ?? (curve.xIsTime ? t("floor-time") : ""), ...parts, ...lines.map((line) => `${line.label || (line === curve.expected ? t("floor-charttable-expected") : "")} ${curve.yLabel}`.trim())]);
  const body = table.createTBody();
  for (let at = 0; at < all.length; at += step) {
    addRow(body, "td", [written.x(all[at]), ...parts.map(() => partAt(all[at], curve)), ...byLine.map((known) => formatNumber(known.get(all[at]), decimals))]);
  }
  const box = document.createElement("div");
  box.className = "hidden-text";
  box.append(table);
  return box;
}

/** @param {import("./charts.js").Curve} curve @returns {import("./charts.js").Line[]} the runs before */
export const ghostsOf = (curve) => [...(curve.ghost ? [curve.ghost] : []), ...(curve.ghosts ?? [])];

/** In which part of the run a point lies, or at which cut. @param {number} x @param {import("./charts.js").Curve} curve */
function partAt(x, curve) {
  const cut = curve.marks?.find((mark) => mark.x === x)?.spoken?.split(",")[0];
  return cut ?? curve.bands?.findLast((band) => x >= band.from && x <= band.to)?.label ?? "";
}

/** What was read, then bands, cuts and levels, in words. @param {import("./charts.js").Curve} curve @param {(x: number) => string} writeX */
function notes(curve, writeX) {
  const read = (curve.series[0]?.points ?? []).filter((point) => point[1] !== null);
  const ends = [...new Set([read[0], read[read.length - 1]])].filter(Boolean);
  const figure = (/** @type {number|null} */ y) => `${formatNumber(y, curve.yDecimals ?? 1)} ${curve.yLabel}`.trim();
  const unit = curve.xIsTime || !curve.xLabel ? "" : ` ${curve.xLabel}`;
  return [
    ends.map(([x, y]) => t("floor-charttable-at", { y: figure(y), x: writeX(x), unit })).join(t("floor-charttable-to")).replace(/$/, ends.length ? "." : ""),
    ...(curve.bands ?? []).map((band) => t("floor-charttable-to_2", { label: band.label, from: writeX(band.from), to: writeX(band.to), unit })),
    ...(curve.marks ?? []).map((mark) => t("floor-charttable-at_2", { label: mark.spoken ?? mark.label, x: writeX(mark.x), unit })),
    ...(curve.levels ?? []).map((level) => t("floor-charttable-at_3", { label: level.label, y: figure(level.y) })),
  ].filter(Boolean).join(" ");
}

/** The day is said once where there is only one. @param {import("./charts.js").Curve} curve @param {number[]} xs rising @returns {{day: string, x: (x: number) => string}} */
function writer(curve, xs) {
  if (!curve.xIsTime) return { day: "", x: (x) => formatNumber(x, Number.isInteger(x) ? 0 : 1) };
  const ends = [...xs, ...(curve.bands ?? []).flatMap((band) => [band.from, band.to])];
  const [first, last] = [Math.min(...ends), Math.max(...ends)].map((at) => (ends.length ? formatDate(at * 1000) : ""));
  if (first === last) return { day: first && `, ${first}`, x: (x) => formatTime(x * 1000) };
  return { day: "", x: (x) => `${formatDate(x * 1000)} ${formatTime(x * 1000)}` };
}

/** @param {HTMLTableSectionElement} section @param {"th"|"td"} tag @param {string[]} texts */
function addRow(section, tag, texts) {
  const row = section.insertRow();
  texts.forEach((text, index) => {
    const cell = document.createElement(tag === "td" && index === 0 ? "th" : tag);
    if (cell.tagName === "TH") /** @type {HTMLTableCellElement} */ (cell).scope = tag === "th" ? "col" : "row";
    cell.textContent = text;
    row.append(cell);
  });
}
