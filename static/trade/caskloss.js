// @ts-check
/** What casks lose. Twin of webapp/trade/caskloss.py, which has units, ranges and sources. Rates are in logarithms. */
import { OutOfDomain } from "./errors.js";
import { checkRange } from "./numeric.js";

/** @typedef {{years: number, lpa: number, strength_pct: number, drawn_l?: number}} Gauge oldest first */
/** @typedef {{lpa_pct_year: number, volume_pct_year: number, strength_year: number, years: number}} Rate */

const RATE_YEARS = 60 / 365.25;
const [BORROW, SPREAD_LEAST, MAD_TO_SPREAD, SMALL_L, HIGH_SPREADS] = [4, 0.5, 1.4826, 100, 2.5];
const Z_80 = 1.2815515655446004;

/** @param {Gauge[]} gauges @returns {{last: Rate|null, fill: Rate|null}} */
export function lossRates(gauges) {
  check(gauges);
  if (!gauges.length) return { last: null, fill: null };
  const now = gauges[gauges.length - 1].years;
  const isOld = (/** @type {Gauge} */ one) => now - one.years >= RATE_YEARS - 1e-9;
  const from = gauges.findLastIndex(isOld);
  return { last: from < 0 ? null : between(gauges.slice(from)), fill: isOld(gauges[0]) ? between(gauges) : null };
}

/** @param {Gauge[]} gauges */
function check(gauges) {
  gauges.forEach((one, i) => {
    checkRange("time", one.years, i ? gauges[i - 1].years : -3000, 3000, "years", "order_gauges");
    checkRange("pure_alcohol", one.lpa, 1e-6, 1e7, "L", "empty_cask");
    checkRange("strength", one.strength_pct, 0.1, 100, "pct_vol", "check_glass");
  });
}

/** @param {Gauge[]} gauges @returns {Rate} */
function between(gauges) {
  const [first, last] = [gauges[0], gauges[gauges.length - 1]];
  const years = last.years - first.years;
  const after = gauges.slice(1);
  const kept = (/** @type {boolean} */ byVolume) => after.reduce((sum, one, i) => sum + logKept(gauges[i], one, byVolume), 0);
  return {
    lpa_pct_year: (-kept(false) * 100) / years,
    volume_pct_year: (-kept(true) * 100) / years,
    strength_year: (last.strength_pct - first.strength_pct) / years,
    years,
  };
}

/** @param {Gauge} before @param {Gauge} now @param {boolean} byVolume */
function logKept(before, now, byVolume) {
  let [had, has, drawn] = [before.lpa, now.lpa, now.drawn_l || 0];
  if (byVolume) [had, has, drawn] = [(had / before.strength_pct) * 100, (has / now.strength_pct) * 100, (drawn / now.strength_pct) * 100];
  return drawn >= 0 ? Math.log((has + drawn) / had) : Math.log(has / (had - drawn));
}

/** The share that is kept after years. @param {number} rate in logarithms [% a year] @param {number} years @returns {number} */
export const keptAfter = (rate, years) => Math.exp((-rate * years) / 100);

/** What a rate takes in one year. @param {number} rate in logarithms [% a year] @returns {number} [%] */
export const yearShare = (rate) => 100 * (1 - Math.exp(-rate / 100));

/** @param {number[]} values */
function median(values) {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
}

/** @param {number[][]} groups from the widest to the narrowest @param {number} capacityL @param {number} [smallL] a cask is small below */
export function usualOf(groups, capacityL, smallL = SMALL_L) {
  checkRange("size", capacityL, 1e-3, 1e6, "L", "give_cask_size");
  let [middle, spread] = capacityL < smallL ? [6.5, 2] : [3, 1.2];
  for (const group of groups) {
    for (const rate of group) checkRange("loss", rate, -1e6, 1e6, "pct_year", "check_gauges");
    if (!group.length) continue;
    const own = median(group);
    const ownSpread = Math.max(MAD_TO_SPREAD * median(group.map((rate) => Math.abs(rate - own))), SPREAD_LEAST);
    const share = group.length / (group.length + BORROW);
    middle = share * own + (1 - share) * middle;
    spread = Math.sqrt(share * ownSpread * ownSpread + (1 - share) * spread * spread);
  }
  return {
    middle, spread, low: middle - Z_80 * spread, high: middle + Z_80 * spread, most: middle + HIGH_SPREADS * spread,
    count: groups.length ? groups[0].length : 0,
  };
}

/**
 * @param {number} rate @param {number} volumeRate @param {number} years @param {number} most @param {number} strengthThen @param {number} strengthNow
 * @param {{noisePct?: number, driftPct?: number, driftPctYear?: number}} [limits]
 * @returns {"usual"|"leak"|"slip"|"other_cask"|"gain"}
 */
export function judgeLoss(rate, volumeRate, years, most, strengthThen, strengthNow, { noisePct = 1, driftPct = 1.5, driftPctYear = 1.2 } = {}) {
  checkRange("time", years, 1e-6, 3000, "years", "two_gauges");
  if (Math.abs(strengthNow - strengthThen) > driftPct + driftPctYear * years + 1e-9) {
    return volumeRate >= -noisePct / years && volumeRate <= most + noisePct / years ? "slip" : "other_cask";
  }
  if (rate < -noisePct / years) return "gain";
  return rate > most + noisePct / years ? "leak" : "usual";
}
