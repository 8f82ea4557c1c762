// @ts-check
/**
 * The search box of the desk: "/" leads to it, and what answers stands under it while somebody types. The server makes
 * the list; without this script Enter leads to the page of results. The pattern is the combobox with a listbox of the
 * ARIA Authoring Practices (w3.org/WAI/ARIA/apg/patterns/combobox): the focus stays in the box.
 */
const WAIT_MS = 120;
const WORDS_OWN = "input:not([type=checkbox], [type=radio], [type=submit], [type=button]), textarea, select, [contenteditable=true]";

/** @param {HTMLFormElement} form */
export function setUpFindBox(form) {
  const box = /** @type {HTMLInputElement} */ (form.querySelector("input"));
  const list = /** @type {HTMLElement} */ (form.querySelector("[role=listbox]"));
  const count = /** @type {HTMLElement} */ (form.querySelector("[data-part=count]"));
  let asking = new AbortController();
  let timer = 0;
  let shown = "";

  const options = () => /** @type {HTMLAnchorElement[]} */ ([...list.querySelectorAll("[role=option]")]);
  const active = () => options().findIndex((option) => option.getAttribute("aria-selected") === "true");

  /** @param {number} at of the options; -1 for none */
  function choose(at) {
    options().forEach((option, n) => option.setAttribute("aria-selected", String(n === at)));
    const option = options()[at];
    if (option) {
      box.setAttribute("aria-activedescendant", option.id);
      option.scrollIntoView({ block: "nearest" });
    } else box.removeAttribute("aria-activedescendant");
  }

  /** @param {boolean} isOpen */
  function open(isOpen) {
    list.hidden = !isOpen;
    box.setAttribute("aria-expanded", String(isOpen));
    if (!isOpen) choose(-1);
  }

  async function ask() {
    const text = box.value.trim();
    asking.abort();
    asking = new AbortController();
    if (!text) {
      shown = "";
      open(false);
      return;
    }
    try {
      const answer = await fetch(`${form.dataset.find}?q=${encodeURIComponent(text)}`, { signal: asking.signal, redirect: "error" });
      const made = await answer.text();
      if (!answer.ok || document.activeElement !== box) return;
      list.replaceChildren(...new DOMParser().parseFromString(made, "text/html").body.childNodes);
      shown = text;
      const many = options().filter((option) => option.id !== "find-all").length;
      const { shown: some = "", none = "" } = count.dataset;
      count.textContent = many ? some.replace("{many}", String(many)) : none;
      open(true);
    } catch {
      // No answer, or typed on: the page of results is still there.
      if (!asking.signal.aborted) open(false);
    }
  }

  /** @param {KeyboardEvent} event */
  function move(event) {
    const many = options().length;
    if (event.key === "Escape") {
      if (list.hidden) box.value = "";
      else event.preventDefault();
      open(false);
    } else if (event.key === "Enter" && !list.hidden && active() >= 0) {
      event.preventDefault();
      options()[active()].click();
    } else if ((event.key === "ArrowDown" || event.key === "ArrowUp") && !event.altKey) {
      event.preventDefault();
      if (list.hidden) {
        if (shown && shown === box.value.trim()) open(true);
        else void ask();
        return;
      }
      const step = event.key === "ArrowDown" ? 1 : -1;
      // One place more than there are options: there nothing is chosen, and Enter sends what was typed.
      choose(((active() + 1 + step + many + 1) % (many + 1)) - 1);
    }
  }

  box.setAttribute("role", "combobox");
  box.setAttribute("aria-autocomplete", "list");
  box.setAttribute("aria-controls", list.id);
  box.setAttribute("aria-expanded", "false");
  box.addEventListener("input", () => {
    clearTimeout(timer);
    timer = window.setTimeout(() => void ask(), WAIT_MS);
  });
  box.addEventListener("keydown", move);
  box.addEventListener("blur", () => open(false));
  // The box keeps the focus while an option is pressed.
  list.addEventListener("pointerdown", (event) => event.preventDefault());
  form.addEventListener("submit", (event) => {
    clearTimeout(timer);
    asking.abort();
    if (!box.value.trim()) event.preventDefault();
  });
  document.addEventListener("keydown", (event) => {
    const isTyping = event.target instanceof Element && event.target.closest(WORDS_OWN);
    if (event.key !== "/" || event.ctrlKey || event.metaKey || event.altKey || isTyping || document.querySelector("dialog[open]")) return;
    event.preventDefault();
    box.focus();
    box.select();
  });
}
