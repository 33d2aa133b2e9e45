/** The harness itself: a test that fails in the editor must fail here, and a run that breaks must say why. */
import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { runSuite, type SuiteRun } from "./run-suite.ts";
import { scratchFolder } from "./scratch.ts";
import type { TestResult } from "./suite-results.ts";

const scratch = scratchFolder("host-test");

beforeAll(async () => {
  const manifest = {
    name: "empty",
    publisher: "drillwright-tests",
    version: "0.0.0",
    engines: { vscode: "^1.100.0" },
    main: "./extension.js",
    browser: "./extension.js",
    capabilities: { virtualWorkspaces: true, untrustedWorkspaces: { supported: true } },
  };
  await mkdir(join(scratch.path, "extension"));
  await writeFile(join(scratch.path, "extension", "package.json"), JSON.stringify(manifest));
  await writeFile(join(scratch.path, "extension", "extension.js"), "exports.activate = () => {};\n");
  await mkdir(join(scratch.path, "folder"));
  await writeFile(join(scratch.path, "folder", "note.txt"), "a note");
});

afterAll(() => scratch.remove());

const run = (suite: string, how: Pick<SuiteRun, "host" | "trusted">) =>
  runSuite({
    suite: join(import.meta.dirname, "fixtures", `${suite}.ts`),
    extension: join(scratch.path, "extension"),
    folder: join(scratch.path, "folder"),
    ...how,
  });

describe.each<Pick<SuiteRun, "host" | "trusted">>([
  { host: "editor", trusted: true },
  { host: "browser", trusted: false },
])("a suite of all kinds ($host, trusted: $trusted)", (how) => {
  let tests: readonly TestResult[];

  test("runs to its end", async () => {
    const outcome = await run("mixed-suite", how);
    expect(outcome.problem).toBeUndefined();
    tests = outcome.tests;
  });

  test("brings each result back", () => {
    expect(tests.map(({ name, outcome }) => `${name}: ${outcome}`)).toEqual([
      "passes: passed",
      "fails: failed",
      "hangs: failed",
      "is skipped: skipped",
      "has its turn all the same: passed",
    ]);
  });

  test("says what was found and where in the sources", () => {
    const failed = tests.find(({ name }) => name === "fails");
    expect(failed?.message).toMatch(/found/);
    expect(failed?.stack).toMatch(/fixtures\/mixed-suite\.ts:10:\d+/);
  });
});

test("a suite that breaks while loading is a problem, told in its own words", async () => {
  const { tests, problem } = await run("broken-suite", { host: "editor", trusted: true });
  expect(tests).toEqual([]);
  expect(problem).toContain("This suite is broken on purpose.");
});
