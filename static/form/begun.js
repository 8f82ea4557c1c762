// @ts-check
/**
 * A form that was begun and left. It stands empty until its person says to go on: figures that nobody has looked at again
 * never get into the book. A figure taken up again gives way to the first key, as if it were selected.
 */
import { dropDraft, keepDraft } from "../slate/drafts.js";
import { formatAgo } from "../ui/format.js";
import { html, nothing, render } from "../vendor/lit-html/lit-html.js";
import { collect, controlOf, fillIn, shortSymbol } from "./values.js";
import { t } from "../words/t.js";

const PAUSE_MS = 400;
const FIGURES_SHOWN = 3;

/**
 * Keep a form while it is typed, and offer what its person began before.
 * @param {{form: HTMLFormElement, kind: any, name: string, who: {code: string, name?: string}, remarkOf: () => string, onTaken: () => void, begun: import("../slate/drafts.js").Begun|null}} parts
 *   `name` of the draft; `onTaken` after figures were put back; `begun` before, null where nothing is to be offered
 * @returns {() => Promise<void>} lets the draft go, once it is logged
 */
export function keepBegun({ form, kind, name, who, remarkOf, onTaken, begun }) {
  let begunAt = /** @type {string|undefined} */ (undefined);
  const place = document.createElement("div");
  place.className = "stack";
  if (begun) form.prepend(place);
  const close = () => place.remove();
  let timer = 0;
  form.addEventListener("input", (event) => {
    delete (/** @type {HTMLElement} */ (event.target).dataset.begun);
    close(); // typing on is starting clean
    begunAt ??= new Date().toISOString();
    clearTimeout(timer);
    timer = setTimeout(() => {
      const remark = remarkOf();
      void keepDraft(name, { ...collect(form, kind), ...(remark ? { remark: { raw: remark } } : {}) }, { person: who.code, begunAt });
    }, PAUSE_MS);
  });
  form.addEventListener("beforeinput", selectBegun);
  if (begun) {
    const goOn = () => {
      close();
      begunAt = begun.begun_at;
      fillIn(form, begun.values);
      for (const field of kind.fields) if (field.sort === "number" && begun.values[field.name]) controlOf(form, field.name)?.setAttribute("data-begun", "");
      onTaken();
    };
    const startClean = () => {
      close();
      void dropDraft(name, who.code).catch(() => {});
    };
    render(begunBand(kind, begun, who, goOn, startClean), place);
  }
  return async () => {
    clearTimeout(timer);
    await dropDraft(name, who.code).catch(() => {});
  };
}

/** A keyboard's first key replaces what was taken up again. @param {Event} event */
function selectBegun({ target }) {
  if (target instanceof HTMLInputElement && "begun" in target.dataset) target.select();
}

/** @param {any} kind @param {import("../slate/drafts.js").Begun} begun @param {{code: string}} who @param {() => void} goOn @param {() => void} startClean */
function begunBand(kind, begun, who, goOn, startClean) {
  const figures = kind.fields.filter((/** @type {any} */ field) => field.sort === "number" && begun.values[field.name]?.raw)
    .map((/** @type {any} */ field) => `${begun.values[field.name].raw} ${shortSymbol(begun.values[field.name].unit ?? "")}`.trim());
  const shown = figures.slice(0, FIGURES_SHOWN).join(", ") + (figures.length > FIGURES_SHOWN ? ", …" : "");
  return html`<section class="band band--note" data-begun-band aria-label=${t("floor-begun-begun_before")}><p><strong class="band__lead">${t("floor-begun-begun_by", { ago: formatAgo(begun.begun_at), code: who.code, shown: shown ? ":" : "." })}</strong>
    ${shown ? html`${shown}.` : nothing} ${t("floor-begun-go_on_or_start")}</p>
    <div class="band__offers"><button type="button" class="button" @click=${goOn}>${t("floor-go_on")}</button>
      <button type="button" class="button" @click=${startClean}>${t("floor-begun-start_clean")}</button></div></section>`;
}
