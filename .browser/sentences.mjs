/*
 * What the browser side says. Takes a folder and writes {texts, asked} as JSON:
 *
 *   texts  [file, line, text] of each text that looks like words for people and stands in the code: between the tags of a
 *          template, in an attribute that is shown or read out, or in a string by itself
 *   asked  [file, line, pattern of the id, names of the parameters] of each message that is asked for by `t(...)`
 */
import { readFileSync, readdirSync, statSync } from "node:fs";
import path from "node:path";
import { parse } from "acorn";
import { fullAncestor } from "acorn-walk";

const [root] = process.argv.slice(2);
/** An expression in a template, by its place: a character that no text has. */
const PLACE = 0xe000;
const SHOWN = /\s(?:aria-label|title|placeholder|alt|aria-description|aria-roledescription|aria-valuetext)="([^"]*)"/g;
/** A word after a word, or one that begins large: what a code of ours never is. */
const PROSE = /\p{L}[^]* [^]*\p{L}|^\p{Lu}\p{Ll}|\p{L} \u0001|\u0001 \p{L}|\p{L}\.$/u;
const CLASSES = /^(?:button|field|chip|band|list|tile|quiet|[.[#/])[\w -]*$/;

const isPlace = (char) => char.charCodeAt(0) >= PLACE && char.charCodeAt(0) < PLACE + 500;
const plain = (text) => [...text].map((char) => (isPlace(char) ? "\u0001" : char)).join("").replace(/\s+/g, " ").trim();

function filesBelow(folder) {
  return readdirSync(folder).sort().flatMap((name) => {
    const file = path.join(folder, name);
    if (statSync(file).isDirectory()) return name === "vendor" ? [] : filesBelow(file);
    return name.endsWith(".js") ? [file] : [];
  });
}

/** The texts of a template of markup: what stands between tags, and in attributes that somebody sees or hears. */
function textsOfMarkup(quasi) {
  const whole = quasi.quasis.map((part, at) => part.value.cooked + (at < quasi.expressions.length ? String.fromCharCode(PLACE + at) : "")).join("");
  const found = [];
  let at = 0;
  while (at < whole.length) {
    const isTag = whole[at] === "<" && /[a-z!/]/i.test(whole[at + 1] ?? "");
    let end = at + 1;
    let quote = "";
    while (end < whole.length && (isTag ? quote || whole[end] !== ">" : !(whole[end] === "<" && /[a-z!/]/i.test(whole[end + 1] ?? "")))) {
      if (isTag && quote) quote = whole[end] === quote ? "" : quote;
      else if (isTag && /["']/.test(whole[end])) quote = whole[end];
      end += 1;
    }
    if (isTag) for (const [, text] of whole.slice(at, end).matchAll(SHOWN)) found.push(text);
    else found.push(whole.slice(at, end));
    at = isTag ? end + 1 : end;
  }
  return found.map(plain).filter((text) => /\p{L}/u.test(text.replace(/&\w+;/g, "")));
}

/** The pattern of an id that is spelt out, or put together in the call. */
function patternOf(node) {
  const escaped = (text) => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
  if (node?.type === "Literal") return escaped(String(node.value));
  if (node?.type === "TemplateLiteral") return node.quasis.map((part) => escaped(part.value.cooked)).join(".+");
  return null;
}

const [texts, asked] = [[], []];
for (const file of filesBelow(root)) {
  const source = readFileSync(file, "utf8");
  const name = path.relative(root, file).split(path.sep).join("/");
  const ast = parse(source, { ecmaVersion: "latest", sourceType: "module", locations: true });
  fullAncestor(ast, (node, _state, ancestors) => {
    const parent = ancestors.at(-2);
    const line = node.loc.start.line;
    if (node.type === "TaggedTemplateExpression") for (const text of textsOfMarkup(node.quasi)) texts.push([name, line, text]);
    if (node.type === "CallExpression" && node.callee.name === "t") {
      const [id, params] = node.arguments;
      const isPlain = params?.type === "ObjectExpression" && params.properties.every((one) => one.type === "Property");
      for (const one of id?.type === "ConditionalExpression" ? [id.consequent, id.alternate] : [id]) {
        asked.push([name, line, patternOf(one), params ? (isPlain ? params.properties.map(({ key }) => key.name ?? key.value) : null) : []]);
      }
    }
    if (node.type === "TemplateLiteral" && parent?.type !== "TaggedTemplateExpression") {
      const text = node.quasis.map((part) => part.value.cooked).join("\u0001");
      if (PROSE.test(text) && !CLASSES.test(text)) texts.push([name, line, text]);
    }
    if (node.type === "Literal" && typeof node.value === "string" && !/^(?:Import|Export)/.test(parent?.type ?? "")) {
      const isKey = parent?.type === "Property" && parent.key === node;
      if (!isKey && PROSE.test(node.value) && !CLASSES.test(node.value)) texts.push([name, line, node.value]);
    }
  });
}
process.stdout.write(JSON.stringify({ texts, asked }));
