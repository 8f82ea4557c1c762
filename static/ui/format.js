// @ts-check
/** How figures and times are written: the site's decimal mark, thin-spaced thousands, 24-hour times. */
import { MINUS, decimalMark, formatNumber, pageLocale } from "../words/number.js";
import { t } from "../words/t.js";

export { decimalMark, formatNumber } from "../words/number.js";

const NO_BREAK = "\u00a0";

/** The site's time zone, from `<html data-zone>` (an IANA name), else the phone's own. */
function zone() {
  return globalThis.document?.documentElement.dataset.zone || undefined;
}

/** A figure and its unit, kept on one line. @param {number|null|undefined} value @param {number} decimals @param {string} unit */
export function formatQuantity(value, decimals, unit) {
  return `${formatNumber(value, decimals)}${NO_BREAK}${unit}`;
}

/** Figures as they were typed, in the site's decimal mark, so that one screen has one; what is kept stays as typed. @param {string} text */
export const inOwnMark = (text) => text.replace(/(\d)[.,](?=\d)/g, `$1${decimalMark()}`);

/**
 * Read a typed figure. Comma and point both serve as the decimal mark; spaces may part thousands.
 * @param {string} text
 * @returns {number} NaN where the text is no plain number ("", "1.2.3", "1e999", "seven")
 */
export function parseNumber(text) {
  const plain = text.trim().replace(/[\s\u00a0\u202f]/g, "").replace(MINUS, "-").replace(",", ".");
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : NaN;
}

/** @param {Date|number|string} when @returns {string} "08:11" */
export function formatTime(when) {
  return new Intl.DateTimeFormat("en-GB", { hour: "2-digit", minute: "2-digit", hourCycle: "h23", timeZone: zone() }).format(new Date(when));
}

/** For a box of date and minute, by the site's clock. @param {Date|number|string} when @returns {string} "2025-09-24T08:11" */
export function formatMinute(when) {
  const form = new Intl.DateTimeFormat("en-CA", {
    year: "numeric", month: "2-digit", day: "2-digit", hour: "2-digit", minute: "2-digit", hourCycle: "h23", timeZone: zone(),
  });
  const part = Object.fromEntries(form.formatToParts(new Date(when)).map(({ type, value }) => [type, value]));
  return `${part.year.padStart(4, "0")}-${part.month}-${part.day}T${part.hour}:${part.minute}`;
}

/** @param {string} minute as `formatMinute` writes it, by the site's clock @returns {Date} invalid where it is no minute */
export function parseMinute(minute) {
  const wanted = /^\d{4}-\d\d-\d\dT\d\d:\d\d/.test(minute) ? Date.parse(`${minute.slice(0, 16)}:00Z`) : NaN;
  if (Number.isNaN(wanted)) return new Date(NaN);
  const offset = (/** @type {number} */ at) => Date.parse(`${formatMinute(at)}:00Z`) - at;
  const near = wanted - offset(wanted);
  return new Date(wanted - offset(near)); // asked once more: between the two the clock may have changed
}

/** @param {Date|number|string} when @returns {string} "4 Sept 2025" */
export function formatDate(when) {
  return new Intl.DateTimeFormat(pageLocale(), { day: "numeric", month: "short", year: "numeric", timeZone: zone() }).format(new Date(when));
}

/** Midnight UTC of the local calendar day, so that days can be counted through changes of the clock. @param {Date|number|string} when */
function dayNumber(when) {
  const parts = new Intl.DateTimeFormat("en-CA", { year: "numeric", month: "2-digit", day: "2-digit", timeZone: zone() }).format(new Date(when));
  return Date.parse(`${parts}T00:00:00Z`) / 86_400_000;
}

/** The day of a ferment, counted from 1. @param {Date|number|string} start @param {Date|number|string} [now] @returns {string} "day 6" */
export function formatDay(start, now = new Date()) {
  return t("floor-format-day", { start: dayNumber(now) - dayNumber(start) + 1 });
}

/** @param {number} seconds @returns {string} "3 h 19", "12 min" */
export function formatDuration(seconds) {
  const minutes = Math.max(0, Math.round(seconds / 60));
  if (minutes < 60) return `${minutes}${NO_BREAK}min`;
  return `${Math.floor(minutes / 60)}${NO_BREAK}h${NO_BREAK}${String(minutes % 60).padStart(2, "0")}`;
}

/** How long ago, for "yesterday 14.0". @param {Date|number|string} when @param {Date|number|string} [now] */
export function formatAgo(when, now = new Date()) {
  const days = dayNumber(now) - dayNumber(when);
  if (days === 0) return formatTime(when);
  if (days === 1) return t("floor-format-yesterday");
  return days > 1 && days < 60 ? t("floor-format-days_ago", { days }) : formatDate(when);
}
