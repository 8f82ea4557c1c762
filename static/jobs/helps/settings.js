// @ts-check
/** The helps of this phone, set in one place: only those that it has. */
import { html, nothing, render } from "../../vendor/lit-html/lit-html.js";
import { choiceRow } from "../../shell/choices.js";
import { setHead } from "../../shell/frame.js";
import { toast } from "../../ui/toast.js";
import { localVoice, sayAloud } from "./aloud.js";
import { hasBackground } from "./background.js";
import { buzz, hasBuzz } from "./buzz.js";
import { isHelpOn, setHelp } from "./choices.js";
import { fetchLanguage, localListener } from "./listening.js";

/** @typedef {import("./choices.js").Help} Help */

export async function start() {
  setHead({ mark: "Helps", first: "of this phone alone", back: "/more" });
  await show();
}

async function show() {
  const [voice, listener] = await Promise.all([localVoice(), localListener()]);
  const also = [
    (voice || listener) && "Voice and ear are the phone's own: nothing that is said leaves it.",
    "setAppBadge" in navigator && "Its icon shows how many entries wait, once it is on the home screen.",
    hasBackground() && "What waits is handed in after the app was closed too, when a network comes.",
  ].filter(Boolean);
  render([
    row("gloves", "Gloves", "larger keys, fewer boxes", () => location.reload()), // theme-first.js shows them
    hasBuzz() ? row("buzz", "Buzz", "when it is logged, and for a question", (isOn) => isOn && buzz("ask")) : nothing,
    voice ? row("aloud", "Read aloud", "figures just typed, and questions", (isOn) => isOn && sayAloud("Gravity: 1.031", voice)) : nothing,
    listener ? row("spoken", "Speak figures", "into the box; your tap logs them", () => {}) : nothing,
    listener?.state === "downloadable" ? html`<button type="button" class="button" @click=${() => fetchFor(listener.lang)}>Fetch the language for it</button>` : nothing,
    also.length ? html`<p class="quiet">${also.join(" ")}</p>` : nothing,
  ], /** @type {HTMLElement} */ (document.querySelector('[data-part="body"]')));
}

/** @param {Help} help @param {string} title @param {string} says @param {(isOn: boolean) => void} onSet */
function row(help, title, says, onSet) {
  const set = (/** @type {string} */ value) => {
    setHelp(help, value === "on");
    onSet(value === "on");
  };
  return choiceRow(html`${title} <span class="quiet">${says}</span>`, help, [["off", "off"], ["on", "on"]], isHelpOn(help) ? "on" : "off", set);
}

/** @param {string} lang */
async function fetchFor(lang) {
  const isThere = await fetchLanguage(lang).catch(() => false);
  toast(isThere ? "It is on this phone now." : "It could not be fetched. Try again with signal.");
  await show();
}
