// @ts-check
/** Under a line that was logged: its pictures, and one more. That is an entry of its own, which names the line's. */
import { canEnclose, keep } from "../../slate/enclosures.js";
import { all, log } from "../../slate/queue.js";
import { current } from "../../slate/who.js";
import { wear } from "../../ui/sheet.js";
import { toast } from "../../ui/toast.js";
import { html, nothing, render } from "../../vendor/lit-html/lit-html.js";
import { icon } from "../../icons/icons.js";
import { fillThumbs } from "./shown.js";
import { shrink } from "./shrink.js";
import { askBook, merged, ownOf, thumbs } from "./strip.js";
import { t } from "../../words/later.js";

const ADDED = "enclosure";

/** @param {HTMLDialogElement} dialog @param {import("../../shell/linesheet.js").Line} line @param {import("../../slate/entry.js").Entry|undefined} entry where this phone has it */
export async function dressLine(dialog, line, entry) {
  if (!canEnclose()) return;
  const [kept] = await Promise.all([all(), wear("jobs/enclosed/enclosed.css")]);
  const added = kept.map((one) => one.entry).filter((one) => one.kind === ADDED && one.values.entry?.raw === line.entry);
  let list = ownOf([...(entry ? [entry] : []), ...added]);
  const place = document.createElement("div");
  place.className = "enclose enclose--line";
  dialog.append(place);
  const show = () => {
    render(html`${list.length ? thumbs(list) : nothing}
      ${line.kind === ADDED ? nothing : html`<label class="button enclose__add">${icon("plus")} ${t("floor-enclosed-picture")}
        <input class="hidden-text" type="file" accept="image/*" capture="environment" @change=${take}></label>`}`, place);
    fillThumbs(place);
  };
  const take = async (/** @type {Event} */ event) => {
    const input = /** @type {HTMLInputElement} */ (event.target);
    const file = input.files?.[0];
    input.value = "";
    if (!file) return;
    try {
      const { sha256 } = await keep(await shrink(file));
      const who = await current();
      const { entry: made } = await log({
        kind: ADDED, kind_version: 1, mark: line.mark, mark_by: line.mark ? "picked" : "", person: who?.code ?? "", role: who?.role ?? "",
        values: { entry: { raw: line.entry } }, enclosed: [sha256],
      });
      list = merged(list, ownOf([made]));
      show();
      toast(t("floor-enclosed-on_the_slate"));
    } catch (error) {
      toast(/** @type {any} */ (error)?.message ?? String(error), 12_000);
    }
  };
  show();
  const book = await askBook(`entry=${line.entry}`);
  if (book.length && dialog.isConnected) {
    list = merged(list, book);
    show();
  }
}
