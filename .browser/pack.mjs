/*
 * Packs the browser side with esbuild. Reads a job as JSON from the input and writes {joined, texts} as JSON:
 *
 *   root      the folder that every name is below
 *   base      the address that the folder is served under, with a slash at its end
 *   entry     the module that a page's script tag names; it runs for its effects, so it stays a file of its own
 *   start     modules that lie in the joined script, with all that they import
 *   joined    the address of the joined script
 *   scripts   every module; one that is not joined keeps its address and takes what it shares from the joined script
 *   classics  scripts that are no modules
 *   styles    sheets, each packed with what it imports
 *
 * A joined module's own address gives the same names, from the joined script: by whatever way a module is come by, it is
 * one and the same, and a name that changes (`export let`) changes for all.
 */
import { readFileSync } from "node:fs";
import path from "node:path";
import * as esbuild from "esbuild";

const job = JSON.parse(readFileSync(0, "utf8"));
const SHARED = { charset: "ascii", legalComments: "none", minify: true, target: "es2022" };
const BUNDLE = {
  ...SHARED, absWorkingDir: job.root, bundle: true, format: "esm", logLevel: "silent", metafile: true, outbase: job.root,
  outdir: job.root, write: false,
};

const nameOf = (file) => path.relative(job.root, file).split(path.sep).join("/");
const isRelative = { filter: /^\.{1,2}\// };
const atItsAddress = (name) => ({ path: job.base + name, external: true });
const nameWanted = ({ path: wanted, resolveDir }) => nameOf(path.join(resolveDir, wanted));

/** Leaves a module that is imported later on, and is not among these, at its address. */
const leaveLater = (inside) => ({
  name: "leave-later",
  setup: (build) => build.onResolve(isRelative, (wanted) => {
    const name = nameWanted(wanted);
    return wanted.kind === "dynamic-import" && !inside.has(name) ? atItsAddress(name) : undefined;
  }),
});

async function findJoined() {
  const found = await build({ entryPoints: [job.entry, ...job.start], plugins: [leaveLater(new Set())] });
  return Object.keys(found.metafile.inputs).filter((name) => name !== job.entry).sort();
}

/** The names that each module gives, those that it hands on (`export *`) among them. */
async function findNames(modules) {
  const found = await build({ entryPoints: modules, plugins: [leaveLater(new Set())] });
  return Object.fromEntries(Object.values(found.metafile.outputs).map((output) => [output.entryPoint, output.exports]));
}

/** Words that give a module's names from somewhere, each turned by `turn`. */
function give(names, turn, from) {
  return names.length ? `export{${names.map(turn).join(",")}}from${JSON.stringify(from)};\n` : `import${JSON.stringify(from)};\n`;
}

async function packScripts() {
  const joined = await findJoined();
  const inside = new Set(joined);
  const names = await findNames(joined);
  const inJoined = (module, name) => `${prefixOf(module)}$${name}`;
  const standIn = (module) => give(names[module], (name) => `${inJoined(module, name)} as ${name}`, job.joined);
  const contents = joined.map((module) => give(names[module], (name) => `${name} as ${inJoined(module, name)}`, `./${module}`)).join("");
  const whole = await build({ stdin: { contents, resolveDir: job.root }, plugins: [leaveLater(inside)] });
  const script = narrow(whole.outputFiles[0].text);
  refuseWhatMoves(script);

  const fromJoined = {
    name: "from-joined",
    setup(build) {
      build.onResolve(isRelative, (wanted) => {
        if (wanted.kind === "entry-point") return undefined;
        const name = nameWanted(wanted);
        return inside.has(name) ? { path: name, namespace: "joined", sideEffects: false } : atItsAddress(name);
      });
      build.onResolve({ filter: /^\// }, ({ path: address, kind }) => (kind === "entry-point" ? undefined : { path: address, external: true, sideEffects: false }));
      build.onLoad({ filter: /./, namespace: "joined" }, ({ path: module }) => ({
        // A statement for each name: what a module does not use of it falls away.
        contents: names[module].map((name) => give([name], (one) => `${inJoined(module, one)} as ${one}`, job.joined)).join(""),
      }));
    },
  };
  const others = job.scripts.filter((name) => !inside.has(name) && !job.classics.includes(name));
  const apart = await build({ entryPoints: others, plugins: [fromJoined] });
  const packed = textsOf(apart);
  // Imported for its effects alone, a joined module has them once the joined script has run.
  for (const name of apart.forEffects) packed[job.base + name] = give([], null, job.joined) + packed[job.base + name];
  return {
    joined,
    texts: { [job.joined]: script, ...Object.fromEntries(joined.map((module) => [job.base + module, standIn(module)])), ...packed },
  };
}

/**
 * One byte a character: for a single dash or thin space a browser would keep, and read, twice as much. What esbuild leaves
 * as it stands lies in tagged templates, where an escape gives the same text but for `raw`.
 */
function narrow(script) {
  if (/\bString\.raw\b/.test(script)) throw new Error("A joined module uses String.raw, which would show the escapes of the joined script.");
  return script.replace(/[\u0100-\uffff]/g, (wide) => `\\u${wide.charCodeAt(0).toString(16).padStart(4, "0")}`);
}

/** The same in every version: a part that a phone keeps of an older one goes on finding what it shares. */
function prefixOf(module) {
  return module.replace(/\.js$/, "").replace(/\W/g, "_");
}

/** What esbuild warns of is an error here, but for the one thing that is seen to: `forEffects` names who imports nothing. */
async function build(options) {
  const made = await esbuild.build({ ...BUNDLE, ...options });
  const [forEffects, others] = [true, false].map((is) => made.warnings.filter(({ id }) => (id === "ignored-bare-import") === is));
  if (others.length) throw new Error((await esbuild.formatMessages(others, { kind: "warning" })).join("\n"));
  return { ...made, forEffects: new Set(forEffects.map(({ location }) => location.file)) };
}

/** In the joined script a module stands at another address: what counts from its own would lead nowhere. */
function refuseWhatMoves(script) {
  if (/\bimport\.meta\b/.test(script)) throw new Error("A joined module uses import.meta, which differs in the joined script.");
  if (/\bimport\((?!")/.test(script)) throw new Error("A joined module imports an address that is worked out. Spell it out.");
}

async function packStyles() {
  return textsOf(await build({ target: undefined, entryPoints: job.styles, external: ["*.woff2", "*.svg", "*.png"] }));
}

async function packClassics() {
  const each = job.classics.map(async (name) => {
    const { code } = await esbuild.transform(readFileSync(path.join(job.root, name), "utf8"), SHARED);
    return [job.base + name, code];
  });
  return Object.fromEntries(await Promise.all(each));
}

function textsOf({ outputFiles }) {
  return Object.fromEntries(outputFiles.map((file) => [job.base + nameOf(file.path), file.text]));
}

const { joined, texts } = await packScripts();
Object.assign(texts, await packStyles(), await packClassics());
process.stdout.write(JSON.stringify({ joined, texts }));
