// @ts-check
/** More of the cut panel: "I switched earlier" keeps both times and the reason; another receiver by its mark. */
import { scanFor } from "../../shell/scanfor.js";
import { judgeMark } from "../../shell/typemark.js";
import { formatMinute, formatTime } from "../../ui/format.js";
import { html, nothing, render } from "../../vendor/lit-html/lit-html.js";
import { t } from "../../words/later.js";

const EARLIER_MIN = [2, 5, 10, 15];

/** @param {Date} tappedAt the minute of the tap stands unless somebody says earlier @param {number} [after] of the cut before this one [ms]: none is offered before it */
export function earlierPart(tappedAt, after = 0) {
  const offered = EARLIER_MIN.filter((minutes) => tappedAt.getTime() - minutes * 60_000 > after);
  const show = (/** @type {Event} */ event) => /** @type {HTMLDetailsElement} */ (event.target).scrollIntoView({ block: "nearest" });
  return html`<details class="more earlier" @toggle=${show}><summary><strong>${t("floor-cutparts-i_switched_earlier")}</strong></summary>
    <div class="stack"><p class="quiet" data-part="earlier-says" role="status"></p><div class="buttons">${offered.map((minutes) => html`<button type="button" class="button" @click=${(/** @type {Event} */ event) => setBack(event, tappedAt, minutes)}>${minutes} min <span class="button__sub">${formatTime(tappedAt.getTime() - minutes * 60_000)}</span></button>`)}</div>
      <div class="field field--words"><label class="field__label" for="earlier-why">${t("floor-cutparts-why_it_is_logged")}</label>
        <textarea class="field__value" id="earlier-why" rows="2" maxlength="500" placeholder=${t("floor-cutparts-hands_full")} @input=${copyReason}></textarea></div>
      <p class="quiet">${t("floor-cutparts-both_times_and_the")}</p></div></details>`;
}

/** The minute stands in the panel's own box, so that it can be set to any other. @param {Event} event @param {Date} tappedAt @param {number} minutes */
function setBack(event, tappedAt, minutes) {
  const form = /** @type {HTMLFormElement} */ (/** @type {HTMLElement} */ (event.target).closest("form"));
  const box = /** @type {HTMLInputElement} */ (form.querySelector("[name=read_at]"));
  const at = new Date(tappedAt.getTime() - minutes * 60_000);
  box.value = formatMinute(at);
  box.dispatchEvent(new Event("input", { bubbles: true }));
  /** @type {HTMLElement} */ (form.querySelector('[data-part="earlier-says"]')).textContent = t("floor-cutparts-switched_logged", { at: formatTime(at), at_2: formatTime(new Date()) });
}

/** @param {Event} event the reason is the entry's remark */
function copyReason(event) {
  const box = /** @type {HTMLTextAreaElement} */ (event.target);
  const remark = /** @type {HTMLTextAreaElement|null} */ (box.form?.querySelector("[name=remark]"));
  if (remark) remark.value = box.value;
}

/** @param {(mark: string) => void} onMark called with a right mark */
export function otherReceiver(onMark) {
  const says = (/** @type {HTMLElement} */ near, /** @type {string} */ words) => render(words ? html`<p class="field__help">${words}</p>` : nothing, /** @type {HTMLElement} */ (near.closest(".other-receiver")?.querySelector('[data-part="mark-says"]')));
  const judge = (/** @type {Event} */ event) => {
    const box = /** @type {HTMLInputElement} */ (event.target);
    const { mark, words } = judgeMark(box.value);
    says(box, mark ? "" : words);
    if (mark) onMark(mark);
  };
  const scan = async (/** @type {Event} */ event) => {
    const button = /** @type {HTMLElement} */ (event.target);
    const mark = await scanFor(t("floor-cutparts-receiver_now_open"));
    if (mark) onMark(mark);
    else says(button, "");
  };
  return html`<details class="more other-receiver"><summary><strong>${t("floor-cutparts-another_receiver")}</strong> <span class="quiet">${t("floor-cutparts-by_its_mark")}</span></summary>
    <div class="stack"><div class="field field--mark"><label class="field__label" for="other-receiver">${t("floor-cutparts-mark")}</label>
      <input class="field__value" id="other-receiver" type="text" maxlength="64" autocomplete="off" autocapitalize="characters" @change=${judge}></div>
      <div data-part="mark-says" aria-live="polite"></div>
      <div class="buttons"><button type="button" class="button" @click=${scan}>${t("floor-scan")}</button></div>
      <p class="quiet">${t("floor-cutparts-a_label_at_the")}</p></div></details>`;
}
