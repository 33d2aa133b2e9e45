/** A day's work: opening, typing, saving, closing. It asks nothing of anybody. */
import assert from "node:assert/strict";
import { commands, type Disposable, languages, type TextDocument, Uri, window, workspace } from "vscode";
import { eventually, test } from "../host/suite-runner.ts";
import { diagnostics, drillwright, fileOf, MISTAKE, PLAN, replace, show } from "./support.ts";

/** Also where the editor has saved by itself meanwhile. */
async function save(document: TextDocument): Promise<void> {
  await document.save();
  await eventually("it is saved", () => !document.isDirty);
}

test("a plan is opened, typed in, saved and closed", async () => {
  const api = await drillwright();
  const plan = await show(PLAN);
  await eventually("it is scored", () => api.scoresAbout(plan.uri).some(({ verdict }) => verdict !== null));
  await replace(plan, "within 2°", "within 3°");
  await save(plan);
  await replace(plan, "within 3°", "within 2°");
  await save(plan);
  await commands.executeCommand("workbench.action.closeActiveEditor");
});

test("a mistake is saved as it is", async () => {
  await drillwright();
  const plan = await show(PLAN);
  await replace(plan, "12 of 18", "20 of 18");
  await diagnostics(plan, MISTAKE, "the mistake is told", (all) => all.length > 0);
  await save(plan);
  await replace(plan, "20 of 18", "12 of 18");
  await diagnostics(plan, MISTAKE, "the mistake is gone", (all) => all.length === 0);
  await save(plan);
});

test("a file outside of the folder is checked by itself", async () => {
  await drillwright();
  const folder = workspace.workspaceFolders?.[0]?.uri as Uri;
  const uri = folder.with({ path: `${folder.path.slice(0, folder.path.lastIndexOf("/"))}/loose.drill` });
  const text =
    'plan "Loose" {\n  for 7-iron\n  block "One" test {\n    4 shots\n    success at least 5 of 4 shots with carry at least 150 yd\n  }\n}\n';
  await workspace.fs.writeFile(uri, new TextEncoder().encode(text));
  const loose = await workspace.openTextDocument(uri);
  await window.showTextDocument(loose);
  await diagnostics(loose, MISTAKE, "the mistake is told", (all) => all.length === 1);
  await commands.executeCommand("workbench.action.closeActiveEditor");
  await workspace.fs.delete(uri);
});

test("the old side of a comparison is coloured, and checked by nobody", async () => {
  await drillwright();
  const text = 'plan "Old" { for nothing-known }\n';
  const subscription: Disposable = workspace.registerTextDocumentContentProvider("old", {
    provideTextDocumentContent: () => text,
  });
  const old = await workspace.openTextDocument(Uri.parse("old:/plans/old.drill"));
  assert.equal(old.languageId, "drillwright");
  // By when a plan with the same mistake has been told of it, so would this one.
  const plan = await workspace.openTextDocument({ language: "drillwright", content: text });
  await diagnostics(plan, MISTAKE, "a plan of one's own is checked", (all) => all.length > 0);
  assert.deepEqual(languages.getDiagnostics(old.uri), []);
  subscription.dispose();
});

test("a file that is deleted takes its diagnostics with it", async () => {
  await drillwright();
  const uri = fileOf("plans/gone.drill");
  await workspace.fs.writeFile(uri, new TextEncoder().encode('plan "Gone" { for nothing-known }\n'));
  // Opened as people do it: what a suite opens stays open for minutes after its editor is closed.
  await commands.executeCommand("vscode.open", uri);
  const mistakes = () => languages.getDiagnostics(uri).filter(({ source }) => source === MISTAKE);
  await eventually("the mistake is told", () => mistakes().length > 0);
  await commands.executeCommand("workbench.action.closeActiveEditor");
  await workspace.fs.delete(uri);
  await eventually("nothing is left of it", () => languages.getDiagnostics(uri).length === 0);
});
