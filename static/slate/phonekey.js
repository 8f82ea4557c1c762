// @ts-check
/** How this phone comes to its key, and the book to the public half of it (signing.js). Fetched when there is something to do. */
import { ask } from "./ask.js";
import { META, getMeta, write } from "./db.js";
import { base64url } from "./signing.js";
import { t } from "../words/later.js";

/** @typedef {import("./signing.js").Signing} Signing */

const CURVE = { name: "ECDSA", namedCurve: "P-256" };
let isUnable = false;

/**
 * Make this phone's key where it has none, and bring the public half to the book where the book has another or none.
 * @param {string} device as the book calls this phone @param {string} known the thumbprint of its key in the book, or ""
 */
export async function introduceKey(device, known) {
  const signing = await ownKey(device);
  if (!signing || signing.id === known) return;
  const { x, y, from_seq } = signing;
  await ask("/api/phone-key", { body: { x, y, from_seq } });
}

/** @param {string} device @returns {Promise<Signing | null>} null where this browser can make or keep no key */
async function ownKey(device) {
  const kept = await getMeta("signing");
  if (kept?.device === device) return kept;
  if (isUnable || !globalThis.crypto?.subtle) return null;
  try {
    const pair = await crypto.subtle.generateKey(CURVE, false, ["sign", "verify"]);
    const { x = "", y = "" } = await crypto.subtle.exportKey("jwk", pair.publicKey);
    const text = `{"crv":"P-256","kty":"EC","x":"${x}","y":"${y}"}`;
    const id = base64url(new Uint8Array(await crypto.subtle.digest("SHA-256", new TextEncoder().encode(text))));
    return await write([META], async (tx) => {
      const meta = tx.objectStore(META);
      const [other, counted] = await Promise.all([meta.get("signing"), meta.get(`seq:${device}`)]);
      if (other?.device === device) return other; // another tab was quicker
      const signing = { id, device, x, y, from_seq: counted ?? 0 };
      await Promise.all([meta.put(pair.privateKey, "signing_key"), meta.put(signing, "signing")]);
      return signing;
    });
  } catch (error) {
    console.warn(t("floor-phonekey-this_browser_keeps_no"), error);
    isUnable = true;
    return null;
  }
}
