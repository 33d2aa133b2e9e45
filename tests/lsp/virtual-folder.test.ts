/** A folder that is on no disk: the server reads it through the editor, plans and tables alike. */
import { afterEach, expect, test } from "vitest";
import { libraryFiles } from "../../language/library/library.ts";
import { type FileParams, fileKind, readFile, readFolder } from "../../shared/protocol/files.ts";
import { type Project, project } from "../../shared/protocol/project.ts";
import { type SessionScore, sessionScore } from "../../shared/protocol/session-score.ts";
import { LspClient } from "../support/lsp-client.ts";

const ROOT = "vscode-vfs://memory/centre";
const FILES: Readonly<Record<string, string>> = {
  [`${ROOT}/plans/gate.drill`]:
    'plan "Gate" {\n  for 7-iron\n  block "One" test {\n    2 shots\n    success average carry at least 150 yd\n  }\n}\n',
  [`${ROOT}/sessions/first.drill`]: `use "../plans/gate"
player "P-01" { right-handed }
source "Table" { column "Carry" is carry in yd }
session "First" { plan "Gate" player "P-01" data "../data/größe 1.csv" from "Table" }
`,
  // As URIs are written, so that what a session names in letters is found.
  [`${ROOT}/data/gr%C3%B6%C3%9Fe%201.csv`]: "Carry\n152\n153\n",
};

let client: LspClient;
afterEach(() => client.stop());

/** What stands directly below a folder. */
function entries(folder: string): { name: string; kind: "file" | "folder" }[] {
  const below = Object.keys(FILES)
    .filter((uri) => uri.startsWith(`${folder}/`))
    .map((uri) => uri.slice(folder.length + 1).split("/"));
  const kinds = new Map(
    below.map(([name = "", ...rest]) => [name, rest.length > 0 ? "folder" : "file"] as const),
  );
  return [...kinds].map(([name, kind]) => ({ name: decodeURIComponent(name), kind }));
}

async function openFolder(): Promise<void> {
  client = await LspClient.start({ files: {} });
  client.connection.onRequest(fileKind.method, ({ file }: FileParams) =>
    file in FILES ? "file" : entries(file).length > 0 ? "folder" : null,
  );
  client.connection.onRequest(readFolder.method, ({ file }: FileParams) => entries(file));
  client.connection.onRequest(readFile.method, ({ file }: FileParams) => {
    const text = FILES[file];
    return text === undefined ? null : Buffer.from(text).toString("base64");
  });
  await client.connection.sendNotification("workspace/didChangeWorkspaceFolders", {
    event: { added: [{ uri: ROOT, name: "centre" }], removed: [] },
  });
}

async function projectWith(plans: number): Promise<Project> {
  for (;;) {
    const found = await client.request<Project>(project.method, null);
    if (found.plans.length === plans) return found;
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}

test("plans and sessions are found, and scored from a table that is named in letters of any kind", async () => {
  await openFolder();
  const { sessions } = await projectWith(1);
  expect(sessions.map(({ name, file }) => [name, file])).toEqual([["First", `${ROOT}/sessions/first.drill`]]);
  const session = { file: `${ROOT}/sessions/first.drill`, name: "First" };
  const score = await client.request<SessionScore | null>(sessionScore.method, { session });
  expect(score).toMatchObject({ verdict: "met", summary: "1 goal met", problem: null });
  expect(score?.blocks[0]?.goals[0]?.rows[0]?.location.file).toBe(`${ROOT}/data/gr%C3%B6%C3%9Fe%201.csv`);
});

test("a table that only the editor could read, and cannot, is missing in words", async () => {
  await openFolder();
  await projectWith(1);
  client.connection.onRequest(fileKind.method, () => null);
  const session = { file: `${ROOT}/sessions/first.drill`, name: "First" };
  const score = await client.request<SessionScore | null>(sessionScore.method, { session });
  expect(score).toMatchObject({ verdict: null, problem: expect.stringMatching(/^There is no file /) });
});

test.each([
  { uri: "drillwright-library:/clubs.drill", is: "built in" },
  { uri: "somewhere:/clubs.drill", is: "of a kind whose files the editor does not know" },
])("a text that is $is can be closed", async ({ uri }) => {
  client = await LspClient.start({ files: {} });
  client.connection.onRequest(fileKind.method, () => {
    throw new Error("No file system provider found");
  });
  const text = libraryFiles().find((file) => file.uri.path === "/clubs.drill")?.text ?? "";
  const textDocument = { uri, languageId: "drillwright", version: 1, text };
  await client.connection.sendNotification("textDocument/didOpen", { textDocument });
  await projectWith(0);
  await client.connection.sendNotification("textDocument/didClose", { textDocument: { uri } });
  await client.write("gate.drill", FILES[`${ROOT}/plans/gate.drill`] ?? "");
  await projectWith(1);
  expect(await client.diagnosticsOf("gate.drill")).toEqual([]); // its club is still known
});
