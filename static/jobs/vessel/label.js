// @ts-check
/** One label of a vessel to a file: the server draws it, so there is none without signal. */
import { giveFile } from "../../slate/file.js";
import { html } from "../../vendor/lit-html/lit-html.js";
import { toast } from "../../ui/toast.js";
import { t } from "../../words/later.js";

const STAYS_MS = 8000;

/** @param {string} mark */
export const labelLink = (mark) => html`<p><a class="button button--plain" href=${pathOf(mark)} download="label-${mark}.png" @click=${(/** @type {Event} */ event) => { event.preventDefault(); void save(mark); }}>${t("floor-stand-save_its_label")}</a></p>`;

/** @param {string} mark */
const pathOf = (mark) => `/api/labels/${encodeURIComponent(mark)}.png`;

/** @param {string} mark */
async function save(mark) {
  const answer = await fetch(pathOf(mark), { cache: "no-store" }).catch(() => null);
  const picture = answer?.ok ? await answer.blob().catch(() => null) : null;
  if (!picture || picture.type !== "image/png") return toast(t("floor-settings-it_could_not_be"), STAYS_MS);
  await giveFile(new File([picture], `label-${mark}.png`, { type: "image/png" }));
}
