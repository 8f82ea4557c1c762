// @ts-check
/**
 * A figure as it is spoken in English, and as a recogniser writes it down: "one point oh three one", "fourteen and a half
 * degrees", "four eighty two litres", "78.6". Pure: tests/vectors/spoken_figures.json says what comes of what.
 */

/**
 * @typedef {{raw: string, units: string[]}} Spoken `raw`: the figure in digits with a decimal point, as it would be typed; `units`: the
 *   units that the words allow, by their codes in units.json, none where nothing was said of one
 */

/** @type {Record<string, number>} */
const ONES = {
  zero: 0, oh: 0, o: 0, nought: 0, naught: 0, one: 1, won: 1, two: 2, to: 2, too: 2, three: 3, four: 4, for: 4, five: 5, six: 6, seven: 7,
  eight: 8, ate: 8, nine: 9,
};
/** @type {Record<string, number>} */
const TEENS = { ten: 10, eleven: 11, twelve: 12, thirteen: 13, fourteen: 14, fifteen: 15, sixteen: 16, seventeen: 17, eighteen: 18, nineteen: 19 };
/** @type {Record<string, number>} */
const TENS = { twenty: 20, thirty: 30, forty: 40, fourty: 40, fifty: 50, sixty: 60, seventy: 70, eighty: 80, ninety: 90 };
/** @type {Record<string, number>} */
const SCALES = { hundred: 100, thousand: 1000 };
/** @type {[RegExp, string][]} what is added to a whole figure */
const PARTS = [[/ (and )?(a |one )?half$/, ".5"], [/ (and )?three quarters$/, ".75"], [/ (and )?(a |one )?quarter$/, ".25"]];
/** @type {Record<string, string[]>} */
const UNITS = {
  degrees: [], degree: [], celsius: ["degC"], centigrade: ["degC"], c: ["degC"], fahrenheit: ["degF"], f: ["degF"],
  kilo: ["kg"], kilos: ["kg"], kilogram: ["kg"], kilograms: ["kg"], kg: ["kg"], pound: ["lb"], pounds: ["lb"], lb: ["lb"], lbs: ["lb"],
  gram: ["g"], grams: ["g"], g: ["g"], litre: ["L"], litres: ["L"], liter: ["L"], liters: ["L"], l: ["L"], millilitres: ["mL"], milliliters: ["mL"],
  ml: ["mL"], gallon: ["gal"], gallons: ["gal"], percent: ["pct_vol", "pct"], "%": ["pct_vol", "pct"], proof: ["proof", "proof_glass"],
  brix: ["Bx", "Bx_hydrometer"], centimetres: ["cm"], centimeters: ["cm"], cm: ["cm"], inch: ["in"], inches: ["in"], ppm: ["ppm"], volume: [], vol: [],
};

/**
 * @param {string} text in any case
 * @returns {Spoken|null} null where the words are no single figure: nothing is guessed
 */
export function parseSpoken(text) {
  const { words, units } = withoutUnit(cleaned(text));
  const isNegative = /^(minus|negative) /.test(`${words} `);
  let rest = words.replace(/^(minus|negative|plus) /, "");
  let tail = "";
  for (const [pattern, digits] of PARTS) {
    if (tail || !pattern.test(` ${rest}`)) continue;
    tail = digits;
    rest = ` ${rest}`.replace(pattern, "").trim() || "zero";
  }
  const [before, after, ...more] = rest.split(/ ?\bpoint\b ?/);
  if (more.length || (tail && after !== undefined)) return null;
  const whole = before.trim() || after === undefined ? wholeOf(before.trim().split(" ")) : "0";
  const decimals = after === undefined ? tail.slice(1) : decimalsOf(after.trim().split(" "));
  if (whole === null || decimals === undefined) return null;
  if (decimals && /\./.test(whole)) return null;
  const raw = decimals ? `${whole}.${decimals}` : whole;
  return { raw: isNegative && Number(raw) !== 0 ? `-${raw}` : raw, units };
}

/** @param {string} text */
const cleaned = (text) => text.toLowerCase().replace(/[−–]/g, "-").replace(/½/g, " and a half").replace(/¼/g, " and a quarter").replace(/¾/g, " and three quarters")
  .replace(/(\d),(?=\d{3}\b)/g, "$1").replace(/(\d),(?=\d)/g, "$1.").replace(/(^|\s)-(?=\d)/g, "$1minus ").replace(/(\d)\s*(?=[a-z%°])/g, "$1 ")
  .replace(/[°?!:;"]/g, " ").replace(/\.(?!\d)/g, " ").replace(/(^|\s)\.(?=\d)/g, "$1point ").replace(/[,-]/g, " ").replace(/\b(dot|decimal|comma)\b/g, "point").replace(/\s+/g, " ").trim();

/** @param {string} text @returns {{words: string, units: string[]}} */
function withoutUnit(text) {
  const words = text.split(" ");
  /** @type {string[]} */
  let units = [];
  while (words.length > 1 && Object.hasOwn(UNITS, words[words.length - 1])) {
    const said = UNITS[/** @type {string} */ (words.pop())];
    if (!units.length) units = said;
  }
  return { words: words.join(" "), units };
}

/** @param {Record<string, unknown>} table @param {string} word */
const has = (table, word) => Object.hasOwn(table, word);

/** @param {string[]} words @returns {string|null} a whole figure in digits, or one that was written with its decimals */
function wholeOf(words) {
  if (words.length === 1 && /^\d+(\.\d+)?$/.test(words[0])) return words[0];
  return words.some((word) => has(SCALES, word)) ? cardinalOf(words) : runOf(groupsOf(words));
}

/** Figures said without "hundred": digit by digit, or as years are ("ten thirty one", "four eighty two", "ten oh five"). @param {string[]|undefined} groups */
function runOf(groups) {
  if (!groups) return null;
  const isByDigits = groups.every((group) => group.length === 1);
  const isLikeYear = (groups.length === 2 && groups[1].length === 2) || (groups.length === 3 && groups[1] === "0" && groups[2].length === 1);
  return isByDigits || isLikeYear || groups.length === 1 ? groups.join("").replace(/^0+(?=\d)/, "") : null;
}

/** "oh three one", "thirty one", "zero thirty one". @param {string[]} words @returns {string|undefined} */
function decimalsOf(words) {
  const groups = groupsOf(words);
  return groups?.slice(0, -1).every((group) => group.length === 1) ? groups.join("") : undefined;
}

/** "four hundred and eighty two", "one thousand and thirty one". @param {string[]} words */
function cardinalOf(words) {
  let [total, group] = [0, 0];
  /** @type {string[]} */
  let open = [];
  for (const word of words) {
    if (word === "and" && (group || total) && !open.length) continue;
    if (!has(SCALES, word)) {
      open.push(word);
      continue;
    }
    const count = open.join() === "a" ? 1 : smallOf(open);
    open = [];
    if (count === null || (word === "hundred" ? !count || group : total || !(group + count))) return null;
    if (word === "hundred") group = count * 100;
    else [total, group] = [(group + count) * 1000, 0];
  }
  const last = smallOf(open);
  return last === null ? null : String(total + group + last);
}

/** @param {string[]} words none say nothing, 0 @returns {number|null} */
function smallOf(words) {
  const groups = groupsOf(words);
  return !groups || groups.length > 1 ? null : Number(groups[0] ?? 0);
}

/** "thirty one" is one group, "ten thirty one" two, "oh three one" three. @param {string[]} words @returns {string[]|undefined} their digits */
function groupsOf(words) {
  const groups = [];
  for (let at = 0; at < words.length; at += 1) {
    const word = words[at];
    if (/^\d+$/.test(word)) groups.push(word);
    else if (has(ONES, word)) groups.push(String(ONES[word]));
    else if (has(TEENS, word)) groups.push(String(TEENS[word]));
    else if (has(TENS, word)) {
      const one = (has(ONES, words[at + 1] ?? "") && ONES[words[at + 1]]) || 0;
      groups.push(String(TENS[word] + one));
      if (one) at += 1;
    } else return undefined;
  }
  return groups;
}
