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
import { t } from "../../words/later.js";

/** @typedef {import("./choices.js").Help} Help */

export async function start() {
  setHead({ mark: t("floor-helps"), first: t("floor-settings-of_this_phone_alone"), back: "/more" });
  await show();
}

async function show() {
  const [voice, listener] = await Promise.all([localVoice(), localListener()]);
  const also = [
    (voice || listener) && t("floor-settings-voice_and_ear_are"),
    "setAppBadge" in navigator && t("floor-settings-its_icon_shows_how"),
    hasBackground() && t("floor-settings-what_waits_is_handed"),
  ].filter(Boolean);
  render([
    row("gloves", t("floor-settings-gloves"), t("floor-settings-larger_keys_fewer_boxes"), () => location.reload()), // theme-first.js shows them
    hasBuzz() ? row("buzz", t("floor-settings-buzz"), t("floor-settings-when_it_is_logged"), (isOn) => isOn && buzz("ask")) : nothing,
    voice ? row("aloud", t("floor-settings-read_aloud"), t("floor-settings-figures_just_typed_and"), (isOn) => isOn && sayAloud(t("floor-settings-gravity_1_031"), voice)) : nothing,
    listener ? row("spoken", t("floor-settings-speak_figures"), t("floor-settings-into_the_box_your"), () => {}) : nothing,
    listener?.state === "downloadable" ? html`<button type="button" class="button" @click=${() => fetchFor(listener.lang)}>${t("floor-settings-fetch_the_language_for")}</button>` : nothing,
    also.length ? html`<p class="quiet">${also.join(" ")}</p>` : nothing,
  ], /** @type {HTMLElement} */ (document.querySelector('[data-part="body"]')));
}

/** @param {Help} help @param {string} title @param {string} says @param {(isOn: boolean) => void} onSet */
function row(help, title, says, onSet) {
  const set = (/** @type {string} */ value) => {
    setHelp(help, value === "on");
    onSet(value === "on");
  };
  return choiceRow(html`${title} <span class="quiet">${says}</span>`, help, [["off", t("floor-off")], ["on", t("floor-on")]], isHelpOn(help) ? "on" : "off", set);
}

/** @param {string} lang */
async function fetchFor(lang) {
  const isThere = await fetchLanguage(lang).catch(() => false);
  toast(isThere ? t("floor-settings-it_is_on_this") : t("floor-settings-it_could_not_be"));
  await show();
}
