/**
 * Bundles a program so that a run makes only the functions of the parts that it calls. A bundle in one CommonJS module has
 * those of all parts at its top, even of such as are loaded by `import()`, and every start would make them all. Here each
 * part is a function of its own, as bundlers write them for browsers.
 */
import { createHash } from "node:crypto";
import { readFileSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { type BuildOptions, build, type Metafile, transform } from "esbuild";
import { LateImports, type LateNames } from "./late-imports.ts";

/** How the file ends that holds the parts which may never be loaded, beside that of all others. */
const LATE = ".late.cjs";

/**
 * Writes two scripts, each a function to be called with what a CommonJS module is given: `requireCompiled` does. The second
 * holds what the first loads late.
 * @param options for one entry point, with an `outfile` that ends in `.cjs`
 * @throws Error where a late import is not there, or a module exports what changes
 */
export async function buildInParts(
  options: BuildOptions & {
    readonly absWorkingDir: string;
    readonly entryPoints: readonly [string];
    readonly outfile: string;
  },
  lateNames: LateNames,
): Promise<Metafile> {
  const {
    absWorkingDir: root,
    outfile,
    entryPoints,
    plugins = [],
    target = "esnext",
    supported = {},
    ...others
  } = options;
  const late = new LateImports(root, lateNames);
  const { outputFiles, metafile } = await build({
    ...others,
    absWorkingDir: root,
    entryPoints: [...entryPoints],
    plugins: [...plugins, late.plugin],
    target,
    format: "esm",
    splitting: true,
    outdir: "parts",
    chunkNames: "[hash]",
    minifyWhitespace: false, // statements on lines of their own are found below
    minifyIdentifiers: true,
    minifySyntax: true,
    minify: false,
    write: false,
    metafile: true,
  });
  late.assertFound();
  assertConstantExports(metafile, root);
  const [entry = ""] = Object.keys(metafile.outputs).filter(
    (path) => metafile.outputs[path]?.entryPoint === entryPoints[0],
  );
  const early = reachedFrom(entry, metafile, (path) => late.isLate(metafile.outputs[path]?.entryPoint));
  const parts: Record<"early" | "late", string[]> = { early: [], late: [] };
  await Promise.all(
    outputFiles.map(async ({ path, text }) => {
      const body = linked(late.requiredIn(text, metafile));
      const { code } = await transform(body, {
        target,
        supported,
        format: "cjs",
        minify: true,
        logLevel: "error",
      });
      const name = basename(path);
      parts[early.has(name) ? "early" : "late"].push(
        `${JSON.stringify(name)}: (require, later) => {${code}}`,
      );
    }),
  );
  const lateFile = outfile.replace(/\.cjs$/, LATE);
  writeScript(outfile, script(parts.early.sort(), basename(entry), basename(lateFile)));
  writeScript(lateFile, lateScript(parts.late.sort()));
  return metafile;
}

/** The names of the parts that can be loaded without those that are late. */
function reachedFrom(entry: string, { outputs }: Metafile, isLate: (path: string) => boolean): Set<string> {
  const reached = [entry];
  // The list grows while it is walked.
  for (const part of reached) {
    for (const { path } of outputs[part]?.imports ?? []) {
      if (path in outputs && !isLate(path) && !reached.includes(path)) reached.push(path);
    }
  }
  return new Set(reached.map((path) => basename(path)));
}

function writeScript(file: string, text: string): void {
  writeFileSync(file, withId(asAscii(text)));
}

/**
 * The text of a part as the body of a function that returns its exports. What it imports becomes constants: a property of
 * the other part, as bundlers have it, would be looked up at each use, in code that mostly runs once.
 */
function linked(text: string): string {
  return text
    .replace(/^import (?:([^"]+) from )?("[^"]+");$/gm, (_, what: string | undefined, from: string) => {
      const names = what?.replace(/ as /g, ": ");
      if (names === undefined) return `require(${from});`;
      if (names.startsWith("{")) return `const ${names} = require(${from});`;
      return `const ${names.replace("*: ", "")} = require(${from});`;
    })
    .replace(/^export \{([^}]*)\};$/m, (_, names: string) => {
      const properties = names.split(",").map((name) => name.trim().split(" as ").reverse().join(": "));
      return `return {${properties.join(", ")}};`;
    })
    .replace(/\bimport\(("\.\/[^"]+")\)/g, "later($1)");
}

/** Counts for itself. */
const CHANGING = "node_modules/chevrotain/lib/src/scan/tokens.js";

/** Constants are only as good as what they are made of. @throws Error where something exported may change */
function assertConstantExports({ inputs }: Metafile, root: string): void {
  for (const path of Object.keys(inputs)) {
    if (!/\.(?:ts|m?js)$/.test(path) || path.includes(":") || path.endsWith(CHANGING)) continue;
    if (/^export let\b/m.test(readFileSync(join(root, path), "utf8"))) {
      throw new Error(`${path} exports a variable, which other parts of the bundle would not see change.`);
    }
  }
}

/** Says which text it is, for those who keep something of it. */
function withId(text: string): string {
  return `/*${createHash("sha256").update(text).digest("hex").slice(0, 16)}*/${text}`;
}

/** A script exports its parts, and the names of those that were run: `requireCompiled` asks for them. */
function script(parts: readonly string[], entry: string, lateFile: string): string {
  return `(function (exports, require, module, __filename, __dirname) {
"use strict";
${exportsOf(parts)}
const loaded = {};
const load = (name) => {
  const part = name.slice("./".length);
  if (loaded[part] === null) throw new Error("The part " + part + " needs itself.");
  if (loaded[part] === undefined) {
    const home = Object.hasOwn(exports.parts, part) ? exports : part.endsWith(".js") ? require("./${lateFile}") : undefined;
    if (home === undefined) return require(name);
    home.used.push(part);
    loaded[part] = null;
    loaded[part] = home.parts[part](load, later) ?? {};
  }
  return loaded[part];
};
const later = async (name) => load(name);
load("./${entry}");
})
`;
}

function lateScript(parts: readonly string[]): string {
  return `(function (exports) {
"use strict";
${exportsOf(parts)}
})
`;
}

function exportsOf(parts: readonly string[]): string {
  return `exports.used = [];\nexports.parts = {\n${parts.join(",\n")}\n};`;
}

/** Text of ASCII alone is read faster. Where the bundler leaves other characters, in regular expressions, these escapes mean the same. */
function asAscii(text: string): string {
  return text.replace(/[^\0-\x7F]/g, (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, "0")}`);
}
