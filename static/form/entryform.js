// @ts-check
/**
 * One form on its way to an entry: reads the boxes as they are typed, shows the figures, asks for a second look, logs.
 * The boxes may come from the server's template or from quickfields.js.
 */
import { readEntry } from "../kinds/read.js";
import { site } from "../slate/cards.js";
import { log as chalk } from "../slate/queue.js";
import { render } from "../vendor/lit-html/lit-html.js";
import { hasTable1, loadTable1 } from "../trade/datafiles.js";
import { contextOf } from "./context.js";
import { keepInSight, watchThumb } from "./insight.js";
import { jumps } from "./jumps.js";
import { lookable, lookBand } from "./look.js";
import { showRefusals } from "./refusals.js";
import { sumLines } from "./sums.js";
import { inOwnMark } from "../ui/format.js";
import { boxOf, collect, controlOf, keepInstrument, keepScale, shortSymbol } from "./values.js";
import { t } from "../words/t.js";

/** After the last key the second look waits this long, so that it does not speak into a half-typed figure. */
const PAUSE_MS = 900;
/** A button whose words have just changed under the thumb is not answered by the tap that was on its way. */
const SEEN_MS = 600;

/** What finds what may have been meant: not on the phone before the first install is done. @type {typeof import("../kinds/meant.js") | null} */
let meant = null;
/** @type {Promise<void>|undefined} */
let meantComes;
/** Asked for with the first key, so that it is there at the first question and no form waits for it. */
const bringMeant = () => (meantComes ??= import("../kinds/meant.js").then((module) => { meant = module; }, () => {}));

/** @param {{code: string, weight: string}} problem */
const isStop = (problem) => problem.code === "danger" || problem.weight === "stop";

/**
 * @typedef {object} Parts
 * @property {HTMLFormElement} form
 * @property {any} kind
 * @property {any} card the vessel's, or null
 * @property {HTMLElement} look where the second look is said
 * @property {HTMLElement} figures
 * @property {{code: string, role: string}} who
 * @property {() => Record<string, any>} about what else the entry carries: mark, mark_by, read_at, remark
 * @property {(kept: any) => void} onLogged
 * @property {(draft: any) => Promise<any>} [keep] where the draft goes instead of onto the slate: a count is signed first
 * @property {(error: unknown, draft: any) => void} onFull
 * @property {(read: any) => import("./look.js").Problem[]} [also] what else asks for a second look
 * @property {() => HTMLElement|null} [action] the button that logs: while a question stands, it says what it would log
 * @property {() => void} [onChange]
 */

export class EntryForm {
  /** @type {Parts} */ #parts;
  /** Fields that were looked at twice, with the figure that was then in them. @type {Map<string, string>} */
  #lookedAt = new Map();
  #asked = { key: "", since: 0 };
  #pause = 0;
  #isLogging = false;
  #listening = new AbortController();
  #typing = "";
  read = /** @type {any} */ (null);
  /** What is odd about an entry as it is read. @type {(read: any) => import("./look.js").Problem[]} */
  #oddIn = () => [];
  /** What is odd about this one. @type {import("./look.js").Problem[]} */
  #odd = [];

  /** @param {Parts} parts */
  constructor(parts) {
    this.#parts = parts;
    const { form } = parts;
    const { signal } = this.#listening;
    form.addEventListener("input", (event) => this.#typed(event), { signal });
    form.addEventListener("change", (event) => this.#changed(event), { signal });
    // Later: a box or button may lose the focus by being taken away, in the middle of a drawing.
    form.addEventListener("focusout", () => setTimeout(() => signal.aborted || this.#pauseOver()), { signal });
    // A press leaves the focus where it is until it is over: the field that is left grows small, and where nothing holds the
    // page still (WebKit) what is pressed would slip from under the pointer.
    form.addEventListener("mousedown", (event) => {
      if (/** @type {Element} */ (event.target).closest("button:not(.button--action), .chip, summary")) event.preventDefault();
    }, { signal });
    // A press on a fold must not take the focus first: the field would shrink, and the fold slip away under the finger.
    form.addEventListener("mousedown", (event) => { if (/** @type {Element} */ (event.target).closest("summary")) event.preventDefault(); }, { signal });
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      void this.logIt();
    }, { signal });
    const thumb = parts.look.closest(".thumb");
    if (thumb instanceof HTMLElement) watchThumb(thumb);
    this.update();
  }

  /** Before its boxes are taken away: a blur of a vanishing box must start nothing. */
  close() {
    this.#listening.abort();
    clearTimeout(this.#pause);
  }

  /** Read the boxes anew and show what follows from them. */
  update() {
    const { form, kind, card, figures, onChange } = this.#parts;
    const context = contextOf(card, kind.name);
    const values = collect(form, kind);
    // Table 1 is large and wanted by a proof glass only; the figure follows when it has come.
    if (!hasTable1() && Object.values(values).some((value) => value.unit === "proof_glass")) void loadTable1().then(() => this.update(), () => {});
    this.read = readEntry(kind, { kind: kind.name, mark: card?.mark ?? "", values }, context);
    const { amends, read_at: readAt } = this.#parts.about();
    // What is put right would be held against itself: the card has it as the last.
    const jumped = (/** @type {any} */ read) => (amends ? [] : jumps(kind, read, context, card, Date.parse(readAt) || Date.now()));
    this.#oddIn = (read) => [...(this.#parts.also?.(read) ?? []), ...jumped(read), ...lookable(read.problems)];
    this.#odd = this.#oddIn(this.read);
    render(sumLines(kind, this.read, card?.capacity_l ?? null, () => this.#listening.signal.aborted || this.update()), figures);
    figures.hidden = !figures.childElementCount;
    this.#showLook();
    onChange?.();
  }

  /** @returns {any} the draft of the entry as the boxes stand */
  draft() {
    const { form, kind, about, who } = this.#parts;
    const odd = this.#odd.filter((problem) => this.read.entry.values[problem.field]);
    const named = (/** @type {(problem: any) => boolean} */ wanted) => [...new Set(odd.filter(wanted).map((problem) => problem.field))];
    return {
      kind: kind.name, kind_version: kind.version, person: who.code, role: who.role || kind.role,
      values: collect(form, kind),
      as_read: named((problem) => problem.weight === "stop"), looked_again: named((problem) => problem.weight === "ask"),
      ...about(),
    };
  }

  /**
   * Log, unless it is no entry at all. What looks odd is shown first; the button then names the figure, and its next tap keeps
   * it as read. What cannot be wants a choice of its own: the offered figure, or "Keep as read" beside it.
   */
  async logIt() {
    clearTimeout(this.#pause);
    this.#typing = "";
    this.update();
    if (this.#isLogging || showRefusals(this.#parts.form, this.#parts.kind, this.read.problems)) return;
    for (let open = this.#unanswered(); open; open = this.#unanswered()) {
      const isSaid = this.#asked.key === this.#key(open) && performance.now() - this.#asked.since > SEEN_MS;
      if (isStop(open) || !isSaid) return this.#showLook();
      this.#lookedAt.set(this.#figure(open), open.weight);
    }
    this.#isLogging = true;
    const draft = this.draft();
    try {
      if (this.#parts.kind.taxed && (await site()).pin_at_tax) {
        const shown = await (await import("./pinfirst.js")).askPin(draft.person);
        if (shown === null) {
          this.#isLogging = false;
          return;
        }
        draft.shown = shown;
      }
      this.#parts.onLogged(await (this.#parts.keep ?? chalk)(draft));
    } catch (error) {
      this.#isLogging = false;
      this.#parts.onFull(error, draft);
    }
  }

  /** @param {Event} event */
  #typed(event) {
    void bringMeant();
    this.#typing = /** @type {HTMLInputElement} */ (event.target).name ?? "";
    clearTimeout(this.#pause);
    this.#pause = setTimeout(() => this.#pauseOver(), PAUSE_MS);
    this.update();
  }

  /** @param {Event} event */
  #changed(event) {
    const { name, value } = /** @type {HTMLSelectElement} */ (event.target);
    for (const field of this.#parts.kind.fields) {
      if (name === `${field.name}_instrument`) keepInstrument(field.instrument, value);
      if (name === `${field.name}_unit`) keepScale(field, value);
    }
    this.update();
  }

  #pauseOver() {
    this.#typing = "";
    this.#showLook();
  }

  /** @param {any} problem */
  #key(problem) {
    return `${problem.code}:${this.#figure(problem)}`;
  }

  /** A figure kept as read is kept, whatever else is odd about it; danger is said for itself. @param {any} problem */
  #figure(problem) {
    const { raw = "", unit = "" } = this.read.entry.values[problem.field] ?? {};
    return `${problem.field}:${raw}:${unit}`;
  }

  #unanswered() {
    const odd = this.#odd.filter((problem) => !this.#lookedAt.has(this.#figure(problem)));
    return odd.find((problem) => problem.code === "danger") ?? odd.find((problem) => problem.weight === "stop") ?? odd[0];
  }

  #showLook() {
    const problem = this.#unanswered();
    const shown = problem && problem.field !== this.#typing ? problem : undefined;
    const key = shown ? this.#key(shown) : "";
    if (key !== this.#asked.key) {
      this.#asked = { key, since: performance.now() };
      if (shown) this.#parts.form.dispatchEvent(new CustomEvent("asked", { bubbles: true, detail: isStop(shown) ? "stop" : "ask" }));
    }
    for (const field of this.#parts.kind.fields) {
      boxOf(this.#parts.form, field.name)?.classList.toggle("field--odd", field.name === shown?.field);
    }
    render(lookBand(shown, shown ? this.#offersTo(shown) : [], { onTake: (one) => this.#take(one), onKeep: () => this.#keep(shown) }), this.#parts.look);
    this.#nameAction(shown);
    if (shown) keepInSight(boxOf(this.#parts.form, shown.field), this.#parts.look);
  }

  /** What may have been meant, judged as the entry itself is. @param {import("./look.js").Problem} problem */
  #offersTo(problem) {
    const { kind, context } = this.read;
    if (!meant) void bringMeant().then(() => meant && !this.#listening.signal.aborted && this.#showLook());
    return meant?.offers(this.read, this.#odd, (entry) => this.#oddIn(readEntry(kind, entry, context)))[this.#odd.indexOf(problem)] ?? [];
  }

  /** The button that logs says which figure it would keep, and steps back behind the offered one. @param {any} problem */
  #nameAction(problem) {
    const button = this.#parts.action?.();
    const place = button?.querySelector("[data-words]") ?? button;
    if (!button || !place) return;
    button.dataset.words ??= place.textContent?.trim() ?? "";
    const { raw = "", unit = "" } = (problem && this.read.entry.values[problem.field]) ?? {};
    const isNamed = Boolean(problem) && !isStop(problem) && raw !== "";
    const words = isNamed ? t("floor-entryform-log", { figure: inOwnMark(raw), unit: shortSymbol(unit) }).trim() + t("floor-entryform-as_read") : button.dataset.words;
    // Only what is new: WebKit drops the click of a button whose words are put anew while it is pressed.
    if (place.textContent !== words) place.textContent = words;
    button.classList.toggle("button--main", !problem);
  }

  /** @param {any} suggestion */
  #take(suggestion) {
    controlOf(this.#parts.form, suggestion.field)?.focus({ preventScroll: true }); // first, for the button that has the focus goes away
    for (const { field, raw, unit } of [suggestion, ...(suggestion.also ?? [])]) {
      const control = controlOf(this.#parts.form, field);
      const select = /** @type {HTMLSelectElement|null} */ (this.#parts.form.querySelector(`select[name="${field}_unit"]`));
      if (select && unit) select.value = unit;
      if (control) control.value = raw;
    }
    this.#typing = "";
    this.update();
  }

  /** @param {any} problem */
  #keep(problem) {
    controlOf(this.#parts.form, problem.field)?.focus({ preventScroll: true });
    this.#lookedAt.set(this.#figure(problem), problem.weight);
    this.#showLook();
  }
}
