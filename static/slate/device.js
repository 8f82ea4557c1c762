// @ts-check
/** This phone: its name in the book, its counter, its clock against the book's, and whether its storage is safe. */
import { ask } from "./ask.js";
import { META, getMeta, read, setMeta } from "./db.js";
import { tell } from "./news.js";
import { pageLocale } from "../words/number.js";
import { t } from "../words/t.js";

/** @typedef {{id: string, name: string, enrolled: boolean}} Device */

const PERSIST_ASKED = "persist_asked_at";
const SKEW_SHOWN_FROM_S = 300;

/** @returns {Promise<Device | null>} null before the first entry and the first enrolment */
export const device = async () => (await getMeta("device")) ?? null;

/** @returns {Promise<number>} the phone's clock minus the book's, at the last hand-in [s]; 0 where not known */
export const skewS = async () => (await getMeta("skew_s")) ?? 0;

/** @returns {Promise<string>} a sentence where the clock is off by more than five minutes, else "" */
export async function clockWords() {
  const skew = await skewS();
  if (Math.abs(skew) < SKEW_SHOWN_FROM_S) return "";
  return t("floor-device-clock_off", { span: span(Math.abs(skew)), side: skew > 0 ? "ahead" : "behind" });
}

/**
 * Let this phone in by the one-time code of its QR. Entries logged before keep the name and counter they have.
 * @param {string} token @param {string} name such as PH-2
 * @returns {Promise<Device>}
 * @throws {import("./ask.js").NoAnswer}
 */
export async function enrol(token, name) {
  const answer = await ask("/api/enrol", { body: { token, name } });
  await become(answer.device);
  await introduce(answer.device.id, ""); // else with the next hand-in
  return { ...answer.device, enrolled: true };
}

/** Bring this phone's key to the book; what fails is tried again with the next hand-in. @param {string} device @param {string} known as the book has it */
export async function introduce(device, known) {
  if (!known || (await getMeta("signing"))?.id !== known) await import("./phonekey.js").then((module) => module.introduceKey(device, known)).catch(() => {});
}

/** @returns {Promise<{device: any, person: any, version: string}>} the phone and the person as the book knows them @throws {import("./ask.js").NoAnswer} */
export const session = () => ask("/api/session");

/** @param {{id: string, name: string}} known as the book calls this phone */
export async function become(known) {
  await setMeta("device", { id: known.id, name: known.name, enrolled: true });
  tell("device");
}

/**
 * Keep an answer's figures about this phone: the skew of its clock, and the last counter that the book has seen.
 * @param {any} meta the store, in a transaction @param {{skew_s: number, devices: Record<string, {seen: number}>}} answer
 */
export async function noteAnswer(meta, answer) {
  if (Number.isFinite(answer.skew_s)) await meta.put(answer.skew_s, "skew_s");
  for (const [id, { seen }] of Object.entries(answer.devices ?? {})) {
    // A phone restored from an older copy would count the same numbers twice: go on above what the book has seen.
    const counted = await meta.get(`seq:${id}`);
    if (Number.isInteger(seen) && seen > (counted ?? 0)) await meta.put(seen, `seq:${id}`);
  }
}

/** Ask the browser, once a day at most, to keep the slate when storage runs short. Call it after the first log. */
export async function askToPersist() {
  const storage = navigator.storage;
  if (!storage?.persist) return;
  const asked = await getMeta(PERSIST_ASKED);
  if (asked && Date.now() - asked < 86_400_000) return;
  const isKept = (await storage.persisted()) || (await storage.persist());
  await setMeta(PERSIST_ASKED, Date.now());
  await setMeta("persisted", isKept);
}

/**
 * @returns {Promise<{persisted: boolean | null, used_bytes: number | null, quota_bytes: number | null, words: string}>}
 *   `persisted` is null where the browser does not say
 */
export async function storageStatus() {
  const storage = navigator.storage;
  const persisted = storage?.persisted ? await storage.persisted() : null;
  const estimate = storage?.estimate ? await storage.estimate() : {};
  const words = persisted
    ? t("floor-device-the_browser_has_promised")
    : t("floor-device-the_browser_may_clear");
  return { persisted, used_bytes: estimate.usage ?? null, quota_bytes: estimate.quota ?? null, words };
}

/** @returns {Promise<{seq: number, handed_in_at: string | null, book_id: string | null}>} for the slate page */
export async function standing() {
  return read([META], async (tx) => {
    const meta = tx.objectStore(META);
    const self = await meta.get("device");
    return {
      seq: (self && (await meta.get(`seq:${self.id}`))) ?? 0,
      handed_in_at: (await meta.get("handed_in_at")) ?? null,
      book_id: (await meta.get("book_id")) ?? null,
    };
  });
}

/** @param {number} seconds */
function span(seconds) {
  const steps = /** @type {[number, string][]} */ ([[31_557_600, "year"], [86_400, "day"], [3600, "hour"], [60, "minute"]]);
  const [size, word] = steps.find(([size]) => seconds >= size) ?? [1, "second"];
  const count = Math.round(seconds / size);
  return new Intl.NumberFormat(pageLocale(), { style: "unit", unit: word, unitDisplay: "long" }).format(count);
}
