/** The revision of a file, as git knows it. Where git is missing there is none, and nothing else to see. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { revisionsIn } from "../../server/node/revision.ts";

const folder = mkdtempSync(join(tmpdir(), "drillwright-revision-"));
const outside = mkdtempSync(join(tmpdir(), "drillwright-no-revision-"));
const isThere = (() => {
  try {
    return execFileSync("git", ["--version"]).length > 0;
  } catch {
    return false;
  }
})();

function git(...words: readonly string[]): string {
  const who = [
    "-c",
    "user.name=Coach",
    "-c",
    "user.email=coach@wrenlow.example",
    "-c",
    "commit.gpgsign=false",
  ];
  return execFileSync("git", [...who, ...words], { cwd: folder, encoding: "utf8" }).trim();
}

const write = (name: string, text: string) => writeFileSync(join(folder, name), text);

beforeAll(() => {
  if (!isThere) return;
  git("init", "--quiet");
  write("plan.drill", 'plan "One" {\n}\n');
  git("add", "plan.drill");
  git("commit", "--quiet", "--message", "A plan");
  write("other.drill", 'plan "Two" {\n}\n');
  git("add", "other.drill");
  git("commit", "--quiet", "--message", "Another plan");
});

afterAll(() => {
  for (const each of [folder, outside]) rmSync(each, { recursive: true, force: true });
});

test.runIf(isThere)("is the last commit that changed the file", async () => {
  const revisionOf = revisionsIn(folder);
  expect(await revisionOf("plan.drill")).toBe(git("rev-parse", "HEAD~1"));
  expect(await revisionOf("other.drill")).toBe(git("rev-parse", "HEAD"));
});

test.runIf(isThere)("is none where the file is not as it was committed", async () => {
  write("other.drill", 'plan "Three" {\n}\n');
  expect(await revisionsIn(folder)("other.drill")).toBe(null);
  write("other.drill", 'plan "Two" {\r\n}\r\n');
  expect(await revisionsIn(folder)("other.drill")).toBe(git("rev-parse", "HEAD"));
});

test("is none where nothing was committed", async () => {
  write("new.drill", "");
  expect(await revisionsIn(folder)("new.drill")).toBe(null);
  expect(await revisionsIn(folder)("missing.drill")).toBe(null);
  writeFileSync(join(outside, "plan.drill"), "");
  expect(await revisionsIn(outside)("plan.drill")).toBe(null);
});
