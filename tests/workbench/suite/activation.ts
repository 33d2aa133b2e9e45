import assert from "node:assert/strict";
import { extensions, languages, type TextDocument, window, workspace } from "vscode";
import { eventually, facts, test } from "../host/suite-runner.ts";

/** The first plan of the folder that is open. */
async function anyPlan(): Promise<TextDocument> {
  const [file] = await workspace.findFiles("**/*.drill", undefined, 1);
  assert.ok(file, "the folder holds no .drill file");
  return workspace.openTextDocument(file);
}

test("is found by the editor and asleep until a plan is opened", () => {
  const extension = extensions.getExtension(facts.extensionId);
  assert.ok(extension, `${facts.extensionId} is not known to the editor`);
  assert.equal(extension.isActive, false);
});

test("knows a plan by its file name", async () => {
  const plan = await anyPlan();
  assert.equal(plan.languageId, "drillwright");
});

test("wakes when a plan is shown", async () => {
  await window.showTextDocument(await anyPlan());
  await eventually("the extension is active", () => extensions.getExtension(facts.extensionId)?.isActive);
});

test("trusts the folder only when it was opened so", () => {
  assert.equal(workspace.isTrusted, facts.trusted);
});

test("says where a plan is wrong", async () => {
  const plan = await workspace.openTextDocument({ language: "drillwright", content: "plan plan plan" });
  await eventually("a diagnostic appears", () => languages.getDiagnostics(plan.uri).length > 0);
});
