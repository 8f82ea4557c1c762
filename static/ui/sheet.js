// @ts-check
/** A sheet that is fetched with what it dresses, so that the first install need not carry it. */

/** @type {Map<string, Promise<void>>} */
const asked = new Map();

/**
 * Put a sheet on the page, once; wait for it before the first drawing, or the page jumps.
 * @param {string} name below static, "jobs/cellar/dial.css"
 * @returns {Promise<void>} also where it cannot be had: the page is then plain, and works
 */
export function wear(name) {
  const worn = asked.get(name) ?? new Promise((done) => {
    const link = document.createElement("link");
    link.rel = "stylesheet";
    link.href = `/static/${name}`;
    link.onload = link.onerror = () => done();
    document.head.append(link);
  });
  asked.set(name, worn);
  return worn;
}
