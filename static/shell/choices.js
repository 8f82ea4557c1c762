// @ts-check
import { html } from "../vendor/lit-html/lit-html.js";
import { icon } from "../icons/icons.js";

/**
 * A row of chips that answers at the tap.
 * @param {unknown} legend words @param {string} name @param {[value: string, words: string][]} choices @param {string} chosen
 * @param {(value: any) => void} onChoose
 */
export const choiceRow = (legend, name, choices, chosen, onChoose) => html`<fieldset class="chips" data-field=${name}
  @change=${(/** @type {Event} */ event) => onChoose(/** @type {HTMLInputElement} */ (event.target).value)}><legend><span>${legend}</span></legend>
  <div class="chips__row">${choices.map(([value, words]) => chip(name, value, words, value === chosen))}</div></fieldset>`;

/** @param {string} name @param {string} value @param {any} words @param {boolean} isChosen */
export function chip(name, value, words, isChosen) {
  return html`<label class="chip"><input type="radio" name=${name} value=${value} ?checked=${isChosen}><span class="chip__face">${icon("entered")}${words}</span></label>`;
}
