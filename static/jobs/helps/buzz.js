// @ts-check
/** A phone in a glove or a pocket is felt: one short tick for what was logged, another pattern for each weight of question. */
import { listen } from "../../slate/news.js";

/** @type {Record<string, number[]>} on and off by turns [ms] */
export const PATTERNS = { logged: [25], ask: [40, 90, 40], stop: [120, 90, 120, 90, 120] };

export const hasBuzz = () => "vibrate" in navigator && matchMedia("(pointer: coarse)").matches;

/** @param {string} what */
export const buzz = (what) => void navigator.vibrate?.(PATTERNS[what] ?? PATTERNS.ask);

/** @param {() => boolean} isOn */
export function startBuzz(isOn) {
  if (!hasBuzz()) return;
  listen("slate", (detail) => detail?.id && !document.hidden && isOn() && buzz("logged"));
  document.addEventListener("asked", (event) => isOn() && buzz(/** @type {CustomEvent} */ (event).detail));
}
