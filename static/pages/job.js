// @ts-check
/** A job of the floor that has more to it than one form: its module comes from the part of the app that is fetched right after the first install. */
import { html, render } from "../vendor/lit-html/lit-html.js";
import { setHead } from "../shell/frame.js";
import { t } from "../words/t.js";

/** @type {Record<string, () => Promise<{start: () => Promise<void>|void}>>} by the last part of the address; spelt out, so that each is a file of ours */
const JOBS = {
  run: () => import("../jobs/run/after.js"),
  reduce: () => import("../jobs/reduce/reduce.js"),
  bottling: () => import("../jobs/bottling/line.js"),
  ferments: () => import("../jobs/ferments.js"),
  casks: () => import("../jobs/casks.js"),
  count: () => import("../jobs/goods/round.js"),
  tasting: () => import("../jobs/tasting/tasting.js"),
  notes: () => import("../jobs/note/shift.js"),
  helps: () => import("../jobs/helps/settings.js"),
};

export async function start() {
  const name = location.pathname.split("/")[2] ?? "";
  const body = /** @type {HTMLElement} */ (document.querySelector('[data-part="body"]'));
  body.replaceChildren();
  if (!Object.hasOwn(JOBS, name)) return sayMissing(body, t("floor-job-there_is_no_such"));
  const job = await JOBS[name]().catch(() => null);
  if (job) await job.start();
  else sayMissing(body, t("floor-job-this_page_is_not"));
}

/** @param {HTMLElement} body @param {string} words */
function sayMissing(body, words) {
  setHead({ mark: "", first: t("floor-job-not_here_yet") });
  render(html`<section class="band band--note"><p>${words}</p><div class="band__offers"><a class="button" href="/today">${t("floor-today")}</a></div></section>`, body);
}
