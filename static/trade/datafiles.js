// @ts-check
/** The tables of the book (webapp/trade/data), fetched once by whoever starts the page. */

/** Read at the start. Table 1 is larger and waits until a proof glass is in use: loadTable1(). */
const NAMES = ["spirit", "gauging", "sugar", "still", "units"];

/** @type {Record<string, any>} */
const files = {};
/** @type {((name: string) => Promise<any>) | null} */
let load = null;
/** @type {Record<string, Promise<void>>} */
const later = {};

/**
 * Reads the tables; every sum needs this first. Calling it again is harmless.
 * @param {(name: string) => Promise<any>} loadJson gets a file name such as "spirit.json", gives the parsed file
 */
export async function initTrade(loadJson) {
  load = loadJson;
  await Promise.all(NAMES.map(async (name) => {
    files[name] ??= await loadJson(`${name}.json`);
  }));
}

/** Reads Table 1, for readings of a proof glass. Calling it again is harmless; after a failure it tries again. */
export const loadTable1 = () => loadLater("table1");

/** The same, for any table that is not wanted at the start. @param {string} name of the file, without its ending @returns {Promise<void>} */
export function loadLater(name) {
  if (!load) throw new Error("initTrade comes first");
  later[name] ??= load(`${name}.json`).then((file) => { files[name] = file; }).catch((reason) => {
    delete later[name];
    throw reason;
  });
  return later[name];
}

/** @returns {boolean} whether readings of a proof glass can be corrected now */
export function hasTable1() {
  return "table1" in files;
}

/**
 * @param {string} name file name without its ending
 * @returns {any}
 */
export function data(name) {
  const file = files[name];
  if (!file) throw new Error(name === "table1" ? "loadTable1 comes first" : "initTrade comes first");
  return file;
}
