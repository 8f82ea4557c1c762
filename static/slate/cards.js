// @ts-check
/** The vessels' cards as the book last told them, with people, instruments and the site: all a phone needs offline. */
import { ask } from "./ask.js";
import { CARDS, META, getMeta, read, write } from "./db.js";
import { useCorrections } from "../kinds/corrections.js";
import { useSiteLimits } from "../kinds/limits.js";
import { listen, tell } from "./news.js";

/**
 * @typedef {{
 *   mark: string, rev: number, name: string, title: string, sort: string, place: string, capacity_l: number | null,
 *   working_l: number | null, tare_kg: number | null, in_zone: boolean, curved: boolean, holds: any,
 *   context: {og: number | null, tare_kg: number | null}, last: Record<string, Record<string, any>>,
 *   limits: Record<string, Record<string, any>>, recent: any[], curves: Record<string, [number, number][]>,
 *   queries: any[], run: any, past_runs: any[], forms: string[],
 * }} Card
 * @typedef {{code: string, name: string, roles: string[], access: string, pin: any, has_pin?: boolean}} Person
 */

const WHOLE = ["people", "instruments", "site", "notes", "tastings", "goods", "goods_rev"];
const ROUNDS_MAX = 1000; // of 300 cards each

/** @type {Promise<void> | null} */
let refreshing = null;

/**
 * Fetch what has changed since the last time. One round at a time; a second call joins the first.
 * @returns {Promise<void>}
 * @throws {import("./ask.js").NoAnswer}
 */
export function refresh() {
  if (refreshing) return refreshing;
  const round = refreshAll().finally(() => {
    if (refreshing === round) refreshing = null;
  });
  refreshing = round;
  return round;
}

// A round that began before this phone was let in ends in a refusal: nobody joins it from then on.
listen("device", () => {
  refreshing = null;
});

async function refreshAll() {
  const begunAt = new Date().toISOString();
  let hasNews = false;
  for (let round = 0; round < ROUNDS_MAX; round += 1) {
    const [cursor, goodsRev] = await Promise.all([getMeta("cursor"), getMeta("goods_rev")]);
    const answer = await ask(`/api/cards?since=${cursor?.at ?? 0}&goods=${goodsRev ?? ""}`);
    // Another book, or the same one restored from a backup, has a past of its own: begin afresh.
    const isOtherPast = cursor && (cursor.book_id !== answer.book_id || answer.cursor < cursor.at);
    if (isOtherPast) await forget();
    else await keep(answer, begunAt);
    hasNews ||= isOtherPast || answer.cards.length > 0 || Boolean(answer.goods) || cursor?.at !== answer.cursor;
    if (!isOtherPast && !answer.more) break;
  }
  if (hasNews) tell("cards");
}

/** @param {any} answer @param {string} begunAt */
async function keep(answer, begunAt) {
  await write([CARDS, META], async (tx) => {
    const [cards, meta] = [tx.objectStore(CARDS), tx.objectStore(META)];
    for (const card of answer.cards) await cards.put(card);
    for (const mark of answer.gone ?? []) await cards.delete(mark);
    for (const name of WHOLE) if (answer[name] !== undefined) await meta.put(answer[name], name);
    await meta.put({ at: answer.cursor, book_id: answer.book_id }, "cursor");
    if (!answer.more) await meta.put(begunAt, "cards_fresh_at");
  });
}

async function forget() {
  await write([CARDS, META], async (tx) => {
    await tx.objectStore(CARDS).clear();
    for (const name of ["cursor", "goods", "goods_rev"]) await tx.objectStore(META).delete(name);
  });
}

/** What is read with a card is put right, and held against limits, as the book will do it. */
async function useHouse() {
  const [own, house] = await Promise.all([instruments(), site()]);
  useCorrections(own);
  useSiteLimits(house);
}

/** @param {string} mark in stored form @returns {Promise<Card | undefined>} */
export async function getCard(mark) {
  const [card] = await Promise.all([read([CARDS], (tx) => tx.objectStore(CARDS).get(mark)), useHouse()]);
  return card;
}

/** @returns {Promise<Card[]>} by mark */
export async function allCards() {
  const [cards] = await Promise.all([read([CARDS], (tx) => tx.objectStore(CARDS).getAll()), useHouse()]);
  return cards;
}

/** @returns {Promise<Person[]>} */
export const people = async () => (await getMeta("people")) ?? [];

/** @returns {Promise<any[]>} */
export const instruments = async () => (await getMeta("instruments")) ?? [];

/** @returns {Promise<any>} the site, or an empty one before the first cards came */
export const site = async () => (await getMeta("site")) ?? { name: "", units: "metric", decimal_mark: ".", areas: [] };

/** @returns {Promise<any[]>} bottlings as the book had them, newest first */
export const goods = async () => (await getMeta("goods")) ?? [];

/** @returns {Promise<any[]>} the notes to the next shift */
export const notes = async () => (await getMeta("notes")) ?? [];

/** @returns {Promise<string | null>} when the cards were last brought up to date, UTC */
export const freshAt = async () => (await getMeta("cards_fresh_at")) ?? null;

/** @param {() => void} callback called when cards have come @returns {() => void} stops it */
export const onCards = (callback) => listen("cards", callback);

export { withWaiting } from "./overlay.js";
export { unknownToCards } from "./unknown.js";
