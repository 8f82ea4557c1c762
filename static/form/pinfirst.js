// @ts-check
/** What goes into or out of the accounts of the tax wants the person's PIN once more, where the house says so. */
import { people } from "../slate/cards.js";
import { hasPin } from "../slate/shown.js";
import { look, WrongPin } from "../slate/who.js";
import { html, render } from "../vendor/lit-html/lit-html.js";
import { ask } from "../ui/dialog.js";
import { t } from "../words/later.js";

/**
 * @param {string} code of whoever logs
 * @returns {Promise<"now" | "" | null>} "" where there is no PIN to type, or no signal to look at it by; null where it was left
 */
export async function askPin(code) {
  const person = (await people()).find((one) => one.code === code);
  if (!hasPin(person)) return "";
  for (let words = ""; ; ) {
    const box = document.createElement("div");
    render(html`<div class="field ${words ? "field--wrong" : ""}"><label class="field__label" for="pin-first">${t("floor-pin_of", { code })}</label>
      <input class="field__value" id="pin-first" type="password" inputmode="numeric" autocomplete="off" maxlength="12" autofocus>
      <p class="field__error" role="alert" ?hidden=${!words}>${words}</p></div>`, box);
    const answer = await ask({ title: t("floor-pinfirst-it_goes_into_the"), text: box, answers: [{ value: "log", word: t("floor-log_it"), weight: "main" }, { value: "", word: t("floor-back") }] });
    if (answer !== "log") return null;
    try {
      return (await look(person, /** @type {HTMLInputElement} */ (box.querySelector("input")).value)) === "pin" ? "now" : "";
    } catch (error) {
      if (!(error instanceof WrongPin)) throw error;
      words = error.message;
    }
  }
}
