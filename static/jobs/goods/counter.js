// @ts-check
/**
 * Counting by hand: while a count has the focus, a large plus stands where the keys would; a smaller minus takes one back. "keys" brings
 * the keypad for a figure that is known, and the plus stays above it. The box itself stays a box: a keyboard and a reader of screens
 * find the figure there, and in the pad it is said large.
 */
import { nextControl } from "../../ui/keyedit.js";
import { parseNumber } from "../../ui/format.js";
import { html, nothing, render } from "../../vendor/lit-html/lit-html.js";
import { t } from "../../words/later.js";

const MOST = 1_000_000;
/** What is read off a counter or a packing list rather than counted: the keys come first. */
const READ_OFF = ["filled", "per_case"];

/** The style of what this room draws comes with it. */
export function prepare() {
  const href = new URL("goods.css", import.meta.url).href;
  if (document.querySelector(`link[href="${href}"]`)) return;
  const link = document.createElement("link");
  link.rel = "stylesheet";
  link.href = href;
  document.head.append(link);
}

/** @param {string} text as typed @param {number} step @returns {string} never below nothing */
export function stepped(text, step) {
  const now = parseNumber(text);
  return String(Math.min(Math.max(Math.floor(Number.isFinite(now) ? now : 0) + step, 0), MOST));
}

/**
 * @param {HTMLFormElement} form @param {string[]} names of its counts
 * @param {HTMLElement} thumb where the keypad stands
 */
export function dressCounts(form, names, thumb) {
  prepare();
  const pad = document.createElement("div");
  pad.className = "counter";
  pad.hidden = true;
  pad.setAttribute("role", "group");
  thumb.insertBefore(pad, thumb.querySelector("slate-keypad"));
  /** @type {HTMLInputElement|null} */
  let box = null;
  const isCount = (/** @type {EventTarget|null} */ one) => one instanceof HTMLInputElement && one.form === form && names.includes(one.name);
  const give = (/** @type {number} */ step) => {
    if (!box) return;
    box.value = stepped(box.value, step);
    box.dispatchEvent(new InputEvent("input", { bubbles: true, inputType: "insertText" }));
  };
  const toKeys = (/** @type {boolean} */ isTyped) => {
    if (!box) return;
    box.toggleAttribute("data-keypad", isTyped);
    box.inputMode = isTyped ? "numeric" : "none";
    const again = box;
    again.blur();
    again.focus({ preventScroll: true });
  };
  const draw = () => {
    if (!box) return;
    const label = box.labels?.[0]?.textContent?.replace("*", "").trim() ?? "";
    const isTyped = "keypad" in box.dataset;
    const isNothing = !(parseNumber(box.value) > 0);
    pad.setAttribute("aria-label", t("floor-counter-count_of", { label }));
    pad.classList.toggle("counter--slim", isTyped);
    const parts = isTyped ? nothing : html`<p class="counter__said" aria-live="polite"><span>${label}</span> <strong>${box.value || "0"}</strong></p>`;
    render(html`${parts}<button type="button" class="counter__key counter__plus" aria-label=${t("floor-counter-one_more")} @click=${() => give(1)}>+</button>
      <button type="button" class="counter__key counter__minus" aria-label=${t("floor-one_less")} ?disabled=${isNothing} @click=${() => give(-1)}>−</button>
      <button type="button" class="counter__key counter__ten" aria-label=${t("floor-counter-10_ten_more")} @click=${() => give(10)}>+10</button>
      <button type="button" class="counter__key counter__side counter__keys" @click=${() => toKeys(!isTyped)}>${isTyped ? t("floor-counter-count") : t("floor-counter-keys")}</button>
      <button type="button" class="counter__key counter__side counter__next" @click=${() => goOn(nextControl(/** @type {HTMLInputElement} */ (box)))}>${t("floor-next")}</button>`, pad);
  };
  for (const name of names) {
    const input = /** @type {HTMLInputElement|null} */ (form.querySelector(`input[name="${name}"]`));
    if (!input) continue;
    input.toggleAttribute("data-keypad", READ_OFF.includes(name));
    if (!READ_OFF.includes(name)) input.inputMode = "none";
    input.dataset.count = "";
  }
  const follow = (/** @type {FocusEvent} */ event) => {
    if (!pad.isConnected) return document.removeEventListener("focusin", follow);
    const { target } = event;
    if (target instanceof Node && (pad.contains(target) || target instanceof HTMLButtonElement)) return;
    box = isCount(target) ? /** @type {HTMLInputElement} */ (target) : null;
    pad.hidden = !box;
    draw();
    if (box) /** @type {HTMLElement} */ (box.closest(".field") ?? box).scrollIntoView({ block: "nearest" });
  };
  document.addEventListener("focusin", follow);
  form.addEventListener("input", (event) => { if (event.target === box) draw(); });
  // A press must not take the focus out of the box.
  pad.addEventListener("pointerdown", (event) => event.preventDefault());
  pad.addEventListener("mousedown", (event) => event.preventDefault());
  if (isCount(document.activeElement)) follow(/** @type {any} */ ({ target: document.activeElement }));
}

/** @param {Element|null|undefined} target */
function goOn(target) {
  if (!(target instanceof HTMLElement)) return;
  const fold = target.closest("details");
  if (fold) fold.open = true;
  target.focus();
}
