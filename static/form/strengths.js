// @ts-check
/** The field that a strength was typed into. @param {any} read */
export const strengthField = (read) => ["strength", "glass", "density"].find((name) => read.values[name] != null) ?? "glass";
