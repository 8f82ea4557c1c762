// @ts-check
/**
 * What is due on this shift and why, from the cards, instruments and site on this phone. The house sets its own
 * intervals at the desk (site.due); a legal day is told only where the house keeps accounts of that kind.
 */
import { logPath, vesselPath } from "../../shell/here.js";
import { formatAgo, formatDate } from "../../ui/format.js";
import { pageLocale } from "../../words/number.js";
import { byPlace, endOf } from "./like.js";
import { endWords } from "./says.js";
import { t } from "../../words/later.js";

const DAY_MS = 86_400_000;
const MONTH_DAYS = 30.44;
/** Hours, months, days, minutes or bottles after which something is due; 0 for never. Common practice, no source. */
export const DUE = { ferment_h: 20, regauge_months: 12, sample_months: 0, taste_months: 0, instrument_days: 14, check_min: 30, check_bottles: 0 };

/**
 * @typedef {{mark: string, name: string, why: string, end: string, path: string, weight?: "ask"|"stop"}} Line
 * @typedef {{key: string, title: string, lines: Line[], round?: string, roundWords?: string}} Group
 */

/** @param {any[]} cards @param {any} house @param {any[]} instruments @param {number} now ms @returns {Group[]} those with something due */
export function duesOf(cards, house, instruments, now) {
  const rule = { ...DUE, ...house.due };
  const groups = [ferments(cards, rule, now), casks(cards, rule, now, "cask_regauge"), casks(cards, rule, now, "sample"), casks(cards, rule, now, "tasting_note"), checks(instruments, rule, now), legal(house, now)];
  return groups.filter((group) => group.lines.length);
}

/** @param {any} card @param {string} kind @returns {number} ms of the last of that kind here, 0 for never */
const lastAt = (card, kind) => Math.max(0, ...Object.values(card.last[kind] ?? {}).map((value) => Date.parse(/** @type {any} */ (value).at)));

/** @param {any[]} cards @param {any} rule @param {number} now @returns {Group} */
function ferments(cards, rule, now) {
  const lines = cards.filter((card) => card.sort === "fermenter" && card.holds && !card.holds.charged).sort(byPlace).flatMap((card) => {
    const [what, name] = [card.holds.what ?? "", card.name || card.mark];
    if (card.holds.closed) return [{ mark: card.mark, name, why: t("floor-due-closed_the_still_is"), end: what, path: vesselPath(card.mark) }];
    const told = endOf(card);
    if (told.state === "ended") return [{ mark: card.mark, name, why: t("floor-due-ended_close_it_and"), end: what, path: logPath(card.mark, "ferment_closed") }];
    const last = lastAt(card, "ferment_reading");
    const isStuck = told.state === "stuck";
    if (now - last < rule.ferment_h * 3_600_000 && !isStuck) return [];
    const why = isStuck ? endWords(told) : last ? (told.state === "running" ? endWords(told).replace(/ Three equal.*/, "") : "") : t("floor-due-not_read_since_it");
    /** @type {Line} */
    const line = { mark: card.mark, name, why: why || what, end: last ? formatAgo(last, new Date(now)) : "", path: logPath(card.mark, "ferment_reading"), weight: isStuck ? "ask" : undefined };
    return [line];
  });
  return { key: "ferments", title: t("floor-ferments"), lines, round: "/job/ferments", roundWords: t("floor-readings_round") };
}

const CASK_WORDS = {
  cask_regauge: { key: "regauge", title: t("floor-due-casks_to_regauge"), rule: "regauge_months", never: t("floor-due-never_gauged_in_this") },
  sample: { key: "sample", title: t("floor-due-casks_to_sample"), rule: "sample_months", never: t("floor-due-never_sampled") },
  tasting_note: { key: "taste", title: t("floor-due-casks_to_taste"), rule: "taste_months", never: t("floor-due-never_tasted") },
};

/** @param {any[]} cards @param {any} rule @param {number} now @param {keyof typeof CASK_WORDS} kind @returns {Group} */
function casks(cards, rule, now, kind) {
  const { key, title, rule: name, never } = CASK_WORDS[kind];
  const months = rule[name];
  const lines = months > 0 ? cards.filter((card) => card.sort === "cask" && card.holds).map((card) => {
    const filled = Date.parse(card.holds.since) || 0;
    const gauged = kind === "cask_regauge" ? Math.max(0, ...(card.cask?.gauges ?? []).map((/** @type {number[]} */ one) => one[0] * 1000)) : 0;
    const last = Math.max(lastAt(card, kind), gauged);
    return { card, last, from: Math.max(last, filled) };
  }).filter(({ from }) => from && now - from >= months * MONTH_DAYS * DAY_MS).sort((a, b) => byPlace(a.card, b.card)).map(({ card, last }) => ({
    mark: card.mark, name: card.name || card.mark, path: logPath(card.mark, kind), end: card.place ?? "",
    why: last ? t("floor-due-last", { last: formatDate(last) }) : never,
  })) : [];
  return { key, title: months ? t("floor-due-every_months", { title, months }) : title, lines, ...(kind === "cask_regauge" ? { round: "/job/casks", roundWords: t("floor-regauge_round") } : {}) };
}

/** @param {any[]} instruments @param {any} rule @param {number} now @returns {Group} */
function checks(instruments, rule, now) {
  const lines = instruments.filter((one) => one.due_on && one.state === "in use" && Date.parse(one.due_on) - now < rule.instrument_days * DAY_MS)
    .sort((a, b) => (a.due_on < b.due_on ? -1 : 1)).map((one) => {
      const isLate = Date.parse(one.due_on) + DAY_MS <= now;
      /** @type {Line} */
      const line = { mark: one.id, name: one.id, why: t("floor-due-check_due", { title: one.title || one.sort, late: isLate ? "yes" : "no", date: formatDate(one.due_on) }), end: "", path: `/log/instrument_check`, weight: isLate ? "ask" : undefined };
      return line;
    });
  return { key: "instruments", title: t("floor-due-instruments"), lines };
}

/**
 * 27 CFR 19.632: reports of a month by the 15th of the next. 19.333: storage tanks are counted at each quarter's end.
 * 19.372: bottled stock on 30 June and 31 December, five business days' notice. Read in the annual edition of 2015.
 * @param {any} house @param {number} now @returns {Group}
 */
function legal(house, now) {
  const lines = /** @type {Line[]} */ ([]);
  const zone = house.time_zone || undefined;
  const [year, month, day] = new Intl.DateTimeFormat("en-CA", { year: "numeric", month: "2-digit", day: "2-digit", timeZone: zone }).format(now).split("-").map(Number);
  const isUs = (house.accounts ?? (house.units === "us" ? "us" : "")) === "us";
  if (!isUs) return { key: "legal", title: t("floor-due-by_law"), lines };
  const name = (/** @type {number} */ m) => new Intl.DateTimeFormat(pageLocale(), { month: "long", timeZone: "UTC" }).format(Date.UTC(year, m - 1, 15));
  const days = new Date(Date.UTC(year, month, 0)).getUTCDate();
  if (day <= 15) lines.push({ mark: "", name: `15 ${name(month)}`, why: t("floor-due-the_three_reports_for", { month: name(month - 1) }), end: "27 CFR 19.632", path: "/desk/periods" });
  if (month % 3 === 0 && day > days - 7) lines.push({ mark: "", name: `${days} ${name(month)}`, why: t("floor-due-the_quarter_ends_count"), end: "27 CFR 19.333", path: "/job/count" });
  if (month % 6 === 0 && day > days - 14) lines.push({ mark: "", name: `${days} ${name(month)}`, why: t("floor-due-count_of_bottled_stock"), end: "27 CFR 19.372", path: "/job/count" });
  return { key: "legal", title: t("floor-due-by_law"), lines };
}
