/** Any session of the folder, scored because somebody asks. */
import { afterEach, expect, test } from "vitest";
import { type SessionScore, sessionScore } from "../../shared/protocol/session-score.ts";
import { LspClient } from "../support/lsp-client.ts";

const FILES = {
  "plan.drill": `plan "Gate" {
  for 7-iron
  block "Start line" test {
    4 shots
    target start-direction within ±2°
    success {
      at least 3 of 4 shots on target
      average carry at least 150 yd
    }
  }
}
`,
  "session.drill": `use "./plan"
player "P-01" { right-handed }
source "Table" {
  column "Start" is start-direction in ° positive right
  column "Carry" is carry in yd
}
session "First try" { plan "Gate" player "P-01" date 2026-10-12 data "shots.csv" from "Table" }
`,
  "shots.csv": "Start,Carry\n1.0,152\n-3.5,149\n0.5,155\n2.5,151\n",
};

let client: LspClient;
afterEach(() => client.stop());

async function scored(name: string): Promise<SessionScore | null> {
  const session = { file: client.uri("session.drill"), name };
  return client.request<SessionScore | null>(sessionScore.method, { session });
}

test("no file needs to be open", async () => {
  client = await LspClient.start({ files: FILES });
  const score = await scored("First try");
  expect(score).toMatchObject({
    plan: { file: client.uri("plan.drill"), name: "Gate" },
    verdict: "missed",
    summary: "1 goal met · 1 missed",
    problem: null,
  });
  expect(score?.blocks.map(({ name, verdict }) => [name, verdict])).toEqual([["Start line", "missed"]]);
  const goals = score?.blocks[0]?.goals ?? [];
  expect(goals.map(({ id, verdict, location }) => [id, verdict, location.range.start.line])).toEqual([
    ["Start line/1", "missed", 6],
    ["Start line/2", "met", 7],
  ]);
  expect(goals[0]).toMatchObject({
    required: expect.stringContaining("at least 3"),
    observed: expect.any(String),
  });
  expect(goals[0]?.rows.map(({ location: { file, range }, text }) => [file, range.start.line, text])).toEqual(
    [
      [client.uri("shots.csv"), 2, "line 3: start-direction 3.5° left"],
      [client.uri("shots.csv"), 4, "line 5: start-direction 2.5° right"],
    ],
  );
});

test("an open plan counts as it stands in the editor", async () => {
  client = await LspClient.start({ files: FILES });
  await client.open("plan.drill", FILES["plan.drill"].replace("within ±2°", "within ±4°"));
  expect((await scored("First try"))?.verdict).toBe("met");
});

test("a plan with a mistake is a problem in words", async () => {
  client = await LspClient.start({ files: FILES });
  await client.open("plan.drill", FILES["plan.drill"].replace("3 of 4", "5 of 4"));
  expect(await scored("First try")).toMatchObject({
    verdict: null,
    blocks: [],
    problem: "The plan is scored when its mistakes are mended.",
  });
});

test("a session that is not there has no score", async () => {
  client = await LspClient.start({ files: FILES });
  expect(await scored("Second try")).toBeNull();
});
