/** What asks where to write. The dialogue is the editor's own, and is answered as with the Enter key. */
import assert from "node:assert/strict";
import { commands, type Uri, window, workspace } from "vscode";
import { COMMANDS, type CommandName } from "../../../shared/commands.ts";
import { eventually, test } from "../host/suite-runner.ts";
import { drillwright, fileOf, PLAN, show } from "./support.ts";

async function names(folder: string): Promise<string[]> {
  return (await workspace.fs.readDirectory(fileOf(folder))).map(([name]) => name);
}

/** Runs a command, accepts what it proposes until there is a new file in a folder, and returns that. */
async function accept(command: CommandName, folder: string): Promise<Uri> {
  const before = new Set(await names(folder));
  const added = async () => (await names(folder)).find((name) => !before.has(name));
  const done = commands.executeCommand(COMMANDS[command].id);
  await eventually(`there is a new file in ${folder}`, async () => {
    await commands.executeCommand("workbench.action.acceptSelectedQuickOpenItem");
    return (await added()) !== undefined;
  });
  await done;
  return fileOf(`${folder}/${await added()}`);
}

async function textOf(uri: Uri): Promise<string> {
  return new TextDecoder().decode(await workspace.fs.readFile(uri));
}

test("the card of the plan is saved beside it, under its name", async () => {
  await drillwright();
  await show(PLAN);
  const card = await accept("saveCard", "plans");
  assert.match(card.path, /\/plans\/seven-iron-from-cut-to-start-line\.html$/);
  assert.match(await textOf(card), /<title>Seven-iron: from cut to start line<\/title>/);
  await workspace.fs.delete(card);
});

test("the report is saved beside its session, and tells no path of the machine", async () => {
  const api = await drillwright();
  const plan = await show(PLAN);
  await eventually("the plan is scored", () => api.scoresAbout(plan.uri).some(({ session }) => session));
  const report = await accept("saveReport", "sessions");
  const text = await textOf(report);
  assert.match(text, /<title>[^<]*P-\d\d/);
  assert.doesNotMatch(text, /(?:file|memory|vscode-[a-z]+):\/\//);
  await workspace.fs.delete(report);
});

test("whoever turns away has written nothing", async () => {
  await drillwright();
  await show(PLAN);
  const before = await names("plans");
  let isOver = false;
  const done = commands.executeCommand(COMMANDS.saveCard.id).then(() => {
    isOver = true;
  });
  await eventually("it is over", async () => {
    await commands.executeCommand("workbench.action.closeQuickOpen");
    return isOver;
  });
  await done;
  assert.deepEqual(await names("plans"), before);
});

test("a session is begun in a few questions, each with a proposal", async () => {
  await drillwright();
  const session = await accept("newSession", "sessions");
  await eventually("its text is there", () =>
    /^session "P-07: /m.test(window.activeTextEditor?.document.getText() ?? ""),
  );
  assert.equal(window.activeTextEditor?.document.uri.toString(), session.toString());
  const text = window.activeTextEditor?.document.getText() ?? "";
  assert.match(text, /^use "\.\.\/library\/players"$/m);
  assert.match(text, /^\s+player "P-07"$/m);
  await commands.executeCommand("workbench.action.revertAndCloseActiveEditor");
  await workspace.fs.delete(session);
});
