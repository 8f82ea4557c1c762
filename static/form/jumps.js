// @ts-check
/**
 * What the card alone can tell of a figure before it is logged: one that can only fall has risen, a gravity fell too fast, a strength
 * is not that of what stands in the vessel. So it is asked here and not tomorrow. Twins: checks/ferment.py, checks/strength.py.
 */
import { heldLimit } from "../kinds/limits.js";
import { figure, message } from "../kinds/message.js";
import { fixedEven } from "../kinds/digits.js";
import { shownInUnits } from "../shell/inunits.js";
import { formatAgo, formatMinute } from "../ui/format.js";
import { strengthField } from "./strengths.js";
import { t } from "../words/t.js";

const DAY_MS = 86_400_000;
const YEAR_MS = 365.25 * DAY_MS;
const SHORTEST_DAYS = 0.4;

/** @typedef {import("./look.js").Problem} Problem */

/** @param {any} kind @param {any} read @param {any} context @param {any} card or null @param {number} [now] [ms] @returns {Problem[]} */
export const jumps = (kind, read, context, card, now = Date.now()) => [
  ...risen(kind, read, context, card), ...(kind.checks.includes("ferment_heat") ? fellFast(read, card, now) : []),
  ...(kind.checks.includes("held_strength") ? offHeld(read, card, now) : []),
];

/** @param {any} kind @param {any} read @param {any} context @param {any} card @returns {Problem[]} */
function risen(kind, read, context, card) {
  const found = [];
  for (const field of kind.fields) {
    const [value, last] = [read.values[field.name], context.last?.[field.name]];
    if (field.falls == null || typeof value !== "number" || last == null || !(value > last + field.falls + 1e-9)) continue;
    const at = card?.last?.[kind.name]?.[field.name]?.at;
    const [low] = context.limits?.[field.name]?.usual ?? field.usual;
    found.push({
      code: "rose", weight: "ask", field: field.name,
      words: t("floor-jumps-can_only_fall_it", { label: field.label, last: shownInUnits(last, field.units[0], field.decimals ?? 1), when: at ? formatAgo(at) : t("floor-jumps-before") }),
      expects: [{ of: field.name, low: low ?? -Infinity, high: last + field.falls, near: last }],
    });
  }
  return found;
}

/** @param {any} read @param {any} card @param {number} now @returns {Problem[]} */
function fellFast(read, card, now) {
  const [gravity, last] = [read.values.gravity, card?.last?.ferment_reading?.gravity];
  if (typeof gravity !== "number" || !last || card.ferment?.grain) return [];
  const days = (now - Date.parse(last.at)) / DAY_MS;
  const aDay = heldLimit("fast_per_day", card);
  const most = aDay * Math.max(days, SHORTEST_DAYS);
  const fell = last.value - gravity;
  if (days < 0 || fell <= most + 1e-9) return [];
  const shown = { fell: figure(fixedEven(fell, 3), "SG"), since: { time: formatMinute(last.at), seen: formatMinute(now).slice(0, 10) } };
  const said = days < SHORTEST_DAYS ? message("ferment_fast-soon", shown)
    : message("ferment_fast", { ...shown, a_day: figure(fixedEven(fell / days, 3), "SG"), much: figure(fixedEven(aDay, 3), "SG") });
  return [{ code: "ferment_fast", weight: "ask", field: "gravity", message: said, expects: [{ of: "gravity", low: last.value - most, high: last.value, near: last.value }] }];
}

/** Where something waits to be handed in, the card's strength may be an old one: then the book asks. @param {any} read @param {any} card @param {number} now @returns {Problem[]} */
function offHeld(read, card, now) {
  const [strength, held] = [read.figures.true_strength, card?.context?.strength_pct];
  const isEmpty = read.values.volume === 0 || read.values.net_weight === 0; // then a strength says nothing
  if (strength == null || held == null || isEmpty || card.recent?.some((/** @type {any} */ line) => line.waiting)) return [];
  const years = card.sort === "cask" && card.holds ? Math.max(now - Date.parse(card.holds.since), 0) / YEAR_MS : 0;
  const most = heldLimit("held_off_pct", card) + heldLimit("drift_pct_year", card) * years;
  if (Math.abs(strength - held) <= most + 1e-9) return [];
  const pct = (/** @type {number} */ value) => figure(fixedEven(value, 1), "pct_vol");
  return [{
    code: "held_strength", weight: "ask", field: strengthField(read),
    message: message("held_strength", { now: pct(strength), held: pct(held), off: pct(Math.abs(strength - held)), side: strength < held ? "below" : "above" }),
    expects: [{ of: "true_strength", low: held - most, high: held + most, near: held }],
  }];
}
