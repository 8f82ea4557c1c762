// @ts-check
/** The usual cautions beside the work; the page "More" has them at length. Nothing here makes a place or a spirit safe. */
import { html, nothing } from "../vendor/lit-html/lit-html.js";
import { icon } from "../icons/icons.js";
import { t } from "../words/t.js";

/** @returns {Record<string, string>} by the names that kinds give in `cautions` */
const WORDS = () => ({
  co2: t("floor-cautions-carbon_dioxide_lies_low"),
  fire_zone: t("floor-cautions-stay_outside_the_line"),
  methanol: t("floor-cautions-a_hydrometer_cannot_see"),
  still_heat: t("floor-cautions-hot_and_under_pressure"),
  lifting: t("floor-cautions-never_lift_a_full"),
  confined: t("floor-cautions-no_one_enters_a"),
});

/** @param {any} kind @param {any} card */
export function cautionBands(kind, card) {
  const names = kind.cautions.filter((/** @type {string} */ name) => WORDS()[name] && (name !== "fire_zone" || !card || card.in_zone || card.sort === "still"));
  return names.length ? names.map((/** @type {string} */ name) => cautionLine(name)) : nothing;
}

/** @param {string} name */
export const cautionLine = (name) => html`<p class="caution">${icon("warning")}<span>${WORDS()[name]}</span></p>`;
