// @ts-check
/** Waiting entries laid over the book's cards: readings that the book does not know yet, and the run they belong to. */
import { kindNamed } from "../kinds/kinds.js";
import { readEntry, summary } from "../kinds/read.js";
import { struckBy } from "./strikes.js";

/**
 * @typedef {import("./cards.js").Card} Card
 * @typedef {import("./queue.js").Kept} Kept
 * @typedef {import("./queue.js").Entry} Entry
 */

const RECENT_MAX = 20;
const RUN_KEEPS = ["vapour_temp", "flow", "plates", "cooling_temp", "event", "receiver", "reason", "nose", "glass", "temp", "dip"];
const LATE_MS = 180_000; // as the book's fold: kinds/effects/run.py

/**
 * Return the card as it stands with this phone's own entries: last values, recent lines, curves, and the run.
 * `loadKinds` first; an entry of a kind this phone does not know is left out.
 * @param {Card} card @param {(Kept | Entry)[]} entries those the card cannot hold yet, in any order: `unknownToCards()`
 * @returns {Card} a new card; lines that are not in the book yet carry `waiting: true`
 */
export function withWaiting(card, entries) {
  const all = entries.map((one) => ("entry" in one ? one.entry : one));
  const own = all.filter((entry) => isHere(entry, card)).sort(byRead);
  const replaced = new Set([...own.map((entry) => entry.amends).filter(Boolean), ...struckBy(all)]);
  if (!own.length && !replaced.size) return card;
  let shown = without(structuredClone(card), replaced);
  for (const entry of own) {
    const kind = kindNamed(entry.kind);
    if (!kind || replaced.has(entry.id)) continue;
    const read = readEntry(kind, entry, { ...card.context, limits: card.limits?.[entry.kind] });
    if (entry.mark === card.mark) shown = withLine(shown, read);
    shown = withRun(shown, read);
  }
  return shown;
}

/** @param {Entry} entry @param {Card} card a fraction's gauge belongs to its still's run as well */
const isHere = (entry, card) => entry.mark === card.mark || entry.values.still?.raw === card.mark;

/** @param {Card} card @param {Set<string | null>} ids entries that a waiting one replaces or strikes */
function without(card, ids) {
  const stays = (/** @type {any} */ line) => !ids.has(line.entry);
  const gone = card.recent.filter((line) => !stays(line));
  if (card.run && ids.has(card.run.id)) card.run = null;
  for (const { kind, at } of gone) {
    const last = Object.entries(card.last[kind] ?? {}).filter(([, value]) => value.at !== at);
    card.last = { ...card.last, [kind]: Object.fromEntries(last) };
  }
  card.recent = card.recent.filter(stays);
  if (card.run) {
    card.run.readings = card.run.readings.filter(stays);
    card.run.cuts = card.run.cuts.filter(stays);
    card.run.fractions = card.run.fractions.filter(stays);
  }
  return card;
}

/** @param {Card} card @param {any} read */
function withLine(card, read) {
  const { entry, kind, values } = read;
  if (card.recent.some((line) => line.entry === entry.id)) return card;
  const last = { ...card.last[kind.name] };
  for (const [name, value] of Object.entries(values)) {
    last[name] = { value, raw: entry.values[name].raw, unit: entry.values[name].unit ?? "", at: at(entry) };
  }
  card.last = { ...card.last, [kind.name]: last };
  card.place = values.to_place ?? (kind.name === "cask_fill" ? values.place : card.place);
  const line = { entry: entry.id, kind: kind.name, at: at(entry), person: entry.person, summary: summary(read), waiting: true };
  card.recent = [line, ...card.recent].slice(0, RECENT_MAX);
  for (const name of kind.curve ?? []) {
    const value = read.figures[name] ?? values[name];
    if (typeof value !== "number") continue;
    const point = /** @type {[number, number]} */ ([Math.round(Date.parse(entry.read_at) / 1000), value]);
    place((card.curves[name] ??= []), point, ([at]) => at);
  }
  return card;
}

/** @param {Card} card @param {any} read the same steps as the book's fold takes, as far as the run sheet shows them */
function withRun(card, read) {
  const { entry, kind, values, figures } = read;
  if (kind.name === "charge") return withCharge(card, read);
  const run = kind.name === "fraction_gauge" ? (card.run ?? card.past_runs[0]) : card.run;
  if (!run) return card;
  const line = { entry: entry.id, at: at(entry), waiting: true, true_strength: figures.true_strength ?? null };
  for (const name of RUN_KEEPS) if (name in values) Object.assign(line, { [name]: values[name] });
  if (kind.name === "cut" && Date.parse(entry.typed_at) - Date.parse(entry.read_at) >= LATE_MS) Object.assign(line, { typed_at: entry.typed_at, late_why: entry.reason || entry.remark });
  if ("dip" in line) Object.assign(line, { receiver: run.receiver });
  const isKnown = [run.readings, run.cuts, run.fractions].some((lines) => lines.some((/** @type {any} */ known) => known.entry === entry.id));
  if (isKnown) return card;
  if (kind.name === "run_reading" || ((kind.name === "cut" || kind.name === "run_end") && line.true_strength !== null)) {
    place(run.readings, line, (one) => one.at);
  }
  if (kind.name === "cut") {
    place(run.cuts, line, (one) => one.at);
    run.receiver = values.receiver ?? run.receiver;
  }
  if (kind.name === "fraction_gauge") run.fractions = [...run.fractions, asFraction(line, read)];
  if (kind.name === "run_end") {
    card.past_runs = [{ ...run, ended_at: at(entry), end: line }, ...card.past_runs].slice(0, 3);
    card.run = null;
  }
  return card;
}

/** @param {Card} card @param {any} read a run's id is the id of its charge */
function withCharge(card, { entry, values, figures }) {
  if (entry.mark !== card.mark || card.run?.id === entry.id || card.past_runs.some((run) => run.id === entry.id)) return card;
  const receivers = { heads: values.heads_to ?? null, hearts: values.hearts_to ?? null, tails: values.tails_to ?? null };
  card.run = {
    id: entry.id, still: entry.mark, name: values.run_name ?? "", from: values.from_vessel ?? "", what: "", batch: "",
    started_at: at(entry), waiting: true, receivers, receiver: receivers.heads ?? (receivers.tails ? null : receivers.hearts), readings: [], cuts: [], fractions: [],
    charge: {
      volume_l: (values.wash ?? 0) + (values.feints ?? 0), wash_l: values.wash ?? null, feints_l: values.feints ?? null, feints_lpa_l: figures.feints_lpa ?? null,
      lpa_l: figures.charge_lpa ?? null,
    },
    ended_at: null,
  };
  return card;
}

/** @param {any} line @param {any} read */
const asFraction = (line, { entry, values, figures }) => ({
  ...line, fraction: values.fraction, receiver: entry.mark, strength_pct: figures.true_strength ?? null,
  volume_l: Math.max((figures.volume_20 ?? 0) - (values.remnant ?? 0), 0),
  lpa_l: Math.max((figures.lpa ?? 0) - (figures.remnant_lpa ?? 0), 0),
});

/**
 * Put one more where it belongs, after what has the same key: from the end, for what waits is read in order.
 * @template T @param {T[]} list in order, of a card that is a copy already @param {T} one @param {(one: T) => number|string} key
 */
function place(list, one, key) {
  let to = list.length;
  while (to && key(list[to - 1]) > key(one)) to--;
  list.splice(to, 0, one);
}

/** @param {any} entry @returns {string} UTC, as the cards have it */
const at = (entry) => new Date(entry.read_at).toISOString();

/** @param {Entry} a @param {Entry} b */
const byRead = (a, b) => Date.parse(a.read_at) - Date.parse(b.read_at) || a.seq - b.seq;
