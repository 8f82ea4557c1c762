// @ts-check
import { html } from "../vendor/lit-html/lit-html.js";

/** A shell on the phone has the sprite in itself: a file of its own is a document to open for each icon. */
const SYMBOL = globalThis.document?.querySelector("[data-part=sprite]") ? "#icon-" : "/static/icons/sprite.svg#";

/**
 * One icon of the sprite, drawn in the colour of the words beside it. It is silent for screen readers:
 * the word stands beside it, or the button has an aria-label.
 * @param {string} name a symbol's id in sprite.svg
 * @param {string} [variant] "large" for 40 px
 * @returns {unknown}
 */
export function icon(name, variant = "") {
  const className = variant ? `icon icon--${variant}` : "icon";
  return html`<svg class=${className} aria-hidden="true" focusable="false"><use href=${`${SYMBOL}${name}`}></use></svg>`;
}

/**
 * The same icon as an element, for code that builds without templates.
 * @param {string} name
 * @returns {SVGSVGElement}
 */
export function iconElement(name) {
  const svg = document.createElementNS("http://www.w3.org/2000/svg", "svg");
  svg.setAttribute("class", "icon");
  svg.setAttribute("aria-hidden", "true");
  const use = document.createElementNS("http://www.w3.org/2000/svg", "use");
  use.setAttribute("href", `${SYMBOL}${name}`);
  svg.append(use);
  return svg;
}
