// @ts-check
import { formatDate, formatNumber, formatTime } from "./format.js";

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
  const thinned = step > 1 ? ` One row in ${step}.` : "";
  table.createCaption().textContent = `${curve.title}. ${notes(curve)}${thinned}`;
  addRow(table.createTHead(), "th", [curve.xLabel ?? (curve.xIsTime ? "time" : ""), ...lines.map((line) => `${line.label || (line === curve.expected ? "expected" : "")} ${curve.yLabel}`.trim())]);
  const body = table.createTBody();
  for (let at = 0; at < all.length; at += step) {
    addRow(body, "td", [writeX(all[at], curve), ...byLine.map((known) => formatNumber(known.get(all[at]), decimals))]);
  }
  const box = document.createElement("div");
  box.className = "hidden-text";
  box.append(table);
  return box;
}

/** @param {import("./charts.js").Curve} curve @returns {import("./charts.js").Line[]} the runs before */
export const ghostsOf = (curve) => [...(curve.ghost ? [curve.ghost] : []), ...(curve.ghosts ?? [])];

/** Bands, cuts and levels in words. @param {import("./charts.js").Curve} curve */
function notes(curve) {
  return [
    ...(curve.bands ?? []).map((band) => `${band.label}: ${writeX(band.from, curve)} to ${writeX(band.to, curve)}.`),
    ...(curve.marks ?? []).map((mark) => `${mark.label} at ${writeX(mark.x, curve)}.`),
    ...(curve.levels ?? []).map((level) => `${level.label} at ${formatNumber(level.y, curve.yDecimals ?? 1)}.`),
  ].join(" ");
}

/** @param {number} x @param {import("./charts.js").Curve} curve */
function writeX(x, curve) {
  return curve.xIsTime ? `${formatDate(x * 1000)} ${formatTime(x * 1000)}` : formatNumber(x, Number.isInteger(x) ? 0 : 1);
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
