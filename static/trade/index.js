// @ts-check
/** Everything a page needs of the sums, by one import. `initTrade` first; `loadTable1` before a proof glass. */
export * from "./alcoholometry.js";
export { hasTable1, initTrade, loadTable1 } from "./datafiles.js";
export * from "./density.js";
export * from "./dipping.js";
export * from "./errors.js";
export * from "./gauging.js";
export { fixed, roundHalfUp } from "./numeric.js";
export * from "./obscured.js";
export * from "./proof.js";
export {
  brixFromGravity, brixFromKmw, brixFromOechsle, gravityFromBrix, gravityFromKmw, gravityFromPlato, kmwFromBrix, kmwFromGravity,
  oechsleFromBrix, oechsleFromGravity, platoFromGravity,
} from "./scales.js";
export * from "./still.js";
export * from "./sugar.js";
export * from "./sums.js";
export * from "./table1.js";
export * from "./units.js";
