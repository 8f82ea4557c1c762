// @ts-check
/** Jug and watch: one tap as the jug goes under, one when it is full; the flow is worked out and typed. */
import { formatNumber } from "../../ui/format.js";
import { html, render } from "../../vendor/lit-html/lit-html.js";
import { t } from "../../words/later.js";

const KEPT = "jug:";
/** What a jug holds, by the unit of the flow. [L or US gal] */
const JUGS = { L_h: [0.1, 0.25, 0.5, 1, 2], gal_h: [0.03125, 0.0625, 0.125, 0.25, 0.5] };
const SIGNS = { L_h: "L", gal_h: "gal" };
/** A second tap sooner is the first one's echo. */
const LEAST_S = 2;

/** @param {number} jug @param {number} seconds @returns {number} an hour's worth, in the jug's unit */
export const flowOf = (jug, seconds) => (jug / seconds) * 3600;

/** @param {HTMLFormElement} form of a reading, as just drawn */
export function mountJug(form) {
  const place = /** @type {HTMLElement|null} */ (form.querySelector('[data-part="jug"]'));
  const box = /** @type {HTMLInputElement|null} */ (form.querySelector("[name=flow]"));
  const unitBox = /** @type {HTMLSelectElement|null} */ (form.querySelector("[name=flow_unit]"));
  if (!place || !box) return;
  const unit = () => /** @type {"L_h"|"gal_h"} */ (unitBox && unitBox.value in JUGS ? unitBox.value : "L_h");
  let [begun, said, ticking] = [0, "", 0];
  const jug = () => Number(localStorage.getItem(KEPT + unit())) || JUGS[unit()][2];
  const name = (/** @type {number} */ held) => `${formatNumber(held, [0, 1, 2, 3].find((n) => Math.abs(held - Number(held.toFixed(n))) < 1e-9) ?? 5)} ${SIGNS[unit()]}`;
  const seconds = () => (performance.now() - begun) / 1000;

  const tap = () => {
    if (!begun) {
      begun = performance.now();
      said = "";
      ticking = setInterval(() => (place.isConnected ? show() : clearInterval(ticking)), 500);
    } else if (seconds() >= LEAST_S) {
      const took = seconds();
      clearInterval(ticking);
      begun = 0;
      said = t("floor-jug-in_s", { jug: name(jug()), took: formatNumber(took, 0) });
      box.value = formatNumber(flowOf(jug(), took), 1).replace(/\s/g, "");
      box.dispatchEvent(new Event("input", { bubbles: true }));
    }
    show();
  };
  const choose = (/** @type {Event} */ event) => {
    localStorage.setItem(KEPT + unit(), /** @type {HTMLSelectElement} */ (event.target).value);
    show();
  };
  const show = () => render(html`<div class="jug"><select class="button" aria-label=${t("floor-jug-the_jug_holds")} @change=${choose}>${JUGS[unit()].map((held) => html`<option value=${held} ?selected=${held === jug()}>${name(held)}</option>`)}</select>
    <button type="button" class="button ${begun ? "button--main" : ""}" data-watch @click=${tap}>${begun ? t("floor-jug-full", { seconds: clock(seconds()) }) : t("floor-jug-start_the_watch")}</button>
    <span class="quiet" role="status">${said || t("floor-jug-jug_and_watch")}</span></div>`, place);
  unitBox?.addEventListener("change", show);
  show();
}

/** "0:07" @param {number} seconds */
const clock = (seconds) => `${Math.floor(seconds / 60)}:${String(Math.floor(seconds % 60)).padStart(2, "0")}`;
