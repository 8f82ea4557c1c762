// @ts-check
/** The readings round: every tank with a ferment, three figures each, and when it will end. */
import { figureBox } from "../form/quickfields.js";
import { formatAgo, formatDay } from "../ui/format.js";
import { html } from "../vendor/lit-html/lit-html.js";
import { withWaiting } from "../slate/cards.js";
import { localStamp } from "../slate/entry.js";
import { cautionLine } from "../shell/cautions.js";
import { endOf } from "./cellar/like.js";
import { startRound } from "./cellar/round.js";
import { endWords } from "./cellar/says.js";
import { t } from "../words/later.js";

export const start = () => startRound({
  name: "ferments", kind: "ferment_reading", title: t("floor-ferments"), noun: "tank", plural: "tanks", hours: 8, caution: "co2",
  labels: { temp: t("floor-ferments-mash"), gravity: t("floor-gravity") },
  about: (card) => (card.holds.since ? formatDay(card.holds.since) : ""),
  wants: (card) => card.sort === "fermenter" && Boolean(card.holds) && !card.holds.charged && !card.holds.closed,
  boxes: (kind, card) => html`${cautionLine("co2")}<div class="pair">${figureBox(kind, "temp", card)}${figureBox(kind, "gravity", card)}</div>${figureBox(kind, "ph", card)}`,
  aside: (card, read) => html`<p class="band band--quiet"><span>${endWords(endOf(withTyped(card, read)))} <span class="quiet">${lastWords(card)}</span></span></p>`,
});

/** The card as it will stand with the gravity now in the box. @param {any} card @param {any} read */
function withTyped(card, read) {
  if (read?.values?.gravity == null) return card;
  const { gravity } = read.entry.values;
  const entry = { id: "typed", kind: "ferment_reading", mark: card.mark, person: "", device: "", seq: 0, amends: null, read_at: localStamp(new Date()), values: { gravity } };
  return withWaiting(card, [/** @type {any} */ (entry)]);
}

/** @param {any} card */
function lastWords(card) {
  const points = card.curves?.gravity ?? [];
  const last = points[points.length - 1];
  return last ? t("floor-ferments-last_read", { last: formatAgo(last[0] * 1000) }) : t("floor-ferments-not_read_yet");
}
