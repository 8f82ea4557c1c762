// @ts-check
/** Nothing could be kept: the figures stay in the form, and may leave the phone as a file. */
import { html, nothing, render } from "../vendor/lit-html/lit-html.js";
import { icon } from "../icons/icons.js";
import { SlateFull } from "../slate/db.js";
import { t } from "../words/t.js";

/** @param {HTMLElement} place @param {any} error */
export function showFull(place, error) {
  const words = error?.message || t("floor-full-the_phone_could_not");
  const isFull = error instanceof SlateFull;
  render(html`<section class="band band--stop" role="alert">
    <p><span class="band__lead">${icon("stop")} ${t("floor-full-not_on_the_slate")}</span> ${t("floor-full-the_figures_stay_in", { words })}</p>
    ${isFull ? html`<div class="band__offers"><button type="button" class="button" @click=${() => giveFileOfSlate()}>${t("floor-save_the_slate_to")}</button></div>` : nothing}
  </section>`, place);
  place.scrollIntoView({ block: "nearest" });
}

async function giveFileOfSlate() {
  const { giveFile, saveSlate } = await import("../slate/file.js");
  await giveFile(await saveSlate());
}
