// @ts-check
/** What was just logged, and the way back: for ten seconds it is one tap, afterwards it stays on the line itself. */
import { takeBack } from "../slate/takeback.js";
import { current } from "../slate/who.js";
import { toast } from "../ui/toast.js";
import { html, render } from "../vendor/lit-html/lit-html.js";
import { icon } from "../icons/icons.js";
import { t } from "../words/t.js";

const STAYS_S = 10;

/** @type {() => void} */
let close = () => {};

/**
 * @param {{words: string, about?: string, entry: string}} said `about`: the figures, as logged; `entry`: its id
 */
export function offerTakeBack({ words, about = "", entry }) {
  close();
  const bar = document.createElement("section");
  bar.className = "undo";
  bar.setAttribute("role", "status");
  bar.setAttribute("aria-label", t("floor-takebackbar-just_logged"));
  document.body.append(bar);
  let left = STAYS_S;
  const show = () => {
    render(html`<p class="undo__words"><span>${words}</span>${about ? html`<span class="quiet">${about}</span>` : ""}</p>
    <button type="button" class="button" @click=${take}>${icon("back")} ${t("floor-take_it_back")} <span class="undo__left" aria-hidden="true">${left}</span></button>`, bar);
    /** @type {HTMLElement} */ (bar.querySelector(".undo__left")).style.setProperty("--left", String(left / STAYS_S));
  };
  const timer = setInterval(() => {
    left -= 1;
    if (left > 0) show();
    else close();
  }, 1000);
  const onPage = new AbortController();
  close = () => {
    clearInterval(timer);
    onPage.abort();
    bar.remove();
    close = () => {};
  };
  async function take() {
    close();
    const who = await current();
    try {
      await takeBack(entry, { code: who?.code ?? "", role: who?.role ?? "" }, t("floor-takebackbar-taken_back_at_once"));
      toast(t("floor-taken_back_it_stays"));
    } catch (error) {
      toast(/** @type {any} */ (error)?.message ?? t("floor-takebackbar-that_could_not_be"), 12_000);
    }
  }
  show();
}
