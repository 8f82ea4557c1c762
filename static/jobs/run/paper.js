// @ts-check
/** The run sheet's reading half: the figure now, the receivers, what was logged. */
import { html, nothing } from "../../vendor/lit-html/lit-html.js";
import { icon } from "../../icons/icons.js";
import { badge } from "../../ui/badge.js";
import { formatNumber, formatTime } from "../../ui/format.js";
import { inUnits, shownInUnits, strengthShown } from "../../shell/inunits.js";
import { symbol } from "../../trade/units.js";
import { penOf } from "../../shell/linesheet.js";
import { cutsTogether, flowNow, lastReading, partName, receiversOf } from "./state.js";
import { t } from "../../words/t.js";

const LINES_SHOWN = 8;

/** "73.7 %" or "147.3 proof". @param {number} pct */
function strengthWords(pct) {
  const { figure, sign } = strengthShown(pct);
  return `${figure} ${sign.replace(" vol", "")}`;
}

/** @param {any} run */
export function figureNow(run) {
  const last = lastReading(run);
  if (!last) return html`<p class="figure"><span class="figure__value">–</span><span class="figure__about">${t("floor-paper-no_strength_yet")}<br>${t("floor-nose_first")}</span></p>`;
  const glass = last.glass != null ? t("floor-paper-glass", { glass: formatNumber(last.glass, 1), temp: last.temp != null ? t("floor-paper-at", { temp: shownInUnits(last.temp, "degC", 1) }) : "" }) : "";
  const strength = strengthShown(last.true_strength);
  return html`<p class="figure"><span class="figure__value" data-figure="now">${strength.figure}</span>
    <span class="figure__about">${strength.words}<br>${glass ? html`${glass}<br>` : nothing}${formatTime(last.at)}</span></p>`;
}

/** The flow, for the sum needs it, and the way to read it. @param {any} run @param {() => void} onTap */
export function flowChip(run, onTap) {
  const now = flowNow(run);
  const isAsked = !now || now.isOld;
  const { value, unit } = inUnits(now?.flow ?? 0, "L_h");
  return html`<button type="button" class="glance__one ${isAsked ? "glance__one--ask" : ""}" data-flow @click=${onTap}><span>${isAsked ? icon("ask") : nothing}${t("floor-paper-flow")} <strong>${now ? formatNumber(value, 1) : t("floor-paper-not_read")}</strong></span>
    <span class="glance__sub">${now ? `${symbol(unit)}, ${formatTime(now.at)}${now.isOld ? t("floor-paper-not_since") : ""}` : t("floor-paper-the_sum_needs_it")}</span></button>`;
}

/** @param {any} run @param {(mark: string) => string} nameOf */
export function receiverStrip(run, nameOf) {
  const receivers = receiversOf(run, nameOf);
  if (!receivers.length) return nothing;
  return html`<section class="receivers" aria-label=${t("floor-paper-receivers")}>${receivers.map((one) => html`
    <div class="receiver receiver--${one.part === "low_wines" ? "hearts" : one.part} ${one.isOpen ? "receiver--open" : ""}"><span class="receiver__name">${partName(one.part)}</span>
      <span class="receiver__held">${one.name}</span>
      <span class="receiver__state">${one.fraction ? `${shownInUnits(one.fraction.volume_l, "L", 1)} · ${strengthWords(one.fraction.strength_pct)}` : html`${one.isOpen ? html`<strong>${t("floor-state-receiver", { state: one.state })}</strong>` : t("floor-state-receiver", { state: one.state })}`}</span></div>`)}</section>`;
}

/** The last readings and events, newest first. @param {any} run @param {any} cutKind @param {any[]} [recent] the card's own lines, which know who logged them */
export function runLines(run, cutKind, recent = []) {
  const events = new Map(cutKind.fields.find((/** @type {any} */ field) => field.name === "event").choices);
  const together = cutsTogether(run);
  const lines = new Map();
  for (const reading of run.readings) lines.set(reading.entry, { ...reading, kind: reading.entry === run.end?.entry ? "run_end" : "run_reading", words: [reading.true_strength != null && t("floor-paper-true", { true_strength: strengthWords(reading.true_strength) }), reading.flow != null && shownInUnits(reading.flow, "L_h", 1), reading.dip != null && t("floor-paper-dip", { dip: shownInUnits(reading.dip, "L", 1) })].filter(Boolean).join(", ") });
  for (const cut of run.cuts) lines.set(cut.entry, { ...cut, kind: "cut", words: [events.get(cut.event), cut.true_strength != null && t("floor-paper-true", { true_strength: strengthWords(cut.true_strength) }), cut.typed_at && t("floor-paper-logged", { typed_at: formatTime(cut.typed_at) }), cut.late_why].filter(Boolean).join(", ") });
  const sorted = [...lines.values()].sort((a, b) => (a.at < b.at ? 1 : -1)).slice(0, LINES_SHOWN);
  if (!sorted.length) return nothing;
  return html`<ul class="list" aria-label=${t("floor-paper-logged_in_this_run")}>${sorted.map((line) => html`<li class="list__item--short"><span class="list__mark">${formatTime(line.at)}</span>
    <span class="list__what">${line.words}${together.has(line.entry) ? html` ${badge("ask", t("floor-paper-twice"))} <span class="quiet">${whose(line, recent)}</span>` : nothing}</span>
    <span class="list__end">${line.waiting ? badge("waiting") : nothing}${penOf({ entry: line.entry, mark: run.still, kind: line.kind, at: line.at, summary: line.words })}</span>
    ${together.get(line.entry)?.[0].entry === line.entry ? html`<p class="list__why">${t("floor-paper-logged_twice", { what: /^plate|changed$/.test(line.event) ? "change" : "cut" })}</p>` : nothing}</li>`)}</ul>`;
}

/** "NS, this phone": what tells two lines apart that are alike. @param {any} line @param {any[]} recent */
function whose(line, recent) {
  const { person = "", phone = "" } = recent.find((one) => one.entry === line.entry) ?? {};
  return [person, line.waiting ? t("floor-paper-this_phone") : phone].filter(Boolean).join(", ");
}
