// @ts-check

const STAYS_MS = 5000;

/** The page's live region. It must be in the page before its words, or a screen reader misses the first. */
function region() {
  const found = document.querySelector(".toasts");
  if (found) return found;
  const made = document.createElement("div");
  made.className = "toasts";
  made.setAttribute("role", "status");
  made.setAttribute("aria-live", "polite");
  document.body.append(made);
  return made;
}

/**
 * Say that something is done: "On the slate." A failure must also stand where it happened; this line goes away.
 * @param {string} words
 * @param {number} [staysMs]
 */
export function toast(words, staysMs = STAYS_MS) {
  const line = document.createElement("p");
  line.className = "toast";
  line.textContent = words;
  region().replaceChildren(line); // one at a time: a pile would cover the figure that was just read
  setTimeout(() => line.remove(), staysMs);
}
