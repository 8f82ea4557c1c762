// @ts-check
/** This phone's own ways, who logs on it, and what it is. */
import { device, storageStatus } from "../slate/device.js";
import { onCards, site } from "../slate/cards.js";
import { current, leave, onWho } from "../slate/who.js";
import { missingParts, workerVersion } from "../slate/worker.js";
import { getKeypadChoice, setKeypadChoice } from "../ui/keypad.js";
import { getTheme, setTheme } from "../ui/theme.js";
import { html, nothing, render } from "../vendor/lit-html/lit-html.js";
import { icon } from "../icons/icons.js";
import { choiceRow } from "../shell/choices.js";
import { setUnitsChoice, unitsChoice } from "../shell/inunits.js";
import { decimalChoice, setDecimalChoice } from "../shell/house.js";
import { speak } from "../shell/language.js";
import { language, languages } from "../kinds/kinds.js";
import { toast } from "../ui/toast.js";
import { t } from "../words/t.js";

/** What is logged about no vessel: address, picture, words. */
const NO_VESSEL = () => [["/log/shift_note", "pen", t("floor-more-note"), t("floor-more-to_the_next_shift")], ["/log/instrument_check", "thermometer", t("floor-more-instrument"), t("floor-more-check_it")], ["/log/bottled_count", "bottle", t("floor-more-bottles"), t("floor-more-count_them")],
  ["/log/dispatch", "case", t("floor-more-cases"), t("floor-more-out_or_back")], ["/log/goods_receipt", "case-in", t("floor-more-cases"), t("floor-more-in_from_another_site")], ["/job/count", "cask", t("floor-more-stock"), t("floor-more-count_it_in_a")], ["/job/tasting", "glass", t("floor-blind_tasting"), t("floor-more-your_glasses")], ["/log/lab_certificate", "glass", t("floor-more-laboratory"), t("floor-more-of_bottled_spirit")]];
/** @returns {Record<string, string>} what is fetched after the rest */
const PARTS = () => ({ curve: t("floor-more-the_curves"), jobs: t("floor-more-the_jobs"), scan: t("floor-more-the_reader_of_labels") });
/** @type {any} the browser's offer to install, where it makes one */
let install = null;
addEventListener("beforeinstallprompt", (event) => {
  event.preventDefault();
  install = event;
  void show();
});

export async function start() {
  onCards(() => void show());
  onWho(() => void show());
  await show();
}

async function show() {
  const [own, who, house, storage, version, missing] = await Promise.all([device(), current(), site(), storageStatus(), workerVersion(), missingParts()]);
  const awaited = missing.flatMap((name) => PARTS()[name] ?? []).join(", ");
  const isInstalled = matchMedia("(display-mode: standalone)").matches;
  render([
    group("pen", t("floor-more-log_without_a_vessel"), NO_VESSEL()),
    group("phone", t("floor-this_phone"), [["/who?then=/more", "person", who ? who.name : t("floor-more-nobody_chosen"), who?.role ?? t("floor-more-who_logs")], ["/start", "phone", own?.name || own?.id || t("floor-more-no_name_yet"), own?.enrolled ? t("floor-more-let_in") : t("floor-not_let_in")], ["/job/helps", "hand", t("floor-helps"), t("floor-more-gloves_buzz_voice")], ["/desk/", "desk", t("floor-more-desk"), t("floor-more-needs_signal")]]),
    who ? html`<button type="button" class="button" @click=${leave}>${t("floor-more-put_the_phone_down")}</button>` : nothing,
    installHint(isInstalled),
    awaited ? html`<p class="band band--note"><span>${t("floor-more-not_on_this_phone", { awaited })}</span></p>` : nothing,
    html`<h2>${icon("sun")} ${t("floor-more-as_you_like_it")}</h2>`,
    languages().length > 1 ? choiceRow(t("floor-more-language"), "language", languages(), language(), (code) => void take(code)) : nothing,
    choiceRow(t("floor-more-units"), "units", [["metric", t("floor-more-metric")], ["us", t("floor-more-us")]], unitsChoice(), setUnitsChoice),
    choiceRow(t("floor-more-decimal_mark"), "decimal", [["", t("floor-more-as_the_house")], [".", "1.5"], [",", "1,5"]], decimalChoice(), setDecimalChoice),
    choiceRow(t("floor-more-keys"), "keys", [["own", t("floor-more-large_keys")], ["system", t("floor-more-phone_keyboard")]], getKeypadChoice(), setKeypadChoice),
    choiceRow(t("floor-more-light"), "theme", [["system", t("floor-more-as_the_phone")], ["dark", t("floor-more-dark")], ["light", t("floor-more-light_2")]], getTheme(), setTheme),
    html`<p class="quiet">${house.name ? `${house.name}. ` : ""}${version ? `Cellarslate ${version}. ` : ""}${storage.words}</p>`,
  ], /** @type {HTMLElement} */ (document.querySelector('[data-part="body"]')));
}

/** The page comes anew in it. @param {string} code */
async function take(code) {
  if (await speak(code)) return location.reload();
  toast(t("floor-more-language_not_here"), 8000);
  return show();
}

/** @param {string} sign @param {string} title @param {string[][]} tiles */
const group = (sign, title, tiles) => html`<section class="stack"><h2>${icon(sign)} ${title}</h2><div class="tiles">${tiles.map(([path, picture, mark, what]) => html`<a class="tile" href=${path}>${icon(picture, "large")}<span><strong>${mark}</strong><span class="quiet">${what}</span></span></a>`)}</div></section>`;

/** @param {boolean} isInstalled */
function installHint(isInstalled) {
  if (isInstalled) return nothing;
  if (install) return html`<button type="button" class="button button--main" @click=${() => install.prompt()}>${t("floor-more-put_cellarslate_on_the")}</button>`;
  const isApple = /iPhone|iPad/.test(navigator.userAgent);
  return isApple ? html`<p class="band band--note"><span>${t("floor-more-put_cellarslate_on_the_2")}</span></p>` : nothing;
}
