// @ts-check
import { iconElement } from "../icons/icons.js";
import { decimalMark } from "./format.js";
import { editFigure, nextControl } from "./keyedit.js";
import { getKeypadChoice } from "./keypadchoice.js";
import { dropLead, isLead, isLeadAgain, isWhole, mendLead, nextNeeded, showLead } from "./keylead.js";
import { loadWords, t } from "../words/t.js";

/**
 * Our own keypad: `<slate-keypad hidden></slate-keypad>` once in a page edits whichever `<input data-keypad>` has the
 * focus. The keys never take the focus from the field, so its caret and selection stay in use; reached by Tab or a screen reader they
 * edit the field that had it last. The field keeps working with a hardware keyboard.
 *
 * Events on the input, all bubbling: `input` after each edit; `keypad:unit` {unit} after a unit swap; `keypad:remark` and `keypad:next`
 * (both cancelable: what the keypad does of itself is to go to the form's remark, or to its next field or button). A form without a remark
 * shows no key for one; `data-keypad="digits"` shows the digits and "erase" alone.
 * Units: the field's `<select data-unit-for="ID">`, as drawn by `_fields.html`. The key takes the other of two, and shows a list of more
 * (unitlist.js; it takes the next where that cannot be had). A swap never converts what was typed.
 */

/** @returns {[key: string, name: string][]} */
const KEYS = () => [
  ["1", ""], ["2", ""], ["3", ""], ["erase", t("floor-keypad-erase")],
  ["4", ""], ["5", ""], ["6", ""], ["unit", ""],
  ["7", ""], ["8", ""], ["9", ""], ["remark", ""],
  ["sign", t("floor-keypad-plus_or_minus")], ["0", ""], ["mark", ""], ["next", ""],
];
/** @returns {Record<string, string>} */
const FACES = () => ({ unit: t("floor-keypad-unit"), remark: t("floor-remark"), sign: "±", next: t("floor-next") });

export class SlateKeypad extends HTMLElement {
  /** @type {HTMLInputElement|null} */
  #field = null;
  /** @type {"own"|"system"} */
  #choice = "own";
  #listening = new AbortController();

  static observedAttributes = ["hidden"];

  /** The page makes room by attributes of its own: looked for by `:has()`, each word that is written would have the whole page styled anew. */
  attributeChangedCallback() {
    const thumb = this.closest(".thumb");
    for (const place of [document.documentElement, thumb]) {
      if (this.hidden || !this.isConnected) place?.removeAttribute("data-keys");
      else place?.setAttribute("data-keys", thumb?.parentElement?.matches(".entry") ? "entry" : "");
    }
  }

  connectedCallback() {
    this.attributeChangedCallback();
    this.setAttribute("role", "group");
    this.setAttribute("aria-label", t("floor-keypad-name"));
    if (!this.childElementCount) this.append(this.#makeEcho(), ...KEYS().map(([key, name]) => this.#key(key, name)));
    this.#listening = new AbortController();
    const { signal } = this.#listening;
    document.addEventListener("focusin", (event) => this.follow(event.target), { signal });
    document.addEventListener("change", () => this.#showUnit(), { signal });
    document.addEventListener("input", ({ target }) => {
      if (target instanceof HTMLInputElement) mendLead(target);
      this.#showEcho();
    }, { signal, capture: true });
    document.addEventListener("focusout", ({ target }) => target instanceof HTMLInputElement && dropLead(target), { signal });
    // A field drawn after us must be told before it takes the focus, or the system keyboard flashes up.
    document.addEventListener("pointerdown", ({ target }) => {
      if (target instanceof HTMLInputElement && "keypad" in target.dataset) this.#prepare(target);
    }, { signal, capture: true });
    // A press must not take the focus (and with it the caret) out of the field.
    this.addEventListener("pointerdown", (event) => event.preventDefault(), { signal });
    this.addEventListener("mousedown", (event) => event.preventDefault(), { signal });
    this.addEventListener("click", (event) => this.#press(event), { signal });
    document.addEventListener("decimalmark", () => this.#showMark(), { signal });
    document.addEventListener("keypadchoice", (event) => this.#apply(/** @type {CustomEvent} */ (event).detail), { signal });
    this.#showMark();
    this.#apply(getKeypadChoice());
  }

  disconnectedCallback() {
    this.attributeChangedCallback();
    this.#listening.abort();
  }

  /** @param {"own"|"system"} choice */
  #apply(choice) {
    this.#choice = choice;
    document.querySelectorAll("input[data-keypad]").forEach((input) => this.#prepare(/** @type {HTMLInputElement} */ (input)));
    if (choice === "system") this.hidden = true;
    else this.follow(document.activeElement);
  }

  /** @param {HTMLInputElement} input */
  #prepare(input) {
    input.inputMode = this.#choice === "own" ? "none" : isCode(input) ? "numeric" : "decimal";
  }

  /**
   * Take a field into hand, as its focus does. Told before the focus, the page is laid out once for both and not twice.
   * @param {EventTarget|null} target
   */
  follow(target) {
    if (!(target instanceof HTMLElement) || this.contains(target)) return;
    if (target instanceof HTMLInputElement && "keypad" in target.dataset) {
      this.#enlarge(target);
      this.#field = target;
      this.#prepare(target);
      this.hidden = this.#choice === "system";
      this.toggleAttribute("data-digits", isCode(target));
      this.toggleAttribute("data-no-remark", !remarkFor(target));
      this.#showUnit();
      if (!this.hidden) showLead(target, this.#units()?.value);
      this.#showEcho();
      if (!this.hidden) this.#bringIntoSight(target);
    } else if (target.matches("input:not([type=radio], [type=checkbox]), textarea")) {
      this.hidden = true; // The system keyboard is coming up.
    }
  }

  /**
   * With the next picture, which lays the page out anyway: the keys have only now taken their room.
   * @param {HTMLInputElement} input
   */
  #bringIntoSight(input) {
    requestAnimationFrame(() => {
      if (this.#field === input && !this.hidden) (input.closest(".field") ?? input).scrollIntoView({ block: "nearest" });
    });
  }

  /**
   * The field being typed is drawn large, until another is: were it to shrink when the focus leaves it, all below would move away
   * from under the thumb that is just coming down.
   * @param {HTMLInputElement} input
   */
  #enlarge(input) {
    this.#field?.closest(".field")?.removeAttribute("data-typed");
    input.closest(".field")?.setAttribute("data-typed", "");
  }

  /** The field said again above the keys, where the screen is too low for both. Seen only: the field itself is spoken. */
  #makeEcho() {
    const echo = document.createElement("p");
    echo.className = "keypad__echo";
    echo.setAttribute("aria-hidden", "true");
    echo.append(document.createElement("span"), document.createElement("strong"));
    return echo;
  }

  #showEcho() {
    const [label, value] = this.querySelector(".keypad__echo")?.children ?? [];
    if (!label || !value || !this.#field) return;
    say(label, this.#field.labels?.[0]?.textContent?.trim() ?? "");
    say(value, `${this.#field.value || "–"} ${this.#units()?.selectedOptions[0]?.text ?? this.#field.dataset.unit ?? ""}`.trim());
  }

  /** @param {string} key @param {string} name */
  #key(key, name) {
    const button = document.createElement("button");
    button.type = "button";
    button.dataset.key = key;
    button.className = key.length > 1 && !["sign", "mark"].includes(key) ? "key key--side" : "key";
    if (key === "erase") button.append(iconElement("erase"));
    else button.textContent = FACES()[key] ?? key;
    button.toggleAttribute("data-long", (button.textContent ?? "").length > 7);
    if (name) button.setAttribute("aria-label", name);
    return button;
  }

  #showMark() {
    const button = /** @type {HTMLButtonElement} */ (this.querySelector("[data-key=mark]"));
    button.textContent = decimalMark();
    button.setAttribute("aria-label", decimalMark() === "," ? t("floor-keypad-decimal_comma") : t("floor-keypad-decimal_point"));
  }

  /** @returns {HTMLSelectElement|null} */
  #units() {
    return this.#field?.id ? document.querySelector(`select[data-unit-for="${CSS.escape(this.#field.id)}"]`) : null;
  }

  #showUnit() {
    const button = /** @type {HTMLButtonElement} */ (this.querySelector("[data-key=unit]"));
    const units = this.#units();
    const other = units && units.options[(units.selectedIndex + 1) % units.options.length];
    button.disabled = !units || units.options.length < 2;
    say(button, button.disabled ? this.#field?.dataset.unit || "–" : (units?.options.length ?? 0) > 2 ? t("floor-keypad-units") : t("floor-keypad-swap", { text: other?.text }));
    if (button.disabled) button.setAttribute("aria-label", t("floor-keypad-no_other_unit"));
    else button.removeAttribute("aria-label");
  }

  /** @param {Event} event */
  #press(event) {
    const key = /** @type {HTMLElement} */ (event.target).closest("button")?.dataset.key;
    const field = this.#field;
    if (!key || !field?.isConnected || field.disabled || field.readOnly) return;
    if (key === "unit") this.#swapUnit(field);
    else if (key === "remark") this.#goTo(field, "keypad:remark", remarkFor(field));
    else if (key === "next") this.#goTo(field, "keypad:next", nextControl(field));
    else this.#edit(field, key);
  }

  /** @param {HTMLInputElement} field @param {string} key */
  #edit(field, key) {
    const { value } = field;
    if (key === "mark" && isLeadAgain(field)) return this.#putIn(field, "", value.length - 1, value.length);
    if (key === "erase" && isLead(value, field)) return this.#putIn(field, "", 0, value.length);
    // A figure that was taken up again gives way to the first key.
    const [from, to] = "begun" in field.dataset ? [0, value.length] : [field.selectionStart ?? value.length, field.selectionEnd ?? value.length];
    const edit = editFigure(value, from, to, key, decimalMark());
    if (!edit) return;
    const { text, start, end, keepsCaret } = edit;
    const grown = value.length - (end - start) + text.length;
    if (field.maxLength > 0 && grown > field.maxLength) return;
    this.#putIn(field, text, start, end, keepsCaret);
    if (text && isWhole(field, this.#units()?.value ?? "")) nextNeeded(field)?.focus();
  }

  /** @param {HTMLInputElement} field @param {string} text @param {number} start @param {number} end what it replaces @param {boolean} [keepsCaret] */
  #putIn(field, text, start, end, keepsCaret = false) {
    field.setRangeText(text, start, end, keepsCaret ? "preserve" : "end");
    field.dispatchEvent(new InputEvent("input", { bubbles: true, inputType: text ? "insertText" : "deleteContentBackward", data: text || null }));
  }

  /** @param {HTMLInputElement} field */
  #swapUnit(field) {
    const units = this.#units();
    if (!units) return;
    const turn = () => this.#takeUnit(field, units, (units.selectedIndex + 1) % units.options.length);
    if (units.options.length < 3) turn();
    else void import("./unitlist.js").then(({ askUnit }) => askUnit(this, units, (at) => this.#takeUnit(field, units, at)), turn);
  }

  /** @param {HTMLInputElement} field @param {HTMLSelectElement} units @param {number} at */
  #takeUnit(field, units, at) {
    units.selectedIndex = at;
    dropLead(field);
    showLead(field, units.value);
    units.dispatchEvent(new Event("change", { bubbles: true }));
    field.dispatchEvent(new CustomEvent("keypad:unit", { bubbles: true, detail: { unit: units.value } }));
  }

  /** @param {HTMLInputElement} field @param {string} name @param {Element|null|undefined} target */
  #goTo(field, name, target) {
    const goesOn = field.dispatchEvent(new CustomEvent(name, { bubbles: true, cancelable: true }));
    if (!goesOn || !(target instanceof HTMLElement)) return;
    const fold = target.closest("details");
    if (fold) fold.open = true; // what lies in a closed fold cannot take the focus
    target.focus();
  }
}

/** Words that stand already are not written again: each writing has the page laid out anew. @param {Element} place @param {string} words */
function say(place, words) {
  if (place.textContent !== words) place.textContent = words;
}

/** A code such as a PIN has neither sign nor point nor unit. @param {HTMLInputElement} input */
const isCode = (input) => input.dataset.keypad === "digits";

/** @param {HTMLInputElement} field @returns {Element|null} */
const remarkFor = (field) => field.form?.querySelector("[data-remark], textarea[name=remark]") ?? null;

// Its keys have words.
loadWords().then(() => customElements.get("slate-keypad") || customElements.define("slate-keypad", SlateKeypad)).catch(() => {}); // the page says so

export { getKeypadChoice, setKeypadChoice } from "./keypadchoice.js";
