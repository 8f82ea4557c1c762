// @ts-check
/** Tank and water in one picture: litres stand on each other, what the mix shrinks by is a thin hatch of its own. */
import { inUnits, shownInUnits, strengthShown } from "../../shell/inunits.js";
import { ticksOf } from "../../ui/chartaxes.js";
import { formatNumber } from "../../ui/format.js";
import { html, nothing } from "../../vendor/lit-html/lit-html.js";
import { doubtSpan } from "../draw/doubt.js";
import { levelPicture } from "../draw/level.js";
import { t } from "../../words/later.js";

const SCALE_MOST = 6;
const LITTLE = 0.3; // of the tank
/** mixed_temp_c: expected error a third of the rise (webapp/trade/reducing.py). */
const RISE_ERROR = 1 / 3;

/** @param {import("./plan.js").Plan} plan @param {import("./tank.js").Tank} tank @param {any} card */
export function stacked(plan, tank, card) {
  const sum = plan.dip20L + plan.shrinksL;
  // A little in a large tank is drawn as the tank's lower part: its scale says so.
  const full = card.capacity_l && sum > card.capacity_l * LITTLE ? card.capacity_l : sum * 1.3;
  const share = (/** @type {number} */ litres) => litres / full;
  const litres = (/** @type {number} */ value, decimals = 1) => shownInUnits(value, "L", decimals);
  const strength = (/** @type {number} */ pct) => { const shown = strengthShown(pct); return `${shown.figure} ${shown.sign}`; };
  const kg = shownInUnits(plan.waterKg, "kg", 1);
  const most = card.working_l || card.capacity_l;
  const over = most && plan.dip20L > most ? plan.dip20L - most : 0;
  return html`<div class="stack-up">${levelPicture({
    id: "reduce", sort: "tank", at: share(tank.volumeL), scale: scaleOf(full),
    layers: [
      { from: 0, to: share(tank.volumeL), weight: "held" }, { from: share(tank.volumeL), to: share(plan.dip20L), weight: "water" },
      { from: share(plan.dip20L), to: share(sum), weight: "shrinks" },
    ],
    words: t("floor-picture-in_the_tank_and", { litres: litres(tank.volumeL), kg, dip20_l: litres(plan.dip20L), strength_pct: strength(plan.strengthPct), shrinks_l: litres(plan.shrinksL) }),
  })}<ol class="stack-up__says" aria-hidden="true">
    <li class="stack-up__line stack-up__line--shrinks"><strong>${t("floor-picture-at", { dip20_l: litres(plan.dip20L), strength_pct: strength(plan.strengthPct) })}</strong><span>${t("floor-picture-less_than_the_sum", { shrinks_l: litres(plan.shrinksL) })}</span></li>
    <li class="stack-up__line stack-up__line--water"><strong>${t("floor-picture-of_water", { kg })}</strong><span>${t("floor-picture-by_the_can_at", { can_l: litres(plan.canL), water_temp_c: shownInUnits(plan.waterTempC, "degC", 0) })}</span></li>
    <li class="stack-up__line"><strong>${t("floor-picture-in_the_tank", { litres: litres(tank.volumeL) })}</strong><span>${strength(tank.strengthPct)}, ${shownInUnits((tank.volumeL * tank.strengthPct) / 100, "LPA", 1)}</span></li></ol></div>
    ${over ? html`<p class="band band--stop"><span class="band__lead">${t("floor-picture-it_takes", { most: litres(most, 0) })}</span> ${t("floor-picture-would_be_too_much", { over: litres(over, 0) })}</p>` : nothing}`;
}

/** Ticks of the wall in the litres or gallons of this phone. @param {number} fullL @returns {[share: number, words: string][]} */
function scaleOf(fullL) {
  const full = inUnits(fullL, "L").value;
  return ticksOf(0, full, SCALE_MOST).filter((value) => value > 0 && value < full * 0.97).map((value) => [value / full, formatNumber(value)]);
}

/** Water, spirit, and how warm the mix will be; nothing while neither was typed. @param {import("./plan.js").Plan} plan */
export function warming(plan) {
  const mixed = plan.tempC + plan.warmsC;
  // Heat of mixing alone: what the two would have without it is no doubt.
  const calm = mixed - plan.mixingC;
  const off = Math.max(0.2, plan.mixingC * RISE_ERROR);
  const shown = (/** @type {number} */ value, decimals = 0) => inUnits(value, "degC").value.toFixed(decimals);
  const of = (/** @type {number} */ value) => inUnits(value, "degC").value;
  const unit = shownInUnits(0, "degC", 0).split("\u00a0")[1];
  return doubtSpan({
    id: "warming", unit, doubt: { low: of(mixed - off), high: of(mixed + off), at: of(mixed), words: t("floor-picture-about_mixed", { figure: shown(mixed) }) },
    known: [{ at: of(plan.waterTempC), words: t("floor-picture-water"), sign: "dot", weight: "note" }, { at: of(plan.tempC), words: t("floor-picture-spirit"), sign: "diamond", weight: "copper" }],
    words: t("floor-picture-water_at_spirit_at", { water_temp_c: shown(plan.waterTempC), temp_c: shown(plan.tempC), figure: shown(mixed), unit, off: shown(mixed - off), off_2: shown(mixed + off), calm: shown(calm) }),
  });
}

/**
 * What was aimed at, what the sum says and what the glass says, on one line.
 * @param {number} targetPct @param {number} heldPct how near is right @param {number} sumPct @param {number} readPct
 */
export function readAgainstSum(targetPct, heldPct, sumPct, readPct) {
  const of = (/** @type {number} */ pct) => inUnits(pct, "pct_vol").value;
  const shown = (/** @type {number} */ pct) => strengthShown(pct).figure;
  const unit = strengthShown(targetPct).sign;
  return doubtSpan({
    id: "read", unit, doubt: { low: of(targetPct - heldPct), high: of(targetPct + heldPct), at: of(targetPct), words: t("floor-picture-target", { target_pct: shown(targetPct) }), weight: "well" },
    known: [{ at: of(sumPct), words: t("floor-picture-sum", { sum_pct: shown(sumPct) }), sign: "ring", weight: "copper" }, { at: of(readPct), words: t("floor-picture-read", { read_pct: shown(readPct) }), sign: "dot", weight: "chalk", isBelow: true }],
    words: t("floor-picture-target_by_the_sum", { target_pct: shown(targetPct), sum_pct: shown(sumPct), read_pct: shown(readPct), unit }),
  });
}
