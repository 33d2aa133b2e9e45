/** `drillwright diff`. */
import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { PlanDiff } from "../../server/report/diff/plan-diff.ts";
import { drillwright, folderWith } from "./command-line.ts";
import { PLAN } from "./practice.ts";

const both = (now: string) => ({ "old.drill": PLAN, "new.drill": now });
const DIFF = ["diff", "old.drill", "new.drill"];

test("what was changed, added and removed, by plan and block", async () => {
  const now = PLAN.replace("within ±2°", "within ±3°")
    .replace("    5 shots\n", "    6 shots\n")
    .replace("at least 3 of 5 shots", "at least 4 of 6 shots")
    .replace("average carry at least 150 yd", "3 in a row on target")
    .replace('caution "Stop on pain."', 'caution "Stop on any pain."');
  const { code, stdout, stderr } = await drillwright(both(now), DIFF);
  expect([code, stderr]).toEqual([1, ""]);
  expect(stdout).toMatchInlineSnapshot(`
    "plan "Start line"
      + added caution: Stop on any pain.
      - removed caution: Stop on pain.
      block "Gate"
        ~ changed shots: 5 shots with 7-iron → 6 shots with 7-iron
        ~ changed target, wider: start-direction within ±2° → start-direction within ±3°
        ~ changed goal: at least 3 of 5 shots on target → at least 4 of 6 shots on target
        + added goal: 3 in a row on target
        - removed goal: average carry at least 150 yd

    7 differences.
    "
  `);
});

describe("what means the same is the same", () => {
  test.each([
    ["layout and comments", PLAN.replaceAll("\n", "\n\n").replace("plan ", "// Mondays\nplan ")],
    ["another unit", PLAN.replace("150 yd", "450 ft")],
    ["another way to write a tolerance", PLAN.replace("within ±2°", "between 2° left and 2° right")],
    ["another declaration beside it", `${PLAN}\nplayer "P-01" { right-handed }\n`],
  ])("%s", async (_, now) => {
    const { code, stdout } = await drillwright(both(now), DIFF);
    expect([code, stdout]).toEqual([0, "old.drill and new.drill mean the same.\n"]);
  });
});

test("what a drill says is compared in the block that uses it", async () => {
  const old = `drill "Gate" (width: angle = 2°) blocked {
  10 shots
  target start-direction within ±width
}
plan "Start line" { block "Narrow" from "Gate" }
`;
  const now = old.replace('from "Gate"', 'from "Gate" with width = 1.5°');
  const { stdout } = await drillwright({ "old.drill": old, "new.drill": now }, DIFF);
  expect(stdout).toContain(
    "~ changed target, narrower: start-direction within ±2° → start-direction within ±1.5°\n",
  );
});

test("plans and blocks that are there once only", async () => {
  const other = 'plan "Other" { block "One" test { 3 shots } }\n';
  const { stdout } = await drillwright(both(PLAN.replace('block "Gate"', 'block "Gates"') + other), DIFF);
  expect(stdout).toContain('+ added block: "Gates" (test, 5 shots with 7-iron)\n');
  expect(stdout).toContain('- removed block: "Gate" (test, 5 shots with 7-iron)\n');
  expect(stdout).toContain('+ added plan: "Other"\n');
});

test("JSON by its schema", async () => {
  const { stdout } = await drillwright(both(PLAN.replace("±2°", "±3°")), [...DIFF, "--format", "json"]);
  expect(PlanDiff.parse(JSON.parse(stdout)).differences).toEqual([
    {
      change: "changed",
      plan: "Start line",
      block: "Gate",
      what: "target",
      old: "start-direction within ±2°",
      new: "start-direction within ±3°",
      effect: "wider",
      location: { file: "new.drill", range: expect.objectContaining({ start: { line: 11, character: 4 } }) },
    },
  ]);
});

describe("a file of a commit", () => {
  const repository = () => {
    const folder = folderWith({ "plans/irons.drill": PLAN });
    const git = (...words: string[]) => execFileSync("git", words, { cwd: folder });
    git("init", "--quiet");
    git("add", ".");
    const who = ["-c", "user.name=P-07", "-c", "user.email=p-07@example.org"];
    git(...who, "commit", "--quiet", "-m", "First");
    return folder;
  };

  test("against the file as it is", async () => {
    const folder = repository();
    writeFileSync(join(folder, "plans/irons.drill"), PLAN.replace("±2°", "±1°"));
    const { code, stdout } = await drillwright(folder, [
      "diff",
      "git:HEAD:plans/irons.drill",
      "plans/irons.drill",
    ]);
    expect(code).toBe(1);
    expect(stdout).toContain("~ changed target, narrower");
  });

  test.each([
    ["git:HEAD:plans/none.drill", "Git has no file plans/none.drill in HEAD"],
    ["git:HEAD:README.md", "README.md is no .drill file."],
    ["git:--help:x", "git:--help:x is not a file of a commit."],
    ["git:HEAD", "Write git:REVISION:PATH"],
  ])("%s", async (operand, message) => {
    const { code, stdout, stderr } = await drillwright(repository(), ["diff", operand, "plans/irons.drill"]);
    expect([code, stdout]).toEqual([2, ""]);
    expect(stderr).toContain(message);
  });
});

test("standard input can be one of the two", async () => {
  const { code } = await drillwright({ "old.drill": PLAN }, ["diff", "old.drill", "-"], { stdin: PLAN });
  expect(code).toBe(0);
  expect((await drillwright({}, ["diff", "-", "-"], { stdin: PLAN })).code).toBe(2);
});

test("a file with errors is compared with nothing", async () => {
  const { code, stdout, stderr } = await drillwright(both("plan {"), DIFF);
  expect([code, stdout]).toEqual([3, ""]);
  expect(stderr).toContain("new.drill:1");
});
