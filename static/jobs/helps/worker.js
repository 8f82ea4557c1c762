// @ts-check
/**
 * The worker that hands in after the app was closed: by the pages' own code and under their lock, so that nothing goes
 * twice at once; and the book would take it once all the same. It keeps no page and answers for none.
 */
import { isOwnLayout } from "../../slate/db.js";
import { drain } from "../../slate/handin.js";
import { showBadge } from "./badge.js";

const worker = /** @type {any} */ (self);

worker.addEventListener("install", () => worker.skipWaiting());
worker.addEventListener("sync", (/** @type {any} */ event) => event.waitUntil(handIn()));

async function handIn() {
  // It may be newer than the pages on this phone, and must not change the slate under them.
  if (!(await isOwnLayout())) return;
  const { standing, words } = await drain();
  await showBadge();
  if (standing !== "idle") throw new Error(words || standing); // the browser then tries again by itself
}
