// @ts-check
/**
 * The alcohol that sugar has made or may make.
 * Twin of webapp/trade/sugar.py, which has units, ranges and sources.
 */
import { data } from "./datafiles.js";
import { OutOfDomain } from "./errors.js";
import { checkRange, polynomial } from "./numeric.js";
import { checkGravity } from "./scales.js";

const WATER_20C_KG_L = 0.99820123;

/**
 * @param {number} brix by refractometer, before the ferment, 10 to 30
 * @returns {number} % vol
 */
export function potentialAlcoholFromBrix(brix) {
  const sugar = data("sugar");
  const [least, most] = sugar.must_brix;
  checkRange("sugar", brix, least, most, "Bx", "table_ends");
  return polynomial(sugar.must_sugar_from_brix, brix) / sugar.sugar_g_l_per_pct;
}

/**
 * @param {number} gravity SG 20/20 before the ferment
 * @returns {number} % vol
 */
export function potentialAlcoholFromGravity(gravity) {
  const sugar = data("sugar");
  const density = gravity * WATER_20C_KG_L;
  const [least, most] = sugar.must_density_kg_l;
  checkRange("density", density, least, most, "kg_L", "table_ends");
  return polynomial(sugar.must_sugar_from_density, density - 1) / sugar.sugar_g_l_per_pct;
}

/**
 * @param {number} originalGravity SG
 * @param {number} gravity SG now
 * @param {number} juiceShare above 0, up to 1
 * @returns {number} % vol
 */
export function alcoholFromGravityFall(originalGravity, gravity, juiceShare) {
  checkGravity(originalGravity);
  checkGravity(gravity);
  checkShare(juiceShare);
  if (gravity > originalGravity) {
    throw new OutOfDomain("gravity", gravity, 0.98, originalGravity, "gravity_above_start");
  }
  return (originalGravity - gravity) * data("sugar").alcohol_per_gravity * juiceShare;
}

/**
 * @param {number} fruitKg
 * @param {number} brix by refractometer, 0 to 40
 * @param {number} juiceShare above 0, up to 1
 * @param {number} [unfermentableBrix] 0 to 10
 * @returns {number} LPA to expect
 */
export function presumptiveLpa(fruitKg, brix, juiceShare, unfermentableBrix = 3.5) {
  checkRange("fruit", fruitKg, 0, 1e9, "kg", "check_weights");
  checkRange("sugar", brix, 0, 40, "Bx", "check_scale");
  checkRange("unfermentable_part", unfermentableBrix, 0, 10, "Bx", "usual_unfermentable");
  checkShare(juiceShare);
  const fermentable = Math.max(brix - unfermentableBrix, 0);
  return ((fruitKg * juiceShare * fermentable) / 100) * data("sugar").litres_per_kg_sugar;
}

/**
 * Twin of webapp/trade/ferment.py.
 * @param {number} refractometerBrix 0 to 40
 * @param {number} hydrometerGravity SG 1 to 1.17874, of the same juice
 * @returns {number} % vol, a hint
 */
export function strengthByTwoInstruments(refractometerBrix, hydrometerGravity) {
  checkRange("refractometer", refractometerBrix, 0, 40, "Bx", "check_instrument");
  checkRange("gravity", hydrometerGravity, 1, 1.17874, "SG", "no_baume");
  const strength = 1.646 * refractometerBrix - 2.703 * (145 - 145 / hydrometerGravity) - 1.794;
  checkRange("alcohol_by_both", strength, -25, 25, "pct_vol", "read_both_again");
  return Math.max(strength, 0);
}

/** @param {number} juiceShare */
function checkShare(juiceShare) {
  checkRange("juice_share", juiceShare, 1e-6, 1, "of_one", "usual_juice_share");
}
