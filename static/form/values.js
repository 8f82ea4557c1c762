// @ts-check
/** Between the boxes of a form and the values of an entry. Boxes are found by name, wherever they were drawn. */
import { unitsChoice } from "../shell/inunits.js";
import { symbol } from "../trade/units.js";
import { isLead } from "../ui/keylead.js";

/**
 * @typedef {{raw: string, unit?: string, instrument?: string}} Value
 * @typedef {any} Kind as declared in kinds.json
 * @typedef {any} Field
 */

/** A unit as a box shows it: what the label says already ("glass", "hydrometer") is left out. @param {string} unit */
export const shortSymbol = (unit) => symbol(unit).replace(/ \(.*\)$/, "");

const US = ["degF", "lb", "gal", "gal_h", "proof", "proof_glass", "in", "oz", "fl_oz"];

/** The scale of an instrument that has several: as last used on this phone, for such an instrument shows no other. @param {Field} field */
const keptScale = (field) => (field.instrument && field.units.length > 2 ? field.units.find((/** @type {string} */ unit) => unit === stored(`scale:${field.instrument}`)) : "");

/** @param {Field} field @param {string} unit */
export const keepScale = (field, unit) => field.instrument && field.units.length > 2 && localStorage.setItem(`scale:${field.instrument}`, unit);

/** The unit a field begins with: its instrument's, the house's, or this phone's own. One of two swapped for one figure does not stick. @param {Field} field */
export function unitOf(field) {
  return keptScale(field) || (unitsChoice() === "us" && field.units.find((/** @type {string} */ unit) => US.includes(unit))) || field.typed_in || field.units[0] || "";
}

/** @param {string} sort of instrument @returns {string} its id as last used on this phone */
export const keptInstrument = (sort) => stored(`instrument:${sort}`);

/** @param {string} sort @param {string} id */
export const keepInstrument = (sort, id) => localStorage.setItem(`instrument:${sort}`, id);

/** The box around a field, for its state. @param {ParentNode} form @param {string} name @returns {HTMLElement|null} */
export const boxOf = (form, name) => form.querySelector(`:is(.field, .chips, .tick)[data-field="${name}"]`);

/** The control to type into, or the first of its choices. @param {HTMLFormElement} form @param {string} name @returns {HTMLInputElement|null} */
export const controlOf = (form, name) =>
  form.querySelector(`:is(input, textarea, select)[name="${name}"]:checked`) ?? form.querySelector(`:is(input, textarea, select)[name="${name}"]`);

/** @param {HTMLFormElement} form @param {Kind} kind @returns {Record<string, Value>} the filled-in fields; the others are left out */
export function collect(form, kind) {
  /** @type {Record<string, Value>} */
  const values = {};
  for (const field of kind.fields) {
    const raw = rawOf(form, field.name);
    if (!raw) continue;
    values[field.name] = { raw };
    if (field.units.length) values[field.name].unit = unitNow(form, field);
    const instrument = field.instrument && rawOf(form, `${field.name}_instrument`);
    if (instrument) values[field.name].instrument = instrument;
  }
  return values;
}

/** @param {HTMLFormElement} form @param {Field} field */
export function unitNow(form, field) {
  const select = /** @type {HTMLSelectElement|null} */ (form.querySelector(`select[name="${field.name}_unit"]`));
  return select?.value || (select ? field.units[0] : unitOf({ ...field, units: field.units.slice(0, 1) }));
}

/** What stands in a box; a leading "1." that the keys have put there is nothing yet. @param {HTMLFormElement} form @param {string} name */
export function rawOf(form, name) {
  const control = controlOf(form, name);
  if (!control) return "";
  if ((control.type === "radio" || control.type === "checkbox") && !control.checked) return "";
  const text = control.value.trim();
  return isLead(text, control) ? "" : text;
}

/** Put values back into the boxes. @param {HTMLFormElement} form @param {Record<string, Value>} values */
export function fillIn(form, values) {
  for (const [name, value] of Object.entries(values)) {
    if (value.unit) put(form, `${name}_unit`, value.unit);
    if (value.instrument) put(form, `${name}_instrument`, value.instrument);
    put(form, name, value.raw);
  }
}

/** @param {HTMLFormElement} form @param {string} name @param {string} raw */
function put(form, name, raw) {
  const all = /** @type {HTMLInputElement[]} */ ([...form.querySelectorAll(`:is(input, textarea, select)[name="${name}"]`)]);
  if (all[0]?.type === "radio") for (const one of all) one.checked = one.value === raw;
  else if (all[0]) all[0].value = raw;
}

/** @param {string} name */
function stored(name) {
  try {
    return localStorage.getItem(name) ?? "";
  } catch {
    return "";
  }
}
