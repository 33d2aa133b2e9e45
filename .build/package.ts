/** Packs the staged extension as `dist/drillwright-<version>.vsix`, and refuses to let it grow large. */
import { existsSync } from "node:fs";
import { readFile, stat } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { createVSIX } from "@vscode/vsce";

const LARGEST = 2_000_000;

const dist = new URL("../dist/", import.meta.url);
if (!existsSync(new URL("extension/server/lsp.cjs", dist)))
  throw new Error("dist/extension holds no server. Build the server and the extension first.");
const { version } = JSON.parse(await readFile(new URL("extension/package.json", dist), "utf8"));
const file = fileURLToPath(new URL(`drillwright-${version}.vsix`, dist));

await createVSIX({
  cwd: fileURLToPath(new URL("extension/", dist)),
  packagePath: file,
  // Everything is bundled, and the listing names no repository to resolve links against.
  dependencies: false,
  allowMissingRepository: true,
});

const { size } = await stat(file);
console.log(`${file}: ${(size / 1000).toFixed(0)} kB of at most ${LARGEST / 1000} kB`);
if (size > LARGEST) {
  console.error(
    "The package is too large: see what has come into the bundles, or raise the limit knowingly.",
  );
  process.exitCode = 1;
}
