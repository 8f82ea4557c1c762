// @ts-check
/** The second look: odd figures are named beside the keys, with the likely figure to tap. It never stops anybody. */
import { html, nothing } from "../vendor/lit-html/lit-html.js";
import { icon } from "../icons/icons.js";
import { symbol } from "../trade/units.js";
import { say } from "../words/say.js";
import { t } from "../words/t.js";

/** @typedef {{code: string, weight: string, field: string, message?: any, words?: string, expects?: import("../kinds/read.js").Expected[]}} Problem */

/** The sentence without its closing "Look again", which the lead says already. @param {string} words */
const withoutLead = (words) => words.replace(/ Look again(, or keep it as read)?\.$/, "");

/**
 * @param {Problem|undefined} problem @param {import("../kinds/meant.js").Suggestion[]} offers
 * @param {{onTake: (suggestion: any) => void, onKeep: () => void}} answers
 */
export function lookBand(problem, offers, { onTake, onKeep }) {
  if (!problem) return nothing;
  const isDanger = problem.code === "danger";
  const isStop = isDanger || problem.weight === "stop";
  return html`<section class="band band--${isStop ? "stop" : "ask"} look" aria-label=${t("floor-look-look_again")}>
    <p><span class="band__lead">${icon(isStop ? "stop" : "ask")} ${isDanger ? t("floor-look-danger") : t("floor-look-look_again_2")}</span> ${withoutLead(say(problem))}</p>
    <div class="band__offers">
      ${offers.map((one) => html`<button type="button" class="button" @click=${() => onTake(one)}>
        <span>${one.raw} ${symbol(one.unit)}${say(one) ? html`<span class="button__sub">${say(one)}</span>` : nothing}</span></button>`)}
      <button type="button" class="button" @click=${onKeep}>${t("floor-look-keep_as_read")}</button>
    </div>
  </section>`;
}

/** A note has nothing to answer. @param {Problem[]} problems */
export const lookable = (problems) => problems.filter((problem) => problem.weight === "ask" || problem.weight === "stop");
