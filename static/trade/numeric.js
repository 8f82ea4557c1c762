// @ts-check
/**
 * Small numerical pieces under the sums. Twin of webapp/trade/numeric.py, step for step: only + - * / in a fixed
 * order, so that phone and book give the same bits and refuse the same inputs.
 */
import { OUTSIDE, OutOfDomain } from "./errors.js";

const MAX_STEPS = 80;
// Newton's steps square their error: after one this small nothing is left but rounding.
const LAST_STEP = 1e-10;
const SLACK = 1e-10;
const SCALES = [1, 10, 100, 1e3, 1e4, 1e5, 1e6];

/**
 * Throws unless low <= value <= high (NaN is not).
 * @param {string} what code of what is measured
 * @param {number} value
 * @param {number} low
 * @param {number} high
 * @param {string} unit of units.json, or the code of a unit in words
 * @param {string} advice code of what to do next
 */
export function checkRange(what, value, low, high, unit, advice) {
  if (!(value >= low && value <= high)) throw new OutOfDomain(what, value, low, high, OUTSIDE, { unit, advice });
}

/**
 * c0 + c1 x + c2 x² + ... by Horner's rule.
 * @param {number[]} coefficients
 * @param {number} x
 */
export function polynomial(coefficients, x) {
  let total = coefficients[coefficients.length - 1];
  for (let i = coefficients.length - 2; i >= 0; i--) total = total * x + coefficients[i];
  return total;
}

/**
 * x in [low, high] where a monotonic polynomial takes the target; NaN where it never does.
 * @param {number[]} coefficients
 * @param {number} target
 * @param {number} low
 * @param {number} high
 */
export function invert(coefficients, target, low, high) {
  const atLow = polynomial(coefficients, low);
  const atHigh = polynomial(coefficients, high);
  const rising = atHigh > atLow;
  const least = Math.min(atLow, atHigh);
  const most = Math.max(atLow, atHigh);
  const slack = SLACK * Math.abs(atHigh - atLow);
  if (!(target >= least - slack && target <= most + slack)) return NaN;
  target = Math.min(Math.max(target, least), most);
  if (target === atHigh) return high;
  let x = low + (high - low) * ((target - atLow) / (atHigh - atLow));
  const top = coefficients.length - 1;
  for (let step = 0; step < MAX_STEPS; step++) {
    let value = coefficients[top];
    let slope = 0;
    for (let i = top - 1; i >= 0; i--) {
      slope = slope * x + value;
      value = value * x + coefficients[i];
    }
    const miss = value - target;
    if ((miss < 0) === rising) low = x;
    else high = x;
    const step = slope === 0 ? high - low + 1 : miss / slope;
    const after = x - step;
    const inside = after >= low && after <= high;
    if (Math.abs(step) <= LAST_STEP) return inside ? after : x;
    x = inside ? after : (low + high) / 2;
  }
  return x;
}

/**
 * y at x on the straight lines between points; beyond the ends, the end.
 * @param {number} x
 * @param {number[]} xs rising
 * @param {number[]} ys
 */
export function interpolate(x, xs, ys) {
  const last = xs.length - 1;
  if (x <= xs[0]) return ys[0];
  if (x >= xs[last]) return ys[last];
  let i = 0;
  while (xs[i + 1] <= x) i++;
  return ((ys[i + 1] - ys[i]) / (xs[i + 1] - xs[i])) * (x - xs[i]) + ys[i];
}

/**
 * Half up, away from zero; a billionth of the last place stands in for what binary takes from paper figures.
 * @param {number} value
 * @param {number} decimals 0 to 6
 */
export function roundHalfUp(value, decimals) {
  const scale = SCALES[decimals];
  const whole = Math.floor(Math.abs(value) * scale + 0.5 + 1e-9);
  return (whole / scale) * (value < 0 ? -1 : 1) + 0;
}

/**
 * A figure for a sentence, rounded half up; the book prints the very same.
 * @param {number} value
 * @param {number} decimals 0 to 6
 */
export function fixed(value, decimals) {
  return Number.isFinite(value) ? roundHalfUp(value, decimals).toFixed(decimals) : "no number";
}

/**
 * A figure for a sentence with at most five decimals, and none that are nought.
 * @param {number} value
 */
export function brief(value) {
  return fixed(value, 5).replace(/\.?0+$/, "");
}
