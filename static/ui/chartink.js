// @ts-check
/** What is drawn on a chart beside its lines: bands, cuts, levels, and the words on the lines themselves. */

/**
 * @typedef {import("./charts.js").Band} Band
 * @typedef {import("./charts.js").Mark} Mark
 * @typedef {import("./charts.js").Level} Level
 * @typedef {{colour: (token: string) => string, font: string, labels: Labels}} Ink
 * @typedef {{left: number, top: number, right: number, bottom: number}} Box [canvas px]
 */

/** Words already written, so that the next do not lie over them. */
export class Labels {
  /** @type {Box[]} */
  #taken = [];

  clear() {
    this.#taken = [];
  }

  /**
   * Write at the first place that is free and inside the plot; not at all where none is (the table has it).
   * @param {any} u @param {Ink} ink @param {string} text @param {string} token @param {[x: number, y: number, end?: boolean][]} places left (or right end), middle [canvas px]
   */
  write(u, ink, text, token, places) {
    const { ctx, bbox } = u;
    const ratio = devicePixelRatio;
    ctx.save();
    ctx.font = ink.font.replace(/^[\d.]+px/, `${13 * ratio}px`);
    ctx.textAlign = "left";
    ctx.textBaseline = "middle";
    const width = ctx.measureText(text).width;
    for (const [x, y, isEnd] of places) {
      const left = Math.max(bbox.left + 2, Math.min(isEnd ? x - width - 8 * ratio : x, bbox.left + bbox.width - width));
      const box = { left, top: y - 9 * ratio, right: left + width + 6 * ratio, bottom: y + 9 * ratio };
      const isInside = box.top >= bbox.top - ratio && box.bottom <= bbox.top + bbox.height + ratio;
      if (!isInside || this.#taken.some((other) => overlaps(box, other))) continue;
      this.#taken.push(box);
      ctx.fillStyle = ink.colour(token);
      ctx.fillText(text, left, y);
      break;
    }
    ctx.restore();
  }

  /** Ground on which no word may be written. @param {Box} box */
  take(box) {
    this.#taken.push(box);
  }
}

/** @param {Box} a @param {Box} b */
function overlaps(a, b) {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/** Rows under the upper edge, for the words of bands and marks: after the place, else before it. @param {any} u @param {number} x @returns {[number, number, boolean][]} */
function topRows(u, x) {
  const row = 18 * devicePixelRatio;
  const rows = [0.6, 1.6, 2.6, 3.6, 4.6].map((down) => u.bbox.top + down * row);
  return [...rows.map((y) => /** @type {[number, number, boolean]} */ ([x + 6 * devicePixelRatio, y, false])), ...rows.map((y) => /** @type {[number, number, boolean]} */ ([x, y, true]))];
}

/** @param {any} u @param {Band[]} bands @param {Ink} ink */
export function drawBands(u, bands, ink) {
  for (const band of bands) {
    u.ctx.save();
    if (band.weight === "doubt") drawDoubt(u, band, ink);
    else {
      const left = u.valToPos(band.from, "x", true);
      u.ctx.globalAlpha = 0.16;
      u.ctx.fillStyle = ink.colour(`--${band.weight}`);
      u.ctx.fillRect(left, u.bbox.top, u.valToPos(band.to, "x", true) - left, u.bbox.height);
    }
    u.ctx.restore();
  }
  for (const { from, label, weight, area } of bands) {
    if (area) continue; // its line has its name
    const rows = topRows(u, u.valToPos(from, "x", true));
    if (weight === "doubt") ink.labels.write(u, ink, label, "--copper", rows.slice(5)); // beside the hatch
    else ink.labels.write(u, ink, label, "--chalk", rows.slice(0, 5));
  }
}

/** Where something may lie: hatched with an outline, and one stroke for the best guess. @param {any} u @param {Band} band @param {Ink} ink */
function drawDoubt(u, { from, to, at, area = [[from, Infinity], [to, Infinity], [to, -Infinity], [from, -Infinity]] }, ink) {
  const { ctx, bbox } = u;
  const ratio = devicePixelRatio;
  const end = bbox.top + bbox.height;
  ctx.strokeStyle = ink.colour("--copper");
  ctx.lineWidth = ratio;
  ctx.beginPath();
  for (const [x, y] of area) ctx.lineTo(u.valToPos(x, "x", true), y === Infinity ? bbox.top : y === -Infinity ? end : u.valToPos(y, "y", true));
  ctx.closePath();
  ctx.stroke();
  ctx.clip();
  ctx.beginPath();
  for (let x = u.valToPos(from, "x", true) - bbox.height; x < u.valToPos(to, "x", true); x += 7 * ratio) {
    ctx.moveTo(x, end);
    ctx.lineTo(x + bbox.height, bbox.top);
  }
  ctx.stroke();
  if (at !== undefined) line(u, ctx.strokeStyle, 3, [], [u.valToPos(at, "x", true), bbox.top], [u.valToPos(at, "x", true), end]);
}

/** @param {any} u @param {Level[]} levels @param {Ink} ink */
export function drawLevels(u, levels, ink) {
  for (const { y, label } of levels) {
    const at = u.valToPos(y, "y", true);
    line(u, ink.colour("--dust"), 1.5, [0.1, 6], [u.bbox.left, at], [u.bbox.left + u.bbox.width, at]);
    const places = [0, 0.15, 0.3, 0.5, 0.7].flatMap((share) => [-10, 10].map((up) => /** @type {[number, number]} */ ([u.bbox.left + 4 + share * u.bbox.width, at + up * devicePixelRatio])));
    ink.labels.write(u, ink, label, "--dust", places);
  }
}

/** No words over the lines and cuts, which are drawn later than some of the words. @param {any} u @param {{points: import("./charts.js").Point[]}[]} lines @param {Mark[]} marks @param {Ink} ink */
export function takeLines(u, lines, marks, ink) {
  const near = 2 * devicePixelRatio;
  for (const { points } of lines) {
    const known = points.filter((point) => point[1] !== null).map(([x, y]) => [u.valToPos(x, "x", true), u.valToPos(y, "y", true)]);
    known.forEach(([x, y], n) => {
      const [toX, toY] = known[n + 1] ?? [x, y];
      const steps = Math.max(1, Math.ceil(Math.hypot(toX - x, toY - y) / (6 * devicePixelRatio)));
      for (let step = 0; step < steps; step += 1) {
        const [left, top] = [x + ((toX - x) * step) / steps, y + ((toY - y) * step) / steps];
        ink.labels.take({ left: left - near, top: top - near, right: left + near, bottom: top + near });
      }
    });
  }
  for (const { x } of marks) {
    const at = u.valToPos(x, "x", true);
    ink.labels.take({ left: at - near, top: u.bbox.top, right: at + near, bottom: u.bbox.top + u.bbox.height });
  }
}

/** @param {any} u @param {Mark[]} marks @param {Ink} ink */
export function drawMarks(u, marks, ink) {
  for (const { x, label, weight } of marks) {
    const at = u.valToPos(x, "x", true);
    const token = weight ? `--${weight}` : "--dust";
    line(u, ink.colour(token), 2, [], [at, u.bbox.top], [at, u.bbox.top + u.bbox.height]);
    ink.labels.write(u, ink, label, token, topRows(u, at));
  }
}

/**
 * Each line says its name near its end, over or under itself.
 * @param {any} u @param {{label: string, points: import("./charts.js").Point[], ink: string}[]} lines @param {Ink} ink
 */
export function drawLineLabels(u, lines, ink) {
  const ratio = devicePixelRatio;
  for (const { label, points, ink: token } of [...lines].reverse()) {
    if (!label) continue;
    const known = points.filter((point) => point[1] !== null);
    /** @type {[number, number, boolean?][]} */
    const places = [];
    for (const share of [1, 0.85, 0.65, 0.4, 0.2]) {
      const point = known[Math.round((known.length - 1) * share)];
      if (!point) break;
      const [x, y] = [u.valToPos(point[0], "x", true), u.valToPos(point[1], "y", true)];
      places.push([x + 8 * ratio, y - 10 * ratio], [x - 30 * ratio, y + 14 * ratio], [x + 4 * ratio, y - 18 * ratio], [x - 50 * ratio, y + 20 * ratio], [x, y + 14 * ratio, true]);
    }
    ink.labels.write(u, ink, label, token, places);
  }
}

/** What an axis is read in: over the figures at the side, under those along the foot. @param {any} u @param {string} y @param {string} x @param {Ink} ink */
export function drawUnits(u, y, x, ink) {
  const { ctx, bbox } = u;
  const ratio = devicePixelRatio;
  ctx.save();
  ctx.font = ink.font.replace(/^[\d.]+px/, `${13 * ratio}px`);
  ctx.fillStyle = ink.colour("--dust");
  ctx.textBaseline = "alphabetic";
  ctx.textAlign = "left";
  ctx.fillText(y, 2 * ratio, bbox.top - 5 * ratio);
  ctx.textAlign = "right";
  ctx.fillText(x, bbox.left + bbox.width, ctx.canvas.height - 4 * ratio);
  ctx.restore();
}

/** @param {any} u @param {string} colour @param {number} width @param {number[]} dash @param {[number, number]} from @param {[number, number]} to */
function line(u, colour, width, dash, from, to) {
  const { ctx } = u;
  const ratio = devicePixelRatio;
  ctx.save();
  ctx.strokeStyle = colour;
  ctx.lineWidth = width * ratio;
  ctx.lineCap = "round";
  ctx.setLineDash(dash.map((length) => length * ratio));
  ctx.beginPath();
  ctx.moveTo(...from);
  ctx.lineTo(...to);
  ctx.stroke();
  ctx.restore();
}
