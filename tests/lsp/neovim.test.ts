/**
 * Another editor: Neovim's own client speaks to the bundled command line, as its manual would have a person set it up.
 * Runs only where `nvim` is on the PATH; elsewhere it is listed as skipped, and says why.
 */
import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterEach, describe, expect, test } from "vitest";

const PROGRAM = fileURLToPath(new URL("../../dist/cli/drillwright.cjs", import.meta.url));
const SCRIPT = fileURLToPath(new URL("neovim.lua", import.meta.url));
const hasNeovim = spawnSync("nvim", ["--version"]).status === 0;

const PLAN = `plan "Gate" {
  for 7-iron
  block "Wake up" warm-up { 6 shots at 50 % effort }
  block "Start line" test {
      4 shots
    target start-direction within ±2°
    success { at least 6 of 4 shots on target }
  }
}
`;
const SESSION = `use "./plan"
session "Monday" { plan "Gate" }
`;

let folder: string | undefined;
afterEach(() => {
  if (folder !== undefined) rmSync(folder, { recursive: true });
  folder = undefined;
});

interface Seen {
  readonly diagnostics: readonly string[];
  readonly completions: readonly string[];
  readonly hover: string;
  readonly renamed: readonly string[];
  readonly formatted: string;
}

describe.skipIf(!hasNeovim)(`Neovim${hasNeovim ? "" : ": skipped, there is no nvim on the PATH"}`, () => {
  test("shows mistakes, completes, explains, renames across files and lays out", { timeout: 90_000 }, () => {
    folder = mkdtempSync(join(tmpdir(), "drillwright-neovim-"));
    writeFileSync(join(folder, "plan.drill"), PLAN);
    writeFileSync(join(folder, "monday.drill"), SESSION);
    const output = execFileSync("nvim", ["--headless", "--clean", "-n", "-S", SCRIPT], {
      cwd: folder,
      encoding: "utf8",
      env: { ...process.env, DRILLWRIGHT_NODE: process.execPath, DRILLWRIGHT_PROGRAM: PROGRAM },
      timeout: 80_000,
      stdio: ["ignore", "pipe", "pipe"],
    });
    const seen = JSON.parse(output.slice(output.indexOf("{"))) as Seen;
    expect(seen.diagnostics.join("\n")).toContain("6 of 4");
    expect(seen.completions).toContain("start-direction");
    expect(seen.hover).toContain("start-direction");
    expect(seen.renamed).toEqual(["monday.drill", "plan.drill"]);
    expect(seen.formatted).toContain("\n    4 shots\n");
  });
});
