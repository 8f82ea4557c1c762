// @ts-check
/** The phone's own notices, for a reminder that comes due while the page is not in sight. Without leave, or where there are none, the page alone says it. */
import { timerPath, titleOf } from "./times.js";

const ICON = "/static/icons/app-192.png";

/** @returns {"yes"|"no"|"ask"} whether the phone gives notices, or would have to be asked */
export function noticeLeave() {
  if (!("Notification" in globalThis) || !navigator.serviceWorker) return "no";
  return Notification.permission === "granted" ? "yes" : Notification.permission === "denied" ? "no" : "ask";
}

/** Called from a tap: the browser may put its own question. */
export async function askForNotices() {
  if (noticeLeave() === "ask") await Notification.requestPermission().catch(() => {});
}

/** @param {import("./times.js").Timer} timer @param {string} words */
export async function giveNotice(timer, words) {
  if (noticeLeave() !== "yes" || document.visibilityState === "visible") return;
  const registration = await navigator.serviceWorker.getRegistration();
  await registration?.showNotification(titleOf(timer), { body: words, tag: tagOf(timer.mark), icon: ICON, data: { path: timerPath(timer) } }).catch(() => {});
}

/** What has been answered stands no longer among the phone's notices. @param {string} mark */
export async function clearNotice(mark) {
  const registration = await navigator.serviceWorker?.getRegistration();
  for (const one of (await registration?.getNotifications({ tag: tagOf(mark) }).catch(() => [])) ?? []) one.close();
}

/** @param {string} mark */
const tagOf = (mark) => `timer:${mark}`;
