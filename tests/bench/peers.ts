/** The programs we measure ourselves against. Installed on first use into the git-ignored tools folder, never shipped. */
import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const PEERS = {
  "ajv-cli": "5.0.0",
  "@duckdb/node-api": "1.5.6-r.1",
  papaparse: "5.7.1",
};

const root = fileURLToPath(new URL("../../", import.meta.url));

/** The folder whose `node_modules` holds every peer. */
export function peersFolder(): string {
  const folder = join(process.env.DRILLWRIGHT_TOOLS ?? join(root, ".cache/tools"), "bench-peers");
  if (existsSync(join(folder, "node_modules"))) return folder;
  const half = `${folder}-unfinished`;
  rmSync(half, { recursive: true, force: true });
  mkdirSync(half, { recursive: true });
  writeFileSync(join(half, "package.json"), JSON.stringify({ private: true, dependencies: PEERS }));
  console.error(`Installing the programs to compare with: ${Object.keys(PEERS).join(", ")} …`);
  execFileSync("npm", ["install", "--ignore-scripts", "--no-audit", "--no-fund"], {
    cwd: half,
    stdio: "inherit",
  });
  renameSync(half, folder);
  return folder;
}

/** Resolves a file of a peer. */
export function peerFile(specifier: string): string {
  return createRequire(pathToFileURL(join(peersFolder(), "package.json"))).resolve(specifier);
}
