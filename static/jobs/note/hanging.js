// @ts-check
/** Notes that wait for somebody to read or hear them: on their vessel's page, under Today, and in one list of the shift. */
import { notes } from "../../slate/cards.js";
import { all, log } from "../../slate/queue.js";
import { struckBy } from "../../slate/strikes.js";
import { current } from "../../slate/who.js";
import { formatAgo } from "../../ui/format.js";
import { toast } from "../../ui/toast.js";
import { wear } from "../../ui/sheet.js";
import { html, nothing } from "../../vendor/lit-html/lit-html.js";
import { icon } from "../../icons/icons.js";
import { vesselPath } from "../../shell/here.js";
import { t } from "../../words/later.js";

/**
 * @typedef {{entry: string, mark: string, person: string, at: string, text: string, heard: string, heard_at: string, enclosed: {sha256: string, type: string}[], isWaiting?: boolean}} Note
 */

const HEARD = "note_heard";
/** A book of an earlier version hears nothing of it: there a note hangs over a weekend. */
const OLD_MS = 3 * 86_400_000;

/** @returns {Promise<Note[]>} the book's notes with this phone's own, newest first; what was heard on this phone is heard */
export async function allNotes() {
  const [told, kept] = await Promise.all([notes(), all()]);
  const entries = kept.filter((one) => one.state !== "refused" && one.state !== "clash").map((one) => one.entry);
  const struck = struckBy(entries);
  const heard = new Map(entries.filter((one) => one.kind === HEARD && !struck.has(one.id)).map((one) => [one.values.note?.raw, one]));
  const known = new Set(told.map((/** @type {Note} */ one) => one.entry));
  const own = kept.filter(({ state, entry }) => state === "waiting" && entry.kind === "shift_note" && !known.has(entry.id)).map(({ entry }) => asNote(entry));
  return [...own, ...told].filter((one) => !struck.has(one.entry)).map((one) => {
    const by = heard.get(one.entry);
    const old = one.heard === undefined ? (Date.now() - Date.parse(one.at) > OLD_MS ? "–" : "") : one.heard;
    return { ...one, enclosed: one.enclosed ?? [], heard: old || by?.person || "", heard_at: one.heard_at || by?.read_at || "" };
  });
}

/** @param {import("../../slate/entry.js").Entry} entry @returns {Note} */
const asNote = (entry) => ({
  entry: entry.id, mark: entry.mark, person: entry.person, at: new Date(entry.read_at).toISOString(), text: entry.values.text?.raw ?? "",
  heard: "", heard_at: "", enclosed: (entry.enclosed ?? []).map((sha256) => ({ sha256, type: "" })), isWaiting: true,
});

/** @param {string} mark @returns {Promise<Note[]>} what hangs on a vessel */
export const hangingOn = async (mark) => (await allNotes()).filter((one) => one.mark === mark && !one.heard);

/** @param {Note} note */
export async function hear(note) {
  const who = await current();
  if (!who) return location.assign(`/who?then=${encodeURIComponent(location.pathname + location.search)}`);
  try {
    await log({ kind: HEARD, kind_version: 1, mark: note.mark, mark_by: note.mark ? "picked" : "", person: who.code, role: who.role, values: { note: { raw: note.entry } } });
  } catch (error) {
    toast(/** @type {any} */ (error)?.message ?? String(error), 12_000);
  }
}

/** @param {Note} note @param {{isListed?: boolean}} [how] listed: with the vessel it hangs on */
export function noteBand(note, { isListed = false } = {}) {
  const sound = note.enclosed.length > 0;
  return html`<div class="band band--note hanging" data-note=${note.entry}><p>${icon("pen")} ${isListed && note.mark ? html`<a href=${vesselPath(note.mark)}>${note.mark}</a> ` : nothing}<span class="hanging__text">${note.text}</span>
      <span class="quiet">${note.person}, ${formatAgo(note.at)}${note.heard && note.heard !== "–" ? html` · ${t(note.enclosed.length ? "floor-note-heard_by" : "floor-note-read_by", { person: note.heard })}` : nothing}</span></p>
    ${sound || !note.heard ? html`<div class="band__offers">
      ${note.enclosed.map((one, at) => html`<button type="button" class="button" @click=${() => void openOne(one, at)}>${one.type.startsWith("image/") ? t("floor-note-look") : t("floor-note-listen")}</button>`)}
      ${note.heard ? nothing : html`<button type="button" class="button" @click=${() => void hear(note)}>${sound ? t("floor-note-heard") : t("floor-note-read")}</button>`}</div>` : nothing}</div>`;
}

/** @param {{sha256: string, type: string}} one @param {number} at */
async function openOne(one, at) {
  const [{ open }, { about }] = await Promise.all([import("../enclosed/shown.js"), import("../../slate/enclosures.js"), wear("jobs/enclosed/enclosed.css")]);
  const type = one.type || (await about(one.sha256))?.type || "";
  await open(one.sha256, type.startsWith("audio/") ? t("floor-note-voice_note") : t("floor-enclosed-picture_number", { number: at + 1 }), type);
}

/** Under Today: how many hang unheard, and the way to all of them. */
export async function notesDue() {
  const open = (await allNotes()).filter((one) => !one.heard && one.mark);
  if (!open.length) return nothing;
  return html`<section data-due="notes"><h2 class="row row--apart"><span>${t("floor-note-notes_to_read")} <span class="quiet">${open.length}</span></span><a class="button" href="/job/notes">${t("floor-note-read_them")}</a></h2></section>`;
}
