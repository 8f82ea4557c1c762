// @ts-check
/** Arrow keys on a map of places: to the nearest vessel that way. Without script every vessel is a link like any other. */

/** @type {Record<string, [number, number]>} */
const WAYS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
/** What lies aside of the way counts as so many times farther. */
const ASIDE = 3;

/** @param {HTMLElement} map */
export function walkByKeys(map) {
  map.addEventListener("keydown", (event) => {
    const way = WAYS[event.key];
    const from = document.activeElement;
    if (!way || !from || event.ctrlKey || event.altKey || event.metaKey || event.shiftKey) return;
    const next = nearest([.../** @type {NodeListOf<HTMLElement>} */ (map.querySelectorAll("a.place"))].filter((one) => one !== from), from, way);
    if (!next) return;
    event.preventDefault();
    next.focus();
    next.scrollIntoView({ block: "nearest", inline: "nearest" });
  });
}

/** @param {HTMLElement[]} others @param {Element} from @param {[number, number]} way @returns {HTMLElement|undefined} */
function nearest(others, from, [x, y]) {
  const [left, top] = middle(from);
  const found = others.map((one) => {
    const [to, down] = middle(one);
    const ahead = (to - left) * x + (down - top) * y;
    const aside = Math.abs((to - left) * y) + Math.abs((down - top) * x);
    return { one, ahead, far: ahead + ASIDE * aside };
  });
  return found.filter(({ ahead }) => ahead > 1).sort((a, b) => a.far - b.far)[0]?.one;
}

/** @param {Element} one @returns {[number, number]} */
function middle(one) {
  const box = one.getBoundingClientRect();
  return [box.left + box.width / 2, box.top + box.height / 2];
}
