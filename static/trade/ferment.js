// @ts-check
/** When a ferment will end. Twin of webapp/trade/ferment.py, which has units, ranges and sources: the same steps in the same order. */
import { OutOfDomain } from "./errors.js";
import { checkRange } from "./numeric.js";

const [READING_SD, AGE_SD_DAY, TAIL, END_WITHIN] = [0.0007, 0.0005, 4, 0.001];
const SPREADS = [0.0025, 0.6, 6, 0.6]; // end [SG], log rate, middle [days], log shape
const USUAL = { fruit: [0.6, 5], grain: [2, 1.2] }; // rate [1/day], middle [days]
const Z_80 = 1.2815515655446004;
const [PACE_SD, SPARE_DAY, READINGS_LEAST, FALL_LEAST] = [0.2, 0.35, 4, 0.004];
const [REST_H, REST_SG, STUCK_H, STUCK_SG, STUCK_ABOVE] = [40, 0.0005, 45, 0.001, 0.006];
const [STEPS, WIDEST, LEAST_GAIN] = [80, 1.8, 1e-12];
const STARTS = [0.2, 0.45, 1, 2.2];
const FOUR = [0, 1, 2, 3];

/**
 * @param {number[]} days from the first reading, rising
 * @param {number[]} gravities SG; the first is the original gravity
 * @param {number} endGravity at which this material usually ends
 * @param {{isGrain?: boolean}} [options]
 * @returns {any} see the twin
 */
export function forecastEnd(days, gravities, endGravity, { isGrain = false } = {}) {
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
  const { theta, precision } = fit(days, gravities, [endGravity, Math.log(rate), middle, 0]);
  return answer(zero, days[days.length - 1], gravities[0], theta, precision);
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

/** @param {number} day @param {number} og @param {number[]} theta @returns {[number, number[]]} gravity, and its slopes */
function curve(day, og, theta) {
  const [end, rate, middle, shape] = [theta[0], Math.exp(theta[1]), theta[2], Math.exp(theta[3])];
  const [start, now] = [Math.exp(bound(-rate * middle)), Math.exp(bound(rate * (day - middle)))];
  const base = Math.log((1 + start) / (1 + now));
  const share = Math.exp(shape * base);
  const part = (og - end) * share * shape;
  const byRate = part * rate * ((-middle * start) / (1 + start) - ((day - middle) * now) / (1 + now));
  const byMiddle = part * rate * (-start / (1 + start) + now / (1 + now));
  return [end + (og - end) * share, [1 - share, byRate, byMiddle, part * base]];
}

/** @param {number} exponent */
const bound = (exponent) => Math.min(Math.max(exponent, -60), 60);

/** @param {number} ageDays */
const spreadOf = (ageDays) => Math.sqrt(READING_SD * READING_SD + AGE_SD_DAY * AGE_SD_DAY * ageDays * ageDays);

/** @param {number[]} days @param {number[]} gravities @param {number[]} theta @param {number[]} prior */
function costOf(days, gravities, theta, prior) {
  let total = FOUR.reduce((sum, j) => sum + ((theta[j] - prior[j]) / SPREADS[j]) ** 2, 0);
  days.forEach((day, i) => {
    const off = (gravities[i] - curve(day, gravities[0], theta)[0]) / spreadOf(days[days.length - 1] - day);
    total += (TAIL + 1) * Math.log(1 + (off * off) / TAIL);
  });
  return total;
}

/** @param {number[]} days @param {number[]} gravities @param {number[]} theta @param {number[]} prior */
function normal(days, gravities, theta, prior) {
  const matrix = FOUR.map((i) => FOUR.map((j) => (i === j ? 1 / SPREADS[i] ** 2 : 0)));
  const pull = FOUR.map((i) => (prior[i] - theta[i]) / SPREADS[i] ** 2);
  days.forEach((day, n) => {
    const [at, slopes] = curve(day, gravities[0], theta);
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

/** @param {number[]} days @param {number[]} gravities @param {number[]} prior */
function fit(days, gravities, prior) {
  /** @type {{cost: number, theta: number[]}|null} */
  let best = null;
  for (const start of STARTS) {
    let theta = [prior[0], Math.log(start), prior[2], prior[3]];
    let [cost, damping] = [costOf(days, gravities, theta, prior), 1e-2];
    for (let step = 0; step < STEPS && damping <= 1e12; step += 1) {
      const { matrix, pull } = normal(days, gravities, theta, prior);
      const moved = solve(matrix.map((row, i) => row.map((value, j) => (i === j ? value * (1 + damping) : value))), pull);
      const tried = theta.map((value, j) => value + moved[j]);
      [tried[1], tried[3]] = [Math.min(Math.max(tried[1], -4), 3), Math.min(Math.max(tried[3], -2.5), 2.5)];
      const triedCost = costOf(days, gravities, tried, prior);
      const gain = cost - triedCost;
      if (gain > 0) [theta, cost, damping] = [tried, triedCost, Math.max(damping / 5, 1e-9)];
      else damping *= 4;
      if (gain > 0 && gain < LEAST_GAIN) break;
    }
    if (!best || cost < best.cost - 1e-9) best = { cost, theta };
  }
  const { theta } = /** @type {{theta: number[]}} */ (best);
  return { theta, precision: normal(days, gravities, theta, prior).matrix };
}

/** @param {number[][]} matrix positive definite @param {number[]} right @returns {number[]} by Cholesky */
function solve(matrix, right) {
  const lower = FOUR.map(() => [0, 0, 0, 0]);
  const [half, found] = [[0, 0, 0, 0], [0, 0, 0, 0]];
  for (const i of FOUR) {
    for (let j = 0; j <= i; j += 1) {
      let rest = matrix[i][j];
      let taken = 0;
      for (let k = 0; k < j; k += 1) taken += lower[i][k] * lower[j][k];
      rest -= taken;
      lower[i][j] = i === j ? Math.sqrt(rest) : rest / lower[j][j];
    }
  }
  for (const i of FOUR) half[i] = (right[i] - FOUR.slice(0, i).reduce((sum, k) => sum + lower[i][k] * half[k], 0)) / lower[i][i];
  for (const i of [3, 2, 1, 0]) found[i] = (half[i] - FOUR.slice(i + 1).reduce((sum, k) => sum + lower[k][i] * found[k], 0)) / lower[i][i];
  return found;
}

/** @param {number} zero @param {number} now @param {number} og @param {number[]} theta @param {number[][]} precision */
function answer(zero, now, og, theta, precision) {
  const [end, rate, middle, shape] = [theta[0], Math.exp(theta[1]), theta[2], Math.exp(theta[3])];
  const ratio = (og - end) / END_WITHIN;
  if (ratio <= 1) return { state: "too_little", why: "not_begun" };
  const [start, root] = [Math.exp(bound(-rate * middle)), Math.exp(Math.log(ratio) / shape)];
  const amount = (1 + start) * root;
  const at = middle + Math.log(amount - 1) / rate;
  const byAmount = 1 / (rate * (amount - 1));
  const slopes = [
    (-byAmount * amount) / (shape * (og - end)),
    -Math.log(amount - 1) / rate - byAmount * root * start * middle * rate,
    1 - byAmount * root * start * rate,
    (-byAmount * amount * Math.log(ratio)) / shape,
  ];
  const solved = solve(precision, slopes);
  const fitted = Math.sqrt(FOUR.reduce((sum, i) => sum + slopes[i] * solved[i], 0));
  const left = Math.max(at - now, 0);
  const wide = Math.min((Z_80 * Math.sqrt(fitted ** 2 + (PACE_SD * left) ** 2 + SPARE_DAY ** 2)) / (left + 1), WIDEST);
  const [low, high] = [now + (left + 1) * Math.exp(-wide) - 1, now + (left + 1) * Math.exp(wide) - 1];
  const until = Math.max(high, now + 1);
  const drawn = Array.from({ length: 41 }, (_, i) => [zero + (until * i) / 40, curve((until * i) / 40, og, theta)[0]]);
  return {
    state: "running", days: { at: zero + Math.max(at, now), low: zero + Math.max(low, now), high: zero + Math.max(high, now) },
    end_gravity: end, rate_day: rate, curve: drawn,
  };
}
