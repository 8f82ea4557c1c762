// @ts-check
/**
 * The page on which a phone learns to trust: one step at a time, and after each it is tried whether the phone trusts.
 *
 * All that a page can learn is whether a small picture comes over https from the house. It comes: the phone trusts. It does
 * not: no trust yet, or no way to that port; browsers keep the reason to themselves, so the page says the likely one as such.
 */
const WAIT_MS = 8000;
const GO_ON_MS = 1500;
const place = /** @type {HTMLElement} */ (document.querySelector("[data-trust]"));
const { kind = "", seen = "", next = "/" } = place.dataset;
const steps = /** @type {HTMLElement[]} */ ([...place.querySelectorAll("[data-step]")]);
const KEPT = `trust-step-${kind}`;

/** @param {string} name @returns {HTMLElement} */
const part = (name) => /** @type {HTMLElement} */ (place.querySelector(`[data-part="${name}"]`));

let at = Math.min(Number(recall()) || 0, steps.length - 1);
let isAsking = false;
let isTrusted = false;
/** All steps were done, by the person's word. */
let isDone = false;

function recall() {
  try {
    return sessionStorage.getItem(KEPT);
  } catch {
    return null; // storage may be shut in a plain page
  }
}

/** @returns {Promise<boolean>} whether a picture came over https from the house */
function seesPicture() {
  return new Promise((resolve) => {
    const picture = new Image();
    const timer = setTimeout(() => resolve(false), WAIT_MS);
    const end = (/** @type {boolean} */ is) => () => {
      clearTimeout(timer);
      resolve(is);
    };
    picture.onload = end(true);
    picture.onerror = end(false);
    picture.src = `${seen}?${Date.now()}`;
  });
}

async function ask() {
  if (!seen || isAsking || isTrusted) return;
  isAsking = true;
  isTrusted = await seesPicture();
  isAsking = false;
  show();
  if (isTrusted && "plain" in place.dataset) setTimeout(() => location.assign(next), GO_ON_MS);
}

function show() {
  try {
    sessionStorage.setItem(KEPT, String(at));
  } catch {
    // then a reload begins at the first step
  }
  part("state").hidden = !seen;
  const { trusted = "", notYet = "", counted = "" } = part("state").dataset;
  const step = counted.replace("{at}", String(at + 1)).replace("{many}", String(steps.length));
  part("state").textContent = isTrusted ? trusted : isDone ? notYet : step;
  place.dataset.state = isTrusted ? "trusted" : isDone ? "wrong" : "step";
  part("steps").hidden = isTrusted;
  part("onward").hidden = !isTrusted;
  steps.forEach((step, n) => (step.hidden = n !== at));
  part("wrong").hidden = part("closed").hidden = !isDone;
  part("moves").hidden = false;
  /** @type {HTMLElement} */ (place.querySelector("[data-do=back]")).hidden = at === 0;
  const done = /** @type {HTMLElement} */ (place.querySelector("[data-do=done]"));
  done.textContent = (isDone ? done.dataset.again : done.dataset.done) ?? "";
}

place.addEventListener("click", (event) => {
  const tapped = /** @type {HTMLElement} */ (event.target).closest("[data-do]");
  if (!(tapped instanceof HTMLElement)) return;
  if (tapped.dataset.do === "back") {
    at = Math.max(0, at - 1);
    isDone = false;
  } else if (at < steps.length - 1) at += 1;
  else isDone = true;
  show();
  void ask();
});
// Back from the settings of the phone.
document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && void ask());
addEventListener("pageshow", () => void ask());
addEventListener("focus", () => void ask());

// An iPad calls itself a Mac; only its touch tells.
if (kind === "mac" && navigator.maxTouchPoints > 1 && !location.search) location.replace("?for=iphone");
else {
  show();
  void ask();
}
