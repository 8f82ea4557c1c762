// @ts-check
/** Boxes that name another vessel: picked from cards of the right sorts, scanned, or typed. */
import { html, nothing, render } from "../vendor/lit-html/lit-html.js";
import { BadMark, parseMark, suggest } from "../trade/marks.js";
import { readCards } from "../shell/phone.js";
import { scanFor } from "../shell/scanfor.js";
import { holdsOf } from "../shell/words.js";
import { boxOf, controlOf } from "./values.js";
import { t } from "../words/t.js";

const SHOWN_MOST = 6;

/** @param {HTMLFormElement} form @param {any} kind */
export function dressMarks(form, kind) {
  for (const field of kind.fields.filter((/** @type {any} */ one) => one.sort === "mark")) void dress(form, field);
}

/** @param {HTMLFormElement} form @param {any} field */
async function dress(form, field) {
  const [box, input] = [boxOf(form, field.name), controlOf(form, field.name)];
  if (!box || !input) return;
  const last = input.dataset.last ?? "";
  const cards = likeliest((await readCards()).filter((card) => !field.vessels.length || field.vessels.includes(card.sort)), field.vessels, last);
  input.placeholder = cards.length ? t("floor-marks-pick_scan_or_type") : t("floor-marks-scan_or_type");
  const offers = document.createElement("div");
  offers.className = "field__full picks";
  box.append(offers);
  const take = (/** @type {string} */ mark) => {
    input.value = mark;
    input.dispatchEvent(new Event("input", { bubbles: true }));
  };
  const show = () => render(offersFor(input.value, cards, last, take), offers);
  input.addEventListener("input", show);
  input.addEventListener("change", () => take(settled(input.value)));
  box.querySelector("[data-scan]")?.addEventListener("click", async () => {
    const mark = await scanFor(field.label);
    if (mark) take(mark);
  });
  show();
}

/** As last time first, then in the order of sorts that the field names: heads run to a receiver rather than to a can. @param {any[]} cards @param {string[]} sorts @param {string} last */
const likeliest = (cards, sorts, last) => cards.sort((a, b) => Number(b.mark === last) - Number(a.mark === last) || sorts.indexOf(a.sort) - sorts.indexOf(b.sort));

/** Return a typed mark in stored form; a text that is no mark is returned as typed, for the book to judge. @param {string} text */
function settled(text) {
  try {
    return parseMark(text);
  } catch {
    return text.trim();
  }
}

/** @param {string} text @param {any[]} cards @param {string} last @param {(mark: string) => void} take */
function offersFor(text, cards, last, take) {
  const chosen = cards.find((card) => card.mark === text);
  if (chosen) return html`<p class="quiet">${chosen.name} · ${holdsOf(chosen).filter(Boolean).join(" · ")}</p>`;
  const wrong = text ? whyNot(text) : "";
  const likely = text ? suggest(text, cards.map((card) => card.mark), 3) : [];
  const shown = text ? cards.filter((card) => likely.includes(card.mark) || (card.name ?? "").toUpperCase().startsWith(text.toUpperCase())) : cards;
  return html`${wrong && !shown.length ? html`<p class="field__help">${wrong}</p>` : nothing}
    ${shown.slice(0, SHOWN_MOST).map((card) => html`<button type="button" class="button pick" @click=${() => take(card.mark)}>${card.name || card.mark}
      ${subOf(card, last) ? html`<span class="button__sub">${subOf(card, last)}</span>` : nothing}</button>`)}`;
}

/** @param {any} card @param {string} last */
const subOf = (card, last) => [card.mark === last && t("floor-as_last_time"), card.holds?.what].filter(Boolean).join(" · ");

/** @param {string} text */
function whyNot(text) {
  try {
    parseMark(text);
    return "";
  } catch (error) {
    return error instanceof BadMark ? error.message : "";
  }
}
