// @ts-check
/** A vessel in one picture: its level, its one figure, its curve with what is expected and the doubt of it. All from the cards on this phone. */
import { contextOf } from "../../form/context.js";
import { shortSymbol } from "../../form/values.js";
import { readEntry } from "../../kinds/read.js";
import { curveInUnits, inUnits, shownInUnits, strengthShown } from "../../shell/inunits.js";
import { formatAgo, formatDate, formatDay, formatNumber, inOwnMark } from "../../ui/format.js";
import { keptAfter } from "../../trade/caskloss.js";
import { symbol } from "../../trade/units.js";
import { html, nothing } from "../../vendor/lit-html/lit-html.js";
import { cellarWords } from "../cellar/card.js";
import { endOf, gaugesOf, usualFor } from "../cellar/like.js";
import { hasLevel, levelPicture } from "../draw/level.js";
import { picturesOf } from "../enclosed/strip.js";
import { tankNow } from "../reduce/tank.js";
import { labelLink } from "./label.js";
import { hangingOn, noteBand } from "../note/hanging.js";
import { wear } from "../../ui/sheet.js";
import { t } from "../../words/later.js";

const DAY_MS = 86_400_000;
const YEAR_MS = 365.25 * 86_400_000;
const NOTES_SHOWN = 2;
const SOON_YEARS = 0.08; // a month: before that a cask's loss is no wider than its gauge
/** Mash in kg a litre: its juice weighs what its gravity says, its flesh about as much as water. Common practice, no source. */
const MASH_KG_L = [1, 1.1];

/**
 * @typedef {{label: string, raw: string, unit: string, at: string, name: string}} Reading
 * @typedef {{litres: number, low: number, high: number, isGuess: boolean}} Held
 * @typedef {{pinned: unknown, stand: unknown, below: unknown, curve: import("../../ui/charts.js").Curve|null}} Drawn
 */

/**
 * @param {any} card @param {any[]} cards others, for a cask @param {Reading[]} readings the last figures @param {any} kind of those
 * @returns {Promise<Drawn>}
 */
export async function drawVessel(card, cards, readings, kind) {
  await wear("jobs/draw/draw.css");
  const tank = card.sort === "tank" ? await tankNow(card) : null;
  const usual = card.cask && card.holds ? usualFor(card, cards) : null;
  const held = heldIn(card, tank, usual);
  const hanging = await hangingOn(card.mark);
  if (hanging.length) await wear("jobs/note/note.css");
  return {
    pinned: [hanging.slice(0, NOTES_SHOWN).map((one) => noteBand(one)), hanging.length > NOTES_SHOWN ? html`<p><a class="tap" href="/job/notes">${t("floor-more_2", { rest: hanging.length - NOTES_SHOWN })}</a></p>` : nothing],
    stand: hasLevel(card.sort) && !card.run ? standOf(card, held, readings, kind, tank) : null,
    below: [cellarWords(card, cards), await picturesOf(card.mark), labelLink(card.mark)],
    curve: card.ferment && !card.holds?.charged ? fermentCurve(card) : usual ? caskCurve(card, usual) : null,
  };
}

/** @param {any} card @param {import("../reduce/tank.js").Tank|null} tank @param {any} usual loss of casks like it @returns {Held|null} */
function heldIn(card, tank, usual) {
  const held = card.holds;
  if (!held) return null;
  if (tank) return { litres: tank.volumeL, low: tank.volumeL, high: tank.volumeL, isGuess: false };
  if (held.mash && held.volume_l == null && held.mass_kg) {
    const gravity = Math.max(1, card.last.ferment_reading?.gravity?.value ?? held.og ?? 1);
    return { litres: held.mass_kg / gravity, low: held.mass_kg / MASH_KG_L[1], high: held.mass_kg / MASH_KG_L[0], isGuess: true };
  }
  if (held.volume_l == null) return null;
  const years = usual ? yearsSinceGauge(card) : 0;
  const left = (/** @type {number} */ rate) => held.volume_l * keptAfter(Math.max(rate, 0), years);
  if (years < SOON_YEARS) return { litres: held.volume_l, low: held.volume_l, high: held.volume_l, isGuess: false };
  return { litres: held.volume_l, low: left(usual.high), high: left(usual.low), isGuess: false };
}

/** The level alone, as the book has it. @param {any} card */
export const levelOf = (card) => picture(card, heldIn(card, null, null));

/** @param {any} card */
const yearsSinceGauge = (card) => Date.now() / YEAR_MS - (gaugesOf(card).at(-1)?.years ?? Date.now() / YEAR_MS);

/** @param {any} card @param {Held|null} held @param {Reading[]} readings @param {any} kind @param {any} tank */
function standOf(card, held, readings, kind, tank) {
  const [main, ...rest] = figuresOf(card, held, readings, tank);
  return html`<section class="stand" aria-label=${t("floor-stand-as_it_stands")}>${picture(card, held)}<div>
    ${main ? html`<dl class="readings">${one(main, "stand__main")}${rest.map((figure) => one(figure, ""))}</dl>` : nothing}
    <p class="stand__says">${saysOf(card, held, kind, tank)}</p></div></section>`;
}

/** @param {{label: string, figure: string, unit: string, when: string}} figure @param {string} className */
const one = ({ label, figure, unit, when }, className) => html`<div class=${className}><dt>${label}</dt><dd>${figure}<span class="unit"> ${unit}</span></dd>${when ? html`<dd class="quiet">${when}</dd>` : nothing}</div>`;

/** The one figure that matters of this sort first, then what was read last. @param {any} card @param {Held|null} held @param {Reading[]} readings @param {any} tank */
function figuresOf(card, held, readings, tank) {
  const isFresh = (/** @type {Reading} */ one) => card.holds || Date.now() - Date.parse(one.at) < DAY_MS; // of a fill that the book has not heard of yet
  const read = readings.filter(isFresh).map((one) => ({ label: one.label, figure: inOwnMark(one.raw), unit: shortSymbol(one.unit), when: formatAgo(one.at), name: one.name }));
  if (card.sort === "fermenter" || !card.holds) {
    const gravity = read.findIndex((one) => one.name === "gravity");
    return gravity > 0 ? [read[gravity], ...read.filter((_, n) => n !== gravity).map((one) => ({ ...one, when: "" }))] : read;
  }
  const [strength, litres] = [tank?.strengthPct ?? card.holds.strength_pct, held?.litres];
  const of = (/** @type {string} */ label, /** @type {number} */ value, /** @type {string} */ unit, when = "") => {
    const shown = inUnits(value, unit);
    return { label, figure: formatNumber(shown.value, 1), unit: symbol(shown.unit), when };
  };
  const true20 = strength == null ? [] : [{ label: t("floor-true_strength"), figure: strengthShown(strength).figure, unit: strengthShown(strength).sign, when: "" }];
  if (card.cask && card.context.lpa_l != null) {
    const at = gaugesOf(card).at(-1);
    return [of(t("floor-stand-pure_alcohol"), card.context.lpa_l, "LPA", at ? t("floor-stand-as_of", { date: formatDate(at.years * YEAR_MS) }) : ""), ...true20];
  }
  return [...(litres ? [of(t("floor-volume"), litres, "L", tank?.waiting ? t("floor-stand-with_what_waits_here") : "")] : []), ...true20, ...(litres && strength ? [of(t("floor-stand-pure_alcohol"), (litres * strength) / 100, "LPA")] : [])];
}

/** @param {any} card @param {Held|null} held */
function picture(card, held) {
  const full = card.capacity_l || held?.high || 1;
  const share = (/** @type {number} */ litres) => litres / full;
  const isWide = held && held.high > held.low;
  const layers = held ? [{ from: 0, to: share(Math.min(held.litres, held.low)), weight: /** @type {const} */ ("held") }, ...(isWide ? [{ from: share(held.low), to: share(Math.max(held.high, held.litres)), weight: /** @type {const} */ ("doubt") }] : [])] : [];
  return levelPicture({
    id: "stand", sort: card.sort, layers, at: held ? share(held.litres) : null, working: card.working_l && card.sort === "fermenter" ? share(card.working_l) : null,
    words: pictureWords(card, held),
  });
}

/** @param {any} card @param {Held|null} held */
function pictureWords(card, held) {
  const name = card.name || card.mark;
  if (!held) return `${name}: ${card.holds ? t("floor-stand-how_full_is_not") : t("floor-empty_by_the_book")}.`;
  const litres = (/** @type {number} */ value) => shownInUnits(value, "L", 0);
  const of = card.capacity_l ? t("floor-stand-of_full", { capacity_l: litres(card.capacity_l), capacity_l_2: (held.litres / card.capacity_l) * 100 }) : "";
  const span = held.high > held.low ? t("floor-stand-between_and", { low: litres(held.low), high: litres(held.high) }) : "";
  return `${name}: ${held.isGuess ? t("floor-stand-about") : ""}${litres(held.litres)}${of}${span}.`;
}

/** What the picture cannot say by itself, line by line. @param {any} card @param {Held|null} held @param {any} kind @param {any} tank */
function saysOf(card, held, kind, tank) {
  const { holds, cask } = card;
  if (!holds) return html`<span>${t("floor-stand-empty_by_the_book")}</span>${card.capacity_l ? html`<span>${t("floor-stand-takes", { capacity_l: shownInUnits(card.capacity_l, "L", 0) })}</span>` : nothing}`;
  const of = held && card.capacity_l ? html`<span>${t("floor-stand-of", { about: held.isGuess ? t("floor-stand-about") : "", litres: shownInUnits(held.litres, "L", 0), capacity_l: shownInUnits(card.capacity_l, "L", 0), since: card.sort === "fermenter" ? `, ${formatDay(holds.since)}` : "" })}</span>` : nothing;
  const doubt = !held || held.high <= held.low ? nothing : html`<span><span class="stand__sign stand__sign--doubt" aria-hidden="true">▨</span> ${t("floor-stand-to", { about: held.isGuess ? "" : t("floor-stand-now"), low: shownInUnits(held.low, "L", 0), high: shownInUnits(held.high, "L", 0), about_2: held.isGuess ? t("floor-stand-by_its_weight") : t("floor-as_casks_like_it") })}</span>`;
  const working = card.sort === "fermenter" && card.working_l ? html`<span><span class="stand__sign" aria-hidden="true">┈</span> ${t("floor-stand-fill_to_at_most", { working_l: shownInUnits(card.working_l, "L", 0) })}</span>` : nothing;
  const soFar = alcoholSoFar(card, kind);
  const target = card.planned?.target_pct ?? holds.label_strength_pct;
  return html`${of}${doubt}${working}${soFar ? html`<span>${t("floor-stand-so_far_from_gravity", { so_far: shownInUnits(soFar, "pct_vol", 1) })}</span>` : nothing}
    ${tank && target ? html`<span>${t("floor-stand-goes_down_to", { target: shownInUnits(target, "pct_vol", 1) })}</span>` : nothing}
    ${holds.since && card.sort !== "fermenter" ? html`<span>${t("floor-stand-filled", { since: formatDate(holds.since), use: cask?.wood ? `, ${cask.wood}, ${cask.use}` : "" })}</span>` : nothing}`;
}

/** @param {any} card @param {any} kind @returns {number|null} [% vol] */
function alcoholSoFar(card, kind) {
  const gravity = card.last.ferment_reading?.gravity;
  if (kind?.name !== "ferment_reading" || !gravity) return null;
  return readEntry(kind, { values: { gravity: { raw: gravity.raw, unit: gravity.unit } } }, contextOf(card, kind.name)).figures.alcohol_so_far ?? null;
}

/** @param {any} card @returns {import("../../ui/charts.js").Curve|null} */
function fermentCurve(card) {
  const points = (card.curves?.gravity ?? []).filter((/** @type {number[]} */ point) => point[1] != null);
  if (points.length < 2) return null;
  const told = endOf(card);
  const last = points[points.length - 1];
  const base = { title: t("floor-gravity"), yLabel: "SG", xIsTime: true, yDecimals: 3, height: 150, series: [{ label: "", points }] };
  if (told.state !== "running") return { ...base, series: [{ label: t("floor-stand-gravity"), points }] };
  const ahead = told.points.filter((/** @type {number[]} */ [at]) => at > last[0]);
  return {
    ...base, expected: { label: "", points: [last, ...ahead] },
    bands: [{ from: told.ms.low / 1000, to: told.ms.high / 1000, at: told.ms.at / 1000, weight: "doubt", label: t("floor-stand-end") }],
  };
}

/** Pure alcohol gauge by gauge, and what casks like it would have lost since. @param {any} card @param {any} usual @returns {import("../../ui/charts.js").Curve|null} */
function caskCurve(card, usual) {
  const points = gaugesOf(card).map((gauge) => /** @type {[number, number]} */ ([(gauge.years * YEAR_MS) / 1000, gauge.lpa]));
  if (!points.length) return null;
  const [at, lpa] = points[points.length - 1];
  const years = yearsSinceGauge(card);
  /** @type {import("../../ui/charts.js").Curve} */
  const base = { title: t("floor-stand-pure_alcohol_gauge_by"), yLabel: "L", xIsTime: true, yDecimals: 1, height: 150, series: [{ label: "", points }] };
  if (years < SOON_YEARS) return points.length > 1 ? curveInUnits(base, "LPA") : null;
  const now = Date.now() / 1000;
  const left = (/** @type {number} */ rate) => lpa * keptAfter(Math.max(rate, 0), years);
  return curveInUnits({
    ...base, expected: { label: t("floor-as_casks_like_it"), points: [[at, lpa], [now, left(usual.middle)]] },
    bands: [{ from: at, to: now, weight: "doubt", label: t("floor-as_casks_like_it"), area: [[at, lpa], [now, left(usual.low)], [now, left(usual.high)]] }],
  }, "LPA");
}
