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
import { handOrAsk } from "../../shell/hand.js";
import { logPath, vesselPath } from "../../shell/here.js";
import { getKind, readCard, readCards } from "../../shell/phone.js";
import { holdsOf, onTheSlate } from "../../shell/words.js";
import { fromCanonical, toCanonical } from "../../trade/units.js";
import { aboutTap, clearPanel, logButton, markAsked, part, showLogButton } from "../panel.js";
import { planOf, trimOf } from "./plan.js";
import { cardWith, tankNow } from "./tank.js";
import { boxes, panel, pickTank, trimmed, worked } from "./view.js";

const WATER_TEMP = { name: "water_temp", label: "Water temperature", units: ["degC", "degF"], ghost: false, instrument: null, typed_in: "" };

/** @type {{who: any, mark: string, card: any, kind: any, asks: any, tank: import("./tank.js").Tank|null, plan: any, entryForm: EntryForm|null}} */
const page = { who: null, mark: "", card: null, kind: null, asks: null, tank: null, plan: "", entryForm: null };

export async function start() {
  page.who = await handOrAsk();
  if (!page.who) return;
  page.mark = markAsked();
  page.kind = await getKind("reduce");
  page.asks = { name: "reduce_plan", fields: [...page.kind.fields.filter((/** @type {any} */ one) => one.name === "target" || one.name === "temp"), WATER_TEMP] };
  render(html`<div data-part="boxes" class="stack"></div><div data-part="worked" class="stack" aria-live="polite"></div>`, part("body"));
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
  setHead({ mark: card.name || card.mark, first: what, second: `${holdsOf({ ...card, holds: { ...card.holds, volume_l: tank.volumeL, strength_pct: tank.strengthPct } })[1]}${tank.waiting ? ", with what waits here" : ""}`, back: vesselPath(card.mark) });
  if (!part("boxes").childElementCount) {
    render(boxes(page.asks, card, 1), part("boxes"));
    beginWith(card);
    part("boxes").addEventListener("input", () => showWorked());
    part("boxes").addEventListener("change", () => showWorked());
  }
  showWorked();
  if (!part("panel").childElementCount) showDoing();
}

async function showPick() {
  setHead({ mark: "Reduce", first: page.card ? page.card.name : "how much water", back: page.card ? vesselPath(page.card.mark) : "/today" });
  const cards = await readCards();
  render(nothing, part("boxes"));
  render(pickTank(cards.filter((card) => card.sort === "tank" && card.holds && !card.holds.mash && card.holds.strength_pct)), part("worked"));
  render(nothing, part("doing"));
}

/** The target as planned or as aimed at last; typed in the unit of this phone. @param {any} card */
function beginWith(card) {
  const aimed = card.planned?.target_pct ?? card.last.reduce?.target?.value ?? card.holds?.label_strength_pct;
  const field = page.asks.fields[0];
  if (aimed) boxNamed("target").value = fromCanonical(aimed, unitOf(field)).toFixed(1);
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
  render(worked(page.plan, page.tank, page.card.planned), part("worked"));
}

function showDoing() {
  render(html`<div class="thumb--pair pair">
    <button type="button" class="button button--action" @click=${() => openPanel("measured")}>Measured</button>
    <button type="button" class="button button--main button--action" @click=${() => openPanel("water")}>Water in</button></div>
    <a class="button button--plain" href=${logPath(page.mark, "reduce")}>The plain form</a>`, part("doing"));
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
    /** @type {HTMLInputElement} */ (form.querySelector("input[name=water]")).value = fromCanonical(page.plan.steps[0].waterKg, unit).toFixed(1);
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
