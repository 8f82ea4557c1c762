// @ts-check
/** The pictures of a vessel on its page: this phone's own first, then what the book has, asked for when there is a signal. */
import { ask } from "../../slate/ask.js";
import { all } from "../../slate/queue.js";
import { kindNamed } from "../../kinds/kinds.js";
import { formatAgo } from "../../ui/format.js";
import { wear } from "../../ui/sheet.js";
import { html, nothing, render } from "../../vendor/lit-html/lit-html.js";
import { fillThumbs, thumb } from "./shown.js";
import { t } from "../../words/later.js";

const ASKED_EVERY_MS = 60_000;
const SHOWN = 12;

/** @typedef {{sha256: string, type: string, words: string}} Shown */

/** What the book said last, by the question. @type {Map<string, {at: number, list: Promise<Shown[]>}>} */
const told = new Map();

/** @param {string} question such as `mark=F3-K` @returns {Promise<Shown[]>} none without signal */
export function askBook(question) {
  const last = told.get(question);
  if (last && Date.now() - last.at < ASKED_EVERY_MS) return last.list;
  const list = ask(`/api/enclosures?${question}`).then((answer) => answer.enclosed.map(asShown), () => []);
  told.set(question, { at: Date.now(), list });
  return list;
}

/** @param {any} one @returns {Shown} */
const asShown = (one) => ({
  sha256: one.sha256, type: one.type,
  words: [one.what || (kindNamed(one.kind)?.title ?? t("floor-enclosed-picture")), one.person, formatAgo(one.read_at)].filter(Boolean).join(", "),
});

/** @param {import("../../slate/entry.js").Entry[]} entries of this phone @returns {Shown[]} newest first */
export const ownOf = (entries) => entries.flatMap((entry) => (entry.enclosed ?? []).map((sha256) => ({
  sha256, type: entry.kind === "shift_note" ? "" : "image/jpeg",
  words: [entry.values.what?.raw || (kindNamed(entry.kind)?.title ?? t("floor-enclosed-picture")), entry.person, formatAgo(entry.read_at)].filter(Boolean).join(", "),
})));

/** @param {Shown[]} own @param {Shown[]} book @returns {Shown[]} each once; what the book says of one counts */
export function merged(own, book) {
  const byName = new Map([...own, ...book].map((one) => [one.sha256, one]));
  return [...byName.values()];
}

/** @param {string} mark @returns {Promise<unknown>} a section that fills itself, or nothing */
export async function picturesOf(mark) {
  const kept = await all();
  const own = ownOf(kept.map((one) => one.entry).filter((entry) => entry.mark === mark && entry.enclosed)).filter((one) => one.type);
  const place = document.createElement("section");
  place.setAttribute("aria-label", t("floor-enclosed-pictures"));
  const show = async (/** @type {Shown[]} */ list) => {
    if (list.length) await wear("jobs/enclosed/enclosed.css");
    place.hidden = !list.length;
    render(list.length ? thumbs(list.slice(0, SHOWN)) : nothing, place);
    fillThumbs(place);
  };
  await show(own);
  void askBook(`mark=${encodeURIComponent(mark)}`).then((book) => (book.length ? show(merged(own, book)) : undefined));
  return place;
}

/** @param {Shown[]} list */
export const thumbs = (list) => html`<ul class="thumbs">${list.map((one) => html`<li>${thumb(one.sha256, one.words, one.type || undefined)}</li>`)}</ul>`;
