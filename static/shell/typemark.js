// @ts-check
/** A typed mark is judged at every key: right, not yet whole, or with a slip, and then with what was likely meant. */
import { BadMark, parseMark, suggest } from "../trade/marks.js";
import { html, nothing, render } from "../vendor/lit-html/lit-html.js";
import { holdsOf, markWords } from "./words.js";
import { t } from "../words/t.js";

const HINT = () => t("floor-typemark-letters_digits_and_the");

/** @param {any[]} cards @param {(mark: string, how: "typed") => void} onMark */
export function startTyping(cards, onMark) {
  const form = /** @type {HTMLFormElement|null} */ (document.querySelector('[data-part="type-form"]'));
  if (!form) return;
  const input = /** @type {HTMLInputElement} */ (form.querySelector("[name=mark]"));
  input.value ||= new URLSearchParams(location.search).get("mark") ?? "";
  const judge = (isDone = false) => showJudgement(form, input.value, cards, isDone, onMark);
  input.addEventListener("input", () => judge());
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const { mark } = judge(true);
    if (mark) onMark(mark, "typed");
  });
  judge(Boolean(input.value));
}

/**
 * @param {HTMLElement} form @param {string} text @param {any[]} cards @param {boolean} isDone
 * @param {(mark: string, how: "typed") => void} onMark
 */
function showJudgement(form, text, cards, isDone, onMark) {
  const [says, offers] = ["mark-says", "mark-offers"].map((name) => /** @type {HTMLElement} */ (form.querySelector(`[data-part="${name}"]`)));
  const { mark, words } = judgeMark(text);
  const card = cards.find((one) => one.mark === mark);
  const likely = mark ? [] : likelyMarks(text, cards);
  const isBegun = likely.some((one) => one.mark.startsWith(text.trim().toUpperCase()));
  const isWrong = Boolean(words) && (isDone || !isBegun && text.replace(/\W/g, "").length > 3);
  const left = isBegun ? t("floor-typemark-the_last_character_is") : words;
  says.textContent = card ? [card.name, card.title, ...holdsOf(card)].filter((part, at, all) => part && all.indexOf(part) === at).join(" · ")
    : mark ? t("floor-typemark-a_right_mark_but") : isWrong ? left : HINT();
  form.querySelector(".field")?.classList.toggle("field--wrong", isWrong);
  render(likely.length ? likely.map((one) => html`<button type="button" class="button" @click=${() => onMark(one.mark, "typed")}>${one.mark} <span class="button__sub">${holdsOf(one)[0]}</span></button>`) : nothing, offers);
  return { mark };
}

/** @param {string} text @returns {{mark: string, words: string}} */
export function judgeMark(text) {
  try {
    return { mark: parseMark(text), words: "" };
  } catch (error) {
    return { mark: "", words: error instanceof BadMark && text.trim() ? markWords(error) : "" };
  }
}

/** What begins like it, then what looks like it. @param {string} text @param {any[]} cards @returns {any[]} */
function likelyMarks(text, cards) {
  const bare = text.toUpperCase().replace(/[^A-Z0-9]/g, "");
  if (!bare) return [];
  const begun = cards.filter((card) => card.mark.replace("-", "").startsWith(bare));
  const meant = suggest(text, cards.map((card) => card.mark), 4).map((mark) => cards.find((card) => card.mark === mark));
  return [...new Set([...begun, ...meant])].slice(0, 4);
}
