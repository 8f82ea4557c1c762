// @ts-check
/** The bottling line, live: the last checks, their average and spread, when the next is due; bottles weighed and logged. Works without signal. */
import { onCards, site } from "../../slate/cards.js";
import { counts, onChange } from "../../slate/queue.js";
import { drawCurve } from "../../ui/charts.js";
import { curveInUnits } from "../../shell/inunits.js";
import { unitIn } from "../../trade/houseunits.js";
import { symbol } from "../../trade/units.js";
import { parseNumber } from "../../ui/format.js";
import "../../ui/keypad.js";
import { offerTakeBack } from "../../shell/takebackbar.js";
import { html, nothing, render } from "../../vendor/lit-html/lit-html.js";
import { EntryForm } from "../../form/entryform.js";
import { showFull } from "../../form/full.js";
import { setHead } from "../../shell/frame.js";
import { handOrAsk } from "../../shell/hand.js";
import { logPath, vesselPath } from "../../shell/here.js";
import { getKind, readCard, readCards } from "../../shell/phone.js";
import { holdsOf, onTheSlate } from "../../shell/words.js";
import { reasonOf } from "../../kinds/reasons.js";
import { OutOfDomain } from "../../trade/errors.js";
import { sentence } from "../../words/say.js";
import { aboutTap, box as boxIn, clearPanel, logButton, markAsked, part, showLogButton } from "../panel.js";
import { fillFromWeightPct } from "../../trade/bottling.js";
import { DUE } from "../cellar/due.js";
import { prepare } from "../goods/counter.js";
import { readGoods } from "../goods/known.js";
import { bottlesLeft, COUNT_USUAL, endOf, expectedNow, fillLimits, inEntry, nextDue, speedOf, spreadAbout, strengthLimits } from "./checks.js";
import { begunTally, counted, keepTally, readTally, speedByCases } from "./tally.js";
import { countCases, panel, pickTank, state, weighedLine } from "./view.js";
import { t } from "../../words/later.js";

const EMPTY = "bottle-empty-g"; // the weight of an empty bottle, kept on this phone
const BOTTLES_MOST = 20;

/** @type {{who: any, mark: string, card: any, kind: any, isUs: boolean, every: typeof DUE, perCase: number, sizeL: number|null, labelPct: number|null, bottles: number, drawn: any[], drawnKey: string, entryForm: EntryForm|null}} */
const page = { who: null, mark: "", card: null, kind: null, isUs: false, every: DUE, perCase: 0, sizeL: null, labelPct: null, bottles: COUNT_USUAL, drawn: [], drawnKey: "", entryForm: null };

export async function start() {
  page.who = await handOrAsk();
  if (!page.who) return;
  page.mark = markAsked();
  page.kind = await getKind("bottle_check");
  const house = await site();
  page.isUs = house.units === "us";
  page.every = { ...DUE, ...house.due };
  prepare();
  render(html`<div data-part="state" class="stack"></div><div data-part="charts" class="stack"></div>`, part("body"));
  onChange(() => void show());
  onCards(() => void show());
  setInterval(() => showState(), 20_000);
  await show();
}

async function show() {
  page.card = page.mark ? await readCard(page.mark) : null;
  const { card } = page;
  if (!card?.holds || card.holds.mash) return showPick();
  const last = card.last.bottle_check ?? {};
  page.sizeL = last.bottle_size?.value ?? null;
  page.labelPct = card.holds.label_strength_pct ?? last.label_strength?.value ?? null;
  page.perCase = card.last.bottling_close?.per_case?.value ?? (await readGoods()).find((one) => one.tank === page.mark && one.per_case)?.per_case ?? 0;
  const [what, amount] = holdsOf(card);
  setHead({ mark: card.name || card.mark, first: what, second: amount, back: vesselPath(card.mark) });
  showState();
  showCharts();
  if (!part("panel").childElementCount) showDoing();
}

async function showPick() {
  setHead({ mark: t("floor-line-bottling"), first: page.card ? page.card.name : t("floor-line-the_line"), back: page.card ? vesselPath(page.card.mark) : "/today" });
  const cards = await readCards();
  render(pickTank(cards.filter((card) => card.sort === "tank" && card.holds && !card.holds.mash && card.holds.strength_pct)), part("state"));
  render(nothing, part("doing"));
}

/** @param {string} name @returns {[number, number][]} */
const points = (name) => page.card?.curves?.[name] ?? [];

function showState() {
  if (!page.card?.holds) return;
  const { sizeL, labelPct } = page;
  const bottles = bottlesLeft(page.card.holds.volume_l, sizeL);
  const [counts, now] = [points("filled_so_far"), Date.now()];
  const [tally, last] = [tallyNow(), counts.at(-1)];
  const speed = speedByCases(tally, now) ?? speedOf(counts); // cases come oftener than checks
  const byCases = tally.cases * tally.perCase;
  const isNewer = byCases > 0 && (tally.taps.at(-1) ?? 0) > (last?.[0] ?? 0) * 1000;
  render(state({
    fill: spreadAbout(points("fill_found"), 100), strength: spreadAbout(points("strength_found"), labelPct ?? 0),
    due: nextDue(points("fill_found"), counts, page.every, speed, now), speed, end: endOf(speed, bottles), filled: isNewer ? byCases : last?.[1] ?? null,
    expected: expectedNow(speed, now, bottles), everyMin: page.every.check_min, fillLimits: fillLimits(sizeL, page.isUs), strengthLimits: strengthLimits(labelPct, page.card),
    bottles, sizeL, labelPct,
  }), part("state"));
}

function showCharts() {
  const [fill, strength] = [fillLimits(page.sizeL, page.isUs), strengthLimits(page.labelPct, page.card)];
  const level = (/** @type {number|null|undefined} */ y, /** @type {string} */ label) => (y == null ? [] : [{ y, label }]);
  const curves = [
    { title: t("floor-line-fill_of_the_label"), unit: "pct", points: points("fill_found"), levels: [...level(100, t("floor-line-label")), ...level(fill?.low, t("floor-line-least")), ...level(fill?.high, t("floor-line-most"))] },
    { title: t("floor-line-strength", { unit: symbol(unitIn("pct_vol")) }), unit: "pct_vol", points: points("strength_found"), levels: [...level(page.labelPct, t("floor-line-label")), ...level(strength?.low, t("floor-line-least")), ...level(strength?.high, t("floor-line-most"))] },
  ].filter((curve) => curve.points.length > 1);
  const key = JSON.stringify(curves);
  if (key === page.drawnKey) return;
  page.drawnKey = key;
  page.drawn.forEach((one) => one.destroy());
  render(curves.map((curve) => html`<figure class="stack"><figcaption class="quiet">${curve.title}</figcaption><div data-curve></div></figure>`), part("charts"));
  const places = [...part("charts").querySelectorAll("[data-curve]")];
  page.drawn = curves.map((curve, n) => drawCurve(/** @type {HTMLElement} */ (places[n]), curveInUnits({ title: curve.title, yLabel: symbol(curve.unit), yDecimals: 1, xIsTime: true, height: 150, levels: curve.levels, series: [{ label: "", points: curve.points }] }, curve.unit)));
}

/** The cases of this fill, as packed before where nobody has said how. */
const tallyNow = () => readTally(page.mark, fillNow(), page.perCase, filledNow());

const fillNow = () => page.card.holds.fill ?? page.card.holds.since ?? "";

const filledNow = () => points("filled_so_far").at(-1)?.[1] ?? 0;

function showDoing() {
  const keep = (/** @type {import("./tally.js").Tally} */ tally) => {
    keepTally(page.mark, tally);
    showState();
    showDoing();
  };
  const tally = tallyNow();
  render(html`${countCases(tally, { onStep: (step) => keep(counted(tallyNow(), step, Date.now())), onPerCase: (perCase) => keep(begunTally(fillNow(), perCase, filledNow())) })}
    <div class="line__doing"><a class="button button--plain" href=${logPath(page.mark, "bottling_close")}>${t("floor-line-close_the_bottling")}</a>
    <button type="button" class="button button--main button--action" @click=${() => openPanel()}>${t("floor-check_bottles")}</button></div>`, part("doing"));
}

/** @param {number} [bottles] */
function openPanel(bottles = COUNT_USUAL) {
  page.bottles = bottles;
  const { kind, card } = page;
  drawPanel();
  const form = /** @type {HTMLFormElement} */ (part("panel").querySelector("form"));
  form.addEventListener("input", weigh, { capture: true }); // before the form reads its boxes
  page.entryForm = new EntryForm({
    form, kind, card, who: page.who, look: part("panel-look"), figures: part("panel-figures"),
    about: aboutTap(form, page.mark),
    action: logButton,
    onFull: (error) => showFull(part("panel-look"), error),
    onLogged: async (kept) => {
      localStorage.setItem(EMPTY, box("empty")?.value.trim() ?? "");
      closePanel();
      offerTakeBack({ words: onTheSlate((await counts()).waiting), about: kind.title, entry: kept.id });
    },
  });
  showLogButton(form);
  box("filled_so_far")?.focus({ preventScroll: true });
}

function drawPanel() {
  const { kind, card, bottles } = page;
  const last = card.last.bottle_check ?? {};
  render(panel({
    kind, card, bottles, soFar: tallyNow().cases * tallyNow().perCase, onSoFar: takeSoFar, sizeRaw: last.bottle_size ? String(last.bottle_size.value) : "", labelRaw: page.labelPct ? page.labelPct.toFixed(1) : "",
    lineRaw: last.line?.raw || "1", emptyRaw: localStorage.getItem(EMPTY) ?? "", onLeave: closePanel,
    onMore: () => {
      page.bottles = Math.min(page.bottles + 1, BOTTLES_MOST);
      drawPanel();
    },
  }), part("panel"));
}

/** What the cases come to, taken by a tap: nobody's figure before that. @param {number} bottles */
function takeSoFar(bottles) {
  const found = box("filled_so_far");
  if (!found) return;
  found.value = String(bottles);
  found.dispatchEvent(new Event("input", { bubbles: true }));
}

/** @param {string} name */
const box = (name) => boxIn(part("panel"), name);

/** From the weights to what the entry keeps; what was typed as fill by hand stands where nothing was weighed. */
function weigh() {
  const number = (/** @type {string} */ name) => parseNumber(box(name)?.value ?? "");
  const [empty, sizeL] = [number("empty"), number("bottle_size")];
  const strength = Number.isFinite(number("strength_found")) && box("strength_found_unit")?.value !== "proof" ? number("strength_found") : page.card.holds.strength_pct;
  const grosses = Array.from({ length: page.bottles }, (_, n) => number(`gross_${n + 1}`)).filter(Number.isFinite);
  const place = /** @type {HTMLElement} */ (part("panel").querySelector('[data-part="weighed"]'));
  if (!(empty > 0 && sizeL > 0 && grosses.length)) return render(nothing, place);
  try {
    const fills = grosses.map((gross) => fillFromWeightPct(gross, empty, strength, sizeL * 1000));
    const kept = inEntry(fills);
    if (!kept) return render(nothing, place);
    for (const [name, text] of Object.entries({ fill_found: kept.mean, fill_least: kept.least, fill_most: kept.most, tested: kept.count })) {
      const found = box(name);
      if (found) found.value = text;
    }
    const limits = fillLimits(sizeL, page.isUs);
    const isOut = limits !== null && (Math.min(...fills) < limits.low || (limits.high !== null && Math.max(...fills) > limits.high));
    render(weighedLine({ fills, mean: kept.mean, isOut, words: isOut ? t("floor-line-outside_what_may_be") : "" }), place);
  } catch (error) {
    if (!(error instanceof OutOfDomain)) throw error;
    render(html`<p class="band band--ask">${sentence(reasonOf(error))}</p>`, place);
  }
}

function closePanel() {
  clearPanel(page.entryForm);
  page.entryForm = null;
  showDoing();
}
