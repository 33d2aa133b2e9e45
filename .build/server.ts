/** Bundles the command line and the language server: half of what a start from the sources costs is finding modules. */
import { chmodSync, copyFileSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { basename, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { type BuildOptions, build, type Metafile, type Plugin } from "esbuild";
import { toolVersion } from "../server/node/version.ts";
import type { LateNames } from "./late-imports.ts";
import { buildInParts } from "./parts.ts";
import { thirdPartyNotices } from "./third-party-notices.ts";

const require = createRequire(import.meta.url);
const root = fileURLToPath(new URL("..", import.meta.url));

/** The language server is a bundle of its own, which the command line loads when it is asked to serve. */
const separate: Plugin = {
  name: "separate",
  setup({ onResolve }) {
    onResolve({ filter: /lsp\/launch\.ts$/ }, ({ kind }) => {
      return kind === "dynamic-import" ? { path: "./lsp.cjs", external: true } : undefined;
    });
  },
};

/** A part of the statistics library writes a trace that nobody reads, with a logger that loads Node's network. */
const silent: Plugin = {
  name: "silent",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^debug$/ }, ({ path }) => ({ path, namespace: "silent" }));
    onLoad({ filter: /./, namespace: "silent" }, () => ({ contents: "module.exports = () => () => {};" }));
  },
};

/** The protocol's library is a CommonJS module of four hundred exports, of which bundlers make a copy for each importing part. */
const withoutCopies: Plugin = {
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
const withoutProtocol: Plugin = {
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

/**
 * What most runs never call. The parser and what explains mistakes: texts without one are read by the reader that is written
 * from the grammar. Services of the framework that nobody asks for. And the flight model.
 */
const SELDOM_CALLED: LateNames = {
  "language/syntax/guarded-parser.ts": { "./recovering-parser.ts": ["createRecoveringParser"] },
  "language/checks/document-validator.ts": { "../syntax/syntax-errors.ts": ["syntaxErrors"] },
  "language/checks/broken-parts.ts": { "../syntax/syntax-errors.ts": ["brokenPlaces"] },
  "language/core-module.ts": {
    "./syntax/error-messages.ts": ["DrillwrightParserErrorMessages"],
    "./syntax/slip-tokens.ts": ["DrillwrightTokenBuilder"],
  },
  "server/scoring/physics.ts": {
    "../flight/launch-efficiency.ts": ["launchEfficiency"],
    "../flight/standard-carry.ts": ["standardCarry"],
  },
  "server/flight/cross-checks.ts": { "./flight-cross-checks.ts": ["disagreementsWithFlight"] },
  "node_modules/langium/lib/default-module.js": {
    "./documentation/documentation-provider.js": ["JSDocDocumentationProvider"],
    "./languages/grammar-config.js": ["createGrammarConfig"],
    "./parser/completion-parser-builder.js": ["createCompletionParser"],
    "./parser/langium-parser-builder.js": ["createLangiumParser"],
    "./parser/langium-parser.js": ["LangiumParserErrorMessageProvider"],
    "./parser/lexer.js": ["DefaultLexer", "DefaultLexerErrorMessageProvider"],
    "./parser/token-builder.js": ["DefaultTokenBuilder"],
    "./serializer/hydrator.js": ["DefaultHydrator"],
  },
};

/** And what an editor may never ask for, or asks for later. */
const SELDOM_CALLED_BY_EDITORS: LateNames = {
  "language/editor/editor-module.ts": {
    "./completion/completion-parser.ts": ["createCompletionParser"],
    "../syntax/lexer.ts": ["createLexer"],
  },
  "server/lsp/main.ts": { "node:crypto": ["createHash"] },
  "server/node/growing-file.ts": {
    "node:crypto": ["createHash"],
    "node:fs/promises": ["open", "stat"],
  },
  "node_modules/vscode-jsonrpc/lib/node/main.js": { crypto: ["randomBytes"] },
  "node_modules/vscode-languageserver/lib/node/files.js": { child_process: ["fork", "spawnSync"] },
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
const withoutParser = (...parts: readonly string[]): Plugin => ({
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
      const whole = readFileSync(path, "utf8").replace("./parser/index.js", "./parser/value-converter.js");
      return { contents: parts.reduce((rest, part) => rest.replace(`export * from '${part}';`, ""), whole) };
    });
  },
});

const options = {
  absWorkingDir: root,
  bundle: true,
  platform: "node",
  target: "node22",
  format: "cjs",
  supported: { "dynamic-import": false }, // becomes `require`, which works in a script with kept code
  minify: true,
  legalComments: "none", // the notices below say it in full
  metafile: true,
  logLevel: "warning",
  plugins: [separate, silent],
  define: { DRILLWRIGHT_VERSION: JSON.stringify(toolVersion()) },
  logOverride: { "empty-import-meta": "silent" }, // used by programs that run from their sources only
} as const satisfies BuildOptions;

const [, commandLine, , languageServer, worker] = await Promise.all([
  build({
    ...options,
    entryPoints: ["server/cli/launch.ts"],
    outfile: "dist/cli/drillwright.cjs",
    banner: { js: "#!/usr/bin/env node" },
    target: "node14", // so that it can tell an old Node that it is too old
  }),
  buildInParts(
    {
      ...options,
      entryPoints: ["server/cli/main.ts"],
      outfile: join(root, "dist/cli/main.cjs"),
      plugins: [...options.plugins, withoutProtocol, withoutParser("./documentation/index.js")],
    },
    SELDOM_CALLED,
  ),
  build({ ...options, entryPoints: ["server/lsp/launch.ts"], outfile: "dist/extension/server/lsp.cjs" }),
  buildInParts(
    {
      ...options,
      entryPoints: ["server/lsp/main.ts"],
      outfile: join(root, "dist/extension/server/server.cjs"),
      plugins: [...options.plugins, withoutCopies, withoutParser()],
    },
    { ...SELDOM_CALLED, ...SELDOM_CALLED_BY_EDITORS },
  ),
  build({
    ...options,
    entryPoints: ["server/lsp/browser.ts"],
    outfile: "dist/extension/server/lsp.browser.js",
    platform: "browser",
    target: "es2024",
    format: "iife",
  }),
]);
chmodSync(join(root, "dist/cli/drillwright.cjs"), 0o755);
for (const file of ["lsp.cjs", "server.cjs"]) {
  copyFileSync(join(root, "dist/extension/server", file), join(root, "dist/cli", file));
}

await writeNotices([languageServer, worker.metafile], "dist/extension/server");
await writeNotices([commandLine, languageServer], "dist/cli");

/** The licences of all that went into these bundles. */
async function writeNotices(bundles: readonly Metafile[], folder: string): Promise<void> {
  const inputs = Object.assign({}, ...bundles.map((bundle) => bundle.inputs));
  writeFileSync(join(root, folder, "third-party-notices.txt"), await thirdPartyNotices({ inputs }, root));
}
