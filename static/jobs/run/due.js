// @ts-check
/** When the next cut is due, by the distiller's plan or as it was last time: the minute and the litres, or plainly too little to say. */
import { eventOf, isStripping, nextStep, partNow, partWords } from "./state.js";
import { heldLimit } from "../../kinds/limits.js";
import { shownInUnits, strengthShown } from "../../shell/inunits.js";
import { capital } from "../../shell/words.js";
import { formatNumber, formatTime } from "../../ui/format.js";
import { html, nothing } from "../../vendor/lit-html/lit-html.js";
import { changesOf } from "./changes.js";
import { collectedAt } from "./collect.js";
import { t } from "../../words/later.js";

/**
 * @typedef {{pct: number|null, litres: number|null, words: string, by: "plan"|"last", step: import("./state.js").Step}} Target
 * @typedef {{state: "due", minutes: {at: number, low: number, high: number}, collected_l: {at: number, low: number, high: number}, curve: number[][], strength_average_pct?: number|null, left_out?: number[], runs?: number, tried?: number, kept?: number}
 *   | {state: "too_little", why?: string, words: string} | {state: "past", words?: string}} Due
 */

/** A cut is near when it is expected within so many minutes. */
export const NEAR_MIN = 5;

/** @type {Promise<any>|undefined} */
let forecast;
/** @type {{key: string, due: Due}} */
let kept = { key: "", due: { state: "too_little", words: "" } };

/** "58.0 %" or "116.1 proof" @param {number} pct */
const strengthOf = (pct) => {
  const { figure, sign } = strengthShown(pct);
  return `${figure}\u00a0${sign.replace(" vol", "")}`;
};

/**
 * What the part now running goes down to, or fills up to.
 * @param {any} run @param {import("./wishes.js").Plan|null} plan @param {{run: any}[]} ghosts
 * @returns {Target|null} null where neither a plan nor a run before says
 */
export function targetOf(run, plan, ghosts) {
  const [part, step] = [isStripping(run) ? "tails" : partNow(run), nextStep(run)];
  if (run.ended_at) return null;
  if (part === "heads") return plan?.heads_l ? { pct: null, litres: plan.heads_l, words: t("floor-heads", { heads_l: shownInUnits(plan.heads_l, "L", 1) }), by: "plan", step } : null;
  const planned = isStripping(run) ? null : part === "hearts" ? plan?.hearts_to_pct : plan?.tails_to_pct;
  if (planned) return { pct: planned, litres: null, words: t("floor-due-part_to", { part, strength: strengthOf(planned) }), by: "plan", step };
  const before = ghosts[0]?.run;
  const last = part === "hearts" ? before && eventOf(before, "hearts_cut")?.true_strength : before?.end?.true_strength;
  return last ? { pct: last, litres: null, words: t("floor-due-part_to_last_time", { part: isStripping(run) ? "low_wines" : part, strength: strengthOf(last) }), by: "last", step } : null;
}

/**
 * @param {any} run @param {import("./collect.js").Stream} stream @param {Target|null} target @param {any} card of the still @param {number} heightM
 * @returns {Promise<Due|null>} null where there is no target
 */
export async function dueOf(run, stream, target, card, heightM) {
  if (!target) return null;
  if (target.litres !== null) return byLitres(stream, target.litres, heldLimit("flow_pct", card, run) / 100);
  forecast ??= import("../../trade/still/cutdue.js").then((sums) => {
    sums.sayBy((code, figures) => t(`floor-forecast-${code}`, figures));
    return sums;
  }).catch(() => null);
  const module = await forecast;
  if (!module) return { state: "too_little", words: t("floor-due-the_sums_for_it") };
  const [asked, prior] = [askedOf(run, stream, heightM), card?.still_lessons ?? null];
  const key = JSON.stringify([asked, prior, target.pct]);
  if (key !== kept.key) kept = { key, due: module.forecastCut(asked, prior, target.pct) };
  return kept.due;
}

/** A run as the forecast takes it. @param {any} run @param {import("./collect.js").Stream} stream @param {number} heightM */
export function askedOf(run, stream, heightM) {
  const since = Math.max(stream.zero, ...["heads_cut", "hearts_cut"].map((event) => Date.parse(eventOf(run, event)?.at ?? "")).filter(Number.isFinite));
  const { plates, changes } = changesOf(run, stream);
  return {
    charge: { volume_l: run.charge?.volume_l ?? null, lpa_l: run.charge?.lpa_l ?? null },
    readings: stream.lines.filter((line) => line.strength !== null).map((line) => ({ minutes: line.minutes, strength_pct: line.strength, flow_l_h: line.flow })),
    collected: stream.by === "dips" ? stream.points.filter((point) => point.minutes > 0).map((point) => ({ minutes: point.minutes, volume_l: point.litres })) : [],
    changes,
    still: { plates, height_m: heightM },
    receiver_since: (since - stream.zero) / 60_000,
  };
}

/** Heads go by volume: at the flow as last read. @param {import("./collect.js").Stream} stream @param {number} litres @param {number} jugShare flow times minutes is good to this @returns {Due} */
function byLitres(stream, litres, jugShare) {
  const flow = stream.lines.map((line) => line.flow).filter((each) => each !== null).at(-1);
  const last = stream.points.at(-1);
  if (!flow || !last) return { state: "too_little", words: t("floor-due-read_the_flow_with") };
  if (last.litres >= litres) return { state: "past", words: t("floor-due-by_flow_times_minutes", { litres: shownInUnits(last.litres, "L", 1) }) };
  const minuteAt = (/** @type {number} */ share) => last.minutes + Math.max(0, (litres * share - last.litres) / flow) * 60;
  return {
    state: "due", curve: [], minutes: { at: minuteAt(1), low: minuteAt(1 - jugShare), high: minuteAt(1 + jugShare) },
    collected_l: { at: litres, low: litres * (1 - jugShare), high: litres * (1 + jugShare) },
  };
}

/** @param {Due|null} due @param {import("./collect.js").Stream} stream @param {number} now [ms] @returns {"near"|"past"|"later"|""} */
export function nearness(due, stream, now) {
  if (due?.state === "past") return "past";
  if (due?.state !== "due") return "";
  return stream.zero + due.minutes.at * 60_000 - now <= NEAR_MIN * 60_000 ? "near" : "later";
}

/** @param {any} run @param {Due|null} due @param {Target|null} target @param {import("./collect.js").Stream} stream @param {number} now */
export function dueBand(run, due, target, stream, now) {
  if (!target || !due) return nothing;
  const near = nearness(due, stream, now);
  const by = target.by === "plan" ? t("floor-due-by_the_plan", { words: target.words }) : target.words;
  if (due.state === "too_little") return html`<section class="due" aria-label=${t("floor-due-next_cut")}><p><strong>${target.step.words}.</strong> ${due.words}</p><p class="due__by">${by}</p></section>`;
  if (due.state === "past") return html`<section class="due due--near" aria-label=${t("floor-due-next_cut")} role="status"><p><strong>${t("floor-due-is_reached", { words: target.step.words, by })}</strong> ${t("floor-due-nose_first", { words: due.words ?? "" })}</p></section>`;
  const clock = (/** @type {number} */ minutes) => formatTime(stream.zero + minutes * 60_000);
  const litres = (/** @type {number} */ value) => shownInUnits(value, "L", 1);
  if (now > stream.zero + due.minutes.high * 60_000) return overdue(target, by, clock(due.minutes.at), stream);
  return html`<section class="due ${near === "near" ? "due--near" : ""}" aria-label=${t("floor-due-next_cut")} role="status">
    <p><strong>${t("floor-due-about", { words: target.step.words, near: near === "near" ? t("floor-due-is_near") : "", minutes: clock(due.minutes.at) })}</strong>${t("floor-due-to", { low: clock(due.minutes.low), high: clock(due.minutes.high) })}</p>
    <p>${t("floor-due-off_in_all_to", { litres: litres(due.collected_l.at), low: litres(due.collected_l.low), high: litres(due.collected_l.high) })}</p>
    <p class="due__by">${by}${isAlone(due) ? t("floor-due-without_earlier_runs") : ""}${due.strength_average_pct && (partNow(run) !== "heads" || isStripping(run)) ? t("floor-due-then_together", { part: partWords(run), strength_average_pct: strengthOf(due.strength_average_pct) }) : ""}. ${near === "near" ? t("floor-nose_first") : t("floor-due-strength_alone_the_nose")}</p>
    ${due.tried ? html`<p class="due__by">${t("floor-due-on_earlier_runs_of", { kept: due.kept, tried: due.tried })}</p>` : nothing}</section>`;
}

/** Until the book has learnt from the still's runs, or where there are none. @param {Due} due @returns {boolean} */
export const isAlone = (due) => due.state === "due" && due.runs === 0;

/** The time has gone by and nobody has read since. @param {Target} target @param {string} by @param {string} at @param {import("./collect.js").Stream} stream */
function overdue(target, by, at, stream) {
  const last = stream.lines.filter((line) => line.strength !== null).at(-1);
  return html`<section class="due due--near" aria-label=${t("floor-due-next_cut")} role="status"><p><strong>${t("floor-due-was_expected_about", { words: target.step.words, at })}</strong>
    ${last ? t("floor-due-last_read", { at: formatTime(stream.zero + last.minutes * 60_000) }) : nothing} ${t("floor-due-read_now_nose_first")}</p><p class="due__by">${by}</p></section>`;
}

/** What the open receiver got so far, beside what a dip says. @param {any} run @param {import("./collect.js").Stream} stream @param {any} open @param {any} apart */
export function collectedLines(run, stream, open, apart) {
  if (!open) return html`<p class="quiet">${t("floor-due-no_flow_and_no")}</p>`;
  const all = collectedAt(stream, open.until);
  return html`<p class="collected"><strong>${t("floor-due-so_far", { part: capital(partWords(run)), litres: shownInUnits(open.litres, "L", 1) })}</strong>${open.strength !== null ? html` ${t("floor-due-at_together", { strength: strengthOf(open.strength) })}` : nothing} · ${shownInUnits(open.lpa, "LPA", 2)}
      <span class="quiet">${t("floor-due-to_by_off_in", { until: formatTime(open.until), by: stream.by === "flow" ? t("floor-due-flow_times_minutes") : t("floor-due-dips"), litres: shownInUnits(all.litres, "L", 1) })}</span></p>
    ${apart ? html`<p class=${apart.isApart ? "collected collected--apart" : "quiet"}>${apartWords(apart)}</p>` : nothing}`;
}

/** @param {{at: number, flowed: number, got: number, off: number, most: number, isApart: boolean}} apart */
function apartWords(apart) {
  const both = t("floor-due-dip_of_flow_times", { at: formatTime(apart.at), got: shownInUnits(apart.got, "L", 1), flowed: shownInUnits(apart.flowed, "L", 1) });
  if (!apart.isApart) return t("floor-due-they_agree", { both });
  return t("floor-due-less_or_more_in_receiver", { both, off: Math.abs(Math.round(apart.off)), side: apart.off > 0 ? "less" : "more", most: formatNumber(apart.most, Number.isInteger(apart.most) ? 0 : 1) });
}
