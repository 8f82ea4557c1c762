// @ts-check
/**
 * A picture of the camera, drawn anew: small enough for a bad line, upright, and without the words that cameras write
 * into their files (where it was taken, when, with what).
 */
import { t } from "../../words/later.js";

const LONGER_PX = 1600; // a label or a dial can still be read
const QUALITY = 0.8;
/** Beyond this a phone may run out of memory by opening it. [bytes] */
export const BYTES_MOST = 40_000_000;
const TOO_LARGE = t("floor-enclosed-too_large", { most: BYTES_MOST / 1_000_000 });
const NO_PICTURE = t("floor-enclosed-no_picture");

/**
 * @param {Blob} file @returns {Promise<Blob>} a JPEG
 * @throws {Error} a sentence, where it is no picture or too large
 */
export async function shrink(file) {
  if (file.size > BYTES_MOST) throw new Error(TOO_LARGE);
  const drawn = await createImageBitmap(file, { imageOrientation: "from-image" }).catch(() => null);
  if (!drawn?.width) throw new Error(NO_PICTURE);
  const scale = Math.min(1, LONGER_PX / Math.max(drawn.width, drawn.height));
  const canvas = document.createElement("canvas");
  [canvas.width, canvas.height] = [Math.round(drawn.width * scale) || 1, Math.round(drawn.height * scale) || 1];
  const paper = canvas.getContext("2d", { alpha: false });
  if (!paper) throw new Error(NO_PICTURE);
  paper.fillStyle = "#fff";
  paper.fillRect(0, 0, canvas.width, canvas.height);
  paper.drawImage(drawn, 0, 0, canvas.width, canvas.height);
  drawn.close();
  const made = await new Promise((done) => canvas.toBlob(done, "image/jpeg", QUALITY));
  if (!(made instanceof Blob) || made.type !== "image/jpeg") throw new Error(NO_PICTURE);
  return made;
}
