// @ts-check
/**
 * A vessel with its level: outline, what stands in it layer by layer, and where it may stand. One drawing for fermenter, tank,
 * cask and can. Solid was read; hatched is doubt, or what is yet to come; each layer has its outline.
 */
import { html, svg } from "../../vendor/lit-html/lit-html.js";

/**
 * @typedef {{box: string, top: number, bottom: number, body: string, lines: string, lies?: boolean}} Shape `top`, `bottom`: y of full and empty
 * @typedef {"held"|"water"|"shrinks"|"doubt"} Weight
 * @typedef {{from: number, to: number, weight: Weight}} Layer shares of what it takes when full, 0 to 1
 * @typedef {object} Level
 * @property {string} id of this picture on its page
 * @property {string} sort of vessel
 * @property {Layer[]} layers from the lowest
 * @property {number|null} [at] share: where it stands, as one stroke
 * @property {number|null} [working] share: up to where it is filled at most, dotted
 * @property {[share: number, words: string][]} [scale] ticks on its wall
 * @property {string} words the sentence that stands for the picture
 */

/** @type {Record<string, Shape>} */
const SHAPES = {
  fermenter: { box: "0 0 100 120", top: 20, bottom: 106, body: "M18 28Q18 13 50 11Q82 13 82 28V94Q82 104 50 106Q18 104 18 94Z", lines: "M50 11V4H63M34 104V117M66 104V117" },
  tank: { box: "0 0 100 120", top: 12, bottom: 112, body: "M16 8V100Q16 112 28 112H72Q84 112 84 100V8", lines: "M84 98H93V106" },
  cask: { box: "0 0 140 120", top: 11, bottom: 113, body: "M24 18Q70 6 116 18Q132 62 116 106Q70 118 24 106Q8 62 24 18Z", lines: "M48 13.4Q41 62 48 110.6M92 13.4Q99 62 92 110.6M62 11V5H78V11", lies: true },
  can: { box: "0 0 100 120", top: 34, bottom: 112, body: "M40 8V26L20 42V102Q20 112 30 112H70Q80 112 80 102V42L60 26V8Z", lines: "M35 8H65" },
};

/** @param {string} sort */
export const hasLevel = (sort) => sort !== "still";

/** @param {Level} level */
export function levelPicture({ id, sort, layers, at, working, scale, words }) {
  const shape = SHAPES[sort] ?? SHAPES.can;
  const y = (/** @type {number} */ share) => heightOf(shape, share);
  const width = shape.box.split(" ")[2];
  return html`<svg class="level" viewBox=${shape.box} role="img" aria-label=${words}>
    ${svg`<defs><clipPath id="${id}-inside"><path d=${shape.body} /></clipPath>
      ${["water", "shrinks", "doubt"].map((weight) => hatch(`${id}-${weight}`, weight))}</defs>
    <path class="level__ground" d=${shape.body} />
    <g clip-path="url(#${id}-inside)">${layers.filter(({ from, to }) => to > from).map(({ from, to, weight }) => svg`<rect class="level__layer level__layer--${weight}"
      x="-1" width=${Number(width) + 2} y=${y(to).toFixed(1)} height=${Math.max(0, y(from) - y(to)).toFixed(1)} fill=${weight === "held" ? "" : `url(#${id}-${weight})`} />`)}</g>
    <path class="level__body" d=${shape.body} /><path class="level__lines" d=${shape.lines} />
    ${(scale ?? []).map(([share, figure]) => svg`<path class="level__tick" d="M16 ${y(share).toFixed(1)}h5" /><text class="level__figure" x="13" y=${(y(share) + 3).toFixed(1)}>${figure}</text>`)}
    ${working == null ? "" : svg`<path class="level__working" d="M4 ${y(working).toFixed(1)}H${Number(width) - 4}" />`}
    ${at == null ? "" : svg`<path class="level__at" d="M${shape.lies ? 2 : 8} ${y(at).toFixed(1)}H${Number(width) - (shape.lies ? 2 : 8)}" />`}`}
  </svg>`;
}

/** A hatch of its own for each picture: names of a page are its own. @param {string} id @param {string} weight */
const hatch = (id, weight) => svg`<pattern id=${id} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(${weight === "shrinks" ? -45 : 45})"><path class="level__hatch level__hatch--${weight}" d="M0 0V6" /></pattern>`;

/** @param {Shape} shape @param {number} share @returns {number} y in the drawing */
function heightOf({ top, bottom, lies }, share) {
  const full = Math.min(1, Math.max(0, share));
  return bottom - (bottom - top) * (lies ? lyingHeight(full) : full);
}

/**
 * How high it stands in a round vessel on its side: the height whose segment of the circle has that share of its area.
 * A cask is taken for a cylinder; the picture shows no dip.
 * @param {number} share @returns {number} of the diameter
 */
export function lyingHeight(share) {
  let [low, high] = [0, 1];
  for (let step = 0; step < 30; step += 1) {
    const middle = (low + high) / 2;
    const from = 1 - 2 * middle;
    const area = (Math.acos(from) - from * Math.sqrt(1 - from * from)) / Math.PI;
    if (area < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
