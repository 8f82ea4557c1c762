// @ts-check
/** The run sheet's reading half: the figure now, the receivers, what was logged. */
import { html, nothing } from "../../vendor/lit-html/lit-html.js";
import { icon } from "../../icons/icons.js";
import { badge } from "../../ui/badge.js";
import { formatNumber, formatTime } from "../../ui/format.js";
import { inUnits, shownInUnits, strengthShown } from "../../shell/inunits.js";
import { symbol } from "../../trade/units.js";
import { penOf } from "../../shell/linesheet.js";
import { cutsTogether, flowNow, lastReading, receiversOf } from "./state.js";

const LINES_SHOWN = 8;

/** "73.7 %" or "147.3 proof". @param {number} pct */
function strengthWords(pct) {
  const { figure, sign } = strengthShown(pct);
  return `${figure} ${sign.replace(" vol", "")}`;
}

/** @param {any} run */
export function figureNow(run) {
  const last = lastReading(run);
  if (!last) return html`<p class="figure"><span class="figure__value">–</span><span class="figure__about">No strength yet.<br>Nose first.</span></p>`;
  const glass = last.glass != null ? `glass ${formatNumber(last.glass, 1)}${last.temp != null ? ` at ${shownInUnits(last.temp, "degC", 1)}` : ""}` : "";
  const strength = strengthShown(last.true_strength);
  return html`<p class="figure"><span class="figure__value" data-figure="now">${strength.figure}</span>
    <span class="figure__about">${strength.words}<br>${glass ? html`${glass}<br>` : nothing}${formatTime(last.at)}</span></p>`;
}

/** The flow, for the sum needs it, and the way to read it. @param {any} run @param {() => void} onTap */
export function flowChip(run, onTap) {
  const now = flowNow(run);
  const isAsked = !now || now.isOld;
  const { value, unit } = inUnits(now?.flow ?? 0, "L_h");
  return html`<button type="button" class="glance__one ${isAsked ? "glance__one--ask" : ""}" data-flow @click=${onTap}><span>${isAsked ? icon("ask") : nothing}Flow <strong>${now ? formatNumber(value, 1) : "not read"}</strong></span>
    <span class="glance__sub">${now ? `${symbol(unit)}, ${formatTime(now.at)}${now.isOld ? ", not since" : ""}` : "the sum needs it"}</span></button>`;
}

/** @param {any} run @param {(mark: string) => string} nameOf */
export function receiverStrip(run, nameOf) {
  const receivers = receiversOf(run, nameOf);
  if (!receivers.length) return nothing;
  return html`<section class="receivers" aria-label="Receivers">${receivers.map((one) => html`
    <div class="receiver receiver--${one.part === "low wines" ? "hearts" : one.part} ${one.isOpen ? "receiver--open" : ""}"><span class="receiver__name">${one.part}</span>
      <span class="receiver__held">${one.name}</span>
      <span class="receiver__state">${one.fraction ? `${shownInUnits(one.fraction.volume_l, "L", 1)} · ${strengthWords(one.fraction.strength_pct)}` : html`${one.isOpen ? html`<strong>${one.state}</strong>` : one.state}`}</span></div>`)}</section>`;
}

/** The last readings and events, newest first. @param {any} run @param {any} cutKind @param {any[]} [recent] the card's own lines, which know who logged them */
export function runLines(run, cutKind, recent = []) {
  const events = new Map(cutKind.fields.find((/** @type {any} */ field) => field.name === "event").choices);
  const together = cutsTogether(run);
  const lines = new Map();
  for (const reading of run.readings) lines.set(reading.entry, { ...reading, kind: reading.entry === run.end?.entry ? "run_end" : "run_reading", words: [reading.true_strength != null && `${strengthWords(reading.true_strength)} true`, reading.flow != null && shownInUnits(reading.flow, "L_h", 1), reading.dip != null && `dip ${shownInUnits(reading.dip, "L", 1)}`].filter(Boolean).join(", ") });
  for (const cut of run.cuts) lines.set(cut.entry, { ...cut, kind: "cut", words: [events.get(cut.event), cut.true_strength != null && `${strengthWords(cut.true_strength)} true`, cut.typed_at && `logged ${formatTime(cut.typed_at)}`, cut.late_why].filter(Boolean).join(", ") });
  const sorted = [...lines.values()].sort((a, b) => (a.at < b.at ? 1 : -1)).slice(0, LINES_SHOWN);
  if (!sorted.length) return nothing;
  return html`<ul class="list" aria-label="Logged in this run">${sorted.map((line) => html`<li class="list__item--short"><span class="list__mark">${formatTime(line.at)}</span>
    <span class="list__what">${line.words}${together.has(line.entry) ? html` ${badge("ask", "twice")} <span class="quiet">${whose(line, recent)}</span>` : nothing}</span>
    <span class="list__end">${line.waiting ? badge("waiting") : nothing}${penOf({ entry: line.entry, mark: run.still, kind: line.kind, at: line.at, summary: line.words })}</span>
    ${together.get(line.entry)?.[0].entry === line.entry ? html`<p class="list__why">Logged twice within a minute. If it was one ${/^plate|changed$/.test(line.event) ? "change" : "cut"}, take one back.</p>` : nothing}</li>`)}</ul>`;
}

/** "NS, this phone": what tells two lines apart that are alike. @param {any} line @param {any[]} recent */
function whose(line, recent) {
  const { person = "", phone = "" } = recent.find((one) => one.entry === line.entry) ?? {};
  return [person, line.waiting ? "this phone" : phone].filter(Boolean).join(", ");
}
