// @ts-check
/** Reminders on the pages: a small fact to tap on a run sheet and a vessel, a list in Today, and the question when to be reminded. */
import { dropTimers, setTimer } from "../../slate/timers.js";
import { badge } from "../../ui/badge.js";
import { icon } from "../../icons/icons.js";
import { html, nothing, render } from "../../vendor/lit-html/lit-html.js";
import { askForNotices, clearNotice, noticeLeave } from "./notice.js";
import { sound, wake } from "./tone.js";
import { isDue, leftWords, nextAt, offersFor, timerPath, timersNow, titleOf, whenWords } from "./times.js";
import { formatTime } from "../../ui/format.js";
import { t } from "../../words/later.js";

/**
 * @typedef {import("./times.js").Timer} Timer
 * @typedef {{mark: string, name: string, sort: string, run: string}} About the vessel that a reminder is for; `run`: id, or ""
 */

/** @param {Timer|undefined} timer of this vessel @param {About} about @param {boolean} [isAlone] with room for all its words */
export function timerChip(timer, about, isAlone = false) {
  const due = timer && isDue(timer);
  return html`<button type="button" class="glance__one ${due ? "glance__one--ask" : ""}" data-timer @click=${() => openTimer(timer, about)}>
    <span>${due ? icon("ask") : nothing}${timer ? html`${t("floor-show-next")}<span class=${isAlone ? "" : "hidden-text"}> ${t("floor-show-reading")}</span> <strong>${whenWords(timer)}</strong>` : html`<strong>${t("floor-show-remind_me")}</strong>`}</span>
    <span class="glance__sub">${timer ? leftWords(timer) : t("floor-show-next_reading")}</span></button>`;
}

/** On a vessel's page: drawn into a place of its own. @param {HTMLElement} place @param {any} card */
export async function showOnVessel(place, card) {
  const timer = (await timersNow()).find((one) => one.mark === card.mark);
  const isFermenting = card.holds ? !card.holds.charged && !card.holds.closed : card.recent.length > 0; // what waits on this phone may have filled it
  const isFor = Boolean(card.run) || (card.sort === "fermenter" && isFermenting);
  render(isFor || timer ? html`<div class="glance">${timerChip(timer, aboutCard(card), true)}</div>` : nothing, place);
}

/** @param {any} card @returns {About} */
export const aboutCard = (card) => ({ mark: card.mark, name: card.name || card.mark, sort: card.sort, run: card.run?.id ?? "" });

/** For the day's page. @param {Timer[]} all */
export function timerList(all) {
  if (!all.length) return nothing;
  return html`<section data-timers><h2>${t("floor-show-reminders")}</h2><ul class="list list--links">${all.map((timer) => html`<li><a href=${timerPath(timer)}><span class="list__mark">${timer.name}</span>
    <span class="list__what">${titleOf(timer, "")} <strong>${whenWords(timer)}</strong></span><span class="list__end">${isDue(timer) ? badge("ask", t("floor-show-due")) : leftWords(timer)}</span></a></li>`)}</ul></section>`;
}

/** Ask when. @param {Timer|undefined} timer as it stands @param {About} about */
export function openTimer(timer, about) {
  const opener = document.activeElement;
  const dialog = document.createElement("dialog");
  dialog.className = "dialog";
  dialog.setAttribute("aria-labelledby", "timer-title");
  document.body.append(dialog);
  dialog.addEventListener("close", () => {
    dialog.remove();
    if (opener instanceof HTMLElement && opener.isConnected) opener.focus();
  });
  const take = async (/** @type {number} */ at, /** @type {number} */ minutes) => {
    if (!Number.isFinite(at)) return;
    dialog.close();
    void wake().then(sound); // the tap that lets the page sound; and what it will sound like
    void askForNotices();
    await setTimer({ mark: about.mark, name: about.name, run: about.run, at: new Date(at).toISOString(), minutes });
  };
  const drop = async () => {
    dialog.close();
    await dropTimers([about.mark]);
    await clearNotice(about.mark);
  };
  const atTime = (/** @type {SubmitEvent} */ event) => {
    event.preventDefault();
    const box = /** @type {HTMLInputElement} */ (dialog.querySelector("[name=clock]"));
    void take(box.value ? nextAt(box.value, Date.now()) : NaN, 0);
  };
  const now = Date.now();
  render(html`<h2 id="timer-title">${t("floor-show-when_is_to_be", { name: about.name })}</h2>
    ${timer ? html`<p>${t("floor-show-set_for")} <strong>${whenWords(timer)}</strong>, ${leftWords(timer)}${timer.minutes ? t("floor-show-min_after_each_reading", { minutes: timer.minutes }) : ""}.</p>` : nothing}
    <div class="timer__offers">${offersFor(about.sort, now).map((offer) => html`<button type="button" class="button" @click=${() => void take(offer.at, offer.minutes)}>${offer.words} <span class="button__sub">${formatTime(offer.at)}</span></button>`)}</div>
    <form class="timer__at" @submit=${atTime}><label class="field field--when"><span class="field__label">${t("floor-show-at")}</span><input class="field__value" name="clock" type="time" required></label><button class="button">${t("floor-show-set_it")}</button></form>
    <p class="quiet">${about.sort === "still" ? t("floor-show-minutes_begin_anew_with") : ""}${leaveWords()}</p>
    <div class="dialog__answers">${timer ? html`<button type="button" class="button" @click=${drop}>${t("floor-show-no_reminder")}</button>` : nothing}
      <button type="button" class="button button--plain" @click=${() => dialog.close()}>${t("floor-leave_it")}</button></div>`, dialog);
  dialog.showModal();
}

function leaveWords() {
  const leave = noticeLeave();
  if (leave === "no") return t("floor-show-rings_while_cellarslate_is");
  return leave === "yes" ? t("floor-show-rings_while_cellarslate_is_2") : t("floor-show-rings_while_cellarslate_is_3");
}

export { timersNow };
