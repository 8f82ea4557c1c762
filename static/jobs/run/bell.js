// @ts-check
/** A tone and a buzz when a cut is near, beside the words and never instead of them. It must be switched on by a tap. */

const KEPT = "cut-sound";
const TONES_HZ = [660, 880];
const TONE_S = 0.35;

/** @type {AudioContext|null} */
let audio = null;
/** What has been rung for, so that one cut rings once. */
let rungFor = "";

export const isOn = () => localStorage.getItem(KEPT) === "on";

/** A browser sounds only after a tap: after a reload the next tap, wherever, wakes it. @returns {boolean} */
export const isAwake = () => audio?.state === "running";

/** @param {boolean} on called from a tap */
export async function setOn(on) {
  localStorage.setItem(KEPT, on ? "on" : "off");
  if (!on) return audio?.suspend();
  await wake();
  sound();
}

/** Let any tap of the page wake the sound, where it was switched on before. */
export function wakeByAnyTap() {
  document.addEventListener("pointerdown", () => void (isOn() && wake()), { capture: true });
}

async function wake() {
  try {
    audio ??= new AudioContext();
    await audio.resume();
  } catch {
    // No sound on this phone: the words stand.
  }
}

/** Ring once for a cut that is near. @param {string} what names run and cut @returns {boolean} whether it rang just now */
export function ringFor(what) {
  if (!isOn() || rungFor === what) return false;
  rungFor = what;
  navigator.vibrate?.([250, 150, 250]);
  sound();
  return true;
}

function sound() {
  if (!audio || audio.state !== "running") return;
  TONES_HZ.forEach((hertz, n) => {
    const context = /** @type {AudioContext} */ (audio);
    const [tone, volume] = [context.createOscillator(), context.createGain()];
    const begin = context.currentTime + n * TONE_S;
    tone.frequency.value = hertz;
    volume.gain.setValueAtTime(0.0001, begin);
    volume.gain.exponentialRampToValueAtTime(0.3, begin + 0.03);
    volume.gain.exponentialRampToValueAtTime(0.0001, begin + TONE_S);
    tone.connect(volume).connect(context.destination);
    tone.start(begin);
    tone.stop(begin + TONE_S);
  });
}
