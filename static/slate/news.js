// @ts-check
/** News between the modules and tabs of one phone: what has changed, never the change itself. */

/** @typedef {"slate" | "cards" | "handin" | "who" | "device" | "timers" | "enclosed"} About */

/** @type {Map<About, Set<(detail: any) => void>>} */
const listeners = new Map();
const channel = "BroadcastChannel" in globalThis ? new BroadcastChannel("cellarslate") : null;
channel?.addEventListener("message", ({ data }) => deliver(data.about, data.detail));

/** @param {About} about @param {any} [detail] plain data, told to every tab of this phone */
export function tell(about, detail = null) {
  deliver(about, detail);
  channel?.postMessage({ about, detail });
}

/**
 * @param {About} about
 * @param {(detail: any) => void} callback
 * @returns {() => void} stops listening
 */
export function listen(about, callback) {
  const set = listeners.get(about) ?? new Set();
  listeners.set(about, set.add(callback));
  return () => void set.delete(callback);
}

/** @param {About} about @param {any} detail */
function deliver(about, detail) {
  for (const callback of listeners.get(about) ?? []) callback(detail);
}
