// @ts-nocheck
import { odd } from "./odd.js";
export const even = (number) => number === 0 || odd(number - 1);
