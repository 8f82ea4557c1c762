// @ts-check
/** The page's side of the service worker: register it, notice a newer worker, and change over when a person agrees. */
import { language } from "../kinds/kinds.js";

const LOOK_EVERY_MS = 30 * 60_000;

/**
 * @param {{onNewer: (accept: () => void) => void, onReady?: () => void}} callbacks `onNewer`: a newer version stands by;
 *   `accept` puts it to use. `onReady`: this phone can work offline from now on
 */
export async function registerWorker({ onNewer, onReady = () => {} }) {
  if (!("serviceWorker" in navigator)) return;
  const container = navigator.serviceWorker;
  let hadOne = Boolean(container.controller);
  let isReloading = false;
  container.addEventListener("controllerchange", () => {
    // The first worker takes a page over quietly; a newer one needs the page's newer half as well.
    if (hadOne && !isReloading) {
      isReloading = true;
      location.reload();
    }
    hadOne = true;
  });
  try {
    await noteLanguage().catch(() => {}); // then it asks the system
    const registration = await container.register("/sw.js", { updateViaCache: "none" });
    watch(registration, onNewer);
    const look = () => document.visibilityState === "visible" && registration.update().catch(() => {});
    document.addEventListener("visibilitychange", look);
    setInterval(look, LOOK_EVERY_MS);
    await container.ready;
    onReady();
    keepAhead(registration);
  } catch (error) {
    console.warn("This page works only with signal:", error);
  }
}

/** @returns {Promise<string>} the version that serves this page, or "" without a worker */
export const workerVersion = () => asked("VERSION", "");

/** Ask for another language. @param {string} code @returns {Promise<boolean>} whether its pages are on the phone; true where no worker keeps any */
export const askLanguage = (code) => asked("LANGUAGE", !navigator.serviceWorker?.controller, { language: code }, 20_000);

/** What this page is in is the phone's language, where nobody has chosen one: the worker keeps that one. */
async function noteLanguage() {
  const kept = await caches.open("language");
  if (!(await kept.match("/kept/language"))) await kept.put("/kept/language", new Response(language()));
}

/** @returns {Promise<string[]>} names of the parts that are not on this phone yet: `floor`, `curve`, `jobs`, `scan` */
export const missingParts = () => asked("MISSING", []);

/** @template T @param {string} type @param {T} otherwise where no worker answers @param {object} [more] @param {number} [waitMs] @returns {Promise<T>} */
async function asked(type, otherwise, more = {}, waitMs = 1000) {
  const worker = navigator.serviceWorker?.controller;
  if (!worker) return otherwise;
  const { port1, port2 } = new MessageChannel();
  return new Promise((resolve) => {
    port1.onmessage = ({ data }) => resolve(data);
    setTimeout(() => resolve(otherwise), waitMs);
    worker.postMessage({ type, ...more }, [port2]);
  });
}

/** @param {ServiceWorkerRegistration} registration @param {(accept: () => void) => void} onNewer */
function watch(registration, onNewer) {
  const tellOf = (/** @type {ServiceWorker} */ worker) => onNewer(() => worker.postMessage({ type: "SKIP_WAITING" }));
  if (registration.waiting && registration.active) tellOf(registration.waiting);
  registration.addEventListener("updatefound", () => {
    const worker = registration.installing;
    worker?.addEventListener("statechange", () => {
      if (worker.state === "installed" && registration.active && registration.active !== worker) tellOf(worker);
    });
  });
}

/** The scanner is large: fetched when all else stands, so that it is there at the first label without signal. @param {ServiceWorkerRegistration} registration */
function keepAhead(registration) {
  const isSparing = /** @type {any} */ (navigator).connection?.saveData;
  const whenIdle = globalThis.requestIdleCallback ?? ((/** @type {() => void} */ work) => setTimeout(work, 2000));
  whenIdle(() => registration.active?.postMessage({ type: "KEEP_AHEAD", isSparing }));
}
