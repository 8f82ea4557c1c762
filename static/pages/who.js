// @ts-check
/** Who logs on this phone: picked by name or short code, with a PIN where the person has set one. Works without signal. */
import { onCards, people } from "../slate/cards.js";
import { hasPin } from "../slate/shown.js";
import { choose, current, WrongPin } from "../slate/who.js";
import "../ui/keypad.js";
import { html, nothing, render } from "../vendor/lit-html/lit-html.js";
import { safeThen } from "../shell/hand.js";
import { choiceRow } from "../shell/choices.js";
import { sayThere } from "../shell/frame.js";
import { followPerson } from "../shell/language.js";
import { t } from "../words/t.js";

/** @type {{list: any[], now: any, chosen: any, role: string, words: string}} */
const state = { list: [], now: null, chosen: null, role: "", words: "" };

/** @param {string} name @returns {HTMLElement} */
const part = (name) => /** @type {HTMLElement} */ (document.querySelector(`[data-part="${name}"]`));
const then = () => safeThen(new URLSearchParams(location.search).get("then"));

export async function start() {
  part("body").replaceChildren();
  onCards(() => void look()); // on a new phone the names may still be on their way
  await look();
}

async function look() {
  [state.list, state.now] = await Promise.all([people(), current()]);
  show();
}

function show() {
  const { list, now, chosen } = state;
  document.querySelector(".head__back")?.setAttribute("href", then() === "/" ? "/more" : then());
  render(list.length ? [now ? html`<p class="quiet">${t("floor-who-logs_now", { name: now.name })}</p>` : nothing, html`<div class="people">${list.map((person) => html`<button type="button" class="button person" aria-pressed=${String(person.code === chosen?.code)} @click=${() => pick(person)}>
      <strong>${person.code}</strong><span>${person.name}</span></button>`)}</div>`] : nobody(), part("body"));
  render(chosen ? choosing(chosen) : nothing, part("panel"));
  render(chosen ? html`<button type="button" class="button button--main button--action" @click=${take}>${t("floor-who-logs", { name: chosen.name })}</button>` : nothing, part("doing"));
}

const nobody = () => html`<section class="band"><p><strong class="band__lead">${t("floor-who-no_names_on_this")}</strong> ${t("floor-who-they_come_with_the")}</p>
  <div class="band__offers"><a class="button" href="/start">${t("floor-let_this_phone_in")}</a><a class="button" href=${then()}>${t("floor-go_on")}</a></div></section>`;

/** @param {any} person */
function choosing(person) {
  return html`<form class="form" @submit=${(/** @type {Event} */ event) => { event.preventDefault(); void take(); }}>
    ${person.roles.length > 1 ? choiceRow(t("floor-who-as"), "role", person.roles.map((/** @type {string} */ role) => [role, role]), state.role, (value) => { state.role = value; }) : nothing}
    ${hasPin(person) ? html`<div class="field field--figure ${state.words ? "field--wrong" : ""}" data-field="pin"><label class="field__label" for="pin">${t("floor-pin_of", { code: person.code })}</label>
      <input class="field__value" id="pin" name="pin" type="password" autocomplete="off" maxlength="12" data-keypad="digits">
      ${state.words ? html`<p class="field__error" role="alert">${state.words}</p>` : nothing}</div>` : nothing}</form>`;
}

/** @param {any} person */
async function pick(person) {
  Object.assign(state, { chosen: person, role: person.roles[0] ?? "", words: "" });
  if (!hasPin(person) && person.roles.length < 2) return take();
  show();
  document.getElementById("pin")?.focus();
}

async function take() {
  const pin = /** @type {HTMLInputElement|null} */ (document.getElementById("pin"))?.value ?? "";
  try {
    const who = await choose(state.chosen.code, pin, state.role);
    await followPerson(state.chosen);
    if (who.shown === "unseen") sayThere({ words: t("floor-who-no_signal_so_this") });
    location.assign(then());
  } catch (error) {
    state.words = /** @type {any} */ (error).message;
    show();
    const box = /** @type {HTMLInputElement|null} */ (document.getElementById("pin"));
    if (error instanceof WrongPin && box) box.value = "";
    box?.focus();
  }
}
