// @ts-check

const STORED = "theme";
/** Ground of tokens.css, for the browser's own bars. */
const BARS = { dark: "#12181b", light: "#ece7dc" };

/** @typedef {"system"|"dark"|"light"} ThemeChoice */

/** @returns {ThemeChoice} */
export function getTheme() {
  try {
    const stored = localStorage.getItem(STORED);
    return stored === "dark" || stored === "light" ? stored : "system";
  } catch {
    return "system"; // Storage barred.
  }
}

/** Store and show a choice. Charts hear `themechange` on document. @param {ThemeChoice} choice */
export function setTheme(choice) {
  try {
    if (choice === "system") localStorage.removeItem(STORED);
    else localStorage.setItem(STORED, choice);
  } catch {
    // The choice then lasts for this page only.
  }
  applyTheme(choice);
}

/** @param {ThemeChoice} [choice] */
export function applyTheme(choice = getTheme()) {
  if (choice === "system") delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = choice;
  for (const meta of document.querySelectorAll("meta[name=theme-color]")) {
    const own = /** @type {HTMLMetaElement} */ (meta).media.includes("dark") ? "dark" : "light";
    meta.setAttribute("content", BARS[choice === "system" ? own : choice]);
  }
  document.dispatchEvent(new CustomEvent("themechange"));
}
