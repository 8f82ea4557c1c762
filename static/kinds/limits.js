// @ts-check
/**
 * Limits of the book's checks that the phone looks at before an entry is logged. The desk sets them for the site, a sort of
 * vessel, a product or one vessel, and they come with the site's settings. Twin of held_limit in webapp/book/before/limits.py.
 */

/** Each as its check declares it: what holds where the desk has set none, and before the first cards came. */
const DECLARED = {
  slope_pct: 1, fall_pct: 12, fall_min: 20, fast_per_day: 0.02, held_off_pct: 2, warm_c: 25, vapour_off_c: 2, flow_pct: 7, flow_least_l: 5, stillage_pct: 0.2, reduce_pct: 0.1, dip_pct: 1, small_l: 100, loss_noise_pct: 1, drift_pct: 1.5, drift_pct_year: 1.2, label_pct: 0.3,
};

/** @typedef {keyof typeof DECLARED} LimitName */

/** @type {Record<string, number>} */
let ofSite = {};
/** By scope, key and name. @type {Record<string, Record<string, Record<string, number>>>} */
let narrower = {};

/** Take the limits that the desk has set. @param {any} site its settings as the cards brought them */
export function useSiteLimits(site) {
  ofSite = site?.checks ?? {};
  narrower = site?.check_limits ?? {};
}

/**
 * The limit that holds for a vessel: the vessel's own, else of what is in it or runs on it, of its sort, of the site, as declared.
 * @param {LimitName} name
 * @param {any} [card] of the vessel; without one the limit that holds for the whole site
 * @param {any} [run] the run on it, where the card does not have it
 * @returns {number}
 */
export function heldLimit(name, card, run = card?.run) {
  for (const [scope, key] of card ? scopesOf(card, run) : []) {
    const found = narrower[scope]?.[key]?.[name];
    if (typeof found === "number") return found;
  }
  return typeof ofSite[name] === "number" ? ofSite[name] : DECLARED[name];
}

/** Narrowest first. @param {any} card @param {any} run @returns {[string, string][]} */
function scopesOf(card, run) {
  const products = [card.holds?.what, card.holds?.material, run?.what].filter(Boolean);
  return [["vessel", card.mark], ...products.map((name) => /** @type {[string, string]} */ (["product", String(name).trim().toLowerCase()])), ["sort", card.sort ?? ""]];
}
