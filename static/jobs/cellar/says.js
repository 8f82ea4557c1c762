// @ts-check
/** The sentences of the cellar's rounds. */
import { formatNumber } from "../../ui/format.js";

/** @param {number} ms @returns {string} "2 Dec" */
const day = (ms) => new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "short", timeZone: document.documentElement.dataset.zone || undefined }).format(ms);

/** @param {any} end of endOf @returns {string} */
export function endWords(end) {
  if (end.state === "ended") return `Ended: three equal gravities since ${day(end.ms.at)}. Book the still.`;
  if (end.state === "stuck") return "Not moving and not finished. Look at temperature, acid and yeast food.";
  if (end.state !== "running") return end.words || (end.why === "not_begun" ? "It has hardly begun to fall: no day yet." : "No day yet: it takes four readings.");
  const [low, high] = [day(end.ms.low), day(end.ms.high)];
  const span = low === high ? "" : ` (${low} to ${high})`;
  return `Ends about ${day(end.ms.at)}${span}, near ${formatNumber(end.end_gravity, 3)}. Three equal gravities decide.`;
}

/** @param {string} word of judged */
const JUDGED = /** @type {Record<string, [weight: string, words: string]>} */ ({
  usual: ["note", "as casks like it"],
  leak: ["ask", "Much, at a usual strength: a leak? Look at hoops, heads, bung and floor."],
  slip: ["ask", "The weight is usual, the strength odd. Read the glass again."],
  other_cask: ["ask", "Weight and strength are both odd. Is it the right cask?"],
  gain: ["ask", "A cask cannot gain. Weigh and read again."],
});

/** @param {{word: string, share: number}|null} found @param {{share: {low: number, high: number}, count: number}} usual @returns {{weight: string, figure: string, words: string}} */
export function lossWords(found, usual) {
  const span = `${formatNumber(usual.share.low, 1)} to ${formatNumber(usual.share.high, 1)}`;
  const like = usual.count ? `casks like it ${span} (${usual.count} compared)` : `such a size ${span}`;
  if (!found) return { weight: "note", figure: "", words: `First gauge of this fill, or too soon for a rate; ${like} % a year.` };
  const [weight, words] = JUDGED[found.word];
  return { weight, figure: `${formatNumber(found.share, 1)} %`, words: found.word === "usual" ? `a year; ${like}.` : `a year; ${like}. ${words}` };
}
