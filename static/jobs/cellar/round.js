// @ts-check
/** A round through many vessels: the next one is suggested by place; scan or tap another; the figures; next. Works without signal. */
import { allCards, onCards } from "../../slate/cards.js";
import { localStamp } from "../../slate/entry.js";
import { counts, onChange } from "../../slate/queue.js";
import { formatAgo, formatNumber } from "../../ui/format.js";
import "../../ui/keypad.js";
import { offerTakeBack } from "../../shell/takebackbar.js";
import { toast } from "../../ui/toast.js";
import { html, nothing, render } from "../../vendor/lit-html/lit-html.js";
import { icon } from "../../icons/icons.js";
import { cautionLine } from "../../shell/cautions.js";
import { EntryForm } from "../../form/entryform.js";
import { showFull } from "../../form/full.js";
import { remarkBox } from "../../form/quickfields.js";
import { setHead } from "../../shell/frame.js";
import { handOrAsk } from "../../shell/hand.js";
import { keepMarkBy, markBy } from "../../shell/here.js";
import { getKind, readCards } from "../../shell/phone.js";
import { scanFor } from "../../shell/scanfor.js";
import { keepAwake } from "../../shell/wakelock.js";
import { holdsOf, onTheSlate } from "../../shell/words.js";
import { areaOf, byPlace } from "./like.js";
import { t } from "../../words/later.js";

/**
 * @typedef {object} Round
 * @property {string} name in the address
 * @property {string} kind of entry
 * @property {string} title
 * @property {string} noun "tank"
 * @property {string} plural "tanks"
 * @property {number} hours after which a round begun is over
 * @property {(card: any) => boolean} wants whether a vessel is on the round
 * @property {(kind: any, card: any) => any} boxes
 * @property {(card: any, read: any, cards: any[]) => any} aside what follows from the figures, as they are typed
 * @property {string} caution
 * @property {Record<string, string>} labels short names of fields, for boxes side by side
 * @property {(card: any) => string} [about] what else the head says
 */

/** @param {string} name @returns {HTMLElement} */
const part = (name) => /** @type {HTMLElement} */ (document.querySelector(`[data-part="${name}"]`));

/** @type {{round: Round, who: any, kind: any, cards: any[], all: any[], mark: string, area: string, since: number, form: EntryForm|null, typed: boolean}} */
const here = { round: /** @type {any} */ (null), who: null, kind: null, cards: [], all: [], mark: "", area: "", since: 0, form: null, typed: false };

/** @param {string} name */
const roundPart = (name) => part(`round-${name}`);

/** @param {Round} round */
export async function startRound(round) {
  here.round = round;
  here.who = await handOrAsk();
  if (!here.who) return;
  here.kind = await getKind(round.kind);
  begin(false);
  await load();
  const from = new URLSearchParams(location.search).get("from"); // the first that is due, where the day's page sent us
  go(here.cards.find((card) => card.mark === from && !isDone(card))?.mark ?? nextMark(""));
  onChange(() => void load().then(showList));
  onCards(() => void load().then(showList));
  keepAwake();
}

const keptAs = () => `round:${here.round.name}`;

/** A round goes on where it was left, on this phone, until it is too old or a new one is begun. @param {boolean} isNew */
function begin(isNew) {
  const kept = isNew ? null : JSON.parse(localStorage.getItem(keptAs()) ?? "null");
  const isOld = !kept || Date.now() - kept.since > here.round.hours * 3_600_000;
  [here.since, here.area] = isOld ? [Date.now(), kept?.area ?? ""] : [kept.since, kept.area];
  keep();
}

const keep = () => localStorage.setItem(keptAs(), JSON.stringify({ since: here.since, area: here.area }));

async function load() {
  here.all = (await readCards()).filter(here.round.wants).sort(byPlace);
  here.cards = here.all.filter((card) => !here.area || areaOf(card.place) === here.area);
}

/** When it was logged here last. @param {any} card @returns {number} ms, 0 for never */
const lastAt = (card) => Math.max(0, ...Object.values(card.last[here.round.kind] ?? {}).map((value) => Date.parse(/** @type {any} */ (value).at)));

/** @param {any} card a reading taken in the minutes before the round began counts: times are whole seconds */
const isDone = (card) => lastAt(card) >= here.since - 1000;

/** The next in the order of places after one, that is not done; "" when all are. @param {string} mark */
function nextMark(mark) {
  const at = here.cards.findIndex((card) => card.mark === mark);
  const after = [...here.cards.slice(at + 1), ...here.cards.slice(0, at + 1)];
  return after.find((card) => !isDone(card))?.mark ?? "";
}

/** @param {string} mark */
function go(mark) {
  here.form?.close();
  here.form = null;
  here.mark = mark;
  here.typed = false;
  showList();
  const card = here.all.find((one) => one.mark === mark);
  if (card) showForm(card);
  else showEnd();
  scrollTo(0, 0);
}

function showList() {
  const { round, cards } = here;
  const done = cards.filter(isDone).length;
  const current = here.all.find((card) => card.mark === here.mark);
  setHead({ mark: current ? current.name || current.mark : round.title, first: current ? holdsOf(current)[0] : t("floor-round-of", { done, cards: cards.length }), second: current ? [t("floor-round-of_done", { done, cards: cards.length }), current.place, round.about?.(current) ?? ""].filter(Boolean).join(" · ") : "", back: "/" });
  if (!document.querySelector('[data-part="round-list"]')) render(html`<div data-part="round-form"></div><div data-part="round-list" class="stack"></div>`, part("body"));
  render([progress(done), chooser()], roundPart("list"));
}

/** @param {number} done */
const progress = (done) => html`<p class="row row--apart" role="status"><strong>${here.round.title}</strong> <span>${t("floor-round-of_done", { done, cards: here.cards.length })}</span></p>
  <progress class="round__bar" max=${Math.max(here.cards.length, 1)} .value=${done} aria-label=${t("floor-round-of_done", { done, cards: here.cards.length })}></progress>`;

function chooser() {
  const areas = [...new Set(here.all.map((card) => areaOf(card.place)))];
  const line = (/** @type {any} */ card) => html`<button type="button" class="button" aria-pressed=${card.mark === here.mark ? "true" : "false"} @click=${() => go(card.mark)}>${isDone(card) ? icon("entered") : nothing}<span>${card.name || card.mark}</span></button>`;
  return html`<details class="more"><summary><strong>${t("floor-round-another_of_round", { noun: here.round.noun })}</strong> <span class="quiet">${t("floor-tap_it_in_the")}</span></summary>
    ${areas.length > 1 ? html`<div class="buttons" role="group" aria-label=${t("floor-round-place")}>${["", ...areas].map((area) => html`<button type="button" class="button" aria-pressed=${area === here.area ? "true" : "false"} @click=${() => void setArea(area)}>${area || t("floor-all_places")}</button>`)}</div>` : nothing}
    <div class="buttons" role="group" aria-label=${here.round.title}>${here.cards.map(line)}</div>
    <p><button type="button" class="button" @click=${again}>${t("floor-round-begin_a_new_round")}</button></p></details>`;
}

/** @param {string} area */
async function setArea(area) {
  here.area = area;
  keep();
  await load();
  if (here.cards.some((card) => card.mark === here.mark)) showList();
  else go(nextMark(""));
}

function again() {
  begin(true);
  go(nextMark(""));
}

/** @param {any} card */
function showForm(card) {
  const { kind, round } = here;
  const last = lastAt(card);
  render(html`<form class="form round" data-kind=${kind.name} data-mark=${card.mark} novalidate aria-label="${round.title}: ${card.name || card.mark}">
    ${isDone(card) ? html`<p class="quiet">${icon("entered")} ${t("floor-round-logged_another_reading_stands", { last: formatAgo(last) })}</p>` : nothing}
    ${round.boxes(short(kind, round.labels), card)}
    <details class="more"><summary><strong>${t("floor-remark_2")}</strong></summary><div class="form">${remarkBox()}</div></details>
    <div data-part="round-figures" class="sums" aria-live="polite"></div>
  </form>`, roundPart("form"));
  render(html`<div data-part="round-look" aria-live="polite"></div><div data-part="round-aside" aria-live="polite"></div>`, part("panel"));
  const form = /** @type {HTMLFormElement} */ (roundPart("form").querySelector("form"));
  form.reset();
  const tappedAt = () => localStamp(new Date());
  here.form = new EntryForm({
    form, kind, card, who: here.who, look: part("round-look"), figures: part("round-figures"),
    about: () => ({ mark: card.mark, mark_by: markBy(card.mark), read_at: tappedAt(), remark: /** @type {HTMLTextAreaElement|null} */ (form.querySelector("[name=remark]"))?.value.trim() ?? "" }),
    onChange: () => { if (here.form) render(round.aside(card, here.form.read, here.all), part("round-aside")); },
    onFull: (error) => showFull(part("round-look"), error),
    action: () => part("doing").querySelector(".button--action"),
    onLogged: async (kept) => {
      offerTakeBack({ words: `${card.name || card.mark}: ${onTheSlate((await counts()).waiting)}`, entry: kept.id });
      await load();
      go(nextMark(card.mark));
    },
  });
  render(round.aside(card, here.form.read, here.all), part("round-aside"));
  render(doing(card, form), part("doing"));
  form.dataset.ready = card.mark;
  /** @type {HTMLElement|null} */ (form.querySelector("input.field__value"))?.focus({ preventScroll: true });
}

/** @param {any} kind @param {Record<string, string>} labels */
const short = (kind, labels) => ({ ...kind, fields: kind.fields.map((/** @type {any} */ field) => ({ ...field, label: labels[field.name] ?? field.label })) });

/** @param {any} card @param {HTMLFormElement} form */
const doing = (card, form) => html`<div class="round__doing">
    <button type="button" class="button" aria-label=${t("floor-scan_the_next")} @click=${() => void scan()}>${icon("scan")}</button>
    <button type="button" class="button button--main button--action" @click=${() => form.requestSubmit()}>${t("floor-round-log_it_next")}</button>
    <button type="button" class="button" @click=${() => go(nextMark(card.mark))}>${t("floor-skip")}</button></div>`;

async function scan() {
  const mark = await scanFor(t("floor-round-next_of_round", { noun: here.round.noun }));
  if (!mark) return;
  const card = here.all.find((one) => one.mark === mark);
  if (card) {
    keepMarkBy(mark, "scanned");
    go(mark);
    return;
  }
  const other = (await allCards()).find((one) => one.mark === mark);
  toast(other ? t("floor-round-is_not_on_this", { mark: other.name || mark, sort: other.holds ? t("floor-round-it_is_a", { sort: other.sort }) : t("floor-round-it_holds_nothing_as") }) : t("floor-round-this_phone_knows_no", { mark }), 8000);
}

function showEnd() {
  const { round, cards } = here;
  render(nothing, roundPart("form"));
  render(cautionLine(round.caution), part("panel"));
  /** @type {HTMLElement} */ (document.querySelector("slate-keypad")).hidden = true;
  const words = cards.length ? t("floor-round-all_done", { count: cards.length, noun: round.noun }) : t("floor-round-none_to_go_to", { noun: round.noun });
  render(html`<p class="round__end">${words}</p>
    <div class="stack"><div class="pair"><button type="button" class="button" @click=${again}>${t("floor-round-begin_a_new_round")}</button><a class="button" href="/slate">${t("floor-the_slate")}</a></div>
    <a class="button button--main button--action" href="/">${t("floor-today")}</a></div>`, part("doing"));
}
