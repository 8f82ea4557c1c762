// @ts-check
/** Words to tap into a box of text, and out of it again; whoever types goes on typing. */
import { icon } from "../icons/icons.js";
import { html, render } from "../vendor/lit-html/lit-html.js";
import { boxOf, controlOf } from "../form/values.js";

/**
 * @param {HTMLFormElement} form @param {string} field a box of text @param {string[]} words @param {string} title
 * @param {string} [between] what parts them in the text @param {HTMLElement} [into] where they stand; else before the box
 * @returns {() => void} shows which of them stand in the box
 */
export function pickWords(form, field, words, title, between = ", ", into) {
  const control = controlOf(form, field);
  const box = boxOf(form, field);
  if (!control || !box) return () => {};
  const place = document.createElement("div");
  place.className = "words";
  if (into) into.append(place);
  else box.before(place);
  const parts = () => control.value.split(between.trim() || between).map((part) => part.trim()).filter(Boolean);
  const toggle = (/** @type {string} */ word) => {
    const said = parts();
    control.value = (said.includes(word) ? said.filter((part) => part !== word) : [...said, word]).join(between);
    control.dispatchEvent(new Event("input", { bubbles: true }));
  };
  const show = () => {
    const said = new Set(parts());
    render(html`<fieldset class="chips"><legend><span>${title}</span></legend><div class="chips__row">
      ${words.map((word) => html`<label class="chip"><input type="checkbox" .checked=${said.has(word)} @change=${() => toggle(word)}><span class="chip__face">${icon("entered")}${word}</span></label>`)}</div></fieldset>`, place);
  };
  return show;
}
