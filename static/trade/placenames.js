// @ts-check
/** Names of places, whatever pattern a house uses: their order, and the room in a name. Twin of webapp/trade/placenames.py. */

const WORD = /[0-9]+|\p{L}+/gu;
const APART = new RegExp("^[\\s\\-/\\\\.,:;_·|#]+|[\\s\\-/\\\\.,:;_·|#]+$", "g");
const UPRIGHT = ["tier", "level", "shelf", "layer"];
const NAMED = new Set(["row", "bay", "rack", "aisle", "lane", "stack", "line", "col", "column", "pos", "position", "place", "slot", ...UPRIGHT]);
const SHORT = 2; // letters that name a row; a longer word names a room

/** @typedef {{text: string, start: number, end: number}} Part */

/** @param {string} text */
const isNumber = (text) => /^[0-9]/.test(text);

/** The place's room, row and position: the last number is the position, before it stands the row. @param {string|null|undefined} name @returns {{room: string, row: string, position: string}} */
export function readPlace(name) {
  const said = (name ?? "").trim().split(/\s+/).join(" ");
  const parts = [...said.matchAll(WORD)].map((one) => ({ text: one[0], start: one.index, end: one.index + one[0].length }));
  const [position, word, rest] = take(parts, true);
  if (!position) return { room: said, row: "", position: "" };
  let [row, , before] = take(rest, false);
  const isJoined = rest.length === 1 && rest[0].text.length === 1 && rest[0].end === parts[1]?.start;
  if (row && rest.length === 1 && !isNumber(row) && !isJoined) [row, before] = ["", rest]; // "A/3" is the third place of A
  const taken = parts[(row ? before : rest).length].start;
  const room = said.slice(0, taken).replace(APART, "");
  // Tiers are the rows of a map, wherever the name has them.
  return row && (UPRIGHT.includes(word) || word === "t") ? { room, row: position, position: row } : { room, row, position };
}

/** @param {Part[]} parts @param {boolean} isFirst @returns {[text: string, word: string, before: Part[]]} */
function take(parts, isFirst) {
  const last = parts.at(-1);
  if (!last) return ["", "", parts];
  const rest = parts.slice(0, -1);
  const word = rest.at(-1)?.text.toLowerCase() ?? "";
  if (NAMED.has(word)) return [last.text.toUpperCase(), word, rest.slice(0, -1)];
  if (!isNumber(last.text)) return !isFirst && last.text.length <= SHORT && !NAMED.has(last.text.toLowerCase()) ? [last.text.toUpperCase(), "", rest] : ["", "", parts];
  // In R12-T3 the T stands for a word.
  if (rest.length > 1 && word.length === 1 && rest[rest.length - 1].end === last.start && isNumber(rest[rest.length - 2].text)) return [last.text, word, rest.slice(0, -1)];
  return [last.text, "", rest];
}

/** "CELL" of "CELL-A1", "Loft" of "Loft 4". @param {string|null|undefined} name @returns {string} */
export const roomOf = (name) => readPlace(name).room;

const BY_NUMBER = new Intl.Collator("en", { numeric: true, sensitivity: "base" });

/** CELL-A2 before CELL-A10. @param {string} a @param {string} b */
export const inOrder = (a, b) => BY_NUMBER.compare(words(a), words(b));

/** @param {string} name */
const words = (name) => (name.match(WORD) ?? []).join(" ");
