// @ts-check
// Fills the parts of gallery.html that are drawn by modules. The run is made up, shaped as a still run is.
import { badge } from "/static/ui/badge.js";
import { drawCurve, sparkline } from "/static/ui/charts.js";
import { ask } from "/static/ui/dialog.js";
import * as format from "/static/ui/format.js";
import * as keypad from "/static/ui/keypad.js";
import { showUpdateNotice } from "/static/ui/notice.js";
import * as theme from "/static/ui/theme.js";
import { toast } from "/static/ui/toast.js";
import { html, render } from "/static/vendor/lit-html/lit-html.js";
import { loadWords } from "/static/words/t.js";

await loadWords();

const start = Date.UTC(2025, 9, 6, 8, 30) / 1000;
const at = (/** @type {number} */ minutes) => start + minutes * 60;
const fall = (/** @type {number} */ minutes) => 80.5 - 0.0102 * Math.max(0, minutes - 10) ** 1.42;
const read = [...Array(19).keys()].map((step) => step * 10);

const el = document.getElementById("curve");
if (el) {
  drawCurve(el, {
    title: "Strength of run R-25-02", yLabel: "% vol", xIsTime: true, height: 210,
    series: [{ label: "", points: read.map((m) => [at(m), fall(m)]) }],
    expected: { label: "11:47", points: [180, 190, 197].map((m) => [at(m), fall(m)]) },
    ghost: { label: "R-25-01", points: [...read, 190, 200, 210].map((m) => [at(m), fall(m * 1.05) - 0.6]) },
    bands: [{ from: at(0), to: at(51), weight: "heads", label: "heads" }, { from: at(51), to: at(180), weight: "hearts", label: "hearts" }],
    marks: [{ x: at(51), label: "cut 09:21", weight: "heads" }],
    levels: [{ y: 58, label: "58" }],
  });
}
document.querySelectorAll("[data-spark]").forEach((cell, row) => sparkline(/** @type {HTMLElement} */ (cell), [[0, 200], [1, 196], [2, row === 2 ? 152 : 192]], { low: 150, high: 200 }));
const badges = document.getElementById("badges");
if (badges) render(html`${badge("stop")} ${badge("entered", "entered, book no. 4 187")}`, badges);
const answers = [{ value: "keep", word: "Keep it" }, { value: "strike", word: "Strike", weight: /** @type {"strike"} */ ("strike") }];
document.getElementById("ask")?.addEventListener("click", async () => toast(`Answer: ${await ask({ title: "Strike this reading?", text: "It stays legible in the book with your reason beside it.", answers })}`));
document.getElementById("toast")?.addEventListener("click", () => toast("On the slate."));
document.getElementById("update")?.addEventListener("click", () => showUpdateNotice(() => {}));
const isDrawn = () => !el || Boolean(el.querySelector("canvas, .table-wrap"));
Object.assign(globalThis, { gallery: { format, keypad, theme, get ready() { return isDrawn(); } } });
