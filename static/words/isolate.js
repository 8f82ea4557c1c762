// @ts-check
/** Texts that run from right to left, or say that they do, closed off from what stands beside them. Twin of webapp/isolate.py. */

const [FIRST_STRONG, POP_ISOLATE] = ["\u2068", "\u2069"];
const ISOLATES = "\u2066\u2067\u2068";
/** Marks of direction, and letters and figures that run from right to left. [Unicode 16.0, UAX #9; blocks by range] */
const TURNS = /[\u202a-\u202e\u2066-\u2069\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefe\u{10800}-\u{10fff}\u{1e800}-\u{1efff}]/u;

/** @param {string} text @returns {string} */
export const isolate = (text) => (TURNS.test(text) ? FIRST_STRONG + balanced(text) + POP_ISOLATE : text);

/** The text with every isolate closed, and none closed that it did not open: that would be ours. @param {string} text */
function balanced(text) {
  let [opened, kept] = [0, ""];
  for (const char of text) {
    if (ISOLATES.includes(char)) opened += 1;
    else if (char === POP_ISOLATE && !opened) continue;
    else if (char === POP_ISOLATE) opened -= 1;
    kept += char;
  }
  return kept + POP_ISOLATE.repeat(opened);
}
