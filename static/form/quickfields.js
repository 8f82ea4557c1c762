// @ts-check
/** Boxes drawn on the phone for the run sheet's panels; the same classes and names as the server's `_fields.html`. */
import { html, nothing } from "../vendor/lit-html/lit-html.js";
import { chip } from "../shell/choices.js";
import { lastOf } from "./context.js";
import { lastWords } from "./ghosts.js";
import { keptInstrument, shortSymbol, unitOf } from "./values.js";
import { t } from "../words/t.js";

/** @param {any} kind @param {string} name @param {any} card @param {string} [otherwise] what is said where there is no last value */
export function figureBox(kind, name, card, otherwise = "") {
  const field = kind.fields.find((/** @type {any} */ one) => one.name === name);
  const last = lastOf(card, kind, field);
  const unit = unitOf(field);
  const id = `${kind.name}-${name}`;
  return html`<div class="field field--figure" data-field=${name}>
    <label class="field__label" for=${id}>${field.label}</label>
    ${last || otherwise ? html`<span class="field__last">${last ? lastWords(last) : otherwise}</span>` : nothing}
    <input class="field__value" id=${id} name=${name} type="text" inputmode="decimal" autocomplete="off" maxlength="24" data-keypad
      data-unit=${shortSymbol(unit)} placeholder=" ">
    ${field.units.length > 1 ? html`<select class="field__unit" name="${name}_unit" data-unit-for=${id} aria-label=${t("floor-quickfields-unit_of", { label: field.label })}>
        ${field.units.map((/** @type {string} */ one) => html`<option value=${one} ?selected=${one === unit}>${shortSymbol(one)}</option>`)}</select>`
      : html`<span class="field__unit">${shortSymbol(unit)}</span>`}
    ${field.instrument && keptInstrument(field.instrument) ? html`<input type="hidden" name="${name}_instrument" value=${keptInstrument(field.instrument)}>` : nothing}
  </div>`;
}

/** @param {any} kind @param {string} name @param {{value?: string, only?: string[]}} [options] */
export function choiceBox(kind, name, { value = "", only } = {}) {
  const field = kind.fields.find((/** @type {any} */ one) => one.name === name);
  const choices = field.choices.filter((/** @type {string[]} */ choice) => !only || only.includes(choice[0]));
  return html`<fieldset class="chips" data-field=${name}><legend><span>${field.label}</span></legend><div class="chips__row">
    ${choices.map((/** @type {string[]} */ [code, words]) => chip(name, code, words, code === value))}</div></fieldset>`;
}

/** @param {any} kind @param {string} name */
export function wordsBox(kind, name) {
  const field = kind.fields.find((/** @type {any} */ one) => one.name === name);
  const id = `${kind.name}-${name}`;
  return html`<div class="field field--words" data-field=${name}><label class="field__label" for=${id}>${field.label}</label>
    <textarea class="field__value" id=${id} name=${name} rows="2" maxlength="2000"></textarea></div>`;
}

export const remarkBox = () => html`<div class="field field--words" data-field="remark"><label class="field__label" for="panel-remark">${t("floor-remark_2")}</label>
  <textarea class="field__value" id="panel-remark" name="remark" rows="2" maxlength="2000"></textarea></div>`;

/** The minute, as taken at the tap; a person may set it. @param {string} value "2025-10-13T09:21" */
export function minuteBox(value) {
  return html`<div class="field field--when" data-field="read_at"><label class="field__label" for="panel-read-at">${t("floor-quickfields-minute")}</label>
    <input class="field__value" id="panel-read-at" name="read_at" type="datetime-local" .value=${value}></div>`;
}
