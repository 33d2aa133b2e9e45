/** A document that was never saved, as editors open one beside a table for a proposal. */
import { afterEach, expect, test } from "vitest";
import type { DocumentLink, PublishDiagnosticsParams } from "vscode-languageserver";
import { LspClient } from "../support/lsp-client.ts";

let client: LspClient;
afterEach(() => client.stop());

const PLAN =
  'plan "Gate" {\n  for 7-iron\n  block "Carry" test {\n    2 shots\n    success average carry at least 150 yd\n  }\n}\n';
const SESSION = `use "../plan"

player "P-01" {
  right-handed
}

source "Table" {
  column "Carry" is carry in yd
}

session "First try" {
  plan "Gate"
  player "P-01"
  data "shots.csv" from "Table"
}
`;

test("uses files and reads tables from where it will be saved", async () => {
  client = await LspClient.start({ files: { "plan.drill": PLAN, "data/shots.csv": "Carry\n151\n153\n" } });
  const uri = client.uri("data/new.drill").replace(/^file:\/\//, "untitled:");
  await client.connection.sendNotification("textDocument/didOpen", {
    textDocument: { uri, languageId: "drillwright", version: 1, text: SESSION },
  });
  const published = () =>
    client.notifications
      .filter(({ method }) => method === "textDocument/publishDiagnostics")
      .map(({ params }) => params as PublishDiagnosticsParams)
      .findLast((params) => params.uri === uri)?.diagnostics;
  const codes = () => published()?.map(({ code }) => code);
  await client.until(
    () => codes()?.includes("met") === true,
    () => JSON.stringify(published(), null, 1),
  );
  expect(codes()).toEqual(["met"]);
  const links = await client.connection.sendRequest<DocumentLink[]>("textDocument/documentLink", {
    textDocument: { uri },
  });
  expect(links.map(({ target }) => target)).toEqual([client.uri("plan.drill"), client.uri("data/shots.csv")]);
});
