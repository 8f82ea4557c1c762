// @ts-check
/** What keeps a form from being an entry at all, said at its box. */
import { html, nothing, render } from "../vendor/lit-html/lit-html.js";
import { say } from "../words/say.js";
import { boxOf, controlOf } from "./values.js";

/**
 * @param {HTMLFormElement} form @param {any} kind @param {any[]} problems of the read
 * @returns {boolean} whether there is no entry to log yet
 */
export function showRefusals(form, kind, problems) {
  const refusals = problems.filter((problem) => problem.weight === "refuse");
  for (const field of kind.fields) showAt(form, field.name, refusals.find((one) => one.field === field.name));
  const first = refusals[0] && controlOf(form, refusals[0].field);
  const fold = /** @type {HTMLDetailsElement|null|undefined} */ (first?.closest("details"));
  if (fold) fold.open = true;
  first?.closest("[data-later]")?.removeAttribute("data-later");
  first?.focus({ preventScroll: true });
  const box = first?.closest(".field, .chips");
  box?.scrollIntoView({ block: "center" });
  box?.querySelector("[data-refused]")?.scrollIntoView({ block: "nearest" }); // a low screen has no room for all of the box
  return refusals.length > 0;
}

/** @param {HTMLFormElement} form @param {string} name @param {any} [problem] */
function showAt(form, name, problem) {
  const box = boxOf(form, name);
  if (!box) return;
  box.classList.toggle(box.classList.contains("chips") ? "chips--wrong" : "field--wrong", Boolean(problem));
  const control = controlOf(form, name);
  if (problem) control?.setAttribute("aria-invalid", "true");
  else control?.removeAttribute("aria-invalid");
  render(problem ? html`<p class="field__error" role="alert">${say(problem)}</p>` : nothing, lineOf(box));
  lineOf(box).hidden = !problem;
}

/** @param {HTMLElement} box @returns {HTMLElement} */
function lineOf(box) {
  const found = box.querySelector("[data-refused]");
  if (found instanceof HTMLElement) return found;
  const made = document.createElement("div");
  made.dataset.refused = "";
  made.className = "field__full";
  box.append(made);
  return made;
}
