/** The report beside the plan. What stands in it is shown by example in tests/report. */
import assert from "node:assert/strict";
import { commands, type Diagnostic, TabInputWebview, window, workspace } from "vscode";
import { COMMANDS } from "../../../shared/commands.ts";
import { eventually, test } from "../host/suite-runner.ts";
import { diagnostics, drillwright, fileOf, PLAN, replace, show, VERDICT } from "./support.ts";

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

test("in the file of a session that is not shown, the status bar and commands are about it", async () => {
  const api = await drillwright();
  await show("sessions/p07-start-line.drill");
  const status = await eventually("the session is scored", () => api.status());
  assert.equal(status.text, "$(checklist) Undecided · P-07: start line, lesson two");
  assert.match(
    status.spoken,
    /\nSession: P-07: [^\n]* \(the plan is shown with another\)\n9 of 10 goals met/,
  );
  await commands.executeCommand(COMMANDS.openReport.id);
  await eventually("the report is about it", () =>
    api.reports().some((page) => /<title>P-07: start line, lesson two/.test(page)),
  );
  await eventually("it is closed", async () => {
    await window.tabGroups.close(reports()); // the page is there before its tab is
    return api.reports().length === 0;
  });
});

test("a report follows the plan where it is seen, and when it comes back into sight", async () => {
  const api = await drillwright();
  const plan = await show(PLAN);
  const says = (text: string) => api.reports().some((page) => page.includes(text));
  await eventually("the report is open", async () => {
    await commands.executeCommand(COMMANDS.openReport.id);
    return says("club-path within 2° of");
  });
  const report = await eventually("its tab is there", () => reports()[0]);
  await replace(plan, "club-path within 2°", "club-path within 3°");
  await eventually("it has followed", () => says("club-path within 3° of"));

  const cover = await workspace.openTextDocument(fileOf("README.md"));
  await window.showTextDocument(cover, { viewColumn: report.group.viewColumn, preview: false });
  await replace(plan, "club-path within 3°", "club-path within 0°");
  const isNone = ({ message }: Diagnostic) => message.includes("0 of 18 shots on target");
  await diagnostics(plan, VERDICT, "the verdicts have followed", (all) => all.some(isNone));
  assert.ok(says("club-path within 3° of"), "a page that nobody sees was made anew");
  await commands.executeCommand("workbench.action.closeActiveEditor");
  await eventually("it has followed when it was seen again", () => says("club-path within 0° of"));

  const stale = "This page is no longer current. The plan is scored when its mistakes are mended.";
  await replace(plan, "at least 12 of 18", "at least 19 of 18");
  await eventually("it says that it is no longer current", () => says(stale));
  assert.ok(says("club-path within 0° of"), "the last page stays");
  await replace(plan, "at least 19 of 18", "at least 12 of 18");
  await eventually("it is current again", () => !says(stale));

  await replace(plan, "club-path within 0°", "club-path within 2°");
  await diagnostics(plan, VERDICT, "the verdicts are as before", (all) => !all.some(isNone));
  await window.tabGroups.close(reports());
  await eventually("it is closed", () => api.reports().length === 0);
});
