// @ts-check
/**
 * This phone's own key, and its signature under each entry that is logged here. The private half is made by the
 * browser, lies in the slate's database, and can be taken out by nobody. Twin: webapp/book/record/signing.py.
 * Without it (no https, an older browser) entries are logged as before, unsigned.
 */
import { ask } from "./ask.js";
import { META, getMeta, write } from "./db.js";

/** @typedef {import("./entry.js").Entry} Entry */
/** @typedef {{id: string, device: string, x: string, y: string, from_seq: number}} Signing the public half: `id` is its thumbprint (RFC 7638); all above `from_seq` is signed */

const PURPOSE = "cellarslate entry 1\n"; // a signature under something else is never one under an entry
const CURVE = { name: "ECDSA", namedCurve: "P-256" };
const HOW = { name: "ECDSA", hash: "SHA-256" };
const encoder = new TextEncoder();
let isUnable = false;

/**
 * The one form of JSON that is signed: names sorted, no spaces (RFC 8785, for texts, whole numbers, lists and objects
 * with names in ASCII).
 * @param {any} value @returns {string}
 */
export function canonical(value) {
  if (Array.isArray(value)) return `[${value.map(canonical).join(",")}]`;
  if (value === null || typeof value !== "object") return JSON.stringify(value);
  return `{${Object.keys(value).sort().map((name) => `${JSON.stringify(name)}:${canonical(value[name])}`).join(",")}}`;
}

/** @param {Entry} entry not signed yet @returns {Uint8Array<ArrayBuffer>} what is signed of it */
export const signedBytes = (entry) => encoder.encode(PURPOSE + canonical(entry));

/**
 * @param {Entry} entry @param {Signing | undefined} signing @param {CryptoKey | undefined} key
 * @returns {Promise<Entry>} with its signature; as it is where this phone has no key: what was read is logged either way
 */
export async function signed(entry, signing, key) {
  if (!key || signing?.device !== entry.device) return entry;
  try {
    const raw = await crypto.subtle.sign(HOW, key, signedBytes(entry));
    return { ...entry, signature: `${signing.id}.${base64url(new Uint8Array(raw))}` };
  } catch (error) {
    console.error(error);
    return entry;
  }
}

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
    const id = base64url(new Uint8Array(await crypto.subtle.digest("SHA-256", encoder.encode(text))));
    return await write([META], async (tx) => {
      const meta = tx.objectStore(META);
      const [other, counted] = await Promise.all([meta.get("signing"), meta.get(`seq:${device}`)]);
      if (other?.device === device) return other; // another tab was quicker
      const signing = { id, device, x, y, from_seq: counted ?? 0 };
      await Promise.all([meta.put(pair.privateKey, "signing_key"), meta.put(signing, "signing")]);
      return signing;
    });
  } catch (error) {
    console.warn("This browser keeps no key, so entries are not signed.", error);
    isUnable = true;
    return null;
  }
}

/** @param {Uint8Array} bytes */
const base64url = (bytes) => btoa(String.fromCharCode(...bytes)).replace(/\+/g, "-").replace(/\//g, "_").replace(/=+$/, "");
