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
import { t } from "../../words/later.js";

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
  setHead({ mark: card?.name || mark, first: run ? runTitle(run) : t("floor-after-after_the_run"), second: run?.ended_at ? t("floor-ended", { ended_at: formatDate(run.ended_at) }) : "", back: mark ? runPath(mark) : "/today" });
  if (!run) return render(html`<section class="empty"><p>${t("floor-after-this_phone_knows_no")}</p><a class="button" href=${mark ? runPath(mark) : "/today"}>${t("floor-back")}</a></section>`, body());
  const { best } = wishesFor(card, kept, run.what ?? "");
  const ghosts = ghostsFor(card, run, best);
  render([balance(run), yieldOf(run), html`<div class="chart" data-part="after-curve"></div>`, beside(run, ghosts), bestPart(card, run, best), cautionLine("methanol")], body());
  showCurve(run, ghosts);
}

/** @param {any} run */
function balance(run) {
  const found = balanceOf(run);
  if (!found) return html`<section class="band band--note"><p>${t("floor-after-the_balance_comes_when")}</p><div class="band__offers"><a class="button" href=${runPath(run.still)}>${t("floor-gauge_the_fractions")}</a></div></section>`;
  return html`<section class="stack" aria-label=${t("floor-after-balance")}><h2>${t("floor-after-balance")}</h2><p>${balanceWords(found)}</p>${balancePicture(found)}${balanceList(found)}</section>`;
}

/** Pure alcohol from 100 kg as it is from 100 of the unit read here. @param {number|null|undefined} value @param {"kg"|"L"} unit */
const of100 = (value, unit) => value && value / valueIn(1, unit);
const yieldFrom = (/** @type {number} */ value, /** @type {"kg"|"L"} */ unit) => t("floor-after-from_100", { amount: shownInUnits(of100(value, unit) ?? 0, "LPA", 1), unit: symbol(unitIn(unit)) });

/** @param {any} run as the book worked it out */
function yieldOf(run) {
  const found = run.yield;
  if (!found) return nothing;
  const rate = found.rate;
  const side = { low: t("floor-after-less_than_60_of"), high: t("floor-after-more_than_one_and") }[/** @type {"low"|"high"} */ (found.side)];
  return html`<section class="stack" aria-label=${t("floor-after-yield")}><h2>${t("floor-after-yield")}</h2>
    <p><strong>${yieldFrom(found.per_100_kg, "kg")}</strong>${t("floor-after-of_wash_of_fruit", { per_100_l: yieldFrom(found.per_100_l, "L"), kg: shownInUnits(found.kg, "kg", 0) })}</p>
    ${rate ? html`<p class="quiet">${t("floor-after-official_flat_rate_for", { name: rate.name, de_l: formatNumber(rate.de_l, 1), austria: rate.at_l ? t("floor-after-in_austria", { at_l: formatNumber(rate.at_l, 1) }) : "" })}</p>` : nothing}
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
    [t("floor-after-charged", { sign }), (one) => lpa(one.run.charge?.lpa_l)], [t("floor-after-hearts", { sign }), (one) => lpa(one.hearts?.lpa_l)],
    [t("floor-after-hearts_share"), share], [t("floor-after-hearts_cut_at", { unit: t("pct") }), (one) => pct(eventOf(one.run, "hearts_cut")?.true_strength)],
    [t("floor-after-took"), (one) => (one.run.ended_at ? formatDuration((Date.parse(one.run.ended_at) - Date.parse(one.run.started_at)) / 1000) : "–")],
    [t("floor-after-from_100_2", { unit: symbol(unitIn("kg")), sign }), (one) => lpa(of100(one.run.yield?.per_100_kg, "kg"))],
  ];
  return html`<section class="stack" aria-label=${t("floor-after-beside_the_runs_before")}><h2>${t("floor-after-beside_the_runs_before")}</h2><div class="table-wrap" tabindex="0" role="region" aria-label=${t("floor-after-runs_side_by_side")}><table class="table table--beside">
    <thead><tr><td></td>${all.map((one) => html`<th scope="col" class="number">${one.run.name || t("floor-run")}${one.isBest ? html`<br><span class="quiet">${t("floor-best")}</span>` : nothing}</th>`)}</tr></thead>
    <tbody>${rows.map(([words, figure]) => html`<tr><th scope="row">${words}</th>${all.map((one) => html`<td class="number">${figure(one)}</td>`)}</tr>`)}</tbody></table></div></section>`;
}

/** @param {any} card @param {any} run @param {any} best */
function bestPart(card, run, best) {
  if (!run.what) return nothing;
  if (best?.run === run.id) return html`<section class="stack" aria-label=${t("floor-after-best_run")}><p><strong>${t("floor-after-marked_as_the_best", { what: run.what })}</strong> ${t("floor-after-by", { person: best.person, best: formatDate(best.at), waiting: best.waiting ? t("floor-waits_on_this_phone") : "", why: best.why ? `: ${best.why.replace(/\.$/, "")}` : "" })}</p></section>`;
  const mark = async (/** @type {SubmitEvent} */ event) => {
    event.preventDefault();
    const why = /** @type {HTMLTextAreaElement} */ (/** @type {HTMLFormElement} */ (event.target).querySelector("[name=why]")).value.trim();
    const kind = await getKind("best_run");
    const values = { run: { raw: run.id }, ...(why ? { why: { raw: why } } : {}) };
    await chalk({ kind: kind.name, kind_version: kind.version, person: page.who.code, role: page.who.role || kind.role, values, as_read: [], looked_again: [], mark: card.mark, mark_by: markBy(card.mark), read_at: "", remark: "" });
    toast(onTheSlate((await counts()).waiting));
    await show();
  };
  return html`<form class="form stack" aria-label=${t("floor-after-best_run")} @submit=${mark}><h2>${t("floor-after-best_run_2")}</h2>
    <p class="quiet">${best ? html`${t("floor-after-best_of_so_far", { what: run.what, name: best.name, why: best.why ? `, ${best.why.replace(/\.$/, "")}` : "" })}` : html`${t("floor-after-no_run_of_is", { what: run.what })}`} ${t("floor-after-later_runs_are_drawn")}</p>
    <div class="field field--words"><label class="field__label" for="best-why">${t("floor-after-why")}</label><textarea class="field__value" id="best-why" name="why" rows="2" maxlength="2000"></textarea></div>
    <button class="button">${t("floor-after-mark_this_run_as")}</button></form>`;
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
