import assert from "node:assert/strict";
import {
  type CodeLens,
  ConfigurationTarget,
  commands,
  type InlayHint,
  Selection,
  type TextDocument,
  window,
  workspace,
} from "vscode";
import type { TestingApi } from "../../../extension/testing-api.ts";
import { COMMANDS } from "../../../shared/commands.ts";
import type { ShowRows } from "../../../shared/protocol/show-rows.ts";
import { eventually, test } from "../host/suite-runner.ts";
import { codeOf, diagnostics, drillwright, fileOf, PLAN, replace, show, VERDICT } from "./support.ts";

/** Line of the plan with a text, and the verdict on it. */
async function verdictOn(plan: TextDocument, text: string): Promise<string | undefined> {
  const found = await diagnostics(plan, VERDICT, "the plan has verdicts", (all) => all.length > 0);
  const line = plan.positionAt(plan.getText().indexOf(text)).line;
  const verdict = found.find(({ range }) => range.start.line === line);
  return verdict && codeOf(verdict);
}

function sessionShown(api: TestingApi, plan: TextDocument): string | undefined {
  return api.scoresAbout(plan.uri)[0]?.session?.name;
}

test("verdicts stand on the lines that set the goals", async () => {
  await drillwright();
  const plan = await show(PLAN);
  const found = await diagnostics(plan, VERDICT, "the plan has verdicts", (all) => all.length > 0);
  const lines = new Set(found.map(({ range }) => plan.lineAt(range.start.line).text.trim()));
  assert.ok(lines.has("at least 12 of 18 shots on target"));
  assert.ok(lines.has("median carry at least 150 yd"));
});

test("the status bar says which session is shown and how it came out, while a plan is shown", async () => {
  const api = await drillwright();
  await show(PLAN);
  const status = await eventually("it says something", () => api.status());
  const details = [
    "Plan: Seven-iron: from cut to start line",
    "Session: P-12: start line, hall export (the latest)",
    "4 of 10 goals met, 6 missed",
  ].join("\n");
  assert.deepEqual(status, {
    text: "$(checklist) Missed · P-12: start line, hall export",
    tooltip: `${details}\nClick to pick the session.`,
    spoken: details,
    command: COMMANDS.pickSession.id,
  });
  await show("README.md");
  await eventually("nothing is said beside another file", () => api.status() === undefined);
});

test("a session that is picked is shown, and the latest again when that is picked", async () => {
  const api = await drillwright();
  const plan = await show(PLAN);
  const latest = await eventually("a session is shown", () => sessionShown(api, plan));
  assert.match(latest, /^P-12/);
  await pick(3, () => sessionShown(api, plan)?.startsWith("P-07"));
  assert.equal(api.scoresAbout(plan.uri)[0]?.picked, true);
  assert.match(api.status()?.text ?? "", / · P-07: /);
  assert.match(api.status()?.spoken ?? "", /Session: P-07: [^\n]* \(picked\)/);
  await pick(0, () => sessionShown(api, plan) === latest);
  assert.equal(api.scoresAbout(plan.uri)[0]?.picked, false);
  assert.match(api.status()?.spoken ?? "", / \(the latest\)/);
});

/** Picks from the list of sessions with keys: the latest is entry 0, the others follow, latest first. */
async function pick(entry: number, isShown: () => boolean | undefined): Promise<void> {
  const pause = () => new Promise((resolve) => setTimeout(resolve, 250));
  await eventually(`entry ${entry} is shown`, async () => {
    // The list comes when the server has answered. Keys that come before reach nothing, and are pressed once more.
    const command = commands.executeCommand(COMMANDS.pickSession.id);
    await pause();
    for (let step = 0; step < entry; step++)
      await commands.executeCommand("workbench.action.quickOpenSelectNext");
    await commands.executeCommand("workbench.action.acceptSelectedQuickOpenItem");
    await Promise.race([command, pause()]);
    return isShown();
  });
}

test("verdicts follow the plan while it is typed", async () => {
  await drillwright();
  const plan = await show(PLAN);
  const goal = "at least 12 of 18 shots on target";
  const before = await verdictOn(plan, goal);
  await replace(plan, "club-path within 2°", "club-path within 0°");
  await eventually("the goal is missed", async () => (await verdictOn(plan, goal)) === "missed");
  await replace(plan, "club-path within 0°", "club-path within 2°");
  await eventually("the goal is as it was", async () => (await verdictOn(plan, goal)) === before);
});

test("verdicts follow the data", async () => {
  const api = await drillwright();
  const plan = await show(PLAN);
  const session = await eventually("a session is shown", () => api.scoresAbout(plan.uri)[0]?.session?.file);
  const text = new TextDecoder().decode(
    await workspace.fs.readFile(fileOf(`sessions/${session.split("/").at(-1)}`)),
  );
  const data = fileOf(`data/${/data\/([^"]+)"/.exec(text)?.[1]}`);
  const content = await workspace.fs.readFile(data);
  const goals = () => JSON.stringify(api.scoresAbout(plan.uri)[0]?.goals);
  const before = goals();
  await workspace.fs.writeFile(data, content.subarray(0, content.length / 3));
  await eventually("the goals come out otherwise", () => goals() !== before);
  await workspace.fs.writeFile(data, content);
  await eventually("the goals are as they were", () => goals() === before);
});

test("shots are followed while they come in: what the next ones must bring stands behind the goal", async () => {
  const api = await drillwright();
  const plan = await show(PLAN);
  const data = fileOf("data/p12-start-line-field.csv");
  await pick(2, () => sessionShown(api, plan)?.includes("field"));
  const whole = await workspace.fs.readFile(data);
  const lines = new TextDecoder().decode(whole).split("\n");
  /** The table as far as it was written some shots into the block "Gate", which starts on row 31. */
  const written = (shots: number) =>
    workspace.fs.writeFile(data, new TextEncoder().encode(`${lines.slice(0, 30 + shots).join("\n")}\n`));
  const goal = plan.getText().indexOf("at least 12 of 18 shots on target");
  const line = plan.lineAt(plan.positionAt(goal).line).range;
  const hintReads = (text: string) =>
    eventually(`the goal reads ${text}`, async () => {
      const hints = await commands.executeCommand<InlayHint[]>(
        "vscode.executeInlayHintProvider",
        plan.uri,
        line,
      );
      return hints.some(({ label }) => label === text);
    });
  try {
    await written(3);
    await hintReads("undecided: 1 of 2, needs 11 of the next 16");
    await written(5);
    await hintReads("undecided: 2 of 4, needs 10 of the next 14");
    const lenses = await commands.executeCommand<CodeLens[]>("vscode.executeCodeLensProvider", plan.uri);
    assert.ok(lenses.some(({ command }) => command?.title.includes("2 of 18 on target")));
  } finally {
    await workspace.fs.writeFile(data, whole);
    await pick(0, () => sessionShown(api, plan)?.includes("hall"));
  }
});

test("one switch hides every verdict", async () => {
  await drillwright();
  const plan = await show(PLAN);
  await diagnostics(plan, VERDICT, "the plan has verdicts", (all) => all.length > 0);
  const settings = () => workspace.getConfiguration("drillwright", plan.uri);
  await settings().update("verdicts.show", false, ConfigurationTarget.Workspace);
  await diagnostics(plan, VERDICT, "the verdicts are hidden", (all) => all.length === 0);
  await settings().update("verdicts.show", undefined, ConfigurationTarget.Workspace);
  await diagnostics(plan, VERDICT, "the verdicts are back", (all) => all.length > 0);
});

test("a command hides the verdicts, and shows them again without leaving a trace", async () => {
  await drillwright();
  const plan = await show(PLAN);
  const setting = () => workspace.getConfiguration("drillwright", plan.uri).inspect("verdicts.show");
  await commands.executeCommand(COMMANDS.toggleVerdicts.id);
  await diagnostics(plan, VERDICT, "the verdicts are hidden", (all) => all.length === 0);
  assert.equal(setting()?.workspaceValue, false);
  await commands.executeCommand(COMMANDS.toggleVerdicts.id);
  await diagnostics(plan, VERDICT, "the verdicts are back", (all) => all.length > 0);
  assert.equal(setting()?.workspaceValue, undefined);
});

test("the rows behind a verdict are opened from the line of the cursor", async () => {
  await drillwright();
  const plan = await show(PLAN);
  const found = await diagnostics(plan, VERDICT, "the plan has verdicts", (all) => all.length > 0);
  const goal = found.find(({ relatedInformation }) => (relatedInformation ?? []).length > 0);
  assert.ok(goal && window.activeTextEditor);
  window.activeTextEditor.selection = new Selection(goal.range.start, goal.range.start);
  const data = goal.relatedInformation?.[0]?.location.uri.toString();
  await commands.executeCommand(COMMANDS.showRows.id);
  await eventually("the data is shown", () =>
    workspace.textDocuments.some(({ uri }) => uri.toString() === data),
  );
  await commands.executeCommand("closeReferenceSearch");
});

test("lines over the plan and its blocks sum up, and lead to the choice of the session and to rows", async () => {
  await drillwright();
  const plan = await show(PLAN);
  const lenses = () => commands.executeCommand<CodeLens[]>("vscode.executeCodeLensProvider", plan.uri, 99);
  const drawn = async () =>
    (await lenses()).map(({ range, command }) => [
      plan.lineAt(range.start.line).text.trim(),
      command?.title,
      command?.command,
    ]);
  await eventually("the plan has its lines", async () => (await drawn()).length > 1);
  assert.deepEqual(await drawn(), [
    [
      'plan "Seven-iron: from cut to start line" {',
      "P-12: start line, hall export, 2026-09-16: 4 goals met · 6 missed",
      COMMANDS.pickSession.id,
    ],
    ['block "Wake up" warm-up {', "16 of 16 shots", ""],
    ['block "Where we are" baseline {', "12 of 12 shots", ""],
    ['block "Gate" blocked {', "missed · 11 of 18 on target · 3 goals missed", COMMANDS.showRows.id],
    [
      'block "Called clubs" random {',
      "missed · 7 of 12 on target · 1 goal met · 1 missed",
      COMMANDS.showRows.id,
    ],
    ['block "Prove it" test {', "missed · 12 of 12 shots · 3 goals met · 2 missed", COMMANDS.showRows.id],
  ]);
});

test("no line stands over anything while verdicts are hidden, or lines are switched off", async () => {
  await drillwright();
  const plan = await show(PLAN);
  const count = async () =>
    (await commands.executeCommand<CodeLens[]>("vscode.executeCodeLensProvider", plan.uri)).length;
  const { update } = workspace.getConfiguration("drillwright", plan.uri);
  for (const setting of ["verdicts.show", "verdicts.lens"]) {
    await eventually("there are lines", async () => (await count()) > 0);
    await update(setting, false, ConfigurationTarget.Workspace);
    await eventually(`${setting} takes them away`, async () => (await count()) === 0);
    await update(setting, undefined, ConfigurationTarget.Workspace);
  }
  await eventually("there are lines again", async () => (await count()) > 0);
});

test("scoring by command leaves the same verdicts", async () => {
  const api = await drillwright();
  const plan = await show(PLAN);
  const before = await eventually(
    "the plan is scored",
    () => api.scoresAbout(plan.uri)[0]?.verdict ?? undefined,
  );
  await commands.executeCommand(COMMANDS.scoreSession.id);
  assert.equal(api.scoresAbout(plan.uri)[0]?.verdict, before);
});

test("a restarted server scores again, with the session that was picked", async () => {
  const api = await drillwright();
  const plan = await show(PLAN);
  const latest = await eventually("a session is shown", () => sessionShown(api, plan));
  const session = {
    file: fileOf("sessions/p07-start-line.drill").toString(),
    name: "P-07: start line, lesson two",
  };
  await commands.executeCommand(COMMANDS.showSession.id, { session });
  await eventually("it is shown", () => sessionShown(api, plan) === session.name);
  await commands.executeCommand(COMMANDS.restartServer.id);
  await eventually("it is shown again", () => sessionShown(api, plan) === session.name);
  await pick(0, () => sessionShown(api, plan) === latest);
});

test("the rows behind a verdict are opened beside its line", async () => {
  await drillwright();
  const plan = await show(PLAN);
  const data = fileOf("data/p07-start-line.csv");
  const row = { start: { line: 5, character: 0 }, end: { line: 5, character: 1 } };
  const isOpen = () => workspace.textDocuments.some(({ uri }) => uri.toString() === data.toString());
  assert.equal(isOpen(), false);
  await commands.executeCommand(COMMANDS.showRows.id, {
    file: plan.uri.toString(),
    position: { line: 33, character: 6 },
    rows: [{ file: data.toString(), range: row }],
  } satisfies ShowRows);
  await eventually("the data is shown", isOpen);
});
