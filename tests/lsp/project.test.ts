/** What the files of a folder declare, for an editor to choose from. */
import { afterEach, expect, test } from "vitest";
import { type Project, project } from "../../shared/protocol/project.ts";
import { type ProjectChangedParams, projectChanged } from "../../shared/protocol/project-changed.ts";
import { LspClient } from "../support/lsp-client.ts";

const FILES = {
  "plans.drill": 'plan "Wedge" { for sand-wedge }\nplan "Gate" { for 7-iron }\n',
  "people.drill":
    'player "P-02" { left-handed }\nplayer "P-01" { note "New." }\nsource "Table" { column "Carry" is carry in yd }\n',
  "sessions.drill": `use "./plans"
use "./people"
session "Second" { plan "Gate" player "P-02" date 2026-10-19 data "b.csv" from "Table" }
session "Third" { plan "Gate" player "P-02" date 2026-10-26 data "c.csv" from "Table" }
session "First" { plan "Nobody's" player "P-99" data "a.csv" from "Table" }
`,
};

let client: LspClient;
afterEach(() => client.stop());

const names = (all: readonly { name: string }[]) => all.map(({ name }) => name);

test("plans, players and sources are named in order, sessions latest first", async () => {
  client = await LspClient.start({ files: FILES });
  const found = await client.request<Project>(project.method, null);
  expect(found.files).toBe(3);
  expect(names(found.plans)).toEqual(["Gate", "Wedge"]);
  expect(found.players.map(({ name, hand }) => [name, hand])).toEqual([
    ["P-01", null],
    ["P-02", "left"],
  ]);
  expect(names(found.sources)).toEqual(["Table"]);
  expect(found.sessions.map(({ name, date }) => [name, date])).toEqual([
    ["Third", "2026-10-26"],
    ["Second", "2026-10-19"],
    ["First", null],
  ]);
});

test("the log says what was read, and what is not looked at", async () => {
  client = await LspClient.start({ files: FILES });
  const log = () =>
    client.notifications
      .filter(({ method }) => method === "window/logMessage")
      .map(({ params }) => (params as { message: string }).message);
  const inventory =
    "Read 3 files: 2 plans, 3 sessions, 2 players, 1 source. Not read: folders that begin with a dot, node_modules, dist.";
  await client.until(
    () => log().includes(inventory),
    () => `log: ${JSON.stringify(log())}`,
  );
});

test("a session names its plan and its player where they are known", async () => {
  client = await LspClient.start({ files: FILES });
  const { sessions } = await client.request<Project>(project.method, null);
  expect(sessions[0]).toMatchObject({
    plan: { file: client.uri("plans.drill"), name: "Gate" },
    player: { file: client.uri("people.drill"), name: "P-02" },
  });
  expect(sessions[2]).toMatchObject({ plan: null, player: null });
});

test("the editor is told when something changes, and whether it is what is declared", async () => {
  client = await LspClient.start({ files: FILES });
  const told = () =>
    client.notifications
      .filter(({ method }) => method === projectChanged.method)
      .map(({ params }) => (params as ProjectChangedParams).declarations);
  await client.open("plans.drill", FILES["plans.drill"]);
  await client.until(
    () => told().length > 0,
    () => "no word of the open plan",
  );
  let before = told().length;
  const after = async (text: string) => {
    await client.change("plans.drill", FILES["plans.drill"] + text);
    await client.until(
      () => told().length > before,
      () => "no word of the change",
    );
    before = told().length;
    return told().at(-1);
  };
  expect(await after("// a comment")).toBe(false);
  expect(await after('plan "Driver" { for driver }')).toBe(true);
  expect(names((await client.request<Project>(project.method, null)).plans)).toContain("Driver");
});
