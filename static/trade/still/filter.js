// @ts-check
/** Kalman's filter of a drift, and the little linear algebra of the fit. Twin of the end of webapp/trade/runfit.py. */
import { exponential } from "./vle.js";

/** @typedef {{ misses: number[], slopes: number[][], sizes: number[], driftPct: number, driftVar: number,
 *   driftSlopes: number[] }} Seen */

export const READ_PCT = 0.5;

/**
 * Kalman's filter of a drift that fades, read with noise: it whitens misses and slopes alike.
 * @param {number[]} litres @param {number} fadeL @param {number} driftVar @param {number[]} noise
 * @param {number[]} misses @param {number[][]} columns @returns {Seen}
 */
export function filter(litres, fadeL, driftVar, noise, misses, columns) {
  const held = [0, 0, 0, 0];
  let variance = driftVar;
  let before = litres[0];
  /** @type {number[][]} */
  const white = [[], [], [], []];
  const sizes = [];
  for (let k = 0; k < misses.length; k++) {
    const fade = exponential(-Math.max(litres[k] - before, 0) / fadeL);
    before = litres[k];
    variance = fade * fade * variance + driftVar * (1 - fade * fade);
    const error = Math.sqrt(variance + noise[k]);
    const gain = variance / (variance + noise[k]);
    const values = [misses[k], columns[0][k], columns[1][k], columns[2][k]];
    for (let j = 0; j < 4; j++) {
      const expected = fade * held[j];
      white[j].push((values[j] - expected) / error);
      held[j] = expected + gain * (values[j] - expected);
      if (j === 0) sizes.push((values[0] - expected) / Math.sqrt(variance + READ_PCT * READ_PCT));
    }
    variance *= 1 - gain;
  }
  return {
    misses: white[0], slopes: white.slice(1), sizes, driftPct: held[0], driftVar: variance, driftSlopes: held.slice(1),
  };
}

/** @param {number[]} one @param {number[]} other */
export function dot(one, other) {
  let total = 0;
  for (let i = 0; i < one.length; i++) total += one[i] * other[i];
  return total;
}

/** @param {number[][]} m symmetric, of three rows */
export function inverse(m) {
  const [a, b, c] = m[0];
  const [d, e] = [m[1][1], m[1][2]];
  const f = m[2][2];
  const one = d * f - e * e;
  const two = c * e - b * f;
  const three = b * e - c * d;
  const whole = a * one + b * two + c * three;
  return [
    [one / whole, two / whole, three / whole],
    [two / whole, (a * f - c * c) / whole, (b * c - a * e) / whole],
    [three / whole, (b * c - a * e) / whole, (a * d - b * b) / whole],
  ];
}
