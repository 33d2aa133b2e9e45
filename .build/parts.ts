/**
 * Bundles a program so that a run makes only the functions of the parts that it calls. A bundle in one CommonJS module has
 * those of all parts at its top, even of such as are loaded by `import()`, and every start would make them all. Here each
 * part is a function of its own, as bundlers write them for browsers.
 */
import { createHash } from "node:crypto";
import { writeFileSync } from "node:fs";
import { basename, dirname, join, relative, resolve } from "node:path";
import { type BuildOptions, build, type Metafile, type Plugin, transform } from "esbuild";

/**
 * Imports that become parts of their own, each loaded when something of it is first called: what most runs never need.
 * By importing files: what they import, with the functions and classes that they call or make instances of. They may do
 * nothing else with them.
 */
export type LateImports = Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>;

/**
 * Writes a script that is a function, to be called with what a CommonJS module is given: `requireCompiled` does.
 * @param options for one entry point
 * @throws Error where a late import is not there: the framework may have moved it.
 */
export async function buildInParts(
  options: BuildOptions & {
    readonly absWorkingDir: string;
    readonly entryPoints: readonly [string];
    readonly outfile: string;
  },
  lateImports: LateImports,
): Promise<Metafile> {
  const { absWorkingDir: root, outfile, entryPoints, target = "esnext", supported = {}, ...others } = options;
  const late = new Late(root, lateImports);
  const { outputFiles, metafile } = await build({
    ...others,
    plugins: [...(others.plugins ?? []), late.plugin],
    absWorkingDir: root,
    target,
    entryPoints: [...entryPoints],
    format: "esm",
    splitting: true,
    outdir: "parts",
    chunkNames: "[hash]",
    write: false,
    metafile: true,
  });
  late.assertFound();
  const parts = await Promise.all(
    outputFiles.map(async ({ path, text }) => {
      const { code } = await transform(late.requiredIn(text, metafile), {
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

class Late {
  private readonly imports: LateImports;
  private readonly root: string;
  private readonly missing: Set<string>;
  /** What is called of each module, by its path. */
  private readonly called = new Map<string, Set<string>>();

  constructor(root: string, imports: LateImports) {
    this.root = root;
    this.imports = imports;
    this.missing = new Set(
      Object.entries(imports).flatMap(([importer, from]) =>
        Object.keys(from).map((path) => `${importer} ${path}`),
      ),
    );
    for (const [importer, from] of Object.entries(imports)) {
      for (const [path, names] of Object.entries(from)) {
        const module = resolve(root, dirname(importer), path);
        const called = this.called.get(module) ?? new Set();
        this.called.set(module, called);
        for (const name of names) called.add(name);
      }
    }
  }

  /** Puts functions of the same names in the place of what is imported. */
  get plugin(): Plugin {
    return {
      name: "late",
      setup: ({ onResolve, onLoad }) => {
        onResolve({ filter: /^\./ }, ({ path, importer }) => {
          const from = relative(this.root, importer);
          if (this.imports[from]?.[path] === undefined) return undefined;
          this.missing.delete(`${from} ${path}`);
          return { path: join(dirname(importer), path), namespace: "late" };
        });
        onLoad({ filter: /./, namespace: "late" }, ({ path }) => ({
          resolveDir: dirname(path),
          contents: [
            `const late = () => import(${JSON.stringify(`./${basename(path)}`)});`,
            ...[...(this.called.get(path) ?? [])].map(
              (name) =>
                `export function ${name}(...args) { return new.target ? new (late().${name})(...args) : late().${name}(...args); }`,
            ),
          ].join("\n"),
        }));
      },
    };
  }

  /** In parts, a late module is not awaited but called for: what calls it cannot wait. */
  requiredIn(text: string, { outputs }: Metafile): string {
    let required = text;
    for (const [path, { entryPoint }] of Object.entries(outputs)) {
      if (entryPoint === undefined || !this.called.has(resolve(this.root, entryPoint))) continue;
      const name = JSON.stringify(`./${basename(path)}`);
      required = required.replaceAll(`import(${name})`, `require(${name})`);
    }
    return required;
  }

  assertFound(): void {
    if (this.missing.size === 0) return;
    throw new Error(`No longer imported, so cannot be late: ${[...this.missing].join(", ")}`);
  }
}
