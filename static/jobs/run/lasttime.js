// @ts-check
/** The charge's receivers as last time, in one tap. */
import { allCards } from "../../slate/cards.js";
import { t } from "../../words/later.js";

const PARTS = ["heads", "hearts", "tails"];

/** @param {HTMLFormElement} form of the charge @param {any} card of the still, or null */
export async function offerLastReceivers(form, card) {
  const last = card?.run ?? card?.past_runs?.[0];
  const marks = PARTS.map((part) => [`${part}_to`, last?.receivers?.[part]]).filter(([, mark]) => mark);
  const box = form.querySelector('[data-field="heads_to"]');
  if (!marks.length || !box) return;
  const cards = await allCards();
  const names = marks.map(([, mark]) => cards.find((one) => one.mark === mark)?.name || mark);
  const button = document.createElement("button");
  button.type = "button";
  button.className = "button button--wide";
  button.dataset.part = "last-receivers";
  button.append(t("floor-lasttime-receivers"));
  const sub = document.createElement("span");
  sub.className = "button__sub";
  sub.textContent = names.join(", ");
  button.append(sub);
  button.addEventListener("click", () => {
    for (const [name, mark] of marks) {
      const input = /** @type {HTMLInputElement|null} */ (form.querySelector(`[name="${name}"]`));
      if (!input) continue;
      input.value = mark;
      input.dispatchEvent(new Event("input", { bubbles: true }));
    }
  });
  box.before(button);
}
