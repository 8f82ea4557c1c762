// @ts-check
/**
 * Marks: the short code on a vessel's label with its check character (ISO 7064 MOD 37,36). The twin of
 * webapp/trade/marks.py: the same rules, sentences and vectors (tests/vectors/marks.json). Imports nothing.
 */

const ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
const BASE_LENGTH_MAX = 7;
const TEXT_LENGTH_MAX = 300;
// White space is spelt out, here and in the twin: Python and JavaScript disagree about what \s means.
const SPACES = " \\t\\n\\r\\v\\f\\u00a0\\u2009\\u202f";
const DRESSING = new RegExp(`[-\\u2010-\\u2015${SPACES}]`, "g");
const OUTER_SPACES = new RegExp(`^[${SPACES}]+|[${SPACES}]+$`, "g");
const ADDRESS = /^https?:\/\/[^/?# \t\r\n]+\/m\/([a-z0-9 -]+)\/?(?:[?#][^ \t\r\n]*)?$/i;
const ANY_SCHEME = /^[a-z][a-z0-9+.]*:/i;
const LOOKALIKES = ["0ODQ", "1IL", "2Z", "5S", "6G", "8B", "VU", "MN"];

/** A text that is no mark of ours: `message` says what to do, `code` names the reason, `bare` is what was read. */
export class BadMark extends Error {
  /** @param {string} code @param {string} message @param {string} [bare] */
  constructor(code, message, bare = "") {
    super(message);
    this.bare = bare;
    this.name = "BadMark";
    this.code = code;
  }
}

/** @param {string} base one or more of A-Z and 0-9 @returns {string} the ISO 7064 MOD 37,36 check character */
export function checkCharacter(base) {
  if (!/^[0-9A-Z]+$/.test(base)) {
    throw new BadMark("characters", "A code is made of the letters A to Z and the digits 0 to 9. Leave the rest out.");
  }
  let product = 36;
  for (const character of base) product = (((product + ALPHABET.indexOf(character)) % 36 || 36) * 2) % 37;
  return ALPHABET[(37 - product) % 36];
}

/**
 * @param {string} text a typed mark or a scanned payload; an address counts by its path /M/<mark> and is never followed
 * @returns {string} the stored form @throws {BadMark}
 */
export function parseMark(text) {
  text = text.replace(OUTER_SPACES, "");
  if (!text) throw new BadMark("empty", "Type the mark on the label, such as F3-8.");
  // Counted in characters, not in UTF-16 units, as the book counts them.
  if (text.length > 2 * TEXT_LENGTH_MAX || [...text].length > TEXT_LENGTH_MAX) throw tooLong();
  const address = ADDRESS.exec(text);
  if (address) text = address[1];
  else if (ANY_SCHEME.test(text)) {
    throw new BadMark("foreign", "This code is not one of ours. Scan the label on the vessel, or type its mark.");
  }
  const bare = plain(text);
  if (/[^0-9A-Z]/.test(bare)) {
    throw new BadMark("characters", "A mark has only letters A to Z and digits 0 to 9. Read the label again.");
  }
  if (bare.length < 2) {
    throw new BadMark("too_short", "A mark has a code and a check character, such as F3-8. Type all of it.");
  }
  if (bare.length > BASE_LENGTH_MAX + 1) throw tooLong();
  if (checkCharacter(bare.slice(0, -1)) !== bare.slice(-1) || blindTwin(bare)) {
    throw new BadMark(
      "check",
      `${bare} is no mark: a character is wrong, or the last one is missing. Read the label again.`,
      bare,
    );
  }
  return hyphenated(bare);
}

/**
 * @param {string} text @param {Iterable<string>} known marks in stored form @param {number} [limit]
 * @returns {string[]} the known marks that were most likely meant, best first
 */
export function suggest(text, known, limit = 3) {
  const address = ADDRESS.exec(text.replace(OUTER_SPACES, ""));
  const bare = [...plain(address ? address[1] : text)].slice(0, BASE_LENGTH_MAX + 3);
  if (bare.length === 0) return [];
  /** @type {[number, string][]} */
  const ranked = [];
  for (const mark of known) {
    const whole = plain(mark);
    const distance = Math.min(slips(bare, whole), slips(bare, whole.slice(0, -1)) + 0.2);
    if (distance <= (bare.length > 3 ? 2 : 1)) ranked.push([distance, mark]);
  }
  ranked.sort((a, b) => a[0] - b[0] || (a[1] < b[1] ? -1 : a[1] > b[1] ? 1 : 0));
  return ranked.slice(0, limit).map(([, mark]) => mark);
}

/** @param {string} text */
function plain(text) {
  const bare = text.replace(DRESSING, "");
  return /^[\x00-\x7f]*$/.test(bare) ? bare.toUpperCase() : bare;
}

/** @param {string} bare */
const hyphenated = (bare) => `${bare.slice(0, -1)}-${bare.slice(-1)}`;
const tooLong = () =>
  new BadMark("too_long", "This is too long for a mark. Type the large print on the label.");

/** @param {string} bare @returns {string} a swap of neighbours that passes the check as well, or "" */
function blindTwin(bare) {
  for (let at = 0; at + 1 < bare.length; at += 1) {
    if (bare[at] === bare[at + 1]) continue;
    const twin = bare.slice(0, at) + bare[at + 1] + bare[at] + bare.slice(at + 2);
    if (checkCharacter(twin.slice(0, -1)) === twin.slice(-1)) return twin;
  }
  return "";
}

/** @param {string[]} typed characters @param {string} meant @returns {number} wrong, missing, added or swapped characters */
function slips(typed, meant) {
  /** @type {number[]} */ let before = [];
  let row = Array.from({ length: meant.length + 1 }, (_, at) => at);
  for (let i = 1; i <= typed.length; i += 1) {
    const earlier = before;
    before = row;
    row = [i];
    for (let j = 1; j <= meant.length; j += 1) {
      const [one, other] = [typed[i - 1], meant[j - 1]];
      const alike = LOOKALIKES.some((set) => set.includes(one) && set.includes(other));
      let best = Math.min(before[j - 1] + (one === other ? 0 : alike ? 0.4 : 1), before[j] + 1, row[j - 1] + 1);
      if (i > 1 && j > 1 && one === meant[j - 2] && typed[i - 2] === other) best = Math.min(best, earlier[j - 2] + 0.7);
      row.push(best);
    }
  }
  return row[meant.length];
}
