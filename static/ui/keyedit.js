// @ts-check

/** @typedef {{text: string, start: number, end: number, keepsCaret: boolean}} Edit what replaces which part of the value */

/**
 * What one key does to a figure being typed: pure, so that the caret's every place can be tested.
 * @param {string} value @param {number} start @param {number} end the selection
 * @param {string} key "0" to "9", "mark", "sign" or "erase"
 * @param {string} mark the site's decimal mark
 * @returns {Edit|null} null where the key has nothing to do
 */
export function editFigure(value, start, end, key, mark) {
  if (key === "erase") {
    if (start === end && start === 0) return null;
    return { text: "", start: start === end ? start - 1 : start, end, keepsCaret: false };
  }
  if (key === "sign") {
    const isNegative = /^[-−]/.test(value);
    return { text: isNegative ? "" : "-", start: 0, end: isNegative ? 1 : 0, keepsCaret: value !== "" };
  }
  if (key === "mark" && /[.,]/.test(value.slice(0, start) + value.slice(end))) return null; // One decimal mark is enough.
  return { text: key === "mark" ? mark : key, start, end, keepsCaret: false };
}

/**
 * The next field of the same form, or its button after the last one.
 * @param {HTMLInputElement} field
 * @returns {Element|null}
 */
export function nextControl(field) {
  const all = [...(field.form?.elements ?? document.querySelectorAll("input[data-keypad]"))];
  const after = all.slice(all.indexOf(field) + 1).filter((element) => !element.closest("slate-keypad, [data-later]"));
  const fields = "input:not([type=hidden]):enabled, select:not([data-unit-for]):enabled, textarea:enabled";
  return after.find((element) => element.matches(fields)) ?? after.find((element) => element.matches("button:not([type=button]):enabled")) ?? null;
}
