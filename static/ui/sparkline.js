// @ts-check

const SVG = "http://www.w3.org/2000/svg";

/**
 * A small line without axes, for a table's row or a card. Only an ornament of figures that stand beside it, unless it has a label.
 * @param {HTMLElement} el emptied first
 * @param {[x: number, y: number][]} points
 * @param {{label?: string, low?: number, high?: number}} [options] label: spoken in place of the picture; low, high: one range for
 *   neighbours, so that lines under each other can be compared
 */
export function sparkline(el, points, { label = "", low, high } = {}) {
  const svg = document.createElementNS(SVG, "svg");
  svg.setAttribute("class", "spark");
  svg.setAttribute("viewBox", "0 0 100 32");
  svg.setAttribute("preserveAspectRatio", "none");
  if (label) {
    svg.setAttribute("role", "img");
    svg.setAttribute("aria-label", label);
  } else {
    svg.setAttribute("aria-hidden", "true");
  }
  if (points.length) svg.append(...paths(points, [low, high].filter(Number.isFinite)));
  el.replaceChildren(svg);
}

/** @param {[number, number][]} points @param {any[]} range */
function paths(points, range) {
  const [xs, ys] = [points.map((point) => point[0]), [...points.map((point) => point[1]), ...range]];
  const place = (/** @type {number} */ value, /** @type {number[]} */ all, /** @type {number} */ low, /** @type {number} */ high) => {
    const [least, most] = [Math.min(...all), Math.max(...all)];
    return (most > least ? low + ((value - least) / (most - least)) * (high - low) : (low + high) / 2).toFixed(1);
  };
  const steps = points.map(([x, y]) => `${place(x, xs, 2, 98)} ${place(y, ys, 29, 3)}`);
  return [path(`M${steps.join("L")}`, "spark__line"), path(`M${steps[steps.length - 1]}h0`, "spark__end")];
}

/** @param {string} drawn @param {string} className */
function path(drawn, className) {
  const made = document.createElementNS(SVG, "path");
  made.setAttribute("d", drawn);
  made.setAttribute("class", className);
  return made;
}
