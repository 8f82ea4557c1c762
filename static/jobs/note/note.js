// @ts-check
/** A note in a large hand: what it is pinned to, with its picture, short words ready to tap, what hangs there already. */
import { boxOf, controlOf } from "../../form/values.js";
import { icon } from "../../icons/icons.js";
import { logPath } from "../../shell/here.js";
import { readCards } from "../../shell/phone.js";
import { holdsOf } from "../../shell/words.js";
import { current } from "../../slate/who.js";
import { formatAgo } from "../../ui/format.js";
import { wear } from "../../ui/sheet.js";
import { html, nothing, render } from "../../vendor/lit-html/lit-html.js";
import { hasLevel } from "../draw/level.js";
import { levelOf } from "../vessel/stand.js";
import { allNotes } from "./hanging.js";
import { offerVoice } from "./voice.js";
import { pickWords } from "../wordchips.js";
import { t } from "../../words/later.js";

const HANGING_SHOWN = 3;
const PINS_SHOWN = 8;
/** What is said at the end of a shift, of each sort of vessel and of all. Common practice, no source. */
const WORDS = /** @type {Record<string, string[]>} */ ({
  fermenter: [t("floor-note-cap_pushed_down"), t("floor-note-cooling_is_on"), t("floor-note-smells_odd"), t("floor-note-read_it_first")],
  still: [t("floor-note-charged_not_heated"), t("floor-note-rinse_it_first"), t("floor-note-still_warm"), t("floor-note-receivers_are_empty")],
  cask: [t("floor-note-weeps_a_little"), t("floor-note-bung_is_loose"), t("floor-note-do_not_move_it"), t("floor-note-weigh_it_again")],
  tank: [t("floor-note-it_rests_do_not"), t("floor-note-it_is_cloudy"), t("floor-note-valve_is_shut"), t("floor-note-lid_is_off")],
});
const ALL = [t("floor-note-look_at_it_first"), t("floor-note-not_finished"), t("floor-note-cleaned"), t("floor-note-out_of_order")];
const PINS = ["fermenter", "still", "tank", "receiver"]; // casks are many: they are scanned

/**
 * @param {HTMLFormElement} form of a note @param {any} card of what it is pinned to, or null @param {HTMLElement} button that logs
 * @returns {Promise<() => void>} shows the ready words anew
 */
export async function dressNote(form, card, button) {
  const [hanging, who, cards] = await Promise.all([allNotes(), current(), card ? [] : readCards(), wear("jobs/draw/draw.css"), wear("jobs/note/note.css")]);
  const place = document.createElement("div");
  place.className = "stack";
  const box = boxOf(form, "text");
  box?.classList.add("note");
  box?.before(place);
  const text = () => controlOf(form, "text")?.value.trim() ?? "";
  const pins = cards.filter((one) => (one.holds || one.run) && PINS.includes(one.sort)).slice(0, PINS_SHOWN);
  const here = hanging.filter((/** @type {any} */ one) => one.mark === (card?.mark ?? "")).slice(0, HANGING_SHOWN);
  const after = document.createElement("div");
  after.className = "stack";
  box?.after(after);
  const shown = pickWords(form, "text", [...(WORDS[card?.sort] ?? []), ...(card ? ALL : [...ALL, t("floor-note-all_as_usual")])], t("floor-note-ready_words"), "\n", after);
  const below = document.createElement("div");
  const spoken = document.createElement("div");
  after.append(spoken, below);
  offerVoice(form, spoken);
  const show = () => {
    render(pinned(card, who), place);
    render([here.length ? hangs(here) : nothing, card || !pins.length ? nothing : pinTo(pins, text())], below);
    shown();
  };
  button.textContent = button.dataset.words = card ? t("floor-note-pin_it_to", { mark: card.name || card.mark }) : t("floor-note-leave_it_for_the");
  show();
  return show;
}

/** @param {any} card @param {any} who */
function pinned(card, who) {
  const from = who ? t("floor-note-from", { name: who.name.replace(/\.$/, "") }) : "";
  if (!card) return html`<section class="pinned" aria-label=${t("floor-note-pinned_to")}><span class="pinned__picture">${icon("today", "large")}</span><p><strong>${t("floor-note-for_the_next_shift")}</strong><span class="quiet">${t("floor-note-it_stands_under_today", { from })}</span></p></section>`;
  return html`<section class="pinned" aria-label=${t("floor-note-pinned_to")}><span class="pinned__picture">${hasLevel(card.sort) ? levelOf(card) : icon(card.sort, "large")}</span>
    <p><strong>${t("floor-note-pinned_to_2", { mark: card.name || card.mark })}</strong><span>${holdsOf(card)[0]}</span><span class="quiet">${t("floor-note-whoever_opens_it_reads", { from })}</span></p></section>`;
}

/** @param {any[]} here notes that are there already */
const hangs = (here) => html`<section><h2 class="pinned__title">${t("floor-note-there_already")}</h2><ul class="list">${here.map((one) => html`<li class="list__item--short"><span class="list__mark">${formatAgo(one.at)}</span><span class="list__what">${one.text}</span><span class="list__end">${one.person}</span></li>`)}</ul></section>`;

/** The same words on another place. @param {any[]} pins cards @param {string} text as typed so far */
const pinTo = (pins, text) => html`<details class="more"><summary><strong>${t("floor-note-pin_it_to_a")}</strong></summary><div class="buttons">
  ${pins.map((one) => html`<a class="button" href="${logPath(one.mark, "shift_note")}${text ? `?text=${encodeURIComponent(text)}` : ""}">${one.name || one.mark}</a>`)}
  <a class="button" href="/scan">${t("floor-another")}</a></div></details>`;
