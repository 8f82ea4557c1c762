// @ts-check
import { icon } from "../icons/icons.js";
import { html } from "../vendor/lit-html/lit-html.js";
import { t } from "../words/t.js";

/** @typedef {"stop"|"ask"|"note"|"entered"|"waiting"} Weight */

/**
 * A weight: its sign and its word, never colour alone.
 * @param {Weight} weight
 * @param {string} [word] where another word than the weight's own says more
 */
export function badge(weight, word = t("floor-badge", { weight })) {
  return html`<span class="badge badge--${weight}">${icon(weight)}${word}</span>`;
}
