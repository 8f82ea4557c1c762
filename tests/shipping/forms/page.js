// @ts-nocheck
import "./effect.js";
import * as shared from "./shared.js";
import named, { counted, count as add } from "./shared.js";
import { all, ns, renamed } from "./handed.js";
import { even } from "./even.js";
import { late } from "./awaited.js";

export { box } from "./shared.js";

export function start() {
  const before = counted;
  add();
  return {
    "import * as": Object.keys(shared).sort(),
    "the default, and names beside it": [named("a"), shared.default("b")],
    "export let, changed": [before, counted, shared.counted],
    "destructured": [shared.first, shared.rest, shared.deep, shared.own],
    "handed on": [all, ns.all, renamed],
    "a circle of functions": [even(7), even(8)],
    "awaited at the top": late,
    "wide letters in templates": [`a\u2009–\u2009${1}`, ((strings) => strings[0])`– ${1}`],
    "effects alone": globalThis.effects,
  };
}
