// @ts-check
/** A line that was logged, opened: what it says, and how it is put right or taken back. */
import { kindNamed } from "../kinds/kinds.js";
import { shown } from "../kinds/rules.js";
import { readEntry } from "../kinds/read.js";
import { all, get } from "../slate/queue.js";
import { struckBy } from "../slate/strikes.js";
import { mayTakeBack, takeBack } from "../slate/takeback.js";
import { current } from "../slate/who.js";
import { formatAgo, formatTime, inOwnMark } from "../ui/format.js";
import { toast } from "../ui/toast.js";
import { html, nothing, render } from "../vendor/lit-html/lit-html.js";
import { icon } from "../icons/icons.js";
import { logPath } from "./here.js";
import { t } from "../words/t.js";

const WHY = () => [t("floor-mistyped"), t("floor-misread"), t("floor-linesheet-wrong_vessel"), t("floor-linesheet-logged_twice")];
/** A line whose mark and kind no form of the floor draws is put right at the desk. */
const NO_FORM = new Set(["answer", "enclosure", "note_heard"]);

/** @typedef {{entry: string, mark: string, kind: string, at: string, person?: string, summary?: string}} Line */

/** The button that opens a line. @param {Line} line */
export function penOf(line) {
  const name = t("floor-linesheet-open_put_it_right", { kind: kindNamed(line.kind)?.title ?? line.kind, line: formatTime(line.at) });
  return html`<button type="button" class="list__pen" aria-label=${name} @click=${() => void openLine(line)}>${icon("pen")}</button>`;
}

/** @param {Line} line */
export async function openLine(line) {
  const opener = document.activeElement;
  const [kept, every] = await Promise.all([get(line.entry), all()]);
  const mayStrike = await mayTakeBack(line.entry, struckBy(every.map((one) => one.entry)));
  const dialog = document.createElement("dialog");
  dialog.className = "dialog";
  dialog.setAttribute("aria-labelledby", "line-title");
  document.body.append(dialog);
  dialog.addEventListener("close", () => {
    dialog.remove();
    if (opener instanceof HTMLElement && opener.isConnected) opener.focus();
  });
  const leave = () => dialog.close();
  const strike = async (/** @type {string} */ why) => {
    leave();
    await strikeLine(line.entry, why);
  };
  const show = (/** @type {boolean} */ isAsking) => render(html`<h2 id="line-title">${kindNamed(line.kind)?.title ?? line.kind} <span class="quiet">${whenWords(line.at)}${line.person ? ` · ${line.person}` : ""}</span></h2>
    ${figuresOf(kept?.entry, line)}
    ${isAsking ? why(strike, leave) : html`<div class="dialog__answers">
      ${NO_FORM.has(line.kind) ? nothing : html`<a class="button button--main" href="${logPath(line.mark, line.kind)}?${kept ? "fix" : "amends"}=${line.entry}">${t("floor-put_it_right")}</a>`}
      ${mayStrike ? html`<button type="button" class="button" @click=${() => show(true)}>${t("floor-take_it_back")}</button>` : nothing}
      <button type="button" class="button button--plain" @click=${leave}>${t("floor-leave_it")}</button></div>`}`, dialog);
  show(false);
  dialog.showModal();
  dialog.dispatchEvent(new CustomEvent("line", { bubbles: true, detail: { line, entry: kept?.entry } }));
}

/** @param {(why: string) => void} strike @param {() => void} leave */
const why = (strike, leave) => html`<p>${t("floor-linesheet-why_it_stays_legible")}</p><div class="dialog__answers">
  ${WHY().map((words) => html`<button type="button" class="button" @click=${() => strike(words)}>${words}</button>`)}
  <button type="button" class="button button--plain" @click=${leave}>${t("floor-leave_it")}</button></div>`;

/** @param {string} id @param {string} why */
async function strikeLine(id, why) {
  const who = await current();
  try {
    await takeBack(id, { code: who?.code ?? "", role: who?.role ?? "" }, why);
    toast(t("floor-taken_back_it_stays"));
  } catch (error) {
    toast(/** @type {any} */ (error)?.message ?? t("floor-linesheet-that_could_not_be"), 12_000);
  }
}

/** What was typed, box by box; of somebody else's line this phone has its words only. @param {import("../slate/entry.js").Entry|undefined} entry @param {Line} line */
function figuresOf(entry, line) {
  const kind = entry && kindNamed(entry.kind);
  if (!entry || !kind) return line.summary ? html`<p>${inOwnMark(line.summary)}</p>` : nothing;
  const read = readEntry(kind, entry, {});
  const typed = kind.fields.filter((field) => entry.values[field.name]?.raw);
  return html`<dl class="typed">${typed.map((field) => html`<div><dt>${field.label}</dt><dd>${inOwnMark(shown(field.name, read))}</dd></div>`)}
    ${entry.remark ? html`<div><dt>${t("floor-remark_2")}</dt><dd>${entry.remark}</dd></div>` : nothing}</dl>`;
}

/** @param {string} at */
const whenWords = (at) => (formatAgo(at) === formatTime(at) ? formatTime(at) : `${formatAgo(at)}, ${formatTime(at)}`);
