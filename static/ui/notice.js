// @ts-check
import { t } from "../words/t.js";

/**
 * A line at the top of the page with one thing to do, for as long as it holds.
 * @param {{words: string, doWord: string, onDo: () => void, laterWord?: string}} notice
 * @returns {() => void} takes the notice away
 */
export function showNotice({ words, doWord, onDo, laterWord = t("floor-notice-later") }) {
  const box = document.createElement("section");
  box.className = "notice";
  box.setAttribute("role", "status");
  const line = document.createElement("p");
  line.textContent = words;
  const answers = document.createElement("div");
  answers.className = "buttons";
  const remove = () => box.remove();
  answers.append(button(laterWord, "button button--plain", remove), button(doWord, "button button--main", onDo));
  box.append(line, answers);
  document.body.prepend(box);
  return remove;
}

/** A newer worker stands by. It never takes over of itself: entries may be waiting. @param {() => void} onAccept */
export function showUpdateNotice(onAccept) {
  return showNotice({ words: t("floor-notice-a_newer_cellarslate_is"), doWord: t("floor-notice-use_it_now"), onDo: onAccept });
}

/** @param {string} word @param {string} className @param {() => void} onClick */
function button(word, className, onClick) {
  const made = document.createElement("button");
  made.type = "button";
  made.className = className;
  made.textContent = word;
  made.addEventListener("click", onClick);
  return made;
}
