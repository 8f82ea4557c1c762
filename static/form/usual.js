// @ts-check
/** The usual answer stands chosen where it moves nothing: what a run gave stays in its receiver. Nobody has to say it. */
import { boxOf } from "./values.js";

/** @param {HTMLFormElement} form @param {any} kind before anything else is filled in */
export function chooseUsual(form, kind) {
  if (kind.name !== "fraction_gauge") return;
  const stays = /** @type {HTMLInputElement|null} */ (form.querySelector("[name=goes_to][value=stays]"));
  if (!stays) return;
  let isOwn = false; // somebody's own answer is left alone
  const show = () => {
    if (!isOwn) stays.checked = form.querySelector("[name=fraction][value=stillage]:checked") === null; // stillage is drained or kept: there is no usual
  };
  form.addEventListener("change", ({ target }) => {
    const { name } = /** @type {HTMLInputElement} */ (target);
    isOwn ||= name === "goes_to";
    if (name === "fraction") show();
  });
  boxOf(form, "goes_to")?.classList.add("chips--usual");
  show();
}
