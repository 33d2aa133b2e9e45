/** Files that are not what they should be: one clear message, the right answer, never a stack. */
import { symlinkSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { afterEach, describe, expect, test, vi } from "vitest";
import { type Answer, drillwright, folderWith } from "./command-line.ts";
import { GOOD, PLAN, practice, session } from "./practice.ts";

const GARBAGE = Uint8Array.from({ length: 4096 }, (_, index) => (index * 7919) % 256);
const UTF16 = Buffer.from(`\uFEFF${PLAN}`, "utf16le");
const LATIN1 = Buffer.from('plan "Für Anfänger" {\n}\n', "latin1");

function errorsOf({ stdout, stderr }: Answer): string[] {
  return [...`${stdout}${stderr}`.matchAll(/^.* error .*$/gm)].map(([line]) => line);
}

describe("as a plan", () => {
  test.each([
    ["bytes that are no text", GARBAGE, "This file is not written in UTF-8."],
    ["UTF-16", UTF16, "This file is not written in UTF-8."],
    ["Latin-1", LATIN1, "This file is not written in UTF-8."],
    ["zero bytes", new Uint8Array(64), "This file is no text."],
    ["a file too long to be a plan", `// ${"x".repeat(1_100_000)}\n`, "This file has 1100004 characters;"],
  ])("%s", async (_, content, message) => {
    const answer = await drillwright({ "a.drill": content }, ["check"]);
    expect(answer.code).toBe(3);
    expect(errorsOf(answer)).toEqual([expect.stringMatching(/^a\.drill:1:1 error (unreadable|syntax)$/)]);
    expect(answer.stdout).toContain(`  ${message}`);
  });

  test.each([
    ["nothing at all", ""],
    ["a byte order mark and nothing else", "\uFEFF"],
    ["a byte order mark in front of a plan", `\uFEFF${PLAN}`],
    ["Windows line ends", PLAN.replaceAll("\n", "\r\n")],
  ])("%s is no mistake", async (_, content) => {
    expect(await drillwright({ "a.drill": content }, ["check"])).toMatchObject({ code: 0 });
  });

  test("the place of a mistake behind a byte order mark", async () => {
    const { stdout } = await drillwright({ "a.drill": "\uFEFFplam" }, ["check"]);
    expect(stdout).toMatch(/^a\.drill:1:1 error syntax\n {4}1 \| plam\n {6}\| \^{4}\n/);
  });

  test("as standard input", async () => {
    const { code, stdout } = await drillwright({}, ["check", "-"], { stdin: GARBAGE });
    expect(code).toBe(3);
    expect(stdout).toMatch(/^stdin\.drill:1:1 error unreadable\n {2}This file is not written in UTF-8\./);
  });

  test("as a file that a session uses", async () => {
    const answer = await drillwright({ ...practice(), "plans/irons.drill": GARBAGE }, ["score"]);
    expect(answer).toMatchObject({ code: 3, stdout: "" });
    expect(answer.stderr).toMatch(/^plans\/irons\.drill:1:1 error unreadable/m);
    expect(answer.stderr).toMatch(/session "Monday" is not scored/);
  });

  test("a used file that is a folder", async () => {
    const { code } = await drillwright({ "a.drill": 'use "./b"\n', "b.drill/c.txt": "" }, [
      "check",
      "a.drill",
    ]);
    expect(code).toBe(3);
  });

  test("a folder whose name ends like a plan's is a folder", async () => {
    const { stdout } = await drillwright({ "all.drill/a.drill": PLAN }, ["check", "all.drill"]);
    expect(stdout).toBe("1 file checked, nothing found.\n");
  });

  test("links that lead nowhere or round in a circle", async () => {
    const folder = folderWith({ "a.drill": PLAN, "deep/b.drill": PLAN });
    symlinkSync("nowhere", join(folder, "gone.drill"));
    symlinkSync("..", join(folder, "deep", "up"));
    symlinkSync("round.drill", join(folder, "round.drill"));
    expect(await drillwright(folder, ["check"])).toMatchObject({
      stdout: "2 files checked, nothing found.\n",
    });
    expect(await drillwright(folder, ["check", "gone.drill"])).toMatchObject({
      code: 2,
      stderr:
        "drillwright: There is no file or folder gone.drill. Check the spelling; paths count from the working folder.\n",
    });
  });
});

describe("as data", () => {
  test.each([
    ["nothing at all", "", "file-empty"],
    ["white space", " \n\n", "file-empty"],
    ["column names only", "Block,Start,Carry,Smash\n", "file-empty"],
    ["bytes that are no text", GARBAGE, undefined],
    ["zero bytes", new Uint8Array(64), undefined],
    ["another table", "a,b\n1,2\n", "not-a-table"],
  ])("%s", async (_, content, finding) => {
    const { code, stdout, stderr } = await drillwright(practice(content), ["score", "--format", "json"]);
    expect([code, stderr]).toEqual([4, ""]);
    const errors = JSON.parse(stdout).reports[0].findings.filter(
      ({ severity }: { severity: string }) => severity === "error",
    );
    expect(errors.length).toBeGreaterThan(0);
    if (finding !== undefined) expect(errors[0].code).toBe(finding);
  });

  test("no page of open goals is shown where no shot could be read", async () => {
    const { stdout } = await drillwright(practice(""), ["score"]);
    expect(stdout).toContain("no shots, so nothing is scored");
    expect(stdout).not.toContain("at least 3 of 5");
    expect(stdout).not.toContain("0 swings");
    const { stdout: page } = await drillwright(practice(""), ["report"]);
    expect(page).toContain("<p>No shots were read, so nothing is scored.</p>");
    expect(stdout).toMatch(/✗ error +The file is empty\. Export the shots again.*\(data\/monday\.csv\)/);
  });

  test("a table in another encoding is read", async () => {
    const utf16 = await drillwright(practice(Buffer.from(`\uFEFF${GOOD}`, "utf16le")), ["score"]);
    expect(utf16.code).toBe(0);
  });

  test("a table that is missing", async () => {
    const { "data/monday.csv": _, ...files } = practice();
    const { code, stdout } = await drillwright(files, ["score"]);
    expect(code).toBe(4);
    expect(stdout).toMatch(
      /✗ error +There is no file "data\/monday\.csv"\. Check the path that session "Monday" states/,
    );
  });

  test("a table that is a folder, beside a session that is sound", async () => {
    const files = { ...practice(), "sessions/tuesday.drill": session("Tuesday", "../data") };
    const { code, stdout, stderr } = await drillwright(files, ["score"]);
    expect(code).toBe(4);
    expect(stdout).toContain("Monday, 2026-10-12  ✓ met");
    expect(stderr).toBe(
      'sessions/tuesday.drill:4 session "Tuesday" is not scored. data cannot be read: it is a folder.\n',
    );
  });

  test("a table on the other side of a file", async () => {
    const files = {
      ...practice(),
      "sessions/monday.drill": session("Monday", "../data/monday.csv/shots.csv"),
    };
    expect(await drillwright(files, ["score"])).toMatchObject({ code: 4 });
  });
});

describe("whatever the bytes", () => {
  const known = new Set([0, 1, 2, 3, 4]);
  const bytes = fc.oneof(
    fc.uint8Array({ maxLength: 400 }),
    fc.string({ maxLength: 200 }),
    // Something that was right, cut and mended badly.
    fc
      .tuple(fc.constantFrom(PLAN, GOOD), fc.nat(600), fc.nat(40), fc.string({ maxLength: 10 }))
      .map(([text, from, length, other]) => text.slice(0, from) + other + text.slice(from + length)),
  );

  test("a plan is checked, compiled and scored without a fault", async () => {
    const folder = folderWith({});
    await fc.assert(
      fc.asyncProperty(bytes, fc.constantFrom("check", "compile"), async (content, command) => {
        const answer = await drillwright(folder, [command, "-"], { stdin: content });
        expect(known).toContain(answer.code);
        expect(answer.stderr).not.toContain("our fault");
      }),
      { numRuns: 40 },
    );
  });

  test("a table is scored without a fault", async () => {
    await fc.assert(
      fc.asyncProperty(bytes, async (content) => {
        const answer = await drillwright(practice(content), ["score"]);
        expect(known).toContain(answer.code);
        expect(answer.stderr).not.toContain("our fault");
      }),
      { numRuns: 40 },
    );
  });
});

describe("a fault of ours", () => {
  afterEach(() => void vi.doUnmock("../../server/cli/open-project.ts"));

  test.each([
    { words: ["check"], env: {}, stack: false },
    { words: ["check", "--debug"], env: {}, stack: true },
    { words: ["check"], env: { DRILLWRIGHT_DEBUG: "1" }, stack: true },
  ])(
    "$words $env answers 70, owns up, and shows where it happened only when asked",
    async ({ words, env, stack }) => {
      vi.doMock("../../server/cli/open-project.ts", () => ({
        openProject: async () => {
          throw new TypeError("undefined is not a plan");
        },
      }));
      const { code, stdout, stderr } = await drillwright({}, words, { env: env as Record<string, string> });
      expect([code, stdout]).toEqual([70, ""]);
      expect(stderr).toMatch(/our fault, not yours: undefined is not a plan\n/);
      expect(/^ +at /m.test(stderr)).toBe(stack);
      expect(stderr.includes("--debug is added")).toBe(!stack);
    },
  );
});
