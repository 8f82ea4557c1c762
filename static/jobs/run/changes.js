// @ts-check
/**
 * Changes of the still within a run: heat, cooling water, plates. One tap logs one with its minute; the forecast takes
 * each as a moment from which the stream may run otherwise. Twin of the end of webapp/book/still/forecast.py.
 */
import { counts, log } from "../../slate/queue.js";
import { localStamp } from "../../slate/entry.js";
import { markBy } from "../../shell/here.js";
import { offerTakeBack } from "../../shell/takebackbar.js";
import { capital, onTheSlate } from "../../shell/words.js";
import { formatTime } from "../../ui/format.js";
import { toast } from "../../ui/toast.js";
import { html } from "../../vendor/lit-html/lit-html.js";
import { t } from "../../words/later.js";

/** By how many plates each changes those in work. @type {Record<string, number>} */
export const CHANGES = { heat_changed: 0, water_changed: 0, plate_in: 1, plate_out: -1 };

/** @param {any} kind of a cut, as this phone has it: an older one knows no changes @param {string} mark of the still @param {{code: string, role: string}} who */
export function changeButtons(kind, mark, who) {
  const events = kind.fields.find((/** @type {any} */ field) => field.name === "event").choices;
  const changes = events.filter((/** @type {string[]} */ [event]) => event in CHANGES);
  return changes.map((/** @type {string[]} */ [event, words]) => html`<button type="button" class="button" data-change=${event} @click=${() => logChange(kind, mark, who, event, capital(words))}>${capital(words)}</button>`);
}

/** @param {any} kind @param {string} mark @param {{code: string, role: string}} who @param {string} event @param {string} words */
async function logChange(kind, mark, who, event, words) {
  const tappedAt = new Date();
  try {
    const { id } = await log({
      kind: kind.name, kind_version: kind.version, mark, mark_by: markBy(mark), read_at: localStamp(tappedAt),
      person: who.code, role: who.role || kind.role, values: { event: { raw: event } },
    });
    offerTakeBack({ words: onTheSlate((await counts()).waiting), about: `${words} ${formatTime(tappedAt)}`, entry: id });
  } catch (error) {
    toast(/** @type {any} */ (error)?.message ?? t("floor-changes-that_could_not_be"), 12_000);
  }
}

/** Whether heat, water or plates were changed since a line of the run, as somebody told. @param {any} run @param {any} line */
export const changedSince = (run, line) => run.cuts.some((/** @type {any} */ cut) => cut.event in CHANGES && Date.parse(cut.at) >= Date.parse(line.at));

/**
 * The plates in work at the first drop, counted from the last reading that names them; each change with the plates from then on.
 * @param {any} run @param {import("./collect.js").Stream} stream
 * @returns {{plates: number|null, changes: {minutes: number, plates: number|null}[]}}
 */
export function changesOf(run, { zero, lines }) {
  const turns = run.cuts.filter((/** @type {any} */ cut) => cut.event in CHANGES)
    .map((/** @type {any} */ cut) => ({ minutes: (Date.parse(cut.at) - zero) / 60_000, turn: CHANGES[cut.event] }))
    .filter((/** @type {{minutes: number}} */ { minutes }) => minutes >= 0)
    .sort((/** @type {any} */ a, /** @type {any} */ b) => a.minutes - b.minutes || a.turn - b.turn);
  const said = lines.filter((line) => line.plates !== null).at(-1);
  const before = turns.filter((/** @type {any} */ { minutes }) => minutes <= (said?.minutes ?? -1)).reduce((/** @type {number} */ sum, /** @type {any} */ { turn }) => sum + turn, 0);
  const plates = said ? /** @type {number} */ (said.plates) - before : null;
  let now = plates;
  const changes = turns.map((/** @type {{minutes: number, turn: number}} */ { minutes, turn }) => {
    now = now === null ? null : Math.max(now + turn, 0);
    return { minutes, plates: turn ? now : null };
  });
  return { plates, changes };
}
