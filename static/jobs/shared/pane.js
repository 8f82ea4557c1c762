// @ts-check
/** A wide screen has two panes: who logs and every vessel on the left, the work on the right. */
import { onCards } from "../../slate/cards.js";
import { onChange } from "../../slate/queue.js";
import { html, render } from "../../vendor/lit-html/lit-html.js";
import { markHere, runPath, vesselPath } from "../../shell/here.js";
import { readCards } from "../../shell/phone.js";
import { holdsOf } from "../../shell/words.js";
import { wear } from "../../ui/sheet.js";
import { showHands } from "./hands.js";
import { t } from "../../words/later.js";

const SCROLLED = "pane-scrolled";

/** Draw the left pane beside the page that is open. */
export async function start() {
  await wear("jobs/shared/shared.css");
  const pane = document.createElement("aside");
  pane.className = "pane";
  pane.setAttribute("aria-label", t("floor-pane-people"));
  const [people, vessels] = [document.createElement("div"), document.createElement("div")];
  pane.append(people, vessels);
  const show = async () => render(list(await readCards()), vessels);
  await show();
  document.querySelector("main")?.before(pane);
  document.documentElement.setAttribute("data-panes", "");
  pane.scrollTop = Number(sessionStorage.getItem(SCROLLED)) || 0;
  addEventListener("pagehide", () => sessionStorage.setItem(SCROLLED, String(pane.scrollTop)));
  onCards(() => void show());
  onChange(() => void show());
  // What is half typed belongs to whom it was typed by: a form hears of the change itself, any other page begins anew.
  await showHands(people, () => document.querySelector("form.entry") || location.reload());
}

/** @param {any[]} cards those that hold something first, each half in the order of the cellar */
function list(cards) {
  const here = markHere();
  const line = (/** @type {any} */ card) => html`<li><a href=${card.run ? runPath(card.mark) : vesselPath(card.mark)} aria-current=${card.mark === here ? "page" : "false"}>
    <span class="list__mark">${card.name || card.mark}</span><span class="list__what">${card.run ? card.run.name : holdsOf(card)[0]}</span></a></li>`;
  const [full, empty] = [cards.filter((card) => card.holds || card.run), cards.filter((card) => !card.holds && !card.run)];
  return html`<nav aria-label=${t("floor-pane-vessels")}><ul class="list list--links">${[...full, ...empty].map(line)}</ul></nav>`;
}
