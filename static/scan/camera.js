// @ts-check
/**
 * The phone's camera: opened on the back lens, with its torch where it has one, stopped when the page is hidden.
 * Every failure is a sentence that says what to do next.
 *
 * @typedef {{available: boolean, set: (on: boolean) => Promise<boolean>}} Torch `set` answers whether the torch obeyed
 * @typedef {(frame: ImageData) => void | Promise<void>} OnFrame
 * @typedef {{torch: Torch, stop: () => void, frames: (callback: OnFrame) => void}} Camera
 */
import { t } from "../words/later.js";

const LONG_SIDE_MAX = 1280;
const PAUSE_MS_MIN = 40;

const SENTENCES = {
  insecure: t("floor-camera-the_camera_works_only"),
  unsupported: t("floor-camera-this_browser_offers_no"),
  none: t("floor-camera-no_camera_was_found"),
  refused: t("floor-camera-the_camera_is_not"),
  busy: t("floor-camera-another_app_is_using"),
  hidden: t("floor-camera-the_camera_stopped_because"),
  ended: t("floor-camera-the_camera_stopped_tap"),
  other: t("floor-camera-the_camera_did_not"),
};

/** Why there is no picture: `message` says what to do, `code` names the reason. */
export class CameraError extends Error {
  /** @param {keyof typeof SENTENCES} code @param {unknown} [cause] */
  constructor(code, cause) {
    super(SENTENCES[code], { cause });
    this.name = "CameraError";
    this.code = code;
  }
}

/**
 * @param {HTMLVideoElement} video shows the picture
 * @param {{onEnd?: (reason: CameraError) => void}} [options] `onEnd` is told when the camera stops by itself
 * @returns {Promise<Camera>}
 * @throws {CameraError}
 */
export async function openCamera(video, { onEnd } = {}) {
  if (!globalThis.isSecureContext) throw new CameraError("insecure");
  if (!navigator.mediaDevices?.getUserMedia) throw new CameraError("unsupported");
  const stream = await navigator.mediaDevices
    .getUserMedia({
      audio: false,
      // `ideal`, never `exact`: a desk machine has no back lens, and some phones do not name theirs.
      video: { facingMode: { ideal: "environment" }, width: { ideal: 1280 }, height: { ideal: 720 } },
    })
    .catch((error) => {
      throw new CameraError(reasonOf(error), error);
    });
  const [track] = stream.getVideoTracks();
  let isOpen = true;

  const stop = () => {
    isOpen = false;
    document.removeEventListener("visibilitychange", stopIfHidden);
    for (const each of stream.getTracks()) each.stop();
    if (video.srcObject === stream) video.srcObject = null;
  };
  /** @param {keyof typeof SENTENCES} code */
  const end = (code) => {
    if (!isOpen) return;
    stop();
    onEnd?.(new CameraError(code));
  };
  const stopIfHidden = () => {
    if (document.hidden) end("hidden");
  };
  document.addEventListener("visibilitychange", stopIfHidden);
  track.addEventListener("ended", () => end("ended"));

  // Without these two, iPhones refuse to play, or play over the whole screen.
  video.setAttribute("playsinline", "");
  video.muted = true;
  video.srcObject = stream;
  try {
    await video.play();
  } catch (cause) {
    stop();
    throw new CameraError("other", cause);
  }
  if (document.hidden) {
    stop();
    throw new CameraError("hidden");
  }

  return {
    torch: torchOf(track),
    stop,
    frames: (callback) => void lookOn(video, callback, () => isOpen),
  };
}

/** @param {unknown} error @returns {keyof typeof SENTENCES} */
function reasonOf(error) {
  switch (error instanceof Error ? error.name : "") {
    case "NotAllowedError":
    case "SecurityError":
      return "refused";
    case "NotFoundError":
    case "OverconstrainedError":
      return "none";
    case "NotReadableError":
    case "AbortError":
      return "busy";
    default:
      return "other";
  }
}

/** @param {MediaStreamTrack} track @returns {Torch} */
function torchOf(track) {
  // What the track can do, not what the browser knows of: getSupportedConstraints names the torch everywhere.
  const abilities = /** @type {{torch?: boolean}} */ (track.getCapabilities?.() ?? {});
  return {
    available: Boolean(abilities.torch),
    async set(on) {
      if (!abilities.torch) return false;
      const wish = /** @type {MediaTrackConstraintSet} */ ({ torch: on });
      return track.applyConstraints({ advanced: [wish] }).then(
        () => true,
        () => false,
      );
    },
  };
}

/** @param {HTMLVideoElement} video @param {OnFrame} callback @param {() => boolean} isOpen */
async function lookOn(video, callback, isOpen) {
  const canvas = document.createElement("canvas");
  const pen = canvas.getContext("2d", { willReadFrequently: true });
  while (isOpen() && pen) {
    const started = performance.now();
    const scale = Math.min(1, LONG_SIDE_MAX / Math.max(video.videoWidth, video.videoHeight, 1));
    const [width, height] = [Math.round(video.videoWidth * scale), Math.round(video.videoHeight * scale)];
    if (width > 0 && height > 0) {
      if (canvas.width !== width || canvas.height !== height) [canvas.width, canvas.height] = [width, height];
      pen.drawImage(video, 0, 0, width, height);
      await callback(pen.getImageData(0, 0, width, height));
    }
    // A slow phone rests as long as it worked: half the time belongs to taps and to the picture on the screen.
    await new Promise((resolve) => setTimeout(resolve, Math.max(PAUSE_MS_MIN, performance.now() - started)));
  }
}
