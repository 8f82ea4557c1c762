// @ts-check
/**
 * A slider of our own hand: a native range under a large thumb that carries its figure. One that nobody has touched says "–":
 * it is no zero. The last value is a mark over the track.
 */
import { html, render } from "../../vendor/lit-html/lit-html.js";
import { t } from "../../words/later.js";

const [LOW, HIGH] = [0, 10];
/** Keys that move no thumb at the end of its track, yet say the figure that it stands on. */
const SAYS = new Set(["Home", "End", "Enter", " ", "ArrowLeft", "ArrowDown", "ArrowRight", "ArrowUp", "PageUp", "PageDown"]);

/**
 * @typedef {{id: string, label: string, last?: {raw: string, words: string}|null, onSay: (raw: string) => void}} Asked
 *   `last`: the figure of last time and when that was; `onSay`: a whole number from 0 to 10, or "" where it is taken back
 * @typedef {{element: HTMLElement, range: HTMLInputElement, show: (raw: string) => void}} Dial
 */

/** @param {Asked} asked @returns {Dial} */
export function makeDial({ id, label, last, onSay }) {
  const element = document.createElement("div");
  element.className = "dial__slide";
  render(html`<span class="dial__track"><span class="dial__fill"></span></span>${last ? html`<span class="dial__last" aria-hidden="true">▾</span>` : ""}
    <input class="dial__range" id=${id} type="range" min=${LOW} max=${HIGH} step="1" aria-label=${label}>
    <span class="dial__value" aria-hidden="true"></span>
    <span class="dial__scale" aria-hidden="true"><span>${LOW}</span><span>${(LOW + HIGH) / 2}</span><span>${HIGH}</span></span>`, element);
  const range = /** @type {HTMLInputElement} */ (element.querySelector("input"));
  const value = /** @type {HTMLElement} */ (element.querySelector(".dial__value"));
  if (last) element.style.setProperty("--last", String(share(last.raw)));
  const say = (/** @type {string} */ raw) => {
    show(raw);
    onSay(raw);
  };
  const show = (/** @type {string} */ raw) => {
    range.value = raw || String(LOW);
    element.toggleAttribute("data-said", raw !== "");
    element.style.setProperty("--at", String(share(raw)));
    value.textContent = raw || "–";
    range.setAttribute("aria-valuetext", [raw ? t("floor-dial-of", { words: raw, high: HIGH }) : t("floor-not_said"), last?.words].filter(Boolean).join("; "));
  };
  range.addEventListener("input", (event) => {
    event.stopPropagation();
    say(range.value);
  });
  range.addEventListener("click", () => say(range.value)); // a tap on the thumb where it stands moves nothing, and says its figure
  range.addEventListener("keydown", (event) => {
    if (event.key === "Delete" || event.key === "Backspace") say("");
    else if (!element.hasAttribute("data-said") && SAYS.has(event.key)) say(range.value);
    if (event.key === "Enter") event.preventDefault();
  });
  show("");
  return { element, range, show };
}

/** @param {string} raw @returns {number} 0 to 1 along the track */
const share = (raw) => Math.min(1, Math.max(0, (Number(raw.replace(",", ".")) - LOW) / (HIGH - LOW) || 0));
