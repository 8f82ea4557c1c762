// @ts-check
/** What stands behind a form's "more": when it was read, with which instruments, a remark. */
import { localStamp } from "../slate/entry.js";
import { formatTime, inOwnMark, parseMinute } from "../ui/format.js";
import { boxOf, keptInstrument, rawOf } from "./values.js";
import { t } from "../words/t.js";

/** @param {HTMLFormElement} form @returns {string} the time of the reading for the entry; "" means at the log */
export function readAt(form) {
  const box = /** @type {HTMLInputElement|null} */ (form.querySelector("[name=read_at]"));
  const typed = box?.value ? parseMinute(box.value) : null;
  return typed && !Number.isNaN(typed.getTime()) ? localStamp(typed) : "";
}

/** Instruments are picked from the house's list where the phone has it, else typed. @param {HTMLFormElement} form @param {any} kind @param {any[]} house its instruments */
export function dressInstruments(form, kind, house) {
  for (const field of kind.fields.filter((/** @type {any} */ one) => one.instrument)) {
    const input = /** @type {HTMLInputElement|null} */ (form.querySelector(`[name="${field.name}_instrument"]`));
    if (!input) continue;
    const kept = keptInstrument(field.instrument);
    const fitting = house.filter((one) => one.sort === field.instrument && (!one.state || one.state === "in use"));
    if (!fitting.length) input.value = kept;
    else input.replaceWith(instrumentSelect(input, fitting, kept));
    const label = input.id && form.querySelector(`label[for="${input.id}"]`);
    if (label) label.textContent = t("floor-extras-instrument_for", { instrument: label.textContent?.replace(t("floor-may_stay_empty"), "").trim() ?? "", label: /^.[A-Z]/.test(field.label) ? field.label : t("floor-within_sentence", { words: field.label }) });
  }
}

/** @param {HTMLInputElement} input @param {any[]} fitting @param {string} kept */
function instrumentSelect(input, fitting, kept) {
  const select = document.createElement("select");
  select.name = input.name;
  select.id = input.id;
  select.className = "field__value";
  select.append(new Option(t("floor-not_said"), ""), ...fitting.map((one) => new Option(`${one.id} · ${one.title}${one.correction ? t("floor-extras-corrected") : ""}`, one.id)));
  select.value = fitting.some((one) => one.id === kept) ? kept : "";
  return select;
}

const NAMED = 3;

/** "Refractometer, same juice" is the refractometer: the first with a capital, the others as in a sentence. @param {any} field @param {number} at */
const nameOf = (field, at = 0) => {
  const name = field.label.split(",")[0];
  return at > 0 && /^[A-Z][a-z]/.test(name) ? t("floor-within_sentence", { words: name[0] }) + name.slice(1) : name;
};

/** One line that says what the fold holds: "Refractometer, pH, cap, remark · Read now · TH-2". @param {HTMLFormElement} form @param {any} kind */
export function extrasWords(form, kind) {
  const typed = /** @type {HTMLInputElement|null} */ (form.querySelector("[name=read_at]"))?.value;
  const when = typed ? t("floor-extras-read_at", { typed: formatTime(parseMinute(typed)) }) : t("floor-extras-read_now");
  const used = new Set(kind.fields.filter((/** @type {any} */ one) => one.instrument)
    .map((/** @type {any} */ one) => /** @type {HTMLInputElement|null} */ (form.querySelector(`[name="${one.name}_instrument"]`))?.value).filter(Boolean));
  const remark = /** @type {HTMLTextAreaElement|null} */ (form.querySelector("[name=remark]"))?.value.trim();
  const aside = kind.fields.filter((/** @type {any} */ field) => boxOf(form, field.name)?.closest("details"));
  const names = aside.map(nameOf);
  const filled = aside.filter((/** @type {any} */ field) => rawOf(form, field.name)).map((/** @type {any} */ field) => `${nameOf(field)} ${inOwnMark(rawOf(form, field.name))}`);
  const lead = names.length ? [...names.slice(0, NAMED), names.length > NAMED ? "…" : t("floor-remark")].join(", ") : typed ? when : t("floor-extras-read_earlier");
  return { lead, rest: [...filled, names.length || !typed ? when : "", [...used].join(", "), remark ? t("floor-extras-with_a_remark") : ""].filter(Boolean).join(" · ") };
}
