// @ts-check
/**
 * Sums of the still log: what the vapour thermometer should show, and what the flow has collected.
 * Twin of webapp/trade/still.py, which has units, ranges and sources.
 */
import { data } from "./datafiles.js";
import { OutOfDomain } from "./errors.js";
import { checkRange, interpolate } from "./numeric.js";

/**
 * @param {number} strengthPct % vol at 20 °C, 20 to 95
 * @param {number} [heightM] above the sea, 0 to 3000
 * @returns {number} °C
 */
export function vapourTempC(strengthPct, heightM = 0) {
  const still = data("still");
  const strengths = still.vapour_strength_pct;
  checkRange("Strength", strengthPct, strengths[0], strengths[strengths.length - 1], "% vol",
    "No check outside that range.");
  const [leastM, mostM] = still.height_m;
  checkRange("Height", heightM, leastM, mostM, "m", "Give the still's height above the sea in metres.");
  return interpolate(strengthPct, strengths, still.vapour_temp_c) - heightM / still.metres_per_degree;
}

/**
 * @param {number[]} minutes rising
 * @param {number[]} flowsLh
 * @returns {number} L, by the trapezoid rule
 */
export function collectedL(minutes, flowsLh) {
  if (minutes.length !== flowsLh.length) {
    throw new OutOfDomain("Flow", flowsLh.length, minutes.length, minutes.length, "Give one flow for each time.");
  }
  for (const flow of flowsLh) checkRange("Flow", flow, 0, 1e6, "L/h", "Check the figure and its unit.");
  let volumeL = 0;
  for (let i = 1; i < minutes.length; i++) {
    const passed = minutes[i] - minutes[i - 1];
    checkRange("Time between readings", passed, 0, 1e6, "min", "Put the readings in order of time.");
    volumeL += ((flowsLh[i] + flowsLh[i - 1]) / 2) * (passed / 60);
  }
  return volumeL;
}
