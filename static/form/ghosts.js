// @ts-check
/** The last value beside each label and ghosted in its box; which boxes must be filled; the unit each begins with. */
import { symbol } from "../trade/units.js";
import { inOwnMark } from "../ui/format.js";
import { lastOf } from "./context.js";
import { boxOf, fillIn, shortSymbol, unitOf } from "./values.js";

/** @param {HTMLFormElement} form @param {any} kind @param {any} card or null */
export function dressFields(form, kind, card) {
  for (const field of kind.fields) {
    const box = boxOf(form, field.name);
    if (!box) continue;
    const select = /** @type {HTMLSelectElement|null} */ (form.querySelector(`select[name="${field.name}_unit"]`));
    if (select) dressUnits(select, unitOf(kind, field));
    if (field.required) showNeed(box);
    const last = lastOf(card, kind, field);
    box.classList.toggle("field--known", Boolean(last));
    if (last) {
      showLast(box, field, last, select?.value ?? last.unit);
      select?.addEventListener("change", () => showLast(box, field, last, select.value));
    }
  }
  fillIn(form, told(kind));
}

/** Values that the address names already: the still, the fraction. Figures are never taken from an address. @param {any} kind */
function told(kind) {
  const words = new URLSearchParams(location.search);
  const fields = kind.fields.filter((/** @type {any} */ field) => (field.sort === "mark" || field.sort === "choice") && words.has(field.name));
  return Object.fromEntries(fields.map((/** @type {any} */ field) => [field.name, { raw: words.get(field.name) ?? "" }]));
}

/** @param {HTMLSelectElement} select @param {string} unit */
function dressUnits(select, unit) {
  for (const option of select.options) option.text = shortSymbol(option.value);
  select.value = unit;
}

/** @param {HTMLElement} box */
function showNeed(box) {
  const label = box.querySelector(".field__label, legend > span");
  const sign = document.createElement("span");
  sign.className = "field__sign";
  sign.setAttribute("aria-hidden", "true");
  sign.textContent = " *";
  label?.append(sign);
  for (const control of box.querySelectorAll(":is(input, textarea):not([type=radio])")) control.setAttribute("aria-required", "true");
}

/** A figure read in another unit than the box's own is named with it, and never ghosted beside the wrong one. @param {HTMLElement} box @param {any} field @param {{raw: string, unit: string, when: string}} last @param {string} unit of the box now */
function showLast(box, field, last, unit) {
  const words = (field.choices.find((/** @type {string[]} */ choice) => choice[0] === last.raw) ?? ["", field.sort === "number" ? inOwnMark(last.raw) : last.raw])[1];
  let line = box.querySelector(".field__last");
  if (!line) {
    line = document.createElement("span");
    line.className = "field__last";
    box.querySelector(".field__label, legend > span")?.after(line);
  }
  const isOther = Boolean(last.unit) && last.unit !== unit;
  const other = isOther ? ` ${symbol(last.unit)}` : "";
  line.textContent = `${last.when} ${words.length > 24 ? `${words.slice(0, 23)}…` : words}${other}`;
  const input = box.querySelector("input.field__value");
  if (input && field.sort !== "date") input.setAttribute("placeholder", isOther ? "" : words);
  if (input && field.sort === "mark") input.setAttribute("data-last", last.raw);
}
