// @ts-check
/** Rings when a reminder comes due, on whatever page is open; the bar stands until it is answered, over reloads too. */
import { onCards } from "../../slate/cards.js";
import { onChange } from "../../slate/queue.js";
import { claimRing, dropTimers, onTimers, setTimer } from "../../slate/timers.js";
import { toast } from "../../ui/toast.js";
import { html, render } from "../../vendor/lit-html/lit-html.js";
import { clearNotice, giveNotice } from "./notice.js";
import { buzz, sound, wakeByAnyTap } from "./tone.js";
import { isDue, timerPath, timersNow, titleOf, whenWords } from "./times.js";
import { t } from "../../words/later.js";

const LOOK_MOST_MS = 30_000;
/** What was missed by more than this is told and not rung: nobody is helped by a tone in the morning. */
const RING_WITHIN_MS = 30 * 60_000;
const MORE_MIN = 5;

/** @typedef {import("./times.js").Timer} Timer */

/** @type {Timer[]} */
let standing = [];
/** @type {HTMLElement|null} */
let bar = null;
let next = 0;

/** Once for a page. */
export async function start() {
  wakeByAnyTap(() => standing.length > 0);
  onTimers(() => void look());
  onChange(() => void look());
  onCards(() => void look());
  document.addEventListener("visibilitychange", () => void look());
  await look();
}

async function look() {
  clearTimeout(next);
  standing = await timersNow().catch(() => []);
  const due = standing.filter((timer) => isDue(timer));
  show(due.filter((timer) => !isHere(timer)));
  for (const timer of due) {
    if (await claimRing(timer.mark, timer.at).catch(() => false)) ring(timer);
  }
  if (!standing.length) return;
  const wait = Math.min(LOOK_MOST_MS, ...standing.filter((timer) => !isDue(timer)).map((timer) => Date.parse(timer.at) - Date.now() + 20));
  next = setTimeout(() => void look(), Math.max(50, wait));
}

/** Where it is read stands open: its own page says it, and nothing is laid over the figure. @param {Timer} timer */
const isHere = (timer) => location.pathname === timerPath(timer);

/** @param {Timer} timer */
function ring(timer) {
  if (Date.now() - Date.parse(timer.at) > RING_WITHIN_MS) return;
  buzz();
  sound();
  if (isHere(timer)) toast(t("floor-ring-set_for", { at: titleOf(timer), at_2: whenWords(timer) }));
  void giveNotice(timer, t("floor-ring-set_for_2", { at: whenWords(timer) }));
}

/** @param {Timer[]} due the longest over first */
function show(due) {
  if (!due.length) {
    bar?.remove();
    bar = null;
    return;
  }
  if (!bar) {
    bar = document.createElement("section");
    bar.className = "undo ring";
    bar.setAttribute("role", "alert");
    bar.setAttribute("aria-label", t("floor-ring-reminder"));
    document.body.append(bar);
  }
  const [timer] = due;
  const answer = (/** @type {() => Promise<void>} */ change) => async () => {
    await change();
    await clearNotice(timer.mark);
  };
  render(html`<p class="undo__words"><strong>${titleOf(timer)}</strong><span class="quiet">${t("floor-ring-set_for_3", { at: whenWords(timer), more: due.length > 1 ? t("floor-ring-more", { due: due.length - 1 }) : "" })}</span></p>
    <a class="button button--main" href=${timerPath(timer)}>${t("floor-ring-read")}</a>
    <button type="button" class="button" @click=${answer(() => setTimer({ ...timer, at: new Date(Date.now() + MORE_MIN * 60_000).toISOString() }))}>${t("floor-ring-min_more", { minutes: MORE_MIN })}</button>
    <button type="button" class="button" aria-label=${t("floor-ring-drop_the_reminder")} @click=${answer(() => dropTimers([timer.mark]))}>${t("floor-ring-drop")}</button>`, bar);
}
