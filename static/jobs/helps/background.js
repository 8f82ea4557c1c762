// @ts-check
/**
 * Hand in after the app was closed, where the browser offers that: a worker of its own, woken when a network comes. The
 * pages hand in by themselves and need none of this.
 */
import { handinStatus, onHandin } from "../../slate/handin.js";
import { counts } from "../../slate/queue.js";

/** What the browser calls the worker by. */
export const HAND_IN = "hand-in";

/** @typedef {ServiceWorkerRegistration & {sync: {register: (tag: string) => Promise<void>}}} Registration */

export const hasBackground = () => "SyncManager" in globalThis && "serviceWorker" in navigator;

export function startBackground() {
  if (!hasBackground()) return;
  void ownRegistration().catch(() => {}); // ahead: without signal it could not be fetched
  const ask = () => void askToBeWoken().catch(() => {}); // a phone that bars it hands in when it is opened
  // Not while a page hands in well: a wake-up for each entry would cost more than it brings.
  onHandin(({ standing }) => standing !== "idle" && standing !== "sending" && ask());
  document.addEventListener("visibilitychange", () => document.hidden && ask());
  if (!["idle", "sending"].includes(handinStatus().standing)) ask();
}

async function askToBeWoken() {
  if (!(await counts()).waiting) return;
  const registration = await ownRegistration();
  await registration.sync.register(HAND_IN);
}

/** The worker's scope is its own folder, where no page lies. @returns {Promise<Registration>} once it can be woken */
async function ownRegistration() {
  const scope = new URL("./", import.meta.url).href;
  const known = await navigator.serviceWorker.getRegistration(scope);
  const registration = known?.scope === scope ? known : await navigator.serviceWorker.register(new URL("worker.js", import.meta.url), { type: "module", scope });
  const worker = registration.active ?? registration.waiting ?? registration.installing;
  if (worker && worker.state !== "activated") {
    await new Promise((resolve) => worker.addEventListener("statechange", () => worker.state === "activated" && resolve(null)));
  }
  return /** @type {Registration} */ (registration);
}
