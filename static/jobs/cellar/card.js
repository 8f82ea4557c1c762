// @ts-check
/** On a vessel's card: when a ferment ends; how a cask has moved, beside casks like it. All from the cards on this phone. */
import { html, nothing } from "../../vendor/lit-html/lit-html.js";
import { badge } from "../../ui/badge.js";
import { formatDate, formatNumber } from "../../ui/format.js";
import { shownInUnits } from "../../shell/inunits.js";
import { doubtSpan } from "../draw/doubt.js";
import { endOf, gaugesOf, judged, usualFor } from "./like.js";
import { endWords, lossWords } from "./says.js";
import { t } from "../../words/later.js";

const SHOWN = 4;
const YEAR_MS = 365.25 * 86_400_000;

/** @param {any} card @param {any[]} cards @returns {unknown} */
export function cellarWords(card, cards) {
  if (card.cask && card.holds) return cask(card, cards);
  if (card.ferment && !card.holds?.closed && !card.holds?.charged) return html`<p class="band band--quiet">${endWords(endOf(card))}</p>`;
  return nothing;
}

/** @param {any} card @param {any[]} cards */
function cask(card, cards) {
  const gauges = gaugesOf(card);
  const usual = usualFor(card, cards);
  const found = judged(card, gauges, usual);
  const told = lossWords(found, usual);
  const score = card.cask.score != null ? html`<p class="quiet">${t("floor-card-tasted_of_10", { tasted_at: formatDate(card.cask.tasted_at), score: formatNumber(card.cask.score, 1) })}</p>` : nothing;
  return html`<div class="band band--${told.weight === "ask" ? "ask" : "quiet"}" data-loss><p>${told.weight === "ask" ? badge("ask") : nothing} ${told.figure ? html`<strong class="round__figure">${told.figure}</strong>` : nothing} ${told.words}</p></div>
    ${found ? besideOthers(card, found, usual, told.weight === "ask") : nothing}
    ${gauges.length > 1 ? html`<details class="more"><summary><strong>${t("floor-card-gauges_of_this_fill")}</strong> <span class="quiet">${gauges.length}</span></summary><ul class="list">${gauges.slice(-SHOWN).reverse().map((gauge) => html`<li class="list__item--short"><span class="list__mark">${formatDate(gauge.years * YEAR_MS)}</span><span class="list__what">${shownInUnits(gauge.lpa, "LPA", 1)}</span><span class="list__end">${shownInUnits(gauge.strength_pct, "pct_vol", 1)}</span></li>`)}</ul></details>` : nothing}${score}`;
}

/** What it lost on one line with what casks like it lose. @param {any} card @param {{share: number}} found @param {{share: {low: number, high: number, middle: number}, count: number}} usual @param {boolean} isOdd */
function besideOthers(card, found, usual, isOdd) {
  const [name, { low, middle, high }] = [card.name || card.mark, usual.share];
  const like = usual.count ? t("floor-card-casks_like_it", { count: usual.count }) : t("floor-card-such_a_size");
  return doubtSpan({
    id: "loss", unit: t("floor-card-a_year"), doubt: { low, high, at: middle, words: like },
    known: [{ at: found.share, words: name, sign: "diamond", weight: isOdd ? "stop" : "chalk" }],
    words: t("floor-card-lost_of_its_pure", { name, share: formatNumber(found.share, 1), like, low: formatNumber(low, 1), high: formatNumber(high, 1) }),
  });
}
