// @ts-check
// A page with nothing but the scanner: writes what it is told into a list, for the test to read.
import { startScan } from "/static/scan/scanner.js";

const told = document.getElementById("told");
const video = /** @type {HTMLVideoElement} */ (document.getElementById("view"));
/** @param {string} kind */
const tell = (kind) => (/** @type {string} */ text) => {
  const line = document.createElement("li");
  line.className = kind;
  line.textContent = text;
  told?.append(line);
};

startScan(video, { onMark: tell("mark"), onForeign: tell("foreign"), onDark: () => tell("dark")("once"), onStatus: tell("status") }).then(
  (scan) => {
    Object.assign(globalThis, { scan });
    tell("ready")("ready");
  },
  (reason) => tell("refused")(reason.code),
);
