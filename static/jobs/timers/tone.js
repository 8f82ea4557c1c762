// @ts-check
/** A short tone and a buzz, where the platform gives them; a browser sounds only after a tap. Nothing is ever said by them alone. */

const TONES_HZ = [660, 880];
const TONE_S = 0.35;

/** @type {AudioContext|null} */
let audio = null;

/** @returns {boolean} whether a tone would be heard now */
export const isAwake = () => audio?.state === "running";

/** Called from a tap. */
export async function wake() {
  try {
    audio ??= new AudioContext();
    await audio.resume();
  } catch {
    // No sound on this phone: the words stand.
  }
}

export const rest = () => void audio?.suspend();

/** Let any tap of the page wake the sound: after a reload nothing else may. @param {() => boolean} isWanted */
export function wakeByAnyTap(isWanted) {
  document.addEventListener("pointerdown", () => void (isWanted() && wake()), { capture: true });
}

export function buzz() {
  navigator.vibrate?.([250, 150, 250]);
}

export function sound() {
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
