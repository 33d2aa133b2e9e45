/** What bundles leave out of libraries, or load as a bundle of its own. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { basename, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Plugin } from "esbuild";

const require = createRequire(import.meta.url);
const root = fileURLToPath(new URL("..", import.meta.url));

/** The language server is a bundle of its own, which the command line loads when it is asked to serve. */
export const separate: Plugin = {
  name: "separate",
  setup({ onResolve }) {
    onResolve({ filter: /lsp\/launch\.ts$/ }, ({ kind }) => {
      return kind === "dynamic-import" ? { path: "./lsp.cjs", external: true } : undefined;
    });
  },
};

/** A part of the statistics library writes a trace that nobody reads, with a logger that loads Node's network. */
export const silent: Plugin = {
  name: "silent",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^debug$/ }, ({ path }) => ({ path, namespace: "silent" }));
    onLoad({ filter: /./, namespace: "silent" }, () => ({ contents: "module.exports = () => () => {};" }));
  },
};

/** The protocol's library is a CommonJS module of four hundred exports, of which bundlers make a copy for each importing part. */
export const withoutCopies: Plugin = {
  name: "without copies",
  setup({ onResolve, onLoad }) {
    const namespace = "without-copies";
    onResolve({ filter: /^vscode-languageserver(?:\/node)?$/ }, ({ kind }) =>
      kind === "import-statement" ? { path: "vscode-languageserver/node", namespace } : undefined,
    );
    onLoad({ filter: /./, namespace }, ({ path }) => {
      const names = Object.keys(require(path)).join(", ");
      const contents = `const { ${names} } = require(${JSON.stringify(path)});\nexport { ${names} };`;
      return { contents, resolveDir: root };
    });
  },
};

/** Of the editors' protocol the framework's core needs four small things; its whole would be loaded by every command. */
export const withoutProtocol: Plugin = {
  name: "without protocol",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^vscode-languageserver-protocol$/ }, ({ path }) => ({ path, namespace: "core" }));
    onLoad({ filter: /./, namespace: "core" }, () => ({
      resolveDir: join(root, "node_modules/vscode-jsonrpc/lib/common"),
      contents: `
        export { CancellationToken, CancellationTokenSource } from "./cancellation.js";
        export { Emitter } from "./events.js";
        export { ResponseError } from "./messages.js";
        export const LSPErrorCodes = { ServerCancelled: -32802, RequestFailed: -32803 };
      `,
    }));
  },
};

/** Ours that extend or make the parser. */
const WITH_PARSER = [
  "completion-parser.ts",
  "error-messages.ts",
  "lexer.ts",
  "recovering-parser.ts",
  "slip-tokens.ts",
];

/**
 * All that the framework exports is in one module, and whoever asks for something of it would be given the parser with it,
 * and what reads comments: this leaves them out.
 * @param parts what else is left out, as the framework's module names it
 */
export const withoutParser = (...parts: readonly string[]): Plugin => ({
  name: "without parser",
  setup({ onResolve, onLoad }) {
    const suffix = "?without-parser";
    const index = join(root, "node_modules/langium/lib/index.js");
    onResolve({ filter: /^langium$|^\.\.\/index\.js$/ }, ({ path, importer }) => {
      const isWanted =
        path === "langium" ? !WITH_PARSER.includes(basename(importer)) : importer.startsWith(dirname(index));
      return isWanted ? { path: index, suffix } : undefined;
    });
    onLoad({ filter: /langium.lib.index\.js$/ }, ({ path, suffix: asked }) => {
      if (asked !== suffix) return undefined;
      const whole = readFileSync(path, "utf8");
      const without = (text: string, part: string) => replaced(text, `export * from '${part}';`, "");
      const contents = replaced(whole, "./parser/index.js", "./parser/value-converter.js");
      return { contents: parts.reduce(without, contents) };
    });
  },
});

/** @throws Error where it is not there: the framework may have changed. */
function replaced(text: string, part: string, by: string): string {
  if (!text.includes(part)) throw new Error(`The framework's module no longer has ${part}`);
  return text.replace(part, by);
}
