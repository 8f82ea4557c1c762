// @ts-check
/** Reducing, live: how much water, what the tank should read after it, and each step logged. Works without signal. */
import { onCards } from "../../slate/cards.js";
import { counts, onChange } from "../../slate/queue.js";
import { parseNumber } from "../../ui/format.js";
import "../../ui/keypad.js";
import { offerTakeBack } from "../../shell/takebackbar.js";
import { html, nothing, render } from "../../vendor/lit-html/lit-html.js";
import { EntryForm } from "../../form/entryform.js";
import { showFull } from "../../form/full.js";
import { collect, unitOf } from "../../form/values.js";
import { setHead } from "../../shell/frame.js";
import { inUnits } from "../../shell/inunits.js";
import { handOrAsk } from "../../shell/hand.js";
import { logPath, vesselPath } from "../../shell/here.js";
import { getKind, readCard, readCards } from "../../shell/phone.js";
import { holdsOf, onTheSlate } from "../../shell/words.js";
import { fromCanonical, toCanonical } from "../../trade/units.js";
import { aboutTap, clearPanel, logButton, markAsked, part, showLogButton } from "../panel.js";
import { planOf, trimOf } from "./plan.js";
import { cardWith, tankNow } from "./tank.js";
import { wear } from "../../ui/sheet.js";
import { aimOf } from "./aim.js";
import { boxes, firstPour, panel, pickTank, pourShown, trimmed, worked } from "./view.js";
import { t } from "../../words/later.js";

/** Short, for the boxes stand side by side. */
const LABELS = /** @type {Record<string, string>} */ ({ target: t("floor-reduce-target"), temp: t("floor-reduce-spirit_is_at") });
const WATER_TEMP = { name: "water_temp", label: t("floor-reduce-water_is_at"), units: ["degC", "degF"], ghost: false, instrument: null, typed_in: "" };

/** @type {{who: any, mark: string, card: any, kind: any, asks: any, tank: import("./tank.js").Tank|null, plan: any, aimedBy: string, entryForm: EntryForm|null}} */
const page = { who: null, mark: "", card: null, kind: null, asks: null, tank: null, plan: "", aimedBy: "", entryForm: null };

export async function start() {
  page.who = await handOrAsk();
  if (!page.who) return;
  page.mark = markAsked();
  [page.kind] = await Promise.all([getKind("reduce"), wear("jobs/draw/draw.css"), wear("jobs/reduce/reduce.css")]);
  page.asks = { name: "reduce_plan", fields: [...page.kind.fields.filter((/** @type {any} */ one) => one.name in LABELS).map((/** @type {any} */ one) => ({ ...one, label: LABELS[one.name] })), WATER_TEMP] };
  render(html`<div data-part="boxes" class="plan-form"></div><div data-part="worked" class="stack" aria-live="polite"></div>`, part("body"));
  onChange(() => void show());
  onCards(() => void show());
  await show();
}

async function show() {
  page.card = page.mark ? await readCard(page.mark) : null;
  page.tank = page.card ? await tankNow(page.card) : null;
  const { card, tank } = page;
  if (!card || !tank) return showPick();
  const [what] = holdsOf(card);
  setHead({ mark: card.name || card.mark, first: what, second: `${holdsOf({ ...card, holds: { ...card.holds, volume_l: tank.volumeL, strength_pct: tank.strengthPct } })[1]}${tank.waiting ? t("floor-reduce-with_what_waits_here") : ""}`, back: vesselPath(card.mark) });
  if (!part("boxes").childElementCount) {
    render(boxes(page.asks, card, 1, nudge, logPath(card.mark, "reduce")), part("boxes"));
    beginWith(card, await readCards());
    part("boxes").addEventListener("input", () => showWorked());
    part("boxes").addEventListener("change", () => showWorked());
  }
  showWorked();
}

async function showPick() {
  setHead({ mark: t("floor-reduce-reduce"), first: page.card ? page.card.name : t("floor-reduce-how_much_water"), back: page.card ? vesselPath(page.card.mark) : "/today" });
  const cards = await readCards();
  render(nothing, part("boxes"));
  render(pickTank(cards.filter((card) => card.sort === "tank" && card.holds && !card.holds.mash && card.holds.strength_pct)), part("worked"));
  render(nothing, part("doing"));
}

/** The target as the book or the cards know it; typed in the unit of this phone. @param {any} card @param {any[]} cards */
function beginWith(card, cards) {
  const aim = aimOf(card, cards);
  page.aimedBy = aim?.words ?? "";
  if (aim) boxNamed("target").value = fromCanonical(aim.pct, unitOf(page.asks.fields[0])).toFixed(1);
  part("boxes").addEventListener("input", (event) => {
    if (/** @type {HTMLInputElement} */ (event.target).name === "target") page.aimedBy = "";
  });
}

/** @param {number} tenths of the unit it is typed in */
function nudge(tenths) {
  const box = boxNamed("target");
  const now = parseNumber(box.value);
  box.value = (Number.isFinite(now) ? Math.max(0, now + tenths / 10) : 0).toFixed(1);
  box.dispatchEvent(new Event("input", { bubbles: true }));
}

/** @param {string} name @returns {HTMLInputElement} */
const boxNamed = (name) => /** @type {HTMLInputElement} */ (part("boxes").querySelector(`input[name="${name}"]`));

/** @param {string} name @returns {number|null} canonical */
function typed(name) {
  const value = collect(/** @type {HTMLFormElement} */ (part("boxes").querySelector("form")), page.asks)[name];
  const number = value ? parseNumber(value.raw) : NaN;
  return Number.isFinite(number) ? toCanonical(number, value.unit ?? "") : null;
}

function showWorked() {
  const steps = Number(/** @type {HTMLInputElement|null} */ (part("boxes").querySelector("input[name=steps]:checked"))?.value ?? 1);
  const wanted = { targetPct: typed("target"), tempC: typed("temp"), waterTempC: typed("water_temp"), steps };
  if (!page.tank) return;
  page.plan = planOf(page.tank, wanted);
  render(worked(page.plan, page.tank, page.card, page.aimedBy, wanted.tempC !== null || wanted.waterTempC !== null), part("worked"));
  if (!page.entryForm) showDoing();
}

/** Water that went in and has not been read since: then reading comes first. */
function isUnread() {
  const last = page.card?.last.reduce ?? {};
  return last.water?.value > 0 && !(Date.parse(last.glass?.at ?? "") > Date.parse(last.water.at)) && Date.parse(last.water.at) >= Date.parse(page.card.holds?.since ?? "");
}

function showDoing() {
  const [mayRead, pours] = [isUnread(), typeof page.plan !== "string" && page.plan.waterKg >= 0.05];
  const main = "button button--main button--action";
  const other = "button button--action";
  render(html`<div class="thumb--pair pair">
    <button type="button" class=${mayRead ? main : other} @click=${() => openPanel("measured")}>${t("floor-reduce-measured")}</button>
    <button type="button" class=${mayRead ? other : main} @click=${() => openPanel("water")}>${pours ? t("floor-reduce-are_in", { plan: pourShown(page.plan) }) : t("floor-reduce-water_in")}</button></div>`, part("doing"));
}

/** @param {"water"|"measured"} what */
function openPanel(what) {
  const target = collect(/** @type {HTMLFormElement} */ (part("boxes").querySelector("form")), page.asks).target;
  if (!target) return boxNamed("target").focus();
  const { kind, tank } = page;
  const card = cardWith(page.card, tank);
  const unit = unitOf(kind.fields.find((/** @type {any} */ one) => one.name === "water"));
  render(panel({ kind, card, what, target: { raw: target.raw, unit: target.unit ?? "pct_vol" }, waterRaw: "0", waterUnit: unit, onLeave: closePanel }), part("panel"));
  const form = /** @type {HTMLFormElement} */ (part("panel").querySelector("form"));
  if (what === "water" && typeof page.plan !== "string") {
    /** @type {HTMLInputElement} */ (form.querySelector("input[name=water]")).value = fromCanonical(toCanonical(firstPour(page.plan), inUnits(1, "kg").unit), unit).toFixed(1);
  }
  page.entryForm = new EntryForm({
    form, kind, card, who: page.who, look: part("panel-look"),
    figures: what === "water" ? part("panel-figures") : document.createElement("div"), // of what is measured the trim speaks
    about: aboutTap(form, page.mark),
    onChange: () => showTrim(),
    action: logButton,
    onFull: (error) => showFull(part("panel-look"), error),
    onLogged: async (kept) => {
      closePanel();
      offerTakeBack({ words: onTheSlate((await counts()).waiting), about: kind.title, entry: kept.id });
    },
  });
  showLogButton(form);
  /** @type {HTMLElement|null} */ (form.querySelector("input[data-keypad]"))?.focus({ preventScroll: true });
}

function showTrim() {
  const figures = page.entryForm?.read?.figures ?? {};
  const target = page.entryForm?.read?.values.target;
  const place = part("panel").querySelector('[data-part="trim"]');
  if (!place || !page.tank) return;
  const measured = figures.true_strength;
  const isMeasured = measured > 0 && target > 0;
  render(isMeasured ? trimmed(trimOf(page.tank, target, measured, figures.volume_20 ?? null), measured, page.tank, page.card) : nothing, /** @type {HTMLElement} */ (place));
}

function closePanel() {
  clearPanel(page.entryForm);
  page.entryForm = null;
  showDoing();
}
