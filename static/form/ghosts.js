// @ts-check
/** The last value beside each label, never in the box; which boxes must be filled; the unit each begins with. */
import { wordsIn } from "../shell/inunits.js";
import { inOwnMark } from "../ui/format.js";
import { lastOf } from "./context.js";
import { boxOf, fillIn, shortSymbol, unitOf } from "./values.js";
import { t } from "../words/t.js";

/** @param {HTMLFormElement} form @param {any} kind @param {any} card or null */
export function dressFields(form, kind, card) {
  for (const field of kind.fields) {
    const box = boxOf(form, field.name);
    if (!box) continue;
    if (field.name === "dip" && card && !(card.context.dips || card.context.cask_dips)) box.hidden = true;
    const select = /** @type {HTMLSelectElement|null} */ (form.querySelector(`select[name="${field.name}_unit"]`));
    if (select) dressUnits(select, unitOf(field));
    box.querySelector("input.field__value")?.setAttribute("placeholder", " "); // so that a style sheet can tell an empty box
    if (field.required) showNeed(box);
    const last = lastOf(card, kind, field);
    dressKeys(box, field, last, card?.last?.[kind.name]?.[field.name]);
    box.classList.toggle("field--known", Boolean(last));
    if (last) showLast(box, field, last);
  }
  for (const help of form.querySelectorAll(".field__help")) help.textContent = wordsIn(help.textContent ?? "");
  fillIn(form, told(kind));
}

/** Values that the address names already: the still, the fraction, the tasting that a plan rests on. Figures are never taken from an address. @param {any} kind */
function told(kind) {
  const words = new URLSearchParams(location.search);
  const fields = kind.fields.filter((/** @type {any} */ field) => (field.sort === "mark" || field.sort === "choice" || field.name === "tasting") && words.has(field.name));
  return Object.fromEntries(fields.map((/** @type {any} */ field) => [field.name, { raw: words.get(field.name) ?? "" }]));
}

/** A gravity that has come near water may fall below it: then no "1." leads it. */
const LEADS_ABOVE_SG = 1.005;

/** What the keys may know: when a figure is complete, by the last one; what leads a gravity. @param {HTMLElement} box @param {any} field @param {{raw: string, unit: string}|null} last @param {any} known the last value, of whatever fill */
function dressKeys(box, field, last, known) {
  const input = box.querySelector("input[data-keypad]");
  if (!(input instanceof HTMLInputElement) || !field.required) return;
  const unit = unitOf(field);
  const decimals = last && last.unit === unit ? (last.raw.split(/[.,]/)[1]?.length ?? 0) : unit === field.units[0] ? field.decimals : 0;
  if (decimals) Object.assign(input.dataset, { whole: String(decimals), wholeUnit: field.units.length > 1 ? unit : "" });
  if (field.units[0] === "SG" && !(last && known?.value < LEADS_ABOVE_SG)) input.dataset.leadUnit = "SG";
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

/** "last 15.0 °C, Tuesday", in the unit it was read in. @param {HTMLElement} box @param {any} field @param {{raw: string, unit: string, when: string}} last */
function showLast(box, field, last) {
  const words = (field.choices.find((/** @type {string[]} */ choice) => choice[0] === last.raw) ?? ["", last.raw])[1];
  const line = document.createElement("span");
  line.className = "field__last";
  line.textContent = field.sort === "number" ? lastWords(last) : t("floor-ghosts-last", { words: words.length > 24 ? `${words.slice(0, 23)}…` : words, when: last.when });
  box.querySelector(".field__label, legend > span")?.after(line);
  const input = box.querySelector("input.field__value");
  if (input && field.sort === "mark") input.setAttribute("data-last", last.raw);
}

/** @param {{raw: string, unit: string, when: string}} last of a figure */
export const lastWords = ({ raw, unit, when }) => t("floor-ghosts-last_2", { figure: [inOwnMark(raw), shortSymbol(unit)].filter(Boolean).join(" "), when });
