// @ts-check
/** Kalman's filter of a drift. Twin of the end of webapp/trade/runfit.py. */
import { exponential } from "./vle.js";

/** @typedef {{ misses: number[], slopes: number[][], sizes: number[], driftPct: number, driftVar: number,
 *   driftSlopes: number[] }} Seen */

export const READ_PCT = 0.5;
export const SHIFT_PCT = 3;

/**
 * Kalman's filter of a drift that fades, read with noise: it whitens misses and slopes alike.
 * @param {number[]} litres @param {number} fadeL @param {number} driftVar @param {number[]} noise
 * @param {number[]} misses @param {number[][]} columns @param {number[]} leaps where heat, water or plates were changed, the drift may leap
 * @returns {Seen}
 */
export function filter(litres, fadeL, driftVar, noise, misses, columns, leaps) {
  const all = [misses, ...columns];
  const held = all.map(() => 0);
  let variance = driftVar;
  let before = litres[0];
  /** @type {number[][]} */
  const white = all.map(() => []);
  const sizes = [];
  for (let k = 0; k < misses.length; k++) {
    const fade = exponential(-Math.max(litres[k] - before, 0) / fadeL);
    before = litres[k];
    variance = fade * fade * variance + driftVar * (1 - fade * fade);
    if (leaps.includes(k)) variance += SHIFT_PCT * SHIFT_PCT;
    const error = Math.sqrt(variance + noise[k]);
    const gain = variance / (variance + noise[k]);
    for (let j = 0; j < all.length; j++) {
      const value = all[j][k];
      const expected = fade * held[j];
      white[j].push((value - expected) / error);
      held[j] = expected + gain * (value - expected);
      if (j === 0) sizes.push((value - expected) / Math.sqrt(variance + READ_PCT * READ_PCT));
    }
    variance *= 1 - gain;
  }
  return {
    misses: white[0], slopes: white.slice(1), sizes, driftPct: held[0], driftVar: variance, driftSlopes: held.slice(1),
  };
}
