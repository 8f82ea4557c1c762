// @ts-check
/** The run sheet: kept at a marked point outside the line. Everything it shows comes from the card, so a reload loses nothing. */
import { localStamp } from "../slate/entry.js";
import { allCards, onCards, site, unknownToCards } from "../slate/cards.js";
import { counts, onChange } from "../slate/queue.js";
import { drawCurve } from "../ui/charts.js";
import { formatDuration, formatTime } from "../ui/format.js";
import "../ui/keypad.js";
import { html, nothing, render } from "../vendor/lit-html/lit-html.js";
import { cautionLine } from "../shell/cautions.js";
import { EntryForm } from "../form/entryform.js";
import { readAt } from "../form/extras.js";
import { showFull } from "../form/full.js";
import { setHead } from "../shell/frame.js";
import { handOrAsk } from "../shell/hand.js";
import { offerTakeBack } from "../shell/takebackbar.js";
import { logPath, markBy, markHere, vesselPath } from "../shell/here.js";
import { getKind, readCard } from "../shell/phone.js";
import { panelForm } from "../jobs/run/panels.js";
import { figureNow, flowChip, receiverStrip, runLines } from "../jobs/run/paper.js";
import { curveOf, eventOf, isStripping, nextStep, partName, receiversOf, runTitle } from "../jobs/run/state.js";
import { keepAwake } from "../shell/wakelock.js";
import { onTheSlate } from "../shell/words.js";
import { t } from "../words/t.js";

const ENDED_SHOWN_MS = 24 * 60 * 60_000;
const RECEIVERS_MOST = 8;
const RECEIVER_SORTS = ["receiver", "can", "tank"];

/** The run in full comes right after the first install; without it the sheet stands. @type {any} */
let more = null;

/** @type {{who: any, mark: string, card: any, run: any, kinds: Record<string, any>, others: any[], house: any, drawn: any, drawnKey: string, entryForm: EntryForm|null}} */
const sheet = { who: null, mark: "", card: null, run: null, kinds: {}, others: [], house: {}, drawn: null, drawnKey: "", entryForm: null };

/** @param {string} name @returns {HTMLElement} */
const part = (name) => /** @type {HTMLElement} */ (document.querySelector(`[data-part="${name}"]`));

export async function start() {
  sheet.who = await handOrAsk();
  if (!sheet.who) return;
  sheet.mark = markHere();
  for (const name of ["run_reading", "cut", "run_end"]) sheet.kinds[name] = await getKind(name);
  part("body").replaceChildren();
  onChange(() => void show());
  onCards(() => void show());
  setInterval(() => (more ? void show() : showElapsed()), 20_000);
  keepAwake();
  await show();
  more = await import("../jobs/run/sheet.js").catch(() => null);
  if (!more) return;
  await more.prepare(() => void show());
  await show();
}

let turn = 0;

async function show() {
  const own = ++turn;
  const [card, cards, house, kept] = await Promise.all([readCard(sheet.mark), allCards(), site(), unknownToCards()]);
  const ended = card?.past_runs.find((/** @type {any} */ run) => run.ended_at && Date.now() - Date.parse(run.ended_at) < ENDED_SHOWN_MS);
  const run = card?.run ?? ended ?? null;
  if (run && !run.what) run.what = cards.find((one) => one.mark === run.from)?.holds?.what ?? "";
  const full = more && run ? await more.dress({ card, cards, run, kept, site: house, cutKind: sheet.kinds.cut, who: sheet.who, refresh: () => void show(), onPlan: () => void openPlan(), onCut: openCut, onReading }).catch(sayFault) : null;
  if (own !== turn) return; // a newer one is under way
  Object.assign(sheet, { card, run, others: cards, house });
  showElapsed();
  render(sheet.run ? [figureNow(sheet.run), sheet.run.ended_at ? nothing : glance(sheet.run, full?.glance), full?.now] : noRun(), part("body"));
  showFar(full?.far ?? null);
  showCurve(full?.curve);
  render(sheet.run ? [receiverStrip(sheet.run, nameOf), sheet.run.ended_at ? afterEnd() : events(full?.changes), full?.below, runLines(sheet.run, sheet.kinds.cut, sheet.card?.recent), cautionLine("fire_zone")] : cautionLine("fire_zone"), part("below"));
  if (!part("panel").childElementCount) showDoing();
}

/** The same run for a reader at two metres, in the place of the sheet; a panel opens over it. @param {unknown} far or null */
function showFar(far) {
  const [isIn, was] = [Boolean(far), "far" in document.documentElement.dataset];
  document.documentElement.toggleAttribute("data-far", isIn);
  render(far ?? nothing, part("far"));
  if (isIn !== was && !part("panel").childElementCount) /** @type {HTMLElement|null} */ (document.querySelector(isIn ? "[data-far-out]" : "[data-far-in]"))?.focus({ preventScroll: true });
}

/** @param {unknown} error */
function sayFault(error) {
  console.warn(t("floor-run-the_run_in_full"), error);
  return null;
}

function showElapsed() {
  const { run, card, mark } = sheet;
  const since = run && t("floor-since", { started_at: formatTime(run.started_at), started_at_2: formatDuration(((run.ended_at ? Date.parse(run.ended_at) : Date.now()) - Date.parse(run.started_at)) / 1000) });
  setHead({ mark: card?.name || mark, first: run ? runTitle(run) : t("floor-run_sheet"), second: run ? (run.ended_at ? t("floor-ended", { ended_at: formatTime(run.ended_at) }) : since) : "", back: vesselPath(mark) });
}

/** What is looked at between two readings, each a tap from being done. @param {any} run @param {unknown} also */
const glance = (run, also) => html`<div class="glance">${flowChip(run, () => onReading("flow"))}${also}</div>`;

const noRun = () => html`<section class="band band--note"><p>${t("floor-run-no_run_is_known", { mark: sheet.card?.name || sheet.mark })}</p>
  <div class="band__offers"><a class="button" href=${logPath(sheet.mark, "charge")}>${t("floor-run-charge")}</a></div></section>`;

/** @param {string} mark */
const nameOf = (mark) => sheet.others.find((card) => card.mark === mark)?.name || mark;

/** @param {any} [full] */
function showCurve(full) {
  const curve = full ?? (sheet.run ? curveOf(sheet.run, sheet.card.past_runs.find((/** @type {any} */ one) => one.id !== sheet.run.id)) : null);
  const key = JSON.stringify(curve);
  part("chart").hidden = !curve;
  if (key === sheet.drawnKey || !curve) return;
  sheet.drawnKey = key;
  if (sheet.drawn) sheet.drawn.update(curve);
  else sheet.drawn = drawCurve(part("chart"), curve);
}

/** The small events of a run that is under way. @param {unknown} [changes] of heat, water or plates, a tap each */
function events(changes) {
  const begun = ["heat_on", "first_drop"].filter((event) => !eventOf(sheet.run, event) && !sheet.run.cuts.some((/** @type {any} */ cut) => cut.event === "heads_cut"));
  /** @type {Record<string, string>} */
  const words = { heat_on: t("floor-run-heat_on"), first_drop: t("floor-run-first_drop") };
  return html`<div class="buttons">${begun.map((event) => html`<button type="button" class="button" @click=${() => openPanel("cut", words[event], event)}>${words[event]}</button>`)}
    ${isStripping(sheet.run) ? html`<button type="button" class="button" @click=${() => openPanel("cut", t("floor-cut_to_hearts"), "heads_cut")}>${t("floor-cut_to_hearts")}</button>` : nothing}
    ${changes}<button type="button" class="button" @click=${() => openPanel("cut", t("floor-run-other_event"), "")}>${t("floor-run-other_event")}</button></div>`;
}

/** What follows a run: its fractions are gauged where they stand. */
function afterEnd() {
  const path = (/** @type {any} */ { mark, part: fraction }) => `${logPath(mark, "fraction_gauge")}?still=${sheet.mark}&fraction=${fraction.replace(" ", "_")}`;
  return html`<section class="stack"><h2>${t("floor-gauge_the_fractions")}</h2><div class="buttons">${receiversOf(sheet.run, nameOf).map((one) => html`<a class="button" href=${path(one)}>${one.name} <span class="button__sub">${partName(one.part)}</span></a>`)}
    <button type="button" class="button" @click=${() => openPanel("cut", t("floor-run-still_opened"), "still_opened")}>${t("floor-run-still_opened")}</button>
    <a class="button" href=${`/job/run?still=${sheet.mark}&run=${sheet.run.id}`}>${t("floor-run-balance_and_yield")}</a></div>${cautionLine("still_heat")}</section>`;
}

function showDoing() {
  if (sheet.run?.ended_at) {
    render(html`<a class="button button--main button--action" href=${logPath(sheet.mark, "charge")}>${t("floor-run-charge_again")}</a>`, part("doing"));
    return;
  }
  const step = sheet.run ? nextStep(sheet.run) : null;
  render(html`<div class="cuts">
    <button type="button" class="cut" @click=${() => onReading()}>${t("floor-reading")}</button>
    ${step ? html`<button type="button" class="cut cut--due" @click=${openCut}>${step.words}
      <span class="cut__sub">${step.to ? t("floor-run-switch_the_receiver_first") : t("floor-nose_first_2")}</span></button>`
      : html`<button type="button" class="cut" @click=${() => openPanel("cut", t("floor-run-event"), "")}>${t("floor-run-event")}</button>`}</div>`, part("doing"));
}

/** @param {string} [first] the box that is typed first */
const onReading = (first) => openPanel("run_reading", t("floor-reading"), undefined, undefined, first);

function openCut() {
  const step = nextStep(sheet.run);
  if (step.to) openPanel("cut", step.words, step.event);
  else openPanel("run_end", step.words);
}

async function openPlan() {
  sheet.kinds.cut_plan ??= await getKind("cut_plan");
  openPanel("cut_plan", t("floor-cut_plan"), undefined, more.planBoxes(sheet.kinds.cut_plan, sheet.run));
}

/** @param {string} kindName @param {string} title @param {string} [event] @param {unknown} [body] @param {string} [first] the box that is typed first */
function openPanel(kindName, title, event, body, first = "glass") {
  const tappedAt = new Date();
  const kind = sheet.kinds[kindName];
  const step = sheet.run ? nextStep(sheet.run) : null;
  const receiver = (step?.to && sheet.run.receivers?.[step.to]) || "";
  const isCut = Boolean(more && step?.to && event === step.event);
  /** @type {any} */
  const panel = { kind, card: sheet.card, tappedAt, title, event, body, receiver, receivers: likelyReceivers(receiver), onLeave: closePanel };
  if (isCut) Object.assign(panel, { earlier: more.earlierPart(tappedAt, Math.max(0, ...sheet.run.cuts.filter((/** @type {any} */ cut) => cut.event?.endsWith("_cut")).map((/** @type {any} */ cut) => Date.parse(cut.at) || 0))), other: more.otherReceiver((/** @type {string} */ mark) => addReceiver(panel, mark)) });
  render(panelForm(panel), part("panel"));
  const form = /** @type {HTMLFormElement} */ (part("panel").querySelector("form"));
  more?.mountJug(form);
  const minute = /** @type {HTMLInputElement|null} */ (form.querySelector("[name=read_at]"))?.value;
  sheet.entryForm = new EntryForm({
    form, kind, card: sheet.card, who: sheet.who, look: part("panel-look"), figures: part("panel-figures"),
    also: more && kindName !== "cut_plan" ? more.secondLook(sheet.run, sheet.card, Number(sheet.house.height_m) || 0) : undefined,
    // The tap's own second stands unless somebody sets another minute.
    about: () => ({ mark: sheet.mark, mark_by: markBy(sheet.mark), read_at: minuteOf(form) === minute ? localStamp(tappedAt) : readAt(form), remark: remarkOf(form) }),
    action: () => part("doing").querySelector(".button--action"),
    onFull: (error) => showFull(part("panel-look"), error),
    onLogged: async (logged) => {
      closePanel();
      offerTakeBack({ words: onTheSlate((await counts()).waiting), about: title, entry: logged.id });
    },
  });
  render(html`<button type="button" class="button button--main button--action" @click=${() => form.requestSubmit()}><span data-words .textContent=${kindName === "cut" && step?.to && event === step.event ? t("floor-run-log_the_cut") : t("floor-log_it")}></span></button>`, part("doing"));
  document.documentElement.dataset.panel = kindName;
  /** @type {HTMLElement|null} */ (form.querySelector(`input[name=${first}]:not(details *)`))?.focus({ preventScroll: true });
}

/** A receiver that was not among the likely ones, by its mark. @param {any} panel @param {string} mark */
function addReceiver(panel, mark) {
  if (!panel.receivers.some((/** @type {any} */ card) => card.mark === mark)) panel.receivers = [...panel.receivers, sheet.others.find((card) => card.mark === mark) ?? { mark, name: mark }];
  render(panelForm(panel), part("panel"));
  const chosen = /** @type {HTMLInputElement|null} */ (part("panel").querySelector(`[name=receiver][value="${CSS.escape(mark)}"]`));
  if (chosen) chosen.checked = true;
  sheet.entryForm?.update();
}

/** @param {HTMLFormElement} form */
const remarkOf = (form) => /** @type {HTMLTextAreaElement|null} */ (form.querySelector("[name=remark]"))?.value.trim() ?? "";

/** @param {HTMLFormElement} form */
const minuteOf = (form) => /** @type {HTMLInputElement|null} */ (form.querySelector("[name=read_at]"))?.value;

/** The charge's own for this part first, then every receiver of the house, then cans and tanks; what another part runs to comes last of its sort. @param {string} receiver */
function likelyReceivers(receiver) {
  const taken = new Set(Object.values(sheet.run?.receivers ?? {}));
  const fitting = sheet.others.filter((card) => RECEIVER_SORTS.includes(card.sort) && card.mark !== receiver)
    .sort((a, b) => RECEIVER_SORTS.indexOf(a.sort) - RECEIVER_SORTS.indexOf(b.sort) || Number(taken.has(a.mark)) - Number(taken.has(b.mark)));
  const own = receiver ? [sheet.others.find((card) => card.mark === receiver) ?? { mark: receiver, name: receiver }] : [];
  const most = Math.max(RECEIVERS_MOST, fitting.filter((card) => card.sort === "receiver").length);
  return [...own, ...fitting].slice(0, most);
}

function closePanel() {
  sheet.entryForm?.close();
  delete document.documentElement.dataset.panel;
  render(nothing, part("panel"));
  /** @type {HTMLElement} */ (document.querySelector("slate-keypad")).hidden = true;
  showDoing();
}
