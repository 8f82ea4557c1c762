// @ts-check
/** A tasting by dials: nose, mouth, wood and fault, the house's own scores, words to tap; the button says what it would log. */
import { html, render } from "../../vendor/lit-html/lit-html.js";
import { lastWords } from "../../form/ghosts.js";
import { lastOf } from "../../form/context.js";
import { boxOf, controlOf } from "../../form/values.js";
import { pickWords } from "../wordchips.js";
import { site } from "../../slate/cards.js";
import { formatNumber, parseNumber } from "../../ui/format.js";
import { wear } from "../../ui/sheet.js";
import { makeDial } from "./dial.js";
import { t } from "../../words/later.js";

const DIALS = ["nose_score", "mouth_score", "wood_score", "fault_score"];
/** Where the house has set none of its own. Common practice, no source. */
const WORDS = [t("floor-tasting-fruit"), t("floor-tasting-stone"), t("floor-tasting-almond"), t("floor-tasting-blossom"), t("floor-tasting-spice"), t("floor-tasting-green"), t("floor-tasting-sharp"), t("floor-tasting-glue"), t("floor-tasting-smoke"), t("floor-tasting-dust")];

/**
 * @param {HTMLFormElement} form of a tasting note @param {any} kind @param {any} card or null @param {HTMLElement} button that logs
 * @returns {Promise<() => void>} shows the boxes anew: after each change, whoever made it
 */
export async function dressTasting(form, kind, card, button) {
  const [{ tasting }] = await Promise.all([site(), wear("jobs/cellar/dial.css")]);
  const shows = [...DIALS.map((name) => dressScore(form, kind, card, name)), ...houseScores(form, tasting?.scores ?? [])];
  gatherDials(form);
  const words = boxOf(form, "words");
  for (const name of ["decision", "reduced_to"]) words?.before(/** @type {HTMLElement} */ (boxOf(form, name))); // what is needed comes first
  const ofHouse = tasting?.words ?? [];
  shows.push(pickWords(form, "words", ofHouse.length ? ofHouse : WORDS, ofHouse.length ? t("floor-tasting-words_of_the_house") : t("floor-tasting-words_to_tap")));
  shows.push(() => nameButton(form, kind, button));
  const show = () => shows.forEach((one) => one());
  show();
  return show;
}

/** One score's box becomes a dial; its text box goes on carrying the figure. @param {HTMLFormElement} form @param {any} kind @param {any} card @param {string} name */
function dressScore(form, kind, card, name) {
  const field = kind.fields.find((/** @type {any} */ one) => one.name === name);
  const box = /** @type {HTMLElement} */ (boxOf(form, name));
  const carrier = /** @type {HTMLInputElement} */ (controlOf(form, name));
  const last = lastOf(card, kind, field);
  const dial = makeDial({
    id: `${name}-dial`, label: field.label, last: last && { raw: last.raw, words: lastWords(last) },
    onSay: (raw) => put(carrier, raw),
  });
  carrier.type = "hidden";
  carrier.focus = (how) => dial.range.focus(how); // whoever is sent to the figure comes to its slider
  box.querySelector("label")?.setAttribute("for", dial.range.id);
  box.className = box.className.replace("field--figure", "dial");
  carrier.after(dial.element);
  const says = box.querySelector(".field__last");
  if (says && last) says.textContent = `▾ ${lastWords(last)}`;
  return () => {
    dial.show(scoreOf(carrier.value));
    if (says && last) says.textContent = scoreOf(carrier.value) === scoreOf(last.raw) ? t("floor-as_last_time") : `▾ ${lastWords(last)}`;
  };
}

/** What a slider can stand on: a whole figure; one with decimals, of an entry that is put right, stays as it was typed. @param {string} raw */
const scoreOf = (raw) => (Number.isFinite(parseNumber(raw)) ? formatNumber(parseNumber(raw), Number.isInteger(parseNumber(raw)) ? 0 : 1) : "");

/** @param {HTMLInputElement} carrier @param {string} raw */
function put(carrier, raw) {
  carrier.value = raw;
  carrier.dispatchEvent(new Event("input", { bubbles: true }));
}

/** The house's own scores, each a dial that may stay untouched: "fruit 7; depth 5" in their one box. @param {HTMLFormElement} form @param {string[]} names */
function houseScores(form, names) {
  const carrier = controlOf(form, "house_scores");
  const box = boxOf(form, "house_scores");
  if (!carrier || !box) return [];
  box.hidden = true; // it is filled by the dials, or there are none
  const scoreIn = (/** @type {string} */ name) => carrier.value.split(/;\s*/).find((part) => part.startsWith(`${name} `))?.slice(name.length + 1) ?? "";
  return names.map((name, n) => {
    const say = (/** @type {string} */ raw) => put(carrier, names.map((one) => [one, one === name ? raw : scoreIn(one)]).filter(([, said]) => said).map((pair) => pair.join(" ")).join("; "));
    const dial = makeDial({ id: `house-score-${n}`, label: name, onSay: say });
    const [place, head] = [document.createElement("div"), document.createElement("div")];
    place.className = "field dial";
    head.className = "dial__head";
    place.append(head, dial.element);
    box.before(place);
    return () => {
      dial.show(scoreIn(name));
      render(html`<span class="field__label" aria-hidden="true">${name}</span>${scoreIn(name) ? html`<button type="button" class="button button--plain dial__unsay" aria-label=${t("floor-tasting-take_off", { name })} @click=${() => say("")}>${t("floor-tasting-take_off_2")}</button>`
        : html`<span class="field__last">${t("floor-tasting-may_stay_empty")}</span>`}`, head);
    };
  });
}

/** All dials in one grid, so that a phone on its side has two beside each other. @param {HTMLFormElement} form */
function gatherDials(form) {
  const all = [...form.querySelectorAll(".dial")];
  const place = document.createElement("div");
  place.className = "stack dials";
  all[0]?.before(place);
  place.append(...all);
}

/** "Log: hold", and under it each figure, said or not. @param {HTMLFormElement} form @param {any} kind @param {HTMLElement} button */
function nameButton(form, kind, button) {
  const of = (/** @type {string} */ name) => kind.fields.find((/** @type {any} */ one) => one.name === name);
  const decision = controlOf(form, "decision");
  const words = decision?.checked ? of("decision").choices.find((/** @type {string[]} */ one) => one[0] === decision.value)?.[1] : "";
  const lead = words ? t("floor-tasting-log", { words }) : t("floor-log_it");
  const said = DIALS.map((name) => `${t("floor-within_sentence", { words: of(name).label })} ${scoreOf(controlOf(form, name)?.value ?? "") || "–"}`).join(" · ");
  let place = /** @type {HTMLElement|null} */ (button.querySelector("[data-words]"));
  if (!place) {
    render(html`<span><span data-words="Log it">${t("floor-log_it")}</span><span class="button__sub" data-said></span></span>`, (button.replaceChildren(), button));
    place = /** @type {HTMLElement} */ (button.querySelector("[data-words]"));
  }
  button.dataset.words = lead;
  if (button.classList.contains("button--main")) place.textContent = lead;
  /** @type {HTMLElement} */ (button.querySelector("[data-said]")).textContent = said;
}
