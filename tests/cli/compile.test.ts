/** `drillwright compile`. */
import { expect, test } from "vitest";
import { PlanModel } from "../../shared/plan-model.ts";
import { drillwright } from "./command-line.ts";
import { PLAN, practice, session } from "./practice.ts";

test("a plan becomes its model: units resolved, places told by file and range", async () => {
  const { code, stdout, stderr } = await drillwright(practice(), ["compile", "plans/irons.drill"]);
  expect([code, stderr]).toEqual([0, ""]);
  const model = PlanModel.parse(JSON.parse(stdout));
  expect(model.plans.map(({ name }) => name)).toEqual(["Start line"]);
  const gate = model.plans[0]?.blocks[1];
  expect(gate?.success).toMatchObject([
    {
      kind: "count",
      id: "Gate/1",
      count: 3,
      outOf: 5,
      location: { file: "plans/irons.drill", range: { start: { line: 13, character: 6 } } },
    },
    {
      kind: "statistic",
      statistic: { kind: "average" },
      metric: "carry",
      bounds: { kind: "at least", limit: { value: expect.closeTo(137.16, 9) } },
    },
  ]);
  expect(stdout).toBe(`${JSON.stringify(JSON.parse(stdout), null, 2)}\n`);
});

test("a session brings what it refers to", async () => {
  const { stdout } = await drillwright(practice(), ["compile", "sessions/monday.drill"]);
  const { plans, players, sources, sessions } = PlanModel.parse(JSON.parse(stdout));
  expect(sessions.map(({ name, plan, player, data }) => [name, plan, player, data[0]?.path])).toEqual([
    ["Monday", "Start line", "P-01", "../data/monday.csv"],
  ]);
  expect([plans, players, sources].map((declared) => declared[0]?.location.file)).toEqual([
    "plans/irons.drill",
    "library/range.drill",
    "library/range.drill",
  ]);
});

test("standard input has the place it is given", async () => {
  const words = ["compile", "-", "--stdin-filename", "sessions/tuesday.drill"];
  const { code, stdout } = await drillwright(practice(), words, {
    stdin: session("Tuesday", "../data/monday.csv"),
  });
  expect(code).toBe(0);
  expect(PlanModel.parse(JSON.parse(stdout)).sessions[0]?.location.file).toBe("sessions/tuesday.drill");
});

test.each([
  ["its own", { "irons.drill": PLAN.replace("3 of 5", "6 of 5") }],
  [
    "those of a file it uses",
    { "irons.drill": `use "./more"\n${PLAN}`, "more.drill": PLAN.replace("3 of 5", "6 of 5") },
  ],
])("a file with errors has no model: %s", async (_, files) => {
  const { code, stdout, stderr } = await drillwright(files, ["compile", "irons.drill"]);
  expect([code, stdout]).toEqual([3, ""]);
  expect(stderr).toContain("hits-must-not-exceed-shots");
});

test("names that mean nothing leave no model", async () => {
  const { code, stdout, stderr } = await drillwright({ "a.drill": PLAN.replace("7-iron", "7-irn") }, [
    "compile",
    "a.drill",
  ]);
  expect([code, stdout]).toEqual([3, ""]);
  expect(stderr).toMatch(/7-irn/);
});
