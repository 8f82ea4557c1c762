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

/** What is logged about no vessel: address, picture, words. */
const NO_VESSEL = [["/log/shift_note", "pen", "Note", "to the next shift"], ["/log/instrument_check", "thermometer", "Instrument", "check it"], ["/log/bottled_count", "bottle", "Bottles", "count them"],
  ["/log/dispatch", "case", "Cases", "out or back"], ["/log/goods_receipt", "case-in", "Cases", "in from another site"], ["/job/count", "cask", "Stock", "count it in a round"], ["/job/tasting", "glass", "Blind tasting", "your glasses"], ["/log/lab_certificate", "glass", "Laboratory", "of bottled spirit"]];
/** @type {Record<string, string>} what is fetched after the rest */
const PARTS = { curve: "the curves", jobs: "the jobs", scan: "the reader of labels" };
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
  const awaited = missing.flatMap((name) => PARTS[name] ?? []).join(", ");
  const isInstalled = matchMedia("(display-mode: standalone)").matches;
  render([
    group("pen", "Log without a vessel", NO_VESSEL),
    group("phone", "This phone", [["/who?then=/more", "person", who ? who.name : "Nobody chosen", who?.role ?? "who logs"], ["/start", "phone", own?.name || own?.id || "No name yet", own?.enrolled ? "let in" : "not let in"], ["/job/helps", "hand", "Helps", "gloves, buzz, voice"], ["/desk/", "desk", "Desk", "needs signal"]]),
    who ? html`<button type="button" class="button" @click=${leave}>Put the phone down</button>` : nothing,
    installHint(isInstalled),
    awaited ? html`<p class="band band--note"><span>Not on this phone yet: ${awaited}. Keep the app open with signal for a minute.</span></p>` : nothing,
    html`<h2>${icon("sun")} As you like it</h2>`,
    choiceRow("Units", "units", [["metric", "metric"], ["us", "US"]], unitsChoice(), setUnitsChoice),
    choiceRow("Decimal mark", "decimal", [["", "as the house"], [".", "1.5"], [",", "1,5"]], decimalChoice(), setDecimalChoice),
    choiceRow("Keys", "keys", [["own", "large keys"], ["system", "phone keyboard"]], getKeypadChoice(), setKeypadChoice),
    choiceRow("Light", "theme", [["system", "as the phone"], ["dark", "dark"], ["light", "light"]], getTheme(), setTheme),
    html`<p class="quiet">${house.name ? `${house.name}. ` : ""}${version ? `Cellarslate ${version}. ` : ""}${storage.words}</p>`,
  ], /** @type {HTMLElement} */ (document.querySelector('[data-part="body"]')));
}

/** @param {string} sign @param {string} title @param {string[][]} tiles */
const group = (sign, title, tiles) => html`<section class="stack"><h2>${icon(sign)} ${title}</h2><div class="tiles">${tiles.map(([path, picture, mark, what]) => html`<a class="tile" href=${path}>${icon(picture, "large")}<span><strong>${mark}</strong><span class="quiet">${what}</span></span></a>`)}</div></section>`;

/** @param {boolean} isInstalled */
function installHint(isInstalled) {
  if (isInstalled) return nothing;
  if (install) return html`<button type="button" class="button button--main" @click=${() => install.prompt()}>Put Cellarslate on the home screen</button>`;
  const isApple = /iPhone|iPad/.test(navigator.userAgent);
  return isApple ? html`<p class="band band--note"><span>Put Cellarslate on the home screen (Share, then Add to Home Screen): the phone then keeps the slate for longer.</span></p>` : nothing;
}
