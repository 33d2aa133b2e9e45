/** What stands beside the language of a file: how much was read with it. */
import assert from "node:assert/strict";
import { workspace } from "vscode";
import { COMMANDS } from "../../../shared/commands.ts";
import { eventually, test } from "../host/suite-runner.ts";
import { drillwright, fileOf, PLAN, show } from "./support.ts";

test("beside the language stands what was read, and follows the files", async () => {
  const api = await drillwright();
  await show(PLAN);
  const says = (sessions: number) =>
    new RegExp(`^Plans: \\d+ · sessions: ${sessions}$`).test(api.projectStatus().text);
  await eventually("it says how many there are", () => says(8));
  const { busy, detail, command } = api.projectStatus();
  assert.equal(busy, false);
  assert.match(detail, /^Files read: \d+$/);
  assert.equal(command, COMMANDS.showOutput.id);

  const file = fileOf("sessions/one-more.drill");
  await workspace.fs.writeFile(file, new TextEncoder().encode('session "One more" {\n}\n'));
  await eventually("it counts the new session", () => says(9));
  await workspace.fs.delete(file);
  await eventually("it does not count it any more", () => says(8));
});
