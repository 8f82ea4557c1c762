// @ts-check
/** Places to tap under the box for one: those that the cards on this phone know, the free ones of the same room first. */
import { inOrder, roomOf } from "../../trade/placenames.js";
import { readCards } from "../../shell/phone.js";
import { html, nothing, render } from "../../vendor/lit-html/lit-html.js";
import { t } from "../../words/later.js";

const SHOWN_MOST = 6;

/** Let every box for a place in a form offer what there is. @param {HTMLElement} form @param {any} card of the vessel the form is about, or null */
export async function dressPlaces(form, card) {
  const known = placesOf(await readCards());
  for (const input of /** @type {NodeListOf<HTMLInputElement>} */ (form.querySelectorAll("input[name$=place]"))) dress(input, known, card);
}

/** Every place on these cards, with what stands there: where a cask was moved from is free until another takes it. @param {any[]} cards @returns {Map<string, string[]>} */
export function placesOf(cards) {
  /** @type {Map<string, string[]>} */
  const known = new Map();
  for (const card of cards) {
    const left = Object.values(card.last ?? {}).flatMap((/** @type {any} */ one) => [one.from_place?.raw, one.to_place?.raw]);
    for (const place of left.filter(Boolean)) if (!known.has(place)) known.set(place, []);
    if (card.place) known.set(card.place, [...(known.get(card.place) ?? []), card.name || card.mark]);
  }
  return new Map([...known].sort(([a], [b]) => inOrder(a, b)));
}

/** @param {HTMLInputElement} input @param {Map<string, string[]>} known @param {any} card */
function dress(input, known, card) {
  const offers = document.createElement("div");
  offers.className = "field__full picks";
  input.closest(".field")?.append(offers);
  const take = (/** @type {string} */ place) => {
    input.value = place;
    input.dispatchEvent(new Event("input", { bubbles: true }));
    input.focus({ preventScroll: true });
  };
  const show = () => render(likely(input, known, card).map((place) => html`<button type="button" class="button pick" @click=${() => take(place)}>${place}
    ${whereOf(place, known, card) ? html`<span class="button__sub">${whereOf(place, known, card)}</span>` : nothing}</button>`), offers);
  input.addEventListener("input", show);
  show();
}

/** @param {string} place @param {Map<string, string[]>} known @param {any} card */
function whereOf(place, known, card) {
  if (card?.place === place) return t("floor-places-stands_here");
  const [first, ...others] = known.get(place) ?? [];
  return first ? [first, others.length && t("floor-places-and_more", { others: others.length })].filter(Boolean).join(" ") : t("floor-places-free");
}

/** @param {HTMLInputElement} input @param {Map<string, string[]>} known @param {any} card @returns {string[]} */
function likely(input, known, card) {
  const typed = plain(input.value);
  const here = card?.place ?? "";
  if (!typed && input.name === "from_place") return here ? [here] : [];
  const all = [...known.keys()].filter((place) => place !== input.value && (input.name === "from_place" || place !== here));
  const found = typed ? all.filter((place) => plain(place).includes(typed)) : all;
  const isFar = (/** @type {string} */ place) => Number(roomOf(place) !== roomOf(here));
  const isTaken = (/** @type {string} */ place) => Number(Boolean(known.get(place)?.length));
  return found.sort((a, b) => Number(!plain(a).startsWith(typed)) - Number(!plain(b).startsWith(typed)) || isTaken(a) - isTaken(b) || isFar(a) - isFar(b)).slice(0, SHOWN_MOST);
}

/** @param {string} text */
const plain = (text) => text.toLowerCase().replace(/[^\p{L}\d]/gu, "");
