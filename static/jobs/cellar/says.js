// @ts-check
/** The sentences of the cellar's rounds. */
import { formatNumber } from "../../ui/format.js";
import { pageLocale } from "../../words/number.js";
import { t } from "../../words/later.js";

/** @param {number} ms @returns {string} "2 Dec" */
const day = (ms) => new Intl.DateTimeFormat(pageLocale(), { day: "numeric", month: "short", timeZone: document.documentElement.dataset.zone || undefined }).format(ms);

/** @param {any} end of endOf @returns {string} */
export function endWords(end) {
  if (end.state === "ended") return t("floor-says-ended_three_equal_gravities", { day: day(end.ms.at) });
  if (end.state === "stuck") return t("floor-says-not_moving_and_not");
  if (end.state !== "running") return end.words || (end.why === "not_begun" ? t("floor-says-it_has_hardly_begun") : t("floor-says-no_day_yet_it"));
  const [low, high] = [day(end.ms.low), day(end.ms.high)];
  const span = low === high ? "" : t("floor-says-to", { low, high });
  return t("floor-says-ends_about_near_three", { day: day(end.ms.at), span, end_gravity: formatNumber(end.end_gravity, 3) });
}

/** @param {string} word of judged */
const JUDGED = /** @type {Record<string, [weight: string, words: string]>} */ ({
  usual: ["note", t("floor-as_casks_like_it")],
  leak: ["ask", t("floor-says-much_at_a_usual")],
  slip: ["ask", t("floor-says-the_weight_is_usual")],
  other_cask: ["ask", t("floor-says-weight_and_strength_are")],
  gain: ["ask", t("floor-says-a_cask_cannot_gain")],
});

/** @param {{word: string, share: number}|null} found @param {{share: {low: number, high: number}, count: number}} usual @returns {{weight: string, figure: string, words: string}} */
export function lossWords(found, usual) {
  const span = t("floor-says-to_2", { low: formatNumber(usual.share.low, 1), high: formatNumber(usual.share.high, 1) });
  const like = usual.count ? t("floor-says-casks_like_it_compared", { span, count: usual.count }) : t("floor-says-such_a_size", { span });
  if (!found) return { weight: "note", figure: "", words: t("floor-says-first_gauge_of_this", { like }) };
  const [weight, words] = JUDGED[found.word];
  return { weight, figure: `${formatNumber(found.share, 1)} %`, words: found.word === "usual" ? t("floor-says-a_year", { like }) : t("floor-says-a_year_2", { like, words }) };
}
