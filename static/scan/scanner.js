// @ts-check
/**
 * Looks through the camera for a mark of ours. A code counts only by the mark in it, with a right check character;
 * whatever else a code says, it is reported as foreign and never followed.
 *
 * @typedef {{stop: () => void, torch: import("./camera.js").Torch}} Scan
 * @typedef {object} ScanEvents
 * @property {(mark: string) => void} onMark a mark in stored form; the same mark is told once until it left the view
 * @property {(sentence: string) => void} [onForeign] a code that is not one of ours; told once until it left the view
 * @property {() => void} [onDark] for a while it was too dark to find anything; told once
 * @property {(sentence: string) => void} [onStatus] what the scanner does, or why it stopped and what to do next
 */
import { parseMark } from "../trade/marks.js";
import { openCamera } from "./camera.js";
import { createDecoder } from "./decoder.js";
import { isDark } from "./light.js";
import { t } from "../words/later.js";

const FOREIGN = t("floor-scanner-this_code_is_not");
const SEVERAL = t("floor-scanner-several_marks_are_in");
const LOOKING = t("floor-scanner-hold_the_label_in");
const NUDGE = t("floor-scanner-nothing_found_yet_go");
const NUDGE_AFTER_MS = 5000;
const FORGET_AFTER_MS = 2000;
const DARK_AFTER_MS = 600; // a lens held for a moment against the coat is no dark cellar

/**
 * @param {HTMLVideoElement} video
 * @param {ScanEvents & {wasmUrl?: string, decoder?: Pick<ReturnType<typeof createDecoder>, "decode">}} options
 * @returns {Promise<Scan>}
 * @throws {import("./camera.js").CameraError} its message says what to do; it was told to `onStatus` as well
 */
export async function startScan(video, { onMark, onForeign, onDark, onStatus, wasmUrl, decoder }) {
  const eyes = decoder ?? createDecoder({ wasmUrl });
  let status = "";
  /** @param {string} sentence */
  const tell = (sentence) => {
    if (sentence !== status) onStatus?.((status = sentence));
  };
  const camera = await openCamera(video, { onEnd: (reason) => tell(reason.message) }).catch((reason) => {
    tell(reason.message);
    throw reason;
  });
  let isStopped = false;
  const stop = () => {
    isStopped = true;
    camera.stop();
  };

  let told = "";
  let lastSeenAt = -Infinity;
  let lastFindAt = performance.now();
  let lightAt = performance.now(); // when it was last bright enough; Infinity once that was told
  tell(LOOKING);
  /** @param {ImageData} frame */
  const look = async (frame) => {
    let found;
    try {
      found = await eyes.decode(frame);
    } catch (reason) {
      stop();
      tell(reason instanceof Error ? reason.message : String(reason));
      return;
    }
    if (isStopped) return;
    const now = performance.now();
    if (now - lastSeenAt > FORGET_AFTER_MS) told = "";
    if (found.length > 0 || !isDark(frame)) lightAt = Math.max(lightAt, now);
    else if (now - lightAt > DARK_AFTER_MS) {
      lightAt = Infinity;
      onDark?.();
    }
    if (found.length === 0) {
      if (now - lastFindAt > NUDGE_AFTER_MS) tell(NUDGE);
      return;
    }
    lastSeenAt = lastFindAt = now;
    const { marks, sentence } = sortOut(found.map(({ text }) => text));
    if (marks.length > 1) {
      tell(SEVERAL); // Which vessel is meant is not for us to guess.
    } else if (marks.length === 1) {
      tell(LOOKING);
      if (told !== marks[0]) onMark((told = marks[0]));
    } else if (told !== sentence) {
      onForeign?.((told = sentence));
    }
  };
  // Not before the caller holds what this function returns: the first mark may make it call stop().
  setTimeout(() => camera.frames(look));
  return { stop, torch: camera.torch };
}

/**
 * @param {string[]} texts what the codes in one picture say
 * @returns {{marks: string[], sentence: string}} our marks, each once; and why the first of the others is none
 */
export function sortOut(texts) {
  /** @type {Set<string>} */ const marks = new Set();
  let sentence = "";
  for (const text of texts) {
    try {
      marks.add(parseMark(text));
    } catch {
      // Our own label with a wrong check character is as foreign as any other code: it was printed by someone else.
      sentence ||= FOREIGN;
    }
  }
  return { marks: [...marks], sentence };
}
