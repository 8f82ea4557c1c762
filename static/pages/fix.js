// @ts-check
/** A form that begins with an entry of the slate: one that the book refused, or one that is put right. */
import { get, markSeen } from "../slate/queue.js";
import { localMinute } from "./words.js";
import { fillIn } from "./form/values.js";

/** @typedef {{id: string, about: {amends?: string, reason?: string, read_at?: string}}} Fix */

/**
 * @param {HTMLFormElement} form
 * @returns {Promise<Fix|null>} null where the address names none, or it is no longer on this phone
 */
export async function beginWith(form) {
  const asked = new URLSearchParams(location.search);
  const id = asked.get("fix") ?? asked.get("amends");
  const kept = id ? await get(id) : undefined;
  if (!kept) return null;
  fillIn(form, kept.entry.values);
  fillIn(form, { remark: { raw: kept.entry.remark }, read_at: { raw: localMinute(new Date(kept.entry.read_at)) } });
  const isInTheBook = ["entered", "known", "queried"].includes(kept.state);
  return {
    id: kept.id,
    about: { read_at: kept.entry.read_at, ...(isInTheBook ? { amends: kept.id, reason: "put right on the phone" } : {}) },
  };
}

/** The one it began with has been dealt with. @param {Fix|null} fix */
export async function doneWith(fix) {
  if (fix) await markSeen(fix.id);
}
