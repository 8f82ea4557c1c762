// @ts-check
/** Reminders of this phone, one a vessel: when it is to be read again. No entry, never handed in; kept over reloads and without signal. */
import { META, getMeta, write } from "./db.js";
import { listen, tell } from "./news.js";

/**
 * @typedef {object} Timer
 * @property {string} mark of the vessel
 * @property {string} name of the vessel, as people say it
 * @property {string} run id of the run it belongs to; "" for none
 * @property {string} at ISO 8601, UTC
 * @property {number} minutes after each reading, for one that begins anew with it; 0 for one that rings once
 * @property {string} set_at ISO 8601, UTC
 * @property {string} rung_for the `at` for which it has rung; "" before
 */

const KEPT = "timers";

/** @returns {Promise<Timer[]>} */
export const timers = async () => (await getMeta(KEPT)) ?? [];

/** Keep a reminder in the place of the one that its vessel had. @param {Omit<Timer, "set_at"|"rung_for">} timer */
export const setTimer = (timer) => change((all) => [...all.filter((one) => one.mark !== timer.mark), { ...timer, set_at: new Date().toISOString(), rung_for: "" }]);

/** @param {string[]} marks */
export const dropTimers = (marks) => change((all) => all.filter((one) => !marks.includes(one.mark)));

/** Of all tabs one rings, once. @param {string} mark @param {string} at for which it rings @returns {Promise<boolean>} whether it is this one's to ring */
export async function claimRing(mark, at) {
  return write([META], async (tx) => {
    const store = tx.objectStore(META);
    const all = (await store.get(KEPT)) ?? [];
    const timer = all.find((/** @type {Timer} */ one) => one.mark === mark);
    if (!timer || timer.rung_for === at) return false;
    timer.rung_for = at;
    await store.put(all, KEPT);
    return true;
  });
}

/** @param {() => void} callback @returns {() => void} stops it */
export const onTimers = (callback) => listen("timers", callback);

/** @param {(all: Timer[]) => Timer[]} make */
async function change(make) {
  await write([META], async (tx) => {
    const store = tx.objectStore(META);
    await store.put(make((await store.get(KEPT)) ?? []), KEPT);
  });
  tell("timers");
}
