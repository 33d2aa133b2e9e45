/** `drillwright format`. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { drillwright, folderWith } from "./command-line.ts";

const UNTIDY = 'plan "A"{time   5 min}';
const TIDY = 'plan "A" {\n  time 5 min\n}\n';

test("files are rewritten, and those that were changed are listed", async () => {
  const folder = folderWith({ "a.drill": UNTIDY, "b.drill": TIDY });
  expect(await drillwright(folder, ["format"])).toEqual({
    code: 0,
    stdout: "a.drill\n2 files looked at, 1 laid out anew.\n",
    stderr: "",
  });
  expect(readFileSync(join(folder, "a.drill"), "utf8")).toBe(TIDY);
});

test("--check writes nothing and answers with 1", async () => {
  const folder = folderWith({ "a.drill": UNTIDY });
  expect(await drillwright(folder, ["format", "--check"])).toEqual({
    code: 1,
    stdout: "a.drill\n1 file looked at, 1 not laid out.\n",
    stderr: "",
  });
  expect(readFileSync(join(folder, "a.drill"), "utf8")).toBe(UNTIDY);
  const { code, stdout } = await drillwright({ "b.drill": TIDY }, ["format", "--check"]);
  expect([code, stdout]).toEqual([0, "1 file looked at, all were laid out.\n"]);
});

test("standard input goes to standard output", async () => {
  const { code, stdout } = await drillwright({}, ["format", "-"], { stdin: UNTIDY });
  expect([code, stdout]).toEqual([0, TIDY]);
});

test("what is no text stays, and is said", async () => {
  const { code, stdout, stderr } = await drillwright({ "a.drill": new Uint8Array([0xff, 0xfe, 0]) }, [
    "format",
  ]);
  expect([code, stdout]).toEqual([3, ""]);
  expect(stderr).toMatch(/^a\.drill: This file is not written in UTF-8/);
});
