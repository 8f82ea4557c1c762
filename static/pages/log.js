// @ts-check
/** The form of any kind, for any vessel: the server's own form with keys, figures and a second look. */
import { instruments } from "../slate/cards.js";
import { askToPersist } from "../slate/device.js";
import { getDraft } from "../slate/drafts.js";
import { counts } from "../slate/queue.js";
import { readEntry, summary } from "../kinds/read.js";
import { inOwnMark } from "../ui/format.js";
import { html, nothing, render } from "../vendor/lit-html/lit-html.js";
import "../ui/keypad.js";
import { keepBegun } from "../form/begun.js";
import { beginWith, doneWith } from "../form/fix.js";
import { EntryForm } from "../form/entryform.js";
import { dressInstruments, extrasWords, readAt } from "../form/extras.js";
import { showFull } from "../form/full.js";
import { onWho } from "../slate/who.js";
import { dressFields } from "../form/ghosts.js";
import { dressMarks } from "../form/marks.js";
import { chooseUsual } from "../form/usual.js";
import { controlOf, fillIn } from "../form/values.js";
import { isWide, sayThere, setHead } from "../shell/frame.js";
import { handOrAsk } from "../shell/hand.js";
import { markBy, markHere, runPath, vesselPath } from "../shell/here.js";
import { getKind, readCard } from "../shell/phone.js";
import { cautionBands } from "../shell/cautions.js";
import { holdsOf, onTheSlate } from "../shell/words.js";
import { t } from "../words/t.js";

const ABOUT_MOST = 48;
/** Forms with a hand of their own: fetched with the jobs; until those are there the plain boxes serve. */
const DRESS = /** @type {Record<string, (form: HTMLFormElement, kind: any, card: any) => Promise<() => void>>} */ ({
  tasting_note: async (form, kind, card) => (await import("../jobs/cellar/tasting.js")).dressTasting(form, kind, card, part("log")),
  shift_note: async (form, kind, card) => (await import("../jobs/note/note.js")).dressNote(form, card, part("log")),
});
/** What a form asks for that the book can offer, or that is counted by hand. */
const OF_GOODS = /^(batch|lot|cases|filled|number|signed|what|spirit|to_place)$/;

/** @param {string} name @returns {HTMLElement} */
const part = (name) => /** @type {HTMLElement} */ (document.querySelector(`[data-part="${name}"]`));

const theForm = () => /** @type {HTMLFormElement} */ (document.querySelector("form.entry"));

/** @param {string} mark */
const draftNameOf = (mark) => `${theForm().dataset.kind}:${mark}`;

/** All that the form wants of the slate, asked for at once. */
export function read() {
  const mark = markHere();
  const asked = handOrAsk();
  const begun = getDraft(draftNameOf(mark), asked.then((who) => who?.code ?? "")).catch(() => null);
  return Promise.all([getKind(theForm().dataset.kind ?? ""), mark ? readCard(mark) : null, instruments(), asked, begun]);
}

export async function start(slate = read()) {
  const form = theForm();
  const mark = markHere();
  const [kind, card, house, chosen, begun] = await slate;
  if (!chosen) return;
  const who = { ...chosen }; // the form and its draft follow whoever takes the phone
  onWho((next) => {
    if (!next || next.code === who.code) return;
    Object.assign(who, next);
    form.querySelector("[data-begun-band]")?.parentElement?.remove(); // the one before had begun it
  });
  showHead(kind, card, mark);
  dressFields(form, kind, card);
  chooseUsual(form, kind);
  dressMarks(form, kind);
  dressInstruments(form, kind, house);
  render(cautionBands(kind, card), part("cautions"));
  part("more-says").replaceChildren();
  const fix = await beginWith(form, card);
  const isTold = takeText(form);
  let dressed = () => {};
  const entryForm = new EntryForm({
    form, kind, card, who, look: part("look"), figures: part("figures"),
    // How the mark came is read when it is wanted: the first look into a session's store is felt on a slow phone.
    about: () => ({ ...fix?.about, mark, get mark_by() { return mark ? markBy(mark) : ""; }, read_at: readAtOf(form, fix), remark: remarkOf(form), seen_by: "", enclosed: form.dataset.enclosed?.split(" ").filter(Boolean) }),
    action: () => part("log"),
    onChange: () => {
      showExtras(form, kind);
      dressed();
    },
    onFull: (error) => showFull(part("look"), error),
    onLogged: async (kept) => {
      await dropDraft();
      await doneWith(fix);
      void askToPersist();
      sayThere({ words: onTheSlate((await counts()).waiting), about: aboutOf(kind, kept.entry, card), entry: kept.id });
      location.assign(placeAfter(kind, mark));
    },
  });
  const dropDraft = keepBegun({
    form, kind, name: draftNameOf(mark), who, remarkOf: () => remarkOf(form), onTaken: () => void form.dispatchEvent(new Event("change")),
    begun: fix || isTold ? null : begun,
  });
  showExtras(form, kind);
  dressed = (await DRESS[kind.name]?.(form, kind, card).catch(() => null)) ?? dressed;
  const isPicked = await dressGoods(form, kind, card, who);
  if ("gloves" in document.documentElement.dataset) await import("../jobs/helps/gloves.js").then((gloves) => gloves.setAside(form, kind), () => {});
  // Before it is ready: what comes later would move the receivers away from under a thumb.
  if (kind.name === "charge") await import("../jobs/run/lasttime.js").then((job) => job.offerLastReceivers(form, card), () => {});
  form.dataset.ready = "";
  void import("../jobs/enclosed/add.js").then((job) => job.offerPictures(form, part("hands")), () => {});
  if (!isWide()) void import("../jobs/shared/hands.js").then((job) => job.showHands(part("hands"), () => {}), () => {});
  if (!isPicked) takeUp(firstBox(form, kind));
}

/** The keys take their room first: where the focus finds them there, the page is laid out once. @param {HTMLElement|null} box */
function takeUp(box) {
  if (!box) return;
  /** @type {import("../ui/keypad.js").SlateKeypad|null} */ (document.querySelector("slate-keypad"))?.follow?.(box); // keys that are not drawn yet follow the focus
  box.focus({ preventScroll: true });
}

/** Batches and cases to pick, counts with a large plus; a phone that lacks this part yet types. @param {HTMLFormElement} form @param {any} kind @param {any} card @param {any} who */
async function dressGoods(form, kind, card, who) {
  if (!kind.fields.some((/** @type {any} */ field) => OF_GOODS.test(field.name))) return false;
  const job = await import("../jobs/goods/dress.js").catch(() => null);
  return Boolean(await job?.dressGoods({ form, kind, card, who }));
}

/** @param {any} kind @param {any} card @param {string} mark */
function showHead(kind, card, mark) {
  const what = card ? holdsOf(card)[0] : mark && t("floor-log-not_on_this_phones");
  setHead({
    mark: card?.name || mark || kind.short, first: mark ? kind.title : "", second: what,
    back: mark ? vesselPath(mark) : "/",
  });
}

/** @param {HTMLFormElement} form */
const remarkOf = (form) => /** @type {HTMLTextAreaElement|null} */ (form.querySelector("[name=remark]"))?.value.trim() ?? "";

/** The reading that is put right keeps its second, unless somebody sets another minute. @param {HTMLFormElement} form @param {import("../form/fix.js").Fix|null} fix */
const readAtOf = (form, fix) => (fix?.minute && minuteIn(form) === fix.minute ? fix.about.read_at : readAt(form));

/** @param {HTMLFormElement} form */
const minuteIn = (form) => /** @type {HTMLInputElement|null} */ (form.querySelector("[name=read_at]"))?.value;

/** "F3: 14.6 °C, 1.031". @param {any} kind @param {any} entry @param {any} card or null */
function aboutOf(kind, entry, card) {
  const words = inOwnMark(summary(readEntry(kind, entry, {})));
  return [card?.name || entry.mark, words.length > ABOUT_MOST ? `${words.slice(0, ABOUT_MOST - 1)}…` : words].filter(Boolean).join(": ");
}

/** @param {any} kind @param {string} mark */
const placeAfter = (kind, mark) => (mark ? (kind.name === "charge" || kind.run ? runPath(mark) : vesselPath(mark)) : "/");

/** The first box that is needed, where it takes typing; choices and marks open no keypad. @param {HTMLFormElement} form @param {any} kind */
function firstBox(form, kind) {
  const first = kind.fields.find((/** @type {any} */ field) => field.required) ?? kind.fields[0];
  return first && (first.sort === "number" || first.sort === "text") ? controlOf(form, first.name) : null;
}

/** @param {HTMLFormElement} form @param {any} kind */
function showExtras(form, kind) {
  const { lead, rest } = extrasWords(form, kind);
  render(html`<strong>${lead}</strong>${rest ? html` <span class="quiet">${rest}</span>` : nothing}`, part("more-says"));
}

/** Words that the address brings. @param {HTMLFormElement} form @returns {boolean} whether it brings any */
function takeText(form) {
  const text = new URLSearchParams(location.search).get("text");
  if (text) fillIn(form, { text: { raw: text } });
  return Boolean(text);
}
