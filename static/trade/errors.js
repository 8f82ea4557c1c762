// @ts-check
/** What the sums throw when an input cannot be used. Twin of webapp/trade/errors.py. */

/** An input lies outside the range for which its source gives figures; the message says what to do next. */
export class OutOfDomain extends Error {
  /**
   * @param {string} what name of the input
   * @param {number} value
   * @param {number | null} low
   * @param {number | null} high
   * @param {string} sentence
   */
  constructor(what, value, low, high, sentence) {
    super(sentence);
    this.name = "OutOfDomain";
    this.what = what;
    this.value = value;
    this.low = low;
    this.high = high;
    this.sentence = sentence;
  }
}

/** A typed text is no number; the message says what to type instead. */
export class NotANumber extends Error {
  /** @param {string} sentence */
  constructor(sentence) {
    super(sentence);
    this.name = "NotANumber";
    this.sentence = sentence;
  }
}
