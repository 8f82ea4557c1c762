// @ts-check
/** When a reminder is due, and which are offered. A reading that has been made moves it on, or ends it. */
import { logPath, runPath } from "../../shell/here.js";
import { readCard } from "../../shell/phone.js";
import { dropTimers, timers } from "../../slate/timers.js";
import { formatDuration, formatMinute, formatTime, parseMinute } from "../../ui/format.js";
import { t } from "../../words/later.js";

/**
 * @typedef {import("../../slate/timers.js").Timer} Timer
 * @typedef {{words: string, at: number, minutes: number}} Offer [ms, min]
 */

const MINUTE_MS = 60_000;
/** A reading so shortly before a set time has done what it was set for. */
const DONE_BEFORE_MS = 30 * MINUTE_MS;
const AT_A_STILL_MIN = [5, 10, 15, 30];
const AT_A_FERMENT_H = [1, 3];
/** Hours by the site's clock; offered while they are still some way off. */
const EVENING_H = 18;
const NIGHT_H = 22;
const MORNING_H = 7;

/**
 * A reminder as its vessel stands now.
 * @param {Timer} timer @param {any} card of its vessel, or null
 * @returns {Timer|null} null where it is over
 */
export function standing(timer, card) {
  if (timer.run && card && card.run?.id !== timer.run) return null; // the run is over
  const lines = timer.run ? [...(card?.run?.readings ?? []), ...(card?.run?.cuts ?? [])] : (card?.recent ?? []);
  const last = Math.max(0, ...lines.map((/** @type {any} */ line) => Date.parse(line.at)));
  const isAfter = last > Date.parse(timer.set_at);
  if (timer.minutes) return isAfter ? { ...timer, at: new Date(last + timer.minutes * MINUTE_MS).toISOString() } : timer;
  return isAfter && last > Date.parse(timer.at) - DONE_BEFORE_MS ? null : timer;
}

/** @returns {Promise<Timer[]>} those that stand, the next first; what is over is let go */
export async function timersNow() {
  const all = await timers();
  if (!all.length) return [];
  const now = await Promise.all(all.map(async (timer) => standing(timer, await readCard(timer.mark).catch(() => null))));
  const over = all.filter((_, n) => !now[n]).map((timer) => timer.mark);
  if (over.length) await dropTimers(over);
  return now.filter((timer) => timer !== null).sort((a, b) => (a.at < b.at ? -1 : 1));
}

/** @param {string} sort of the vessel @param {number} now ms @returns {Offer[]} */
export function offersFor(sort, now) {
  if (sort === "still") return AT_A_STILL_MIN.map((minutes) => ({ words: `${minutes} min`, at: now + minutes * MINUTE_MS, minutes }));
  const hours = AT_A_FERMENT_H.map((hour) => ({ words: t("floor-times-in_h", { hour }), at: now + hour * 60 * MINUTE_MS, minutes: 0 }));
  const later = [[t("floor-times-this_evening"), EVENING_H, 0], [t("floor-times-late_this_evening"), NIGHT_H, 0], [t("floor-times-tomorrow_morning"), MORNING_H, 1]]
    .map(([words, hour, days]) => ({ words: String(words), at: atHour(Number(hour), Number(days), now), minutes: 0 })).filter((offer) => offer.at > now + 60 * MINUTE_MS);
  return [...hours, ...later.filter((offer, n) => n === 0 || offer.words === t("floor-times-tomorrow_morning"))];
}

/** @param {number} hour by the site's clock @param {number} days from today on @param {number} now */
function atHour(hour, days, now) {
  const [year, month, day] = formatMinute(now).slice(0, 10).split("-").map(Number);
  const date = new Date(Date.UTC(year, month - 1, day + days, hour)).toISOString();
  return parseMinute(date).getTime();
}

/** The next time that the clock shows so. @param {string} clock "19:40" @param {number} now @returns {number} ms; NaN where it is no time */
export function nextAt(clock, now) {
  const today = parseMinute(`${formatMinute(now).slice(0, 10)}T${clock}`).getTime();
  return today > now ? today : atHour(Number(clock.slice(0, 2)), 1, now) + Number(clock.slice(3)) * MINUTE_MS;
}

/** "in 8 min", "due", "12 min over" @param {Timer} timer @param {number} [now] */
export function leftWords(timer, now = Date.now()) {
  const left = Date.parse(timer.at) - now;
  if (left > 0) return t("floor-times-in", { span: formatDuration(Math.ceil(left / MINUTE_MS) * 60) });
  return left > -MINUTE_MS ? t("floor-times-due_now") : t("floor-times-over", { left: formatDuration(-left / 1000) });
}

/** @param {Timer} timer @param {number} [now] */
export const isDue = (timer, now = Date.now()) => Date.parse(timer.at) <= now;

/** "19:40", with its day where that is not today @param {Timer} timer @param {number} [now] */
export function whenWords(timer, now = Date.now()) {
  const [day, today] = [timer.at, now].map((at) => formatMinute(at).slice(0, 10));
  return `${day === today ? "" : isDue(timer, now) ? t("floor-times-yesterday") : t("floor-times-tomorrow")}${formatTime(timer.at)}`;
}

/** Where it is read. @param {Timer} timer */
export const timerPath = (timer) => (timer.run ? runPath(timer.mark) : logPath(timer.mark, "ferment_reading"));

/** @param {Timer} timer @param {string} [name] */
export const titleOf = (timer, name = timer.name) => t("floor-times-next_reading", { name: name ? t("floor-times-of", { name }) : "" });
