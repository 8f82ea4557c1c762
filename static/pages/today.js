// @ts-check
/** What wants doing on this shift, from the cards on this phone. */
import { freshAt, instruments, notes, onCards, site } from "../slate/cards.js";
import { handinStatus, onHandin } from "../slate/handin.js";
import { onChange } from "../slate/queue.js";
import { onTimers } from "../slate/timers.js";
import { badge } from "../ui/badge.js";
import { formatAgo, formatDuration } from "../ui/format.js";
import { html, nothing, render } from "../vendor/lit-html/lit-html.js";
import { icon } from "../icons/icons.js";
import { isWide, setHead } from "../shell/frame.js";
import { strengthShown } from "../shell/inunits.js";
import { runPath, vesselPath } from "../shell/here.js";
import { readCards } from "../shell/phone.js";
import { capital, holdsOf } from "../shell/words.js";
import { loadQuestions } from "../words/catalogue.js";
import { say } from "../words/say.js";
import { t } from "../words/t.js";

const NOTES_SHOWN = 3;
const QUERIES_SHOWN = 4;
let wanted = "";
/** @type {any} the list of what is due, from the part of the app that comes after the first install */
let due = null;
/** @type {() => Promise<any>} glasses that wait to be tasted, from the same part */
let glasses = async () => nothing;
/** @type {HTMLElement} where those who share this phone are drawn */
const people = Object.assign(document.createElement("div"), { hidden: true });
/** @type {any} reminders, from the same part */
let timers = null;
/** "CELL" of "CELL-A1": all of one room stand together. It comes with that part, too. @param {string} place */
let roomOf = (place) => place;

export async function start() {
  document.querySelector('[data-part="body"]')?.replaceChildren(); // what the server drew for a browser without script
  onChange(() => void show());
  onCards(() => void show());
  onHandin(() => void show());
  void loadQuestions();
  setInterval(() => void show(), 60_000);
  await show();
  const job = await import("../jobs/duelist.js").catch(() => null);
  due = job?.dueList;
  glasses = job?.glassesDue ?? glasses;
  roomOf = job?.roomOf ?? roomOf;
  timers = await import("../jobs/timers/show.js").catch(() => null);
  onTimers(() => void show());
  await show();
  if (!isWide()) await import("../jobs/shared/hands.js").then((job) => job.showHands(people, () => {}), () => {});
}

async function show() {
  const body = /** @type {HTMLElement} */ (document.querySelector('[data-part="body"]'));
  const [cards, said, house, fresh, meters] = await Promise.all([readCards(), notes(), site(), freshAt(), instruments()]);
  setHead({ first: house.name });
  if (!cards.length) return render(noCards(fresh), body);
  const reminders = timers ? timers.timerList(await timers.timersNow()) : nothing;
  render([people, runs(cards), reminders, queries(cards), await glasses(), due ? due(cards, house, meters) : nothing, handover(said), places(cards, house)], body);
}

/** @param {string|null} fresh */
const noCards = (fresh) => html`<section class="empty">${icon("slate", "large")}
  ${fresh ? html`<p>${t("floor-today-the_book_has_no")}</p>`
    : html`<p>${handinStatus().standing === "signed_out" ? t("floor-today-the_book_does_not") : t("floor-today-no_cards_on_this")}</p><p>${t("floor-today-you_can_scan_and")}</p>
      <a class="button button--main" href="/start">${t("floor-let_this_phone_in")}</a>`}</section>`;

/** @param {any[]} cards */
function runs(cards) {
  const open = cards.filter((card) => card.run);
  return open.map((card) => {
    const last = card.run.readings.filter((/** @type {any} */ reading) => reading.true_strength != null).at(-1);
    return html`<a class="card running" href=${runPath(card.mark)}>
      <span class="running__about"><span class="card__mark">${card.name || card.mark}</span> ${capital(t("floor-today-run", { what: card.run.what || "", name: card.run.name }).trim())}
        <span class="quiet">${formatDuration((Date.now() - Date.parse(card.run.started_at)) / 1000)}${last ? t("floor-today-read", { last: formatAgo(last.at) }) : ""}</span></span>
      ${last ? html`<span class="running__figure">${strengthShown(last.true_strength).figure}<span class="quiet">${t("floor-today-true", { sign: strengthShown(last.true_strength).sign })}</span></span>` : nothing}</a>`;
  });
}

/** @param {any} card @param {string} path @param {any} what @param {any} end */
const row = (card, path, what, end) => html`<li><a href=${path}><span class="list__mark">${card.name || card.mark}</span><span class="list__what">${what}</span><span class="list__end">${end}</span></a></li>`;

/** @param {any[]} cards */
function queries(cards) {
  const asked = cards.flatMap((card) => card.queries.filter((/** @type {any} */ query) => query.weight !== "note").map((/** @type {any} */ query) => ({ card, query })))
    .sort((a, b) => Number(b.query.weight === "stop") - Number(a.query.weight === "stop")); // what moves no stock comes first, the rest by vessel
  if (!asked.length) return nothing;
  const line = (/** @type {any} */ { card, query }) => html`<li><a class="asked" href="${vesselPath(card.mark)}#queries"><span class="list__mark">${card.name || card.mark}</span>
    ${badge(query.weight)}<span class="asked__words">${say(query)}</span></a></li>`;
  const rest = asked.slice(QUERIES_SHOWN);
  return html`<section><h2>${t("floor-today-the_book_asks")}</h2><ul class="list list--links">${asked.slice(0, QUERIES_SHOWN).map(line)}</ul>
    ${rest.length ? html`<details class="more"><summary>${t("floor-more_2", { rest: rest.length })}</summary><ul class="list list--links">${rest.map(line)}</ul></details>` : nothing}</section>`;
}

/** @param {any[]} said */
function handover(said) {
  if (!said.length) return nothing;
  return html`<section class="stack"><h2>${t("floor-today-last_remarks")}</h2>${said.slice(0, NOTES_SHOWN).map((note) => html`<p class="band band--quiet"><span>${note.text ?? note.summary}
    <span class="quiet">${[note.name ?? note.mark, note.person, note.at && formatAgo(note.at)].filter(Boolean).join(" · ")}</span></span></p>`)}</section>`;
}

/** @param {any[]} cards @param {any} house */
function places(cards, house) {
  const words = wanted.toLowerCase().split(/\s+/).filter(Boolean);
  const found = cards.filter((card) => words.every((word) => JSON.stringify([card.mark, card.name, card.title, card.place, card.holds?.what, card.holds?.name]).toLowerCase().includes(word)));
  const named = new Map(house.areas.map((/** @type {any} */ area) => [area.id, area.name]));
  const byPlace = group(found, (card) => roomOf(card.place ?? ""));
  return html`<section class="stack"><h2>${t("floor-today-all_vessels")}</h2>
    <div class="field field--words"><label class="field__label" for="search">${t("floor-today-find_by_mark_name")}</label>
      <input class="field__value" id="search" type="search" autocomplete="off" .value=${wanted} @input=${seek}></div>
    ${found.length ? nothing : html`<p class="quiet">${t("floor-today-no_vessel_here_is")}</p>`}
    ${[...byPlace].map(([place, some]) => html`<details class="more" ?open=${words.length > 0 || byPlace.size < 3}><summary><strong>${named.get(place) || place || t("floor-today-elsewhere")}</strong> <span class="quiet">${some.length}</span></summary>
      <ul class="list list--links">${some.map((/** @type {any} */ card) => row(card, vesselPath(card.mark), card.holds ? holdsOf(card)[0] : card.title, card.holds ? holdsOf(card)[1] : t("floor-empty")))}</ul></details>`)}</section>`;
}

/** @param {any[]} cards @param {(card: any) => string} keyOf */
function group(cards, keyOf) {
  const made = new Map();
  for (const card of cards) made.set(keyOf(card), [...(made.get(keyOf(card)) ?? []), card]);
  return made;
}

/** @param {Event} event */
function seek(event) {
  wanted = /** @type {HTMLInputElement} */ (event.target).value;
  void show();
}
