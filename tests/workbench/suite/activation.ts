import assert from "node:assert/strict";
import { commands, extensions, TabInputWebview, window, workspace } from "vscode";
import { COMMANDS } from "../../../shared/commands.ts";
import { eventually, facts, test } from "../host/suite-runner.ts";
import { drillwright, fileOf, PLAN } from "./support.ts";

test("the extension is found by the editor, and asleep until a plan is opened", () => {
  const extension = extensions.getExtension(facts.extensionId);
  assert.ok(extension, `${facts.extensionId} is not known to the editor`);
  assert.equal(extension.isActive, false);
});

test("a plan is known by its file name, and wakes the extension", async () => {
  const plan = await workspace.openTextDocument(fileOf(PLAN));
  assert.equal(plan.languageId, "drillwright");
  await window.showTextDocument(plan);
  await eventually("the extension is active", () => extensions.getExtension(facts.extensionId)?.isActive);
});

test("the server starts", async () => {
  await drillwright();
});

test("no page opens by itself", () => {
  const tabs = window.tabGroups.all.flatMap((group) => group.tabs);
  assert.deepEqual(
    tabs.filter(({ input }) => input instanceof TabInputWebview).map(({ label }) => label),
    [],
  );
});

test("the folder is trusted only when it was opened so", () => {
  assert.equal(workspace.isTrusted, facts.trusted);
});

test("every command is there", async () => {
  const known = await commands.getCommands(true);
  assert.deepEqual(
    Object.values(COMMANDS)
      .map(({ id }) => id)
      .filter((id) => !known.includes(id)),
    [],
  );
});
