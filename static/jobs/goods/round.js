// @ts-check
/**
 * A stock count as a round: one place or all, vessel by vessel and batch by batch. The count is blind: what the book expects is put aside
 * as each is counted, and shown at the end beside what was found. Then the counts are signed, and each is an entry. A round that is left
 * goes on where it was, also without signal.
 */
import { EntryForm } from "../../form/entryform.js";
import { showFull } from "../../form/full.js";
import { sayThere, setHead } from "../../shell/frame.js";
import { handOrAsk } from "../../shell/hand.js";
import { keepMarkBy, markBy } from "../../shell/here.js";
import { getKind, readCards } from "../../shell/phone.js";
import { scanFor } from "../../shell/scanfor.js";
import { keepAwake } from "../../shell/wakelock.js";
import { capital } from "../../shell/words.js";
import { onCards, site } from "../../slate/cards.js";
import { getMeta, setMeta } from "../../slate/db.js";
import { localStamp } from "../../slate/entry.js";
import { log as chalk } from "../../slate/queue.js";
import "../../ui/keypad.js";
import { toast } from "../../ui/toast.js";
import { nothing, render } from "../../vendor/lit-html/lit-html.js";
import { areaOf, byPlace } from "../cellar/like.js";
import { dressPlaces } from "../shared/places.js";
import { part } from "../panel.js";
import { dressCounts, prepare } from "./counter.js";
import { differencesOf, expectedGoods, expectedOf, foundGoods } from "./differences.js";
import { readGoods } from "./known.js";
import { bottlesForm, bottleWords, caskPlace, doingCask, doingForm, doingUnknown, ended, frame, list, places, unknownForm, vesselForm } from "./roundview.js";
import { goodsNamed, nameOf } from "./stock.js";
import { t } from "../../words/later.js";

const KEPT = "stock-count";
const KEPT_DAYS = 14;
const VESSELS = ["tank", "can", "receiver"];
/** Where bottles stand the book does not say: they are a place of their own. */
export const BOTTLED = t("floor-round-bottled_goods");

/**
 * @typedef {{key: string, name: string, place: string, area: string, card?: any, goods?: import("./stock.js").Goods}} Item
 * @typedef {{since: number, person: string, area: string, counted: Record<string, import("./differences.js").Counted>, logged: string[]}} Kept
 */

/** @type {{who: any, house: any, kinds: Record<string, any>, all: Item[], kept: Kept|null, at: string, form: EntryForm|null, isPlace: boolean}} */
const here = { who: null, house: {}, kinds: {}, all: [], kept: null, at: "", form: null, isPlace: false };

export async function start() {
  here.who = await handOrAsk();
  if (!here.who) return;
  prepare();
  const [house, stock, bottled, kept] = await Promise.all([site(), getKind("stock_count"), getKind("bottled_count"), getMeta(KEPT)]);
  here.house = house;
  here.kinds = { stock_count: stock, bottled_count: bottled };
  here.kept = kept && Date.now() - kept.since < KEPT_DAYS * 86_400_000 ? kept : null;
  await load();
  if (here.kept) go(next(""));
  else choosePlace();
  onCards(() => void load().then(() => here.kept && showList()));
  keepAwake();
}

async function load() {
  const [cards, goods] = await Promise.all([readCards(), readGoods()]);
  const vessels = cards.filter((card) => VESSELS.includes(card.sort) || (card.sort === "cask" && card.holds)).sort(byPlace);
  here.all = [
    ...vessels.map((card) => ({ key: `v:${card.mark}`, name: card.name || card.mark, place: card.place ?? "", area: areaOf(card.place), card })),
    ...goods.filter((one) => one.on_hand > 0).map((one) => ({ key: `b:${one.id}`, name: nameOf(one), place: "", area: BOTTLED, goods: one })),
  ];
}

const inRound = () => here.all.filter((item) => !here.kept?.area || item.area === here.kept.area);

/** Two fills of a tank share their batch: a case says which. @param {import("./stock.js").Goods} goods */
const isShared = (goods) => goodsNamed(here.all.flatMap((one) => one.goods ?? []), nameOf(goods)).length > 1;

/** @param {Item} item */
const isDone = (item) => Boolean(here.kept?.counted[item.key] || here.kept?.logged.includes(item.key));

/** @param {string} key @returns {string} the next one after it that is not counted; "" when all are */
function next(key) {
  const items = inRound();
  const at = items.findIndex((item) => item.key === key);
  return [...items.slice(at + 1), ...items.slice(0, at + 1)].find((item) => !isDone(item))?.key ?? "";
}

const save = () => setMeta(KEPT, here.kept);

function choosePlace() {
  const areas = [...new Set(here.all.map((item) => item.area))];
  const named = new Map((here.house.areas ?? []).map((/** @type {any} */ area) => [area.id, area.name]));
  const rows = areas.map((area) => ({ area, words: capital(named.get(area) || area || t("floor-round-elsewhere")), count: here.all.filter((item) => item.area === area).length }));
  setHead({ mark: t("floor-stock_count"), first: "", second: "", back: "/" });
  render(places(rows, here.all.length, (area) => {
    here.kept = { since: Date.now(), person: here.who.code, area, counted: {}, logged: [] };
    void save();
    go(next(""));
  }), part("body"));
  render(nothing, part("panel"));
  render(nothing, part("doing"));
}

/** @param {string} key */
function go(key) {
  here.form?.close();
  here.form = null;
  here.at = key;
  closePads();
  const item = here.all.find((one) => one.key === key);
  if (!item) return showEnd();
  showList();
  if (item.card?.sort === "cask") showCask(item);
  else if (item.card) showVessel(item);
  else showBottles(item);
  scrollTo(0, 0);
}

function closePads() {
  /** @type {HTMLElement} */ (document.querySelector("slate-keypad")).hidden = true;
  document.querySelectorAll(".counter").forEach((pad) => pad.remove());
}

function showList() {
  const items = inRound();
  const item = here.all.find((one) => one.key === here.at);
  const done = items.filter(isDone).length;
  const also = item?.goods ? isShared(item.goods) && t("floor-cases_to", { case_from: item.goods.case_from, case_to: item.goods.case_to }) : item?.place;
  if (item) setHead({ mark: item.name, first: item.goods ? bottleWords(item.goods) : item.card.title || item.card.sort, second: [t("floor-round-of_done_2", { done, items: items.length }), also].filter(Boolean).join(" · "), back: "/" });
  if (!document.querySelector('[data-part="round-list"]')) render(frame(), part("body"));
  render(list({ items, done, isDone, at: here.at, onGo: go, onEnd: showEnd, onUnknown: showUnknown, onOpen: makeRoom }), part("round-list"));
}

/** The list wants the place of the keys; they come back with the next tap on a box. @param {Event} event */
function makeRoom({ currentTarget }) {
  const fold = /** @type {HTMLDetailsElement} */ (currentTarget);
  if (!fold.open) return;
  /** @type {HTMLElement|null} */ (document.activeElement)?.blur();
  for (const pad of /** @type {NodeListOf<HTMLElement>} */ (document.querySelectorAll("slate-keypad, .counter"))) pad.hidden = true;
  fold.scrollIntoView({ block: "nearest" });
}

/** A cask is not measured: it is there, or it is not, or it stands elsewhere. @param {Item} item */
function showCask(item) {
  render(caskPlace(item), part("round-form"));
  void dressPlaces(part("round-form"), item.card);
  render(nothing, part("panel"));
  const keepCask = async (/** @type {"here"|"nothing"} */ state) => {
    const typed = /** @type {HTMLInputElement|null} */ (part("round-form").querySelector("[name=place]"))?.value.trim() ?? "";
    const place = typed || item.place;
    await keep(item, { kind: "stock_count", values: { ...(place ? { place: { raw: place } } : {}), found: { raw: state } } }, { state, place, lpa_l: null, volume_l: null, strength_pct: null, bottles: null });
  };
  render(doingCask({ onHere: () => void keepCask("here"), onNothing: () => void keepCask("nothing"), onScan: () => void scan() }), part("doing"));
}

/** What a vessel would tell of its past is left out: the count is blind. @param {any} card */
const blind = (card) => ({ ...card, holds: null, last: {}, curves: {}, run: null, context: { tare_kg: card.context?.tare_kg ?? null } });

/** @param {Item} item */
function showVessel(item) {
  const kind = here.kinds.stock_count;
  const card = blind(item.card);
  render(vesselForm(kind, card), part("round-form"));
  begin(item, kind, card, (read) => ({
    state: "here", place: "", lpa_l: read.figures.lpa ?? null, volume_l: read.figures.volume_20 ?? null, strength_pct: read.figures.true_strength ?? null, bottles: null,
  }), async () => {
    const draft = { kind: kind.name, values: { found: { raw: "here" }, net_weight: { raw: "0", unit: "kg" }, strength: { raw: "0", unit: "pct_vol" } } };
    await keep(item, draft, { state: "here", place: "", lpa_l: 0, volume_l: 0, strength_pct: null, bottles: null });
  });
}

/** @param {Item} item */
function showBottles(item) {
  const goods = /** @type {import("./stock.js").Goods} */ (item.goods);
  const kind = here.kinds.bottled_count;
  const withCase = isShared(goods);
  render(bottlesForm(kind, goods, withCase), part("round-form"));
  const form = /** @type {HTMLFormElement} */ (part("round-form").querySelector("form"));
  dressCounts(form, ["cases", "bottles"], part("thumb"));
  begin(item, kind, null, (read) => foundGoods(goods, read.values), async () => {
    const values = { batch: { raw: nameOf(goods) }, ...(withCase ? { case_from: { raw: goods.case_from } } : {}), cases: { raw: "0", unit: "count" }, bottles: { raw: "0", unit: "count" } };
    await keep(item, { kind: kind.name, values }, foundGoods(goods, {}));
  });
}

/** @param {Item} item @param {any} kind @param {any} card @param {(read: any) => import("./differences.js").Counted["found"]} foundIn @param {() => Promise<void>} onEmpty nothing is in it */
function begin(item, kind, card, foundIn, onEmpty) {
  const form = /** @type {HTMLFormElement} */ (part("round-form").querySelector("form"));
  render(nothing, part("panel"));
  const look = document.createElement("div");
  look.setAttribute("aria-live", "polite");
  part("panel").append(look);
  form.reset();
  here.form = new EntryForm({
    form, kind, card, who: here.who, look, figures: document.createElement("div"), // a computed figure may tell too much
    about: () => ({ remark: /** @type {HTMLTextAreaElement|null} */ (form.querySelector("[name=remark]"))?.value.trim() ?? "" }),
    action: () => part("doing").querySelector(".button--action"),
    keep: async (draft) => keep(item, draft, foundIn(here.form?.read)),
    onLogged: () => {},
    onFull: (error) => showFull(look, error),
  });
  render(doingForm({ onKeep: () => form.requestSubmit(), onEmpty: () => void onEmpty(), emptyWords: item.goods ? t("floor-round-none") : t("floor-round-empty"), onSkip: () => go(next(item.key)), onScan: () => void scan() }), part("doing"));
  form.dataset.ready = item.key;
  /** @type {HTMLElement|null} */ (form.querySelector("input.field__value:not([type=hidden])"))?.focus({ preventScroll: true });
}

/** Something stands there that the book does not know. */
function showUnknown() {
  here.form?.close();
  here.form = null;
  here.at = "";
  closePads();
  showList();
  setHead({ mark: t("floor-not_in_the_book"), first: t("floor-round-what_says_it_on"), second: "" });
  render(unknownForm(here.kept?.area === BOTTLED ? "" : here.kept?.area ?? ""), part("round-form"));
  void dressPlaces(part("round-form"), null);
  render(nothing, part("panel"));
  const box = (/** @type {string} */ name) => /** @type {HTMLInputElement} */ (part("round-form").querySelector(`[name="${name}"]`)).value.trim();
  render(doingUnknown({
    onKeep: async () => {
      const [label, place] = [box("label"), box("place")];
      if (!label) return toast(t("floor-round-type_what_it_says"));
      const values = { found: { raw: "unknown" }, label: { raw: label }, ...(place ? { place: { raw: place } } : {}) };
      const item = { key: `x:${Date.now()}`, name: label, place, area: here.kept?.area ?? "" };
      await keep(item, { kind: "stock_count", values, mark: "" }, { state: "unknown", place, lpa_l: null, volume_l: null, strength_pct: null, bottles: null });
    },
    onLeave: () => go(next("")),
  }), part("doing"));
  /** @type {HTMLElement|null} */ (part("round-form").querySelector("[name=label]"))?.focus({ preventScroll: true });
}

/** Put one count aside, with what the book expects just now. @param {Item} item @param {any} draft @param {import("./differences.js").Counted["found"]} found */
async function keep(item, draft, found) {
  if (!here.kept) return;
  const mark = item.card?.mark ?? "";
  const kind = here.kinds[draft.kind];
  here.kept.counted[item.key] = {
    key: item.key, name: item.name, what: item.goods ? item.goods.what : item.card?.holds?.what ?? "", at: new Date().toISOString(),
    expected: item.card ? expectedOf(item.card) : item.goods ? expectedGoods(item.goods) : null, found,
    draft: { kind_version: kind.version, person: here.who.code, role: here.who.role || kind.role, as_read: [], looked_again: [], remark: "", ...draft, mark, mark_by: mark ? markBy(mark) : "", read_at: localStamp(new Date()) },
  };
  await save();
  go(next(item.key));
}

async function scan() {
  const mark = await scanFor(t("floor-round-next_vessel"));
  if (!mark) return;
  const item = here.all.find((one) => one.card?.mark === mark);
  if (!item) return toast(t("floor-round-this_round_has_no", { mark }), 8000);
  keepMarkBy(mark, "scanned");
  go(item.key);
}

/** Now the book speaks. */
function showEnd() {
  here.form?.close();
  here.form = null;
  here.at = "";
  closePads();
  const counted = Object.values(here.kept?.counted ?? {});
  const open = inRound().filter((item) => !isDone(item));
  const found = differencesOf(counted);
  setHead({ mark: t("floor-stock_count"), first: `${t("floor-round-counts", { count: counted.length })}, ${open.length ? t("floor-round-left", { open: open.length }) : t("floor-round-all_done_2")}`, second: "", back: "/" });
  render(nothing, part("panel"));
  const signed = [here.who.name, here.who.role].filter(Boolean).join(", ");
  const isUs = (here.house.accounts ?? (here.house.units === "us" ? "us" : "")) === "us";
  const { body, doing } = ended({ ...found, open, signed, isUs, onAgain: again, onGo: go, onGoOn: () => go(next("")), onSign: sign, onDrop: drop });
  render(body, part("body"));
  render(doing, part("doing"));
  scrollTo(0, 0);
}

/** @param {string} key counted again, as blind as before */
function again(key) {
  if (!here.kept) return;
  delete here.kept.counted[key];
  void save();
  go(here.all.some((item) => item.key === key) ? key : next(""));
}

/** Each count becomes an entry as it was read; one that is logged leaves the round, so that nothing is logged twice. @param {string} signed */
async function sign(signed) {
  if (!here.kept) return;
  if (!signed) return toast(t("floor-round-type_who_counted_name"));
  const all = Object.values(here.kept.counted).sort((a, b) => (a.at < b.at ? -1 : 1));
  for (const { key, draft } of all) {
    try {
      await chalk({ ...draft, values: { ...draft.values, signed: { raw: signed } } });
    } catch (error) {
      return showFull(part("panel"), error);
    }
    delete here.kept.counted[key];
    here.kept.logged.push(key);
    await save();
  }
  const isOver = inRound().every(isDone);
  if (isOver) await leave();
  sayThere({ words: t("floor-round-counts_on_slate", { count: all.length }) });
  location.assign(isOver ? "/slate" : "/");
}

async function leave() {
  here.kept = null;
  await setMeta(KEPT, null);
}

async function drop() {
  await leave();
  await load();
  choosePlace();
}
