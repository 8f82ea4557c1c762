// @ts-check
/** The house's ways on this phone: its time zone, how figures are written, the tables of the sums. */
import { loadKinds } from "../kinds/kinds.js";
import { onCards, site } from "../slate/cards.js";

const DECIMAL = "decimal";

/** @returns {""|","|"."} this phone's own choice */
export const decimalChoice = () => /** @type {""|","|"."} */ (localStorage.getItem(DECIMAL) ?? "");

/** @param {""|","|"."} choice */
export function setDecimalChoice(choice) {
  if (choice) localStorage.setItem(DECIMAL, choice);
  else localStorage.removeItem(DECIMAL);
  void showHouse();
}

export async function startHouse() {
  onCards(() => void showHouse());
  await Promise.all([showHouse(), loadKinds()]);
}

async function showHouse() {
  const { dataset } = document.documentElement;
  showDecimal(decimalChoice());
  const house = await site();
  showDecimal(decimalChoice() || house.decimal_mark);
  if (house.time_zone) dataset.zone = house.time_zone;
  if (house.units) dataset.units = house.units;
}

/** @param {string|undefined} mark what nobody has said stays as it is */
function showDecimal(mark) {
  const { dataset } = document.documentElement;
  if (!mark || dataset.decimal === mark) return;
  dataset.decimal = mark;
  document.dispatchEvent(new Event("decimalmark")); // A keypad may have been drawn before the house was read.
}
