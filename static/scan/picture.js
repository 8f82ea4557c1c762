// @ts-check
/**
 * Small grey pictures and what a hard label needs done to them: shrink, even out the light, unroll a cylinder.
 * Pure sums on bytes; nothing here knows about cameras or codes.
 *
 * @typedef {{data: Uint8Array, width: number, height: number}} Grey one byte a pixel, rows from the top
 */

/** @param {ImageData} image @returns {Grey} */
export function greyOf({ data, width, height }) {
  const grey = new Uint8Array(width * height);
  for (let at = 0, from = 0; at < grey.length; at += 1, from += 4) {
    grey[at] = (data[from] * 77 + data[from + 1] * 151 + data[from + 2] * 28) >> 8;
  }
  return { data: grey, width, height };
}

/** @param {Grey} grey @returns {ImageData} */
export function imageOf({ data, width, height }) {
  const image = new ImageData(width, height);
  const words = new Uint32Array(image.data.buffer);
  for (let at = 0; at < data.length; at += 1) words[at] = 0xff000000 | (data[at] * 0x010101);
  return image;
}

/** @param {Grey} grey @param {number} by whole number @returns {Grey} means of squares: less noise, less blur */
export function shrink({ data, width, height }, by) {
  const [wide, high] = [Math.floor(width / by), Math.floor(height / by)];
  const small = new Uint8Array(wide * high);
  for (let y = 0; y < high; y += 1) {
    for (let x = 0; x < wide; x += 1) {
      let sum = 0;
      for (let dy = 0; dy < by; dy += 1) {
        const row = (y * by + dy) * width + x * by;
        for (let dx = 0; dx < by; dx += 1) sum += data[row + dx];
      }
      small[y * wide + x] = sum / (by * by);
    }
  }
  return { data: small, width: wide, height: high };
}

/** @param {Grey} grey @param {number} left @param {number} top @param {number} wide @param {number} high @returns {Grey} */
export function crop({ data, width, height }, left, top, wide, high) {
  const x = Math.round(Math.max(0, Math.min(left, width - wide)));
  const y = Math.round(Math.max(0, Math.min(top, height - high)));
  const [w, h] = [Math.min(Math.round(wide), width - x), Math.min(Math.round(high), height - y)];
  const part = new Uint8Array(w * h);
  for (let row = 0; row < h; row += 1) part.set(data.subarray((y + row) * width + x, (y + row) * width + x + w), row * w);
  return { data: part, width: w, height: h };
}

/** @param {Grey} grey @returns {Grey} rows for columns */
export function transpose({ data, width, height }) {
  const turned = new Uint8Array(data.length);
  for (let y = 0; y < height; y += 1) for (let x = 0; x < width; x += 1) turned[x * height + y] = data[y * width + x];
  return { data: turned, width: height, height: width };
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
  /** @param {number} x @param {number} y @param {number} by */
  const mean = (x, y, by) => {
    const [left, right] = [x < by ? 0 : x - by, x + by >= width ? width : x + by + 1];
    const [top, bottom] = [(y < by ? 0 : y - by) * wide, (y + by >= height ? height : y + by + 1) * wide];
    const sum = total[bottom + right] - total[bottom + left] - total[top + right] + total[top + left];
    return (sum * wide) / ((right - left) * (bottom - top));
  };
  const out = new Uint8Array(data.length);
  for (let y = 0, at = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1, at += 1) {
      out[at] = (soften ? mean(x, y, soften) : data[at]) > mean(x, y, reach) ? 255 : 0;
    }
  }
  return { data: out, width, height };
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

/** @param {Grey} grey @param {number} middle column of the axis @param {number} radius px @returns {Grey} unrolled */
export function unbend({ data, width, height }, middle, radius) {
  const wide = Math.round(2.5 * radius);
  const flat = new Uint8Array(wide * height);
  for (let x = 0; x < wide; x += 1) {
    const from = middle + radius * Math.sin((x - wide / 2) / radius);
    if (from < 0 || from >= width - 1) continue;
    const left = Math.floor(from);
    const part = from - left;
    for (let y = 0; y < height; y += 1) {
      const at = y * width + left;
      flat[y * wide + x] = data[at] * (1 - part) + data[at + 1] * part;
    }
  }
  return { data: flat, width: wide, height };
}
