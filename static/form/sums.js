// @ts-check
/** The computed figures of a form. The figure that the work is for is shown large. */
import { html, nothing } from "../vendor/lit-html/lit-html.js";
import { capital } from "../shell/words.js";
import { shownInUnits, wordsIn } from "../shell/inunits.js";
import { t } from "../words/t.js";

/** Until it has come, figures stand alone. @type {typeof import("./offby.js") | null} */
let later = null;

/** @param {any} kind @param {any} read as readEntry gives it @param {number | null} [capacityL] of the vessel @param {() => void} [again] */
export function sumLines(kind, read, capacityL = null, again) {
  // Two ways to one figure share its name: it is said once.
  const own = kind.figures.filter((/** @type {any} */ figure, /** @type {number} */ i) => kind.figures.findIndex((/** @type {any} */ one) => one.name === figure.name) === i);
  const known = own.filter((/** @type {any} */ figure) => figure.name in read.figures && !isGivenAway(figure, read) && !isTwin(figure, kind, read));
  if (!known.length) return nothing;
  if (!later) void import("./offby.js").then(async (module) => { await module.ready(); later = module; again?.(); }).catch(() => {});
  const off = later?.offBy(read, capacityL) ?? {};
  return known.map((/** @type {any} */ figure) => html`<p class="sum ${figure.big ? "sum--big" : ""}">
    <span class="sum__label">${capital(wordsIn(figure.label, figure.unit))}</span>
    <span class="sum__figure"><output class="sum__value" data-figure=${figure.name}>${shownInUnits(read.figures[figure.name], figure.unit, figure.decimals)}</output>${off[figure.name] ? html` <span class="sum__off" title=${t("floor-sums-by_the_class_of")}>± ${off[figure.name]}</span>` : nothing}</span></p>`);
}

/** A figure that says again what a large one says. @param {any} figure @param {any} kind @param {any} read */
const isTwin = (figure, kind, read) => !figure.big && kind.figures.some((/** @type {any} */ other) =>
  other !== figure && other.big && other.sum === figure.sum && read.figures[other.name] === read.figures[figure.name]);

/** A figure that was typed itself needs no line of its own. @param {any} figure @param {any} read */
const isGivenAway = (figure, read) => figure.given && figure.given in read.values && !figure.big;
