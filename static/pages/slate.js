// @ts-check
/** The slate: what waits on this phone, what the book said, and what a person can do about either. */
import { clockWords, device, standing, storageStatus } from "../slate/device.js";
import { handInNow, handinStatus, onHandin } from "../slate/handin.js";
import { isStrike, struckBy } from "../slate/strikes.js";
import { all, markSeen, onChange, tryAgain } from "../slate/queue.js";
import { toast } from "../ui/toast.js";
import { html, nothing, render } from "../vendor/lit-html/lit-html.js";
import { icon } from "../icons/icons.js";
import { AWAY, setHead } from "../shell/frame.js";
import { kindsByName } from "../shell/phone.js";
import { lineOf } from "../shell/slatelines.js";
import { agoWords } from "../shell/words.js";
import { t } from "../words/t.js";

const SETTLED_SHOWN = 12;
const files = () => import("../slate/file.js"); // comes with the jobs
/** How many waited when the round of handing in began that goes on, or has just ended. */
let asked = 0;

/** @param {string} name @returns {HTMLElement} */
const part = (name) => /** @type {HTMLElement} */ (document.querySelector(`[data-part="${name}"]`));

export async function start() {
  part("body").replaceChildren();
  onChange(() => void show());
  onHandin(() => void show());
  setInterval(() => void show(), 30_000);
  await show();
  await import("../jobs/enclosed/state.js").then((job) => job.tellFiles(part("body")), () => {});
}

async function show() {
  const [kept, own, stand, clock, storage, byName] = await Promise.all([all(), device(), standing(), clockWords(), storageStatus(), kindsByName()]);
  const status = handinStatus();
  const waiting = kept.filter((one) => one.state === "waiting");
  setHead({ first: own?.name || (own?.enrolled ? own.id : t("floor-slate-not_let_in_yet")), second: stand.handed_in_at ? t("floor-slate-handed_in", { handed_in_at: agoWords(stand.handed_in_at) }) : t("floor-slate-nothing_handed_in_yet") });
  const signal = part("signal");
  signal.hidden = status.standing === "idle";
  signal.textContent = AWAY()[status.standing] ?? (status.standing === "sending" ? t("floor-slate-handing_in") : t("floor-slate-book_busy"));
  const asks = kept.filter((one) => !one.seen && (one.state === "refused" || one.state === "clash" || (one.state === "queried" && openQueries(one).length)));
  const byId = new Set(kept.map((one) => one.id));
  const isAside = (/** @type {any} */ one) => one.state === "refused" || one.state === "clash";
  const settled = kept.filter((one) => one.state !== "waiting" && !asks.includes(one));
  const aside = settled.filter(isAside);
  const struck = struckBy(kept.map((one) => one.entry));
  const isShown = (/** @type {any} */ one) => !(isStrike(one.entry) && byId.has(one.entry.values.entry?.raw)) || one.state === "refused"; // it shows on the line that it strikes
  const line = (/** @type {any} */ one) => lineOf(one, byName, { onSeen: () => markSeen(one.id), onAgain: () => tryAgain(one.id), isStruck: struck.has(one.id) });
  render([
    headline(waiting.length, asks.length, aside.length, status, own),
    clock ? html`<p class="band band--ask"><span>${clock}</span></p>` : nothing,
    section(t("floor-slate-wants_a_look"), asks, line), section(t("floor-slate-waiting"), waiting.filter(isShown), line), section(t("floor-slate-put_aside_not_in"), aside, line),
    section(t("floor-slate-in_the_book"), settled.filter((one) => isShown(one) && !isAside(one)).slice(0, SETTLED_SHOWN), line),
    keeping(storage, kept.length),
  ], part("body"));
  part("thumb").hidden = !waiting.length && status.standing === "idle";
  render(html`<button type="button" class="button button--main button--action"
    ?disabled=${status.standing === "sending"} @click=${handIn}>${status.standing === "sending" ? t("floor-slate-handing_in_2") : t("floor-slate-hand_in_now")}</button>`, part("thumb"));
}

/** @param {any} kept */
const openQueries = (kept) => (kept.receipt?.queries ?? []).filter((/** @type {any} */ query) => query.weight !== "note");

/** From this phone to the book: how many wait, how far a round has come, and one end. @param {number} count @param {number} looks @param {number} aside @param {any} status @param {any} own */
function headline(count, looks, aside, status, own) {
  const isSending = status.standing === "sending" && count > 0;
  if (count) asked = isSending ? Math.max(asked, count) : 0;
  const done = asked - count;
  const isAllIn = !count && !looks && !aside && Boolean(own?.enrolled);
  const lead = count ? t("floor-slate-entries_wait", { count }) : looks || aside || !own?.enrolled ? t("floor-slate-nothing_waits") : t("floor-slate-all_in_the_book");
  const rest = isSending ? t("floor-slate-handing_in_3", { in: done ? t("floor-slate-of_are_in", { done, asked }) : "" })
    : !own?.enrolled && status.standing === "signed_out" ? t("floor-slate-the_book_does_not")
    : status.words || (count ? t("floor-slate-they_are_safe_here")
      : looks ? t("floor-slate-lines_want_a_look", { count: looks }) : aside ? t("floor-slate-entries_put_aside", { count: aside }) : asked ? t("floor-slate-entries_handed_in", { count: asked }) : "");
  return html`<section class="way" aria-live="polite" data-way=${count ? "waits" : "in"}>
    <div class="way__line" aria-hidden="true">${icon("phone", "large")}<svg class=${isSending ? "way__track way__track--sends" : "way__track"} viewBox="0 0 100 10" preserveAspectRatio="none"><path d="M0 5H100"></path><path class="way__done" d="M0 5H${count ? (isSending ? (100 * done) / asked : 0) : 100}"></path></svg>${icon(isAllIn ? "entered" : "book", "large")}</div>
    <p class="way__lead">${lead}</p>${rest ? html`<p>${rest}</p>` : nothing}
    ${status.standing === "signed_out" ? html`<div class="band__offers"><a class="button" href="/start">${t("floor-let_this_phone_in")}</a></div>` : nothing}</section>`;
}

/** @param {string} title @param {any[]} kept @param {(one: any) => any} line */
const section = (title, kept, line) => (kept.length ? html`<section><h2 class="list__title">${title}</h2><ul class="list">${kept.map(line)}</ul></section>` : nothing);

/** @param {any} storage @param {number} count */
function keeping(storage, count) {
  return html`<details class="more"><summary><strong>${t("floor-slate-keeping_it_safe")}</strong> <span class="quiet">${storage.persisted ? t("floor-slate-storage_is_kept") : t("floor-slate-storage_may_be_cleared")}</span></summary>
    <div class="form"><p>${storage.words}</p>
      <button type="button" class="button" ?disabled=${!count} @click=${save}>${t("floor-save_the_slate_to")}</button>
      <label class="button">${t("floor-slate-load_a_saved_slate")}<input class="hidden-text" type="file" accept="application/json,text/plain,.json,.txt" @change=${load}></label>
      <p class="quiet">${t("floor-slate-a_saved_slate_can")}</p></div></details>`;
}

async function handIn() {
  await handInNow();
}

async function save() {
  const { giveFile, saveSlate } = await files();
  await giveFile(await saveSlate()).catch((error) => error.name !== "AbortError" && toast(error.message));
}

/** @param {Event} event */
async function load(event) {
  const input = /** @type {HTMLInputElement} */ (event.target);
  const file = input.files?.[0];
  input.value = "";
  if (!file) return;
  try {
    const { added, known } = await (await files()).loadSlate(file);
    toast(t("floor-slate-entries_on_this_slate", { count: added, known: known ? t("floor-slate-were_here_already", { known }) : "" }));
  } catch (error) {
    toast(/** @type {any} */ (error).message, 12_000);
  }
}
