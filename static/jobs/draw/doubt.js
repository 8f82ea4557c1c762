// @ts-check
/** The doubt span: a line of figures with where something may lie hatched, one stroke for the best guess, and signs for what is known. */
import { ticksOf, decimalsOf } from "../../ui/chartaxes.js";
import { formatNumber } from "../../ui/format.js";
import { html, svg } from "../../vendor/lit-html/lit-html.js";

/**
 * @typedef {{at: number, words: string, sign: "dot"|"ring"|"diamond", weight?: "note"|"copper"|"chalk"|"stop", isBelow?: boolean}} Known
 * @typedef {{low: number, high: number, at: number, words: string, weight?: "copper"|"well"}} Doubt
 * @typedef {object} Span
 * @property {string} id of this picture on its page
 * @property {Doubt} doubt
 * @property {Known[]} known
 * @property {string} unit of the line's figures, said at its end
 * @property {string} words the sentence that stands for the picture
 */

const [WIDTH, LINE_Y, EDGE] = [340, 38, 14];
const LETTER = 6.6; // about as wide as a letter of the words [drawing's units]

/** @param {Span} span */
export function doubtSpan({ id, doubt, known, unit, words }) {
  const all = [doubt.low, doubt.high, ...known.map((one) => one.at)];
  const room = (Math.max(...all) - Math.min(...all) || 1) * 0.18;
  const [from, to] = [Math.min(...all) - room, Math.max(...all) + room];
  const x = (/** @type {number} */ value) => EDGE + ((value - from) / (to - from)) * (WIDTH - 2 * EDGE);
  const ticks = ticksOf(from, to, 5);
  const figures = ticks.map((value, n) => `${formatNumber(value, decimalsOf(ticks))}${n === ticks.length - 1 ? ` ${unit}` : ""}`);
  const inside = (/** @type {number} */ at, /** @type {string} */ text) => Math.min(WIDTH - (text.length * LETTER) / 2, Math.max((text.length * LETTER) / 2, at)).toFixed(1);
  const weight = doubt.weight ?? "copper";
  const above = placed([{ at: x(doubt.at), words: doubt.words, weight }, ...known.filter((one) => !one.isBelow).map((one) => ({ at: x(one.at), words: one.words, weight: one.weight ?? "chalk" }))]);
  return html`<svg class="span" viewBox="0 0 ${WIDTH} 74" role="img" aria-label=${words}>${svg`
    <defs><pattern id="${id}-hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="span__hatch span--${weight}" d="M0 0V6" /></pattern></defs>
    <path class="span__line" d="M${EDGE} ${LINE_Y}H${WIDTH - EDGE}" />
    ${ticks.map((value, n) => svg`<path class="span__line" d="M${x(value).toFixed(1)} ${LINE_Y}v5" /><text class="span__figure" x=${inside(x(value), figures[n])} y="58">${figures[n]}</text>`)}
    <rect class="span__doubt span--${weight}" x=${x(doubt.low).toFixed(1)} y=${LINE_Y - 10} width=${Math.max(2, x(doubt.high) - x(doubt.low)).toFixed(1)} height="20" fill="url(#${id}-hatch)" />
    <path class="span__best span--${weight}" d="M${x(doubt.at).toFixed(1)} ${LINE_Y - 13}v26" />
    ${known.map((one) => sign(one, x(one.at)))}
    ${above.map((one) => svg`<text class="span__words span--${one.weight}" x=${one.x.toFixed(1)} y=${one.isHigh ? 9 : 22}>${one.words}</text>`)}
    ${known.filter((one) => one.isBelow).map((one) => svg`<text class="span__words span--${one.weight ?? "chalk"}" x=${inside(x(one.at), one.words)} y="72">${one.words}</text>`)}`}</svg>`;
}

/** @param {Known} known @param {number} x */
function sign({ sign: shape, weight = "chalk" }, x) {
  const at = x.toFixed(1);
  if (shape === "diamond") return svg`<path class="span__sign span--${weight}" d="M${at} ${LINE_Y - 7}l7 7-7 7-7-7z" />`;
  return svg`<circle class="span__sign span--${weight} ${shape === "ring" ? "span__sign--ring" : ""}" cx=${at} cy=${LINE_Y} r="6" />`;
}

/** Words over the line, none over another: where two are too near, the second stands a row higher. @param {{at: number, words: string, weight: string}[]} words */
function placed(words) {
  let [endLow, endHigh] = [-Infinity, -Infinity];
  return [...words].sort((a, b) => a.at - b.at).map((one) => {
    const half = (one.words.length * LETTER) / 2;
    const x = Math.min(WIDTH - half, Math.max(half, one.at));
    const isHigh = x - half < endLow + 6 && x - half >= endHigh;
    if (isHigh) endHigh = x + half;
    else endLow = x + half;
    return { ...one, x, isHigh };
  });
}
