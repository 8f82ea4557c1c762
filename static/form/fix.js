// @ts-check
/** A form that puts an entry right: one that the book refused, or one in the book, which stays legible beside the new one. */
import { localStamp } from "../slate/entry.js";
import { get, markSeen } from "../slate/queue.js";
import { formatAgo, formatMinute, formatTime } from "../ui/format.js";
import { html, render } from "../vendor/lit-html/lit-html.js";
import { choiceRow } from "../shell/choices.js";
import { fillIn } from "./values.js";
import { t } from "../words/t.js";

/** @returns {[string, string][]} */
const REASONS = () => [["mistyped", t("floor-mistyped")], ["misread", t("floor-misread")], ["put right", t("floor-fix-something_else")]];

/** @typedef {{id: string, minute: string, about: {amends?: string, reason?: string, read_at?: string}}} Fix `minute`: as the form's box says the time of the reading */

/**
 * @param {HTMLFormElement} form @param {any} card or null
 * @returns {Promise<Fix|null>} null where the address names no entry to put right
 */
export async function beginWith(form, card) {
  const asked = new URLSearchParams(location.search);
  const id = asked.get("fix") ?? asked.get("amends");
  const kept = id ? await get(id) : undefined;
  const line = card?.recent.find((/** @type {any} */ one) => one.entry === id);
  const at = kept?.entry.read_at ?? line?.at;
  // What waits goes to the book too, before this one; only what the book turned away is not there to be replaced.
  const isInTheBook = kept ? kept.state !== "refused" && kept.state !== "clash" : asked.has("amends");
  if (!id || (!kept && !isInTheBook)) return null;
  if (kept) fillIn(form, { ...kept.entry.values, remark: { raw: kept.entry.remark } });
  const minute = at ? formatMinute(new Date(at)) : "";
  if (at) fillIn(form, { read_at: { raw: minute } });
  /** @type {Fix} */
  const fix = { id, minute, about: { ...(at ? { read_at: kept?.entry.read_at ?? localStamp(new Date(at)) } : {}), ...(isInTheBook ? { amends: id, reason: REASONS()[0][0] } : {}) } };
  if (isInTheBook) sayWhatItReplaces(form, fix, at, Boolean(kept));
  return fix;
}

/** @param {HTMLFormElement} form @param {Fix} fix @param {string|undefined} at @param {boolean} isFilledIn */
function sayWhatItReplaces(form, fix, at, isFilledIn) {
  const place = document.createElement("div");
  place.className = "stack";
  form.prepend(place);
  const day = at ? formatAgo(at) : "";
  const when = !at ? "" : day === formatTime(at) ? t("floor-fix-of", { day }) : t("floor-fix-of_2", { day, at: formatTime(at) });
  render(html`<p class="band band--note"><span>${t("floor-fix-this_replaces_the_entry", { when, rest: isFilledIn ? "" : t("floor-fix-type_all_of_it") })}</span></p>
    ${choiceRow(t("floor-fix-what_was_wrong"), "reason_for_change", REASONS(), fix.about.reason ?? "", (value) => { fix.about.reason = value; })}`, place);
}

/** Mark the entry that the form began with as dealt with. @param {Fix|null} fix */
export async function doneWith(fix) {
  if (fix && (await get(fix.id))) await markSeen(fix.id);
}
