// @ts-check
/** Scan one mark for a box of a form, in a dialog over it. */
import { openDialog } from "../ui/dialog.js";
import { html, render } from "../vendor/lit-html/lit-html.js";
import { t } from "../words/t.js";

/** @param {string} label @returns {Promise<string>} the mark, or "" when it was left */
export async function scanFor(label) {
  const dialog = document.createElement("dialog");
  dialog.className = "dialog";
  dialog.setAttribute("aria-label", t("floor-scanfor-scan", { label }));
  render(html`<h2>${label}</h2><div class="finder"><video class="finder__picture" playsinline muted aria-label=${t("floor-scanfor-what_the_camera_sees")}></video><span class="finder__frame" aria-hidden="true"></span></div>
    <p class="finder__says" role="status"></p><form method="dialog"><button class="button button--action">${t("floor-scanfor-back_to_the_form")}</button></form>`, dialog);
  document.body.append(dialog);
  const video = /** @type {HTMLVideoElement} */ (dialog.querySelector("video"));
  const says = /** @type {HTMLElement} */ (dialog.querySelector(".finder__says"));
  const closed = openDialog(dialog);
  const tell = (/** @type {string} */ words) => { says.textContent = words; };
  const { startScan } = await import("../scan/scanner.js"); // not before it is wanted
  const scan = await startScan(video, { onMark: (mark) => dialog.close(mark), onForeign: tell, onStatus: tell }).catch(() => null);
  const mark = await closed;
  scan?.stop();
  dialog.remove();
  return mark;
}
