// @ts-check
/** How a set of glasses looks: one large target for each glass, how sure, what gave it away; the button says the answer. */
import { icon } from "../../icons/icons.js";
import { html, nothing } from "../../vendor/lit-html/lit-html.js";
import { t } from "../../words/later.js";

/** @typedef {import("./sets.js").Tasting} Tasting */
/** @typedef {import("./sets.js").Serving} Serving */
/** @typedef {import("./tasting.js").Said} Said */

/** @type {Record<string, {ask: string, how: string, named: string}>} */
const METHODS = {
  triangle: { ask: t("floor-view-which_is_the_odd"), how: t("floor-view-two_of_the_three"), named: t("floor-view-the_odd_one") },
  duo_trio: { ask: t("floor-view-which_is_the_same"), how: t("floor-view-r_stands_open_beside"), named: t("floor-view-the_same_as_r") },
  pair: { ask: t("floor-view-which_has_more_of"), how: "", named: t("floor-view-this_one") },
  pair_two_sided: { ask: t("floor-view-which_has_more_of"), how: "", named: t("floor-view-this_one") },
  ranking: { ask: t("floor-view-tap_them_in_order"), how: t("floor-view-tap_again_to_take"), named: "" },
};
const SURE = [["guessing", t("floor-view-guessing")], ["fairly", t("floor-view-fairly")], ["quite", t("floor-view-quite")]];
/** Common practice, no source. */
const GAVE = [t("floor-view-nose"), t("floor-view-mouth"), t("floor-view-finish"), t("floor-view-hotter"), t("floor-view-wood"), t("floor-view-softer")];
const CAUTION = t("floor-view-nose_first_a_small");

const glass = html`<svg class="glass" viewBox="0 0 48 72" aria-hidden="true"><path class="glass__wine" d="M10 28h28c0 10-6 17-14 17s-14-7-14-17z"></path><path class="glass__line" d="M11 4h26c2 18 2 41-13 41S9 22 11 4zM24 45v20M13 68c3-3 19-3 22 0"></path></svg>`;

/**
 * @param {{tasting: Tasting, set: Serving, said: Said, onPick: (code: string) => void, onSure: (sure: string) => void, onGave: (word: string) => void, onKeep: () => void}} now
 */
export function ask({ tasting, set, said, onPick, onSure, onGave, onKeep }) {
  const method = METHODS[tasting.method] ?? METHODS.pair;
  const isRanking = tasting.method === "ranking";
  const ready = isRanking ? said.order.length === set.codes.length : Boolean(said.picked);
  const placeOf = (/** @type {string} */ code) => (isRanking ? said.order.indexOf(code) + 1 : 0);
  const isOn = (/** @type {string} */ code) => (isRanking ? said.order.includes(code) : said.picked === code);
  const under = (/** @type {string} */ code) => (!isOn(code) ? nothing : html`<span class="tasted__said">${icon("entered")} ${isRanking ? t("floor-view-place", { code: placeOf(code) }) : method.named}</span>`);
  const body = html`<section class="stack" aria-labelledby="tasting-ask">
    <p class="tasted__question">${tasting.question}</p>
    <div><h1 class="tasted__ask" id="tasting-ask">${method.ask}</h1><p class="quiet">${t("floor-view-taste_left_to_right", { how: method.how })}</p></div>
    <div class=${`tasted tasted--${set.codes.length}`} role="group" aria-label=${t("floor-view-glasses_left_to_right")}>
      ${set.codes.map((code) => html`<button type="button" class="tasted__glass" aria-pressed=${isOn(code) ? "true" : "false"} @click=${() => onPick(code)}>${glass}<strong>${code}</strong>${under(code)}</button>`)}</div>
    <div class="stack"><h2 class="tasted__label" id="tasting-sure">${t("floor-view-how_sure")}</h2><div class="tasted__sure" role="group" aria-labelledby="tasting-sure">
      ${SURE.map(([sure, words]) => html`<button type="button" class="button" aria-pressed=${said.sure === sure ? "true" : "false"} @click=${() => onSure(sure)}>${said.sure === sure ? icon("entered") : nothing}${words}</button>`)}</div></div>
    <fieldset class="chips"><legend><span>${t("floor-view-what_gave_it_away")}</span></legend><div class="chips__row">
      ${GAVE.map((word) => html`<label class="chip"><input type="checkbox" .checked=${said.gave_away.includes(word)} @change=${() => onGave(word)}><span class="chip__face">${icon("entered")}${word}</span></label>`)}</div></fieldset>
    <p class="caution">${icon("warning")}<span>${CAUTION}</span></p>
    <p class="quiet">${t("floor-view-the_codes_are_drawn")}</p></section>`;
  const words = !ready ? (isRanking ? t("floor-view-of_in_order", { order: said.order.length, codes: set.codes.length }) : t("floor-view-name_a_glass")) : isRanking ? t("floor-view-log", { order: said.order.join(", ") }) : t("floor-view-is", { picked: said.picked, named: method.named });
  const doing = html`<button type="button" class="button button--main button--action" ?disabled=${!ready} @click=${onKeep}>${words}</button>`;
  return { body, doing };
}

/** @param {{tasting: Tasting, open: Serving[]}[]} wanted @param {(tasting: Tasting, set: Serving) => void} onChoose */
export const choose = (wanted, onChoose) => ({
  body: html`<section class="stack"><p>${t("floor-view-which_tasting_stands_before")}</p><div class="picks picks--rows">${wanted.map(({ tasting, open }) => html`<button type="button" class="button pick" @click=${() => onChoose(tasting, open[0])}><strong>${tasting.name}: ${tasting.question}</strong><span class="pick__end">${t("floor-sets", { count: open.length })}</span></button>`)}</div></section>`,
  doing: html`<a class="button button--action" href="/">${t("floor-today")}</a>`,
});

/** @param {boolean} had whether this person was a taster of any that is not opened */
export const done = (had) => ({
  body: html`<section class="empty" role="status"><p>${had ? t("floor-view-all_your_sets_are") : t("floor-view-no_glasses_wait_for")}</p></section>`,
  doing: html`<div class="stack"><a class="button" href="/slate">${t("floor-the_slate")}</a><a class="button button--main button--action" href="/">${t("floor-today")}</a></div>`,
});
