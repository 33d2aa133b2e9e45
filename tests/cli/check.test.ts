/** `drillwright check`. */
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { exitCode } from "../../server/cli/commands/check.ts";
import { drillwright, type Files, folderWith } from "./command-line.ts";
import { LIBRARY, PLAN, practice } from "./practice.ts";

/** More hits than shots, on line 12. */
const WRONG = PLAN.replace("at least 3 of 5", "at least 6 of 5");

describe("what is said", () => {
  test("a mistake is shown with its place, its line, a caret under it, and what to do", async () => {
    expect(await drillwright({ "plans/irons.drill": WRONG }, ["check"])).toEqual({
      code: 3,
      stdout: `plans/irons.drill:14:16 error hits-must-not-exceed-shots
   14 |       at least 6 of 5 shots on target
      |                ^
  6 of 5 shots is more hits than shots. Ask for at most 5.

1 file checked: 1 error.
`,
      stderr: "",
    });
  });

  test("a file without mistakes is one line", async () => {
    const { code, stdout } = await drillwright({ "irons.drill": PLAN }, ["check"]);
    expect([code, stdout]).toEqual([0, "1 file checked, nothing found.\n"]);
  });

  test("what breaks the grammar is shown the same way", async () => {
    const { code, stdout } = await drillwright({ "a.drill": 'plan "A" {\n  tim 5 min\n}\n' }, ["check"]);
    expect(code).toBe(3);
    expect(stdout.split("\n").slice(0, 3)).toEqual([
      "a.drill:2:3 error syntax",
      "    2 |   tim 5 min",
      "      |   ^^^",
    ]);
  });

  test("several findings stand in the order of files and lines", async () => {
    const twice = WRONG.replace("average carry", "at least 7 of 5 shots on target\n      average carry");
    const { stdout } = await drillwright({ "b.drill": twice, "a.drill": WRONG }, ["check"]);
    expect(stdout.match(/^\S+:\d+:\d+/gm)).toEqual(["a.drill:14:16", "b.drill:14:16", "b.drill:15:16"]);
    expect(stdout).toContain("2 files checked: 3 errors.");
  });

  test("colours come with a terminal, and words stay", async () => {
    const { stdout } = await drillwright({ "a.drill": WRONG }, ["check"], { isTTY: true });
    expect(stdout).toContain("\u001b[31merror\u001b[39m");
  });

  test("characters of a file that would steer a terminal are not passed on", async () => {
    const { stdout } = await drillwright({ "a.drill": "plan \u001b[31m\u202E {\n" }, ["check"]);
    expect(stdout).not.toContain("\u001b");
    expect(stdout).not.toContain("\u202E");
    expect(stdout).toContain("plan \uFFFD[31m\uFFFD {");
  });
});

describe("which files", () => {
  const checked = async (files: Files, ...words: string[]): Promise<string[]> =>
    JSON.parse((await drillwright(files, ["check", "--format", "json", ...words])).stdout).files;

  test("all of the working folder, but for dependencies, builds and hidden folders", async () => {
    const files = {
      "a.drill": PLAN,
      "deep/er/b.drill": PLAN,
      "node_modules/x/c.drill": PLAN,
      "dist/d.drill": PLAN,
      ".git/e.drill": PLAN,
      "notes.txt": "no plan",
    };
    expect(await checked(files)).toEqual(["a.drill", "deep/er/b.drill"]);
  });

  test("files and folders as given, each once", async () => {
    const files = { "plans/a.drill": PLAN, "plans/b.drill": PLAN, "c.drill": PLAN };
    expect(await checked(files, "plans/b.drill", "plans", "./plans/../plans/b.drill")).toEqual([
      "plans/a.drill",
      "plans/b.drill",
    ]);
  });

  test("and what they use, through several files", async () => {
    const files = {
      ...practice(),
      "plans/irons.drill": `use "../library/more"\n${PLAN}`,
      "library/more.drill": WRONG.replace("Start line", "Another"),
      "unrelated.drill": "plan {",
    };
    expect(await checked(files, "sessions/monday.drill")).toEqual([
      "library/more.drill",
      "library/range.drill",
      "plans/irons.drill",
      "sessions/monday.drill",
    ]);
    const { code, stdout } = await drillwright(files, ["check", "sessions/monday.drill"]);
    expect(code).toBe(3);
    expect(stdout).toMatch(/^library\/more\.drill:14:16 error/);
  });

  test("names with spaces, signs and other scripts", async () => {
    const folder = "über #1/70 % & more";
    const files = { [`${folder}/план.drill`]: 'use "./más"\n', [`${folder}/más.drill`]: PLAN };
    expect(await checked(files, `${folder}/план.drill`)).toEqual([
      `${folder}/más.drill`,
      `${folder}/план.drill`,
    ]);
  });

  test("files outside the working folder are named from there", async () => {
    const folder = folderWith({ "plans/a.drill": PLAN, "here/b.txt": "" });
    const { stdout } = await drillwright(join(folder, "here"), ["check", "--format", "json", "../plans"]);
    expect(JSON.parse(stdout).files).toEqual(["../plans/a.drill"]);
  });

  test("files that use each other are no endless circle", async () => {
    const files = { "a.drill": 'use "./b"\nuse "./a"\n', "b.drill": 'use "./a"\n' };
    expect(await checked(files, "a.drill")).toEqual(["a.drill", "b.drill"]);
  });
});

describe("standard input", () => {
  test("is named by --stdin-filename, and finds what it uses from there", async () => {
    const { "sessions/monday.drill": text, ...files } = practice();
    const words = ["check", "-", "--stdin-filename", "sessions/tuesday.drill"];
    const { code, stdout } = await drillwright(files, words, { stdin: text as string });
    expect([code, stdout]).toEqual([0, "3 files checked, nothing found.\n"]);
  });

  test("goes before the file of that name on disk", async () => {
    const words = ["check", "-", "irons.drill", "--stdin-filename=irons.drill"];
    const { stdout } = await drillwright({ "irons.drill": PLAN }, words, { stdin: WRONG });
    expect(stdout).toContain("irons.drill:14:16 error");
    expect(stdout).toContain("1 file checked: 1 error.");
  });

  test("has a name of its own where none is given", async () => {
    const { stdout } = await drillwright({}, ["check", "-"], { stdin: WRONG });
    expect(stdout).toContain("stdin.drill:14:16 error");
  });
});

describe("for machines", () => {
  test("JSON holds every finding with its range and its fixes", async () => {
    const { code, stdout, stderr } = await drillwright(
      { "plans/irons.drill": WRONG, "library/range.drill": LIBRARY },
      ["check", "--format=json"],
    );
    expect([code, stderr]).toEqual([3, ""]);
    const range = { start: { line: 13, character: 15 }, end: { line: 13, character: 16 } };
    expect(JSON.parse(stdout)).toEqual({
      format: "drillwright/check-report",
      version: 1,
      tool: expect.stringMatching(/^\d+\.\d+\.\d+/),
      files: ["library/range.drill", "plans/irons.drill"],
      findings: [
        {
          file: "plans/irons.drill",
          range,
          severity: "error",
          code: "hits-must-not-exceed-shots",
          message: "6 of 5 shots is more hits than shots. Ask for at most 5.",
          fixes: [{ title: "Ask for 5 of 5", edits: [{ range, newText: "5" }] }],
        },
      ],
      counts: { errors: 1, warnings: 0, hints: 0 },
    });
  });

  test("--fail-on never answers 0, whatever is found", async () => {
    expect((await drillwright({ "a.drill": WRONG }, ["check", "--fail-on", "never"])).code).toBe(0);
  });
});

test("a check that failed is told as our fault, whatever was asked for", () => {
  const range = { start: { line: 0, character: 0 }, end: { line: 0, character: 1 } };
  const fault = { file: "a.drill", range, severity: "hint" as const, code: "fault", message: "", fixes: [] };
  expect(exitCode([fault], "never")).toBe(70);
  expect(exitCode([{ ...fault, code: "other" }], "never")).toBe(0);
});
