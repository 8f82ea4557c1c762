// @ts-check
/** Tank and water in one picture: litres stand on each other, what the mix shrinks by is a thin hatch of its own. */
import { inUnits, shownInUnits, strengthShown } from "../../shell/inunits.js";
import { ticksOf } from "../../ui/chartaxes.js";
import { formatNumber } from "../../ui/format.js";
import { html, nothing } from "../../vendor/lit-html/lit-html.js";
import { doubtSpan } from "../draw/doubt.js";
import { levelPicture } from "../draw/level.js";

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
    words: `${litres(tank.volumeL)} in the tank and ${kg} of water make ${litres(plan.dip20L)} at ${strength(plan.strengthPct)}: ${litres(plan.shrinksL)} less than the sum.`,
  })}<ol class="stack-up__says" aria-hidden="true">
    <li class="stack-up__line stack-up__line--shrinks"><strong>${litres(plan.dip20L)} at ${strength(plan.strengthPct)}</strong><span>${litres(plan.shrinksL)} less than the sum. No loss.</span></li>
    <li class="stack-up__line stack-up__line--water"><strong>${kg} of water</strong><span>${litres(plan.canL)} by the can at ${shownInUnits(plan.waterTempC, "degC", 0)}</span></li>
    <li class="stack-up__line"><strong>${litres(tank.volumeL)} in the tank</strong><span>${strength(tank.strengthPct)}, ${shownInUnits((tank.volumeL * tank.strengthPct) / 100, "LPA", 1)}</span></li></ol></div>
    ${over ? html`<p class="band band--stop"><span class="band__lead">It takes ${litres(most, 0)}.</span> ${litres(over, 0)} would be too much: move some first.</p>` : nothing}`;
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
    id: "warming", unit, doubt: { low: of(mixed - off), high: of(mixed + off), at: of(mixed), words: `about ${shown(mixed)} mixed` },
    known: [{ at: of(plan.waterTempC), words: "water", sign: "dot", weight: "note" }, { at: of(plan.tempC), words: "spirit", sign: "diamond", weight: "copper" }],
    words: `Water at ${shown(plan.waterTempC)}, spirit at ${shown(plan.tempC)}, mixed about ${shown(mixed)} ${unit}, ${shown(mixed - off)} to ${shown(mixed + off)}; without heat of mixing ${shown(calm)}.`,
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
    id: "read", unit, doubt: { low: of(targetPct - heldPct), high: of(targetPct + heldPct), at: of(targetPct), words: `${shown(targetPct)} target`, weight: "well" },
    known: [{ at: of(sumPct), words: `sum ${shown(sumPct)}`, sign: "ring", weight: "copper" }, { at: of(readPct), words: `read ${shown(readPct)}`, sign: "dot", weight: "chalk", isBelow: true }],
    words: `Target ${shown(targetPct)}, by the sum ${shown(sumPct)}, read ${shown(readPct)} ${unit}.`,
  });
}
