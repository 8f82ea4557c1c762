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
import { t } from "../../words/later.js";

const STEPS = [1, 2, 3, 4];

/**
 * @param {any} kind of the boxes @param {any} card @param {number} steps @param {(by: number) => void} nudge the target, by tenths
 * @param {string} plainForm address of it
 */
export const boxes = (kind, card, steps, nudge, plainForm) => html`<form class="plan-form" data-plan novalidate aria-label=${t("floor-view-what_it_should_be")}>
  <div class="aim">${figureBox(kind, "target", card)}
    <button type="button" class="button" aria-label=${t("floor-view-a_tenth_less")} @click=${() => nudge(-1)}>−</button><button type="button" class="button" aria-label=${t("floor-view-a_tenth_more")} @click=${() => nudge(1)}>+</button></div>
  <div class="pair">${figureBox(kind, "temp", card)}${figureBox(kind, "water_temp", card)}</div>
  <details class="more"><summary><strong>${t("floor-view-in_goes")}</strong> <span class="quiet">${t("floor-view-or_the_plain_form")}</span></summary><div class="form">
    <fieldset class="chips" data-field="steps"><legend><span>${t("floor-view-in_how_many_goes")}</span></legend><div class="chips__row">
      ${STEPS.map((count) => chip("steps", String(count), String(count), count === steps))}</div></fieldset>
    <a class="button" href=${plainForm}>${t("floor-view-the_plain_form")}</a></div></details></form>`;

/** @param {import("./plan.js").Plan|string} plan @param {import("./tank.js").Tank} tank @param {any} card @param {string} aimedBy where the target comes from @param {boolean} hasTemps typed */
export function worked(plan, tank, card, aimedBy, hasTemps) {
  const { planned } = card;
  if (typeof plan === "string") {
    return html`${plannedLine(planned)}${plan ? html`<p class="band band--ask">${badge("ask")} ${plan}</p>` : html`<p class="quiet">${t("floor-view-type_the_strength_it")}</p>`}`;
  }
  const water = inUnits(plan.waterKg, "kg");
  const at = t("floor-view-at", { temp_c: shownInUnits(plan.tempC, "degC", 1) });
  const [true20, dip] = [strengthShown(plan.strengthPct), inUnits(plan.dipL, "L")];
  const glass = unitsChoice() === "us" || plan.glassPct === null ? nothing
    : html`<div><dt>${t("floor-glass")}</dt><dd data-figure="glass">${formatNumber(plan.glassPct, 1)}</dd><dd class="quiet">${at}</dd></div>`;
  return html`
    ${aimedBy ? html`<p class="quiet">${aimedBy}</p>` : nothing}
    <p class="figure figure--water"><span class="figure__value" data-figure="water">${formatNumber(water.value, 1)}</span>
      <span class="figure__about">${t("floor-view-of_water", { unit: symbol(water.unit) })}<br>${t("floor-view-for", { doubt_kg: formatNumber(inUnits(plan.doubtKg, "kg").value, 1), at: shownInUnits(0.1, "pct_vol", 1) })}</span></p>
    ${stacked(plan, tank, card)}
    ${hasTemps ? warming(plan) : nothing}
    ${pourWords(plan)}
    <h2>${t("floor-view-what_the_tank_should")}</h2>
    <dl class="readings">${glass}
      <div><dt>${t("floor-true_strength")}</dt><dd data-figure="strength">${true20.figure}</dd><dd class="quiet">${true20.sign}</dd></div>
      <div><dt>${t("floor-view-dip", { unit: symbol(dip.unit) })}</dt><dd data-figure="dip">${formatNumber(dip.value, 1)}</dd><dd class="quiet">${at}</dd></div></dl>
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
  if (plan.waterKg < 0.05) return html`<p class="band band--note">${t("floor-view-as_wanted_no_water")}</p>`;
  const isAll = firstPour(plan) >= inUnits(plan.waterKg, "kg").value - 1e-9;
  return html`<p class="band band--note"><strong>${t("floor-view-pour", { plan: pourShown(plan), rest: isAll ? "." : t("floor-view-first") })}</strong> ${t("floor-view-stir_let_it_stand", { rest: isAll ? t("floor-view-once_more") : t("floor-view-then_the_rest"), unit, per: formatNumber(per, 2), one })}</p>`;
}

/** @param {any} planned */
const plannedLine = (planned) => (planned?.target_pct
  ? html`<p class="band band--note">${t("floor-view-planned_by", { person: planned.person, planned: formatDate(planned.at), name: planned.name, target_pct: shownInUnits(planned.target_pct, "pct_vol", 1), water: planned.water_kg ? t("floor-view-with_of_water", { water_kg: shownInUnits(planned.water_kg, "kg", 1) }) : "" })}</p>`
  : nothing);

/** @param {import("./plan.js").Plan} plan */
const stepList = (plan) => html`<ul class="list" aria-label=${t("floor-view-step_by_step")}>${plan.steps.map((step, n) => html`<li class="list__item--short">
  <span class="list__mark">${n + 1}</span><span class="list__what">${t("floor-view-then_rest", { water_kg: shownInUnits(step.waterKg, "kg", 1) })}</span>
  <span class="list__end">${shownInUnits(step.strengthPct, "pct_vol", 1)} · ${shownInUnits(step.dipL, "L", 1)}</span></li>`)}</ul>`;

/** @param {import("./plan.js").Plan} plan */
function cautions(plan) {
  const lines = [
    plan.warmsC > 1 ? t("floor-view-mixing_warms_it_by", { warms_c: formatNumber(Math.round(valueIn(plan.warmsC, "degC", true))), unit: symbol(unitIn("degC")) }) : "",
    plan.mayCloud ? t("floor-view-it_may_cloud_at") : "",
    plan.isBigDrop ? t("floor-view-a_long_way_down") : "",
  ].filter(Boolean);
  return lines.map((words) => html`<p class="caution">${icon("warning")}<span>${words}</span></p>`);
}

/**
 * The panel under the thumb.
 * @param {{kind: any, card: any, what: "water"|"measured", target: {raw: string, unit: string}, waterRaw: string, waterUnit: string, onLeave: () => void}} panel
 */
export function panel({ kind, card, what, target, waterRaw, onLeave }) {
  const title = what === "water" ? t("floor-view-water_went_in") : t("floor-view-measured_after_the_rest");
  const now = new Date();
  return html`<form class="form panel" data-kind="reduce" novalidate aria-label=${title}>
    <header class="panel__head"><h2>${title}</h2><button type="button" class="button button--plain" @click=${onLeave}>${t("floor-leave_it")}</button></header>
    <input type="hidden" name="target" value=${target.raw}><select name="target_unit" hidden><option value=${target.unit}></option></select>
    ${what === "water" ? html`${figureBox(kind, "water", card)}` : html`<input type="hidden" name="water" value=${waterRaw}>
      <div class="pair">${figureBox(kind, "glass", card)}${figureBox(kind, "temp", card)}</div>${figureBox(kind, "volume", card)}`}
    <div data-part="trim" aria-live="polite"></div>
    <details class="more"><summary><strong>${t("floor-more")}</strong> <span class="quiet">${t("floor-view-another_minute_a_remark")}</span></summary><div class="form">
      ${minuteBox(formatMinute(now))}${what === "water" ? wordsBox(kind, "rest_until") : figureBox(kind, "strength", card)}${remarkBox()}</div></details>
    <div data-part="panel-look" aria-live="polite"></div><div data-part="panel-figures" class="sums" hidden></div></form>`;
}

/** @param {{offPct: number, trimKg: number|null, shortL: number|null}} trim @param {number} measuredPct @param {import("./tank.js").Tank} tank @param {any} card of it */
export function trimmed(trim, measuredPct, tank, card) {
  const isRight = Math.abs(trim.offPct) <= heldLimit("reduce_pct", card);
  const off = t("floor-view-points", { off_pct: formatNumber(Math.abs(trim.offPct), 1) });
  const words = isRight ? t("floor-view-as_wanted") : trim.trimKg === null ? t("floor-view-too_weak_spirit_has", { off })
    : t("floor-view-too_strong_of_water", { off, trim_kg: shownInUnits(trim.trimKg, "kg", 1) });
  const { shortL } = trim;
  const dip = shortL === null ? nothing : Math.abs(shortL) <= (tank.volumeL * heldLimit("dip_pct", card)) / 100 ? html`<br>${t("floor-view-the_dip_agrees_with")}`
    : html`<br>${t("floor-view-dip_off_sum", { litres: shownInUnits(Math.abs(shortL), "L", 1), side: shortL > 0 ? "under" : "over" })}`;
  return html`${readAgainstSum(measuredPct - trim.offPct, heldLimit("reduce_pct", card), tank.strengthPct, measuredPct)}
    <p class="band ${isRight ? "band--note" : "band--ask"}"><strong>${t("floor-view-true", { measured_pct: shownInUnits(measuredPct, "pct_vol", 1) })}</strong> ${words}${dip}</p>`;
}

/** @param {any[]} cards tanks with spirit in them */
export const pickTank = (cards) => (cards.length
  ? html`<p>${t("floor-view-which_tank")}</p><ul class="list">${cards.map((card) => html`<li class="list__item--short"><a class="button" href="?mark=${encodeURIComponent(card.mark)}">${card.name || card.mark}</a>
      <span class="list__what">${card.holds.what}</span><span class="list__end">${shownInUnits(card.holds.volume_l, "L", 0)}</span></li>`)}</ul>`
  : html`<p class="band band--note">${t("floor-view-no_tank_has_spirit_2")}</p>`);
