// @ts-check
/** Who logs: asked once, before the first form, and then left alone. */
import { people } from "../slate/cards.js";
import { isStale } from "../slate/shown.js";
import { current } from "../slate/who.js";

/**
 * Whoever was chosen on this phone. A phone that has not met the house's people yet logs without a name: better that
 * than not at all.
 * @returns {Promise<{code: string, name: string, role: string}|null>} null when the page is on its way to choose
 */
export async function handOrAsk() {
  const [who, all] = await Promise.all([current(), people()]);
  if (who && !isStale(who, all.find((person) => person.code === who.code))) return who;
  if (!all.length) return { code: "", name: "", role: "" };
  location.replace(`/who?then=${encodeURIComponent(location.pathname + location.search)}`);
  return null;
}

/** Only a path of our own may be gone back to. @param {string|null} then @returns {string} */
export const safeThen = (then) => (then && /^\/(?!\/)[^\\]*$/.test(then) ? then : "/");
