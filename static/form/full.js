// @ts-check
/** Nothing could be kept: the figures stay in the form, and may leave the phone as a file. */
import { html, nothing, render } from "../vendor/lit-html/lit-html.js";
import { icon } from "../icons/icons.js";
import { SlateFull } from "../slate/db.js";

/** @param {HTMLElement} place @param {any} error */
export function showFull(place, error) {
  const words = error?.message || "The phone could not keep this. The figures stay here; log it again.";
  const isFull = error instanceof SlateFull;
  render(html`<section class="band band--stop" role="alert">
    <p><span class="band__lead">${icon("stop")} Not on the slate.</span> ${words} The figures stay in this form.</p>
    ${isFull ? html`<div class="band__offers"><button type="button" class="button" @click=${() => giveFileOfSlate()}>Save the slate to a file</button></div>` : nothing}
  </section>`, place);
  place.scrollIntoView({ block: "nearest" });
}

async function giveFileOfSlate() {
  const { giveFile, saveSlate } = await import("../slate/file.js");
  await giveFile(await saveSlate());
}
