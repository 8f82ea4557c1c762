// @ts-check
/** The regauge round: every full cask by place, gross, glass, temperature and condition; its loss a year at once. */
import { choiceBox, figureBox } from "../form/quickfields.js";
import { shownInUnits } from "../shell/inunits.js";
import { formatAgo } from "../ui/format.js";
import { html, nothing } from "../vendor/lit-html/lit-html.js";
import { badge } from "../ui/badge.js";
import { gaugesOf, gaugesWith, judged, usualFor } from "./cellar/like.js";
import { startRound } from "./cellar/round.js";
import { lossWords } from "./cellar/says.js";
import { t } from "../words/later.js";

const YEAR_MS = 365.25 * 86_400_000;

export const start = () => startRound({
  name: "casks", kind: "cask_regauge", title: t("floor-casks-casks"), noun: "cask", plural: "casks", hours: 14 * 24, caution: "confined",
  labels: { glass: t("floor-glass"), temp: t("floor-spirit"), condition: t("floor-casks-cask_is") },
  wants: (card) => card.sort === "cask" && Boolean(card.holds),
  boxes: (kind, card) => html`${figureBox(kind, "gross", card)}<div class="pair">${figureBox(kind, "glass", card)}${figureBox(kind, "temp", card)}</div>${choiceBox(kind, "condition")}`,
  aside: lossLine,
});

/** @param {any} card @param {any} read @param {any[]} cards */
function lossLine(card, read, cards) {
  const usual = usualFor(card, cards);
  const { lpa, true_strength: strength } = read?.figures ?? {};
  const isTyped = typeof lpa === "number" && typeof strength === "number" && lpa > 0;
  const gauges = isTyped ? gaugesWith(card, Date.now() / 1000, lpa, strength) : gaugesOf(card);
  const told = lossWords(judged(card, gauges, usual), usual);
  const known = gaugesOf(card);
  const last = known[known.length - 1];
  return html`<div class="band band--${told.weight === "ask" ? "ask" : "quiet"}" data-loss><p>${told.weight === "ask" ? badge("ask") : nothing}
    ${told.figure ? html`<strong class="round__figure">${told.figure}</strong>` : nothing} ${told.words}
    ${isTyped ? html`<strong>${shownInUnits(lpa, "LPA", 1)}</strong> ${t("floor-casks-now")}` : nothing}
    ${last ? html`<span class="quiet">${shownInUnits(last.lpa, "LPA", 1)}, ${shownInUnits(last.strength_pct, "pct_vol", 1)} ${formatAgo(last.years * YEAR_MS)}.</span>` : nothing}</p></div>`;
}
