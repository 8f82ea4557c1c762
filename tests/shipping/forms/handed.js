// @ts-nocheck
export * from "./source.js";
export * as ns from "./source.js";
export { all as renamed, default } from "./source.js";
