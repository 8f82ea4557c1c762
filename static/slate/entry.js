// @ts-check
/** An entry as it travels; docs/hand-in.md says what each part is. */

/**
 * @typedef {{raw: string, unit?: string, instrument?: string}} Value
 * @typedef {{
 *   id: string, kind: string, kind_version: number, mark: string, mark_by: "" | "scanned" | "typed" | "picked",
 *   read_at: string, typed_at: string, person: string, role: string, seen_by: string, device: string, seq: number,
 *   values: Record<string, Value>, as_read: string[], looked_again: string[], remark: string, amends: string | null,
 *   reason: string, shown?: string, enclosed?: string[], signature?: string,
 * }} Entry
 * @typedef {Partial<Entry> & {kind: string, values: Record<string, Value>}} Draft what a form has: the rest is filled in
 */

let lastMs = 0;
let counter = 0;

/**
 * Return an UUIDv7 (RFC 9562, 5.7): made on this phone, later ones sort after earlier ones, within a millisecond too.
 * @param {number} [nowMs] since 1970 [ms]
 */
export function makeId(nowMs = Date.now()) {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  if (nowMs > lastMs) {
    lastMs = nowMs;
    counter = ((bytes[6] & 0x07) << 8) | bytes[7]; // below 0x800: room to count up
  } else if (++counter > 0xfff) {
    lastMs += 1;
    counter = 0;
  }
  const view = new DataView(bytes.buffer);
  view.setUint16(0, Math.floor(lastMs / 2 ** 32));
  view.setUint32(2, lastMs % 2 ** 32);
  view.setUint16(6, 0x7000 | counter);
  bytes[8] = 0x80 | (bytes[8] & 0x3f);
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, "$1-$2-$3-$4-$5");
}

/**
 * Return a moment as local time with its offset, to the second: 2025-09-24T08:05:41+02:00.
 * @param {Date} [moment]
 */
export function localStamp(moment = new Date()) {
  const offsetMin = -moment.getTimezoneOffset();
  const local = new Date(moment.getTime() + offsetMin * 60_000).toISOString().slice(0, 19);
  const [hours, minutes] = [Math.floor(Math.abs(offsetMin) / 60), Math.abs(offsetMin) % 60];
  return `${local}${offsetMin < 0 ? "-" : "+"}${two(hours)}:${two(minutes)}`;
}

/**
 * Return the whole entry of a draft. Empty fields are left out.
 * @param {Draft} draft @param {{device: string, seq: number}} from
 * @returns {Entry}
 */
export function makeEntry(draft, { device, seq }) {
  const now = localStamp();
  return {
    id: makeId(),
    kind: draft.kind,
    kind_version: draft.kind_version ?? 1,
    mark: draft.mark ?? "",
    mark_by: draft.mark_by ?? "",
    read_at: draft.read_at || now,
    typed_at: now,
    person: draft.person ?? "",
    role: draft.role ?? "",
    seen_by: draft.seen_by ?? "",
    device,
    seq,
    values: keptValues(draft.values),
    as_read: [...(draft.as_read ?? [])],
    looked_again: [...(draft.looked_again ?? [])],
    remark: draft.remark ?? "",
    amends: draft.amends ?? null,
    reason: draft.reason ?? "",
    shown: draft.shown ?? "",
    ...(draft.enclosed?.length ? { enclosed: draft.enclosed } : {}),
  };
}

/** @param {Record<string, Value>} values @returns {Record<string, Value>} */
function keptValues(values) {
  /** @type {Record<string, Value>} */
  const kept = {};
  for (const [name, { raw, unit, instrument }] of Object.entries(values)) {
    const text = String(raw ?? "").trim();
    if (!text) continue;
    kept[name] = { raw: text, ...(unit ? { unit } : {}), ...(instrument ? { instrument } : {}) };
  }
  return kept;
}

/** @param {number} value */
const two = (value) => String(value).padStart(2, "0");
