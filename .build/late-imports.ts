/** Imports that become parts of a bundle of their own, each loaded when something of it is first called. */
import { isBuiltin } from "node:module";
import { basename, dirname, posix, relative, resolve } from "node:path";
import type { Metafile, Plugin } from "esbuild";

/**
 * By importing modules: what they import, with the functions and classes that they call or make instances of. They may do
 * nothing else with them. Modules are named by their paths in the repository, or from `node_modules` on. What is imported is
 * named as it is there: a relative path, or a module of Node.
 */
export type LateNames = Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>;

const NAMESPACE = "late";

export class LateImports {
  private readonly root: string;
  private readonly byImporter: LateNames;
  /** What is called of each module. */
  private readonly called = new Map<string, Set<string>>();
  private readonly missing = new Set<string>();

  /** @param root absolute path of the repository */
  constructor(root: string, byImporter: LateNames) {
    this.root = root;
    this.byImporter = byImporter;
    for (const [importer, imports] of Object.entries(byImporter)) {
      for (const [path, names] of Object.entries(imports)) {
        const module = isBuiltin(path) ? path : posix.join(posix.dirname(importer), path);
        this.called.set(module, new Set([...(this.called.get(module) ?? []), ...names]));
        this.missing.add(described(importer, path));
      }
    }
  }

  /** Puts functions of the same names in the place of what is imported. */
  get plugin(): Plugin {
    return {
      name: "late imports",
      setup: ({ onResolve, onLoad }) => {
        onResolve({ filter: /./ }, ({ path, importer }) => {
          const from = this.nameOf(importer);
          if (this.byImporter[from]?.[path] === undefined) return undefined;
          this.missing.delete(described(from, path));
          return { path: isBuiltin(path) ? path : resolve(dirname(importer), path), namespace: NAMESPACE };
        });
        onLoad({ filter: /./, namespace: NAMESPACE }, ({ path }) =>
          isBuiltin(path)
            ? { contents: standIn(`require(${JSON.stringify(path)})`, this.called.get(path)) }
            : {
                contents: standIn(
                  `import(${JSON.stringify(`./${basename(path)}`)})`,
                  this.called.get(this.nameOf(path)),
                ),
                resolveDir: dirname(path),
              },
        );
      },
    };
  }

  /** Whether a part is that of a late module. @param entryPoint of the part, as the bundler names it */
  isLate(entryPoint: string | undefined): boolean {
    return entryPoint !== undefined && this.called.has(this.nameOf(resolve(this.root, entryPoint)));
  }

  /** The text of a part in which late modules are not awaited but called for: who calls them cannot wait. */
  requiredIn(text: string, { outputs }: Metafile): string {
    let required = text;
    for (const [path, { entryPoint }] of Object.entries(outputs)) {
      if (!this.isLate(entryPoint)) continue;
      const name = JSON.stringify(`./${basename(path)}`);
      required = required.replaceAll(`import(${name})`, `require(${name})`);
    }
    return required;
  }

  /** @throws Error where an import was not seen: its module may have moved. */
  assertFound(): void {
    if (this.missing.size === 0) return;
    throw new Error(`No longer imported, so cannot be late: ${[...this.missing].join("; ")}.`);
  }

  private nameOf(path: string): string {
    const within = path.lastIndexOf("node_modules");
    return (within < 0 ? relative(this.root, path) : path.slice(within)).replaceAll("\\", "/");
  }
}

function described(importer: string, path: string): string {
  return `${path} in ${importer}`;
}

/** A module that loads another one when something of it is called. */
function standIn(loading: string, names: ReadonlySet<string> = new Set()): string {
  const functions = [...names].map(
    (name) => `export function ${name}(...args) {
      return new.target === undefined ? late().${name}(...args) : new (late().${name})(...args);
    }`,
  );
  return [`const late = () => ${loading};`, ...functions].join("\n");
}
