/**
 * Bundles a program so that a run makes only the functions of the parts that it calls. A bundle in one CommonJS module has
 * those of all parts at its top, even of such as are loaded by `import()`, and every start would make them all. Here each
 * part is a function of its own, as bundlers write them for browsers.
 */
import { createHash } from "node:crypto";
import { writeFileSync } from "node:fs";
import { basename } from "node:path";
import { type BuildOptions, build, type Metafile, transform } from "esbuild";

/**
 * Writes a script that is a function, to be called with what a CommonJS module is given: `requireCompiled` does.
 * @param options for one entry point
 */
export async function buildInParts(
  options: BuildOptions & { readonly entryPoints: readonly [string]; readonly outfile: string },
): Promise<Metafile> {
  const { outfile, entryPoints, target = "esnext", supported = {}, ...others } = options;
  const { outputFiles, metafile } = await build({
    ...others,
    target,
    entryPoints: [...entryPoints],
    format: "esm",
    splitting: true,
    outdir: "parts",
    chunkNames: "[hash]",
    write: false,
    metafile: true,
  });
  const parts = await Promise.all(
    outputFiles.map(async ({ path, text }) => {
      const { code } = await transform(text, {
        target,
        supported,
        format: "cjs",
        minify: true,
        logLevel: "error",
      });
      return `${JSON.stringify(basename(path))}: (exports, require, module) => {${code}}`;
    }),
  );
  const [entry = ""] = Object.keys(metafile.outputs).filter(
    (path) => metafile.outputs[path]?.entryPoint === entryPoints[0],
  );
  writeFileSync(outfile, withId(asAscii(script(parts, basename(entry)))));
  return metafile;
}

/** Says which text it is, for those who keep something of it. */
function withId(text: string): string {
  return `/*${createHash("sha256").update(text).digest("hex").slice(0, 16)}*/${text}`;
}

function script(parts: readonly string[], entry: string): string {
  return `(function (exports, require, module, __filename, __dirname) {
"use strict";
const parts = {
${parts.join(",\n")}
};
const loaded = {};
const load = (name) => {
  const part = name.slice("./".length);
  if (!Object.hasOwn(parts, part)) return require(name);
  if (loaded[part] === undefined) {
    loaded[part] = { exports: {} };
    parts[part](loaded[part].exports, load, loaded[part]);
  }
  return loaded[part].exports;
};
load("./${entry}");
})
`;
}

/** Text of ASCII alone is read faster. Where the bundler leaves other characters, in regular expressions, these escapes mean the same. */
function asAscii(text: string): string {
  return text.replace(/[^\0-\x7F]/g, (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, "0")}`);
}
