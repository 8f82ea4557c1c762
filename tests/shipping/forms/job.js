// @ts-nocheck
/** Not joined: it takes from the joined modules, and from one beside it. */
import "./effect.js";
import word, * as handed from "./handed.js";
import * as shared from "./shared.js";
import greet, { box, count, counted as now, Shape as Form } from "./shared.js";
import near, { tell } from "./beside.js";
import { said } from "./said.js";

export { box };

export async function start() {
  const before = now;
  count();
  const taken = [];
  for await (const step of shared.steps()) taken.push(step);
  said.job = {
    "import * as": Object.keys(shared).sort(),
    "import * as, of what is handed on": Object.keys(handed).sort(),
    "the default": [greet("c"), word, handed.default, near],
    "export let, changed": [before, now, shared.counted, tell()],
    "destructured": [shared.first, shared.rest, shared.deep, shared.own],
    "a class and a generator": [new Form().name, new shared.Shape().name, taken],
    "handed on": [handed.all, handed.ns.all, handed.renamed],
    "effects alone": globalThis.effects,
  };
}
