// @ts-check
/** The count on the app's icon: what waits on the slate. For pages and for the worker that hands in. */
import { counts } from "../../slate/queue.js";

/** Silent where the system has no such count, or does not allow it. */
export async function showBadge() {
  const { setAppBadge, clearAppBadge } = /** @type {Partial<Navigator>} */ (navigator);
  if (!setAppBadge || !clearAppBadge) return;
  const { waiting } = await counts();
  await (waiting ? setAppBadge.call(navigator, waiting) : clearAppBadge.call(navigator)).catch(() => {});
}
