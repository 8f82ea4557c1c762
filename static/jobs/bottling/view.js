// @ts-check
/** How the bottling line looks on the phone: the last checks, average and spread, the next check, and the panel of a check. */
import { badge } from "../../ui/badge.js";
import { formatMinute, formatNumber, formatTime } from "../../ui/format.js";
import { html, nothing } from "../../vendor/lit-html/lit-html.js";
import { figureBox, minuteBox, remarkBox } from "../../form/quickfields.js";
import { chip } from "../../shell/choices.js";
import { shownInUnits, strengthShown } from "../../shell/inunits.js";
import { COUNT_USUAL } from "./checks.js";

/**
 * @typedef {object} Line what the page shows
 * @property {import("./checks.js").Spread|null} fill
 * @property {import("./checks.js").Spread|null} strength
 * @property {{dueAt: number, isLate: boolean, inMin: number}|null} due
 * @property {{low: number, high: number|null, words: string}|null} fillLimits
 * @property {{low: number, high: number}|null} strengthLimits
 * @property {number|null} bottles
 * @property {number|null} sizeL
 * @property {number|null} labelPct
 */

/** @param {Line} line */
export function state(line) {
  const { fill, strength, due } = line;
  return html`${dueLine(due)}
    ${fill ? html`<p class="figure"><span class="figure__value" data-figure="fill">${formatNumber(fill.mean, 1)}</span>
      <span class="figure__about">% full on average<br>${fill.count} ${fill.count === 1 ? "check" : "checks"}${fill.spread === null ? nothing : `, spread ${formatNumber(fill.spread, 2)}`}<br>${fill.over} over, ${fill.under} under the label</span></p>` : nothing}
    <dl class="readings">
      ${fill ? html`<div><dt>Last fill</dt><dd>${formatNumber(fill.last, 1)}</dd><dd class="quiet">%</dd></div>` : nothing}
      ${strength ? html`<div><dt>Last strength</dt><dd data-figure="strength">${strengthShown(strength.last).figure}</dd><dd class="quiet">average ${strengthShown(strength.mean).figure} ${strengthShown(strength.mean).sign}</dd></div>` : nothing}
      ${line.bottles === null ? nothing : html`<div><dt>Tank fills</dt><dd data-figure="bottles">${formatNumber(line.bottles)}</dd><dd class="quiet">of ${shownInUnits(line.sizeL ?? 0, "L", 2)}, at most</dd></div>`}</dl>
    ${limits(line)}`;
}

/** @param {{dueAt: number, isLate: boolean, inMin: number}|null} due */
function dueLine(due) {
  if (!due) return html`<p class="band band--note">No check yet. Take ${COUNT_USUAL} bottles off the line, weigh them, read their strength.</p>`;
  return due.isLate
    ? html`<p class="band band--ask" data-due>${badge("ask", "due")} The next check was due ${formatTime(due.dueAt)}.</p>`
    : html`<p class="band band--note" data-due>Next check ${formatTime(due.dueAt)}, in ${due.inMin} min.</p>`;
}

/** @param {Line} line */
function limits({ fillLimits, strengthLimits, labelPct }) {
  const fill = fillLimits ? `Each bottle ${formatNumber(fillLimits.low, 1)} % full${fillLimits.high === null ? " or more" : ` to ${formatNumber(fillLimits.high, 1)}`}, ${fillLimits.words}. ` : "";
  const strength = strengthLimits ? `Strength ${formatNumber(strengthLimits.low, 1)} to ${formatNumber(strengthLimits.high, 1)} % vol for a label of ${formatNumber(labelPct, 1)}.` : "";
  return fill || strength ? html`<p class="quiet">${fill}${strength}</p>` : nothing;
}

/**
 * The panel of a check. Bottles are weighed one by one; what the entry keeps is worked out from them.
 * @param {{kind: any, card: any, bottles: number, sizeRaw: string, labelRaw: string, lineRaw: string, emptyRaw: string, onMore: () => void, onLeave: () => void}} panel
 */
export function panel({ kind, card, bottles, sizeRaw, labelRaw, lineRaw, emptyRaw, onMore, onLeave }) {
  const count = Array.from({ length: bottles }, (_, n) => n + 1);
  return html`<form class="form panel" data-kind="bottle_check" novalidate aria-label="Check bottles">
    <header class="panel__head"><h2>Check bottles <span class="quiet">${formatTime(new Date())}</span></h2><button type="button" class="button button--plain" @click=${onLeave}>Leave it</button></header>
    <input type="hidden" name="line" value=${lineRaw}><input type="hidden" name="fill_least"><input type="hidden" name="fill_most">
    ${labelRaw ? html`<input type="hidden" name="label_strength" value=${labelRaw}>` : nothing}
    ${weightBox("empty", "Empty bottle with closure, g", emptyRaw)}
    <div class="pair">${count.map((n) => weightBox(`gross_${n}`, `Bottle ${n}, full, g`, ""))}</div>
    <button type="button" class="button" @click=${onMore}>One more bottle</button>
    ${figureBox(kind, "strength_found", card)}
    <div data-part="weighed" aria-live="polite"></div>
    <fieldset class="chips" data-field="labels_right"><legend><span>Labels and closures right</span></legend><div class="chips__row">${chip("labels_right", "yes", "yes", false)}${chip("labels_right", "no", "no", false)}</div></fieldset>
    <details class="more"><summary><strong>More</strong> <span class="quiet">fill by hand, bottle size, what was done</span></summary><div class="form">
      <div class="pair">${figureBox(kind, "fill_found", card)}${figureBox(kind, "tested", card)}</div>
      <div class="field field--figure" data-field="bottle_size"><label class="field__label" for="check-size">Bottle size</label><input class="field__value" id="check-size" name="bottle_size" type="text" inputmode="decimal" autocomplete="off" maxlength="12" data-keypad data-unit="L" value=${sizeRaw}><span class="field__unit">L</span></div>
      ${minuteBox(formatMinute(new Date()))}<div class="field field--words" data-field="done"><label class="field__label" for="check-done">Done if wrong</label><textarea class="field__value" id="check-done" name="done" rows="2" maxlength="2000"></textarea></div>${remarkBox()}</div></details>
    <div data-part="panel-look" aria-live="polite"></div><div data-part="panel-figures" class="sums" hidden></div></form>`;
}

/** @param {string} name @param {string} label @param {string} value */
const weightBox = (name, label, value) => html`<div class="field field--figure" data-field=${name}><label class="field__label" for="check-${name}">${label}</label>
  <input class="field__value" id="check-${name}" name=${name} type="text" inputmode="decimal" autocomplete="off" maxlength="8" data-keypad data-unit="g" value=${value}><span class="field__unit">g</span></div>`;

/** @param {{fills: number[], mean: string, isOut: boolean, words: string}|null} weighed */
export const weighedLine = (weighed) => (weighed
  ? html`<p class="band ${weighed.isOut ? "band--ask" : "band--note"}"><strong data-figure="weighed">${formatNumber(Number(weighed.mean), 1)} % full</strong> on average of ${weighed.fills.length}: ${weighed.fills.map((fill) => formatNumber(fill, 1)).join(", ")}. ${weighed.words}</p>`
  : nothing);

/** @param {any[]} cards */
export const pickTank = (cards) => (cards.length
  ? html`<p>Which tank runs to the line?</p><ul class="list">${cards.map((card) => html`<li class="list__item--short"><a class="button" href="?mark=${encodeURIComponent(card.mark)}">${card.name || card.mark}</a>
      <span class="list__what">${card.holds.name || card.holds.what}</span><span class="list__end">${shownInUnits(card.holds.volume_l, "L", 0)}</span></li>`)}</ul>`
  : html`<p class="band band--note">No tank has spirit in it, as far as this phone knows. Gauge the bottling tank first.</p>`);
