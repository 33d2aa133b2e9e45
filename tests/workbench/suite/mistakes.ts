import assert from "node:assert/strict";
import { type CodeAction, commands, workspace } from "vscode";
import { test } from "../host/suite-runner.ts";
import { codeOf, diagnostics, drillwright, MISTAKE, PLAN, replace, show } from "./support.ts";

test("a sound plan has no mistakes", async () => {
  const api = await drillwright();
  const plan = await show(PLAN);
  await diagnostics(plan, MISTAKE, "the plan is scored without a mistake", (all) => {
    return api.scoresAbout(plan.uri).some(({ problem }) => problem === null) && all.length === 0;
  });
});

test("a mistake is found while it is typed, and mended by its fix", async () => {
  await drillwright();
  const plan = await workspace.openTextDocument({
    language: "drillwright",
    content: `plan "Gate" {
  for 7-iron
  block "Start" test {
    10 shots
    target start-direction within ±2°
    success at least 8 of 10 shots on target
  }
}
`,
  });
  await diagnostics(plan, MISTAKE, "the new plan has no mistakes", (all) => all.length === 0);
  await replace(plan, "8 of 10", "12 of 10");
  const [mistake] = await diagnostics(plan, MISTAKE, "the mistake is told", (all) => all.length === 1);
  assert.ok(mistake);
  assert.equal(codeOf(mistake), "hits-must-not-exceed-shots");
  assert.equal(plan.getText(mistake.range), "12");

  const actions = await commands.executeCommand<CodeAction[]>(
    "vscode.executeCodeActionProvider",
    plan.uri,
    mistake.range,
  );
  const fix = actions.find(({ title }) => title === "Ask for 10 of 10");
  assert.ok(fix?.edit, `the fix is not among: ${actions.map(({ title }) => title).join(", ")}`);
  assert.ok(await workspace.applyEdit(fix.edit));
  await diagnostics(plan, MISTAKE, "the mistake is gone", (all) => all.length === 0);
  assert.match(plan.getText(), /at least 10 of 10 shots/);
});
