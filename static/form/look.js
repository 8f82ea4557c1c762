// @ts-check
/** The second look: odd figures are named beside the keys, with the likely figure to tap. It never stops anybody. */
import { html, nothing } from "../vendor/lit-html/lit-html.js";
import { icon } from "../icons/icons.js";
import { symbol } from "../trade/units.js";
import { formatAgo, formatNumber } from "../ui/format.js";
import { likelySlips } from "../kinds/slips.js";
import { say } from "../words/say.js";

/** @typedef {{code: string, weight: string, field: string, message?: any, words?: string, suggestions: any[]}} Problem */

/**
 * A figure that can only fall has risen: known from the last value on the card, so it is asked here and not tomorrow.
 * @param {any} kind @param {any} read @param {any} context @param {any} card
 * @returns {Problem[]}
 */
export function risen(kind, read, context, card) {
  const found = [];
  for (const field of kind.fields) {
    const [value, last] = [read.values[field.name], context.last?.[field.name]];
    if (field.falls == null || typeof value !== "number" || last == null || !(value > last + field.falls + 1e-9)) continue;
    const given = read.entry.values[field.name];
    const at = card?.last?.[kind.name]?.[field.name]?.at;
    const usual = context.limits?.[field.name]?.usual ?? field.usual;
    const typed = Number(given.raw.replace(/[\s\u2009\u202f]/g, "").replace(",", "."));
    found.push({
      code: "rose", weight: "ask", field: field.name,
      words: `${field.label} can only fall: it was ${formatNumber(last, field.decimals ?? 1)} ${symbol(field.units[0])} ${at ? formatAgo(at) : "before"}.`,
      suggestions: likelySlips(field, typed, given.unit, usual, last).map((slip) => ({ ...slip, field: field.name })),
    });
  }
  return found;
}

/** The sentence without its closing "Look again", which the lead says already. @param {string} words */
const withoutLead = (words) => words.replace(/ Look again(, or keep it as read)?\.$/, "");

/**
 * @param {Problem|undefined} problem
 * @param {{onTake: (suggestion: any) => void, onKeep: () => void}} answers
 */
export function lookBand(problem, { onTake, onKeep }) {
  if (!problem) return nothing;
  const isDanger = problem.code === "danger";
  const isStop = isDanger || problem.weight === "stop";
  return html`<section class="band band--${isStop ? "stop" : "ask"} look" aria-label="Look again">
    <p><span class="band__lead">${icon(isStop ? "stop" : "ask")} ${isDanger ? "Danger." : "Look again?"}</span> ${withoutLead(say(problem))}</p>
    <div class="band__offers">
      ${problem.suggestions.map((one) => html`<button type="button" class="button" @click=${() => onTake(one)}>
        <span>${one.raw} ${symbol(one.unit)}${say(one) ? html`<span class="button__sub">${say(one)}</span>` : nothing}</span></button>`)}
      <button type="button" class="button" @click=${onKeep}>Keep as read</button>
    </div>
  </section>`;
}

/** A note has nothing to answer. @param {Problem[]} problems */
export const lookable = (problems) => problems.filter((problem) => problem.weight === "ask" || problem.weight === "stop");
