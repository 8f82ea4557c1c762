// @ts-check
/**
 * Parts of a page that take longer than the rest come after it: each `data-same` of the page that a link leads to takes
 * the place of its namesake. Without script, or where that page does not answer, the link leads there.
 */

/** @param {HTMLAnchorElement} link */
export async function fillFrom(link) {
  const answer = await fetch(link.href).catch(() => null);
  if (!answer?.ok) return;
  const page = new DOMParser().parseFromString(await answer.text(), "text/html");
  const here = /** @type {HTMLElement[]} */ ([...document.querySelectorAll("[data-same]")]);
  for (const made of /** @type {NodeListOf<HTMLElement>} */ (page.querySelectorAll("[data-same]"))) {
    here.find((part) => part.dataset.same === made.dataset.same)?.replaceWith(made);
  }
}
