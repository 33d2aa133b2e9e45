/** A session that is held against another one of the folder. */
import { expect, test } from "vitest";
import type { ScoreOutput } from "../../server/report/score-output.ts";
import { drillwright } from "./command-line.ts";

const PLAN = `plan "Longer" {
  for 7-iron
  block "Test" test {
    3 shots
    success carry gains 5 yd against the last session
  }
}
player "P-07" {
  right-handed
  limit 5 swings a week
}
source "Bay" {
  column "Carry" is carry in yd
}
`;

const session = (name: string, date: string, data: string) => `use "plan"
session "${name}" { plan "Longer" player "P-07" date ${date} data "${data}" from "Bay" }
`;

const files = {
  "plan.drill": PLAN,
  "monday.drill": session("Monday", "2026-10-12", "monday.csv"),
  "thursday.drill": session("Thursday", "2026-10-15", "thursday.csv"),
  "monday.csv": "Carry\n140\n141\n142\n",
  "thursday.csv": "Carry\n150\n151\n152\n",
};

async function scored(tables: Readonly<Record<string, string>>, ...words: readonly string[]) {
  const { stdout } = await drillwright(tables, ["score", ...words, "--format", "json"]);
  const { reports } = JSON.parse(stdout) as ScoreOutput;
  return new Map(reports.map((report) => [report.session.name, report]));
}

test("the last session, and the swings of the week, are read from the folder", async () => {
  const reports = await scored(files);
  expect(reports.get("Monday")?.verdict).toBe("not-measured");
  const thursday = reports.get("Thursday");
  expect(thursday?.verdict).toBe("met");
  expect(thursday?.blocks[0]?.criteria[0]?.evidence.comparison?.against).toBe(
    'the last session ("Monday" of 2026-10-12)',
  );
  expect(thursday?.load.limits).toMatchObject([
    { text: "6 of at most 5 swings in a week", isExceeded: true },
  ]);
});

test("a single file knows of no other session, and says so", async () => {
  const report = (await scored(files, "thursday.drill")).get("Thursday");
  expect(report?.verdict).toBe("not-measured");
  expect(report?.blocks[0]?.criteria[0]?.evidence.settles).toBe(
    "something to compare with: no earlier session of this plan by P-07 is among the files that were read",
  );
});

test("what is wrong with the other session keeps no verdict from being given", async () => {
  const broken = { ...files, "monday.drill": `${files["monday.drill"]}\nplan "Broken" {` };
  const report = (await scored(broken)).get("Thursday");
  expect(report?.blocks[0]?.criteria[0]?.evidence.settles).toMatch(
    /cannot be read: there are errors in monday.drill$/,
  );
  const { "monday.csv": _, ...missing } = files;
  const without = (await scored(missing)).get("Thursday");
  expect(without?.verdict).toBe("not-measured");
  expect(without?.notes.join("\n")).toContain(
    'Not all swings of session "Monday" are counted: There is no file',
  );
});
