// @ts-check
/**
 * Figures spoken into the box that is being typed in, where a recogniser works on the phone itself: no other is ever
 * asked, for what is said on the floor stays there. What was heard stands in the box; a person's tap logs it, or not.
 */
import { inOwnMark } from "../../ui/format.js";
import { symbol } from "../../trade/units.js";
import { toast } from "../../ui/toast.js";
import { html, render } from "../../vendor/lit-html/lit-html.js";
import { parseSpoken } from "./spoken.js";
import { language } from "../../kinds/kinds.js";
import { t } from "../../words/later.js";

const LANGUAGES = ["en-GB", "en-US"];
const ALTERNATIVES = 5;
const MICROPHONE = html`<svg class="icon" viewBox="0 0 24 24" aria-hidden="true" focusable="false"><path d="M12 3q2.8 0 2.8 2.8v5.4Q14.8 14 12 14t-2.8-2.8V5.8Q9.2 3 12 3zM5.5 11.2q0 6.3 6.5 6.3t6.5-6.3M12 17.5V21M8.5 21h7"/></svg>`;

/** @returns {any} the browser's recogniser, where it can be told to stay on the phone */
const recogniser = () => {
  const found = /** @type {any} */ (globalThis).SpeechRecognition;
  return found && "available" in found ? found : null;
};

/** @returns {Promise<{lang: string, state: "available"|"downloadable"}|null>} null where nothing listens without sending it away */
export async function localListener() {
  const found = recogniser();
  if (!found || language() !== "en") return null; // spoken.js knows the figures of English alone
  const all = await Promise.all(LANGUAGES.map(async (lang) => ({ lang, state: await found.available({ langs: [lang], processLocally: true }).catch(() => "unavailable") })));
  return all.find((one) => one.state === "available") ?? all.find((one) => one.state === "downloadable") ?? null;
}

/** Fetch a language for the recogniser; needs signal. @param {string} lang @returns {Promise<boolean>} */
export const fetchLanguage = (lang) => recogniser().install({ langs: [lang], processLocally: true });

export async function startListening() {
  const listener = await localListener();
  if (listener?.state !== "available") return;
  const button = document.createElement("button");
  button.type = "button";
  button.className = "button button--plain field__tool";
  button.dataset.part = "speak";
  button.setAttribute("aria-label", t("floor-listening-speak"));
  render(MICROPHONE, button);
  const sheet = Object.assign(document.createElement("link"), { rel: "stylesheet", href: new URL("listening.css", import.meta.url).href });
  document.head.append(sheet);
  /** @type {HTMLInputElement|null} */
  let field = null;
  const follow = (/** @type {EventTarget|null} */ target) => {
    if (!(target instanceof HTMLInputElement) || target.dataset.keypad === undefined || target.dataset.keypad === "digits") return;
    field = target;
    target.after(button);
    target.closest(".field")?.classList.add("field--speak");
  };
  document.addEventListener("focusin", ({ target }) => follow(target));
  follow(document.activeElement); // it had the focus before we came
  button.addEventListener("pointerdown", (event) => event.preventDefault()); // the field keeps the focus
  button.addEventListener("click", () => field && hear(field, button, listener.lang));
}

/** @param {HTMLInputElement} field @param {HTMLElement} button @param {string} lang */
function hear(field, button, lang) {
  const listening = new (recogniser())();
  Object.assign(listening, { lang, processLocally: true, interimResults: false, continuous: false, maxAlternatives: ALTERNATIVES });
  button.setAttribute("aria-pressed", "true");
  listening.addEventListener("end", () => button.removeAttribute("aria-pressed"));
  listening.addEventListener("error", (/** @type {any} */ event) => {
    if (event.error !== "aborted") toast(event.error === "not-allowed" ? t("floor-listening-the_microphone_is_not") : t("floor-listening-no_figure_was_heard"));
  });
  listening.addEventListener("result", (/** @type {any} */ event) => take(field, [...event.results[0]].map((one) => one.transcript)));
  listening.start();
}

/** @param {HTMLInputElement} field @param {string[]} heard the likeliest first */
function take(field, heard) {
  const spoken = heard.map(parseSpoken).find(Boolean);
  if (!spoken) return toast(t("floor-listening-heard_no_figure_say", { heard: heard[0] ?? "" }));
  const select = /** @type {HTMLSelectElement|null} */ (document.querySelector(`select[data-unit-for="${CSS.escape(field.id)}"]`));
  const units = select ? [...select.options].map((option) => option.value) : [];
  if (select && spoken.units.length && !spoken.units.includes(select.value)) {
    const fitting = spoken.units.find((unit) => units.includes(unit));
    if (!fitting) return toast(t("floor-listening-heard_but_this_box", { heard: heard[0], symbol: units.map(symbol).join(t("floor-listening-or")) }));
    select.value = fitting;
    select.dispatchEvent(new Event("change", { bubbles: true }));
  }
  field.value = inOwnMark(spoken.raw);
  field.dispatchEvent(new InputEvent("input", { bubbles: true, inputType: "insertReplacementText" }));
  field.focus();
}
