// @ts-check
/** What is being typed stays in sight: the page scrolls so that neither the thumb's part nor a question covers the field. */

/** Less than this is no room for a field that is typed into. [px] */
const FIELD_LEAST = 84;
/** A panel under the thumb carries its fields itself: with keys, action and question it wants this. [px] */
const PANEL_LEAST = 420;
/** Where the keys stand beside the form, text as large as this leaves no room for field and question both. [px] */
const TEXT_LARGE = 22;

/** Tell the page how much of its foot the thumb's part covers, now and whenever that changes. @param {HTMLElement} thumb */
export function watchThumb(thumb) {
  const root = document.documentElement;
  const tell = () => {
    // Measured as it stands where there is room: what the tight layout leaves out would make room, and ask for the other again.
    const wasTight = root.hasAttribute("data-tight");
    root.removeAttribute("data-tight");
    const { top, bottom, height } = thumb.getBoundingClientRect();
    const isAtFoot = height > 0 && bottom > innerHeight - 4 && thumb.offsetWidth > innerWidth * 0.6;
    root.style.scrollPaddingBlockEnd = isAtFoot ? `${Math.min(height, innerHeight * 0.75) + 8}px` : "";
    root.toggleAttribute("data-tight", isTight(thumb, isAtFoot, top, wasTight));
    const typed = document.activeElement;
    if (typed instanceof HTMLInputElement && ("keypad" in typed.dataset || "count" in typed.dataset)) showBox(typed.closest(".field"));
  };
  new ResizeObserver(tell).observe(thumb); // it tells at once, when the page is next laid out
  addEventListener("resize", tell);
}

/** @param {HTMLElement} thumb @param {boolean} isAtFoot @param {number} top @param {boolean} wasTight once tight, it stays so until there is room for more than a field, or it would turn with each key */
function isTight(thumb, isAtFoot, top, wasTight) {
  if (thumb.querySelector(".panel")) return innerHeight < PANEL_LEAST && innerWidth < innerHeight * 1.5;
  if (!isAtFoot) return innerHeight < 540 && parseFloat(getComputedStyle(document.documentElement).fontSize) > TEXT_LARGE;
  const head = document.querySelector(".head")?.getBoundingClientRect().height ?? 0;
  return top - head < FIELD_LEAST + (wasTight ? 24 : 0);
}

/** What was refused in a box is what matters of it, where there is no room for all. @param {Element|null} box */
function showBox(box) {
  box?.scrollIntoView({ block: "nearest" });
  box?.querySelector("[data-refused]:not([hidden])")?.scrollIntoView({ block: "nearest" });
}

/** Bring a field and the question about it into sight, the field last. @param {HTMLElement|null} box @param {HTMLElement} look */
export function keepInSight(box, look) {
  if (look.closest(".panel")) look.scrollIntoView({ block: "nearest" });
  showBox(box);
  const covered = box ? box.getBoundingClientRect().bottom - coverOf(look) : 0;
  if (covered > 0 && !look.closest(".panel")) scrollBy(0, covered + 8);
}

/** Where what covers the page begins: the question itself where it lies apart, else the thumb's part. @param {HTMLElement} look */
function coverOf(look) {
  const place = getComputedStyle(look).position === "fixed" ? look : (look.closest(".thumb") ?? look);
  return place.getBoundingClientRect().top;
}
