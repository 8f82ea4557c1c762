// @ts-check
/** Casks and ferments as the cards on this phone tell of them: gauges, casks like one, the end of a ferment. */
import { heldLimit } from "../../kinds/limits.js";
import { reasonOf } from "../../kinds/reasons.js";
import { OutOfDomain } from "../../trade/errors.js";
import { forecastEnd } from "../../trade/ferment.js";
import { judgeLoss, lossRates, usualOf, yearShare } from "../../trade/caskloss.js";
import { inOrder, roomOf } from "../../trade/placenames.js";
import { sentence } from "../../words/say.js";

const YEAR_S = 365.25 * 86_400;
const DAY_S = 86_400;

/** @param {any} card @returns {import("../../trade/caskloss.js").Gauge[]} oldest first */
export const gaugesOf = (card) => (card.cask?.gauges ?? []).map((/** @type {number[]} */ [at, lpa, strength, drawn]) => (
  { years: at / YEAR_S, lpa, strength_pct: strength, drawn_l: drawn }));

/** A regauge just typed, added to what the card knows. @param {any} card @param {number} atS @param {number} lpa @param {number} strength */
export function gaugesWith(card, atS, lpa, strength) {
  const known = gaugesOf(card).filter((gauge) => gauge.years < atS / YEAR_S);
  return [...known, { years: atS / YEAR_S, lpa, strength_pct: strength, drawn_l: 0 }];
}

/** @param {import("../../trade/caskloss.js").Gauge[]} gauges */
export function ratesOf(gauges) {
  try {
    return lossRates(gauges);
  } catch {
    return { last: null, fill: null };
  }
}

/** "CELL" of "CELL-A1". */
export const areaOf = roomOf;

/** What casks like this one lose, in logarithms and as shares of a year, from groups that narrow: like size, same size, same area too, same wood and use too. @param {any} card @param {any[]} cards */
export function usualFor(card, cards) {
  const smallL = heldLimit("small_l");
  const isSmall = (/** @type {any} */ one) => (one.capacity_l ?? 200) < smallL;
  const told = cards.filter((one) => one.cask && one.mark !== card.mark)
    .map((one) => { const rates = ratesOf(gaugesOf(one)); return { one, rate: (rates.last ?? rates.fill)?.lpa_pct_year }; })
    .filter(({ rate }) => rate !== undefined);
  const sized = told.filter(({ one }) => isSmall(one) === isSmall(card));
  const same = sized.filter(({ one }) => one.cask.size === card.cask.size);
  const area = same.filter(({ one }) => areaOf(one.place) === areaOf(card.place));
  const wood = area.filter(({ one }) => one.cask.wood === card.cask.wood && one.cask.use === card.cask.use);
  const usual = usualOf([sized, same, area, wood].map((group) => group.map(({ rate }) => /** @type {number} */ (rate))), card.capacity_l ?? 200, smallL);
  return { ...usual, share: { low: yearShare(Math.max(usual.low, 0)), middle: yearShare(usual.middle), high: yearShare(usual.high) } };
}

/** @param {any} card @param {import("../../trade/caskloss.js").Gauge[]} gauges @param {{most: number}} usual @returns {{word: string, share: number, years: number}|null} share: lost in a year [%] */
export function judged(card, gauges, usual) {
  const rate = ratesOf(gauges).last;
  if (!rate) return null;
  const now = gauges[gauges.length - 1].strength_pct;
  const limits = { noisePct: heldLimit("loss_noise_pct", card), driftPct: heldLimit("drift_pct", card), driftPctYear: heldLimit("drift_pct_year", card) };
  const word = judgeLoss(rate.lpa_pct_year, rate.volume_pct_year, rate.years, usual.most, now - rate.strength_year * rate.years, now, limits);
  return { word, share: yearShare(rate.lpa_pct_year), years: rate.years };
}

/** @type {Map<string, any>} a fit takes some milliseconds, and a page draws the same tanks again and again */
const fitted = new Map();
const FITTED_MOST = 100;

/** When the ferment of this card will have ended; times in ms. @param {any} card @returns {any} */
export function endOf(card) {
  const key = JSON.stringify([card.mark, card.curves?.gravity, card.ferment, card.holds?.since]);
  if (fitted.size > FITTED_MOST) fitted.clear();
  if (!fitted.has(key)) fitted.set(key, fit(card));
  return fitted.get(key);
}

/** @param {any} card */
function fit(card) {
  const points = (card.curves?.gravity ?? []).filter((/** @type {number[]} */ point) => point[1] != null);
  if (!card.ferment || !points.length) return { state: "too_little", why: "few_readings" };
  const og = card.context?.og ?? card.holds?.og;
  const sinceS = Date.parse(card.holds?.since ?? "") / 1000;
  const isCut = og != null && sinceS < points[0][0] - DAY_S && points[0][1] < og - 1e-9; // the card holds the last readings only
  const all = isCut ? [[sinceS, og], ...points] : points;
  try {
    const told = forecastEnd(all.map((/** @type {number[]} */ [at]) => (at - all[0][0]) / DAY_S), all.map((/** @type {number[]} */ [, gravity]) => gravity), card.ferment.end, { isGrain: card.ferment.grain, past: card.ferment.past });
    const ms = (/** @type {number} */ day) => (all[0][0] + day * DAY_S) * 1000;
    if (told.days) told.ms = Object.fromEntries(Object.entries(told.days).map(([name, day]) => [name, ms(/** @type {number} */ (day))]));
    if (told.curve) told.points = told.curve.map((/** @type {number[]} */ [day, gravity]) => [ms(day) / 1000, gravity]);
    return told;
  } catch (error) {
    if (!(error instanceof OutOfDomain)) throw error;
    return { state: "too_little", why: "refused", words: sentence(reasonOf(error)) };
  }
}

/** CELL-A2 before CELL-A10. @param {any} a @param {any} b */
export const byPlace = (a, b) => inOrder(a.place ?? "", b.place ?? "") || inOrder(a.name || a.mark, b.name || b.mark);
