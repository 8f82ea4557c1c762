// @ts-check
/** Answers of this phone that strike a line of its own. */

/** The entries that answers among these strike. @param {import("./entry.js").Entry[]} entries @returns {Set<string | null>} */
export const struckBy = (entries) => new Set(entries.filter(isStrike).map((entry) => entry.values.entry?.raw ?? null));

/** @param {import("./entry.js").Entry} entry */
export const isStrike = (entry) => entry.kind === "answer" && entry.values.verdict?.raw === "struck" && !entry.values.query?.raw;
