// @ts-check
/**
 * Sums of the still log: what the vapour thermometer should show.
 * Twin of webapp/trade/still.py, which has units, ranges and sources.
 */
import { data } from "./datafiles.js";
import { checkRange, interpolate } from "./numeric.js";

/**
 * @param {number} strengthPct % vol at 20 °C, 20 to 95
 * @param {number} [heightM] above the sea, 0 to 3000
 * @returns {number} °C
 */
export function vapourTempC(strengthPct, heightM = 0) {
  const still = data("still");
  const strengths = still.vapour_strength_pct;
  checkRange("strength", strengthPct, strengths[0], strengths[strengths.length - 1], "pct_vol",
    "no_check");
  const [leastM, mostM] = still.height_m;
  checkRange("height", heightM, leastM, mostM, "m", "give_height");
  return interpolate(strengthPct, strengths, still.vapour_temp_c) - heightM / still.metres_per_degree;
}
