// @ts-check
/** How a stock count looks: the choice of a place, one vessel or batch at a time with how many are left, and the differences at the end. */
import { figureBox, remarkBox } from "../../form/quickfields.js";
import { icon } from "../../icons/icons.js";
import { cautionLine } from "../../shell/cautions.js";
import { inUnits, shownInUnits, strengthShown } from "../../shell/inunits.js";
import { symbol } from "../../trade/units.js";
import { badge } from "../../ui/badge.js";
import { formatNumber, formatTime } from "../../ui/format.js";
import { html, nothing } from "../../vendor/lit-html/lit-html.js";
import { nameOf } from "./stock.js";
import { t } from "../../words/later.js";

/** @typedef {import("./round.js").Item} Item */
/** @type {Record<string, string>} */
const SHORT = { volume: t("floor-volume"), glass: t("floor-glass"), temp: t("floor-spirit") };

export const frame = () => html`<div data-part="round-form"></div><div data-part="round-list" class="stack"></div>`;

/** @param {{area: string, words: string, count: number}[]} rows @param {number} all @param {(area: string) => void} onChoose */
export const places = (rows, all, onChoose) => (all ? html`<section class="stack" aria-label=${t("floor-roundview-where")}>
    <p>${t("floor-roundview-one_place_after_another")}</p>
    <div class="picks picks--rows">${[...(rows.length > 1 ? [{ area: "", words: t("floor-all_places"), count: all }] : []), ...rows].map(({ area, words, count }) => html`<button type="button" class="button pick" @click=${() => onChoose(area)}><strong>${words}</strong><span class="pick__end">${formatNumber(count)}</span></button>`)}</div></section>`
  : html`<section class="empty"><p>${t("floor-roundview-nothing_to_count_as")}</p><a class="button" href="/">${t("floor-today")}</a></section>`);

/** @param {{items: Item[], done: number, isDone: (item: Item) => boolean, at: string, onGo: (key: string) => void, onEnd: () => void, onUnknown: () => void, onOpen: (event: Event) => void}} round */
export const list = ({ items, done, isDone, at, onGo, onEnd, onUnknown, onOpen }) => html`<p class="row row--apart" role="status"><strong>${t("floor-roundview-of_counted", { done, items: items.length })}</strong> <span>${t("floor-roundview-left", { done: items.length - done })}</span></p>
  <progress class="round__bar" max=${Math.max(items.length, 1)} .value=${done} aria-label=${t("floor-roundview-of_counted", { done, items: items.length })}></progress>
  <details class="more" @toggle=${onOpen}><summary @mousedown=${(/** @type {Event} */ event) => event.preventDefault()}><strong>${t("floor-roundview-another_or_the_end")}</strong> <span class="quiet">${t("floor-tap_it_in_the")}</span></summary><div class="stack">
    <div class="buttons" role="group" aria-label=${t("floor-roundview-in_this_round")}>${items.map((item) => html`<button type="button" class="button" aria-pressed=${item.key === at ? "true" : "false"} @click=${() => onGo(item.key)}>${isDone(item) ? icon("entered") : nothing}<span>${item.name}</span></button>`)}</div>
    <div class="pair"><button type="button" class="button" @click=${onUnknown}>${t("floor-not_in_the_book")}</button><button type="button" class="button" @click=${onEnd}>${t("floor-roundview-to_the_differences")}</button></div></div></details>`;

/** @param {Item} item */
export const caskPlace = (item) => html`<section class="stack" aria-label=${t("floor-roundview-cask")}>
  <p class="round__ask">${item.place ? html`${t("floor-roundview-it_should_stand_at")} <strong>${item.place}</strong>` : html`${t("floor-roundview-the_book_has")} <strong>${t("floor-roundview-no_place")}</strong> ${t("floor-roundview-for_it")}`}</p>
  <details class="more"><summary><strong>${t("floor-roundview-it_stands_elsewhere")}</strong> <span class="quiet">${t("floor-roundview-type_the_place")}</span></summary>
    <div class="field field--words"><label class="field__label" for="count-place">${t("floor-roundview-place_as_its_label")}</label><input class="field__value" id="count-place" name="place" type="text" maxlength="40" autocomplete="off" autocapitalize="characters"></div></details></section>`;

/** @param {{onHere: () => void, onNothing: () => void, onScan: () => void}} acts */
export const doingCask = ({ onHere, onNothing, onScan }) => html`<div class="stack"><div class="pair"><button type="button" class="button" @click=${onScan}>${icon("scan")} ${t("floor-scan")}</button><button type="button" class="button" @click=${onNothing}>${t("floor-roundview-not_here")}</button></div>
  <button type="button" class="button button--main button--action round__here" @click=${onHere}>${t("floor-roundview-it_is_here")}</button></div>`;

/** @param {any} kind @param {any} card told nothing of what it holds */
export const vesselForm = (kind, card) => vesselBoxes({ ...kind, fields: kind.fields.map((/** @type {any} */ field) => ({ ...field, label: SHORT[field.name] ?? field.label })) }, card);

/** @param {any} kind @param {any} card */
const vesselBoxes = (kind, card) => html`<form class="form entry round" data-kind="stock_count" novalidate aria-label=${t("floor-roundview-count")}>
    ${card.sort === "tank" ? cautionLine("confined") : nothing}
    <input type="radio" name="found" value="here" checked hidden><input type="hidden" name="signed" value="as signed below">
    ${figureBox(kind, "volume", card)}<div class="pair">${figureBox(kind, "glass", card)}${figureBox(kind, "temp", card)}</div>
    <details class="more"><summary><strong>${t("floor-roundview-by_weight_or_corrected")}</strong> <span class="quiet">${t("floor-roundview-and_a_remark")}</span></summary><div class="form">${figureBox(kind, "net_weight", card)}${figureBox(kind, "strength", card)}${remarkBox()}</div></details></form>`;

/** What is counted, so that nobody counts another: "plum · 0.50 L · 45.0 % vol". @param {import("./stock.js").Goods} one */
export const bottleWords = (one) => [one.what, one.size_l ? shownInUnits(one.size_l, "L", 2) : "", one.label_strength_pct ? `${strengthShown(one.label_strength_pct).figure} ${strengthShown(one.label_strength_pct).sign}` : ""].filter(Boolean).join(" · ");

/** @param {any} kind @param {import("./stock.js").Goods} one @param {boolean} isShared */
export const bottlesForm = (kind, one, isShared) => html`<form class="form entry round" data-kind="bottled_count" novalidate aria-label=${t("floor-roundview-count")}>
    <input type="hidden" name="batch" value=${nameOf(one)}><input type="hidden" name="signed" value="as signed below">
    ${isShared ? html`<input type="hidden" name="case_from" value=${one.case_from}>` : nothing}
    ${figureBox(kind, "cases", null)}${figureBox(kind, "bottles", null)}
    <details class="more"><summary><strong>${t("floor-remark_2")}</strong></summary><div class="form">${remarkBox()}</div></details></form>`;

/** @param {{onKeep: () => void, onEmpty: () => void, emptyWords: string, onSkip: () => void, onScan: () => void}} acts */
export const doingForm = ({ onKeep, onEmpty, emptyWords, onSkip, onScan }) => html`<div class="stack"><div class="round__beside">
    <button type="button" class="button" @click=${onEmpty}>${emptyWords}</button><button type="button" class="button" @click=${onSkip}>${t("floor-skip")}</button><button type="button" class="button" aria-label=${t("floor-scan_the_next")} @click=${onScan}>${icon("scan")}</button></div>
  <button type="button" class="button button--main button--action" @click=${onKeep}>${t("floor-roundview-counted_next")}</button></div>`;

/** @param {string} place */
export const unknownForm = (place) => html`<form class="form" novalidate aria-label=${t("floor-not_in_the_book")} @submit=${(/** @type {Event} */ event) => event.preventDefault()}>
  <div class="field field--words"><label class="field__label" for="count-label">${t("floor-roundview-what_it_says_on")}</label><input class="field__value" id="count-label" name="label" type="text" maxlength="200" autocomplete="off"></div>
  <div class="field field--words"><label class="field__label" for="count-where">${t("floor-roundview-where_it_stands")}</label><input class="field__value" id="count-where" name="place" type="text" maxlength="40" autocomplete="off" autocapitalize="characters" value=${place}></div></form>`;

/** @param {{onKeep: () => void, onLeave: () => void}} acts */
export const doingUnknown = ({ onKeep, onLeave }) => html`<div class="stack"><button type="button" class="button" @click=${onLeave}>${t("floor-leave_it")}</button><button type="button" class="button button--main button--action" @click=${onKeep}>${t("floor-roundview-counted_next")}</button></div>`;

/**
 * @param {{off: import("./differences.js").Difference[], same: import("./differences.js").Difference[], open: Item[], signed: string, isUs: boolean,
 *   onAgain: (key: string) => void, onGo: (key: string) => void, onGoOn: () => void, onSign: (signed: string) => void, onDrop: () => void}} end
 */
export function ended({ off, same, open, signed, isUs, onAgain, onGo, onGoOn, onSign, onDrop }) {
  const count = off.length + same.length;
  const typed = () => /** @type {HTMLInputElement} */ (document.querySelector("[name=signed]")).value.trim();
  const body = html`<div class="stack">
    ${off.length ? html`<section class="stack" aria-label=${t("floor-roundview-differences")}><h2>${t("floor-roundview-differences_from_the_book")}</h2><ul class="list">${off.map((one) => line(one, onAgain))}</ul></section>` : nothing}
    ${same.length ? html`<details class="more" ?open=${!off.length}><summary><strong>${t("floor-roundview-as_the_book_has")}</strong> <span class="quiet">${same.length}</span></summary><ul class="list">${same.map((one) => line(one, onAgain))}</ul></details>` : nothing}
    ${open.length ? html`<details class="more"><summary><strong>${t("floor-roundview-not_counted")}</strong> <span class="quiet">${open.length}</span></summary><div class="buttons">${open.map((item) => html`<button type="button" class="button" @click=${() => onGo(item.key)}>${item.name}</button>`)}</div></details>` : nothing}
    ${count ? html`<section class="stack" aria-label=${t("floor-roundview-sign")}><div class="field field--words"><label class="field__label" for="count-signed">${t("floor-roundview-counted_by_name_and")}</label><input class="field__value" id="count-signed" name="signed" type="text" maxlength="200" autocomplete="off" value=${signed}></div>
      <p class="quiet">${t("floor-roundview-each_count_goes_into", { lead: isUs ? t("floor-roundview-signed_under_penalties_of") : "" })}</p></section>`
      : html`<p class="quiet">${t("floor-roundview-nothing_is_counted_yet")}</p>`}
    ${count ? nothing : html`<p><button type="button" class="button" @click=${onDrop}>${t("floor-roundview-another_place")}</button></p>`}</div>`;
  const doing = html`<div class="stack">${open.length ? html`<button type="button" class="button ${count ? "" : "button--main button--action"}" @click=${onGoOn}>${t("floor-roundview-go_on_counting")}</button>` : nothing}
    ${count ? html`<button type="button" class="button button--main button--action" @click=${() => onSign(typed())}>${t("floor-roundview-sign_and_log", { count })}</button>` : nothing}</div>`;
  return { body, doing };
}

/** @param {import("./differences.js").Difference} one @param {(key: string) => void} onAgain */
function line(one, onAgain) {
  const { counted } = one;
  const off = offWords(one);
  return html`<li class="counted-line" data-sort=${one.sort}><p><strong>${counted.name}</strong> ${foundWords(one)}</p>${off ? html`<strong class="round__figure">${off}</strong>` : html`<span></span>`}
    <p class="quiet">${[bookWords(one), counted.what, formatTime(counted.at)].filter(Boolean).join(" · ")}</p><button type="button" class="button" @click=${() => onAgain(counted.key)}>${t("floor-roundview-count_again")}</button></li>`;
}

/** @param {import("./differences.js").Difference} one */
function foundWords({ counted, sort }) {
  const { found, draft } = counted;
  if (sort === "missing") return html`${badge("stop", t("floor-roundview-missing"))} ${t("floor-roundview-nothing_where_it_should")}`;
  if (sort === "unknown") return html`${badge("ask", t("floor-roundview-not_in_the_book"))} ${found.place}`;
  if (found.bottles !== null) return html`${t("floor-bottles", { bottles: found.bottles })}`;
  if (found.lpa_l !== null) return found.lpa_l ? html`${t("floor-roundview-at", { litres: shownInUnits(found.volume_l ?? 0, "L", 1), strength_pct: shownInUnits(found.strength_pct ?? 0, "pct_vol", 1) })}` : html`${t("floor-empty")}`;
  return sort === "elsewhere" ? html`${badge("ask", t("floor-roundview-elsewhere"))} ${t("floor-roundview-at_2", { place: draft.values.place.raw })}` : html`${t("floor-roundview-here")}`;
}

/** @param {import("./differences.js").Difference} one */
function bookWords({ counted, sort }) {
  const { expected, found } = counted;
  if (!expected || sort === "unknown") return "";
  if (expected.bottles !== null) return t("floor-roundview-book", { bottles: expected.bottles });
  if (sort === "elsewhere" || found.state === "nothing") return t("floor-roundview-book_2", { place: expected.place || t("floor-roundview-no_place"), lpa_l: expected.lpa_l ? `, ${shownInUnits(expected.lpa_l, "LPA", 1)}` : "" });
  if (found.lpa_l === null) return expected.place;
  return expected.lpa_l ? t("floor-roundview-book_3", { litres: expected.volume_l === null ? "" : t("floor-roundview-at_3", { litres: shownInUnits(expected.volume_l, "L", 1) }), strength_pct: shownInUnits(expected.strength_pct ?? 0, "pct_vol", 1) }) : t("floor-roundview-book_empty");
}

/** "−0.31 LPA", or bottles. @param {import("./differences.js").Difference} one */
function offWords({ counted, sort, lpa_l, bottles }) {
  if (sort !== "less" && sort !== "more") return "";
  if (counted.found.bottles !== null) return t("floor-roundview-bottles_off", { off: signed(bottles, 0), count: Math.abs(bottles) });
  const { value, unit } = inUnits(lpa_l, "LPA");
  return `${signed(value, 2)} ${symbol(unit)}`;
}

/** @param {number} value @param {number} decimals */
const signed = (value, decimals) => `${value > 0 ? "+" : "−"}${formatNumber(Math.abs(value), decimals)}`;
