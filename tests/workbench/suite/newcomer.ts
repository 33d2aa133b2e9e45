/** The first ten minutes. */
import assert from "node:assert/strict";
import { commands, extensions, Uri, window, workspace } from "vscode";
import { COMMANDS } from "../../../shared/commands.ts";
import { eventually, facts, test } from "../host/suite-runner.ts";
import { diagnostics, drillwright, fileOf, MISTAKE } from "./support.ts";

const read = async (uri: Uri) => new TextDecoder().decode(await workspace.fs.readFile(uri));

test("the sample folder is written where one says, and never over what is there", async () => {
  await drillwright();
  const create = () => commands.executeCommand<Uri>(COMMANDS.createSample.id, fileOf("scratch"));
  const first = await create();
  const readme = Uri.joinPath(first, "README.md");
  assert.match(await read(readme), /^# Wrenlow practice centre/);
  await workspace.fs.writeFile(readme, new TextEncoder().encode("mine"));
  const second = await create();
  assert.notEqual(second.toString(), first.toString());
  assert.equal(await read(readme), "mine");
  const plans = await workspace.fs.readDirectory(Uri.joinPath(second, "plans"));
  assert.ok(plans.length > 2);
  await workspace.fs.delete(fileOf("scratch"), { recursive: true });
});

test("a new plan is inserted into a file without a name, and has no mistake", async () => {
  await drillwright();
  await commands.executeCommand(COMMANDS.newPlan.id);
  const document = window.activeTextEditor?.document;
  assert.ok(document);
  assert.equal(document.isUntitled, true);
  assert.equal(document.languageId, "drillwright");
  assert.match(document.getText(), /^plan "Name" \{\n {2}intent /);
  await diagnostics(document, MISTAKE, "the new plan has no mistake", (all) => all.length === 0);
  await commands.executeCommand("workbench.action.revertAndCloseActiveEditor");
});

test("every step of the walkthrough can be taken", async () => {
  const manifest = extensions.getExtension(facts.extensionId)?.packageJSON;
  const known = new Set(await commands.getCommands(true));
  const [walkthrough] = manifest.contributes.walkthroughs;
  for (const { id, description } of walkthrough.steps) {
    const links = [...String(description).matchAll(/\(command:([^)]+)\)/g)].map(
      ([, command]) => command ?? "",
    );
    assert.ok(links.length > 0, `${id} leads nowhere`);
    assert.deepEqual(
      links.filter((command) => !known.has(command)),
      [],
    );
  }
});

test("the walkthrough opens", async () => {
  await drillwright();
  await commands.executeCommand(COMMANDS.getStarted.id);
  await eventually("its page is shown", () =>
    window.tabGroups.all
      .flatMap(({ tabs }) => tabs)
      .some(({ label }) => /Get Started|Welcome|Walkthrough/.test(label)),
  );
  await commands.executeCommand("workbench.action.closeActiveEditor");
});
