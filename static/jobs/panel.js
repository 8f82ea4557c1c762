// @ts-check
/** The panel under the thumb on a job's page: its parts by name, the minute of the tap, the one button, and the way out. */
import { localStamp } from "../slate/entry.js";
import { html, nothing, render } from "../vendor/lit-html/lit-html.js";
import { readAt } from "../form/extras.js";
import { markBy } from "../shell/here.js";
import { t } from "../words/later.js";

/** @param {string} name @returns {HTMLElement} */
export const part = (name) => /** @type {HTMLElement} */ (document.querySelector(`[data-part="${name}"]`));

/** @returns {string} the mark that the address names, upper case; "" where it names none */
export const markAsked = () => new URLSearchParams(location.search).get("mark")?.toUpperCase() ?? "";

/**
 * What else the entry carries. The tap's own second stands unless somebody sets another minute.
 * @param {HTMLFormElement} form as just drawn @param {string} mark
 * @returns {() => Record<string, any>}
 */
export function aboutTap(form, mark) {
  const tappedAt = new Date();
  const opened = box(form, "read_at")?.value;
  return () => ({
    mark, mark_by: markBy(mark), read_at: box(form, "read_at")?.value === opened ? localStamp(tappedAt) : readAt(form),
    remark: box(form, "remark")?.value.trim() ?? "",
  });
}

/** @param {ParentNode} form @param {string} name @returns {HTMLInputElement|null} */
export const box = (form, name) => form.querySelector(`[name="${name}"]`);

/** One button under the panel's form. @param {HTMLFormElement} form */
export function showLogButton(form) {
  render(html`<button type="button" class="button button--main button--action" @click=${() => form.requestSubmit()}>${t("floor-log_it")}</button>`, part("doing"));
  document.documentElement.dataset.panel = form.dataset.kind;
}

/** @returns {HTMLElement|null} the button that logs, while a panel is open */
export const logButton = () => part("doing").querySelector(".button--action");

/** Take the panel away, and the keypad with it. @param {{close(): void}|null} entryForm */
export function clearPanel(entryForm) {
  entryForm?.close();
  delete document.documentElement.dataset.panel;
  render(nothing, part("panel"));
  /** @type {HTMLElement} */ (document.querySelector("slate-keypad")).hidden = true;
}
