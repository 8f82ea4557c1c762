// @ts-check
/**
 * Grey pictures, and how they are cut: shrink, crop, turn, unroll a cylinder. Their light is in light.js.
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
