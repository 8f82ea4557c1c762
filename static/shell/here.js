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

/** A label link carries /M/: note it as scanned before anything else moves the address. */
export function noteLabelLink() {
  if (location.pathname.startsWith("/M/")) keepMarkBy(markHere(), "scanned");
}
