// @ts-nocheck
/** @type {Record<string, unknown>} */
export const said = {};
