// @ts-check
/** What the phone's system helps with, on every page: each where it exists, silent where not. */
import { listen } from "../../slate/news.js";
import { startBackground } from "./background.js";
import { showBadge } from "./badge.js";
import { startBuzz } from "./buzz.js";
import { isHelpOn } from "./choices.js";

export function start() {
  listen("slate", () => void showBadge());
  void showBadge();
  startBackground();
  // A line that was opened (shell/linesheet.js) has its pictures below.
  addEventListener("line", (event) => {
    const { target, detail: { line, entry } } = /** @type {CustomEvent} */ (event);
    if (target instanceof HTMLDialogElement) void import("../enclosed/line.js").then((job) => job.dressLine(target, line, entry), () => {});
  });
  startBuzz(() => isHelpOn("buzz"));
  if (isHelpOn("aloud")) void import("./aloud.js").then((aloud) => aloud.startAloud());
  if (isHelpOn("spoken")) void import("./listening.js").then((listening) => listening.startListening());
}
