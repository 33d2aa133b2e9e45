/** Where the players of a curriculum stand, asked of the server. How that is decided: tests/scoring/curriculum-standing. */
import { afterEach, expect, test } from "vitest";
import { type CurriculumPlayers, curriculumPlayers } from "../../shared/protocol/curriculum-players.ts";
import { type Project, project } from "../../shared/protocol/project.ts";
import { LspClient } from "../support/lsp-client.ts";

const plan = (name: string) => `plan "${name}" {
  for 7-iron
  block "Carry" test {
    2 shots
    success average carry at least 150 yd
  }
}
`;

const CURRICULUM = `use "./plans"
curriculum "Irons" {
  step "Strike" {
    review after 7 d
  }
  step "Path" after "Strike" {
    gate "Strike" met in 2 sessions
  }
}
`;

const FILES = {
  "plans.drill": plan("Strike") + plan("Path"),
  "curriculum.drill": CURRICULUM,
  "people.drill":
    'player "P-01" { right-handed }\nplayer "P-02" { left-handed }\nsource "Table" { column "Carry" is carry in yd }\n',
  "sessions.drill": `use "./plans"
use "./people"
session "First" { plan "Strike" player "P-02" date 2026-10-12 data "long.csv" from "Table" }
session "Second" { plan "Strike" player "P-01" date 2026-10-12 data "short.csv" from "Table" }
session "Third" { plan "Strike" player "P-01" date 2026-10-19 data "long.csv" from "Table" }
session "Fourth" { plan "Strike" player "P-01" date 2026-10-20 data "lost.csv" from "Table" }
`,
  "long.csv": "Carry\n155\n152\n",
  "short.csv": "Carry\n141\n139\n",
};

let client: LspClient;
afterEach(() => client.stop());

async function asked(today: string, name = "Irons"): Promise<CurriculumPlayers | null> {
  const curriculum = { file: client.uri("curriculum.drill"), name };
  return client.request(curriculumPlayers.method, { curriculum, today });
}

/** The players at each step, and what a coach would look at first. */
function overview(found: CurriculumPlayers | null) {
  return found?.steps.map(({ plan, players }) => [
    plan.name,
    ...players.map(({ player, standing: { state }, session }) => [player.name, state, session?.name ?? null]),
  ]);
}

test("the curricula of the folder are listed", async () => {
  client = await LspClient.start({ files: FILES });
  const { curricula } = await client.request<Project>(project.method, null);
  expect(curricula.map(({ name, range }) => [name, range.start.line])).toEqual([["Irons", 1]]);
});

test("every step tells where everybody stands on the day, with their latest session of it", async () => {
  client = await LspClient.start({ files: FILES });
  const found = await asked("2026-10-25");
  expect(found?.problem).toBeNull();
  expect(overview(found)).toEqual([
    ["Strike", ["P-01", "met", "Fourth"], ["P-02", "due", "First"]],
    ["Path", ["P-01", "closed", null], ["P-02", "closed", null]],
  ]);
  expect(found?.steps[0]?.players[0]?.standing).toMatchObject({
    metOn: "2026-10-19",
    review: "2026-10-26",
    sessions: 3,
    unscored: 1,
  });
  expect(found?.steps[1]?.players[0]?.standing.waitsFor).toEqual([
    { plan: "Strike", block: null, times: 2, met: 1 },
  ]);
  expect(overview(await asked("2026-10-26"))?.[0]).toEqual([
    "Strike",
    ["P-01", "due", "Fourth"],
    ["P-02", "due", "First"],
  ]);
});

test("texts count as they stand in the editor, tables as they are on disk", async () => {
  client = await LspClient.start({ files: FILES });
  const stateOfFirst = async () => (await asked("2026-10-25"))?.steps[1]?.players[0]?.standing.state;
  expect(await stateOfFirst()).toBe("closed");
  await client.open("curriculum.drill", CURRICULUM.replace(" met in 2 sessions", " met"));
  expect(await stateOfFirst()).toBe("current");
  await client.open("plans.drill", FILES["plans.drill"].replace("at least 150 yd", "at least 160 yd"));
  expect(await stateOfFirst()).toBe("closed");
  await client.write("long.csv", "Carry\n175\n172\n");
  await expect.poll(stateOfFirst, { timeout: 15_000 }).toBe("current");
});

test("a file with mistakes is a problem in words, and what is not there is nothing", async () => {
  client = await LspClient.start({ files: FILES });
  await client.open("curriculum.drill", CURRICULUM.replace('step "Path"', 'step "Pth"'));
  expect(await asked("2026-10-25")).toEqual({
    steps: [],
    problem: "Where players stand is known when the mistakes of the curriculum's file are mended.",
  });
  expect(await asked("2026-10-25", "Woods")).toBeNull();
});
