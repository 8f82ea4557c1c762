// @ts-check
/**
 * The light in a grey picture: spread its tones, judge each pixel by its neighbours, find where the print is.
 *
 * @typedef {import("./picture.js").Grey} Grey
 */

/** As dark as a label is hardly told from the wall: a torch is wanted. [mean tone, 0 to 255] */
const DARK = 30;
const EACH = 4 * 61; // one pixel of 61 tells how bright a picture is

/** @param {ImageData} image @returns {boolean} whether the picture is too dark to look at without a torch */
export function isDark({ data }) {
  let [sum, seen] = [0, 0];
  for (let at = 0; at < data.length; at += EACH, seen += 1) sum += data[at + 1]; // green is most of what an eye sees
  return seen > 0 && sum / seen < DARK;
}

/** @param {Grey} grey @returns {Grey} the middle 98 in 100 of its tones spread over the whole range */
export function stretch({ data, width, height }) {
  const count = new Uint32Array(256);
  for (const tone of data) count[tone] += 1;
  const edge = data.length / 100;
  let [low, high] = [0, 255];
  for (let seen = count[0]; seen < edge && low < 254; seen += count[low]) low += 1;
  for (let seen = count[255]; seen < edge && high > low + 1; seen += count[high]) high -= 1;
  const tones = new Uint8ClampedArray(256).map((_, tone) => ((tone - low) * 255) / (high - low));
  return { data: data.map((tone) => tones[tone]), width, height };
}

/** @param {Grey} grey @returns {Uint32Array} sums of all above and to the left, one row and column larger */
function sums({ data, width, height }) {
  const wide = width + 1;
  const total = new Uint32Array(wide * (height + 1));
  for (let y = 0; y < height; y += 1) {
    let row = 0;
    for (let x = 0; x < width; x += 1) {
      row += data[y * width + x];
      total[(y + 1) * wide + x + 1] = total[y * wide + x + 1] + row;
    }
  }
  return total;
}

/**
 * @param {Grey} grey @param {number} reach half the side of the square each pixel is compared with
 * @param {number} [soften] half the side of the square that stands for the pixel: 0 is the pixel alone
 * @returns {Grey} black and white: glare and shade go, since each pixel is judged by its neighbours
 */
export function threshold(grey, reach, soften = 0) {
  const { data, width, height } = grey;
  const wide = width + 1;
  const total = sums(grey);
  const out = new Uint8Array(data.length);
  for (let y = 0, at = 0; y < height; y += 1) {
    const [top, bottom] = [Math.max(0, y - reach) * wide, Math.min(height, y + reach + 1) * wide];
    const [over, under] = [Math.max(0, y - soften) * wide, Math.min(height, y + soften + 1) * wide];
    for (let x = 0; x < width; x += 1, at += 1) {
      // Plain sums and no calls: this runs for each pixel of each hard picture.
      const left = x < reach ? 0 : x - reach;
      const right = x + reach < width ? x + reach + 1 : width;
      const around = total[bottom + right] - total[bottom + left] - total[top + right] + total[top + left];
      let own = data[at];
      if (soften) {
        const near = x < soften ? 0 : x - soften;
        const far = x + soften < width ? x + soften + 1 : width;
        own = total[under + far] - total[under + near] - total[over + far] + total[over + near];
        own = (own * wide) / ((far - near) * (under - over));
      }
      out[at] = own * (right - left) * (bottom - top) > around * wide ? 255 : 0;
    }
  }
  return { data: out, width, height };
}

/**
 * The paper behind the print, as it is lit at each place: the brightest tone around, taken back to where it began. Unlike a mean it
 * keeps the edge of a shadow where it is.
 * @param {Grey} grey @param {number} side of the square looked at, odd and larger than the largest black of the symbol [px]
 * @param {number} share of the paper's tone below which a pixel is print, 0 to 1
 * @returns {Grey} black and white
 */
export function againstPaper(grey, side, share) {
  const { width, height } = grey;
  const soft = blur(grey, 1); // noise would pass for brighter paper
  const paper = blur(extreme(extreme(soft, side, true), side, false), 1);
  return { data: soft.data.map((tone, at) => (tone > share * paper.data[at] ? 255 : 0)), width, height };
}

/** @param {Grey} grey @param {number} reach half the side of the square that says how bright it is around [px] @returns {Grey} as if lit evenly */
export function evenOut(grey, reach) {
  const { data, width, height } = grey;
  const around = blur(grey, reach);
  return { data: data.map((tone, at) => Math.min(255, (tone * 128) / Math.max(1, around.data[at]))), width, height };
}

/** @param {Grey} grey @param {number} reach half the side of the square @returns {Grey} means of squares */
function blur(grey, reach) {
  const { width, height } = grey;
  const wide = width + 1;
  const total = sums(grey);
  const out = new Uint8Array(grey.data.length);
  for (let y = 0, at = 0; y < height; y += 1) {
    const [above, below] = [Math.max(0, y - reach), Math.min(height, y + reach + 1)];
    const [top, bottom] = [above * wide, below * wide];
    for (let x = 0; x < width; x += 1, at += 1) {
      const left = x < reach ? 0 : x - reach;
      const right = x + reach < width ? x + reach + 1 : width;
      out[at] = (total[bottom + right] - total[bottom + left] - total[top + right] + total[top + left]) / ((right - left) * (below - above));
    }
  }
  return { data: out, width, height };
}

/** @param {Grey} grey @param {number} side odd [px] @param {boolean} isLargest else the smallest @returns {Grey} the extreme tone of each square */
function extreme({ data, width, height }, side, isLargest) {
  const rows = new Uint8Array(data.length);
  const out = new Uint8Array(data.length);
  for (let y = 0; y < height; y += 1) slide(data, rows, y * width, 1, width, side, isLargest);
  for (let x = 0; x < width; x += 1) slide(rows, out, x, width, height, side, isLargest);
  return { data: out, width, height };
}

/**
 * The extreme of each stretch of a line, in three looks at each pixel however long the stretch is: from the left and from the right in
 * blocks of its length (van Herk 1992, Pattern Recognition Letters 13; Gil and Werman 1993).
 * @param {Uint8Array} from @param {Uint8Array} to @param {number} start @param {number} step between pixels of the line
 * @param {number} count of them @param {number} side odd @param {boolean} isLargest
 */
function slide(from, to, start, step, count, side, isLargest) {
  const [reach, none] = [(side - 1) / 2, isLargest ? 0 : 255];
  const length = Math.ceil((count + 2 * reach) / side) * side;
  const [forth, back] = [new Uint8Array(length), new Uint8Array(length)];
  /** @param {number} at in the line with its margins @returns {number} */
  const tone = (at) => (at < reach || at >= count + reach ? none : from[start + (at - reach) * step]);
  for (let at = 0; at < length; at += 1) {
    const own = tone(at);
    const before = at % side === 0 ? own : forth[at - 1];
    forth[at] = isLargest === own > before ? own : before;
  }
  for (let at = length - 1; at >= 0; at -= 1) {
    const own = tone(at);
    const after = at % side === side - 1 ? own : back[at + 1];
    back[at] = isLargest === own > after ? own : after;
  }
  for (let at = 0; at < count; at += 1) {
    const [one, other] = [back[at], forth[at + side - 1]];
    to[start + at * step] = isLargest === one > other ? one : other;
  }
}

/** @param {Grey} grey @returns {{x: number, y: number}} the middle of the liveliest part: print, most likely */
export function busiest({ data, width, height }) {
  const block = Math.max(2, Math.round(Math.min(width, height) / 90));
  const [wide, high] = [Math.floor(width / block), Math.floor(height / block)];
  const life = new Uint8Array(wide * high);
  for (let y = 0; y < high; y += 1) {
    for (let x = 0; x < wide; x += 1) {
      let sum = 0;
      for (let dy = 0; dy < block; dy += 1) {
        const row = (y * block + dy) * width + x * block;
        for (let dx = 1; dx < block; dx += 1) sum += Math.abs(data[row + dx] - data[row + dx - 1]);
      }
      life[y * wide + x] = Math.min(255, (sum * 2) / block);
    }
  }
  const total = sums({ data: life, width: wide, height: high });
  const reach = Math.round(Math.min(wide, high) / 8);
  let best = { x: width / 2, y: height / 2, sum: 0 };
  for (let y = reach; y + reach < high; y += 1) {
    for (let x = reach; x + reach < wide; x += 1) {
      const [top, bottom] = [(y - reach) * (wide + 1), (y + reach + 1) * (wide + 1)];
      const [left, right] = [x - reach, x + reach + 1];
      const sum = total[bottom + right] - total[bottom + left] - total[top + right] + total[top + left];
      if (sum > best.sum) best = { x: (x + 0.5) * block, y: (y + 0.5) * block, sum };
    }
  }
  return best;
}
