// @ts-check
/** After the run, on the phone: its balance, its yield, the runs beside it, and the distiller's mark on the best. */
import { log as chalk, counts, onChange } from "../../slate/queue.js";
import { onCards, unknownToCards } from "../../slate/cards.js";
import { cautionLine } from "../../shell/cautions.js";
import { setHead } from "../../shell/frame.js";
import { handOrAsk } from "../../shell/hand.js";
import { markBy, runPath } from "../../shell/here.js";
import { inUnits, shownInUnits, strengthShown, unitsChoice } from "../../shell/inunits.js";
import { unitIn, valueIn } from "../../trade/houseunits.js";
import { symbol } from "../../trade/units.js";
import { getKind, readCard } from "../../shell/phone.js";
import { eventOf, runTitle } from "./state.js";
import { onTheSlate } from "../../shell/words.js";
import { drawCurve } from "../../ui/charts.js";
import { formatDate, formatDuration, formatNumber } from "../../ui/format.js";
import { toast } from "../../ui/toast.js";
import { html, nothing, render } from "../../vendor/lit-html/lit-html.js";
import { balanceList, balanceOf, balancePicture, balanceWords } from "./balance.js";
import { streamOf } from "./collect.js";
import { curveBy } from "./curve.js";
import { prepare } from "./sheet.js";
import { ghostsFor, wishesFor } from "./wishes.js";

const body = () => /** @type {HTMLElement} */ (document.querySelector('[data-part="body"]'));
/** @type {{drawn: any, key: string, who: any}} */
const page = { drawn: null, key: "", who: null };

export async function start() {
  page.who = await handOrAsk();
  if (!page.who) return;
  prepare();
  onChange(() => void show());
  onCards(() => void show());
  await show();
}

async function show() {
  const asked = new URLSearchParams(location.search);
  const mark = (asked.get("still") ?? "").toUpperCase();
  const [card, kept] = await Promise.all([mark ? readCard(mark) : null, unknownToCards()]);
  const run = card?.past_runs.find((/** @type {any} */ one) => one.id === asked.get("run")) ?? card?.past_runs[0];
  setHead({ mark: card?.name || mark, first: run ? runTitle(run) : "After the run", second: run?.ended_at ? `ended ${formatDate(run.ended_at)}` : "", back: mark ? runPath(mark) : "/today" });
  if (!run) return render(html`<section class="empty"><p>This phone knows no run of that still that is over.</p><a class="button" href=${mark ? runPath(mark) : "/today"}>Back</a></section>`, body());
  const { best } = wishesFor(card, kept, run.what ?? "");
  const ghosts = ghostsFor(card, run, best);
  render([balance(run), yieldOf(run), html`<div class="chart" data-part="after-curve"></div>`, beside(run, ghosts), bestPart(card, run, best), cautionLine("methanol")], body());
  showCurve(run, ghosts);
}

/** @param {any} run */
function balance(run) {
  const found = balanceOf(run);
  if (!found) return html`<section class="band band--note"><p>The balance comes when hearts or low wines are gauged.</p><div class="band__offers"><a class="button" href=${runPath(run.still)}>Gauge the fractions</a></div></section>`;
  return html`<section class="stack" aria-label="Balance"><h2>Balance</h2><p>${balanceWords(found)}</p>${balancePicture(found)}${balanceList(found)}</section>`;
}

/** Pure alcohol from 100 kg as it is from 100 of the unit read here. @param {number|null|undefined} value @param {"kg"|"L"} unit */
const of100 = (value, unit) => value && value / valueIn(1, unit);
const yieldFrom = (/** @type {number} */ value, /** @type {"kg"|"L"} */ unit) => `${shownInUnits(of100(value, unit) ?? 0, "LPA", 1)} from 100 ${symbol(unitIn(unit))}`;

/** @param {any} run as the book worked it out */
function yieldOf(run) {
  const found = run.yield;
  if (!found) return nothing;
  const rate = found.rate;
  const side = { low: "Less than 60 % of the flat rate: look at fruit, ferment and balance.", high: "More than one and a half times the flat rate: look at the weights and the gauges." }[/** @type {"low"|"high"} */ (found.side)];
  return html`<section class="stack" aria-label="Yield"><h2>Yield</h2>
    <p><strong>${yieldFrom(found.per_100_kg, "kg")}</strong>, ${yieldFrom(found.per_100_l, "L")} of wash; ${shownInUnits(found.kg, "kg", 0)} of fruit by its share of the ferment.</p>
    ${rate ? html`<p class="quiet">Official flat rate for ${rate.name}, from 100 L of mash: ${formatNumber(rate.de_l, 1)} L in Germany${rate.at_l ? `, ${formatNumber(rate.at_l, 1)} in Austria` : ""}. Flat rates are safe averages, no targets.</p>` : nothing}
    ${side ? html`<p class="collected--apart">${side}</p>` : nothing}</section>`;
}

/** @param {any} run @param {{run: any, isBest: boolean}[]} others */
function beside(run, others) {
  const all = [{ run, isBest: false }, ...others].map((one) => ({ ...one, hearts: one.run.fractions.find((/** @type {any} */ part) => part.fraction === "hearts") }));
  if (all.length < 2) return nothing;
  const pct = (/** @type {number|null|undefined} */ value) => (value == null ? "–" : strengthShown(value).figure);
  const share = (/** @type {any} */ one) => (one.hearts && one.run.charge?.lpa_l ? `${formatNumber((one.hearts.lpa_l / one.run.charge.lpa_l) * 100, 0)} %` : "–");
  // The unit stands once, in the row's name: with it in each box the last run falls off a phone.
  const lpa = (/** @type {number|null|undefined} */ value) => (value ? formatNumber(inUnits(value, "LPA").value, 1) : "–");
  const sign = symbol(inUnits(1, "LPA").unit);
  /** @type {[string, (one: any) => string][]} */
  const rows = [
    [`Charged, ${sign}`, (one) => lpa(one.run.charge?.lpa_l)], [`Hearts, ${sign}`, (one) => lpa(one.hearts?.lpa_l)],
    ["Hearts' share", share], [`Hearts cut at, ${unitsChoice() === "us" ? "proof" : "%"}`, (one) => pct(eventOf(one.run, "hearts_cut")?.true_strength)],
    ["Took", (one) => (one.run.ended_at ? formatDuration((Date.parse(one.run.ended_at) - Date.parse(one.run.started_at)) / 1000) : "–")],
    [`From 100 ${symbol(unitIn("kg"))}, ${sign}`, (one) => lpa(of100(one.run.yield?.per_100_kg, "kg"))],
  ];
  return html`<section class="stack" aria-label="Beside the runs before"><h2>Beside the runs before</h2><div class="table-wrap" tabindex="0" role="region" aria-label="Runs side by side"><table class="table table--beside">
    <thead><tr><td></td>${all.map((one) => html`<th scope="col" class="number">${one.run.name || "run"}${one.isBest ? html`<br><span class="quiet">best</span>` : nothing}</th>`)}</tr></thead>
    <tbody>${rows.map(([words, figure]) => html`<tr><th scope="row">${words}</th>${all.map((one) => html`<td class="number">${figure(one)}</td>`)}</tr>`)}</tbody></table></div></section>`;
}

/** @param {any} card @param {any} run @param {any} best */
function bestPart(card, run, best) {
  if (!run.what) return nothing;
  if (best?.run === run.id) return html`<section class="stack" aria-label="Best run"><p><strong>Marked as the best run of ${run.what}</strong> by ${best.person}, ${formatDate(best.at)}${best.waiting ? ", waits on this phone" : ""}${best.why ? `: ${best.why.replace(/\.$/, "")}` : ""}.</p></section>`;
  const mark = async (/** @type {SubmitEvent} */ event) => {
    event.preventDefault();
    const why = /** @type {HTMLTextAreaElement} */ (/** @type {HTMLFormElement} */ (event.target).querySelector("[name=why]")).value.trim();
    const kind = await getKind("best_run");
    const values = { run: { raw: run.id }, ...(why ? { why: { raw: why } } : {}) };
    await chalk({ kind: kind.name, kind_version: kind.version, person: page.who.code, role: page.who.role || kind.role, values, as_read: [], looked_again: [], mark: card.mark, mark_by: markBy(card.mark), read_at: "", remark: "" });
    toast(onTheSlate((await counts()).waiting));
    await show();
  };
  return html`<form class="form stack" aria-label="Best run" @submit=${mark}><h2>Best run?</h2>
    <p class="quiet">${best ? html`Best of ${run.what} so far: ${best.name}${best.why ? `, ${best.why.replace(/\.$/, "")}` : ""}.` : html`No run of ${run.what} is marked yet.`} Later runs are drawn over the best.</p>
    <div class="field field--words"><label class="field__label" for="best-why">Why</label><textarea class="field__value" id="best-why" name="why" rows="2" maxlength="2000"></textarea></div>
    <button class="button">Mark this run as the best</button></form>`;
}

/** @param {any} run @param {{run: any, isBest: boolean}[]} ghosts */
function showCurve(run, ghosts) {
  const place = /** @type {HTMLElement} */ (body().querySelector('[data-part="after-curve"]'));
  const shown = { run, stream: streamOf(run), ghosts, due: null, target: null, offsetC: 0, heightM: 0 };
  const curve = curveBy("alcohol", shown) ?? curveBy("time", shown);
  place.hidden = !curve;
  const key = JSON.stringify(curve);
  if (!curve || key === page.key) return;
  page.key = key;
  if (page.drawn) page.drawn.update(curve);
  else page.drawn = drawCurve(place, curve);
}
