// @ts-check
// White space is spelt out: Python and JavaScript disagree about what it is.
const SPACE = "[\\t-\\r\\x1c-\\x20\\x85\\xa0\\u1680\\u2000-\\u200a\\u2028\\u2029\\u202f\\u205f\\u3000]+";
const OUTER = new RegExp(`^${SPACE}|${SPACE}$`, "g");

/** A text without the white space at its ends, as the book strips it. @param {string} text */
export const strip = (text) => text.replace(OUTER, "");
