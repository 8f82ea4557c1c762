// @ts-check
/** Our keypad or the phone's own keyboard for figures: a setting of this phone. */

const STORED = "keypad";

/** @returns {"own"|"system"} */
export function getKeypadChoice() {
  try {
    return localStorage.getItem(STORED) === "system" ? "system" : "own";
  } catch {
    return "own"; // Storage may be barred altogether; the keypad still works.
  }
}

/** Keypads in the page hear `keypadchoice` on document. @param {"own"|"system"} choice */
export function setKeypadChoice(choice) {
  try {
    localStorage.setItem(STORED, choice);
  } catch {
    // The choice then lasts for this page only.
  }
  document.dispatchEvent(new CustomEvent("keypadchoice", { detail: choice }));
}
