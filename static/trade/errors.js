// @ts-check
/**
 * What the sums throw when an input cannot be used: codes and figures. The sentence is made of them where it is read
 * (kinds/reasons.js). Twin of webapp/trade/errors.py.
 */

/** @typedef {{figure: string, unit?: string}} Shown a figure with its digits as they are to be shown */

/** The code of a figure outside its range; every other code has figures and a sentence of its own. */
export const OUTSIDE = "outside";

/** An input lies outside the range for which its source gives figures. */
export class OutOfDomain extends Error {
  /**
   * @param {string} what code of the input
   * @param {number} value
   * @param {number | null} low
   * @param {number | null} high
   * @param {string} code why
   * @param {{unit?: string, advice?: string, figures?: Record<string, Shown>}} [more] unit and code of what to do next where
   *   it is outside a range; otherwise what stands in the sentence of that code
   */
  constructor(what, value, low, high, code, { unit = "", advice = "", figures = {} } = {}) {
    super(`${what} ${value}, from ${low} to ${high} ${unit}: ${code} ${advice}`.trimEnd());
    this.name = "OutOfDomain";
    this.what = what;
    this.value = value;
    this.low = low;
    this.high = high;
    this.code = code;
    this.unit = unit;
    this.advice = advice;
    this.figures = figures;
  }
}

/** A typed text is no number. */
export class NotANumber extends Error {
  /** @param {string} code why */
  constructor(code) {
    super(code);
    this.name = "NotANumber";
    this.code = code;
  }
}
