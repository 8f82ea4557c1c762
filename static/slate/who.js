// @ts-check
/** Who holds the phone: chosen by short code, on a shared phone and offline. It names the hand; it is not a lock. */
import { people } from "./cards.js";
import { getMeta, setMeta } from "./db.js";
import { listen, tell } from "./news.js";

/** @typedef {{code: string, name: string, role: string, roles: string[]}} Who */

const HANDS_MOST = 5;

/** Says what to do. */
export class WrongPin extends Error {}

/** @returns {Promise<Who | null>} the person chosen last on this phone */
export const current = async () => (await getMeta("who")) ?? null;

/**
 * Choose a person by their short code; capitals and spaces do not matter.
 * @param {string} code @param {string} [pin] asked only where the person has set one @param {string} [role] else the first of theirs
 * @returns {Promise<Who>}
 * @throws {WrongPin | Error} with a sentence
 */
export async function choose(code, pin = "", role = "") {
  const wanted = code.trim().toUpperCase();
  const person = (await people()).find((known) => known.code.toUpperCase() === wanted);
  if (!person) throw new Error(`Nobody here has the code ${wanted.slice(0, 12)}. Pick your name from the list.`);
  if (person.pin && !(await isPin(person.pin, pin))) throw new WrongPin(pin ? "That is not this person's PIN. Try again." : "Type your PIN.");
  const { name, roles } = person;
  return remember({ code: person.code, name, roles, role: roles.includes(role) ? role : (roles[0] ?? "") });
}

/** The phone is put down: the next one chooses anew. */
export async function leave() {
  await setMeta("who", null);
  tell("who");
}

/** Who has logged on this phone lately, by code; at most five. @returns {Promise<any[]>} people as the cards brought them */
export async function hands() {
  const [codes, all] = await Promise.all([getMeta("hands"), people()]);
  return all.filter((person) => codes?.includes(person.code)).sort((a, b) => (a.code < b.code ? -1 : 1));
}

/** @param {(who: Who | null) => void} callback @returns {() => void} stops it */
export const onWho = (callback) => listen("who", () => current().then(callback));

/** @param {Who} who */
async function remember(who) {
  await setMeta("who", who);
  const before = /** @type {string[]} */ ((await getMeta("hands")) ?? []);
  await setMeta("hands", [who.code, ...before.filter((code) => code !== who.code)].slice(0, HANDS_MOST));
  tell("who");
  return who;
}

/** @param {{salt: string, rounds: number, hash: string}} kept PBKDF2-SHA256, base64 @param {string} pin */
async function isPin(kept, pin) {
  const key = await crypto.subtle.importKey("raw", new TextEncoder().encode(pin), "PBKDF2", false, ["deriveBits"]);
  const wanted = fromBase64(kept.hash);
  const how = { name: "PBKDF2", hash: "SHA-256", salt: fromBase64(kept.salt), iterations: kept.rounds };
  const made = new Uint8Array(await crypto.subtle.deriveBits(how, key, wanted.length * 8));
  return made.every((byte, at) => byte === wanted[at]);
}

/** @param {string} text */
const fromBase64 = (text) => Uint8Array.from(atob(text), (character) => character.charCodeAt(0));
