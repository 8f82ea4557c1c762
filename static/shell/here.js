// @ts-check
/** Where the page stands: its vessel and kind are read from the address, for the shell carries neither. */

const PATH = /^\/m\/([^/]+)(?:\/(run|log)(?:\/([^/]+))?)?\/?$/i;
const HOW = "mark-by:";

/** @returns {string} the mark in the address as it stands there, upper case; "" where the page has none */
export function markHere() {
  const found = PATH.exec(location.pathname);
  return found ? decodeURIComponent(found[1]).toUpperCase() : "";
}

/** @param {string} mark */
export const vesselPath = (mark) => `/m/${encodeURIComponent(mark)}`;

/** @param {string} mark "" for an entry about no vessel @param {string} kind */
export const logPath = (mark, kind) => (mark ? `${vesselPath(mark)}/log/${kind}` : `/log/${kind}`);

/** @param {string} mark */
export const runPath = (mark) => `${vesselPath(mark)}/run`;

/** Keep whether a mark was scanned or typed, until its entry is logged. @param {string} mark @param {"scanned"|"typed"} how */
export function keepMarkBy(mark, how) {
  sessionStorage.setItem(HOW + mark, how);
}

/**
 * How the mark was come by. A label opened by the phone's own camera leads to /M/ in upper case.
 * @param {string} mark @returns {"scanned"|"typed"|"picked"}
 */
export function markBy(mark) {
  const kept = sessionStorage.getItem(HOW + mark);
  if (kept === "scanned" || kept === "typed") return kept;
  return "picked";
}

/** Whether a label led here: its link carries /M/. */
export const isScannedHere = () => location.pathname.startsWith("/M/");

/** Note a label's link as scanned before anything else moves the address. */
export function noteLabelLink() {
  if (isScannedHere()) keepMarkBy(markHere(), "scanned");
}

/** Where a label leads that was scanned: a ferment that goes on is read, a still that runs has its sheet; the way back is the vessel. @param {any} card */
export function scannedPath(card) {
  const { mark, sort, holds, run } = card;
  if (sort === "fermenter" && holds && !holds.closed && !holds.charged) return logPath(mark, "ferment_reading");
  return run ? runPath(mark) : vesselPath(mark);
}
