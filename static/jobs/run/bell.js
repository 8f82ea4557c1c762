// @ts-check
/** A tone and a buzz when a cut is near, beside the words and never instead of them. It must be switched on by a tap. */
import { buzz, isAwake, rest, sound, wake, wakeByAnyTap as listenForTaps } from "../timers/tone.js";

const KEPT = "cut-sound";
/** What has been rung for, so that one cut rings once. */
let rungFor = "";

export const isOn = () => localStorage.getItem(KEPT) === "on";

/** @param {boolean} on called from a tap */
export async function setOn(on) {
  localStorage.setItem(KEPT, on ? "on" : "off");
  if (!on) return rest();
  await wake();
  sound();
}

/** Let any tap of the page wake the sound, where it was switched on before. */
export const wakeByAnyTap = () => listenForTaps(isOn);

/** Ring once for a cut that is near. @param {string} what names run and cut @returns {boolean} whether it rang just now */
export function ringFor(what) {
  if (!isOn() || rungFor === what) return false;
  rungFor = what;
  buzz();
  sound();
  return true;
}

export { isAwake };
