// @ts-check
/** What to add and what the tank should read, worked out from the tank and three boxes. Pure: it draws nothing. */
import { reasonOf } from "../../kinds/reasons.js";
import { OutOfDomain } from "../../trade/errors.js";
import { sentence } from "../../words/say.js";
import { strengthWithWater, waterToTargetKg } from "../../trade/sums.js";
import { dipWithWaterL, glassWithWater, mixedTempC, shrinkageL, waterVolumeL } from "../../trade/reducing.js";

export const BIG_DROP_PCT = 15; // common practice, no source: more than this at once clouds and warms the more
export const HAZE_BELOW_PCT = 46; // common practice, no source: below it long esters come out, the more the colder
const USUAL_C = 20;
const STRENGTH_OFF_PCT = 0.1; // a gauged strength is seldom nearer than this; common practice, no source
/** Of the water, this share goes in before the tank is read: no way leads back from too much. Common practice, no source. */
const MOST = 0.94;
/** Down to which round amount that is taken, from how much on. */
const ROUND = [[100, 10], [40, 5], [10, 1], [4, 0.5]];

/**
 * @typedef {object} Wanted
 * @property {number|null} targetPct
 * @property {number|null} tempC of the tank when it is read
 * @property {number|null} waterTempC
 * @property {number} steps
 * @typedef {{waterKg: number, canL: number, strengthPct: number, dipL: number, glassPct: number|null}} Step water of this step alone; the rest as the tank then stands
 * @typedef {object} Plan
 * @property {number} waterKg
 * @property {number} canL that water by the can, at its temperature
 * @property {number} strengthPct
 * @property {number} dipL at tempC
 * @property {number} dip20L
 * @property {number|null} glassPct what a glass made for 20 °C should show; null off its scale
 * @property {number} shrinksL
 * @property {number} warmsC against the spirit as it is
 * @property {number} mixingC of that by the mixing alone
 * @property {number} doubtKg of the water, both ways
 * @property {number} perKgPct what one kilo more takes off the strength
 * @property {boolean} mayCloud
 * @property {boolean} isBigDrop
 * @property {Step[]} steps
 * @property {number} tempC
 * @property {number} waterTempC
 */

/**
 * @param {import("./tank.js").Tank} tank @param {Wanted} wanted
 * @returns {Plan|string} or what to do where there is none
 */
export function planOf(tank, { targetPct, tempC, waterTempC, steps }) {
  if (targetPct === null) return "";
  try {
    const temp = tempC ?? USUAL_C;
    const waterTemp = waterTempC ?? temp;
    const waterKg = waterToTargetKg(tank.massKg, tank.strengthPct, targetPct);
    const at = (/** @type {number} */ water) => stepAt(tank, water, temp);
    const whole = at(waterKg);
    const each = waterKg / steps;
    return {
      ...whole, waterKg, canL: waterVolumeL(waterKg, waterTemp), dip20L: dipWithWaterL(tank.massKg, tank.strengthPct, waterKg, 20),
      shrinksL: shrinkageL(tank.massKg, tank.strengthPct, waterKg), tempC: temp, waterTempC: waterTemp,
      warmsC: mixedTempC(tank.massKg, tank.strengthPct, temp, waterKg, waterTemp) - temp,
      mixingC: mixedTempC(tank.massKg, tank.strengthPct, Math.max(0, temp), waterKg, Math.max(0, temp)) - Math.max(0, temp),
      doubtKg: waterToTargetKg(tank.massKg, Math.min(100, tank.strengthPct + STRENGTH_OFF_PCT), targetPct) - waterKg,
      perKgPct: strengthWithWater(tank.massKg, tank.strengthPct, waterKg) - strengthWithWater(tank.massKg, tank.strengthPct, waterKg + 1),
      mayCloud: targetPct < HAZE_BELOW_PCT, isBigDrop: tank.strengthPct - targetPct > BIG_DROP_PCT && steps === 1,
      steps: Array.from({ length: steps }, (_, n) => ({ ...at(each * (n + 1)), waterKg: each, canL: waterVolumeL(each, waterTemp) })),
    };
  } catch (error) {
    if (error instanceof OutOfDomain) return sentence(reasonOf(error));
    throw error;
  }
}

/**
 * How much goes in before the tank is read again: most of it, down to a round amount; a little is poured at once.
 * @param {number} water in the unit it is weighed in @returns {number}
 */
export function mostOf(water) {
  const step = ROUND.find(([from]) => water >= from)?.[1];
  return step ? Math.floor((water * MOST) / step + 1e-9) * step : water;
}

/** @param {import("./tank.js").Tank} tank @param {number} waterKg @param {number} tempC */
function stepAt(tank, waterKg, tempC) {
  const { massKg, strengthPct } = tank;
  return {
    strengthPct: strengthWithWater(massKg, strengthPct, waterKg), dipL: dipWithWaterL(massKg, strengthPct, waterKg, tempC),
    glassPct: glassOr(massKg, strengthPct, waterKg, tempC),
  };
}

/** @param {number} massKg @param {number} strengthPct @param {number} waterKg @param {number} tempC */
function glassOr(massKg, strengthPct, waterKg, tempC) {
  try {
    return glassWithWater(massKg, strengthPct, waterKg, tempC);
  } catch (error) {
    if (error instanceof OutOfDomain) return null;
    throw error;
  }
}

/**
 * What was measured after the rest against what the sum says.
 * @param {import("./tank.js").Tank} tank @param {number} targetPct @param {number} measuredPct @param {number|null} dip20L
 * @returns {{offPct: number, trimKg: number|null, shortL: number|null}} trimKg: more water, null where spirit has to go in
 */
export function trimOf(tank, targetPct, measuredPct, dip20L) {
  const offPct = measuredPct - targetPct;
  return {
    offPct, trimKg: offPct >= 0 ? waterToTargetKg(tank.massKg, measuredPct, targetPct) : null,
    shortL: dip20L === null ? null : tank.volumeL - dip20L,
  };
}
