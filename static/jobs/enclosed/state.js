// @ts-check
/** On the slate's page: how many pictures wait behind the entries, and which the book will not take. */
import { countEnclosures } from "../../slate/enclosures.js";
import { listen } from "../../slate/news.js";
import { html, nothing, render } from "../../vendor/lit-html/lit-html.js";
import { t } from "../../words/later.js";

/** @param {HTMLElement} body after which it stands */
export async function tellFiles(body) {
  const place = document.createElement("div");
  place.className = "stack";
  place.dataset.part = "files";
  body.after(place);
  const show = async () => {
    const { waiting, refused } = await countEnclosures();
    render(html`
      ${waiting ? html`<p class="band band--quiet" role="status"><span>${t("floor-enclosed-waiting", { count: waiting })}</span></p>` : nothing}
      ${refused ? html`<p class="band band--ask"><span>${t("floor-enclosed-refused", { count: refused })}</span></p>` : nothing}`, place);
  };
  listen("enclosed", () => void show());
  listen("slate", () => void show());
  await show();
}
