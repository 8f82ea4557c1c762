// @ts-check
/** Fewer boxes for a gloved hand: what may stay empty waits behind one button. The sizes are style/gloves.css's. */
import { boxOf, controlOf } from "../../form/values.js";
import { t } from "../../words/later.js";

/** @param {HTMLFormElement} form @param {any} kind */
export function setAside(form, kind) {
  const kept = new Set(kind.rules.filter((/** @type {any} */ rule) => rule.op === "any_of").flatMap(namesOf));
  const isAside = (/** @type {any} */ field) => !field.required && !field.danger.length && !kept.has(field.name) && !isFilled(form, field.name);
  const inSight = kind.fields.filter((/** @type {any} */ field) => boxOf(form, field.name)?.parentElement === form);
  const boxes = inSight.filter(isAside).map((/** @type {any} */ field) => boxOf(form, field.name));
  if (!boxes.length || boxes.length === inSight.length) return; // a form of nothing but a button helps nobody
  for (const box of boxes) box.dataset.later = "";
  const button = document.createElement("button");
  button.type = "button";
  button.className = "button button--wide";
  button.dataset.part = "all-fields";
  button.textContent = t("floor-gloves-more_fields", { count: boxes.length });
  button.addEventListener("click", () => {
    for (const box of boxes) delete box.dataset.later;
    button.remove();
    boxes[0].querySelector("input, select, textarea")?.focus();
  });
  boxes[boxes.length - 1].after(button);
}

/** @param {any} rule @returns {string[]} the fields that it speaks of: `dip|strength`, `whole=yes` */
const namesOf = (rule) => [rule.left, rule.right].flatMap((side) => String(side).split("=")[0].split("|"));

/** @param {HTMLFormElement} form @param {string} name */
function isFilled(form, name) {
  const control = controlOf(form, name);
  return Boolean(control && (control.type === "radio" || control.type === "checkbox" ? control.checked : control.value));
}
