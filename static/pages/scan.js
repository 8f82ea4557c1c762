// @ts-check
/** Scan a label, or type its mark; either way leads to the vessel's card. */
import { keepMarkBy, scannedPath, vesselPath } from "../shell/here.js";
import { readCards } from "../shell/phone.js";
import { startTyping } from "../shell/typemark.js";
import { t } from "../words/t.js";

/** @param {string} name @returns {HTMLElement} */
const part = (name) => /** @type {HTMLElement} */ (document.querySelector(`[data-part="${name}"]`));

const NOT_YET = () => t("floor-scan-the_reader_of_labels");
/** @type {any[]} */
let cards = [];

export async function start() {
  cards = await readCards();
  startTyping(cards, open);
  const typed = new URLSearchParams(location.search).get("mark");
  if (typed) return; // the box shows it, and what is wrong with it
  await look();
}

/** @param {string} mark @param {"scanned"|"typed"} how */
function open(mark, how) {
  keepMarkBy(mark, how);
  if (localStorage.getItem("help:buzz") !== "off") navigator.vibrate?.(30);
  const card = how === "scanned" ? cards.find((one) => one.mark === mark) : null;
  location.assign(card ? scannedPath(card) : vesselPath(mark));
}

async function look() {
  let lightUp = () => {};
  const says = (/** @type {string} */ words) => { part("says").textContent = words; };
  part("finder").hidden = false;
  try {
    const { startScan } = await import("../scan/scanner.js").catch(() => { throw new Error(NOT_YET()); });
    const scan = await startScan(/** @type {HTMLVideoElement} */ (part("video")), {
      onMark: (mark) => { scan?.stop(); open(mark, "scanned"); }, onForeign: says, onStatus: says, onDark: () => lightUp(),
    });
    addEventListener("pagehide", () => scan.stop());
    if (scan.torch.available) lightUp = dressTorch(scan.torch);
  } catch (error) {
    part("finder").hidden = true;
    says(/** @type {any} */ (error)?.message ?? ""); // in place of what the scanner told while it tried
    document.querySelector("input")?.focus();
  }
}

/** @param {{set: (on: boolean) => Promise<boolean>}} torch @returns {() => void} lights it, unless a person has had it in hand */
function dressTorch(torch) {
  const button = part("torch");
  button.hidden = false;
  let isTouched = false;
  const turn = async (/** @type {boolean} */ wanted) => {
    if (await torch.set(wanted)) button.setAttribute("aria-pressed", String(wanted));
  };
  button.addEventListener("click", () => {
    isTouched = true;
    void turn(button.getAttribute("aria-pressed") !== "true");
  });
  return () => { if (!isTouched) void turn(true); };
}
