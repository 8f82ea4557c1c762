// @ts-check
/** How the reducing page looks: the water, what the tank should read, the steps. */
import { badge } from "../../ui/badge.js";
import { formatDate, formatMinute, formatNumber } from "../../ui/format.js";
import { html, nothing } from "../../vendor/lit-html/lit-html.js";
import { icon } from "../../icons/icons.js";
import { figureBox, minuteBox, remarkBox, wordsBox } from "../../form/quickfields.js";
import { heldLimit } from "../../kinds/limits.js";
import { chip } from "../../shell/choices.js";
import { inUnits, shownInUnits, strengthShown, unitsChoice } from "../../shell/inunits.js";
import { unitIn, valueIn } from "../../trade/houseunits.js";
import { symbol } from "../../trade/units.js";
import { readAgainstSum, stacked, warming } from "./picture.js";
import { mostOf } from "./plan.js";

const STEPS = [1, 2, 3, 4];

/**
 * @param {any} kind of the boxes @param {any} card @param {number} steps @param {(by: number) => void} nudge the target, by tenths
 * @param {string} plainForm address of it
 */
export const boxes = (kind, card, steps, nudge, plainForm) => html`<form class="plan-form" data-plan novalidate aria-label="What it should be">
  <div class="aim">${figureBox(kind, "target", card)}
    <button type="button" class="button" aria-label="A tenth less" @click=${() => nudge(-1)}>−</button><button type="button" class="button" aria-label="A tenth more" @click=${() => nudge(1)}>+</button></div>
  <div class="pair">${figureBox(kind, "temp", card)}${figureBox(kind, "water_temp", card)}</div>
  <details class="more"><summary><strong>In goes</strong> <span class="quiet">or the plain form</span></summary><div class="form">
    <fieldset class="chips" data-field="steps"><legend><span>In how many goes</span></legend><div class="chips__row">
      ${STEPS.map((count) => chip("steps", String(count), String(count), count === steps))}</div></fieldset>
    <a class="button" href=${plainForm}>The plain form</a></div></details></form>`;

/** @param {import("./plan.js").Plan|string} plan @param {import("./tank.js").Tank} tank @param {any} card @param {string} aimedBy where the target comes from @param {boolean} hasTemps typed */
export function worked(plan, tank, card, aimedBy, hasTemps) {
  const { planned } = card;
  if (typeof plan === "string") {
    return html`${plannedLine(planned)}${plan ? html`<p class="band band--ask">${badge("ask")} ${plan}</p>` : html`<p class="quiet">Type the strength it should have.</p>`}`;
  }
  const water = inUnits(plan.waterKg, "kg");
  const at = `at ${shownInUnits(plan.tempC, "degC", 1)}`;
  const [true20, dip] = [strengthShown(plan.strengthPct), inUnits(plan.dipL, "L")];
  const glass = unitsChoice() === "us" || plan.glassPct === null ? nothing
    : html`<div><dt>Glass</dt><dd data-figure="glass">${formatNumber(plan.glassPct, 1)}</dd><dd class="quiet">${at}</dd></div>`;
  return html`
    ${aimedBy ? html`<p class="quiet">${aimedBy}</p>` : nothing}
    <p class="figure figure--water"><span class="figure__value" data-figure="water">${formatNumber(water.value, 1)}</span>
      <span class="figure__about">${symbol(water.unit)} of water<br>± ${formatNumber(inUnits(plan.doubtKg, "kg").value, 1)} for ± ${shownInUnits(0.1, "pct_vol", 1)}</span></p>
    ${stacked(plan, tank, card)}
    ${hasTemps ? warming(plan) : nothing}
    ${pourWords(plan)}
    <h2>What the tank should read then</h2>
    <dl class="readings">${glass}
      <div><dt>True strength</dt><dd data-figure="strength">${true20.figure}</dd><dd class="quiet">${true20.sign}</dd></div>
      <div><dt>Dip, ${symbol(dip.unit)}</dt><dd data-figure="dip">${formatNumber(dip.value, 1)}</dd><dd class="quiet">${at}</dd></div></dl>
    ${plan.steps.length > 1 ? stepList(plan) : nothing}
    ${plannedLine(planned)}${cautions(plan)}`;
}

/** @param {import("./plan.js").Plan} plan @returns {number} what goes in first, in the unit of this phone */
export const firstPour = (plan) => (plan.steps.length > 1 ? inUnits(plan.steps[0].waterKg, "kg").value : mostOf(inUnits(plan.waterKg, "kg").value));

/** @param {import("./plan.js").Plan} plan */
export const pourShown = (plan) => `${formatNumber(firstPour(plan), Number.isInteger(firstPour(plan)) ? 0 : 1)} ${symbol(inUnits(1, "kg").unit)}`;

/** @param {import("./plan.js").Plan} plan */
function pourWords(plan) {
  const unit = symbol(inUnits(1, "kg").unit);
  const one = strengthShown(1).sign;
  const per = (plan.perKgPct * inUnits(1, "pct_vol").value) / inUnits(1, "kg").value;
  if (plan.waterKg < 0.05) return html`<p class="band band--note">As wanted: no water is needed.</p>`;
  const isAll = firstPour(plan) >= inUnits(plan.waterKg, "kg").value - 1e-9;
  return html`<p class="band band--note"><strong>Pour ${pourShown(plan)}${isAll ? "." : " first."}</strong> Stir, let it stand until it stops warming, read${isAll ? " once more" : ", then the rest"}. One ${unit} is ${formatNumber(per, 2)} ${one}.</p>`;
}

/** @param {any} planned */
const plannedLine = (planned) => (planned?.target_pct
  ? html`<p class="band band--note">Planned by ${planned.person}, ${formatDate(planned.at)}: ${planned.name}, ${shownInUnits(planned.target_pct, "pct_vol", 1)}${planned.water_kg ? ` with ${shownInUnits(planned.water_kg, "kg", 1)} of water` : ""}.</p>`
  : nothing);

/** @param {import("./plan.js").Plan} plan */
const stepList = (plan) => html`<ul class="list" aria-label="Step by step">${plan.steps.map((step, n) => html`<li class="list__item--short">
  <span class="list__mark">${n + 1}</span><span class="list__what">${shownInUnits(step.waterKg, "kg", 1)}, then rest</span>
  <span class="list__end">${shownInUnits(step.strengthPct, "pct_vol", 1)} · ${shownInUnits(step.dipL, "L", 1)}</span></li>`)}</ul>`;

/** @param {import("./plan.js").Plan} plan */
function cautions(plan) {
  const lines = [
    plan.warmsC > 1 ? `Mixing warms it by about ${formatNumber(Math.round(valueIn(plan.warmsC, "degC", true)))} ${symbol(unitIn("degC"))}. Let it cool and rest, a day at least, before glass and dip.` : "",
    plan.mayCloud ? "It may cloud at this strength, the more the colder. Go slowly, rest, and filter cold if it does." : "",
    plan.isBigDrop ? "A long way down in one go. Two or three goes with a rest between cloud less." : "",
  ].filter(Boolean);
  return lines.map((words) => html`<p class="caution">${icon("warning")}<span>${words}</span></p>`);
}

/**
 * The panel under the thumb.
 * @param {{kind: any, card: any, what: "water"|"measured", target: {raw: string, unit: string}, waterRaw: string, waterUnit: string, onLeave: () => void}} panel
 */
export function panel({ kind, card, what, target, waterRaw, onLeave }) {
  const title = what === "water" ? "Water went in" : "Measured after the rest";
  const now = new Date();
  return html`<form class="form panel" data-kind="reduce" novalidate aria-label=${title}>
    <header class="panel__head"><h2>${title}</h2><button type="button" class="button button--plain" @click=${onLeave}>Leave it</button></header>
    <input type="hidden" name="target" value=${target.raw}><select name="target_unit" hidden><option value=${target.unit}></option></select>
    ${what === "water" ? html`${figureBox(kind, "water", card)}` : html`<input type="hidden" name="water" value=${waterRaw}>
      <div class="pair">${figureBox(kind, "glass", card)}${figureBox(kind, "temp", card)}</div>${figureBox(kind, "volume", card)}`}
    <div data-part="trim" aria-live="polite"></div>
    <details class="more"><summary><strong>More</strong> <span class="quiet">another minute, a remark</span></summary><div class="form">
      ${minuteBox(formatMinute(now))}${what === "water" ? wordsBox(kind, "rest_until") : figureBox(kind, "strength", card)}${remarkBox()}</div></details>
    <div data-part="panel-look" aria-live="polite"></div><div data-part="panel-figures" class="sums" hidden></div></form>`;
}

/** @param {{offPct: number, trimKg: number|null, shortL: number|null}} trim @param {number} measuredPct @param {import("./tank.js").Tank} tank @param {any} card of it */
export function trimmed(trim, measuredPct, tank, card) {
  const isRight = Math.abs(trim.offPct) <= heldLimit("reduce_pct", card);
  const off = `${formatNumber(Math.abs(trim.offPct), 1)} points`;
  const words = isRight ? "As wanted." : trim.trimKg === null ? `${off} too weak. Spirit has to go in; water cannot come out.`
    : `${off} too strong: ${shownInUnits(trim.trimKg, "kg", 1)} of water more.`;
  const { shortL } = trim;
  const dip = shortL === null ? nothing : Math.abs(shortL) <= (tank.volumeL * heldLimit("dip_pct", card)) / 100 ? html`<br>The dip agrees with the sum.`
    : html`<br>The dip is ${shownInUnits(Math.abs(shortL), "L", 1)} ${shortL > 0 ? "under" : "over"} the sum: look at it again.`;
  return html`${readAgainstSum(measuredPct - trim.offPct, heldLimit("reduce_pct", card), tank.strengthPct, measuredPct)}
    <p class="band ${isRight ? "band--note" : "band--ask"}"><strong>${shownInUnits(measuredPct, "pct_vol", 1)} true.</strong> ${words}${dip}</p>`;
}

/** @param {any[]} cards tanks with spirit in them */
export const pickTank = (cards) => (cards.length
  ? html`<p>Which tank?</p><ul class="list">${cards.map((card) => html`<li class="list__item--short"><a class="button" href="?mark=${encodeURIComponent(card.mark)}">${card.name || card.mark}</a>
      <span class="list__what">${card.holds.what}</span><span class="list__end">${shownInUnits(card.holds.volume_l, "L", 0)}</span></li>`)}</ul>`
  : html`<p class="band band--note">No tank has spirit in it, as far as this phone knows. Gauge the tank first.</p>`);
