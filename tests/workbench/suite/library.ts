import assert from "node:assert/strict";
import { commands, type Hover, type Location, type LocationLink, languages, Uri, workspace } from "vscode";
import { eventually, test } from "../host/suite-runner.ts";
import { diagnostics, drillwright, MISTAKE, PLAN, replace, show } from "./support.ts";

test("a metric leads to its declaration in the built-in vocabulary, which opens like a file", async () => {
  await drillwright();
  const plan = await show(PLAN);
  const position = plan.positionAt(plan.getText().indexOf("club-path within") + 2);
  const found = await eventually("the definition is found", async () => {
    const [first] = await commands.executeCommand<(Location | LocationLink)[]>(
      "vscode.executeDefinitionProvider",
      plan.uri,
      position,
    );
    return first;
  });
  const [uri, range] = "targetUri" in found ? [found.targetUri, found.targetRange] : [found.uri, found.range];
  assert.equal(uri.scheme, "drillwright-library");

  const library = await workspace.openTextDocument(uri);
  assert.equal(library.languageId, "drillwright");
  assert.match(library.getText(), /^metric club-path is angle/m);
  assert.match(library.lineAt(range.start.line).text, /club-path/);
  await eventually("hovers work in it", async () => {
    const at = library.positionAt(library.getText().indexOf("metric club-path") + "metric c".length);
    const hovers = await commands.executeCommand<Hover[]>("vscode.executeHoverProvider", uri, at);
    return hovers.length > 0;
  });
  assert.deepEqual(languages.getDiagnostics(uri), []);
});

test("the built-in vocabulary is still known when its file was closed", async () => {
  const api = await drillwright();
  const starts = api.serverStarts();
  const uri = Uri.parse("drillwright-library:/dimensions.drill");
  const isOpen = () => workspace.textDocuments.some((document) => document.uri.toString() === uri.toString());
  // A document that a test opens itself stays open for minutes; one that the editor shows is closed with its editor.
  await commands.executeCommand("vscode.open", uri);
  await eventually("the vocabulary is shown", isOpen);
  await commands.executeCommand("workbench.action.closeActiveEditor");
  await eventually("the editor has let go of it", () => !isOpen());
  const plan = await show(PLAN);
  const isScored = () => api.scoresAbout(plan.uri).some(({ problem }) => problem === null);
  await replace(plan, "12 of 18", "20 of 18");
  await eventually("the plan with a mistake is not scored", () => !isScored());
  await replace(plan, "20 of 18", "12 of 18");
  await eventually("the plan is scored again", isScored);
  await diagnostics(plan, MISTAKE, "no mistake is told", (all) => all.length === 0);
  assert.equal(api.serverStarts(), starts, "the server ended on its own");
});
