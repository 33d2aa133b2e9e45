/** A session that is held against another one of the workspace, against the bundled server. */
import { afterEach, expect, test } from "vitest";
import { type PlanSessions, sessions } from "../../shared/protocol/sessions.ts";
import { LspClient } from "../support/lsp-client.ts";

const PLAN = `plan "Longer" {
  for 7-iron
  block "Test" test {
    3 shots
    success carry gains 5 yd against the last session
  }
}
player "P-07" { right-handed }
source "Bay" { column "Carry" is carry in yd }
`;

const session = (name: string, date: string, data: string) => `use "./plan"
session "${name}" { plan "Longer" player "P-07" date ${date} data "${data}" from "Bay" }
`;

let client: LspClient;
afterEach(() => client.stop());

test("the last session is read from the folder, whether its file is open or not", async () => {
  client = await LspClient.start({
    files: {
      "plan.drill": PLAN,
      "monday.drill": session("Monday", "2026-10-12", "monday.csv"),
      "thursday.drill": session("Thursday", "2026-10-15", "thursday.csv"),
      "monday.csv": "Carry\n140\n141\n142\n",
      "thursday.csv": "Carry\n150\n151\n152\n",
    },
  });
  await client.open("plan.drill", PLAN);
  const verdicts = await client.diagnosticsOf("plan.drill", (diagnostics) =>
    diagnostics.some(({ source }) => source === "drillwright score"),
  );
  const goal = verdicts.find(({ range }) => range.start.line === 4);
  expect([goal?.code, goal?.message]).toEqual([
    "met",
    expect.stringContaining('the last session ("Monday" of 2026-10-12)'),
  ]);
});

test("the sessions of a plan are told as they are when a file that has changed is read", async () => {
  const monday = session("Monday", "2026-10-12", "monday.csv");
  client = await LspClient.start({
    files: { "plan.drill": PLAN, "monday.drill": monday, "monday.csv": "Carry\n140\n141\n142\n" },
  });
  await client.open("plan.drill", PLAN);
  await client.diagnosticsOf("plan.drill", (all) => all.length > 0);
  await client.write("monday.drill", monday.replace("-12", "-29"));
  const ask = () =>
    client.request<readonly PlanSessions[]>(sessions.method, { file: client.uri("monday.drill") });
  const dates = (await Promise.all(Array.from({ length: 20 }, ask))).map(
    (plans) => plans[0]?.sessions[0]?.date,
  );
  expect(new Set(dates)).toEqual(new Set(["2026-10-29"]));
});
