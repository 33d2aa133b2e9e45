/** The view of curricula. What it shows is read by driving it as the editor does; pictures show how it looks. */
import assert from "node:assert/strict";
import { commands, TabInputWebview, window } from "vscode";
import type { DrawnItem, TestingApi } from "../../../extension/testing-api.ts";
import { COMMANDS } from "../../../shared/commands.ts";
import { eventually, test } from "../host/suite-runner.ts";
import { drillwright, replace, show } from "./support.ts";

const CURRICULUM = "curricula/irons.drill";
const GATED = "Seven-iron: a week later";

/** What is drawn below the only curriculum. */
async function steps(api: TestingApi): Promise<readonly DrawnItem[]> {
  const [irons, another] = await api.curricula.children();
  assert.equal(irons?.label, "Irons");
  assert.equal(another, undefined);
  return api.curricula.children(irons);
}

/** The players at a step, as they are drawn. */
async function playersAt(api: TestingApi, step: string): Promise<readonly DrawnItem[]> {
  const found = (await steps(api)).find(({ label }) => label === step);
  assert.ok(found, step);
  return api.curricula.children(found);
}

test("a curriculum shows its steps, and where every player stands at them", async () => {
  const api = await drillwright();
  const found = await steps(api);
  assert.deepEqual(
    found.map(({ label, description }) => [label, description]),
    [
      ["Five-iron: ball first, then turf", "1 current · 1 met"],
      ["Seven-iron: from cut to start line", "2 current"],
      [GATED, "1 current · 1 not open yet"],
      ["Seven-iron: two windows", "2 not open yet"],
    ],
  );
  assert.match(found[2]?.spoken ?? "", /^Seven-iron: a week later, Step 3 of 4, 1 current/);
  const [p07, p12] = await playersAt(api, GATED);
  assert.deepEqual([p07?.label, p07?.icon], ["P-07", "arrow-circle-right"]);
  assert.equal(p07?.spoken, "P-07, Current, 1 session, the last: Missed");
  assert.deepEqual([p12?.label, p12?.icon], ["P-12", "lock"]);
  assert.equal(p12?.description, "waits for block “Gate” of “Seven-iron: from cut to start line”");
});

test("where players stand follows the text while it is typed", async () => {
  const api = await drillwright();
  const curriculum = await show(CURRICULUM);
  const gate = 'gate block "Gate" of "Seven-iron: from cut to start line" met';
  const iconOfFirst = async () => (await playersAt(api, GATED))[0]?.icon;
  await replace(curriculum, gate, `${gate} in 2 sessions`);
  await eventually("once is not enough", async () => (await iconOfFirst()) === "lock");
  await replace(curriculum, `${gate} in 2 sessions`, gate);
  await eventually("once is enough", async () => (await iconOfFirst()) === "arrow-circle-right");
});

test("a player's row opens the report on the session behind it; one without a session offers none", async () => {
  const api = await drillwright();
  await eventually("where players stand is known", async () => (await steps(api)).length > 1);
  const [p07, p12] = await playersAt(api, GATED);
  assert.ok(p07);
  assert.deepEqual([p07.kind, p12?.kind], ["session-of-plan", "player"]);
  await commands.executeCommand(COMMANDS.openReport.id, api.curricula.elementOf(p07));
  const reports = () =>
    window.tabGroups.all.flatMap(({ tabs }) => tabs).filter(({ input }) => input instanceof TabInputWebview);
  await eventually("its report is open", () => /^Report: P-07: .*week/.test(reports()[0]?.label ?? ""));
  await window.tabGroups.close(reports());
});
