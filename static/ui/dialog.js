// @ts-check

/**
 * Ask one question in a native dialog and wait for the answer. Escape and the last answer both mean "leave it".
 * Focus goes back to where it was (the browser sees to it; we help where the opener has gone).
 * @param {{title: string, text?: string | Node, answers: {value: string, word: string, weight?: "main"|"strike"}[]}} question
 * @returns {Promise<string>} the value of the answer; "" when it was left
 */
export function ask({ title, text = "", answers }) {
  const opener = document.activeElement;
  const dialog = document.createElement("dialog");
  const heading = document.createElement("h2");
  const form = document.createElement("form");
  dialog.className = "dialog";
  heading.id = "dialog-title";
  heading.textContent = title;
  dialog.setAttribute("aria-labelledby", heading.id);
  form.method = "dialog";
  form.className = "dialog__answers";
  form.append(...answers.map(answerButton));
  dialog.append(heading, paragraph(text), form);
  document.body.append(dialog);
  return new Promise((resolve) => {
    dialog.addEventListener("close", () => {
      dialog.remove();
      if (opener instanceof HTMLElement && opener.isConnected) opener.focus();
      resolve(dialog.returnValue);
    });
    dialog.showModal();
  });
}

/** @param {{value: string, word: string, weight?: string}} answer */
function answerButton({ value, word, weight }) {
  const button = document.createElement("button");
  button.value = value;
  button.className = weight ? `button button--${weight}` : "button";
  button.textContent = word;
  return button;
}

/** @param {string | Node} text */
function paragraph(text) {
  if (text instanceof Node) return text;
  const line = document.createElement("p");
  line.textContent = text;
  line.hidden = !text;
  return line;
}

/**
 * Open a dialog that is already in the page. Focus returns to the opener when it closes.
 * @param {HTMLDialogElement} dialog
 * @returns {Promise<string>}
 */
export function openDialog(dialog) {
  const opener = document.activeElement;
  dialog.returnValue = "";
  dialog.showModal();
  return new Promise((resolve) => {
    dialog.addEventListener("close", () => {
      if (opener instanceof HTMLElement && opener.isConnected) opener.focus();
      resolve(dialog.returnValue);
    }, { once: true });
  });
}
