// @ts-check
/** The usual cautions beside the work; the page "More" has them at length. Nothing here makes a place or a spirit safe. */
import { html, nothing } from "../vendor/lit-html/lit-html.js";
import { icon } from "../icons/icons.js";

/** @type {Record<string, string>} by the names that kinds give in `cautions` */
const WORDS = {
  co2: "Carbon dioxide lies low and has no smell. At 5000 ppm leave, ventilate, tell the supervisor.",
  fire_zone: "Stay outside the line unless this phone is rated and your site allows it. Read later? Give it its own minute.",
  methanol: "A hydrometer cannot see methanol. Nose first; a laboratory knows.",
  still_heat: "Hot, and under pressure if a path blocks. Never leave a running still.",
  lifting: "Never lift a full cask by hand.",
  confined: "No one enters a vessel without a permit and someone outside.",
};

/** @param {any} kind @param {any} card */
export function cautionBands(kind, card) {
  const names = kind.cautions.filter((/** @type {string} */ name) => WORDS[name] && (name !== "fire_zone" || !card || card.in_zone || card.sort === "still"));
  return names.length ? names.map((/** @type {string} */ name) => cautionLine(name)) : nothing;
}

/** @param {string} name */
export const cautionLine = (name) => html`<p class="caution">${icon("warning")}<span>${WORDS[name]}</span></p>`;
