// @ts-check
/**
 * Uncertainty: what the limits of error of instruments leave open of a figure (JCGM 100:2008, law of propagation).
 * Twin of webapp/trade/uncertainty.py, which has units, ranges and sources.
 */
export const COVERAGE = 2;

/**
 * @typedef {{value: number, shared: Record<string, number>, own: number}} Uncertain
 * @typedef {{name: string, value: number, error: string, shared: number, own: number, step: number}} Input
 */

/** The combined standard uncertainty. @param {Uncertain} figure */
export function standardOf({ shared, own }) {
  let square = own;
  for (const part of Object.values(shared)) square += part * part;
  return Math.sqrt(square);
}

/** @param {number} limit */
export const standardFromLimit = (limit) => limit / Math.sqrt(3);

/** @param {number} interval */
export const standardFromInterval = (interval) => interval / Math.sqrt(12);

/**
 * @param {(at: Record<string, number>) => Record<string, number>} model @param {Input[]} inputs
 * @returns {Record<string, Uncertain>}
 */
export function propagate(model, inputs) {
  const at = Object.fromEntries(inputs.map(({ name, value }) => [name, value]));
  const middle = model(at);
  /** @type {Record<string, Uncertain>} */
  const figures = Object.fromEntries(Object.entries(middle).map(([name, value]) => [name, { value, shared: {}, own: 0 }]));
  for (const one of inputs) {
    const step = one.step || Math.sqrt(one.shared * one.shared + one.own * one.own);
    if (!(step > 0)) continue;
    const above = model({ ...at, [one.name]: one.value + step });
    const below = model({ ...at, [one.name]: one.value - step });
    for (const [name, figure] of Object.entries(figures)) {
      const slope = slopeOf(below[name], figure.value, above[name], step);
      if (one.error && one.shared && slope) figure.shared[one.error] = (figure.shared[one.error] ?? 0) + slope * one.shared;
      const alone = slope * (one.error ? one.own : Math.sqrt(one.shared * one.shared + one.own * one.own));
      figure.own += alone * alone;
    }
  }
  return figures;
}

/** @param {[number, Uncertain][]} terms weight and figure @returns {Uncertain} */
export function combine(terms) {
  /** @type {Uncertain} */
  const sum = { value: 0, shared: {}, own: 0 };
  for (const [weight, term] of terms) {
    sum.value += weight * term.value;
    sum.own += weight * weight * term.own;
    for (const [error, part] of Object.entries(term.shared)) sum.shared[error] = (sum.shared[error] ?? 0) + weight * part;
  }
  return sum;
}

/** @param {number} standard @param {number} decimals of its figure @returns {number} k = 2, rounded up */
export function expanded(standard, decimals) {
  const scale = 10 ** decimals;
  return Math.floor(COVERAGE * standard * scale + 1 - 1e-6) / scale;
}

/** @param {number | undefined} below @param {number} value @param {number | undefined} above @param {number} step */
function slopeOf(below, value, above, step) {
  if (above === undefined) return below === undefined ? 0 : (value - below) / step;
  return below === undefined ? (above - value) / step : (above - below) / (2 * step);
}
