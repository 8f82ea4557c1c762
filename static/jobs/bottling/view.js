// @ts-check
/** How the bottling line looks on the phone: the next check and the line's speed large, then the last checks, and the panel of a check. */
import { badge } from "../../ui/badge.js";
import { formatMinute, formatNumber, formatQuantity, formatTime } from "../../ui/format.js";
import { html, nothing } from "../../vendor/lit-html/lit-html.js";
import { figureBox, minuteBox, remarkBox } from "../../form/quickfields.js";
import { chip, choiceRow } from "../../shell/choices.js";
import { shownInUnits, strengthShown } from "../../shell/inunits.js";
import { COUNT_USUAL } from "./checks.js";

/** Common practice, no source. */
const IN_CASE = /** @type {[string, string][]} */ (["6", "12", "24"].map((count) => [count, count]));

/**
 * @typedef {object} Line what the page shows
 * @property {import("./checks.js").Spread|null} fill
 * @property {import("./checks.js").Spread|null} strength
 * @property {import("./checks.js").Due|null} due
 * @property {import("./checks.js").Speed|null} speed
 * @property {{at: number, soonest: number, latest: number, left: number}|null} end
 * @property {number|null} filled bottles as last counted
 * @property {number|null} expected bottles by now
 * @property {number} everyMin
 * @property {{low: number, high: number|null, words: string}|null} fillLimits
 * @property {{low: number, high: number}|null} strengthLimits
 * @property {number|null} bottles
 * @property {number|null} sizeL
 * @property {number|null} labelPct
 */

/** @param {Line} line */
export function state(line) {
  const { fill, strength } = line;
  return html`<section class="line" aria-label="The line">${nextCheck(line)}${speedPart(line)}${bar(line)}</section>
    <dl class="readings">
      ${fill ? html`<div><dt>Fill, average</dt><dd data-figure="fill">${formatNumber(fill.mean, 1)}</dd><dd class="quiet">% of the label, last ${formatNumber(fill.last, 1)}</dd></div>` : nothing}
      ${strength ? html`<div><dt>Last strength</dt><dd data-figure="strength">${strengthShown(strength.last).figure}</dd><dd class="quiet">average ${strengthShown(strength.mean).figure} ${strengthShown(strength.mean).sign}</dd></div>` : nothing}
      ${line.bottles === null ? nothing : html`<div><dt>Tank fills</dt><dd data-figure="bottles">${formatNumber(line.bottles)}</dd><dd class="quiet">of ${formatQuantity(line.sizeL ?? 0, 2, "L")}, at most</dd></div>`}</dl>
    ${fill ? html`<p class="quiet">${fill.count} ${fill.count === 1 ? "check" : "checks"}${fill.spread === null ? nothing : `, spread ${formatNumber(fill.spread, 2)}`}; ${fill.over} over, ${fill.under} under the label.</p>` : nothing}
    ${limits(line)}`;
}

/** Large enough for a glance from the line. @param {Line} line */
function nextCheck({ due, everyMin }) {
  if (!due) return html`<div class="line__next"><p class="line__label">Next check</p><p class="line__figure" data-figure="due">now</p>
    <p class="line__sub">The first. Take ${COUNT_USUAL} bottles off the line, weigh them, read their strength.</p></div>`;
  const atBottle = due.atBottle === null ? "" : `at bottle ${formatNumber(due.atBottle)}`;
  if (due.dueAt === null) return html`<div class="line__next" data-due><p class="line__label">Next check</p><p class="line__figure" data-figure="due">${due.atBottle === null ? "–" : formatNumber(due.atBottle)}</p>
    <p class="line__sub">${due.atBottle === null ? "as the house wants it" : "bottles filled"}</p></div>`;
  const minutes = Math.abs(due.inMin ?? 0);
  const figure = minutes < 100 ? html`${minutes}<span class="line__unit"> min</span>` : html`${Math.floor(minutes / 60)}<span class="line__unit"> h</span>`;
  return html`<div class="line__next ${due.isLate ? "line__next--late" : ""}" data-due><p class="line__label">${due.isLate ? badge("ask", "late") : "Next check in"}</p>
    <p class="line__figure" data-figure="due">${figure}</p>
    <p class="line__sub">${due.isLate ? `The next check was due ${formatTime(due.dueAt)}` : `Next check ${formatTime(due.dueAt)}`}${atBottle ? `, ${due.isByCount ? "about" : "or"} ${atBottle}` : everyMin ? `, every ${formatNumber(everyMin)} min` : ""}.</p></div>`;
}

/** @param {Line} line */
function speedPart({ speed, end, filled }) {
  if (!speed) return html`<div class="line__speed"><p class="line__label">Line</p><p class="line__figure line__figure--second">–</p><p class="line__sub">${filled === null ? "Type the bottles filled at two checks, and its speed stands here." : `${formatNumber(filled)} filled. The next count gives the speed.`}</p></div>`;
  const isApart = end && end.latest - end.soonest > 120_000;
  return html`<div class="line__speed"><p class="line__label">Line</p><p class="line__figure line__figure--second"><span data-figure="speed">${formatNumber(speed.perHour)}</span><span class="line__unit"> an hour</span></p>
    <p class="line__sub">${end ? html`Ends about <strong data-figure="end">${formatTime(end.at)}</strong>${isApart ? `, ${formatTime(end.soonest)} to ${formatTime(end.latest)}` : ""}` : "The tank is through, by the count."}</p></div>`;
}

/** The tank in bottles, to scale: counted is solid, expected since then is hatched. @param {Line} line */
function bar({ bottles, filled, expected }) {
  if (!bottles || filled === null) return nothing;
  const at = (/** @type {number} */ count) => `${Math.min(count / bottles, 1) * 100}%`;
  const words = `${formatNumber(filled)} of ${formatNumber(bottles)} counted${expected !== null && expected > filled ? `, about ${formatNumber(expected)} by now` : ""}`;
  return html`<figure class="line__bar"><svg role="img" aria-label=${words}>
      <defs><pattern id="line-hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect class="line__counted" width="2" height="6"></rect></pattern></defs>
      <rect class="line__all" width="100%" height="100%"></rect><rect class="line__expected" width=${at(expected ?? 0)} height="100%"></rect><rect class="line__counted" width=${at(filled)} height="100%"></rect></svg>
    <figcaption class="quiet">${words}</figcaption></figure>`;
}

/**
 * A plus for each case that comes off the line; without a case's size the plus would say nothing of bottles.
 * @param {import("./tally.js").Tally} tally @param {{onStep: (step: number) => void, onPerCase: (perCase: number) => void}} acts
 */
export const countCases = ({ cases, perCase }, { onStep, onPerCase }) => (perCase
  ? html`<div class="tally" role="group" aria-label="Cases packed"><button type="button" class="counter__key tally__minus" aria-label="One less" ?disabled=${!cases} @click=${() => onStep(-1)}>−</button>
      <button type="button" class="counter__key tally__plus" @click=${() => onStep(1)}><span class="hidden-text">One more than </span><span aria-hidden="true" class="tally__sign">+</span>
        <span class="tally__figure" data-figure="cases">${formatNumber(cases)}</span><span class="tally__words">${cases === 1 ? "case" : "cases"} <br>${formatNumber(cases * perCase)} bottles</span></button></div>`
  : choiceRow("Bottles in a case, to count cases by taps", "line_per_case", IN_CASE, "", (value) => onPerCase(Number(value))));

/** @param {Line} line */
function limits({ fillLimits, strengthLimits, labelPct }) {
  const fill = fillLimits ? `Each bottle ${formatNumber(fillLimits.low, 1)} % full${fillLimits.high === null ? " or more" : ` to ${formatNumber(fillLimits.high, 1)}`}, ${fillLimits.words}. ` : "";
  const strength = strengthLimits ? `Strength ${strengthShown(strengthLimits.low).figure} to ${shownInUnits(strengthLimits.high, "pct_vol", 1)} for a label of ${strengthShown(labelPct ?? 0).figure}.` : "";
  return fill || strength ? html`<p class="quiet">${fill}${strength}</p>` : nothing;
}

/**
 * The panel of a check. Bottles are weighed one by one; what the entry keeps is worked out from them.
 * @param {{kind: any, card: any, bottles: number, soFar: number, onSoFar: (bottles: number) => void, sizeRaw: string, labelRaw: string, lineRaw: string, emptyRaw: string, onMore: () => void, onLeave: () => void}} panel
 */
export function panel({ kind, card, bottles, soFar, onSoFar, sizeRaw, labelRaw, lineRaw, emptyRaw, onMore, onLeave }) {
  const count = Array.from({ length: bottles }, (_, n) => n + 1);
  return html`<form class="form panel" data-kind="bottle_check" novalidate aria-label="Check bottles">
    <header class="panel__head"><h2>Check bottles <span class="quiet">${formatTime(new Date())}</span></h2><button type="button" class="button button--plain" @click=${onLeave}>Leave it</button></header>
    <input type="hidden" name="line" value=${lineRaw}><input type="hidden" name="fill_least"><input type="hidden" name="fill_most">
    ${labelRaw ? html`<input type="hidden" name="label_strength" value=${labelRaw}>` : nothing}
    ${figureBox(kind, "filled_so_far", card)}
    ${soFar ? html`<div class="picks"><button type="button" class="button" @click=${() => onSoFar(soFar)}>${formatNumber(soFar)} by the cases</button></div>` : nothing}
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
