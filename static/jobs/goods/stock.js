// @ts-check
/** Bottled goods as this phone knows them: the book's list with its own waiting entries laid over, what is left, which cases. Pure. */
import { readEntry } from "../../kinds/read.js";
import { kindNamed } from "../../kinds/kinds.js";
import { struckBy } from "../../slate/strikes.js";
import { t } from "../../words/later.js";

/**
 * @typedef {{
 *   id: string, batch: string, lot_mark: string, what: string, at: string, tank: string, label_strength_pct: number|null, size_l: number,
 *   per_case: number, good: number, on_hand: number, case_from: string, case_to: string, odd_case: string,
 *   gone: [string, number, number][], counted_at: string, waiting?: boolean,
 * }} Goods
 * @typedef {{before: string, width: number, number: number, odd: boolean}} Case
 */

/**
 * @param {Goods[]} known as the book had them @param {any[]} kept entries that the book's list cannot hold yet
 * @param {Map<string, any>} cards by mark, for what a bottling that waits was made of
 * @returns {Goods[]} newest first; never the book's own objects
 */
export function withOwnGoods(known, kept, cards) {
  const entries = kept.map((one) => one.entry ?? one).sort((a, b) => Date.parse(a.read_at) - Date.parse(b.read_at) || a.seq - b.seq);
  const replaced = new Set([...entries.map((entry) => entry.amends).filter(Boolean), ...struckBy(entries)]);
  const all = known.map((one) => ({ ...one, gone: [...one.gone] }));
  for (const entry of entries) {
    const kind = kindNamed(entry.kind);
    if (!kind || replaced.has(entry.id) || entry.amends) continue; // what an amendment changes, only the book can work out
    const { values } = readEntry(kind, entry, {});
    if (kind.name === "bottling_close" || kind.name === "goods_receipt") {
      if (!all.some((one) => one.id === entry.id)) all.unshift(begun(entry, values, cards));
      continue;
    }
    const one = goodsOf(all, values.batch ?? "", values.case_from);
    if (one && kind.name === "dispatch") leave(one, values);
    else if (one && kind.name === "bottled_count") one.on_hand = bottlesIn(one, values);
  }
  return all;
}

/** @param {any} entry @param {Record<string, any>} values @param {Map<string, any>} cards @returns {Goods} */
function begun(entry, values, cards) {
  const held = cards.get(entry.mark)?.holds;
  const good = entry.kind === "bottling_close" ? count(values.filled) - count(values.broken) - count(values.reworked)
    : count(values.cases) * count(values.per_case) + count(values.bottles);
  return {
    id: entry.id, batch: values.batch ?? held?.name ?? "", lot_mark: values.lot_mark ?? "", what: values.spirit ?? held?.what ?? "",
    at: new Date(entry.read_at).toISOString(), tank: entry.mark, label_strength_pct: values.strength ?? held?.label_strength_pct ?? null,
    size_l: values.bottle_size ?? 0, per_case: count(values.per_case), good: Math.max(good, 0), on_hand: Math.max(good - count(values.short), 0),
    case_from: values.case_from ?? "", case_to: values.case_to ?? "", odd_case: values.odd_case ?? "", gone: [], counted_at: "", waiting: true,
  };
}

/** @param {Goods} one @param {Record<string, any>} values */
function leave(one, values) {
  const isBack = values.why === "returned";
  const many = bottlesIn(one, values);
  one.on_hand = Math.max(one.on_hand + (isBack ? many : -many), 0);
  const [first, last] = [caseOf(values.case_from), caseOf(values.case_to ?? values.case_from)];
  if (first && last && !first.odd && count(values.cases) && !isBack) one.gone.push([first.before.toLowerCase(), first.number, last.number]);
}

/** @param {unknown} value */
const count = (value) => (typeof value === "number" && Number.isFinite(value) ? Math.max(Math.round(value), 0) : 0);

/** Whole cases and loose ones, as bottles. @param {Goods} one @param {{cases?: number, bottles?: number}} counted */
export const bottlesIn = (one, { cases, bottles }) => count(cases) * one.per_case + count(bottles);

/** @param {Goods[]} all @param {string} text @returns {Goods[]} those that answer to a batch or lot mark */
export function goodsNamed(all, text) {
  const wanted = text.trim().toLowerCase();
  return wanted ? all.filter((one) => [one.batch, one.lot_mark].some((name) => name.trim().toLowerCase() === wanted)) : [];
}

/** The one bottling that is meant, as the book finds it; undefined where none or several answer. @param {Goods[]} all @param {string} text @param {string} [caseText] */
export function goodsOf(all, text, caseText = "") {
  const named = goodsNamed(all, text);
  const fitting = named.length > 1 && caseText ? named.filter((one) => holdsCase(one, caseText)) : named;
  return fitting.length === 1 ? fitting[0] : undefined;
}

/** By what a bottling is named in an entry. @param {Goods} one */
export const nameOf = (one) => one.lot_mark || one.batch;

/** @param {number} bottles @param {number} perCase @returns {{cases: number, bottles: number}} */
export const inCases = (bottles, perCase) => (perCase ? { cases: Math.floor(bottles / perCase), bottles: bottles % perCase } : { cases: 0, bottles });

/** "39 cases, 5 loose". @param {number} bottles @param {number} perCase */
export function leftWords(bottles, perCase) {
  const { cases, bottles: loose } = inCases(bottles, perCase);
  const parts = [cases ? t("floor-cases_of", { count: String(cases) }) : "", loose ? (cases ? t("floor-stock-loose", { loose }) : t("floor-bottles_of", { count: String(loose) })) : ""];
  return parts.filter(Boolean).join(", ") || t("floor-stock-none_left");
}

/** @param {string|null|undefined} text "K26-0159" or "95R" @returns {Case|null} */
export function caseOf(text) {
  const found = /^\s*(.*?)(\d{1,12})\s*(R?)\s*$/is.exec(text ?? "");
  return found ? { before: found[1].trim(), width: found[2].length, number: Number(found[2]), odd: Boolean(found[3]) } : null;
}

/** @param {Case} like how its cases are written @param {number} number */
export const caseText = (like, number) => `${like.before}${String(number).padStart(like.width, "0")}`;

/** @param {Goods} one @param {string} text */
function holdsCase(one, text) {
  const [wanted, first, last] = [caseOf(text), caseOf(one.case_from), caseOf(one.case_to)];
  if (one.odd_case && one.odd_case.trim().toLowerCase() === text.trim().toLowerCase()) return true;
  return Boolean(wanted && first && last && wanted.before.toLowerCase() === first.before.toLowerCase() && wanted.number >= first.number && wanted.number <= last.number);
}

/**
 * The cases that have not left, in order: from the numbers alone; loose bottles leave no number.
 * @param {Goods} one @returns {[number, number][]} first and last of each range
 */
export function casesLeft(one) {
  const [first, last] = [caseOf(one.case_from), caseOf(one.case_to)];
  if (!first || !last || last.number < first.number) return [];
  const gone = one.gone.filter(([before]) => before === first.before.toLowerCase()).sort((a, b) => a[1] - b[1]);
  /** @type {[number, number][]} */
  const left = [];
  let from = first.number;
  for (const [, low, high] of gone) {
    if (low > from) left.push([from, Math.min(low - 1, last.number)]);
    from = Math.max(from, high + 1);
  }
  if (from <= last.number) left.push([from, last.number]);
  return left.filter(([low, high]) => low <= high);
}

/**
 * Where so many cases can be taken in one row: each range as texts, first fitting ones first.
 * @param {Goods} one @param {number} cases 0 where nobody has said yet @returns {{from: string, to: string, whole: boolean}[]}
 */
export function caseOffers(one, cases) {
  const like = caseOf(one.case_from);
  if (!like) return [];
  const ranges = casesLeft(one);
  const fitting = ranges.filter(([low, high]) => high - low + 1 >= cases);
  return [...fitting, ...(cases ? [] : ranges.filter((range) => !fitting.includes(range)))].map(([low, high]) => ({
    from: caseText(like, low), to: caseText(like, cases ? low + cases - 1 : high), whole: !cases || low + cases - 1 === high,
  }));
}

/** The case after the last one that this phone knows. @param {Goods[]} all @returns {string} "" where none is known */
export function nextCase(all) {
  const newest = all.filter((one) => caseOf(one.case_to)).sort((a, b) => (a.at < b.at ? 1 : -1))[0];
  const like = caseOf(newest?.case_to);
  if (!newest || !like) return "";
  const mates = all.flatMap((one) => [caseOf(one.case_to), caseOf(one.odd_case)]).filter((one) => one && one.before === like.before);
  return caseText(like, Math.max(...mates.map((one) => /** @type {Case} */ (one).number)) + 1);
}
