// @ts-check
/** What is due, drawn for the day's page: short groups, each line leads to its form. */
import { badge } from "../ui/badge.js";
import { html, nothing } from "../vendor/lit-html/lit-html.js";
import { current } from "../slate/who.js";
import { duesOf } from "./cellar/due.js";
import { notesDue } from "./note/hanging.js";
import { setsOf } from "./tasting/sets.js";
import { t } from "../words/later.js";

export { roomOf } from "../trade/placenames.js";

const SHOWN = 4;
/** @type {{path: string, words: string, wants: (card: any) => boolean}[]} to be begun at any time */
const ROUNDS = [
  { path: "/job/ferments", words: t("floor-readings_round"), wants: (card) => card.sort === "fermenter" && Boolean(card.holds) },
  { path: "/job/casks", words: t("floor-regauge_round"), wants: (card) => card.sort === "cask" && Boolean(card.holds) },
  { path: "/job/count", words: t("floor-stock_count"), wants: (card) => (card.sort === "tank" || card.sort === "cask") && Boolean(card.holds) },
];

/** @param {any[]} cards @param {any} house @param {any[]} instruments @param {number} [now] ms */
export function dueList(cards, house, instruments, now = Date.now()) {
  const groups = duesOf(cards, house, instruments, now);
  const rest = ROUNDS.filter((round) => cards.some(round.wants) && !groups.some((group) => group.round === round.path));
  return [...groups.map(section), rest.length ? html`<nav class="buttons" aria-label=${t("floor-duelist-rounds")}>${rest.map(({ path, words }) => html`<a class="button" href=${path}>${words}</a>`)}</nav>` : nothing];
}

/** Notes that hang unread, and glasses of a blind tasting that wait for whoever logs. */
export const glassesDue = async () => [await notesDue(), await glasses()];

async function glasses() {
  const who = await current();
  const open = who ? (await setsOf(who.code)).filter((one) => one.open.length) : [];
  if (!open.length) return nothing;
  const sets = open.reduce((sum, one) => sum + one.open.length, 0);
  return html`<section data-due="tasting"><h2 class="row row--apart"><span>${t("floor-blind_tasting")} <span class="quiet">${sets}</span></span><a class="button" href="/job/tasting">${t("floor-duelist-taste")}</a></h2>
    <ul class="list list--links">${open.map(({ tasting, open: mine }) => line({ mark: "", name: tasting.name, why: tasting.question, end: t("floor-sets", { count: mine.length }), path: "/job/tasting" }))}</ul></section>`;
}

/** @param {import("./cellar/due.js").Group} group */
function section(group) {
  const rest = group.lines.slice(SHOWN);
  return html`<section data-due=${group.key}><h2 class="row row--apart"><span>${group.title} <span class="quiet">${group.lines.length}</span></span>
      ${group.round ? html`<a class="button" href="${group.round}?from=${group.lines[0].mark}">${group.roundWords}</a>` : nothing}</h2>
      <ul class="list list--links">${group.lines.slice(0, SHOWN).map(line)}</ul>
      ${rest.length ? html`<details class="more"><summary>${t("floor-more_2", { rest: rest.length })}</summary><ul class="list list--links">${rest.map(line)}</ul></details>` : nothing}</section>`;
}

/** @param {import("./cellar/due.js").Line} one */
const line = (one) => html`<li><a href=${one.path}><span class="list__mark">${one.name}</span><span class="list__what">${one.weight ? html`${badge(one.weight)} ` : nothing}${one.why}</span><span class="list__end">${one.end}</span></a></li>`;
