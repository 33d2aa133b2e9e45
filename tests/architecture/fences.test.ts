/**
 * The layers of the house, each with imports that it must not have. A fence nobody has seen fail is not a fence: every
 * row is written as a file into its folder, and the linter must object.
 */
import { spawnSync } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";

const root = new URL("../../", import.meta.url).pathname;
const biome = join(root, "node_modules/.bin/biome");

/** Folder, import that must be refused. */
const FORBIDDEN: readonly (readonly [folder: string, specifier: string])[] = [
  ["shared", "langium"],
  ["shared", "../language/core-module.ts"],
  ["shared", "../server/scoring/score-session.ts"],
  ["shared", "node:fs"],
  ["shared", "vscode"],
  ["shared", "vscode-languageserver"],
  ["language/checks", "langium/lsp"],
  ["language/checks", "langium/node"],
  ["language/checks", "vscode-languageserver"],
  ["language/checks", "node:fs"],
  ["language/checks", "../editor/editor-module.ts"],
  ["language/checks", "../../server/scoring/score-session.ts"],
  ["language/analysis", "langium"],
  ["language/analysis", "../lowering/plan.ts"],
  ["language/analysis", "../generated/tree/ast.ts"],
  ["language/analysis", "../checks/check.ts"],
  ["language/editor", "node:fs"],
  ["language/editor", "langium/node"],
  ["language/editor", "vscode"],
  ["language/editor", "../../server/scoring/score-session.ts"],
  ["server/import", "langium"],
  ["server/import", "../../language/core-module.ts"],
  ["server/import", "node:fs"],
  ["server/import", "vscode-languageserver"],
  ["server/report", "../../language/core-module.ts"],
  ["server/report", "node:fs"],
  ["server/flight", "../../language/core-module.ts"],
  ["server/flight", "../../language/criteria/criteria.ts"],
  ["server/flight", "../import/import-session.ts"],
  ["server/flight", "../scoring/score-session.ts"],
  ["server/flight", "../report/palette.ts"],
  ["server/flight", "../cli/command.ts"],
  ["server/flight", "langium"],
  ["server/flight", "node:fs"],
  ["server/flight", "vscode-languageserver"],
  ["server/scoring", "../../language/core-module.ts"],
  ["server/scoring", "../../language/lowering/document.ts"],
  ["server/scoring", "langium"],
  ["server/scoring", "node:fs"],
  ["server/scoring", "../lsp/scores.ts"],
  ["server/node", "vscode"],
  ["server/lsp", "../../extension/extension.ts"],
  ["server/cli", "vscode"],
  ["extension", "../language/core-module.ts"],
  ["extension", "../server/lsp/main.ts"],
  ["extension", "langium"],
];

/** Imports that the same fences must let through. */
const ALLOWED: readonly (readonly [folder: string, specifier: string])[] = [
  ["shared", "zod/mini"],
  ["language/checks", "langium"],
  ["language/checks", "../../shared/interval.ts"],
  ["language/analysis", "../criteria/criteria.ts"],
  ["language/editor", "langium/lsp"],
  ["server/flight", "../../shared/plan-model.ts"],
  ["server/scoring", "../../language/criteria/criteria.ts"],
  ["server/scoring", "../import/import-session.ts"],
  ["server/lsp", "../scoring/run-session.ts"],
  ["extension", "vscode"],
  ["extension", "../shared/settings.ts"],
];

/** Every way in which one file can rely on another. */
const FORMS: readonly ((specifier: string) => string)[] = [
  (specifier) => `import "${specifier}";\n`,
  (specifier) => `import type { X } from "${specifier}";\nexport type Y = X;\n`,
  (specifier) => `export * from "${specifier}";\n`,
  (specifier) => `export const later = () => import("${specifier}");\n`,
];

interface Probe {
  readonly row: string;
  readonly file: string;
}

const rowName = ([folder, specifier]: readonly [string, string]) => `${folder} ${specifier}`;
const probes: Probe[] = [];
const refusedFiles = new Set<string>();

/** One run of the linter over all probes: a run for each would take a minute. */
beforeAll(() => {
  for (const row of [...FORBIDDEN, ...ALLOWED]) {
    for (const form of FORMS) {
      const file = join(row[0], `fence-probe-${probes.length}.ts`);
      mkdirSync(dirname(join(root, file)), { recursive: true });
      writeFileSync(join(root, file), form(row[1]));
      probes.push({ row: rowName(row), file });
    }
  }
  const command = ["lint", "--only=style/noRestrictedImports", "--reporter=json", "--max-diagnostics=none"];
  const files = probes.map(({ file }) => file);
  const { stdout } = spawnSync(biome, [...command, ...files], { cwd: root, encoding: "utf8" });
  const report = JSON.parse(stdout) as { diagnostics: { category: string; location: { path: string } }[] };
  for (const { category, location } of report.diagnostics) {
    expect(category).toBe("lint/style/noRestrictedImports");
    refusedFiles.add(location.path);
  }
});

afterAll(() => {
  for (const { file } of probes) rmSync(join(root, file), { force: true });
});

/** For each form of the import, whether it was refused. */
function refusals(row: readonly [string, string]): boolean[] {
  const files = probes.filter((probe) => probe.row === rowName(row)).map(({ file }) => file);
  expect(files).toHaveLength(FORMS.length);
  return files.map((file) => refusedFiles.has(file));
}

describe("an import across a fence is refused", () => {
  test.each(FORBIDDEN)("%s must not import %s", (...row) => {
    expect(refusals(row)).toEqual(FORMS.map(() => true));
  });
});

describe("an import inside the fence is let through", () => {
  test.each(ALLOWED)("%s may import %s", (...row) => {
    expect(refusals(row)).toEqual(FORMS.map(() => false));
  });
});

test("pure folders are compiled without the types of Node and of browsers", () => {
  for (const project of ["shared", "language", "language/editor", "server"]) {
    const config = readFileSync(join(root, project, "tsconfig.json"), "utf8");
    expect(config).not.toContain('"types"');
    expect(config).not.toContain('"lib"');
  }
  const solution = readFileSync(join(root, "tsconfig.json"), "utf8");
  expect(solution).toContain('"types": []');
  expect(readdirSync(root)).toContain("shared");
});
