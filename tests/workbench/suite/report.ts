/** The report beside the plan. What stands in it is shown by example in tests/report. */
import assert from "node:assert/strict";
import { commands, TabInputWebview, window } from "vscode";
import { COMMANDS } from "../../../shared/commands.ts";
import { eventually, test } from "../host/suite-runner.ts";
import { drillwright, PLAN, show } from "./support.ts";

const reports = () =>
  window.tabGroups.all
    .flatMap(({ tabs }) => tabs)
    .filter(({ input }) => input instanceof TabInputWebview && input.viewType.endsWith("drillwright.report"));

test("the report on the session that is shown opens beside its plan, once", async () => {
  await drillwright();
  await show(PLAN);
  await eventually("the plan is scored and its report open", async () => {
    await commands.executeCommand(COMMANDS.openReport.id);
    return reports().length > 0;
  });
  await commands.executeCommand(COMMANDS.openReport.id);
  // The tab is there before its title is.
  await eventually("the report has its title", async () => /^Report: P-/.test(reports()[0]?.label ?? ""));
  const [report, another] = reports();
  assert.equal(another, undefined);
  if (report !== undefined) await window.tabGroups.close(report);
});
