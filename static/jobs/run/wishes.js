// @ts-check
/** The distiller's wishes for a fruit: cut plan and best run, from the still's card and from what waits on this phone. */
import { kindNamed } from "../../kinds/kinds.js";
import { readEntry } from "../../kinds/read.js";

const FRACTIONS = /^(?:(?:low wines|heads|hearts|tails) )+/;

/** The name under which a fruit is found again; the book's own rule (kinds/effects/plan.py). @param {string} what */
export const fruitOf = (what) => what.toLowerCase().split(/\s+/).filter(Boolean).join(" ").replace(FRACTIONS, "");

/**
 * @typedef {{at: string, person: string, why: string, heads_l: number|null, hearts_to_pct: number|null, tails_to_pct: number|null, waiting?: boolean}} Plan
 * @typedef {{at: string, person: string, why: string, run: string, name: string, waiting?: boolean}} Best
 */

/**
 * @param {any} card of the still @param {any[]} kept entries that the card cannot hold yet @param {string} what of the run
 * @returns {{plan: Plan|null, best: Best|null}}
 */
export function wishesFor(card, kept, what) {
  const fruit = fruitOf(what);
  const own = kept.map((one) => one.entry ?? one).filter((entry) => !entry.mark || entry.mark === card.mark)
    .sort((a, b) => Date.parse(a.read_at) - Date.parse(b.read_at) || a.seq - b.seq);
  const known = { plan: card.still?.plans?.[fruit] ?? null, best: card.still?.best?.[fruit] ?? null };
  for (const entry of own) {
    if (entry.kind === "cut_plan") known.plan = later(known.plan, planOf(entry, fruit, card), card);
    if (entry.kind === "best_run") known.best = later(known.best, bestOf(entry, fruit, card), card);
  }
  return known;
}

/** A plan of the still itself goes before one for any still; of two alike the last holds. @param {any} known @param {any} next @param {any} card */
function later(known, next, card) {
  if (!next || (known?.still === card.mark && next.still === "" && !("run" in next))) return known;
  const isNarrower = known && known.still === "" && next.still === card.mark;
  return !known || isNarrower || Date.parse(next.at) >= Date.parse(known.at) ? next : known;
}

/** @param {any} entry @param {string} fruit @param {any} card */
function planOf(entry, fruit, card) {
  const kind = kindNamed("cut_plan");
  if (!kind || !fruit || fruitOf(entry.values.what?.raw ?? "") !== fruit) return null;
  const { values } = readEntry(kind, entry, { limits: card.limits?.cut_plan });
  return {
    ...about(entry), still: entry.mark, heads_l: values.heads ?? null, hearts_to_pct: values.hearts_to ?? null, tails_to_pct: values.tails_to ?? null,
  };
}

/** @param {any} entry @param {string} fruit @param {any} card */
function bestOf(entry, fruit, card) {
  const named = (entry.values.run?.raw ?? "").trim();
  const run = [card.run, ...card.past_runs].find((one) => one && (one.id === named || (one.name && one.name.toLowerCase() === named.toLowerCase())));
  return run && fruitOf(run.what ?? "") === fruit ? { ...about(entry), run: run.id, name: run.name } : null;
}

/** @param {any} entry */
const about = (entry) => ({
  entry: entry.id, at: new Date(entry.read_at).toISOString(), person: entry.person, why: (entry.values.why?.raw ?? "").trim(), waiting: true,
});

/** Runs to lay behind this one: the best first, then the last of the same fruit. @param {any} card @param {any} run @param {Best|null} best @returns {{run: any, isBest: boolean}[]} */
export function ghostsFor(card, run, best) {
  const fruit = fruitOf(run.what ?? "");
  const over = card.past_runs.filter((/** @type {any} */ one) => one.id !== run.id && one.ended_at);
  const alike = over.filter((/** @type {any} */ one) => !fruit || fruitOf(one.what ?? "") === fruit);
  return (alike.length ? alike : over).map((/** @type {any} */ one) => ({ run: one, isBest: one.id === best?.run }))
    .sort((/** @type {any} */ a, /** @type {any} */ b) => Number(b.isBest) - Number(a.isBest));
}
