// @ts-check
/** When a ferment will end. Twin of webapp/trade/ferment.py and fermentfit.py, which have units, ranges and sources: the same steps in the same order. */
import { OutOfDomain } from "./errors.js";
import { checkRange } from "./numeric.js";

const [READING_SD, AGE_SD_DAY, TAIL, END_WITHIN] = [0.0007, 0.0005, 4, 0.001];
const SPREADS = [0.0025, 0.6, 6, 0.6]; // end [SG], log rate, middle [days], log steepness
const POWERS = [-4, 0, 2, 1]; // dragging, fading, thinning, sharp
const USUALLY = [0.3, 0.3, 0.3, 0.1];
const USUAL = { fruit: [0.6, 5], grain: [2, 1.2] }; // rate [1/day], middle [days]
const Z_80 = 1.2815515655446004;
const [FIT_SHARE, PACE_SD, SPARE_DAY, READINGS_LEAST, FALL_LEAST] = [0.8, 0.15, 0.3, 4, 0.004];
const SLOPE = Math.log(9) / Z_80;
const [REST_H, REST_SG, STUCK_H, STUCK_SG, STUCK_ABOVE] = [40, 0.0005, 45, 0.001, 0.006];
const [STEPS, WIDEST, LEAST_GAIN, USUAL_RATIO, ODD, HALVINGS] = [80, 1.8, 1e-12, 50, 3, 60];
const FOUR = [0, 1, 2, 3];

/**
 * @param {number[]} days from the first reading, rising
 * @param {number[]} gravities SG; the first is the original gravity
 * @param {number} endGravity at which this material usually ends
 * @param {{isGrain?: boolean, past?: number[]|null}} [options] past: weights of the shapes by the house's past ferments
 * @returns {any} see the twin
 */
export function forecastEnd(days, gravities, endGravity, { isGrain = false, past = null } = {}) {
  check(days, gravities, endGravity);
  const last = gravities[gravities.length - 1];
  const rest = atRest(days, gravities);
  if (rest !== null && last <= endGravity + STUCK_ABOVE + 1e-9) return { state: "ended", days: { at: rest } };
  if (isStuck(days, gravities, endGravity)) return { state: "stuck" };
  const begun = begunAnew(days, gravities, endGravity);
  const zero = days.length ? days[begun] : 0;
  [days, gravities] = [days.slice(begun).map((day) => day - zero), gravities.slice(begun)];
  if (days.length < READINGS_LEAST) return { state: "too_little", why: "few_readings" };
  if (gravities[0] - last < FALL_LEAST - 1e-9) return { state: "too_little", why: "not_begun" };
  const [rate, middle] = USUAL[isGrain ? "grain" : "fruit"];
  const fits = POWERS.map((power) => {
    const steepness = Math.log(stretch(USUAL_RATIO, power)[0] / stretch(USUAL_RATIO, 0)[0]);
    return fit(days, gravities, [endGravity, Math.log(rate), middle, steepness], power);
  });
  return answer(zero, days[days.length - 1], gravities[0], fits, weigh(fits, past ?? USUALLY));
}

/** @param {number[]} days @param {number[]} gravities @param {number} endGravity */
function check(days, gravities, endGravity) {
  if (days.length !== gravities.length) {
    throw new OutOfDomain("readings", days.length, gravities.length, gravities.length, "uneven_readings");
  }
  for (const gravity of [...gravities, endGravity]) {
    checkRange("gravity", gravity, 0.98, 1.17874, "SG", "check_scale");
  }
  days.forEach((day, i) => checkRange("time", day, i ? days[i - 1] : -1, 400, "days", "order_readings"));
}

/** @param {number[]} days @param {number[]} gravities */
function atRest(days, gravities) {
  const n = days.length;
  if (n < 3 || days[n - 1] - days[n - 3] < REST_H / 24 - 1e-9) return null;
  const last = gravities.slice(-3);
  return Math.max(...last) - Math.min(...last) < REST_SG - 1e-9 ? days[n - 3] : null;
}

/** @param {number[]} days @param {number[]} gravities @param {number} endGravity */
function isStuck(days, gravities, endGravity) {
  const n = days.length;
  const from = days.findLastIndex((day) => days[n - 1] - day >= STUCK_H / 24 - 1e-9);
  if (from < 0 || gravities[n - 1] <= endGravity + STUCK_ABOVE + 1e-9 || gravities[0] - gravities[n - 1] < FALL_LEAST) return false;
  const window = gravities.slice(from);
  return Math.max(...window) - Math.min(...window) < STUCK_SG - 1e-9;
}

/** Where the fall began: at the first gravity, or where a stuck ferment moved again. @param {number[]} days @param {number[]} gravities @param {number} endGravity */
function begunAnew(days, gravities, endGravity) {
  for (let i = days.length - 1; i > 0; i -= 1) if (isStuck(days.slice(0, i + 1), gravities.slice(0, i + 1), endGravity)) return i;
  return 0;
}

/** How far the yeast's work goes until a ratio-th is left, and its slope. @param {number} ratio @param {number} power */
function stretch(ratio, power) {
  if (!power) return [Math.log(ratio), 1];
  const kept = Math.pow(ratio, -1 / power);
  return [power * (1 - kept), kept];
}

/** @param {number} day @param {number} og @param {number[]} theta @param {number} power @returns {[number, number[]]} gravity, and its slopes */
function curve(day, og, theta, power) {
  const [end, rate, middle, steepness] = [theta[0], Math.exp(theta[1]), theta[2], Math.exp(theta[3])];
  const [start, now] = [Math.exp(bound(-rate * middle)), Math.exp(bound(rate * (day - middle)))];
  const base = Math.log((1 + start) / (1 + now));
  const [share, falls] = leftAfter(steepness * base, power);
  const part = (og - end) * falls * steepness;
  const byRate = part * rate * ((-middle * start) / (1 + start) - ((day - middle) * now) / (1 + now));
  const byMiddle = part * rate * (-start / (1 + start) + now / (1 + now));
  return [end + (og - end) * share, [1 - share, byRate, byMiddle, part * base]];
}

/** @param {number} work @param {number} power */
function leftAfter(work, power) {
  if (!power) return [Math.exp(work), Math.exp(work)];
  const rest = 1 + work / power;
  return rest > 0 ? [Math.pow(rest, power), Math.pow(rest, power - 1)] : [0, 0];
}

/** @param {number} exponent */
const bound = (exponent) => Math.min(Math.max(exponent, -60), 60);

/** @param {number} ageDays */
const spreadOf = (ageDays) => Math.sqrt(READING_SD * READING_SD + AGE_SD_DAY * AGE_SD_DAY * ageDays * ageDays);

/** What each reading costs. @param {number[]} days @param {number[]} gravities @param {number[]} theta @param {number} power */
const costsOf = (days, gravities, theta, power) => days.map((day, i) => {
  const off = (gravities[i] - curve(day, gravities[0], theta, power)[0]) / spreadOf(days[days.length - 1] - day);
  return (TAIL + 1) * Math.log(1 + (off * off) / TAIL);
});

/** @param {number[]} theta @param {number[]} prior */
const strayOf = (theta, prior) => FOUR.reduce((sum, j) => sum + ((theta[j] - prior[j]) / SPREADS[j]) ** 2, 0);

/** @param {number[]} days @param {number[]} gravities @param {number[]} theta @param {number[]} prior @param {number} power */
const costOf = (days, gravities, theta, prior, power) => costsOf(days, gravities, theta, power).reduce((sum, cost) => sum + cost, strayOf(theta, prior));

/** @param {number[]} days @param {number[]} gravities @param {number[]} theta @param {number[]} prior @param {number} power */
function normal(days, gravities, theta, prior, power) {
  const matrix = FOUR.map((i) => FOUR.map((j) => (i === j ? 1 / SPREADS[i] ** 2 : 0)));
  const pull = FOUR.map((i) => (prior[i] - theta[i]) / SPREADS[i] ** 2);
  days.forEach((day, n) => {
    const [at, slopes] = curve(day, gravities[0], theta, power);
    const sd = spreadOf(days[days.length - 1] - day);
    const off = (gravities[n] - at) / sd;
    const weight = (TAIL + 1) / (TAIL + off * off) / (sd * sd);
    for (const i of FOUR) {
      pull[i] += weight * slopes[i] * (gravities[n] - at);
      for (const j of FOUR) matrix[i][j] += weight * slopes[i] * slopes[j];
    }
  });
  return { matrix, pull };
}

/** @param {number[]} days @param {number[]} gravities @param {number[]} prior @param {number} power */
function fit(days, gravities, prior, power) {
  let theta = [...prior];
  let [least, damping] = [costOf(days, gravities, theta, prior, power), 1e-2];
  for (let step = 0; step < STEPS && damping <= 1e12; step += 1) {
    const { matrix, pull } = normal(days, gravities, theta, prior, power);
    const moved = solve(matrix.map((row, i) => row.map((value, j) => (i === j ? value * (1 + damping) : value))), pull);
    const tried = theta.map((value, j) => value + moved[j]);
    [tried[1], tried[3]] = [Math.min(Math.max(tried[1], -4), 3), Math.min(Math.max(tried[3], prior[3] - 2.5), prior[3] + 2.5)];
    const triedCost = costOf(days, gravities, tried, prior, power);
    const gain = least - triedCost;
    if (gain > 0) [theta, least, damping] = [tried, triedCost, Math.max(damping / 5, 1e-9)];
    else damping *= 4;
    if (gain > 0 && gain < LEAST_GAIN) break;
  }
  const precision = normal(days, gravities, theta, prior, power).matrix;
  const lower = cholesky(precision);
  const odd = (TAIL + 1) * Math.log(1 + (ODD * ODD) / TAIL);
  const cost = costsOf(days, gravities, theta, power).reduce((sum, one) => sum + Math.min(one, odd), strayOf(theta, prior));
  return { power, theta, precision, evidence: -cost / 2 - FOUR.reduce((sum, i) => sum + Math.log(lower[i][i] * SPREADS[i]), 0) };
}

/** @param {{evidence: number}[]} fits @param {number[]} past */
function weigh(fits, past) {
  const most = Math.max(...fits.map((one) => one.evidence));
  const weights = fits.map((one, i) => past[i] * Math.exp(one.evidence - most));
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / whole);
}

/** @param {number[][]} matrix positive definite */
function cholesky(matrix) {
  const lower = FOUR.map(() => [0, 0, 0, 0]);
  for (const i of FOUR) {
    for (let j = 0; j <= i; j += 1) {
      let taken = 0;
      for (let k = 0; k < j; k += 1) taken += lower[i][k] * lower[j][k];
      lower[i][j] = i === j ? Math.sqrt(matrix[i][j] - taken) : (matrix[i][j] - taken) / lower[j][j];
    }
  }
  return lower;
}

/** @param {number[][]} matrix positive definite @param {number[]} right @returns {number[]} by Cholesky */
function solve(matrix, right) {
  const lower = cholesky(matrix);
  const [half, found] = [[0, 0, 0, 0], [0, 0, 0, 0]];
  for (const i of FOUR) half[i] = (right[i] - FOUR.slice(0, i).reduce((sum, k) => sum + lower[i][k] * half[k], 0)) / lower[i][i];
  for (const i of [3, 2, 1, 0]) found[i] = (half[i] - FOUR.slice(i + 1).reduce((sum, k) => sum + lower[k][i] * found[k], 0)) / lower[i][i];
  return found;
}

/** @typedef {{power: number, theta: number[], precision: number[][], evidence: number}} Fitted */

/** @param {number} zero @param {number} now @param {number} og @param {Fitted[]} fits @param {number[]} weights */
function answer(zero, now, og, fits, weights) {
  const ends = fits.flatMap((one, i) => {
    const end = endOf(one, now, og);
    return end ? [[weights[i], ...end]] : [];
  });
  if (!ends.length) return { state: "too_little", why: "not_begun" };
  const [low, at, high] = [0.1, 0.5, 0.9].map((part) => now + Math.exp(quantile(ends, part)) - 1);
  const until = Math.max(high, now + 1);
  const { theta, power } = fits[weights.indexOf(Math.max(...weights))];
  const drawn = Array.from({ length: 41 }, (_, i) => [zero + (until * i) / 40, curve((until * i) / 40, og, theta, power)[0]]);
  return {
    state: "running", days: { at: zero + Math.max(at, now), low: zero + Math.max(low, now), high: zero + Math.max(high, now) },
    end_gravity: theta[0], rate_day: Math.exp(theta[1]), curve: drawn,
  };
}

/** The logarithm of the days that are left (and one), and its spread. @param {Fitted} fitted @param {number} now @param {number} og @returns {number[]|null} */
function endOf({ theta, precision, power }, now, og) {
  const [end, rate, middle, steepness] = [theta[0], Math.exp(theta[1]), theta[2], Math.exp(theta[3])];
  const ratio = (og - end) / END_WITHIN;
  if (ratio <= 1) return null;
  const [work, byRatio] = stretch(ratio, power);
  const [start, root] = [Math.exp(bound(-rate * middle)), Math.exp(bound(work / steepness))];
  const amount = (1 + start) * root;
  const at = middle + Math.log(amount - 1) / rate;
  const byAmount = 1 / (rate * (amount - 1));
  const slopes = [
    (-byAmount * amount * byRatio) / (steepness * (og - end)),
    -Math.log(amount - 1) / rate - byAmount * root * start * middle * rate,
    1 - byAmount * root * start * rate,
    (-byAmount * amount * work) / steepness,
  ];
  const solved = solve(precision, slopes);
  const variance = FOUR.reduce((sum, i) => sum + slopes[i] * solved[i], 0);
  const left = Math.max(at - now, 0);
  const spread = Math.sqrt(FIT_SHARE ** 2 * variance + (PACE_SD * left) ** 2 + SPARE_DAY ** 2);
  return [Math.log(left + 1), Math.min(spread / (left + 1), WIDEST / Z_80)];
}

/** Below where a part of the mixture lies. @param {number[][]} ends weight, at, spread @param {number} part */
function quantile(ends, part) {
  const whole = ends.reduce((sum, [weight]) => sum + weight, 0);
  let [low, high] = [-10, 20];
  for (let n = 0; n < HALVINGS; n += 1) {
    const middle = (low + high) / 2;
    const below = ends.reduce((sum, [weight, at, spread]) => sum + weight / (1 + Math.exp(bound(((at - middle) / spread) * SLOPE))), 0);
    if (below < part * whole) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
