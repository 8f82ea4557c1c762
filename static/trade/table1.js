// @ts-check
/**
 * US true proof by Table 1 (27 CFR 30.61) with its own interpolation (30.23). Twin of webapp/trade/table1.py.
 * Readings go in whole millionths and proofs in tenths: decimal arithmetic, exactly. Needs loadTable1() first.
 */
import { data } from "./datafiles.js";
import { OutOfDomain } from "./errors.js";
import { brief, checkRange } from "./numeric.js";

const MOST_READING = 206;
const MOST_TEMP_F = 100;
const BLANK = -1;
const MILLION = 1e6;

/** @type {Int16Array[] | null} */
let table = null;

/**
 * @param {number} hydrometerProof what the glass shows, 0 to 206 after its correction
 * @param {number} tempF 1 to 100 after its correction
 * @param {number} [hydrometerCorrection] proof, added
 * @param {number} [thermometerCorrectionF] in °F, added
 * @returns {number} proof at 60 °F, to 0.1
 */
export function trueProof(hydrometerProof, tempF, hydrometerCorrection = 0, thermometerCorrectionF = 0) {
  const microTenths = interpolateTable(hydrometerProof, tempF, hydrometerCorrection, thermometerCorrectionF);
  return Math.floor((microTenths + MILLION / 2) / MILLION) / 10;
}

/**
 * As trueProof, before the prescribed rounding.
 * @param {number} hydrometerProof
 * @param {number} tempF
 * @param {number} [hydrometerCorrection]
 * @param {number} [thermometerCorrectionF]
 * @returns {number}
 */
export function trueProofUnrounded(hydrometerProof, tempF, hydrometerCorrection = 0, thermometerCorrectionF = 0) {
  return interpolateTable(hydrometerProof, tempF, hydrometerCorrection, thermometerCorrectionF) / (10 * MILLION);
}

/** Table 1 as tenths of proof by reading and degree F; blanks are -1. */
export function table1Tenths() {
  table ??= data("table1").rows.map((/** @type {[number, number, string]} */ [firstF, tenths, steps]) => {
    const row = new Int16Array(MOST_TEMP_F + 1).fill(BLANK);
    row[firstF] = tenths;
    for (let i = 0; i < steps.length; i++) row[firstF + i + 1] = row[firstF + i] + 98 - steps.charCodeAt(i); // "b"
    return row;
  });
  return /** @type {Int16Array[]} */ (table);
}

/**
 * @param {number} hydrometerProof
 * @param {number} tempF
 * @param {number} hydrometerCorrection
 * @param {number} thermometerCorrectionF
 */
function interpolateTable(hydrometerProof, tempF, hydrometerCorrection, thermometerCorrectionF) {
  checkRange("hydrometer_correction", hydrometerCorrection, -5, 5, "", "see_certificate");
  checkRange("thermometer_correction", thermometerCorrectionF, -5, 5, "", "see_certificate");
  const reading = hydrometerProof + hydrometerCorrection;
  const temp = tempF + thermometerCorrectionF;
  checkRange("proof_reading", reading, 0, MOST_READING, "proof", "table1_reading");
  checkRange("temperature", temp, 1, MOST_TEMP_F, "degF", "table1_temp");
  const rows = table1Tenths();
  const microReading = Math.floor(reading * MILLION + 0.5);
  const microTemp = Math.floor(temp * MILLION + 0.5);
  const wholeReading = Math.floor(microReading / MILLION);
  const wholeTemp = Math.floor(microTemp / MILLION);
  const partReading = microReading % MILLION;
  const partTemp = microTemp % MILLION;
  const here = rows[wholeReading][wholeTemp];
  // The next cell counts only where there is a fraction, so a whole reading on the table's edge still holds.
  const above = partReading ? rows[wholeReading + 1][wholeTemp] : here;
  const warmer = partTemp ? rows[wholeReading][wholeTemp + 1] : here;
  if (here === BLANK || above === BLANK || warmer === BLANK) {
    const figures = { reading: { figure: brief(microReading / MILLION), unit: "proof" }, temp: { figure: brief(microTemp / MILLION), unit: "degF" } };
    throw new OutOfDomain("proof_reading", microReading / MILLION, null, null, "table1_blank", { figures });
  }
  return here * MILLION + partReading * (above - here) - partTemp * (here - warmer);
}
