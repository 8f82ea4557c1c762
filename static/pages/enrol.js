// @ts-check
/** Let this phone in by the office's one-time code. What waits on it keeps waiting and is handed in after. */
import { device, enrol } from "../slate/device.js";
import { handInNow } from "../slate/handin.js";
import { html, render } from "../vendor/lit-html/lit-html.js";
import { sayThere } from "../shell/frame.js";
import { t } from "../words/t.js";

const PATH = /^\/enrol\/([^/]+)\/?$/;

export async function start() {
  const form = /** @type {HTMLFormElement} */ (document.querySelector('[data-part="enrol-form"]'));
  const [token, name] = ["token", "name"].map((id) => /** @type {HTMLInputElement} */ (form.querySelector(`[name=${id}]`)));
  const says = /** @type {HTMLElement} */ (form.querySelector('[data-part="says"]'));
  token.value ||= decodeURIComponent(PATH.exec(location.pathname)?.[1] ?? "");
  name.value ||= (await device())?.name ?? "";
  // The office may have named the phone when it made the code; then this box may stay empty.
  form.addEventListener("submit", async (event) => {
    event.preventDefault();
    const refused = !token.value.trim() ? t("floor-enrol-the_code_is_missing") : "";
    if (refused) return tell(says, refused);
    await letIn(codeOf(token.value), name.value.trim(), says);
  });
}

/** A whole link may be pasted as well. @param {string} text */
const codeOf = (text) => text.trim().replace(/^https?:\/\/[^/]+\/enrol\//, "").replace(/[/?#].*$/, "");

/** @param {string} token @param {string} name @param {HTMLElement} says */
async function letIn(token, name, says) {
  const button = /** @type {HTMLButtonElement|null} */ (document.querySelector('[data-part="enrol-form"] button'));
  render(html`<p class="quiet" role="status">${t("floor-enrol-letting_it_in_and")}</p>`, says);
  if (button) button.disabled = true; // the code is good for one go: a second tap would be told that it is used
  try {
    const own = await enrol(token, name);
    await handInNow();
    sayThere({ words: t("floor-enrol-is_let_in", { name: own.name || t("floor-this_phone") }) });
    location.assign("/who?then=/");
  } catch (error) {
    if (button) button.disabled = false;
    tell(says, /** @type {any} */ (error).message || t("floor-enrol-the_book_did_not"));
  }
}

/** @param {HTMLElement} says @param {string} words */
const tell = (says, words) => render(html`<p class="band band--stop" role="alert">${words}</p>`, says);
