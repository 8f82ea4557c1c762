// @ts-check
/** This browser becomes a phone of the demo: it is let in, fetches the cards, knows who holds it, can work without signal. */
import { refresh } from "../slate/cards.js";
import { device, enrol, session, become } from "../slate/device.js";
import { choose } from "../slate/who.js";

const WORKER_WAIT_MS = 20_000;
const place = /** @type {HTMLElement} */ (document.querySelector("[data-phone-of]"));
const { phoneOf = "", pin = "", token = "", then = "/today" } = place.dataset;

/** @param {string} name @returns {HTMLElement} */
const part = (name) => /** @type {HTMLElement} */ (place.querySelector(`[data-part="${name}"]`));

/** The worker keeps the pages; where there is none yet, the first visit waits for it. */
async function canWorkAlone() {
  if (!("serviceWorker" in navigator)) return;
  await navigator.serviceWorker.register("/sw.js", { updateViaCache: "none" });
  const patience = new Promise((resolve) => setTimeout(resolve, WORKER_WAIT_MS));
  await Promise.race([navigator.serviceWorker.ready, patience]);
}

async function letIn() {
  if (token) return enrol(token, "");
  const known = (await session()).device;
  if (known && (await device())?.id !== known.id) await become(known); // the slate was cleared here
}

async function open() {
  await letIn();
  await refresh();
  await choose(phoneOf, pin);
  part("says").textContent = part("says").dataset.keeps ?? "";
  await canWorkAlone().catch(() => {});
  if ("cut" in place.dataset) {
    const form = /** @type {HTMLFormElement} */ (part("cut"));
    await fetch(form.action, { method: "POST", body: new FormData(form), redirect: "manual" });
  }
  location.replace(then);
}

open().catch((error) => {
  console.error(error);
  part("says").textContent = (part("says").dataset.wrong ?? "").replace("{why}", error?.message ?? "");
  part("again").hidden = false;
});
