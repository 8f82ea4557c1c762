// @ts-check
/** A note that is spoken: recorded on the phone, kept like a picture, and handed in like one. */
import { addToForm } from "../enclosed/add.js";
import { canEnclose, keep } from "../../slate/enclosures.js";
import { controlOf } from "../../form/values.js";
import { html, render } from "../../vendor/lit-html/lit-html.js";
import { t } from "../../words/later.js";

const LONGEST_S = 120;
const BITS = 24_000; // speech stays clear; two minutes are some 360 KB
const TYPES = ["audio/webm;codecs=opus", "audio/mp4", "audio/ogg;codecs=opus"];

/** @returns {string} a type that this phone records, or "" */
function typeHere() {
  if (!canEnclose() || !("MediaRecorder" in globalThis) || !navigator.mediaDevices?.getUserMedia) return "";
  return TYPES.find((type) => MediaRecorder.isTypeSupported(type)) ?? "";
}

/** Offer to speak a note, where the phone can. @param {HTMLFormElement} form @param {HTMLElement} place */
export function offerVoice(form, place) {
  const type = typeHere();
  if (!type) return;
  /** @type {{recorder: MediaRecorder | null, since: number, words: string}} */
  const state = { recorder: null, since: 0, words: "" };
  let timer = 0;
  const seconds = () => Math.round((Date.now() - state.since) / 1000);
  const show = () => render(html`<div class="voice"><button type="button" class="button" aria-pressed=${String(Boolean(state.recorder))} @click=${tap}>
      ${state.recorder ? t("floor-note-stop", { seconds: seconds() }) : t("floor-note-speak_it")}</button><p role="status">${state.recorder ? t("floor-note-recording") : state.words}</p></div>`, place);
  const stop = () => state.recorder?.state === "recording" && state.recorder.stop();
  const tap = () => (state.recorder ? stop() : void begin());
  const begin = async () => {
    const stream = await navigator.mediaDevices.getUserMedia({ audio: { channelCount: 1, noiseSuppression: true } }).catch(() => null);
    if (!stream) return say(t("floor-note-no_microphone"));
    /** @type {Blob[]} */
    const parts = [];
    const recorder = new MediaRecorder(stream, { mimeType: type, audioBitsPerSecond: BITS });
    recorder.ondataavailable = ({ data }) => void parts.push(data);
    recorder.onstop = () => {
      clearInterval(timer);
      stream.getTracks().forEach((track) => track.stop());
      state.recorder = null;
      void done(new Blob(parts, { type }), Math.max(1, seconds()));
    };
    recorder.start();
    Object.assign(state, { recorder, since: Date.now(), words: "" });
    timer = setInterval(() => {
      show();
      if (seconds() >= LONGEST_S) stop();
    }, 500);
    show();
  };
  const done = async (/** @type {Blob} */ blob, /** @type {number} */ length) => {
    try {
      const { sha256 } = await keep(blob);
      addToForm(form, sha256, blob.type.split(";")[0]);
      const text = controlOf(form, "text");
      if (text && !text.value.trim()) {
        text.value = t("floor-note-voice_note_seconds", { seconds: length });
        text.dispatchEvent(new Event("input", { bubbles: true }));
      }
      say("");
    } catch (error) {
      say(/** @type {any} */ (error)?.message ?? String(error));
    }
  };
  const say = (/** @type {string} */ words) => {
    state.words = words;
    show();
  };
  show();
}
