// @ts-check
/**
 * The run at arm's length: figure, countdown and one cut, to be read from two metres. The countdown is a band: solid until the cut may
 * come, hatched while it is in doubt, one stroke for the best guess. On a phone laid on its side the curve runs into it.
 */
import { lastReading, nextStep, partName, partWords, runTitle } from "./state.js";
import { inUnits, shownInUnits, strengthShown } from "../../shell/inunits.js";
import { formatDuration, formatNumber, formatTime } from "../../ui/format.js";
import { html, nothing, svg } from "../../vendor/lit-html/lit-html.js";
import { isDue, leftWords, whenWords } from "../timers/times.js";
import { between, collectedAt } from "./collect.js";
import { isAlone } from "./due.js";
import { t } from "../../words/later.js";

const KEPT = "run-far:";
const MINUTE_MS = 60_000;
/** A figure older than this says its age. */
const OLD_MS = 15 * MINUTE_MS;
/** Two labels under the band want so much of its width. */
const LABEL_SHARE = 0.2;
const PAST_LEAST_MS = 20 * MINUTE_MS;

/**
 * @typedef {{run: any, name: string, stream: import("./collect.js").Stream, due: import("./due.js").Due|null, target: import("./due.js").Target|null, open: any, timer: import("../timers/times.js").Timer|undefined, nameOf: (mark: string) => string, now: number}} Seen
 * @typedef {{onCut: () => void, onReading: () => void, onClose: () => void}} Answers
 * @typedef {{state: "none"|"little"|"later"|"open"|"over"|"past", at: number, low: number, high: number}} Stand [ms]
 */

/** @param {string} mark of the still */
export const isFar = (mark) => localStorage.getItem(KEPT + mark) === "on";

/** It outlives a reload: a phone that hangs on the pillar may be restarted. @param {string} mark @param {boolean} on */
export function setFar(mark, on) {
  if (on) localStorage.setItem(KEPT + mark, "on");
  else localStorage.removeItem(KEPT + mark);
}

/** @param {() => void} onTap */
export const farChip = (onTap) => html`<button type="button" class="glance__one" data-far-in @click=${onTap}><strong>${t("floor-far-large")}</strong><span class="glance__sub">${t("floor-far-for_two_metres")}</span></button>`;

/** @param {import("./due.js").Due|null} due @param {import("./collect.js").Stream} stream @param {number} now @returns {Stand} */
export function standOf(due, stream, now) {
  const none = { at: NaN, low: NaN, high: NaN };
  if (!due) return { state: "none", ...none };
  if (due.state === "too_little") return { state: "little", ...none };
  if (due.state === "past") return { state: "past", ...none };
  const [at, low, high] = [due.minutes.at, due.minutes.low, due.minutes.high].map((minutes) => stream.zero + minutes * MINUTE_MS);
  return { state: now < low ? "later" : now <= high ? "open" : "over", at, low, high };
}

/** @param {Seen} seen @param {Answers} answers */
export function farSheet(seen, { onCut, onReading, onClose }) {
  const { run, name, timer, now, due, stream } = seen;
  const [last, step, stand] = [lastReading(run), nextStep(run), standOf(due, stream, now)];
  const isOpen = ["open", "over", "past"].includes(stand.state);
  const strength = last && strengthShown(last.true_strength);
  const figure = strength ? strength.figure : "–";
  const to = step.to && run.receivers?.[step.to];
  return html`<section class="far ${isOpen ? "far--open" : ""}" aria-label=${t("floor-far-the_run_at_arms")} @keydown=${(/** @type {KeyboardEvent} */ event) => event.key === "Escape" && onClose()}>
    <header class="far__head"><h1>${name} <span class="quiet">${run.what || runTitle(run)}</span></h1>
      <button type="button" class="button ${timer && isDue(timer, now) ? "button--main" : ""}" @click=${onReading}>${t("floor-reading")}</button><button type="button" class="button" data-far-out @click=${onClose}>${t("floor-far-close")}</button></header>
    <div class="far__side"><div class="far__read"><p class="far__figure ${figure.length > 4 ? "far__figure--long" : ""}" data-far-figure>${figure}</p>
      <p class="far__row"><span>${strength ? t("floor-far-true", { sign: strength.sign }) : t("floor-far-no_strength_yet")}</span> <span class="quiet">${last ? `${formatTime(last.at)}${now - Date.parse(last.at) > OLD_MS ? t("floor-far-ago", { last: formatDuration((now - Date.parse(last.at)) / 1000) }) : ""}` : ""}</span></p></div>
      ${picture(seen, stand)}</div>
    <div class="far__side">${countdown(seen, stand)}
      <div class="far__words">${words(seen, stand)}${timer ? html`<p class=${isDue(timer, now) ? "far__ask" : "quiet"}>${t("floor-far-next_reading", { at: whenWords(timer, now), at_2: leftWords(timer, now) })}</p>` : nothing}</div>
      <p class="hidden-text" role="status">${isOpen ? `${step.words}: ${stand.state === "open" ? t("floor-far-any_minute") : stand.state === "past" ? t("floor-far-reached") : t("floor-far-expected_before_now")}.` : ""}</p>
      <button type="button" class="cut cut--due far__cut" @click=${onCut}>${step.words} <span class="cut__sub">${isOpen && to ? t("floor-far-turn_to", { to: seen.nameOf(to) }) : t("floor-nose_first_2")}</span></button></div></section>`;
}

/** @param {Seen} seen @param {Stand} stand */
function countdown({ run, now }, { state, at }) {
  const step = nextStep(run);
  const what = step.to ? partName(step.to) : t("floor-far-the_end");
  const [lead, big, unit] = state === "later" ? [t("floor-far-in", { what }), ...span(at - now)] : state === "open" ? [what, t("floor-far-any"), t("floor-far-minute")] : state === "past" ? [what, t("floor-now"), ""] : state === "over" ? [what, t("floor-read"), t("floor-now")] : ["", "", ""];
  return big ? html`<p class="far__row far__count"><span>${lead}</span> <span class="far__minutes" data-far-count>${big}${unit ? html`<small> ${unit}</small>` : nothing}</span></p>` : nothing;
}

/** "42 min", "1:45 h" @param {number} ms @returns {[string, string]} */
function span(ms) {
  const minutes = Math.max(1, Math.round(ms / MINUTE_MS));
  return minutes < 100 ? [String(minutes), "min"] : [`${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`, "h"];
}

/** @param {Seen} seen @param {Stand} stand */
function words({ run, due, target, stream, open }, { state, at, low, high }) {
  const first = firstWords(due, target, state, at, low, high);
  return html`<p>${first}</p>${open ? html`<p class="quiet">${partWords(run)} ${ofAll(due, stream, open)}</p>` : nothing}`;
}

/** @param {import("./due.js").Due|null} due @param {import("./due.js").Target|null} target @param {Stand["state"]} state @param {number} at @param {number} low @param {number} high @returns {string} */
function firstWords(due, target, state, at, low, high) {
  if (state === "none") return t("floor-far-no_plan_and_no");
  if (state === "past") return t("floor-far-is_reached", { words: target?.words });
  if (due?.state === "too_little") return due.words;
  if (state === "over") return t("floor-far-was_expected", { at: formatTime(at) });
  return state === "later" ? t("floor-far-between_and", { low: formatTime(low), high: formatTime(high) }) : t("floor-far-open_to", { low: formatTime(low), high: formatTime(high) });
}

/** "28.1 of about 34 L" @param {import("./due.js").Due|null} due @param {import("./collect.js").Stream} stream @param {any} open */
function ofAll(due, stream, open) {
  if (due?.state !== "due") return shownInUnits(open.litres, "L", 1);
  const all = open.litres + Math.max(0, due.collected_l.at - collectedAt(stream, open.until).litres);
  return t("floor-far-of_about", { litres: formatNumber(inUnits(open.litres, "L").value, 1), all: shownInUnits(all, "L", 0) });
}

/** @param {Seen} seen @param {Stand} stand */
function picture(seen, stand) {
  const { stream, now, due, target } = seen;
  const hasBand = Number.isFinite(stand.at);
  const isWide = matchMedia("(orientation: landscape)").matches;
  const end = hasBand ? Math.max(stand.high, now + MINUTE_MS) : now + 5 * MINUTE_MS;
  const strengths = stream.lines.filter((line) => line.strength !== null);
  const back = !hasBand ? stream.zero : isWide ? Math.min(now - Math.max((end - now) * 0.8, PAST_LEAST_MS), (strengths.at(-1)?.at ?? now) - 2 * MINUTE_MS) : now;
  const isInBand = stand.state === "open" || stand.state === "over"; // then the stroke of now moves through it
  const begin = isInBand && !isWide ? stand.low : Math.max(back, Math.min(stream.zero, now - MINUTE_MS));
  const share = (/** @type {number} */ at) => Math.min(1, Math.max(0, (at - begin) / (end - begin)));
  const x = (/** @type {number} */ at) => `${(share(at) * 100).toFixed(2)}%`;
  const width = (/** @type {number} */ from, /** @type {number} */ to) => `${((share(to) - share(from)) * 100).toFixed(2)}%`;
  const read = strengths.map((line) => [line.at, /** @type {number} */ (line.strength)]);
  const ahead = due?.state === "due" ? due.curve.map(([minutes, pct]) => [stream.zero + minutes * MINUTE_MS, pct]) : [];
  const isDrawn = begin < now && (isWide || !hasBand);
  if (!hasBand && read.length < 2) return html`<div class="far__picture"></div>`;
  return html`<div class="far__picture"><svg class="far__band" aria-hidden="true"><defs><pattern id="far-hatch" width="11" height="11" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line class="far__hatch" x1="0" x2="0" y1="0" y2="11"></line></pattern></defs>
      ${hasBand ? svg`<rect class="far__wait" x=${x(now)} width=${width(now, Math.max(now, stand.low))} y="4%" height="92%"></rect>
      <rect class="far__doubt" x=${x(stand.low)} width=${width(stand.low, stand.high)} y="4%" height="92%" rx="6"></rect>` : nothing}
      ${isDrawn ? curve(read, ahead, target?.pct ?? null, begin, share) : nothing}
      ${hasBand ? svg`<line class="far__guess" x1=${x(stand.at)} x2=${x(stand.at)} y1="0" y2="100%"></line>` : nothing}
      <line class="far__now" x1=${x(now)} x2=${x(now)} y1="4%" y2="96%"></line></svg>
    <svg class="far__labels" aria-hidden="true">${hasBand ? label(share(stand.at), formatTime(stand.at), "far__label--guess") : nothing}
      ${!hasBand || Math.abs(share(stand.at) - share(now)) > LABEL_SHARE ? label(share(now), t("floor-now"), "") : nothing}
      ${isDrawn && share(now) > 2 * LABEL_SHARE ? label(0, formatTime(begin), "far__label--past") : nothing}</svg>
    ${due && isAlone(due) ? html`<p class="far__alone quiet">${t("floor-far-without_earlier_runs")}</p>` : nothing}</div>`;
}

/** @param {number} share @param {string} text @param {string} more */
function label(share, text, more) {
  const anchor = share < 0.1 ? "start" : share > 0.9 ? "end" : "middle";
  return svg`<text class="far__label ${more}" x="${(share * 100).toFixed(2)}%" y="80%" text-anchor=${anchor}>${text}</text>`;
}

/** What was read, solid; what is expected, dotted; where it is to go, across. @param {number[][]} read @param {number[][]} ahead @param {number|null} target @param {number} begin [ms] @param {(at: number) => number} share */
function curve(read, ahead, target, begin, share) {
  const [inside, before] = [read.filter(([at]) => at >= begin), read.findLast(([at]) => at < begin)];
  const edge = before && inside.length ? [[begin, between([[before[0], before[1]], [inside[0][0], inside[0][1]]], begin)]] : [];
  const seen = [...edge, ...inside, ...ahead];
  const all = [...seen.map(([, pct]) => pct), ...(target ? [target] : [])];
  if (all.length < 2) return nothing;
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const y = (/** @type {number} */ pct) => 88 - ((pct - low) / (high - low || 1)) * 76;
  const line = (/** @type {number[][]} */ points) => points.map(([at, pct]) => `${(share(at) * 100).toFixed(2)},${y(pct).toFixed(2)}`).join(" ");
  return svg`${target ? svg`<line class="far__level" x1="0" x2="100%" y1="${y(target)}%" y2="${y(target)}%"></line>` : nothing}
    <svg viewBox="0 0 100 100" preserveAspectRatio="none" width="100%" height="100%"><polyline class="far__read-line" points=${line([...edge, ...inside])}></polyline>
      <polyline class="far__ahead" points=${line(ahead)}></polyline></svg>`;
}
