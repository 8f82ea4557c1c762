// @ts-check

/** Keep the screen on while this page is in sight. Where the browser cannot, the sheet works all the same. */
export function keepAwake() {
  const wake = /** @type {any} */ (navigator).wakeLock;
  if (!wake) return;
  const hold = () => document.visibilityState === "visible" && wake.request("screen").catch(() => {});
  document.addEventListener("visibilitychange", hold); // the browser lets go of it whenever the page is hidden
  hold();
}
