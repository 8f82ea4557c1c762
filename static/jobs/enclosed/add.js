// @ts-check
/** Under a form: pictures that go with the entry. Each is on this phone before the entry names it. */
import { canEnclose, drop, keep } from "../../slate/enclosures.js";
import { html, nothing, render } from "../../vendor/lit-html/lit-html.js";
import { icon } from "../../icons/icons.js";
import { wear } from "../../ui/sheet.js";
import { shrink } from "./shrink.js";
import { fillThumbs, thumb } from "./shown.js";
import { t } from "../../words/later.js";

export const PICTURES_MOST = 12;
const TOO_MANY = t("floor-enclosed-too_many", { most: PICTURES_MOST });

/** What a file of a form is, by its name: a voice note is no picture. @type {Map<string, string>} */
const types = new Map();

/** @param {HTMLFormElement} form @returns {string[]} */
const namesOf = (form) => (form.dataset.enclosed ?? "").split(" ").filter(Boolean);

/** Let a file that is kept already go with the form's entry. @param {HTMLFormElement} form @param {string} sha256 @param {string} type */
export function addToForm(form, sha256, type) {
  types.set(sha256, type);
  form.dataset.enclosed = [...new Set([...namesOf(form), sha256])].join(" ");
  form.dispatchEvent(new Event("enclosed"));
}

/**
 * Offer pictures beside a form; what was taken stands in `data-enclosed` of it, for the entry.
 * @param {HTMLFormElement} form @param {HTMLElement} before where the row stands
 */
export async function offerPictures(form, before) {
  if (!canEnclose()) return;
  await wear("jobs/enclosed/enclosed.css");
  const place = document.createElement("div");
  place.className = "enclose";
  before.before(place);
  const state = { isBusy: false, words: "" };
  const names = () => namesOf(form);
  const show = () => {
    render(row(names(), state, take, remove), place);
    fillThumbs(place);
  };
  const take = async (/** @type {Event} */ event) => {
    const input = /** @type {HTMLInputElement} */ (event.target);
    const files = [...(input.files ?? [])];
    input.value = "";
    Object.assign(state, { isBusy: true, words: "" });
    show();
    for (const file of files) {
      state.words = await addOne(file, form);
      if (state.words) break;
    }
    state.isBusy = false;
    show();
  };
  const remove = async (/** @type {string} */ name) => {
    form.dataset.enclosed = names().filter((one) => one !== name).join(" ");
    show();
    await drop(name);
  };
  form.addEventListener("enclosed", show);
  show();
}

/** @param {File} file @param {HTMLFormElement} form @returns {Promise<string>} what went wrong, or "" */
async function addOne(file, form) {
  if (namesOf(form).length >= PICTURES_MOST) return TOO_MANY;
  try {
    const { sha256 } = await keep(await shrink(file));
    addToForm(form, sha256, "image/jpeg");
    return "";
  } catch (error) {
    return /** @type {any} */ (error)?.message ?? String(error);
  }
}

/** @param {string} name @param {number} at */
const wordsOf = (name, at) => (types.get(name)?.startsWith("audio/") ? t("floor-note-voice_note") : t("floor-enclosed-picture_number", { number: at + 1 }));

/** @param {string[]} names @param {{isBusy: boolean, words: string}} state @param {(event: Event) => void} take @param {(name: string) => void} remove */
const row = (names, state, take, remove) => html`
  ${names.length ? html`<ul class="thumbs" aria-label=${t("floor-enclosed-with_this_entry")}>${names.map((name, at) => html`<li>${thumb(name, wordsOf(name, at), types.get(name))}
    <button type="button" class="thumbs__off" aria-label=${t("floor-enclosed-take_off", { name: wordsOf(name, at) })} @click=${() => remove(name)}>${icon("close")}</button></li>`)}</ul>` : nothing}
  <label class="button enclose__add" data-busy=${state.isBusy ? "" : nothing}>${icon("plus")} ${state.isBusy ? t("floor-enclosed-keeping_it") : t("floor-enclosed-picture")}
    <input class="hidden-text" type="file" accept="image/*" capture="environment" ?disabled=${state.isBusy} @change=${take}></label>
  <p class="enclose__says" role="status">${state.words}</p>`;
