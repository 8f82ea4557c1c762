// @ts-check
/**
 * This phone's own key, and its signature under each entry that is logged here. The private half is made by the
 * browser, lies in the slate's database, and can be taken out by nobody. Twin: webapp/book/record/signing.py.
 * Without it (no https, an older browser) entries are logged as before, unsigned.
 */
/** @typedef {import("./entry.js").Entry} Entry */
/** @typedef {{id: string, device: string, x: string, y: string, from_seq: number}} Signing the public half: `id` is its thumbprint (RFC 7638); all above `from_seq` is signed */

const PURPOSE = "cellarslate entry 1\n"; // a signature under something else is never one under an entry
const HOW = { name: "ECDSA", hash: "SHA-256" };
const encoder = new TextEncoder();

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

/** @param {Uint8Array} bytes */
export const base64url = (bytes) => btoa(String.fromCharCode(...bytes)).replace(/\+/g, "-").replace(/\//g, "_").replace(/=+$/, "");
