// @ts-check
/** Pictures and voice notes to be seen: small ones in a row, one at a time in a dialog. From this phone where it has them, else from the book. */
import { about, fileOf } from "../../slate/enclosures.js";
import { html, nothing, render } from "../../vendor/lit-html/lit-html.js";
import { icon } from "../../icons/icons.js";
import { t } from "../../words/later.js";

/** Addresses of what lies on this phone, by name: made once a page. @type {Map<string, Promise<string>>} */
const urls = new Map();

/** @param {string} sha256 @param {boolean} [isSmall] @returns {Promise<string>} */
function addressOf(sha256, isSmall = false) {
  const own = urls.get(sha256) ?? fileOf(sha256).then((file) => (file ? URL.createObjectURL(file) : ""), () => "");
  urls.set(sha256, own);
  return own.then((url) => url || `/api/enclosures/${sha256}${isSmall ? "/thumb" : ""}`);
}

/**
 * A small picture that opens in full. It asks for its bytes only when it comes into sight.
 * @param {string} sha256 @param {string} words what it is @param {string} [type] of its content, where the book said it
 */
export function thumb(sha256, words, type = "image/jpeg") {
  if (!type.startsWith("image/")) return html`<button type="button" class="thumbs__one thumbs__one--other" aria-label=${words} @click=${() => void open(sha256, words, type)}>${icon(type.startsWith("audio/") ? "note" : "file", "large")}</button>`;
  return html`<button type="button" class="thumbs__one" aria-label=${words} @click=${() => void open(sha256, words, type)}>
    <img alt="" decoding="async" width="72" height="72" data-name=${sha256}></button>`;
}

/** What has come into sight gets its picture: a long row reads nothing that nobody looks at. */
const sight = new IntersectionObserver((seen) => {
  for (const { target, isIntersecting } of seen) {
    if (!isIntersecting || !(target instanceof HTMLImageElement)) continue;
    sight.unobserve(target);
    const name = target.dataset.name ?? "";
    void addressOf(name, true).then((url) => { if (target.dataset.name === name) target.src = url; });
  }
}, { rootMargin: "120px" });

/** Give the small pictures below an element their bytes, each when it is seen. @param {Element} place */
export function fillThumbs(place) {
  for (const image of place.querySelectorAll("img[data-name]")) {
    if (!(image instanceof HTMLImageElement) || image.dataset.filled === image.dataset.name) continue;
    image.dataset.filled = image.dataset.name;
    image.removeAttribute("src");
    sight.observe(image);
  }
}

/** @param {string} sha256 @param {string} words @param {string} type */
export async function open(sha256, words, type) {
  const opener = document.activeElement;
  const [url, known] = await Promise.all([addressOf(sha256), about(sha256)]);
  const dialog = document.createElement("dialog");
  dialog.className = "dialog dialog--wide";
  dialog.setAttribute("aria-label", words);
  document.body.append(dialog);
  dialog.addEventListener("close", () => {
    dialog.remove();
    if (opener instanceof HTMLElement && opener.isConnected) opener.focus();
  });
  render(html`${contentOf(url, words, type || known?.type || "")}
    <p class="quiet">${words}${stateWords(known)}</p>
    <div class="dialog__answers"><button type="button" class="button button--main" @click=${() => dialog.close()}>${t("floor-far-close")}</button></div>`, dialog);
  dialog.showModal();
}

/** @param {string} url @param {string} words @param {string} type */
function contentOf(url, words, type) {
  if (type.startsWith("audio/")) return html`<audio controls preload="metadata" src=${url}></audio>`;
  if (!type.startsWith("image/")) return html`<a class="button" href=${url} download>${t("floor-enclosed-open_the_paper")}</a>`;
  return html`<img class="enclosed__whole" src=${url} alt=${words}>`;
}

/** @param {import("../../slate/enclosures.js").Enclosure|undefined} known */
function stateWords(known) {
  if (known?.state === "waiting") return t("floor-enclosed-on_this_phone");
  return known?.state === "refused" ? t("floor-enclosed-not_in_the_book", { words: known.words }) : nothing;
}
