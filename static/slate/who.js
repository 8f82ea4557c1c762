// @ts-check
/**
 * Who holds the phone: chosen by short code, on a shared phone and offline. A PIN is looked at by the book the first time,
 * and by this phone from then on. Whoever cannot be looked at, for want of a signal, logs all the same; the book asks later.
 */
import { NoAnswer, ask } from "./ask.js";
import { people } from "./cards.js";
import { META, getMeta, setMeta, write } from "./db.js";
import { listen, tell } from "./news.js";
import { hasPin } from "./shown.js";
import { t } from "../words/t.js";

/** @typedef {import("./shown.js").Who} Who */

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
  if (!person) throw new Error(t("floor-who-nobody_here_has_the", { code: wanted.slice(0, 12) }));
  const shown = await look(person, pin);
  const { name, roles } = person;
  return remember({ code: person.code, name, roles, role: roles.includes(role) ? role : (roles[0] ?? ""), shown });
}

/**
 * Look at a PIN: by what this phone holds, or by the book.
 * @param {any} person @param {string} pin @returns {Promise<"pin" | "" | "unseen">} "" where they have none, "unseen" where there is no signal
 * @throws {WrongPin}
 */
export async function look(person, pin) {
  if (!hasPin(person)) return "";
  if (!pin) throw new WrongPin(t("floor-who-type_your_pin"));
  if (person.pin && crypto.subtle) {
    if (await isPin(person.pin, pin)) return "pin";
    throw new WrongPin(t("floor-who-that_is_not_this"));
  }
  try {
    const answer = await ask("/api/hand", { body: { person: person.code, pin } });
    await write([META], async (tx) => {
      const meta = tx.objectStore(META);
      const all = (await meta.get("people")) ?? [];
      await meta.put(all.map((/** @type {any} */ one) => (one.code === person.code ? { ...one, pin: answer.pin } : one)), "people");
    });
    return "pin";
  } catch (error) {
    if (!(error instanceof NoAnswer)) throw error;
    if (error.status === 403 || error.status === 429) throw new WrongPin(error.message);
    return "unseen";
  }
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
