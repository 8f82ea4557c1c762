// @ts-check
/**
 * The still run in full, laid over the run sheet: what has run off, when the next cut is due, the runs before behind the curve,
 * the plan and its bell. The sheet stands without it; all of it is worked out on the phone from the still's card.
 */
import { figureBox, wordsBox } from "../../form/quickfields.js";
import { shownInUnits, strengthShown } from "../../shell/inunits.js";
import { onTimers } from "../../slate/timers.js";
import { formatDate } from "../../ui/format.js";
import { html, nothing } from "../../vendor/lit-html/lit-html.js";
import { isAwake, isOn, ringFor, setOn, wakeByAnyTap } from "./bell.js";
import { changeButtons } from "./changes.js";
import { collectedLines, dueBand, dueOf, nearness, targetOf } from "./due.js";
import { compared, openReceiver, streamOf } from "./collect.js";
import { curveBy } from "./curve.js";
import { farChip, farSheet, isFar, setFar } from "./far.js";
import { aboutCard, timerChip, timersNow } from "../timers/show.js";
import { fruitOf, ghostsFor, wishesFor } from "./wishes.js";
import { t } from "../../words/later.js";

/**
 * @typedef {import("./curve.js").Way} Way
 * @typedef {{card: any, cards: any[], run: any, kept: any[], site: any, cutKind: any, who: {code: string, role: string}, refresh: () => void, onPlan: () => void, onCut: () => void, onReading: () => void}} Asked
 * @typedef {{curve: any, now: unknown, glance: unknown, changes: unknown, below: unknown, far: unknown}} Dressed
 */

const KEPT_WAY = "run-way";
/** @type {[Way, string][]} */
const WAYS = [["alcohol", t("floor-sheet-by_alcohol")], ["time", t("floor-sheet-by_time")], ["vapour", t("floor-sheet-vapour")]];

/** Once for a page. @param {() => void} [refresh] called when a reminder was set, moved or dropped, and when the phone is turned @returns {Promise<void>} once its style is there */
export async function prepare(refresh) {
  wakeByAnyTap();
  if (refresh) {
    onTimers(refresh);
    matchMedia("(orientation: landscape)").addEventListener("change", refresh);
  }
  const link = document.createElement("link");
  link.rel = "stylesheet";
  link.href = new URL("run.css", import.meta.url).href;
  await new Promise((done) => {
    link.onload = link.onerror = done;
    document.head.append(link);
  });
}

/** @param {Asked} asked @returns {Promise<Dressed>} */
export async function dress(asked) {
  const { card, cards, run, kept, site } = asked;
  const heightM = Number(site.height_m) || 0;
  for (const line of run.readings) { // what a receiver held before, where the book has not said so yet
    if (line.dip != null) line.remnant_l ??= cards.find((one) => one.mark === line.receiver)?.holds?.volume_l ?? 0;
  }
  const stream = streamOf(run);
  const { plan, best } = wishesFor(card, kept, run.what ?? "");
  const ghosts = ghostsFor(card, run, best);
  const target = targetOf(run, plan, ghosts);
  const due = await dueOf(run, stream, target, card, heightM);
  const shown = { run, stream, ghosts, due, target, offsetC: card.still?.vapour_offset_c ?? 0, heightM };
  const wished = curveBy(wayNow(), shown);
  const [way, curve] = wished ? [wayNow(), wished] : [/** @type {Way} */ ("time"), curveBy("time", shown)]; // the button says what is drawn
  const open = openReceiver(run, stream);
  const now = Date.now();
  const isNear = ["near", "past"].includes(nearness(due, stream, now));
  if (isNear && !run.ended_at) ringFor(`${run.id}:${target?.step.event}:${target?.pct ?? target?.litres}`);
  const far = (/** @type {boolean} */ on) => () => {
    setFar(run.still, on);
    asked.refresh();
  };
  const nameOf = (/** @type {string} */ mark) => cards.find((one) => one.mark === mark)?.name || mark;
  const timer = (await timersNow()).find((one) => one.mark === run.still);
  return {
    curve,
    glance: [timerChip(timer, aboutCard({ ...card, run })), farChip(far(true))],
    far: run.ended_at || !isFar(run.still) ? null : farSheet({ run, name: card.name || card.mark, stream, due, target, open, timer, nameOf, now }, { onCut: asked.onCut, onReading: () => asked.onReading(), onClose: far(false) }),
    now: run.ended_at ? ways(way, asked.refresh) : [dueBand(run, due, target, stream, now), stream.lines.length ? collectedLines(run, stream, open, compared(run, stream, card)) : nothing, stream.lines.length ? ways(way, asked.refresh) : nothing],
    changes: run.ended_at ? nothing : changeButtons(asked.cutKind, run.still, asked.who),
    below: run.ended_at ? nothing : planPart(plan, asked),
  };
}

/** @returns {Way} */
const wayNow = () => /** @type {Way} */ (WAYS.find(([way]) => way === localStorage.getItem(KEPT_WAY))?.[0] ?? "alcohol");

/** @param {Way} now @param {() => void} refresh */
function ways(now, refresh) {
  const take = (/** @type {Way} */ way) => {
    localStorage.setItem(KEPT_WAY, way);
    refresh();
  };
  return html`<div class="ways" role="group" aria-label=${t("floor-sheet-the_curve_is_drawn")}>${WAYS.map(([way, words]) => html`<button type="button" class="button" aria-pressed=${way === now} @click=${() => take(way)}>${words}</button>`)}</div>`;
}

/** The plan in words, with who and why, and the switch of the bell. @param {import("./wishes.js").Plan|null} plan @param {Asked} asked */
function planPart(plan, asked) {
  const toggle = async () => {
    await setOn(!isOn());
    asked.refresh();
  };
  const sound = !isOn() ? t("floor-off") : isAwake() ? t("floor-on") : t("floor-sheet-on_after_a_tap");
  return html`<section class="plan" aria-label=${t("floor-cut_plan")}>${plan ? html`<p><strong>${t("floor-sheet-plan")}</strong> ${planWords(plan)}</p>
      <p class="quiet">${plan.person}, ${formatDate(plan.at)}${plan.waiting ? t("floor-waits_on_this_phone") : ""}${plan.why ? `: ${plan.why}` : ""}</p>`
    : html`<p class="quiet">${t("floor-sheet-no_cut_plan_for", { what: fruitOf(asked.run.what ?? "") || t("floor-sheet-this_fruit") })}</p>`}
    <div class="buttons"><button type="button" class="button" @click=${asked.onPlan}>${plan ? t("floor-sheet-change_the_plan") : t("floor-sheet-make_a_plan")}</button>
      <button type="button" class="button" aria-pressed=${isOn()} @click=${toggle}>${t("floor-sheet-sound_near_a_cut")} <span class="button__sub">${sound}</span></button></div></section>`;
}

/** @param {import("./wishes.js").Plan} plan */
function planWords(plan) {
  const pct = (/** @type {number} */ value) => {
    const { figure, sign } = strengthShown(value);
    return `${figure}\u00a0${sign.replace(" vol", "")}`;
  };
  return [
    plan.heads_l && t("floor-heads", { heads_l: shownInUnits(plan.heads_l, "L", 1) }), plan.hearts_to_pct && t("floor-sheet-hearts_to", { hearts_to_pct: pct(plan.hearts_to_pct) }),
    plan.tails_to_pct && t("floor-sheet-tails_to", { tails_to_pct: pct(plan.tails_to_pct) }),
  ].filter(Boolean).join(" · ");
}

/** The boxes of the plan's panel. @param {any} kind @param {any} run */
export const planBoxes = (kind, run) => html`<div class="chips" data-field="what"><p class="quiet">${t("floor-sheet-for_on_this_still", { what: fruitOf(run?.what ?? "") || t("floor-sheet-the_fruit_named_below") })}</p></div>
  ${run?.what ? html`<input type="hidden" name="what" value=${fruitOf(run.what)}>` : wordsBox(kind, "what")}
  <div class="pair">${figureBox(kind, "heads", null)}${figureBox(kind, "hearts_to", null)}</div>${figureBox(kind, "tails_to", null)}${wordsBox(kind, "why")}`;

export { earlierPart, otherReceiver } from "./cutparts.js";
export { mountJug } from "./jug.js";
export { secondLook } from "./second.js";
