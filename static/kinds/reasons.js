// @ts-check
/** Why the sums refuse a figure, as a message. Twin of webapp/kinds/reasons.py. */
import { data } from "../trade/datafiles.js";
import { NotANumber, OUTSIDE, OutOfDomain } from "../trade/errors.js";
import { brief } from "../trade/numeric.js";
import { figure, message } from "./message.js";

/** The message that says why the sums refuse a figure, and what to do next. @param {OutOfDomain | NotANumber} error */
export function reasonOf(error) {
  if (error instanceof NotANumber) return message(`number-${error.code}`);
  if (error.code !== OUTSIDE) return message(`reason-${error.code}`, error.figures);
  const [what, advice] = [message(`measured-${error.what}`), message(`advice-${error.advice}`)];
  const [low, high] = [error.low, error.high].map((end) => (end === null ? null : brief(end)));
  if (error.unit in data("units")) {
    const possible = { from: low, to: high, unit: error.unit };
    return message("reason-outside", { what, figure: figure(brief(error.value), error.unit), possible, advice });
  }
  // Not every unit of a sum is one that is read on an instrument: the catalogue has the words for the others.
  const unit = error.unit ? message(`measure-${error.unit}`) : "";
  return message("reason-outside_in_words", { what, figure: figure(brief(error.value)), unit, possible: { from: low, to: high }, advice });
}
