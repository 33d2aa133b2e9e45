/** A table that takes a while: people are told how far it is, and can stop it. */
import { afterEach, expect, test } from "vitest";
import type { Hover } from "vscode-languageserver";
import type { MessageConnection } from "vscode-languageserver/node";
import type { PlanScore } from "../../shared/protocol/plan-score.ts";
import { type ScoresChangedParams, scoresChanged } from "../../shared/protocol/scores-changed.ts";
import { LspClient } from "../support/lsp-client.ts";

const PLAN = `plan "Gate" {
  for 7-iron
  block "Start line" test {
    at least 4 shots
    success average carry at least 150 yd
  }
}
`;
const SESSION = `use "./plan"
player "P-01" { right-handed }
source "Table" { column "Carry" is carry in yd }
session "First try" { plan "Gate" player "P-01" data "shots.csv" from "Table" }
`;
const ROWS = 1_500_000;

let client: LspClient;
afterEach(() => client.stop());

function lastScore(): PlanScore | undefined {
  const told = client.notifications.filter(({ method }) => method === scoresChanged.method).at(-1);
  return (told?.params as ScoresChangedParams | undefined)?.plans[0];
}

interface Progress {
  readonly token: string;
  readonly value: { readonly kind: string; readonly percentage?: number; readonly cancellable?: boolean };
}

const progress: Progress[] = [];

test("is told with how far it is, leaves the server answering, and is stopped when somebody says so", async () => {
  client = await LspClient.start({
    files: { "plan.drill": PLAN, "session.drill": SESSION, "shots.csv": `Carry\n${"152\n".repeat(ROWS)}` },
    window: { workDoneProgress: true },
  });
  // Progress goes to whoever asked for it; this one began by itself.
  const connection = client.connection as unknown as Pick<MessageConnection, "onUnhandledProgress">;
  connection.onUnhandledProgress((each) => progress.push(each as Progress));
  await client.open("plan.drill", PLAN);
  await client.until(
    () => progress.some(({ value: { percentage = 0 } }) => percentage > 0),
    () => `progress: ${JSON.stringify(progress.at(-1))}`,
  );
  const textDocument = { uri: client.uri("plan.drill") };
  const hover = await client.request<Hover | null>("textDocument/hover", {
    textDocument,
    position: { line: 4, character: 22 },
  });
  expect(hover).not.toBeNull();
  const [begin] = progress;
  expect(begin?.value).toMatchObject({ kind: "begin", cancellable: true });
  await client.connection.sendNotification("window/workDoneProgress/cancel", { token: begin?.token });
  await client.until(
    () => lastScore() !== undefined,
    () => "no word of the score",
  );
  expect(lastScore()).toMatchObject({
    verdict: null,
    problem: "Reading the tables was stopped. Score the session to read them again.",
  });
  await client.until(
    () => progress.some(({ value }) => value.kind === "end"),
    () => "progress that does not end",
  );
});
