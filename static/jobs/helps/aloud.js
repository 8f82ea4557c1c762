// @ts-check
/** Figures read back by the phone's own voice. Only voices that lie on the phone: the others send what they say away. */
import { language } from "../../kinds/kinds.js";
import { t } from "../../words/later.js";

/** After the last key a figure is read back once; a field that is left says it at once. [ms] */
const PAUSE_MS = 1400;
/** @type {Record<string, string>} signs that a voice reads badly */
const SPOKEN = { "°C": t("floor-aloud-degrees"), "°F": t("floor-aloud-degrees_fahrenheit"), "% vol": t("floor-aloud-percent"), L: t("floor-aloud-litres"), kg: t("floor-aloud-kilos"), g: t("floor-aloud-grams"), SG: "", "°Bx": t("floor-aloud-brix"), gal: t("floor-aloud-gallons"), lb: t("floor-aloud-pounds") };

/** @returns {Promise<SpeechSynthesisVoice|null>} an English voice of this phone, British first; null where there is none */
export async function localVoice() {
  const speech = globalThis.speechSynthesis;
  if (!speech) return null;
  const own = () => speech.getVoices().filter((voice) => voice.localService && voice.lang.split(/[-_]/)[0].toLowerCase() === language());
  if (!speech.getVoices().length) { // they come late in some browsers
    await new Promise((resolve) => {
      speech.addEventListener?.("voiceschanged", resolve, { once: true });
      setTimeout(resolve, 1500);
    });
  }
  return own().find((voice) => /GB/i.test(voice.lang)) ?? own()[0] ?? null;
}

/** @param {string} words @param {SpeechSynthesisVoice} voice */
export function sayAloud(words, voice) {
  const said = new SpeechSynthesisUtterance(words);
  [said.voice, said.lang] = [voice, voice.lang];
  speechSynthesis.cancel(); // what is said now is newer
  speechSynthesis.speak(said);
}

export async function startAloud() {
  const voice = await localVoice();
  if (!voice) return;
  let [said, pause] = ["", 0];
  const read = (/** @type {EventTarget|null} */ target) => {
    clearTimeout(pause);
    if (!(target instanceof HTMLInputElement) || target.dataset.keypad === undefined || target.dataset.keypad === "digits") return;
    const words = figureWords(target);
    if (words && words !== said) sayAloud((said = words), voice);
  };
  document.addEventListener("input", ({ target }) => {
    clearTimeout(pause);
    pause = setTimeout(() => read(target), PAUSE_MS);
  });
  document.addEventListener("focusout", ({ target }) => read(target));
  document.addEventListener("asked", () => requestAnimationFrame(() => {
    const words = document.querySelector(".look p")?.textContent?.replace(/\s+/g, " ").trim();
    if (words) sayAloud(words, voice);
  }));
}

/** "Gravity, strained juice: 1.031". A comma would be read as thousands. @param {HTMLInputElement} input */
function figureWords(input) {
  const typed = input.value.trim().replace(",", ".");
  if (!/^[-−]?\d*\.?\d+$/.test(typed)) return "";
  const label = input.labels?.[0]?.textContent?.replace(/\*|\(may stay empty\)/g, "").trim() ?? "";
  const unit = /** @type {HTMLSelectElement|null} */ (document.querySelector(`select[data-unit-for="${CSS.escape(input.id)}"]`))?.selectedOptions[0]?.text ?? input.dataset.unit ?? "";
  return `${label}: ${typed.replace("−", t("floor-aloud-minus"))} ${SPOKEN[unit.trim()] ?? unit}`.trim();
}
