// @ts-check
/**
 * Finds QR symbols in pictures. The browser's own detector where it reads QR codes; else the vendored reader, fetched
 * from this site when first needed. Each picture gets a quick pass, then as many harder ones as the time allows; the
 * next picture goes on where this one stopped, so in a live view every pass has its turn.
 *
 * @typedef {import("./picture.js").Grey} Grey
 * @typedef {{text: string}} Found
 */
import { againstPaper, busiest, evenOut, stretch, threshold } from "./light.js";
import { crop, greyOf, imageOf, shrink, transpose, unbend } from "./picture.js";
import { t } from "../words/later.js";

const WASM_URL = new URL("../vendor/zxing-wasm/reader/zxing_reader.wasm", import.meta.url).href;
const FRAME_BUDGET_MS = 60;
const NATIVE_TRIES = 10; // Pictures in which the browser's own detector may find nothing before the reader helps it.
const SIDE_MIN = 21; // The smallest symbol has 21 modules: fewer pixels hold none.

const OPTIONS = { formats: ["QRCode"], tryHarder: true, tryRotate: true, tryInvert: false, maxNumberOfSymbols: 4 };
const TWO_TONE = { ...OPTIONS, binarizer: "FixedThreshold", tryDownscale: false };

/** What the passes of one picture share, each part made when first asked for. @param {Grey} full */
function partsOf(full) {
  /** @type {Grey | undefined} */ let half;
  /** @type {{x: number, y: number} | undefined} */ let middle;
  const parts = {
    full,
    // A picture that is small already is not shrunk: its modules would run together.
    half: () => (half ??= Math.min(full.width, full.height) < 480 ? full : shrink(full, 2)),
    middle: () => (middle ??= busiest(parts.half())),
    /** @param {number} share radius as a share of the shorter side @param {boolean} lying the cylinder's axis is level */
    unbent: (share, lying) => {
      const picture = parts.half();
      const { x, y } = parts.middle();
      const radius = share * Math.min(picture.width, picture.height);
      const part = crop(picture, x - 1.6 * radius, y - 1.6 * radius, 3.2 * radius, 3.2 * radius);
      const turned = lying ? transpose(part) : part;
      return unbend(turned, turned.width / 2, radius);
    },
    /** @returns {Grey} the liveliest part at full size */
    close: () => {
      const by = full.width / parts.half().width;
      const side = 0.85 * Math.min(full.width, full.height);
      return crop(full, parts.middle().x * by - side / 2, parts.middle().y * by - side / 2, side, side);
    },
  };
  return parts;
}

/** @typedef {ReturnType<typeof partsOf>} Parts */
/** @type {{name: string, picture: (parts: Parts) => Grey, options: object}[]} measured one by one: docs/labels.md */
export const HARD_PASSES = [
  { name: "full size", picture: (parts) => parts.full, options: OPTIONS },
  { name: "own paper", picture: (parts) => againstPaper(parts.half(), 25, 0.6), options: TWO_TONE },
  { name: "own light", picture: (parts) => threshold(parts.half(), 10), options: TWO_TONE },
  { name: "own light, close", picture: (parts) => threshold(parts.close(), 20, 1), options: TWO_TONE },
  { name: "evened", picture: (parts) => evenOut(parts.full, 20), options: OPTIONS },
  { name: "unrolled", picture: (parts) => threshold(parts.unbent(0.28, false), 10), options: TWO_TONE },
  { name: "stretched", picture: (parts) => stretch(shrink(parts.full, 3)), options: OPTIONS },
  { name: "unrolled, lying", picture: (parts) => threshold(parts.unbent(0.28, true), 10), options: TWO_TONE },
  { name: "unrolled, narrow", picture: (parts) => threshold(parts.unbent(0.21, false), 10), options: TWO_TONE },
  { name: "unrolled, as it is", picture: (parts) => parts.unbent(0.28, false), options: OPTIONS },
  { name: "own light, soft", picture: (parts) => threshold(parts.close(), 30, 2), options: TWO_TONE },
  { name: "unrolled, wide", picture: (parts) => threshold(parts.unbent(0.4, false), 10), options: TWO_TONE },
];

/**
 * @param {{wasmUrl?: string, useNative?: boolean}} [options]
 * @returns {{decode: (picture: ImageData | ImageBitmap, options?: {budgetMs?: number}) => Promise<Found[]>,
 *   lastPass: () => string}}
 */
export function createDecoder({ wasmUrl = WASM_URL, useNative = true } = {}) {
  /** @type {Promise<any> | undefined} */ let native;
  /** @type {Promise<(image: ImageData, options: object) => Promise<Found[]>> | undefined} */ let reader;
  let nativeMisses = 0;
  let turn = 0;
  let lastPass = "";

  /** @param {Grey} grey @param {object} options */
  const read = async (grey, options) => {
    reader ??= loadReader(wasmUrl);
    const pending = reader;
    pending.catch(() => (reader = undefined)); // The next picture tries again: the signal may be back.
    return (await (await pending)(imageOf(grey), options)).map(({ text }) => ({ text }));
  };

  return {
    lastPass: () => lastPass,
    async decode(picture, { budgetMs = FRAME_BUDGET_MS } = {}) {
      const started = performance.now();
      const own = useNative ? await (native ??= nativeDetector()) : null;
      if (own) {
        lastPass = "browser";
        const found = await own.detect(picture).catch(() => []);
        if (found.length > 0) nativeMisses = 0;
        if (found.length > 0 || (nativeMisses += 1) < NATIVE_TRIES) {
          return found.map((/** @type {{rawValue: string}} */ { rawValue }) => ({ text: rawValue }));
        }
      }
      if (Math.min(picture.width, picture.height) < SIDE_MIN) return [];
      const parts = partsOf(greyOf(pixelsOf(picture)));
      lastPass = "half size";
      let found = await read(parts.half(), OPTIONS);
      // At least one hard pass a picture, however slow the phone; never one of them twice.
      for (let tried = 0; found.length === 0 && tried < HARD_PASSES.length; tried += 1) {
        if (tried > 0 && performance.now() - started >= budgetMs) break;
        await new Promise((resolve) => setTimeout(resolve)); // Taps go first.
        const pass = HARD_PASSES[turn];
        turn = (turn + 1) % HARD_PASSES.length;
        lastPass = pass.name;
        found = await read(pass.picture(parts), pass.options);
      }
      return found;
    },
  };
}

/** @returns {Promise<any>} the browser's detector where it names QR codes: the class alone proves nothing */
async function nativeDetector() {
  const Detector = /** @type {any} */ (globalThis).BarcodeDetector;
  const formats = await Promise.resolve(Detector?.getSupportedFormats?.()).catch(() => []);
  return formats?.includes("qr_code") ? new Detector({ formats: ["qr_code"] }) : null;
}

/** @param {string} wasmUrl */
async function loadReader(wasmUrl) {
  try {
    const { prepareZXingModule, purgeZXingModule, readBarcodes } = await import("../vendor/zxing-wasm/reader/index.js");
    purgeZXingModule();
    await prepareZXingModule({ overrides: { locateFile: () => wasmUrl }, fireImmediately: true });
    return readBarcodes;
  } catch (cause) {
    throw new Error(t("floor-decoder-the_label_reader_is"), {
      cause,
    });
  }
}

/** @param {ImageData | ImageBitmap} picture @returns {ImageData} */
function pixelsOf(picture) {
  if (picture instanceof ImageData) return picture;
  const canvas = document.createElement("canvas");
  [canvas.width, canvas.height] = [picture.width, picture.height];
  const pen = canvas.getContext("2d", { willReadFrequently: true });
  if (!pen) throw new Error(t("floor-decoder-this_browser_cannot_look"));
  pen.drawImage(picture, 0, 0);
  return pen.getImageData(0, 0, picture.width, picture.height);
}
