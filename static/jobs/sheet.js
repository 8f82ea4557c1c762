// @ts-check
/** A sheet of a job's own: fetched with the job, so that the first install need not carry it. */

/** @type {Map<string, Promise<void>>} */
const asked = new Map();

/**
 * Put a sheet on the page, once; wait for it before the first drawing, or the page jumps.
 * @param {string} name below static/jobs, "cellar/dial.css"
 * @returns {Promise<void>} also where it cannot be had: the page is then plain, and works
 */
export function wear(name) {
  const known = asked.get(name);
  if (known) return known;
  const link = document.createElement("link");
  link.rel = "stylesheet";
  link.href = new URL(name, import.meta.url).href;
  const worn = new Promise((/** @type {(done?: any) => void} */ done) => {
    link.addEventListener("load", done);
    link.addEventListener("error", done);
  });
  asked.set(name, worn);
  document.head.append(link);
  return worn;
}
