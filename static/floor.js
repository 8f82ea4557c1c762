// @ts-check
/** The floor's entry: the modules of every page, then the page's own module. */
import { noteLabelLink } from "./shell/here.js";
import { isWide, startFrame } from "./shell/frame.js";
import { startHouse } from "./shell/house.js";
import { start as startHandIn } from "./slate/handin.js";
import { onBlocked } from "./slate/db.js";
import { registerWorker } from "./slate/worker.js";
import { showNotice, showUpdateNotice } from "./ui/notice.js";
import { toast } from "./ui/toast.js";
import { hasWords } from "./kinds/kinds.js";
import { t } from "./words/t.js";

/** @type {Record<string, () => Promise<{start: (slate?: any) => Promise<void>|void, read?: () => Promise<any>}>>} spelt out, so that each is a file of ours */
const PAGES = {
  today: () => import("./pages/today.js"),
  scan: () => import("./pages/scan.js"),
  vessel: () => import("./pages/vessel.js"),
  log: () => import("./pages/log.js"),
  run: () => import("./pages/run.js"),
  job: () => import("./pages/job.js"),
  slate: () => import("./pages/slate.js"),
  who: () => import("./pages/who.js"),
  more: () => import("./pages/more.js"),
  enrol: () => import("./pages/enrol.js"),
};
const READY_SAID = "offline-ready-said";
/** Said where no language has come to the phone. */
const NO_WORDS = "The words of this page did not come. Open it once more with signal. The slate is safe.";

async function begin() {
  noteLabelLink();
  onBlocked((words) => toast(words, 20_000));
  const house = startHouse();
  const page = await PAGES[document.documentElement.dataset.page ?? ""]?.();
  // What a page reads of the slate is asked for beside the house: each wait of its own is felt on a slow phone.
  const slate = page?.read?.();
  slate?.catch(() => {}); // its failure is told once, by the page
  await house;
  await page?.start(slate);
}

/** What no page waits for: the counts in the head, the hand-in, reminders, a newer version. */
function goOn() {
  startFrame();
  if (isWide() && document.querySelector(".foot, form.entry")) void import("./jobs/shared/pane.js").then((job) => job.start(), () => {});
  void startHandIn();
  void import("./jobs/timers/ring.js").then((ring) => ring.start(), () => {}); // not on the phone yet: it comes after the first install
  void import("./jobs/helps/start.js").then((helps) => helps.start(), () => {}); // not on the phone yet
  void registerWorker({ onNewer: showUpdateNotice, onReady: sayReady });
}

/** Said once on each phone. */
function sayReady() {
  if (localStorage.getItem(READY_SAID)) return;
  localStorage.setItem(READY_SAID, "yes");
  toast(t("floor-start-this_phone_now_works"));
}

begin().catch((error) => {
  console.error(error);
  showNotice({ words: hasWords() ? t("floor-start-this_page_did_not", { message: error?.message ?? "" }) : NO_WORDS, doWord: hasWords() ? t("floor-start-try_again") : "Try again", onDo: () => location.reload() });
}).finally(() => {
  document.documentElement.dataset.started = "";
  // After the first picture of the page: a phone in the hand is written on before it hands in.
  if ("requestIdleCallback" in globalThis) requestIdleCallback(goOn, { timeout: 500 });
  else setTimeout(goOn);
});
