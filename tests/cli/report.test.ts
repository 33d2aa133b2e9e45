/** `drillwright report`. */
import { existsSync, readFileSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { drillwright, folderWith } from "./command-line.ts";
import { POOR, practice, session } from "./practice.ts";

test("a page on standard output, whatever the verdicts are", async () => {
  const { code, stdout, stderr } = await drillwright(practice(POOR), ["report"]);
  expect([code, stderr]).toEqual([0, ""]);
  expect(stdout).toMatch(/^<!doctype html>\n<html lang="en">/);
  expect(stdout).toContain('<span class="verdict missed">✗ missed</span>');
});

test("Markdown where it is wanted", async () => {
  const { stdout } = await drillwright(practice(), ["report", "--format", "markdown"]);
  expect(stdout).toMatch(/^# Monday, 2026-10-12: ✓ met\n/);
});

test("a file is written where it is named, and never over another unless that is wanted", async () => {
  const folder = folderWith(practice());
  const words = ["report", "--output", "monday.html"];
  const first = await drillwright(folder, words);
  expect(first).toEqual({ code: 0, stdout: "", stderr: "Written to monday.html.\n" });
  const text = readFileSync(join(folder, "monday.html"), "utf8");
  expect(text).toContain("<title>Monday, 2026-10-12</title>");

  const again = await drillwright(folder, words);
  expect([again.code, again.stdout]).toEqual([2, ""]);
  expect(again.stderr).toContain("monday.html is there already. Give another name, or --force");
  expect((await drillwright(folder, [...words, "--force"])).code).toBe(0);
});

test.each(["data/monday.csv", "plans/irons.drill"])("%s was read and is never changed", async (output) => {
  const folder = folderWith(practice());
  const before = readFileSync(join(folder, output), "utf8");
  const { code, stderr } = await drillwright(folder, ["report", "--force", "--output", output]);
  expect(code).toBe(2);
  expect(stderr).toContain(`${output} is one of the files that were read`);
  expect(readFileSync(join(folder, output), "utf8")).toBe(before);
});

test("a link to what was read is not written through either", async () => {
  const folder = folderWith(practice());
  symlinkSync("data/monday.csv", join(folder, "monday.html"));
  const before = readFileSync(join(folder, "data/monday.csv"), "utf8");
  const { code, stderr } = await drillwright(folder, ["report", "--force", "--output", "monday.html"]);
  expect(code).toBe(2);
  expect(stderr).toContain("monday.html is one of the files that were read");
  expect(readFileSync(join(folder, "data/monday.csv"), "utf8")).toBe(before);
});

test("--force alone is a mistake", async () => {
  const { code, stderr } = await drillwright(practice(), ["report", "--force"]);
  expect(code).toBe(2);
  expect(stderr).toContain("give --output, too");
});

test("a session that cannot be scored is told of, and the others are in the report", async () => {
  const files = { ...practice(), "sessions/tuesday.drill": `${session("Tuesday", "../data/monday.csv")} x` };
  const { code, stdout, stderr } = await drillwright(files, ["report"]);
  expect(code).toBe(3);
  expect(stdout).toContain("<title>Monday, 2026-10-12</title>");
  expect(stderr).toContain('session "Tuesday" is not scored. There are errors in sessions/tuesday.drill.');
});

test("nothing is written where there is nothing to report on", async () => {
  const folder = folderWith({ "a.drill": 'session "Monday {\n' });
  const { code } = await drillwright(folder, ["report", "--output", "out.html"]);
  expect([code, existsSync(join(folder, "out.html"))]).toEqual([3, false]);
});

test.each([
  ["data", "data is a folder. Give the name of a file in it."],
  [
    "lost/out.html",
    "lost/out.html cannot be written: there is no folder lost. Create it, or give another name.",
  ],
])("a page cannot go to %s", async (output, expected) => {
  const { code, stderr } = await drillwright(practice(), ["report", "--force", "--output", output]);
  expect(code).toBe(2);
  expect(stderr).toContain(expected);
});
