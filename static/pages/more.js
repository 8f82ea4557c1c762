// @ts-check
/** This phone's own ways, who logs on it, and what it is. */
import { device, storageStatus } from "../slate/device.js";
import { onCards, site } from "../slate/cards.js";
import { current, leave, onWho } from "../slate/who.js";
import { missingParts, workerVersion } from "../slate/worker.js";
import { getKeypadChoice, setKeypadChoice } from "../ui/keypad.js";
import { getTheme, setTheme } from "../ui/theme.js";
import { html, nothing, render } from "../vendor/lit-html/lit-html.js";
import { choiceRow } from "../shell/choices.js";
import { setUnitsChoice, unitsChoice } from "../shell/inunits.js";
import { decimalChoice, setDecimalChoice } from "../shell/house.js";

const NO_VESSEL = [["dispatch", "Cases", "out or back"], ["goods_receipt", "Cases", "in from another site"], ["bottled_count", "Bottles", "count them"], ["instrument_check", "Instrument", "check it"]];
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
    html`<ul class="list list--links"><li><a href="/who?then=/more"><span class="list__mark">Who logs</span><span class="list__what">${who ? who.name : "nobody chosen"}</span><span class="list__end">${who?.role ?? ""}</span></a></li>
      <li><a href="/start"><span class="list__mark">This phone</span><span class="list__what">${own?.name || own?.id || "no name yet"}</span><span class="list__end">${own?.enrolled ? "let in" : "not let in"}</span></a></li>
      <li><a href="/log/shift_note"><span class="list__mark">Note</span><span class="list__what">to the next shift</span></a></li>
      ${NO_VESSEL.map(([kind, mark, what]) => html`<li><a href="/log/${kind}"><span class="list__mark">${mark}</span><span class="list__what">${what}</span></a></li>`)}
      <li><a href="/desk/"><span class="list__mark">Desk</span><span class="list__what">needs signal</span></a></li></ul>`,
    who ? html`<button type="button" class="button" @click=${leave}>Put the phone down</button>` : nothing,
    installHint(isInstalled),
    awaited ? html`<p class="band band--note"><span>Not on this phone yet: ${awaited}. Keep the app open with signal for a minute.</span></p>` : nothing,
    choiceRow("Units", "units", [["metric", "metric"], ["us", "US"]], unitsChoice(), setUnitsChoice),
    choiceRow("Decimal mark", "decimal", [["", "as the house"], [".", "1.5"], [",", "1,5"]], decimalChoice(), setDecimalChoice),
    choiceRow("Keys", "keys", [["own", "large keys"], ["system", "phone keyboard"]], getKeypadChoice(), setKeypadChoice),
    choiceRow("Light", "theme", [["system", "as the phone"], ["dark", "dark"], ["light", "light"]], getTheme(), setTheme),
    html`<p class="quiet">${house.name ? `${house.name}. ` : ""}${version ? `Cellarslate ${version}. ` : ""}${storage.words}</p>`,
  ], /** @type {HTMLElement} */ (document.querySelector('[data-part="body"]')));
}

/** @param {boolean} isInstalled */
function installHint(isInstalled) {
  if (isInstalled) return nothing;
  if (install) return html`<button type="button" class="button button--main" @click=${() => install.prompt()}>Put Cellarslate on the home screen</button>`;
  const isApple = /iPhone|iPad/.test(navigator.userAgent);
  return isApple ? html`<p class="band band--note"><span>Put Cellarslate on the home screen (Share, then Add to Home Screen): the phone then keeps the slate for longer.</span></p>` : nothing;
}
