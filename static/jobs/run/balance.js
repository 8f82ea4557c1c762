// @ts-check
/** The balance of a run in pure alcohol: what went in, what came out, what is not accounted for; in words and as two bars. */
import { heldLimit } from "../../kinds/limits.js";
import { shownInUnits, unitsChoice } from "../../shell/inunits.js";
import { html, nothing, svg } from "../../vendor/lit-html/lit-html.js";

const WIDE = 340;
const NAMES = { heads: "heads", hearts: "hearts", tails: "tails", low_wines: "low wines", stillage: "stillage" };

/**
 * @typedef {{name: string, part: string, lpa: number}} Part
 * @typedef {{charged: number, into: Part[], out: Part[], open: number, sharePct: number, isStillageRead: boolean, stillagePct: number}} Balance
 */

/** @param {any} run @returns {Balance|null} null until hearts or low wines are gauged */
export function balanceOf(run) {
  const charged = run.charge?.lpa_l;
  const isGauged = run.fractions.some((/** @type {any} */ one) => one.fraction === "hearts" || one.fraction === "low_wines");
  if (!charged || !isGauged) return null;
  const feints = run.charge.feints_lpa_l ?? 0;
  /** @type {Part[]} */
  const out = [];
  for (const [part, name] of Object.entries(NAMES)) {
    const lpa = run.fractions.filter((/** @type {any} */ one) => one.fraction === part).reduce((/** @type {number} */ sum, /** @type {any} */ one) => sum + (one.lpa_l ?? 0), 0);
    if (lpa > 0) out.push({ name, part, lpa });
  }
  const isStillageRead = run.fractions.some((/** @type {any} */ one) => one.fraction === "stillage");
  const stillagePct = heldLimit("stillage_pct"); // what nobody has read counts with a usual strength, and the words say so
  if (!isStillageRead) {
    const over = run.fractions.reduce((/** @type {number} */ sum, /** @type {any} */ one) => sum + (one.volume_l ?? 0), 0);
    out.push({ name: "stillage", part: "stillage", lpa: (Math.max((run.charge.volume_l ?? 0) - over, 0) * stillagePct) / 100 });
  }
  const came = out.reduce((sum, one) => sum + one.lpa, 0);
  const into = [{ name: "wash", part: "wash", lpa: charged - feints }, ...(feints > 0 ? [{ name: "feints", part: "feints", lpa: feints }] : [])];
  return { charged, into, out, open: charged - came, sharePct: ((charged - came) / charged) * 100, isStillageRead, stillagePct };
}

const litres = (/** @type {number} */ value) => shownInUnits(value, "LPA", 2);

/** @param {Balance} balance */
export function balanceWords(balance) {
  const { charged, open, sharePct, isStillageRead, stillagePct } = balance;
  const share = `${Math.abs(sharePct).toFixed(1)} %`;
  const rest = open >= 0 ? `${litres(open)} (${share}) not accounted for` : `${litres(-open)} (${share}) more than went in`;
  return `In ${litres(charged)}, out ${litres(charged - open)}: ${rest}.${isStillageRead ? "" : ` Stillage was not read: taken as ${unitsChoice() === "us" ? shownInUnits(stillagePct, "pct_vol", 1) : `${stillagePct} %`}.`} Usual is 0.5 to 2 %.`;
}

/** @param {Balance} balance */
export function balancePicture(balance) {
  const most = Math.max(balance.charged, balance.charged - balance.open);
  const bar = (/** @type {Part[]} */ parts) => {
    let x = 0;
    return parts.map((one) => {
      const width = (one.lpa / most) * WIDE;
      const drawn = svg`<rect class="part--${one.part}" x=${x} y="1" width=${Math.max(width - 1, 0.5)} height="24"></rect>`;
      x += width;
      return drawn;
    });
  };
  const gap = balance.open > 0 ? svg`<rect class="part--open" x=${((balance.charged - balance.open) / most) * WIDE + 1} y="1" width=${Math.max((balance.open / most) * WIDE - 2, 1)} height="24"></rect>` : nothing;
  const drawn = (/** @type {unknown} */ parts) => html`<svg class="balance" viewBox="0 0 ${WIDE} 26" preserveAspectRatio="none" aria-hidden="true">${parts}</svg>`;
  return html`<p class="quiet">in ${litres(balance.charged)}</p>${drawn(bar(balance.into))}<p class="quiet">out ${litres(balance.charged - balance.open)}</p>${drawn([bar(balance.out), gap])}`;
}

/** @param {Balance} balance */
export const balanceList = (balance) => html`<ul class="list" aria-label="Pure alcohol of the run">${[...balance.into.map((one) => ({ ...one, side: "in" })), ...balance.out.map((one) => ({ ...one, side: "out" }))].map((one) => html`
  <li class="list__item--short"><span class="list__mark"><svg class="icon" viewBox="0 0 16 16" aria-hidden="true"><rect class="part--${one.part}" width="16" height="16"></rect></svg> ${one.side}</span><span class="list__what">${one.name}</span><span class="list__end">${litres(one.lpa)}</span></li>`)}</ul>`;
