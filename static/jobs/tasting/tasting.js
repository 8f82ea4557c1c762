// @ts-check
/**
 * Blind tasting: the sets of glasses that wait for whoever holds the phone, one after the other. The phone has the codes and nothing of what
 * they hold. Each answer is an entry of its own, kept before the next set is shown; without signal too.
 */
import { sayThere, setHead } from "../../shell/frame.js";
import { handOrAsk } from "../../shell/hand.js";
import { getKind } from "../../shell/phone.js";
import { showFull } from "../../form/full.js";
import { onCards } from "../../slate/cards.js";
import { localStamp } from "../../slate/entry.js";
import { log as chalk } from "../../slate/queue.js";
import { wear } from "../../ui/sheet.js";
import { render } from "../../vendor/lit-html/lit-html.js";
import { part } from "../panel.js";
import { setsOf } from "./sets.js";
import { ask, choose, done } from "./view.js";
import { t } from "../../words/later.js";

/** @typedef {import("./sets.js").Serving} Serving */
/** @typedef {import("./sets.js").Tasting} Tasting */
/** @typedef {{picked: string, order: string[], sure: string, gave_away: string[]}} Said */

/** @returns {Said} */
const untold = () => ({ picked: "", order: [], sure: "", gave_away: [] });

/** @type {{who: any, kind: any, tasting: Tasting|null, set: Serving|null, said: Said, isKeeping: boolean}} */
const here = { who: null, kind: null, tasting: null, set: null, said: untold(), isKeeping: false };

export async function start() {
  here.who = await handOrAsk();
  if (!here.who) return;
  [here.kind] = await Promise.all([getKind("tasting_answer"), wear("jobs/tasting/tasting.css")]);
  await load();
  onCards(() => void (here.set || load())); // a set that is being answered stays under the thumb
}

/** The next set of this person, or the choice between tastings, or that nothing waits. */
async function load() {
  const left = await setsOf(here.who.code);
  const wanted = left.filter(({ open }) => open.length);
  const next = wanted.find(({ tasting }) => tasting.name === here.tasting?.name) ?? (wanted.length === 1 ? wanted[0] : null);
  if (next) return show(next.tasting, next.open[0]);
  here.tasting = here.set = null;
  setHead({ mark: t("floor-blind_tasting"), first: here.who.name, second: "", back: "/" });
  const { body, doing } = wanted.length ? choose(wanted, show) : done(left.length > 0);
  render(body, part("body"));
  render(doing, part("doing"));
}

/** @param {Tasting} tasting @param {Serving} set */
function show(tasting, set) {
  Object.assign(here, { tasting, set, said: untold() });
  draw();
  scrollTo(0, 0);
}

function draw() {
  const { tasting, set, said } = here;
  if (!tasting || !set) return;
  const mine = tasting.sets.filter((one) => one.person === set.person).length;
  setHead({ mark: tasting.name, first: here.who.name, second: t("floor-tasting-set_of", { set_no: set.set_no, mine }), back: "/" });
  const { body, doing } = ask({ tasting, set, said, onPick: pick, onSure: (sure) => change({ sure: said.sure === sure ? "" : sure }), onGave: gave, onKeep: () => void keep() });
  render(body, part("body"));
  render(doing, part("doing"));
}

/** @param {Partial<Said>} parts */
function change(parts) {
  Object.assign(here.said, parts);
  draw();
}

/** @param {string} code */
function pick(code) {
  const { order } = here.said;
  if (here.tasting?.method !== "ranking") return change({ picked: code });
  const next = order.includes(code) ? order.filter((one) => one !== code) : [...order, code];
  // The last glass has one place left.
  const rest = (here.set?.codes ?? []).filter((one) => !next.includes(one));
  change({ order: rest.length === 1 && !order.includes(code) ? [...next, rest[0]] : next });
}

/** @param {string} word */
function gave(word) {
  const { gave_away: words } = here.said;
  change({ gave_away: words.includes(word) ? words.filter((one) => one !== word) : [...words, word] });
}

async function keep() {
  const { tasting, set, said, kind, who } = here;
  if (!tasting || !set || here.isKeeping) return;
  here.isKeeping = true; // a second tap is no second answer
  /** @type {Record<string, {raw: string, unit?: string}>} */
  const values = { session: { raw: tasting.name }, set_no: { raw: String(set.set_no), unit: "count" } };
  if (tasting.method === "ranking") values.order = { raw: said.order.join(" ") };
  else values.picked = { raw: said.picked };
  if (said.sure) values.sure = { raw: said.sure };
  if (said.gave_away.length) values.gave_away = { raw: said.gave_away.join(", ") };
  try {
    const kept = await chalk(/** @type {any} */ ({
      kind: kind.name, kind_version: kind.version, mark: "", mark_by: "", read_at: localStamp(new Date()), person: who.code, role: who.role || kind.role,
      seen_by: "", values, as_read: [], looked_again: [], remark: "",
    }));
    sayThere({ words: t("floor-tasting-your_answer_is_on"), about: t("floor-tasting-set", { name: tasting.name, set_no: set.set_no }), entry: kept.id });
    await load();
  } catch (error) {
    showFull(part("panel"), error);
  } finally {
    here.isKeeping = false;
  }
}
