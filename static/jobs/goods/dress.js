// @ts-check
/**
 * The forms of goods and counts, for a hand: batches, lots and cases are picked from what the book has and what is left of it,
 * so are places; counts have a large plus, and what a choice does not want is not shown. Typing stays possible for what the phone does not know.
 */
import { boxOf, controlOf } from "../../form/values.js";
import { shownInUnits, strengthShown, unitsChoice } from "../../shell/inunits.js";
import { allCards, onCards } from "../../slate/cards.js";
import { formatQuantity, parseNumber } from "../../ui/format.js";
import { html, nothing, render } from "../../vendor/lit-html/lit-html.js";
import { dressPlaces } from "../shared/places.js";
import { dressCounts } from "./counter.js";
import { batchesIn, readGoods } from "./known.js";
import { bottlesIn, caseOffers, caseOf, caseText, goodsNamed, goodsOf, leftWords, nameOf, nextCase } from "./stock.js";
import { t } from "../../words/later.js";

const SHOWN_MOST = 6;
const CASES_MOST = 4;
const SAID_MOST = 4;
/** Texts that come again: kept on this phone, the last one first. */
const SAID = ["to_whom", "consignor", "signed"];
/** Figures of the bottles that are as they were on the line or in the case before. */
const AS_BEFORE = ["per_case", "bottle_size", "filled"];

/**
 * @typedef {{values: Record<string, string>, words: string, sub?: string, end?: string, isChosen?: boolean}} Offer values by field, the box's own first
 * @typedef {{form: HTMLFormElement, kind: any, card: any, who: any, goods: import("./stock.js").Goods[], cards: any[]}} Dressed
 */

/** @param {any} field */
const isCount = (field) => field.units[0] === "count";

/** @param {any} field */
const isPicked = (field) => field.sort === "text" && ["batch", "lot", "lot_mark", "case_from", "case_to", "odd_case", "what", "spirit"].includes(field.name);

/**
 * @param {{form: HTMLFormElement, kind: any, card: any, who: any}} parts
 * @returns {Promise<boolean>} whether the first box is picked, so that no keyboard should come up
 */
export async function dressGoods({ form, kind, card, who }) {
  /** @type {Dressed} */
  const dressed = { form, kind, card, who, goods: [], cards: [] };
  dressCounts(form, kind.fields.filter(isCount).map((/** @type {any} */ field) => field.name), /** @type {HTMLElement} */ (form.querySelector(".thumb")));
  sideBySide(form, "case_from", "case_to");
  const places = new Map(kind.fields.filter((/** @type {any} */ one) => isPicked(one) || SAID.includes(one.name) || AS_BEFORE.includes(one.name))
    .map((/** @type {any} */ field) => [field.name, placeFor(form, field.name)]));
  boxOf(form, "why")?.classList.add("chips--usual");
  const sum = document.createElement("p");
  sum.className = "quiet counted";
  if (kind.fields.some((/** @type {any} */ field) => field.name === "bottles")) boxOf(form, "bottles")?.after(sum);
  const show = () => {
    for (const [name, place] of places) {
      const offers = offersFor(dressed, name);
      render(offers.map((one) => button(dressed, one)), place);
      place.closest(".field")?.classList.toggle("field--chosen", offers.some((one) => one.isChosen));
    }
    render(countedWords(dressed), sum);
    showWanted(dressed);
  };
  const load = async () => {
    [dressed.goods, dressed.cards] = await Promise.all([readGoods(), allCards()]);
    show();
  };
  form.addEventListener("input", show);
  form.addEventListener("change", show);
  form.addEventListener("submit", () => keepSaid(dressed));
  onCards(() => void load());
  await Promise.all([load(), dressPlaces(form, card)]);
  return places.has(kind.fields[0].name) && offersFor(dressed, kind.fields[0].name).length > 0;
}

/** Where a box's offers stand: in it, or below the pair that it is one of. @param {HTMLFormElement} form @param {string} name */
function placeFor(form, name) {
  const place = document.createElement("div");
  place.className = "field__full picks picks--rows";
  const box = boxOf(form, name);
  const pair = box?.parentElement?.classList.contains("pair") ? box.parentElement : null;
  (pair ?? box)?.append(place);
  const input = controlOf(form, name);
  if (box?.classList.contains("field--words") && input) {
    box.classList.add("field--picks");
    input.placeholder = t("floor-dress-or_type_it");
  }
  return place;
}

/** Two boxes that belong together. @param {HTMLFormElement} form @param {string} left @param {string} right */
function sideBySide(form, left, right) {
  const [one, other] = [boxOf(form, left), boxOf(form, right)];
  if (!one || !other) return;
  const pair = document.createElement("div");
  pair.className = "pair";
  one.before(pair);
  pair.append(one, other);
}

/** @param {Dressed} dressed @param {string} name */
const rawOf = ({ form }, name) => controlOf(form, name)?.value.trim() ?? "";

/** @param {Dressed} dressed @param {string} name */
const chosenOf = ({ form }, name) => /** @type {HTMLInputElement|null} */ (form.querySelector(`[name="${name}"]:checked`))?.value ?? "";

/** @param {Dressed} dressed @param {string} name */
const numberOf = (dressed, name) => {
  const value = parseNumber(rawOf(dressed, name));
  return Number.isFinite(value) ? value : 0;
};

/** @param {Dressed} dressed @param {string} name @returns {Offer[]} */
function offersFor(dressed, name) {
  const { kind } = dressed;
  if (SAID.includes(name)) return saidOffers(dressed, name);
  if (AS_BEFORE.includes(name)) return beforeOffers(dressed, name);
  if (name === "what" || name === "spirit") return heldOffers(dressed, name);
  if (kind.name === "bottling_close") return closeOffers(dressed, name);
  if (kind.name === "bottling_gauge" || name === "lot") return vatOffers(dressed, name, false);
  if (kind.name === "fruit_intake") return vatOffers(dressed, name, true);
  if (name === "batch") return bottledOffers(dressed);
  return caseOffersFor(dressed, name);
}

/** Bottlings, the ones with bottles first. A count is blind: it is not told what the book expects. @param {Dressed} dressed @returns {Offer[]} */
function bottledOffers(dressed) {
  const { goods, kind } = dressed;
  const typed = rawOf(dressed, "batch");
  const isBlind = kind.name === "bottled_count";
  const isBack = chosenOf(dressed, "why") === "returned" || kind.name === "goods_receipt";
  const fitting = goods.filter((one) => (one.on_hand > 0 || isBack || isBlind) && matches(one, typed));
  const chosen = goodsOf(goods, typed, rawOf(dressed, "case_from"));
  if (chosen) return [offerOf(dressed, chosen, isBlind, true)];
  return fitting.slice(0, SHOWN_MOST).map((one) => offerOf(dressed, one, isBlind, false));
}

/** @param {import("./stock.js").Goods} one @param {string} typed */
const matches = (one, typed) => !typed || [one.batch, one.lot_mark, one.what].some((text) => text.toLowerCase().includes(typed.toLowerCase()));

/** @param {Dressed} dressed @param {import("./stock.js").Goods} one @param {boolean} isBlind @param {boolean} isChosen @returns {Offer} */
function offerOf({ goods }, one, isBlind, isChosen) {
  const isShared = goodsNamed(goods, nameOf(one)).length > 1; // two fills of a tank share their batch: a case says which
  const size = one.size_l ? formatQuantity(one.size_l, 2, "L") : "";
  const label = one.label_strength_pct ? `${strengthShown(one.label_strength_pct).figure} ${unitsChoice() === "us" ? "proof" : "%"}` : "";
  const left = isBlind ? "" : leftWords(one.on_hand, one.per_case);
  const cases = isShared ? t("floor-cases_to", { case_from: one.case_from, case_to: one.case_to }) : "";
  /** @type {Record<string, string>} */
  const first = isShared && !isChosen ? { case_from: (isBlind ? "" : caseOffers(one, 0)[0]?.from) || one.case_from } : {};
  return { values: { batch: nameOf(one), ...first }, words: nameOf(one), sub: [one.what, size, label, cases, isChosen && left].filter(Boolean).join(" · "), end: left, isChosen };
}

/** @param {Dressed} dressed @param {string} name @returns {Offer[]} */
function caseOffersFor(dressed, name) {
  const { goods, kind } = dressed;
  const typed = rawOf(dressed, "batch");
  if (kind.name === "bottled_count") {
    const named = goodsNamed(goods, typed);
    return goodsOf(goods, typed, rawOf(dressed, name)) ? [] : named.map((one) => ({ values: { case_from: one.case_from }, words: one.case_from, sub: t("floor-dress-of_to", { case_from: one.case_from, case_to: one.case_to }) }));
  }
  const one = goodsOf(goods, typed, rawOf(dressed, "case_from"));
  if (!one || kind.name === "goods_receipt" || chosenOf(dressed, "why") === "returned") return [];
  const cases = numberOf(dressed, "cases");
  if (!cases) return name === "case_from" && !rawOf(dressed, "case_to") ? rangesOf(one) : [];
  const first = caseOf(rawOf(dressed, "case_from"));
  if (name === "case_to") {
    const to = first && caseText(first, first.number + cases - 1);
    return to && to !== rawOf(dressed, "case_to") ? [{ values: { case_to: to }, words: to, sub: t("floor-dress-from", { cases, dressed: rawOf(dressed, "case_from") }) }] : [];
  }
  return caseOffers(one, cases).slice(0, CASES_MOST).filter(({ from, to }) => from !== rawOf(dressed, "case_from") || to !== rawOf(dressed, "case_to"))
    .map(({ from, to }) => ({ values: { case_from: from, case_to: to }, words: from === to ? from : t("floor-dress-to", { from, to }) }));
}

/** Before anybody says how many: where there are cases. @param {import("./stock.js").Goods} one @returns {Offer[]} */
const rangesOf = (one) => caseOffers(one, 0).slice(0, CASES_MOST).map(({ from, to }) => ({ values: { case_from: from }, words: from, sub: from === to ? "" : t("floor-dress-to_stand", { to }) }));

/** The first case follows the last that is known, the last from what was counted. @param {Dressed} dressed @param {string} name @returns {Offer[]} */
function closeOffers(dressed, name) {
  const { goods, card } = dressed;
  const has = rawOf(dressed, name);
  const one = (/** @type {string} */ words, /** @type {string} */ sub = "") => (words && words !== has ? [{ values: { [name]: words }, words, sub }] : []);
  const good = numberOf(dressed, "filled") - numberOf(dressed, "broken") - numberOf(dressed, "reworked") - numberOf(dressed, "library");
  const perCase = numberOf(dressed, "per_case");
  const first = caseOf(rawOf(dressed, "case_from"));
  if (name === "case_from") return one(nextCase(goods), t("floor-dress-follows_the_last"));
  if (name === "lot_mark") {
    const lots = goods.filter((known) => known.lot_mark && (!card?.holds?.name || known.batch === card.holds.name)).map((known) => known.lot_mark);
    return [...new Set(lots)].slice(0, 2).flatMap((lot) => one(lot, t("floor-dress-as_before")));
  }
  if (!first || perCase < 1 || good < 1) return [];
  const cases = Math.floor(good / perCase);
  const rest = good - cases * perCase;
  if (name === "case_to") return cases ? one(caseText(first, first.number + cases - 1), t("floor-dress-of", { cases, per_case: perCase })) : [];
  return rest ? one(`${caseText(first, first.number + cases)}R`, t("floor-bottles_of", { count: String(rest) })) : [];
}

/** @param {Dressed} dressed @param {string} name @returns {Offer[]} */
function beforeOffers({ form, goods, card, kind }, name) {
  if (kind.name !== "bottling_close" && kind.name !== "goods_receipt") return [];
  if (name === "filled") {
    const { cases = 0, perCase = 0, fill = "" } = JSON.parse(localStorage.getItem(`line:${card?.mark}`) ?? "{}"); // as jobs/bottling/tally.js keeps it
    const bottles = fill === (card?.holds?.fill ?? card?.holds?.since) ? String(cases * perCase) : "0";
    return bottles === "0" || bottles === controlOf(form, name)?.value ? [] : [{ values: { filled: bottles }, words: bottles, sub: t("floor-dress-by_the_cases_of") }];
  }
  const onLine = name === "bottle_size" ? card?.last?.bottle_check?.bottle_size?.value : null;
  const figures = [onLine, ...goods.filter((one) => !card || one.batch === card.holds?.name || one.tank === card.mark).map((one) => (name === "per_case" ? one.per_case : one.size_l))];
  const isLitres = name === "per_case" || (/** @type {HTMLSelectElement|null} */ (form.querySelector(`[name="${name}_unit"]`))?.value ?? "L") === "L";
  return isLitres ? [...new Set(figures.filter((figure) => figure > 0).map(String))].slice(0, 2).filter((figure) => figure !== controlOf(form, name)?.value)
    .map((figure) => ({ values: { [name]: figure }, words: name === "per_case" ? figure : `${figure} L`, sub: t("floor-dress-as_before") })) : [];
}

/** Batches and lots that stand in vessels, this vessel's first. @param {Dressed} dressed @param {string} name @param {boolean} mash @returns {Offer[]} */
function vatOffers(dressed, name, mash) {
  const { cards, card } = dressed;
  const typed = rawOf(dressed, name).toLowerCase();
  const from = cards.find((one) => one.mark === rawOf(dressed, "from_vessel")) ?? card;
  const own = (name === "lot" && from?.holds?.lot) || from?.holds?.name;
  const found = batchesIn(cards, { mash, byLot: name === "lot" });
  const chosen = found.filter((one) => one.name.toLowerCase() === typed);
  const fitting = found.filter((one) => (typed ? one.name.toLowerCase().includes(typed) : name !== "lot" || one.name === own));
  const shown = chosen.length ? chosen : fitting.length ? fitting : typed ? [] : found; // spirit has the lot of the vessel that it comes from
  return shown.sort((a, b) => Number(b.name === own) - Number(a.name === own)).slice(0, SHOWN_MOST).map((one) => ({
    values: { [name]: one.name }, words: one.name, isChosen: chosen.length > 0,
    sub: [one.what, one.marks.length > 2 ? t("floor-dress-vessels", { count: one.marks.length }) : one.marks.join(", ")].filter(Boolean).join(" · "),
    end: one.litres ? shownInUnits(one.litres, "L", 0) : one.kg ? shownInUnits(one.kg, "kg", 0) : "",
  }));
}

/** What this vessel holds, as the book calls it; of goods from elsewhere, what the house has in bottles. @param {Dressed} dressed @param {string} name @returns {Offer[]} */
function heldOffers(dressed, name) {
  const { card, goods, kind } = dressed;
  const { what = "", name: batch = "", lot = "" } = card?.holds ?? {};
  const own = kind.name === "destruction" ? [what, lot || batch].filter(Boolean).join(", ") : what;
  const all = card ? [own] : [...new Set(goods.map((one) => one.what))];
  const typed = rawOf(dressed, name).toLowerCase();
  return all.filter((text) => text && text.toLowerCase() !== typed && text.toLowerCase().includes(typed)).slice(0, SAID_MOST).map((text) => ({ values: { [name]: text }, words: text, sub: card ? t("floor-dress-as_the_book_has") : "" }));
}

/** @param {string} name @returns {string[]} */
function saidBefore(name) {
  try {
    return JSON.parse(localStorage.getItem(`said:${name}`) ?? "[]");
  } catch {
    return [];
  }
}

/** @param {Dressed} dressed @param {string} name @returns {Offer[]} */
function saidOffers(dressed, name) {
  const { who } = dressed;
  const own = name === "signed" && who.name ? [[who.name, who.role].filter(Boolean).join(", ")] : [];
  const typed = rawOf(dressed, name).toLowerCase();
  const all = [...new Set([...own, ...(name === "signed" ? [] : saidBefore(name))])];
  return all.filter((text) => text.toLowerCase() !== typed && text.toLowerCase().includes(typed)).slice(0, SAID_MOST).map((text) => ({ values: { [name]: text }, words: text }));
}

/** @param {Dressed} dressed */
function keepSaid(dressed) {
  for (const name of SAID) {
    const text = rawOf(dressed, name);
    if (text && name !== "signed") localStorage.setItem(`said:${name}`, JSON.stringify([text, ...saidBefore(name).filter((one) => one !== text)].slice(0, SAID_MOST)));
  }
}

/** @param {Dressed} dressed @param {Offer} offer */
function button({ form }, { values, words, sub, end, isChosen }) {
  const [name] = Object.keys(values);
  const take = (/** @type {Record<string, string>} */ taken) => {
    for (const [field, value] of Object.entries(taken)) {
      const input = controlOf(form, field);
      if (input) input.value = value;
    }
    controlOf(form, name)?.dispatchEvent(new Event("input", { bubbles: true }));
  };
  if (isChosen) return html`<button type="button" class="button pick pick--chosen" @click=${() => take({ [name]: "" })}>${sub} <span class="pick__end">${t("floor-another")}</span></button>`;
  return html`<button type="button" class="button pick" @click=${() => take(values)}><strong>${words}</strong> ${sub ? html`<span class="quiet">${sub}</span>` : nothing}${end ? html`<span class="pick__end">${end}</span>` : nothing}</button>`;
}

/** "39 cases of 6 and 5 loose: 239 bottles". Never what the book expects where it is counted. @param {Dressed} dressed */
function countedWords(dressed) {
  const { goods, kind } = dressed;
  const [cases, loose] = [numberOf(dressed, "cases"), numberOf(dressed, "bottles")];
  if (!cases) return nothing;
  const one = goodsOf(goods, rawOf(dressed, "batch"), rawOf(dressed, "case_from"));
  const perCase = numberOf(dressed, "per_case") || (one?.per_case ?? 0);
  if (!perCase) return nothing;
  const bottles = cases * perCase + loose;
  const isOut = kind.name === "dispatch" && one && chosenOf(dressed, "why") !== "returned";
  const left = isOut ? one.on_hand - bottlesIn(one, { cases, bottles: loose }) : 0;
  return html`${cases} × ${perCase}${loose ? ` + ${loose}` : ""} = <strong>${t("floor-bottles", { bottles })}</strong>${isOut ? (left < 0 ? t("floor-dress-more_than_there_are", { left: -left }) : t("floor-dress-left", { per_case: leftWords(left, one.per_case) })) : nothing}`;
}

/** A box that only some choices want is hidden under the others, unless something stands in it. @param {Dressed} dressed */
function showWanted({ form, kind, goods }) {
  const wanted = new Map();
  for (const { op, left, right } of kind.rules) {
    const [field, choices] = left.split("=");
    if (op === "needs" && choices) wanted.set(right, [...(wanted.get(right) ?? []), [field, choices.split("|")]]);
  }
  if (kind.name === "bottled_count") { // a case is asked for only where two bottlings share the batch
    const box = boxOf(form, "case_from");
    const batch = controlOf(form, "batch")?.value ?? "";
    if (box) box.hidden = goodsNamed(goods, batch).length < 2 || Boolean(goodsOf(goods, batch, controlOf(form, "case_from")?.value));
  }
  for (const [name, when] of wanted) {
    const [box, input] = [boxOf(form, name), controlOf(form, name)];
    if (!box || !input) continue;
    const isWanted = when.some((/** @type {[string, string[]]} */ [field, choices]) => {
      const chosen = /** @type {HTMLInputElement|null} */ (form.querySelector(`[name="${field}"]:checked`))?.value;
      return choices.includes(chosen ?? "") || chosen === "returned";
    });
    box.classList.toggle("field--wanted", isWanted);
    box.hidden = !isWanted && !input.value;
    input.disabled = box.hidden;
  }
}
