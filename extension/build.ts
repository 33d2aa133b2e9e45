/**
 * Stages the extension in `dist/extension`, ready to run and to be packed: its manifest and texts, the client and the
 * server as one script each, and nothing else.
 */
import { cp, mkdir, readFile, rm, writeFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { type BuildOptions, build } from "esbuild";

const repository = new URL("../", import.meta.url);
const stage = new URL("dist/extension/", repository);
const path = (name: string, base: URL) => fileURLToPath(new URL(name, base));

/** What is taken as it is: from, and to where it differs. */
const FILES: readonly (readonly [from: string, to: string])[] = [
  ["extension/package.nls.json", "package.nls.json"],
  ["extension/language-configuration.json", "language-configuration.json"],
  ["extension/drillwright.tmLanguage.json", "drillwright.tmLanguage.json"],
  ["extension/markdown.tmLanguage.json", "markdown.tmLanguage.json"],
  ["extension/icons/icon.png", "icons/icon.png"],
  ["extension/icons/drill-light.svg", "icons/drill-light.svg"],
  ["extension/icons/drill-dark.svg", "icons/drill-dark.svg"],
  ["extension/README.md", "README.md"],
  ["extension/CHANGELOG.md", "CHANGELOG.md"],
  ["LICENSE", "LICENSE"],
];

const SCRIPTS: readonly (readonly [from: string, to: string])[] = [
  ["extension/extension.ts", "extension.cjs"],
  ["server/lsp/main.ts", "server/lsp.cjs"],
];

const manifest = JSON.parse(await readFile(path("extension/package.json", repository), "utf8"));

const OPTIONS = {
  bundle: true,
  minify: true,
  format: "cjs",
  platform: "node",
  // What the oldest editor runs that the manifest admits.
  target: "node22",
  // Packages come with a build for old loaders first; the modern one leaves out what is not used.
  mainFields: ["module", "main"],
  external: ["vscode"],
  define: { DRILLWRIGHT_VERSION: JSON.stringify(manifest.version) },
  legalComments: "none",
  logLevel: "warning",
  // Programs that run from their sources look files up beside them; bundled ones do not get there.
  logOverride: { "empty-import-meta": "silent" },
} as const satisfies BuildOptions;

await rm(stage, { recursive: true, force: true });
await mkdir(stage, { recursive: true });
await Promise.all([
  ...FILES.map(([from, to]) => cp(path(from, repository), path(to, stage))),
  ...SCRIPTS.map(([from, to]) =>
    build({ ...OPTIONS, entryPoints: [path(from, repository)], outfile: path(to, stage) }),
  ),
  writeManifest(),
]);

/** The sources are modules, the staged scripts are not. */
async function writeManifest(): Promise<void> {
  const { type, ...staged } = manifest;
  await writeFile(path("package.json", stage), `${JSON.stringify(staged, null, 2)}\n`);
}
