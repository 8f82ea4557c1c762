// @ts-check
/** Taking a line of this phone's own back: an answer that strikes it, handed in like any entry. Both stay legible. */
import { device } from "./device.js";
import { get, log } from "./queue.js";

/** As the book's intake: after this the desk strikes. */
const TAKE_BACK_H = 72;

/** @typedef {import("./queue.js").Kept} Kept */

/**
 * @param {string} id of an entry on this slate @param {{code: string, role: string}} who @param {string} reason
 * @returns {Promise<Kept>} the answer, once it is on the slate
 */
export function takeBack(id, who, reason) {
  const values = { entry: { raw: id }, verdict: { raw: "struck" }, reason: { raw: reason } };
  return log({ kind: "answer", kind_version: 1, values, person: who.code, role: who.role });
}

/**
 * Whether a line may be taken back here: it was logged on this phone, lately, and the book has not turned it away.
 * @param {string} id @param {Set<string | null>} struck ids taken back already @returns {Promise<boolean>}
 */
export async function mayTakeBack(id, struck, nowMs = Date.now()) {
  const [kept, own] = await Promise.all([get(id), device()]);
  return Boolean(kept) && !struck.has(id) && kept?.device === own?.id && kept?.state !== "refused" && kept?.state !== "clash" &&
    kept?.entry.kind !== "answer" && nowMs - Date.parse(kept?.entry.typed_at ?? "") < TAKE_BACK_H * 3_600_000;
}
