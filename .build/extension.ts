/**
 * Stages the extension in `dist/extension`, ready to run and to be packed: its manifest and texts, and its scripts. The
 * server comes to it by `.build/server.ts`.
 */
import { cp, mkdir, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { bundleScripts } from "./extension-scripts.ts";
import { sampleFolder } from "./sample-folder.ts";

const root = fileURLToPath(new URL("..", import.meta.url));
const stage = join(root, "dist", "extension");

/** Where the other build puts the server. */
const SERVER = "server";

/** What is taken as it is: from where, and under which name. */
const FILES: readonly (readonly [from: string, to: string])[] = [
  ["extension/package.nls.json", "package.nls.json"],
  ["extension/package.nls.de.json", "package.nls.de.json"],
  ["extension/l10n", "l10n"],
  ["extension/language-configuration.json", "language-configuration.json"],
  ["extension/drillwright.tmLanguage.json", "drillwright.tmLanguage.json"],
  ["extension/markdown.tmLanguage.json", "markdown.tmLanguage.json"],
  ["extension/icons/icon.png", "icons/icon.png"],
  ["extension/icons/drill-light.svg", "icons/drill-light.svg"],
  ["extension/icons/drill-dark.svg", "icons/drill-dark.svg"],
  ["extension/icons/view.svg", "icons/view.svg"],
  ["extension/walkthrough", "walkthrough"],
  ["extension/README.md", "README.md"],
  ["extension/CHANGELOG.md", "CHANGELOG.md"],
  ["extension/SUPPORT.md", "SUPPORT.md"],
  ["LICENSE", "LICENSE"],
];

await emptyStage();
await Promise.all([
  ...FILES.map(([from, to]) => cp(join(root, from), join(stage, to), { recursive: true })),
  writeFile(join(stage, "sample.json"), JSON.stringify(await sampleFolder(root))),
  writeManifest(),
  bundleScripts(root, stage),
]);

/** Nothing of an earlier build must get into a package. */
async function emptyStage(): Promise<void> {
  await mkdir(stage, { recursive: true });
  const old = (await readdir(stage)).filter((name) => name !== SERVER);
  await Promise.all(old.map((name) => rm(join(stage, name), { recursive: true })));
}

/** The sources are modules, the staged script is none. */
async function writeManifest(): Promise<void> {
  const { type, ...staged } = JSON.parse(await readFile(join(root, "extension", "package.json"), "utf8"));
  await writeFile(join(stage, "package.json"), `${JSON.stringify(staged, null, 2)}\n`);
}
