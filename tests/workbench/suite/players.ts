/** The view of players. What it shows is read by driving it as the editor does; pictures show how it looks. */
import assert from "node:assert/strict";
import { commands, window, workspace } from "vscode";
import type { DrawnTree } from "../../../extension/testing-api.ts";
import { COMMANDS } from "../../../shared/commands.ts";
import { eventually, test } from "../host/suite-runner.ts";
import { drillwright, fileOf, PLAN, replace, show } from "./support.ts";

test("players are listed with their sessions, and sessions with their blocks", async () => {
  const api = await drillwright();
  const players = await api.players.children();
  assert.deepEqual(
    players.map(({ label }) => label),
    ["P-07", "P-12", "P-21"],
  );
  const [p07] = players;
  assert.ok(p07);
  assert.match(p07.description, /right-handed/);
  assert.equal(p07.spoken, `P-07, ${p07.description}`);
  const sessions = await api.players.children(p07);
  const lesson = sessions.find(({ label }) => label === "P-07: start line, lesson two");
  assert.ok(lesson, sessions.map(({ label }) => label).join());
  const blocks = await api.players.children(lesson);
  assert.deepEqual(
    blocks.map(({ label }) => label),
    ["Wake up", "Where we are", "Gate", "Called clubs", "Prove it"],
  );
  const gate = blocks[2];
  assert.equal(gate?.icon, "pass");
  assert.match(gate?.spoken ?? "", /^Gate, Met, /);
});

test("players and curricula of one name, as in several folders, are told apart by their files", async () => {
  const api = await drillwright();
  const described = async (view: DrawnTree) =>
    (await view.children()).map(({ label, description }) => `${label} ${description}`);
  const file = fileOf("other/players.drill");
  const declared = 'player "P-07" { left-handed }\n\ncurriculum "Irons" {\n}\n';
  await workspace.fs.writeFile(file, new TextEncoder().encode(declared));
  await eventually("both players are listed", async () => {
    const players = await described(api.players);
    return players.includes("P-07 left-handed · no sessions yet · other/players.drill");
  });
  assert.match(
    (await described(api.players)).join(),
    /P-07 right-handed · \d sessions · library\/players\.drill/,
  );
  assert.deepEqual(await described(api.curricula), [
    "Irons curricula/irons.drill",
    "Irons other/players.drill",
  ]);
  await workspace.fs.delete(fileOf("other"), { recursive: true });
  await eventually("one is left", async () => (await api.players.children()).length === 3);
  assert.deepEqual(await described(api.curricula), ["Irons "]);
});

test("icons follow the plan, whether its session is shown or not", async () => {
  const api = await drillwright();
  const plan = await show(PLAN);
  const iconOf = async (name: string) => {
    for (const player of await api.players.children()) {
      const session = (await api.players.children(player)).find(({ label }) => label.startsWith(name));
      if (session) return (await api.players.children(session))[2]?.icon;
    }
    return undefined;
  };
  assert.equal(await iconOf("P-07: start line, lesson two"), "pass");
  await replace(plan, "club-path within 2°", "club-path within 0°");
  await eventually(
    "the gate is missed",
    async () => (await iconOf("P-07: start line, lesson two")) === "error",
  );
  await replace(plan, "club-path within 0°", "club-path within 2°");
  await eventually(
    "the gate is met again",
    async () => (await iconOf("P-07: start line, lesson two")) === "pass",
  );
});

test("a session of the view is shown on its plan", async () => {
  const api = await drillwright();
  const sessions = [
    ["sessions/p07-start-line.drill", "P-07: start line, lesson two"],
    ["sessions/p12-start-line-hall.drill", "P-12: start line, hall export"], // the latest again, for other tests
  ] as const;
  for (const [path, name] of sessions) {
    await commands.executeCommand(COMMANDS.showSession.id, {
      session: { file: fileOf(path).toString(), name },
    });
    assert.equal(window.activeTextEditor?.document.uri.toString(), fileOf(PLAN).toString());
    await eventually("it is shown", () => api.scoresAbout(fileOf(PLAN))[0]?.session?.name === name);
  }
});
