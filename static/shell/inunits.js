// @ts-check
/** Computed figures in the units of this phone: metric as they come, or US. What was read keeps the unit it was read in. */
import { decimalsIn, textIn, unitIn, unitsChoice, valueIn } from "../trade/houseunits.js";
import { symbol } from "../trade/units.js";
import { formatNumber, formatQuantity } from "../ui/format.js";
import { t } from "../words/t.js";

export { unitsChoice } from "../trade/houseunits.js";

/** @returns {Record<string, string>} what the sign of a strength leaves unsaid */
const BASIS = () => ({ pct_vol: t("floor-inunits-true_at_20_c"), proof: t("floor-inunits-true_at_60_f") });

/** @param {"metric"|"us"} choice */
export function setUnitsChoice(choice) {
  localStorage.setItem("units", choice);
  for (const name of Object.keys(localStorage)) if (name.startsWith("unit:")) localStorage.removeItem(name);
}

/** @param {number} value canonical @param {string} unit its unit @returns {{value: number, unit: string}} */
export const inUnits = (value, unit) => ({ value: valueIn(value, unit), unit: unitIn(unit) });

/** @param {number} value @param {string} unit @param {number} decimals in the canonical unit */
export function shownInUnits(value, unit, decimals) {
  const shown = inUnits(value, unit);
  return formatQuantity(shown.value, decimalsIn(decimals, unit), symbol(shown.unit));
}

/** Words that name metric amounts, as a US house reads them: "3 to 8 kg" is "7 to 18 lb". @param {string} words @param {string} [unit] of the figure that they label */
export function wordsIn(words, unit = "") {
  if (unitsChoice() !== "us") return words;
  if (unit === "pct_vol") return words.replace("20 °C", "60 °F"); // where proof is true
  return words.replace(t("floor-litres"), t("floor-gallons")).replace(/\b(?:([\d.]+) (to|bis|à|a|až) )?([\d.]+) (kg|L|°C)(?![\wµ/])/g, (_, low, upTo, high, sign) => {
    const of = sign === "°C" ? "degC" : sign;
    return `${low ? `${textIn(low, of)} ${upTo} ` : ""}${textIn(high, of)} ${symbol(unitIn(of))}`;
  });
}

/** A curve over canonical figures as it is read here. @template {any} T @param {T} curve as drawCurve takes it @param {string} y unit of its figures @param {string} [x] unit along it @returns {T} */
export function curveInUnits(curve, y, x) {
  if (unitsChoice() !== "us") return curve;
  const [toX, toY] = [(/** @type {number} */ at) => (x ? valueIn(at, x) : at), (/** @type {number|null} */ value) => value === null ? value : valueIn(value, y)];
  const line = (/** @type {any} */ one) => one && { ...one, points: one.points.map((/** @type {number[]} */ [at, value]) => [toX(at), toY(value)]) };
  const { series, expected, ghost, ghosts, levels, bands, marks, ...rest } = /** @type {any} */ (curve);
  const known = Object.entries({
    expected: line(expected), ghost: line(ghost), ghosts: ghosts?.map(line), levels: levels?.map((/** @type {any} */ one) => ({ ...one, y: toY(one.y) })),
    bands: bands?.map((/** @type {any} */ one) => ({ ...one, from: toX(one.from), to: toX(one.to), ...(one.area ? { area: line({ points: one.area }).points } : {}) })),
    marks: marks?.map((/** @type {any} */ one) => ({ ...one, x: toX(one.x) })),
  }).filter(([, value]) => value !== undefined);
  return /** @type {any} */ ({ ...rest, yLabel: symbol(unitIn(y)), ...(x ? { xLabel: rest.xLabel.replace(/^L .*|°C/, symbol(unitIn(x))) } : {}), series: series.map(line), ...Object.fromEntries(known) });
}

/** A true strength as figure and words: 73.7 and "% vol true at 20 °C", or 147.3 and "proof true at 60 °F". @param {number} pct */
export function strengthShown(pct) {
  const { value, unit } = inUnits(pct, "pct_vol");
  return { figure: formatNumber(value, 1), sign: symbol(unit), words: `${symbol(unit)} ${BASIS()[unit]}` };
}
