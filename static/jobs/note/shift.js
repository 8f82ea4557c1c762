// @ts-check
/** The shift's notes in one page: what nobody has read yet, then the rest of the last days. */
import { setHead } from "../../shell/frame.js";
import { onCards } from "../../slate/cards.js";
import { onChange } from "../../slate/queue.js";
import { wear } from "../../ui/sheet.js";
import { html, nothing, render } from "../../vendor/lit-html/lit-html.js";
import { allNotes, noteBand } from "./hanging.js";
import { t } from "../../words/later.js";

export async function start() {
  await wear("jobs/note/note.css");
  onChange(() => void show());
  onCards(() => void show());
  await show();
}

async function show() {
  const body = /** @type {HTMLElement} */ (document.querySelector('[data-part="body"]'));
  setHead({ mark: t("floor-note-notes"), first: t("floor-note-for_the_next_shift"), back: "/today" });
  const all = await allNotes();
  const open = all.filter((one) => !one.heard);
  const rest = all.filter((one) => one.heard);
  render(html`<div class="stack">
    ${open.length ? html`<section class="stack"><h2>${t("floor-note-not_read_yet")}</h2>${open.map((one) => noteBand(one, { isListed: true }))}</section>` : html`<p class="quiet">${t("floor-note-all_read")}</p>`}
    ${rest.length ? html`<section class="stack"><h2>${t("floor-note-have_been_read")}</h2>${rest.map((one) => noteBand(one, { isListed: true }))}</section>` : nothing}</div>
    <div class="thumb"><a class="button button--main button--action" href="/log/shift_note">${t("floor-note-leave_a_note")}</a></div>`, body);
}
