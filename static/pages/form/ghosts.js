// @ts-check
/** The last value beside each label and ghosted in its box; which boxes must be filled; the unit each begins with. */
import { symbol } from "../../trade/units.js";
import { lastOf } from "./context.js";
import { boxOf, unitOf } from "./values.js";

/** @param {HTMLFormElement} form @param {any} kind @param {any} card or null */
export function dressFields(form, kind, card) {
  for (const field of kind.fields) {
    const box = boxOf(form, field.name);
    if (!box) continue;
    const select = /** @type {HTMLSelectElement|null} */ (form.querySelector(`select[name="${field.name}_unit"]`));
    if (select) select.value = unitOf(kind, field);
    showNeed(box, field);
    const last = lastOf(card, kind, field);
    if (last) showLast(box, field, last);
  }
}

/** @param {HTMLElement} box @param {any} field */
function showNeed(box, field) {
  const label = box.querySelector(".field__label, legend > span");
  if (!label) return;
  label.querySelector(".field__needed")?.remove();
  if (!field.required) return;
  const sign = document.createElement("span");
  sign.className = "field__needed";
  sign.textContent = " needed";
  label.append(sign);
}

/** @param {HTMLElement} box @param {any} field @param {{raw: string, unit: string, when: string}} last */
function showLast(box, field, last) {
  const words = (field.choices.find((/** @type {string[]} */ choice) => choice[0] === last.raw) ?? ["", last.raw])[1];
  let line = box.querySelector(".field__last");
  if (!line) {
    line = document.createElement("span");
    line.className = "field__last";
    box.querySelector(".field__label, legend > span")?.after(line);
  }
  const other = last.unit && last.unit !== field.units[0] ? ` ${symbol(last.unit)}` : "";
  line.textContent = `${last.when} ${words.length > 24 ? `${words.slice(0, 23)}…` : words}${other}`;
  const input = box.querySelector("input.field__value");
  if (input && field.sort !== "date") input.setAttribute("placeholder", words);
}
