// @ts-check
/** How a set of glasses looks: one large target for each glass, how sure, what gave it away; the button says the answer. */
import { icon } from "../../icons/icons.js";
import { some } from "../../shell/words.js";
import { html, nothing } from "../../vendor/lit-html/lit-html.js";

/** @typedef {import("./sets.js").Tasting} Tasting */
/** @typedef {import("./sets.js").Serving} Serving */
/** @typedef {import("./tasting.js").Said} Said */

/** @type {Record<string, {ask: string, how: string, named: string}>} */
const METHODS = {
  triangle: { ask: "Which is the odd one?", how: "Two of the three are the same.", named: "the odd one" },
  duo_trio: { ask: "Which is the same as R?", how: "R stands open beside the two.", named: "the same as R" },
  pair: { ask: "Which has more of it?", how: "", named: "this one" },
  pair_two_sided: { ask: "Which has more of it?", how: "", named: "this one" },
  ranking: { ask: "Tap them in order, the first one first.", how: "Tap again to take one out.", named: "" },
};
const SURE = [["guessing", "guessing"], ["fairly", "fairly"], ["quite", "quite"]];
/** Common practice, no source. */
const GAVE = ["nose", "mouth", "finish", "hotter", "wood", "softer"];
const CAUTION = "Nose first, a small sip, and spit. Water between. At most four sets, then rest; nobody drives or works at a still after it.";

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
  const under = (/** @type {string} */ code) => (!isOn(code) ? nothing : html`<span class="tasted__said">${icon("entered")} ${isRanking ? `place ${placeOf(code)}` : method.named}</span>`);
  const body = html`<section class="stack" aria-labelledby="tasting-ask">
    <p class="tasted__question">${tasting.question}</p>
    <div><h1 class="tasted__ask" id="tasting-ask">${method.ask}</h1><p class="quiet">${method.how} Taste left to right, water between. You may go back. A guess is an answer too.</p></div>
    <div class=${`tasted tasted--${set.codes.length}`} role="group" aria-label="Glasses, left to right">
      ${set.codes.map((code) => html`<button type="button" class="tasted__glass" aria-pressed=${isOn(code) ? "true" : "false"} @click=${() => onPick(code)}>${glass}<strong>${code}</strong>${under(code)}</button>`)}</div>
    <div class="stack"><h2 class="tasted__label" id="tasting-sure">How sure?</h2><div class="tasted__sure" role="group" aria-labelledby="tasting-sure">
      ${SURE.map(([sure, words]) => html`<button type="button" class="button" aria-pressed=${said.sure === sure ? "true" : "false"} @click=${() => onSure(sure)}>${said.sure === sure ? icon("entered") : nothing}${words}</button>`)}</div></div>
    <fieldset class="chips"><legend><span>What gave it away? (may)</span></legend><div class="chips__row">
      ${GAVE.map((word) => html`<label class="chip"><input type="checkbox" .checked=${said.gave_away.includes(word)} @change=${() => onGave(word)}><span class="chip__face">${icon("entered")}${word}</span></label>`)}</div></fieldset>
    <p class="caution">${icon("warning")}<span>${CAUTION}</span></p>
    <p class="quiet">The codes are drawn anew for each taster. This phone does not know what they hold.</p></section>`;
  const words = !ready ? (isRanking ? `${said.order.length} of ${set.codes.length} in order` : "Name a glass") : isRanking ? `Log: ${said.order.join(", ")}` : `${said.picked} is ${method.named}`;
  const doing = html`<button type="button" class="button button--main button--action" ?disabled=${!ready} @click=${onKeep}>${words}</button>`;
  return { body, doing };
}

/** @param {{tasting: Tasting, open: Serving[]}[]} wanted @param {(tasting: Tasting, set: Serving) => void} onChoose */
export const choose = (wanted, onChoose) => ({
  body: html`<section class="stack"><p>Which tasting stands before you?</p><div class="picks picks--rows">${wanted.map(({ tasting, open }) => html`<button type="button" class="button pick" @click=${() => onChoose(tasting, open[0])}><strong>${tasting.name}: ${tasting.question}</strong><span class="pick__end">${some(open.length, "set", "sets")}</span></button>`)}</div></section>`,
  doing: html`<a class="button button--action" href="/">Today</a>`,
});

/** @param {boolean} had whether this person was a taster of any that is not opened */
export const done = (had) => ({
  body: html`<section class="empty" role="status"><p>${had ? "All your sets are answered. Say nothing of them until it is opened at the desk." : "No glasses wait for you. A tasting is set out at the desk; its codes come with the next cards."}</p></section>`,
  doing: html`<div class="stack"><a class="button" href="/slate">The slate</a><a class="button button--main button--action" href="/">Today</a></div>`,
});
