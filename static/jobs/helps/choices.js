// @ts-check
/** This phone's helps: which of them are on. Kept on the phone, for whoever holds it. */

/** @typedef {"gloves" | "buzz" | "aloud" | "spoken"} Help */

const KEPT = "help:";
/** A buzz troubles nobody; the others are asked for. */
const ON_AT_FIRST = ["buzz"];

/** @param {Help} help */
export function isHelpOn(help) {
  const kept = localStorage.getItem(KEPT + help);
  return kept ? kept === "on" : ON_AT_FIRST.includes(help);
}

/** @param {Help} help @param {boolean} isOn */
export function setHelp(help, isOn) {
  localStorage.setItem(KEPT + help, isOn ? "on" : "off");
}
