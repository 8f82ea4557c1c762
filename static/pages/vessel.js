// @ts-check
/** A vessel's card: what it holds, what was read last, what the book asks, and what to log. */
import { allCards, freshAt, onCards } from "../slate/cards.js";
import { onChange } from "../slate/queue.js";
import { onTimers } from "../slate/timers.js";
import { BadMark, parseMark, suggest } from "../trade/marks.js";
import { drawCurve } from "../ui/charts.js";
import { badge } from "../ui/badge.js";
import { curveInUnits } from "../shell/inunits.js";
import { symbol } from "../trade/units.js";
import { formatAgo, formatDate, formatDuration, formatTime, inOwnMark } from "../ui/format.js";
import { html, nothing, render } from "../vendor/lit-html/lit-html.js";
import { icon } from "../icons/icons.js";
import { shortSymbol } from "../form/values.js";
import { cautionLine } from "../shell/cautions.js";
import { setHead } from "../shell/frame.js";
import { isScannedHere, logPath, markHere, runPath, scannedPath, vesselPath } from "../shell/here.js";
import { penOf } from "../shell/linesheet.js";
import { kindsByName, readCard } from "../shell/phone.js";
import { figureNow } from "../jobs/run/paper.js";
import { curveOf, runTitle } from "../jobs/run/state.js";
import { agoWords, holdsOf, markWords } from "../shell/words.js";
import { loadQuestions } from "../words/catalogue.js";
import { say } from "../words/say.js";
import { t } from "../words/t.js";

const RECENT_SHOWN = 4;
const OTHERS_SHOWN = 4; // under the thumb beside the likeliest; the rest fold away
const STALE_MS = 60 * 60_000;
/** Queries that another figure would not answer: the desk does. */
const NOT_A_FIGURE = new Set(["clock", "danger"]);
/** Long enough for what is on the phone; a page never waits for the network. */
const DRAWER_MS = 250;
/** @type {{destroy(): void}|null} */
let curve = null;
/** @type {typeof import("../jobs/vessel/stand.js")|null} the vessel's picture: it comes with the part of the app after the first install */
let drawer = null;

export async function start() {
  document.querySelector('[data-part="body"]')?.replaceChildren(); // what the server drew for a browser without script
  onChange(() => void show());
  onCards(() => void show());
  onTimers(() => void show());
  void loadQuestions();
  const drawing = import("../jobs/vessel/stand.js").then((job) => { drawer = job; }, () => {});
  await Promise.race([drawing, new Promise((done) => setTimeout(done, DRAWER_MS))]);
  const isDrawn = Boolean(drawer);
  await show();
  if (!isDrawn) void drawing.then(() => drawer && show());
}

async function show() {
  const body = /** @type {HTMLElement} */ (document.querySelector('[data-part="body"]'));
  const [mark, wrong] = read(markHere());
  const card = wrong ? null : await readCard(mark);
  if (!card) return render(await strange(mark, wrong), body);
  if (isScannedHere() && scannedPath(card) !== vesselPath(mark)) return location.replace(scannedPath(card));
  const [byName, fresh] = await Promise.all([kindsByName(Object.keys(card?.last ?? {})), freshAt()]);
  const [first, second] = card.run ? [runTitle(card.run), t("floor-since", { started_at: formatTime(card.run.started_at), started_at_2: formatDuration((Date.now() - Date.parse(card.run.started_at)) / 1000) })] : holdsOf(card);
  setHead({ mark: card.name || card.mark, first, second: [card.place, second].filter(Boolean).join(" · "), back: "/" });
  const kind = readHere(card, byName);
  const readings = kind ? lastRead(card, kind) : [];
  const drawn = await drawer?.drawVessel(card, card.cask ? await allCards() : [], readings, kind);
  const timer = card.run || card.sort === "fermenter" ? html`<div data-part="timer"></div>` : nothing;
  render([questions(card), drawn?.pinned ?? nothing, drawn?.stand ?? state(card, readings), card.run ? timer : nothing, html`<div class="chart" data-part="curve" hidden></div>`, drawn?.below ?? nothing, card.run ? nothing : timer, lines(card, byName, fresh), doing(card, byName)], body);
  showCurve(card, byName, drawn?.curve);
  if (card.run || card.sort === "fermenter") void showTimer(card);
}

/** When it is to be read again: from the part that comes after the first install. @param {any} card */
async function showTimer(card) {
  const timers = await import("../jobs/timers/show.js").catch(() => null);
  const place = /** @type {HTMLElement|null} */ (document.querySelector('[data-part="timer"]'));
  if (timers && place) await timers.showOnVessel(place, card);
}

/** @param {string} text @returns {[mark: string, wrong: string]} */
function read(text) {
  try {
    return [parseMark(text), ""];
  } catch (error) {
    return [text, error instanceof BadMark ? markWords(error) : String(error)];
  }
}

/** @param {string} mark @param {string} wrong */
async function strange(mark, wrong) {
  setHead({ mark, first: wrong ? t("floor-vessel-no_mark") : t("floor-vessel-not_known_here"), back: "/scan" });
  const cards = await allCards();
  const likely = suggest(mark, cards.map((card) => card.mark), 3);
  const words = wrong || t("floor-vessel-this_phone_knows_no");
  return html`<section class="band band--ask"><p><span class="band__lead">${icon("ask")} ${mark}</span> ${words}</p>
      ${likely.length ? html`<div class="band__offers">${likely.map((one) => html`<a class="button" href=${vesselPath(one)}>${one}</a>`)}</div>` : nothing}</section>
    <div class="thumb thumb--pair"><a class="button button--action" href="/log/shift_note?text=${encodeURIComponent(t("floor-vessel-at", { mark }))}">${t("floor-vessel-note_it")}</a>
      <a class="button button--action button--main" href="/scan">${t("floor-vessel-scan_again")}</a></div>`;
}

/** @param {any} card */
function questions(card) {
  if (!card.queries.length) return nothing;
  return html`<section class="stack" aria-label=${t("floor-vessel-open_queries")} id="queries">${card.queries.map((/** @type {any} */ query) => html`
    <div class="band band--${query.weight}"><p>${badge(query.weight)} ${say(query)}</p>
      ${query.weight === "note" || NOT_A_FIGURE.has(query.code) ? nothing : html`<div class="band__offers"><a class="button" href="${logPath(card.mark, query.kind)}?amends=${query.entry}">${t("floor-put_it_right")}</a></div>`}</div>`)}</section>`;
}

/** The kind whose figures show how the vessel stands: the one read last. @param {any} card @param {Map<string, any>} byName */
const readHere = (card, byName) => kindsHere(card, byName).filter((one) => one.curve.length && newest(card, one)).sort((a, b) => (newest(card, a) < newest(card, b) ? 1 : -1))[0];

/** @param {any} card @param {any} kind */
const lastRead = (card, kind) => kind.fields.filter((/** @type {any} */ field) => field.sort === "number" && card.last[kind.name][field.name]).slice(0, 3)
  .map((/** @type {any} */ field) => ({ ...card.last[kind.name][field.name], name: field.name, label: labelOf(field) }));

/** The last figures, side by side. @param {any} card @param {any[]} readings */
function state(card, readings) {
  if (card.run) return figureNow(card.run);
  const since = card.holds?.since && card.sort !== "fermenter" ? html`<p class="quiet">${t("floor-vessel-filled", { since: formatDate(card.holds.since) })}</p>` : nothing;
  if (!readings.length) return since;
  return html`<dl class="readings">${readings.map(({ label, raw, unit, at }) => html`<div><dt>${label}</dt><dd>${inOwnMark(raw)} <span class="unit">${shortSymbol(unit)}</span></dd><dd class="quiet">${formatAgo(at)}</dd></div>`)}</dl>${since}`;
}

/** @param {any} card @param {any} kind @returns {string} when it was logged here last, or "" */
const newest = (card, kind) => Object.values(card.last[kind.name] ?? {}).map((value) => /** @type {any} */ (value).at).sort().at(-1) ?? "";

/** "Gravity, strained juice" is Gravity here. @param {any} spec of a field or figure */
const labelOf = (spec) => spec.label.split(",")[0].replace(/^or (.)/, (/** @type {string} */ _, /** @type {string} */ first) => first.toUpperCase());

/** The forms of this vessel: where it holds something, what is read again and again comes first, then what is for its sort alone; an empty one is filled first. @param {any} card @param {Map<string, any>} byName @returns {any[]} */
function kindsHere(card, byName) {
  const kinds = (card.forms ?? []).map((/** @type {string} */ name) => byName.get(name)).filter((/** @type {any} */ kind) => kind?.floor);
  const fills = (/** @type {any} */ kind) => Number(kind.checks.includes("vessel_not_empty"));
  if (!card.holds) return kinds.sort((/** @type {any} */ a, /** @type {any} */ b) => fills(b) - fills(a));
  return kinds.sort((/** @type {any} */ a, /** @type {any} */ b) => Number(b.curve.length > 0) - Number(a.curve.length > 0) || a.vessels.length - b.vessels.length);
}

/** @param {any} card @param {Map<string, any>} byName @param {string|null} fresh */
function lines(card, byName, fresh) {
  const recent = card.recent.slice(0, RECENT_SHOWN);
  return html`<section>
    ${recent.length ? html`<ul class="list">${recent.map((/** @type {any} */ line) => html`<li class="list__item--short">
        <span class="list__mark">${isToday(line.at) ? formatTime(line.at) : formatAgo(line.at)}</span>
        <span class="list__what">${inOwnMark(line.summary || byName.get(line.kind)?.title || line.kind)}</span>
        <span class="list__end">${line.waiting ? badge("waiting") : line.person}${penOf({ ...line, mark: card.mark })}</span></li>`)}</ul>`
      : html`<p class="quiet">${t("floor-vessel-nothing_logged_here_yet")}</p>`}
    ${card.judging ? html`<p class="quiet">${t("floor-vessel-the_book_is_still")}</p>` : nothing}
    <p class="quiet fresh">${fresh ? (Date.now() - Date.parse(fresh) > STALE_MS ? t("floor-vessel-as_the_book_had", { fresh: agoWords(fresh) }) : "") : t("floor-vessel-the_book_has_not")}</p>
  </section>`;
}

/** @param {string} at */
const isToday = (at) => formatAgo(at) === formatTime(at);

/** What to log, the likeliest first and full width. @param {any} card @param {Map<string, any>} byName */
function doing(card, byName) {
  const kinds = kindsHere(card, byName);
  const isStill = card.sort === "still";
  const shown = kinds.filter((/** @type {any} */ kind) => !kind.run && !(isStill && card.run && kind.name === "charge"));
  const rows = shown.map((/** @type {any} */ kind) => ({ words: kind.short, sign: kind.icon, path: logPath(card.mark, kind.name) }));
  if (isStill && card.run) rows.unshift({ words: t("floor-run_sheet"), sign: "glass", path: runPath(card.mark) });
  if (isStill && !card.run) rows.push({ words: t("floor-vessel-readings_without_a_charge"), sign: "glass", path: runPath(card.mark) });
  if (card.sort === "tank" && card.holds && !card.holds.mash) {
    rows.splice(1, 0, ...[[t("floor-vessel-how_much_water"), "reduce"], [t("floor-vessel-bottling_line"), "bottling"]].map(([words, job]) => ({ words, sign: "tank", path: `/job/${job}?mark=${encodeURIComponent(card.mark)}` })));
  }
  const [main, ...others] = rows;
  const rest = others.length > OTHERS_SHOWN + 1 ? others.splice(OTHERS_SHOWN) : [];
  return html`${card.in_zone || isStill ? cautionLine("fire_zone") : nothing}
    ${rest.length ? html`<details class="more"><summary><strong>${t("floor-vessel-more_to_log")}</strong> <span class="quiet">${rest.length}</span></summary>
      <nav class="pair" aria-label=${t("floor-vessel-more_to_log")}>${rest.map(({ words, path }) => html`<a class="button" href=${path}>${words}</a>`)}</nav></details>` : nothing}
    <nav class="thumb doing" aria-label=${t("floor-vessel-what_to_log")} data-doing>
    ${others.map(({ words, path }) => html`<a class="button" href=${path}>${words}</a>`)}
    ${main ? html`<a class="button button--main button--action" href=${main.path}>${main.words}</a>` : nothing}</nav>`;
}

/** @param {any} card @param {Map<string, any>} byName @param {import("../ui/charts.js").Curve|null} [drawn] with what is expected */
function showCurve(card, byName, drawn) {
  const place = /** @type {HTMLElement} */ (document.querySelector('[data-part="curve"]'));
  if (card.sort === "still") return showRun(card, place);
  const [name, points] = Object.entries(card.curves ?? {}).find(([, some]) => /** @type {any[]} */ (some).length > 1) ?? ["", []];
  curve?.destroy();
  curve = null;
  place.hidden = !name && !drawn;
  if (drawn) curve = drawCurve(place, drawn);
  if (!name || drawn) return;
  const kind = [...byName.values()].find((one) => one.curve.includes(name));
  const spec = kind?.fields.find((/** @type {any} */ one) => one.name === name) ?? kind?.figures.find((/** @type {any} */ one) => one.name === name);
  const [label, unit] = [labelOf(spec ?? { label: name }), spec?.units?.[0] ?? spec?.unit ?? "plain"];
  curve = drawCurve(place, curveInUnits({ series: [{ label, points }], title: label, yLabel: symbol(unit), xIsTime: true, height: 132, yDecimals: spec?.decimals ?? 1 }, unit));
}

/** A still's own curve is its run's. @param {any} card @param {HTMLElement} place */
function showRun(card, place) {
  const drawn = card.run && curveOf(card.run, card.past_runs[0]);
  curve?.destroy();
  curve = drawn ? drawCurve(place, { ...drawn, height: 170 }) : null;
  place.hidden = !drawn;
}
