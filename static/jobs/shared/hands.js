// @ts-check
/** A strip of the people who share this phone: one tap, and the next of them logs; a PIN is typed right there. */
import { hasPin } from "../../slate/shown.js";
import { choose, current, hands, WrongPin } from "../../slate/who.js";
import { html, nothing, render } from "../../vendor/lit-html/lit-html.js";
import { wear } from "../../ui/sheet.js";
import { t } from "../../words/later.js";

/**
 * Draw the strip, where more than one person has logged here lately.
 * @param {HTMLElement} place @param {() => void} onChosen after another has taken the phone
 */
export async function showHands(place, onChosen) {
  await wear("jobs/shared/shared.css");
  /** @type {{asked: any, words: string}} */
  const state = { asked: null, words: "" };
  const show = async () => {
    const [list, now] = await Promise.all([hands(), current()]);
    place.hidden = list.length < 2;
    render(list.length > 1 ? strip(list, now, state.asked, state.words, tap, type) : nothing, place);
  };
  const tap = (/** @type {any} */ person) => {
    Object.assign(state, { asked: hasPin(person) ? person : null, words: "" });
    if (!hasPin(person)) return void take(person, "");
    void show().then(() => place.querySelector("input")?.focus());
  };
  const type = (/** @type {Event} */ event) => {
    event.preventDefault();
    const box = /** @type {HTMLInputElement} */ (place.querySelector("input"));
    void take(state.asked, box.value).then(() => { box.value = ""; });
  };
  const take = async (/** @type {any} */ person, /** @type {string} */ pin) => {
    try {
      await choose(person.code, pin);
      Object.assign(state, { asked: null, words: "" });
      onChosen();
    } catch (error) {
      if (!(error instanceof WrongPin)) throw error;
      state.words = error.message;
    }
    await show();
  };
  await show();
}

/** @param {any[]} list @param {any} now @param {any} asked whose PIN is wanted, or null @param {string} words what was wrong with it @param {(person: any) => void} tap @param {(event: Event) => void} type */
const strip = (list, now, asked, words, tap, type) => html`<nav class="hands" aria-label=${t("floor-hands-who_logs")}>
    ${list.map((person) => html`<button type="button" class="button hands__one" aria-pressed=${String(person.code === (asked ?? now)?.code)} aria-label="${person.code}, ${person.name}"
      @click=${() => tap(person)}>${person.code}</button>`)}
    <a class="button hands__one" href="/who?then=${encodeURIComponent(location.pathname + location.search)}">${t("floor-hands-other")}</a></nav>
  ${asked ? html`<form class="hands__pin" @submit=${type}><label for="hands-pin">${t("floor-pin_of", { code: asked.code })}</label>
    <input class="field__value" id="hands-pin" type="password" inputmode="numeric" autocomplete="off" maxlength="12" aria-describedby="hands-says">
    <button class="button">${t("floor-hands-take_it")}</button><p id="hands-says" role="alert">${words}</p></form>` : nothing}`;
