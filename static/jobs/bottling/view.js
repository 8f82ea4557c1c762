// @ts-check
/** How the bottling line looks on the phone: the next check and the line's speed large, then the last checks, and the panel of a check. */
import { badge } from "../../ui/badge.js";
import { formatMinute, formatNumber, formatQuantity, formatTime } from "../../ui/format.js";
import { html, nothing } from "../../vendor/lit-html/lit-html.js";
import { figureBox, minuteBox, remarkBox } from "../../form/quickfields.js";
import { chip, choiceRow } from "../../shell/choices.js";
import { shownInUnits, strengthShown } from "../../shell/inunits.js";
import { COUNT_USUAL } from "./checks.js";
import { t } from "../../words/later.js";

/** Common practice, no source. */
const IN_CASE = /** @type {[string, string][]} */ (["6", "12", "24"].map((count) => [count, count]));

/**
 * @typedef {object} Line what the page shows
 * @property {import("./checks.js").Spread|null} fill
 * @property {import("./checks.js").Spread|null} strength
 * @property {import("./checks.js").Due|null} due
 * @property {import("./checks.js").Speed|null} speed
 * @property {{at: number, soonest: number, latest: number, left: number}|null} end
 * @property {number|null} filled bottles as last counted
 * @property {number|null} expected bottles by now
 * @property {number} everyMin
 * @property {{low: number, high: number|null, words: string}|null} fillLimits
 * @property {{low: number, high: number}|null} strengthLimits
 * @property {number|null} bottles
 * @property {number|null} sizeL
 * @property {number|null} labelPct
 */

/** @param {Line} line */
export function state(line) {
  const { fill, strength } = line;
  return html`<section class="line" aria-label=${t("floor-view-the_line")}>${nextCheck(line)}${speedPart(line)}${bar(line)}</section>
    <dl class="readings">
      ${fill ? html`<div><dt>${t("floor-view-fill_average")}</dt><dd data-figure="fill">${formatNumber(fill.mean, 1)}</dd><dd class="quiet">${t("floor-view-of_the_label_last", { last: formatNumber(fill.last, 1) })}</dd></div>` : nothing}
      ${strength ? html`<div><dt>${t("floor-view-last_strength")}</dt><dd data-figure="strength">${strengthShown(strength.last).figure}</dd><dd class="quiet">${t("floor-view-average", { mean: strengthShown(strength.mean).figure, sign: strengthShown(strength.mean).sign })}</dd></div>` : nothing}
      ${line.bottles === null ? nothing : html`<div><dt>${t("floor-view-tank_fills")}</dt><dd data-figure="bottles">${formatNumber(line.bottles)}</dd><dd class="quiet">${t("floor-view-of_at_most", { size_l: formatQuantity(line.sizeL ?? 0, 2, "L") })}</dd></div>`}</dl>
    ${fill ? html`<p class="quiet">${t("floor-view-checks_over_under", { count: fill.count, spread: fill.spread === null ? "" : t("floor-view-spread", { spread: formatNumber(fill.spread, 2) }), over: fill.over, under: fill.under })}</p>` : nothing}
    ${limits(line)}`;
}

/** Large enough for a glance from the line. @param {Line} line */
function nextCheck({ due, everyMin }) {
  if (!due) return html`<div class="line__next"><p class="line__label">${t("floor-view-next_check")}</p><p class="line__figure" data-figure="due">${t("floor-now")}</p>
    <p class="line__sub">${t("floor-view-the_first_take_bottles", { count: COUNT_USUAL })}</p></div>`;
  const atBottle = due.atBottle === null ? "" : t("floor-view-at_bottle", { at_bottle: due.atBottle });
  if (due.dueAt === null) return html`<div class="line__next" data-due><p class="line__label">${t("floor-view-next_check")}</p><p class="line__figure" data-figure="due">${due.atBottle === null ? "–" : formatNumber(due.atBottle)}</p>
    <p class="line__sub">${due.atBottle === null ? t("floor-view-as_the_house_wants") : t("floor-view-bottles_filled")}</p></div>`;
  const minutes = Math.abs(due.inMin ?? 0);
  const figure = minutes < 100 ? html`${minutes}<span class="line__unit"> min</span>` : html`${Math.floor(minutes / 60)}<span class="line__unit"> h</span>`;
  return html`<div class="line__next ${due.isLate ? "line__next--late" : ""}" data-due><p class="line__label">${due.isLate ? badge("ask", t("floor-view-late")) : t("floor-view-next_check_in")}</p>
    <p class="line__figure" data-figure="due">${figure}</p>
    <p class="line__sub">${due.isLate ? t("floor-view-the_next_check_was", { due_at: formatTime(due.dueAt) }) : t("floor-view-next_check_2", { due_at: formatTime(due.dueAt) })}${atBottle ? `, ${due.isByCount ? t("floor-view-about") : t("floor-view-or")} ${atBottle}` : everyMin ? t("floor-view-every_min", { every_min: everyMin }) : ""}.</p></div>`;
}

/** @param {Line} line */
function speedPart({ speed, end, filled }) {
  if (!speed) return html`<div class="line__speed"><p class="line__label">${t("floor-view-line")}</p><p class="line__figure line__figure--second">–</p><p class="line__sub">${filled === null ? t("floor-view-type_the_bottles_filled") : t("floor-view-filled_the_next_count", { filled })}</p></div>`;
  const isApart = end && end.latest - end.soonest > 120_000;
  return html`<div class="line__speed"><p class="line__label">${t("floor-view-line")}</p><p class="line__figure line__figure--second"><span data-figure="speed">${formatNumber(speed.perHour)}</span><span class="line__unit"> ${t("floor-view-an_hour")}</span></p>
    <p class="line__sub">${end ? html`${t("floor-view-ends_about")} <strong data-figure="end">${formatTime(end.at)}</strong>${isApart ? t("floor-view-to", { soonest: formatTime(end.soonest), latest: formatTime(end.latest) }) : ""}` : t("floor-view-the_tank_is_through")}</p></div>`;
}

/** The tank in bottles, to scale: counted is solid, expected since then is hatched. @param {Line} line */
function bar({ bottles, filled, expected }) {
  if (!bottles || filled === null) return nothing;
  const at = (/** @type {number} */ count) => `${Math.min(count / bottles, 1) * 100}%`;
  const words = t("floor-view-of_counted", { filled, bottles, by: expected !== null && expected > filled ? t("floor-view-about_by_now", { expected }) : "" });
  return html`<figure class="line__bar"><svg role="img" aria-label=${words}>
      <defs><pattern id="line-hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect class="line__counted" width="2" height="6"></rect></pattern></defs>
      <rect class="line__all" width="100%" height="100%"></rect><rect class="line__expected" width=${at(expected ?? 0)} height="100%"></rect><rect class="line__counted" width=${at(filled)} height="100%"></rect></svg>
    <figcaption class="quiet">${words}</figcaption></figure>`;
}

/**
 * A plus for each case that comes off the line; without a case's size the plus would say nothing of bottles.
 * @param {import("./tally.js").Tally} tally @param {{onStep: (step: number) => void, onPerCase: (perCase: number) => void}} acts
 */
export const countCases = ({ cases, perCase }, { onStep, onPerCase }) => (perCase
  ? html`<div class="tally" role="group" aria-label=${t("floor-view-cases_packed")}><button type="button" class="counter__key tally__minus" aria-label=${t("floor-one_less")} ?disabled=${!cases} @click=${() => onStep(-1)}>−</button>
      <button type="button" class="counter__key tally__plus" @click=${() => onStep(1)}><span class="hidden-text">${t("floor-view-one_more_than")} </span><span aria-hidden="true" class="tally__sign">+</span>
        <span class="tally__figure" data-figure="cases">${formatNumber(cases)}</span><span class="tally__words">${t("floor-view-case_word", { count: cases })} <br>${t("floor-view-bottles", { per_case: cases * perCase })}</span></button></div>`
  : choiceRow(t("floor-view-bottles_in_a_case"), "line_per_case", IN_CASE, "", (value) => onPerCase(Number(value))));

/** @param {Line} line */
function limits({ fillLimits, strengthLimits, labelPct }) {
  const fill = fillLimits ? t("floor-view-each_bottle_full", { low: formatNumber(fillLimits.low, 1), high: fillLimits.high === null ? t("floor-view-or_more") : t("floor-view-to_2", { high: formatNumber(fillLimits.high, 1) }), words: fillLimits.words }) : "";
  const strength = strengthLimits ? t("floor-view-strength_to_for_a", { low: strengthShown(strengthLimits.low).figure, high: shownInUnits(strengthLimits.high, "pct_vol", 1), label_pct: strengthShown(labelPct ?? 0).figure }) : "";
  return fill || strength ? html`<p class="quiet">${fill}${strength}</p>` : nothing;
}

/**
 * The panel of a check. Bottles are weighed one by one; what the entry keeps is worked out from them.
 * @param {{kind: any, card: any, bottles: number, soFar: number, onSoFar: (bottles: number) => void, sizeRaw: string, labelRaw: string, lineRaw: string, emptyRaw: string, onMore: () => void, onLeave: () => void}} panel
 */
export function panel({ kind, card, bottles, soFar, onSoFar, sizeRaw, labelRaw, lineRaw, emptyRaw, onMore, onLeave }) {
  const count = Array.from({ length: bottles }, (_, n) => n + 1);
  return html`<form class="form panel" data-kind="bottle_check" novalidate aria-label=${t("floor-check_bottles")}>
    <header class="panel__head"><h2>${t("floor-check_bottles")} <span class="quiet">${formatTime(new Date())}</span></h2><button type="button" class="button button--plain" @click=${onLeave}>${t("floor-leave_it")}</button></header>
    <input type="hidden" name="line" value=${lineRaw}><input type="hidden" name="fill_least"><input type="hidden" name="fill_most">
    ${labelRaw ? html`<input type="hidden" name="label_strength" value=${labelRaw}>` : nothing}
    ${figureBox(kind, "filled_so_far", card)}
    ${soFar ? html`<div class="picks"><button type="button" class="button" @click=${() => onSoFar(soFar)}>${t("floor-view-by_the_cases", { so_far: soFar })}</button></div>` : nothing}
    ${weightBox("empty", t("floor-view-empty_bottle_with_closure"), emptyRaw)}
    <div class="pair">${count.map((n) => weightBox(`gross_${n}`, t("floor-view-bottle_full_g", { n }), ""))}</div>
    <button type="button" class="button" @click=${onMore}>${t("floor-view-one_more_bottle")}</button>
    ${figureBox(kind, "strength_found", card)}
    <div data-part="weighed" aria-live="polite"></div>
    <fieldset class="chips" data-field="labels_right"><legend><span>${t("floor-view-labels_and_closures_right")}</span></legend><div class="chips__row">${chip("labels_right", "yes", t("floor-view-yes"), false)}${chip("labels_right", "no", t("floor-view-no"), false)}</div></fieldset>
    <details class="more"><summary><strong>${t("floor-more")}</strong> <span class="quiet">${t("floor-view-fill_by_hand_bottle")}</span></summary><div class="form">
      <div class="pair">${figureBox(kind, "fill_found", card)}${figureBox(kind, "tested", card)}</div>
      <div class="field field--figure" data-field="bottle_size"><label class="field__label" for="check-size">${t("floor-view-bottle_size")}</label><input class="field__value" id="check-size" name="bottle_size" type="text" inputmode="decimal" autocomplete="off" maxlength="12" data-keypad data-unit="L" value=${sizeRaw}><span class="field__unit">${t("floor-view-l")}</span></div>
      ${minuteBox(formatMinute(new Date()))}<div class="field field--words" data-field="done"><label class="field__label" for="check-done">${t("floor-view-done_if_wrong")}</label><textarea class="field__value" id="check-done" name="done" rows="2" maxlength="2000"></textarea></div>${remarkBox()}</div></details>
    <div data-part="panel-look" aria-live="polite"></div><div data-part="panel-figures" class="sums" hidden></div></form>`;
}

/** @param {string} name @param {string} label @param {string} value */
const weightBox = (name, label, value) => html`<div class="field field--figure" data-field=${name}><label class="field__label" for="check-${name}">${label}</label>
  <input class="field__value" id="check-${name}" name=${name} type="text" inputmode="decimal" autocomplete="off" maxlength="8" data-keypad data-unit="g" value=${value}><span class="field__unit">${t("floor-view-g")}</span></div>`;

/** @param {{fills: number[], mean: string, isOut: boolean, words: string}|null} weighed */
export const weighedLine = (weighed) => (weighed
  ? html`<p class="band ${weighed.isOut ? "band--ask" : "band--note"}"><strong data-figure="weighed">${t("floor-view-full", { mean: formatNumber(Number(weighed.mean), 1) })}</strong> ${t("floor-view-on_average_of", { fills: weighed.fills.length, fill: weighed.fills.map((fill) => formatNumber(fill, 1)).join(", "), words: weighed.words })}</p>`
  : nothing);

/** @param {any[]} cards */
export const pickTank = (cards) => (cards.length
  ? html`<p>${t("floor-view-which_tank_runs_to")}</p><ul class="list">${cards.map((card) => html`<li class="list__item--short"><a class="button" href="?mark=${encodeURIComponent(card.mark)}">${card.name || card.mark}</a>
      <span class="list__what">${card.holds.name || card.holds.what}</span><span class="list__end">${shownInUnits(card.holds.volume_l, "L", 0)}</span></li>`)}</ul>`
  : html`<p class="band band--note">${t("floor-view-no_tank_has_spirit")}</p>`);
