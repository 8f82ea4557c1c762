// @ts-check
/** What the kinds declare in English beside what they name. Twin of webapp/words/declared.py. */
import { kindNamed } from "../kinds/kinds.js";

/** The English words at a path; the last part of the path where the kinds of today have none there. @param {string[]} path */
export function declaredWords([sort, kindName, ...rest]) {
  const kind = kindNamed(kindName);
  return (kind && wordsOf(sort, kind, rest)) ?? rest.at(-1) ?? kindName;
}

/** The sentence that a kind's rule declares under the id `rule-<kind>-<code>`. @param {string} id @returns {string | undefined} */
export function ruleWords(id) {
  const [sort, kindName, ...code] = id.split("-");
  return sort === "rule" ? kindNamed(kindName)?.rules.find((rule) => rule.code === code.join("-"))?.words : undefined;
}

/** Whether a rule names a figure by that name, and no field that somebody types. @param {string} id @param {string} name */
export function isWorkedOut(id, name) {
  const kind = kindNamed(id.split("-")[1]);
  return !!kind?.figures.some((figure) => figure.name === name) && !kind.fields.some((field) => field.name === name);
}

/** @param {string} sort @param {import("../kinds/kinds.js").Kind} kind @param {string[]} rest @returns {string | undefined} */
function wordsOf(sort, kind, [name, value]) {
  if (sort === "title") return kind.title;
  if (sort === "figure") return kind.figures.find((figure) => figure.name === name)?.label;
  const field = kind.fields.find((one) => one.name === name);
  if (sort === "label") return field?.label;
  if (sort === "choice") return field?.choices.find(([each]) => each === value)?.[1];
  return sort === "danger" ? field?.danger[Number(value)]?.[1] : undefined;
}
