/** A file of many sessions over one table, as a season's export is proposed. */
import { afterEach, expect, test } from "vitest";
import type { CodeLens } from "vscode-languageserver";
import { type SessionScore, sessionScore } from "../../shared/protocol/session-score.ts";
import { LspClient } from "../support/lsp-client.ts";

const PLAN = `plan "Gate" {
  block "Start line" test {
    2 shots
    success average carry at least 150 yd
  }
}
`;
const DAYS = Array.from({ length: 60 }, (_, day) =>
  new Date(Date.UTC(2026, 0, 1 + day)).toISOString().slice(0, 10),
);
const SESSIONS = `use "./plan"
player "P-01" { right-handed }
source "Table" {
  column "Day" is date
  column "Carry" is carry in yd
}
${DAYS.map((day) => `session "${day}" { plan "Gate" player "P-01" date ${day} data "season.csv" from "Table" }\n`).join("")}`;
const TABLE = `Day,Carry\n${DAYS.map((day, place) => `${day},${100 + place}\n${day},${102 + place}\n`).join("")}`;

let client: LspClient;
afterEach(() => client.stop());

test("the latest are scored by themselves, the others when somebody asks for one", async () => {
  client = await LspClient.start({
    files: { "plan.drill": PLAN, "season.drill": SESSIONS, "season.csv": TABLE },
  });
  await client.open("season.drill", SESSIONS);
  const textDocument = { uri: client.uri("season.drill") };
  await client.until(
    () => client.notifications.some(({ method }) => method === "drillwright/scoresChanged"),
    () => "no score",
  );
  const lenses = (await client.request<CodeLens[] | null>("textDocument/codeLens", { textDocument })) ?? [];
  const told = lenses
    .toSorted((one, other) => one.range.start.line - other.range.start.line)
    .map(({ command }) => command?.title);
  expect(told).toEqual(
    DAYS.map((_, place) =>
      place < 10
        ? "not scored: of the sessions of this file, the latest 50 are"
        : place < 49
          ? "1 goal missed"
          : "1 goal met",
    ),
  );
  const asked = await client.request<SessionScore | null>(sessionScore.method, {
    session: { file: textDocument.uri, name: DAYS[3] },
  });
  expect(asked).toMatchObject({ verdict: "missed" });
});
