// @ts-check
/**
 * Litres from a dip: by the strapping table of a tank, or by the dimensions of a cask.
 * Twin of webapp/trade/dipping.py, which has units, ranges and sources.
 */
import { data } from "./datafiles.js";
import { checkRange } from "./numeric.js";

const STRIPS = 400;
const CASK_SHARE = 0.03;
const SLOPE_CM = 0.05;

/** @type {{text: string, dips: any}} */
let last = { text: "", dips: null };

/** @param {string} text */
function read(text) {
  if (text !== last.text) last = { text, dips: JSON.parse(text) };
  return last.dips;
}

/** @param {string} text how the vessel is dipped @param {number} dipCm @param {number} tempC @returns {number} L at tempC */
export function volumeOfDip(text, dipCm, tempC) {
  const vessel = read(text);
  checkRange("temperature", tempC, -20, 40, "degC", "check_thermometer");
  if (!vessel.points) {
    const tall = heightOf(vessel);
    checkRange("dip", dipCm, 0, tall, "cm", "dip_in_cask");
    return volumeOfCask(vessel.bung_cm, vessel.head_cm, vessel.length_cm, vessel.of === "ullage" ? tall - dipCm : dipCm, vessel.lies);
  }
  const { points } = vessel;
  const at = dipCm + vessel.tilt_cm;
  checkRange("dip", at, points[0][0], points[points.length - 1][0], "cm", "dip_in_table");
  const n = points.findIndex((/** @type {number[]} */ [high], /** @type {number} */ i) => i > 0 && at <= high);
  const [[low, less], [high, more]] = [points[n - 1], points[n]];
  return (less + ((more - less) * (at - low)) / (high - low)) * (1 + vessel.per_c * (tempC - vessel.shell_c));
}

/** @param {any} vessel */
const heightOf = (vessel) => (vessel.lies ? vessel.bung_cm : vessel.length_cm);

/** @param {number} bungCm @param {number} headCm @param {number} lengthCm @param {number} depthCm @param {boolean} lies @returns {number} L */
export function volumeOfCask(bungCm, headCm, lengthCm, depthCm, lies) {
  checkRange("bung_diameter", bungCm, 5, 400, "cm", "measure_cask");
  checkRange("head_diameter", headCm, 5, bungCm, "cm", "measure_cask");
  checkRange("length", lengthCm, 5, 600, "cm", "measure_cask");
  checkRange("dip", depthCm, 0, lies ? bungCm : lengthCm, "cm", "dip_in_cask");
  const [middle, less, half] = [bungCm / 2, (bungCm - headCm) / 2, lengthCm / 2];
  if (!lies) return (standing(middle, less, half, depthCm - half) - standing(middle, less, half, -half)) / 1000;
  const level = depthCm - middle;
  const end = less === 0 ? half : half * Math.sqrt(Math.min(Math.max(middle - Math.abs(level), 0) / less, 1));
  const whole = level <= 0 ? 0 : standing(middle, less, half, half) - standing(middle, less, half, end);
  let total = 0;
  for (let n = 0; n <= STRIPS; n += 1) {
    const s = n / STRIPS;
    const share = ((1 - s * s) * end) / half;
    total += (n === 0 || n === STRIPS ? 1 : n % 2 ? 4 : 2) * segment(middle - less * share * share, level) * 2 * s;
  }
  return (2 * ((total * end) / (3 * STRIPS) + whole)) / 1000;
}

/** @param {number} middle @param {number} less @param {number} half @param {number} x */
function standing(middle, less, half, x) {
  const u = (x / half) * (x / half);
  return Math.PI * x * (middle * middle - (2 * middle * less * u) / 3 + (less * less * u * u) / 5);
}

/** @param {number} radius @param {number} level */
function segment(radius, level) {
  const cosine = Math.min(Math.max(level / radius, -1), 1);
  return radius * radius * (Math.PI - Math.acos(cosine) + cosine * Math.sqrt(1 - cosine * cosine));
}

/** @param {string} text @param {number} dipCm @param {number} tempC @returns {[number, number]} cm */
export function dipLimitsCm(text, dipCm, tempC) {
  const litres = volumeOfDip(text, dipCm, tempC);
  const vessel = read(text);
  const { table_share: share, surface_m: surface } = data("instruments").tank;
  const off = vessel.points ? share * litres
    : CASK_SHARE * volumeOfCask(vessel.bung_cm, vessel.head_cm, vessel.length_cm, heightOf(vessel), vessel.lies);
  const { points, tilt_cm: tilt } = vessel;
  const [low, high] = points ? [points[0][0] - tilt, points[points.length - 1][0] - tilt] : [0, heightOf(vessel)];
  const [before, after] = [Math.max(dipCm - SLOPE_CM, low), Math.min(dipCm + SLOPE_CM, high)];
  const slope = Math.abs(volumeOfDip(text, after, tempC) - volumeOfDip(text, before, tempC)) / (after - before);
  return [slope > 0 ? off / slope : 0, surface * 100];
}
