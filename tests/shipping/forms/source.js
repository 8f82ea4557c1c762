// @ts-nocheck
export const all = "all";
const words = "an expression";
export default words;
