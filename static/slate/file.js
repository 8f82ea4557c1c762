// @ts-check
/** The slate as a file: a second way to the book, from any phone and at any later time. */
import { ENTRIES, META, write } from "./db.js";
import { device } from "./device.js";
import { localStamp } from "./entry.js";
import { tell } from "./news.js";
import { all, asKept, put } from "./queue.js";
import { t } from "../words/later.js";

const MARKER = "cellarslate-slate";
const BYTES_MAX = 50 * 1024 * 1024;
const AGAIN = () => t("floor-file-save_it_again_on");
const STATES = ["waiting", "entered", "known", "queried", "clash", "refused"];

/** @returns {Promise<File>} `cellarslate-slate-<device>-<date>.json` with every entry on the slate and their SHA-256 */
export async function saveSlate() {
  const own = await device();
  const entries = (await all()).reverse().map(({ entry, state, logged_at, settled_at, receipt }) => ({
    state, logged_at, settled_at, receipt, entry,
  }));
  const saved_at = localStamp();
  const content = { marker: MARKER, version: 1, device: own?.id ?? "", saved_at, sha256: await digest(entries), entries };
  const name = `${MARKER}-${own?.id ?? "phone"}-${saved_at.slice(0, 10)}.json`;
  return new File([`${JSON.stringify(content, null, 1)}\n`], name, { type: "application/json" });
}

/** @param {File} file handed to the phone's share sheet where there is one, else to its downloads */
export async function giveFile(file) {
  const shared = file.type === "application/json" ? new File([file], file.name.replace(/json$/, "txt"), { type: "text/plain" }) : file; // text is shared by systems that refuse JSON
  if (navigator.canShare?.({ files: [shared] }) && matchMedia("(pointer: coarse)").matches) {
    const refusal = await navigator.share({ files: [shared], title: shared.name }).then(() => null, (error) => error);
    if (!refusal || refusal.name === "AbortError") return; // given, or a person changed their mind
  }
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = file.name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/**
 * Put a saved slate onto this phone's. Entries keep the device and counter they were logged with, so that the book
 * takes each once, whichever phone hands it in.
 * @param {Blob} file
 * @returns {Promise<{added: number, known: number}>} how many were new here, how many were here already
 * @throws {Error} a sentence, where the file is damaged; nothing is changed then
 */
export async function loadSlate(file) {
  if (file.size > BYTES_MAX) throw new Error(t("floor-file-this_file_is_too"));
  const content = parse(await file.text());
  if ((await digest(content.entries)) !== content.sha256) throw new Error(t("floor-file-this_file_is_damaged", { again: AGAIN() }));
  const counted = await write([ENTRIES, META], async (tx) => {
    const fresh = new Map(); // by id: a file may name one twice
    for (const { entry, ...about } of content.entries) {
      if (fresh.has(entry.id) || (await tx.objectStore(ENTRIES).getKey(entry.id))) continue;
      const state = STATES.includes(about.state) ? about.state : "waiting";
      fresh.set(entry.id, { kept: { ...asKept(entry), ...about, state } });
    }
    await put(tx, [...fresh.values()]);
    return { added: fresh.size, known: content.entries.length - fresh.size };
  });
  if (counted.added) tell("slate", { id: "from a file" });
  return counted;
}

/** @param {string} text */
function parse(text) {
  let content = null;
  try {
    content = JSON.parse(text);
  } catch {
    throw new Error(t("floor-file-this_file_is_damaged_2", { again: AGAIN() }));
  }
  if (content?.marker !== MARKER) throw new Error(t("floor-file-this_file_is_no"));
  if (content.version !== 1) throw new Error(t("floor-file-this_slate_was_saved"));
  const isWhole = (/** @type {any} */ line) =>
    typeof line?.entry?.id === "string" && typeof line.entry.device === "string" && Number.isInteger(line.entry.seq) &&
    typeof line.entry.values === "object" && typeof line.entry.kind === "string";
  if (!Array.isArray(content.entries) || !content.entries.every(isWhole)) throw new Error(t("floor-file-this_file_is_damaged_3", { again: AGAIN() }));
  return content;
}

/** @param {any} entries @returns {Promise<string>} SHA-256 of their JSON without spaces, in hex */
async function digest(entries) {
  const bytes = new TextEncoder().encode(JSON.stringify(entries));
  const hash = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return [...hash].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
