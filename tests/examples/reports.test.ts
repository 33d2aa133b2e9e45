import { expect, test } from "vitest";
import { ScoreReport } from "../../shared/score-report.ts";
import { drillFiles, scoreExamples } from "./examples.ts";
import { writeReport } from "./written.ts";

const reports = await scoreExamples();
const sessionFiles = drillFiles().filter((path) => path.startsWith("sessions/"));

test.each(sessionFiles)("%s is scored as expected", async (path) => {
  const report = ScoreReport.parse(reports.get(path));
  const name = path.replace("sessions/", "").replace(".drill", ".txt");
  await expect(writeReport(report)).toMatchFileSnapshot(`expected/${name}`);
});

test("every file of sessions/ holds a session, and no other file does", () => {
  expect([...reports.keys()]).toEqual(sessionFiles);
});
