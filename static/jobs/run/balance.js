// @ts-check
/** The balance of a run in pure alcohol: what went in, what came out, what is not accounted for; in words and as two bars. */
import { heldLimit } from "../../kinds/limits.js";
import { shownInUnits, unitsChoice } from "../../shell/inunits.js";
import { html, nothing, svg } from "../../vendor/lit-html/lit-html.js";
import { t } from "../../words/later.js";

const WIDE = 340;
const NAMES = { heads: t("floor-balance-heads"), hearts: t("floor-hearts"), tails: t("floor-tails"), low_wines: t("floor-low_wines"), stillage: t("floor-balance-stillage") };

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
    out.push({ name: NAMES.stillage, part: "stillage", lpa: (Math.max((run.charge.volume_l ?? 0) - over, 0) * stillagePct) / 100 });
  }
  const came = out.reduce((sum, one) => sum + one.lpa, 0);
  const into = [{ name: t("floor-balance-wash"), part: "wash", lpa: charged - feints }, ...(feints > 0 ? [{ name: t("floor-balance-feints"), part: "feints", lpa: feints }] : [])];
  return { charged, into, out, open: charged - came, sharePct: ((charged - came) / charged) * 100, isStillageRead, stillagePct };
}

const litres = (/** @type {number} */ value) => shownInUnits(value, "LPA", 2);

/** @param {Balance} balance */
export function balanceWords(balance) {
  const { charged, open, sharePct, isStillageRead, stillagePct } = balance;
  const share = `${Math.abs(sharePct).toFixed(1)} %`;
  const rest = open >= 0 ? t("floor-balance-not_accounted_for", { open: litres(open), share }) : t("floor-balance-more_than_went_in", { open: litres(-open), share });
  return t("floor-balance-in_out_usual_is", { charged: litres(charged), open: litres(charged - open), rest, stillage_pct: isStillageRead ? "" : t("floor-balance-stillage_was_not_read", { stillage_pct: unitsChoice() === "us" ? shownInUnits(stillagePct, "pct_vol", 1) : `${stillagePct} %` }) });
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
  return html`<p class="quiet">${t("floor-balance-in", { charged: litres(balance.charged) })}</p>${drawn(bar(balance.into))}<p class="quiet">${t("floor-balance-out", { open: litres(balance.charged - balance.open) })}</p>${drawn([bar(balance.out), gap])}`;
}

/** @param {Balance} balance */
export const balanceList = (balance) => html`<ul class="list" aria-label=${t("floor-balance-pure_alcohol_of_the")}>${[...balance.into.map((one) => ({ ...one, side: t("floor-balance-side_in") })), ...balance.out.map((one) => ({ ...one, side: t("floor-balance-side_out") }))].map((one) => html`
  <li class="list__item--short"><span class="list__mark"><svg class="icon" viewBox="0 0 16 16" aria-hidden="true"><rect class="part--${one.part}" width="16" height="16"></rect></svg> ${one.side}</span><span class="list__what">${one.name}</span><span class="list__end">${litres(one.lpa)}</span></li>`)}</ul>`;
