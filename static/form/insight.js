// @ts-check
/** What is being typed stays in sight: the page scrolls so that neither the thumb's part nor a question covers the field. */

/** Less than this is no room for a field that is typed into. [px] */
const FIELD_LEAST = 84;

/** Tell the page how much of its foot the thumb's part covers, now and whenever that changes. @param {HTMLElement} thumb */
export function watchThumb(thumb) {
  const root = document.documentElement;
  const tell = () => {
    const { top, bottom, height } = thumb.getBoundingClientRect();
    const isAtFoot = height > 0 && bottom > innerHeight - 4 && thumb.offsetWidth > innerWidth * 0.6;
    root.style.scrollPaddingBlockEnd = isAtFoot ? `${Math.min(height, innerHeight * 0.75) + 8}px` : "";
    const head = document.querySelector(".head")?.getBoundingClientRect().height ?? 0;
    // Once tight, it stays so until there is room for the head too, or it would flicker between the two.
    root.toggleAttribute("data-tight", isAtFoot && top - head < FIELD_LEAST + (root.hasAttribute("data-tight") ? 24 : 0));
    const typed = document.activeElement;
    if (typed instanceof HTMLInputElement && "keypad" in typed.dataset) typed.closest(".field")?.scrollIntoView({ block: "nearest" });
  };
  new ResizeObserver(tell).observe(thumb);
  addEventListener("resize", tell);
  tell();
}

/** Bring a field and the question about it into sight, the field last. @param {HTMLElement|null} box @param {HTMLElement} look */
export function keepInSight(box, look) {
  if (look.closest(".panel")) look.scrollIntoView({ block: "nearest" });
  box?.scrollIntoView({ block: "nearest" });
  const covered = box ? box.getBoundingClientRect().bottom - coverOf(look) : 0;
  if (covered > 0 && !look.closest(".panel")) scrollBy(0, covered + 8);
}

/** Where what covers the page begins: the question itself where it lies apart, else the thumb's part. @param {HTMLElement} look */
function coverOf(look) {
  const place = getComputedStyle(look).position === "fixed" ? look : (look.closest(".thumb") ?? look);
  return place.getBoundingClientRect().top;
}
