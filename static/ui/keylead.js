// @ts-check
/**
 * What the keys know of a figure before it is typed: the "1." that leads nearly every gravity, and when it is complete. A field says
 * so itself: `data-lead-unit="SG"`, and `data-whole="3"` digits after the mark in the unit `data-whole-unit`.
 */
import { decimalMark } from "./format.js";

const LEAD = "1";

/** Whether nothing but the lead stands there. @param {string} text @param {HTMLElement} field */
export const isLead = (text, field) => "leadUnit" in field.dataset && text === LEAD + decimalMark();

/** Put the lead into an empty field that takes one, read in this unit. @param {HTMLInputElement} field @param {string|undefined} unit */
export function showLead(field, unit) {
  if (field.value || !unit || field.dataset.leadUnit !== unit) return;
  field.value = LEAD + decimalMark();
  field.setSelectionRange(field.value.length, field.value.length);
}

/** Take away a lead after which nothing was typed. @param {HTMLInputElement} field */
export function dropLead(field) {
  if (isLead(field.value, field)) field.value = "";
}

/** Whoever types the lead although it stands there: "1.1." from a keyboard is "1." @param {HTMLInputElement} field */
export function mendLead(field) {
  if ("leadUnit" in field.dataset && /^1[.,]1[.,]/.test(field.value)) field.setRangeText("", 0, 2, "preserve");
}

/** Whether a mark now would be the one of the lead, typed again. @param {HTMLInputElement} field */
export const isLeadAgain = (field) => "leadUnit" in field.dataset && field.value === LEAD + decimalMark() + LEAD;

/** Whether the figure has all its digits, so that the next one may be typed. @param {HTMLInputElement} field @param {string|undefined} unit */
export function isWhole(field, unit) {
  const { whole, wholeUnit } = field.dataset;
  const digits = field.value.split(/[.,]/)[1]?.length;
  return whole !== undefined && wholeUnit === unit && digits === Number(whole) && field.selectionStart === field.value.length;
}

/** The next figure that is needed and still empty, in sight. @param {HTMLInputElement} field @returns {HTMLInputElement|undefined} */
export function nextNeeded(field) {
  const all = /** @type {HTMLInputElement[]} */ ([...(field.form?.querySelectorAll("input[data-keypad][aria-required=true]") ?? [])]);
  return all.slice(all.indexOf(field) + 1).find((one) => !one.value && one.getClientRects().length > 0);
}
