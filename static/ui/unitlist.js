// @ts-check
/** The units of a field that has more than two, as large keys in the place of the digits: one tap for each, whichever it is. */
import { t } from "../words/later.js";

/**
 * The list goes away with the choice, with a tap on the unit that is chosen already, and with the field.
 * @param {HTMLElement} keypad @param {HTMLSelectElement} units @param {(at: number) => void} take
 */
export function askUnit(keypad, units, take) {
  if (keypad.querySelector(".keypad__units")) return;
  const list = document.createElement("div");
  list.className = "keypad__units";
  list.setAttribute("role", "group");
  list.setAttribute("aria-label", units.getAttribute("aria-label") ?? t("floor-unitlist-unit"));
  list.append(...[...units.options].map((option, at) => {
    const key = document.createElement("button");
    key.type = "button";
    key.className = "key";
    key.textContent = option.text;
    key.setAttribute("aria-pressed", String(option.selected));
    key.addEventListener("click", (event) => {
      event.stopPropagation(); // no key of the keypad
      away();
      take(at);
    });
    return key;
  }));
  const listening = new AbortController();
  const away = () => {
    listening.abort();
    list.remove();
  };
  document.addEventListener("focusin", ({ target }) => target instanceof Node && !keypad.contains(target) && away(), { signal: listening.signal });
  keypad.append(list);
}
