// @ts-check
/** One entry of the slate, in words: what it is, how it stands, why, and what to do. */
import { readEntry, summary } from "../kinds/read.js";
import { badge } from "../ui/badge.js";
import { formatAgo, formatNumber, formatTime } from "../ui/format.js";
import { html, nothing } from "../vendor/lit-html/lit-html.js";
import { logPath } from "./here.js";
import { penOf } from "./linesheet.js";
import { t } from "../words/t.js";

/**
 * @param {any} kept @param {Map<string, any>} byName
 * @param {{onSeen: () => void, onAgain: () => void, isStruck: boolean}} answers
 */
export function lineOf(kept, byName, { onSeen, onAgain, isStruck }) {
  const { entry } = kept;
  const kind = byName.get(entry.kind);
  const when = formatAgo(entry.read_at) === formatTime(entry.read_at) ? formatTime(entry.read_at) : formatAgo(entry.read_at);
  const what = html`${kind?.title ?? entry.kind} <span class="quiet">${kind ? shortOf(kind, entry) : ""}</span>`;
  const canOpen = kept.state !== "refused" && kept.state !== "clash" && !isStruck;
  return html`<li data-entry=${entry.id} data-state=${kept.state}><span class="list__mark">${entry.mark || "–"}</span>
    <span class="list__what">${isStruck ? html`<s>${what}</s> ${t("floor-slatelines-taken_back")}` : what}</span>
    <span class="list__end">${kept.state === "waiting" ? when : stateBadge(kept)}${canOpen ? penOf({ entry: entry.id, mark: entry.mark, kind: entry.kind, at: entry.read_at, person: entry.person }) : nothing}</span>
    ${words(kept).map((line) => html`<p class="list__why">${line}</p>`)}
    ${answers(kept, onSeen, onAgain)}</li>`;
}

/** @param {any} kind @param {any} entry */
function shortOf(kind, entry) {
  const words = summary(readEntry(kind, entry, {}));
  return words.length > 60 ? `${words.slice(0, 59)}…` : words;
}

/** @param {any} kept */
function stateBadge(kept) {
  if (kept.state === "refused") return badge("stop", t("floor-slatelines-refused"));
  if (kept.state === "clash") return badge("stop", t("floor-slatelines-clash"));
  if (kept.state === "queried") {
    const weights = (kept.receipt?.queries ?? []).map((/** @type {any} */ query) => query.weight);
    return badge(weights.includes("stop") ? "stop" : weights.includes("ask") ? "ask" : "note");
  }
  return badge("entered"); // "known" too: the book had it already, which is the same to whoever logged it
}

/** @param {any} kept @returns {string[]} */
function words(kept) {
  if (kept.state === "clash") return [t("floor-slatelines-the_book_has_another")];
  if (kept.state === "queried") return (kept.receipt?.queries ?? []).map((/** @type {any} */ query) => query.words);
  if (kept.state === "refused") return [kept.words || t("floor-slatelines-the_book_cannot_read")];
  if (kept.state === "waiting") return kept.words ? [kept.words] : [];
  return kept.receipt?.book_no ? [t("floor-slatelines-book_no", { book_no: kept.receipt.book_no })] : [];
}

/** @param {any} kept @param {() => void} onSeen @param {() => void} onAgain */
function answers(kept, onSeen, onAgain) {
  if (kept.seen || !["refused", "clash", "queried"].includes(kept.state)) return nothing;
  const { entry } = kept;
  if (kept.state === "queried" && !(kept.receipt?.queries ?? []).some((/** @type {any} */ query) => query.weight !== "note")) return nothing;
  const open = kept.state === "clash" ? nothing : html`<a class="button" href="${logPath(entry.mark, entry.kind)}?fix=${entry.id}">${t("floor-put_it_right")}</a>`;
  return html`<div class="list__answers list__answers--wide">${open}
    ${kept.state === "refused" ? html`<button type="button" class="button" @click=${onAgain}>${t("floor-slatelines-hand_in_again")}</button>` : nothing}
    <button type="button" class="button button--plain" @click=${onSeen}>${t("floor-slatelines-i_have_read_it")}</button></div>`;
}
