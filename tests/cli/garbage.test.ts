/** The bundled command line on what is no plan and no table: findings or one clear error, the right code, no stack. */
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { type Files, folderWith } from "./command-line.ts";
import { PLAN, practice } from "./practice.ts";

const PROGRAM = fileURLToPath(new URL("../../dist/cli/drillwright.cjs", import.meta.url));

/** Numbers that look random and are the same every time. */
function bytes(length: number): Uint8Array {
  let state = 7;
  return Uint8Array.from({ length }, () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state >>> 24;
  });
}

const GARBAGE: readonly (readonly [name: string, content: Uint8Array | string])[] = [
  ["random bytes", bytes(100_000)],
  ["a file cut in the middle of a letter", Buffer.from(PLAN).subarray(0, Buffer.from(PLAN).indexOf("±") + 1)],
  ["a file cut in the middle of a statement", PLAN.slice(0, PLAN.indexOf("least"))],
  ["a line of a million letters", "x".repeat(1_000_000)],
  ["a hundred thousand nested braces", `plan "Gate" ${"{".repeat(100_000)}`],
  ["a hundred thousand nested brackets", `metric pace is speed {\n  formula ${"(".repeat(100_000)}carry\n}`],
  ["a hundred thousand mistakes", "metric\n".repeat(100_000)],
  ["nothing but zero bytes", new Uint8Array(100_000)],
];

function run(files: Files, words: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [PROGRAM, ...words], {
    cwd: folderWith(files),
    encoding: "utf8",
    maxBuffer: 20_000_000,
  });
  const said = stdout + stderr;
  expect(said).not.toContain("our fault");
  expect(said).not.toMatch(/^\s+at .*:\d+/m);
  return { status, stdout, stderr, said };
}

describe.each(GARBAGE)("%s", (_, content) => {
  test("is no plan to check or to compile", () => {
    const checked = run({ "a.drill": content }, ["check"]);
    expect(checked.status).toBe(3);
    expect(checked.stdout).toMatch(/^a\.drill:\d+:\d+ error (syntax|unreadable)$/m);
    expect(checked.stdout.length).toBeLessThan(50_000);
    const compiled = run({ "a.drill": content }, ["compile", "a.drill"]);
    expect([compiled.status, compiled.stdout]).toEqual([3, ""]);
  });

  test("keeps no other file from being checked", () => {
    const { stdout } = run({ "a.drill": content, "b.drill": PLAN.replace("3 of 5", "6 of 5") }, ["check"]);
    expect(stdout).toMatch(/^b\.drill:\d+:\d+ error hits-must-not-exceed-shots$/m);
  });

  test("is no table to score", () => {
    const { status, said } = run(practice(content), ["score"]);
    expect(status).toBe(4);
    expect(said).toContain("monday.csv");
    expect(said.length).toBeLessThan(5_000);
  });
});
