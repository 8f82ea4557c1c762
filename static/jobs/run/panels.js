// @ts-check
/** What opens under the thumb on the run sheet: a reading, a cut, another event, the end. The minute is the tap's. */
import { html, nothing } from "../../vendor/lit-html/lit-html.js";
import { choiceBox, figureBox, minuteBox, remarkBox, wordsBox } from "../../form/quickfields.js";
import { chip } from "../../shell/choices.js";
import { formatMinute, formatTime } from "../../ui/format.js";
import { cautionLine } from "../../shell/cautions.js";
import { t } from "../../words/t.js";

const MORE = ["vapour_temp", "dip", "plates", "cooling_temp"];

/**
 * @typedef {object} Panel
 * @property {any} kind
 * @property {any} card or null
 * @property {Date} tappedAt
 * @property {string} title
 * @property {string} [event] of a cut
 * @property {any[]} [receivers] cards that the stream may run to
 * @property {string} [receiver] mark of the likeliest
 * @property {unknown} [body] instead of the kind's own boxes
 * @property {unknown} [earlier] of a cut: that it was made before it was logged
 * @property {unknown} [other] of a cut: a receiver by its mark
 * @property {() => void} onLeave
 */

/** @param {Panel} panel */
export function panelForm(panel) {
  const { kind, title, tappedAt, onLeave } = panel;
  return html`<form class="form panel" data-kind=${kind.name} novalidate aria-label=${title}>
    <header class="panel__head"><h2>${title} <span class="quiet">${formatTime(tappedAt)}</span></h2>
      <button type="button" class="button button--plain" @click=${onLeave}>${t("floor-leave_it")}</button></header>
    ${panel.body ? panel.body : kind.name === "run_reading" ? reading(panel) : kind.name === "run_end" ? ending(panel) : cut(panel)}
    <div data-part="panel-look" aria-live="polite"></div>
    <div data-part="panel-figures" class="sums" aria-live="polite"></div>
  </form>`;
}

/** @param {Panel} panel */
const reading = ({ kind, card, tappedAt }) => html`<div class="pair">${figureBox(kind, "glass", card)}${figureBox(kind, "temp", card)}</div>
  ${has(kind, "flow") ? html`${figureBox(kind, "flow", card, t("floor-panels-not_read_yet"))}<div data-part="jug"></div>` : nothing}
  ${more(tappedAt, MORE.filter((name) => has(kind, name)).map((name) => figureBox(kind, name, card)), figureBox(kind, "strength", card))}`;

/** @param {Panel} panel */
const ending = ({ kind, card, tappedAt }) => html`${choiceBox(kind, "reason")}
  ${more(tappedAt, figureBox(kind, "glass", card), figureBox(kind, "temp", card), figureBox(kind, "vapour_temp", card))}`;

/** @param {Panel} panel */
function cut({ kind, card, tappedAt, event = "", receivers = [], receiver = "", earlier, other }) {
  const isCut = event === "heads_cut" || event === "hearts_cut";
  return html`${event ? html`<input type="hidden" name="event" value=${event}>` : choiceBox(kind, "event", { only: ["heat_on", "first_drop", "heat_changed", "water_changed", "plate_in", "plate_out", "other"] })}
    ${isCut ? html`${receiverBox(receivers, receiver)}${choiceBox(kind, "reason", { value: "" })}${earlier}${other}${cautionLine("methanol")}` : nothing}
    ${more(tappedAt, figureBox(kind, "glass", card), figureBox(kind, "temp", card), figureBox(kind, "vapour_temp", card), figureBox(kind, "flow", card), wordsBox(kind, "nose"))}`;
}

/** The receiver is switched before the cut is logged: the stream does not wait for the phone. @param {any[]} receivers @param {string} receiver */
function receiverBox(receivers, receiver) {
  if (!receivers.length) {
    return html`<div class="field field--mark" data-field="receiver"><label class="field__label" for="panel-receiver">${t("floor-panels-switch_first_mark_of")}</label>
      <input class="field__value" id="panel-receiver" name="receiver" type="text" maxlength="64" autocomplete="off" autocapitalize="characters" .value=${receiver}></div>`;
  }
  return html`<fieldset class="chips" data-field="receiver"><legend><span>${t("floor-panels-switch_first_open_now")}</span></legend><div class="chips__row">
    ${receivers.map((card) => chip("receiver", card.mark, card.name || card.mark, card.mark === receiver))}</div></fieldset>`;
}

/** @param {Date} tappedAt @param {any[]} boxes */
const more = (tappedAt, ...boxes) => html`<details class="more"><summary><strong>${t("floor-more")}</strong> <span class="quiet">${t("floor-panels-another_minute_more_figures")}</span></summary>
  <div class="form">${minuteBox(formatMinute(tappedAt))}${boxes}${remarkBox()}</div></details>`;

/** @param {any} kind @param {string} name */
const has = (kind, name) => kind.fields.some((/** @type {any} */ field) => field.name === name);
