// @ts-check
/** The house's own words and scores at a tasting: words to tap into the box, a score to pick for each of its own. */
import { html, nothing, render } from "../../vendor/lit-html/lit-html.js";
import { boxOf, controlOf } from "../../form/values.js";

const SCORES = Array.from({ length: 11 }, (_, n) => n);

/** @param {HTMLFormElement} form of a tasting note @param {{words?: string[], scores?: string[]}|undefined} tasting of the site */
export function dressTasting(form, tasting) {
  const words = tasting?.words ?? [];
  const scores = tasting?.scores ?? [];
  if (words.length) beside(form, "words", html`<details class="more"><summary>Words of the house</summary><div class="buttons" role="group" aria-label="Words of the house">${words.map((word) => html`<button type="button" class="button" @click=${() => add(form, word)}>${word}</button>`)}</div></details>`);
  if (scores.length) beside(form, "house_scores", html`<div class="pair">${scores.map((name) => html`<label class="field field--words"><span class="field__label">${name}</span>
    <select class="field__value" data-house-score=${name} @change=${() => gather(form)}><option value="">–</option>${SCORES.map((n) => html`<option value=${n} ?selected=${scoreIn(form, name) === String(n)}>${n}</option>`)}</select></label>`)}</div>`);
  const box = boxOf(form, "house_scores");
  if (box) box.hidden = true; // it is filled by the scores, or there are none
}

/** @param {HTMLFormElement} form @param {string} field @param {any} what */
function beside(form, field, what) {
  const box = boxOf(form, field);
  if (!box) return;
  const place = document.createElement("div");
  box.after(place);
  render(what ?? nothing, place);
}

/** @param {HTMLFormElement} form @param {string} word */
function add(form, word) {
  const box = controlOf(form, "words");
  if (!box) return;
  const said = box.value.trim();
  if (!said.split(/,\s*/).includes(word)) box.value = said ? `${said}, ${word}` : word;
  box.dispatchEvent(new Event("input", { bubbles: true }));
}

/** @param {HTMLFormElement} form @param {string} name */
const scoreIn = (form, name) => (controlOf(form, "house_scores")?.value ?? "").split(/;\s*/).find((part) => part.startsWith(`${name} `))?.slice(name.length + 1) ?? "";

/** "fruit 7; depth 5" @param {HTMLFormElement} form */
function gather(form) {
  const box = controlOf(form, "house_scores");
  if (!box) return;
  const picked = /** @type {HTMLSelectElement[]} */ ([...form.querySelectorAll("[data-house-score]")]).filter((select) => select.value);
  box.value = picked.map((select) => `${select.dataset.houseScore} ${select.value}`).join("; ");
  box.dispatchEvent(new Event("input", { bubbles: true }));
}
