// @ts-check
/** A note in a large hand: what it is pinned to, with its picture, short words ready to tap, what hangs there already. */
import { boxOf, controlOf } from "../../form/values.js";
import { icon } from "../../icons/icons.js";
import { logPath } from "../../shell/here.js";
import { readCards } from "../../shell/phone.js";
import { holdsOf } from "../../shell/words.js";
import { notes } from "../../slate/cards.js";
import { current } from "../../slate/who.js";
import { formatAgo } from "../../ui/format.js";
import { wear } from "../../ui/sheet.js";
import { html, nothing, render } from "../../vendor/lit-html/lit-html.js";
import { hasLevel } from "../draw/level.js";
import { levelOf } from "../vessel/stand.js";
import { pickWords } from "../wordchips.js";

const HANGING_SHOWN = 3;
const PINS_SHOWN = 8;
/** What is said at the end of a shift, of each sort of vessel and of all. Common practice, no source. */
const WORDS = /** @type {Record<string, string[]>} */ ({
  fermenter: ["Cap pushed down.", "Cooling is on.", "Smells odd.", "Read it first."],
  still: ["Charged, not heated.", "Rinse it first.", "Still warm.", "Receivers are empty."],
  cask: ["Weeps a little.", "Bung is loose.", "Do not move it.", "Weigh it again."],
  tank: ["It rests. Do not stir.", "It is cloudy.", "Valve is shut.", "Lid is off."],
});
const ALL = ["Look at it first.", "Not finished.", "Cleaned.", "Out of order."];
const PINS = ["fermenter", "still", "tank", "receiver"]; // casks are many: they are scanned

/**
 * @param {HTMLFormElement} form of a note @param {any} card of what it is pinned to, or null @param {HTMLElement} button that logs
 * @returns {Promise<() => void>} shows the ready words anew
 */
export async function dressNote(form, card, button) {
  const [hanging, who, cards] = await Promise.all([notes(), current(), card ? [] : readCards(), wear("jobs/draw/draw.css"), wear("jobs/note/note.css")]);
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
  const shown = pickWords(form, "text", [...(WORDS[card?.sort] ?? []), ...(card ? ALL : [...ALL, "All as usual."])], "Ready words", "\n", after);
  const below = document.createElement("div");
  after.append(below);
  const show = () => {
    render(pinned(card, who), place);
    render([here.length ? hangs(here) : nothing, card || !pins.length ? nothing : pinTo(pins, text())], below);
    shown();
  };
  button.textContent = button.dataset.words = card ? `Pin it to ${card.name || card.mark}` : "Leave it for the next shift";
  show();
  return show;
}

/** @param {any} card @param {any} who */
function pinned(card, who) {
  const from = who ? `From ${who.name.replace(/\.$/, "")}.` : "";
  if (!card) return html`<section class="pinned" aria-label="Pinned to"><span class="pinned__picture">${icon("today", "large")}</span><p><strong>For the next shift</strong><span class="quiet">It stands under Today. ${from}</span></p></section>`;
  return html`<section class="pinned" aria-label="Pinned to"><span class="pinned__picture">${hasLevel(card.sort) ? levelOf(card) : icon(card.sort, "large")}</span>
    <p><strong>Pinned to ${card.name || card.mark}</strong><span>${holdsOf(card)[0]}</span><span class="quiet">Whoever opens it reads it. ${from}</span></p></section>`;
}

/** @param {any[]} here notes that are there already */
const hangs = (here) => html`<section><h2 class="pinned__title">There already</h2><ul class="list">${here.map((one) => html`<li class="list__item--short"><span class="list__mark">${formatAgo(one.at)}</span><span class="list__what">${one.text}</span><span class="list__end">${one.person}</span></li>`)}</ul></section>`;

/** The same words on another place. @param {any[]} pins cards @param {string} text as typed so far */
const pinTo = (pins, text) => html`<details class="more"><summary><strong>Pin it to a vessel</strong></summary><div class="buttons">
  ${pins.map((one) => html`<a class="button" href="${logPath(one.mark, "shift_note")}${text ? `?text=${encodeURIComponent(text)}` : ""}">${one.name || one.mark}</a>`)}
  <a class="button" href="/scan">another</a></div></details>`;
