// @ts-nocheck
import { even } from "./even.js";
export const odd = (number) => number !== 0 && even(number - 1);
