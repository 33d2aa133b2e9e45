/** Workspaces of several folders, which come and go. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterEach, expect, test } from "vitest";
import type { Diagnostic } from "vscode-languageserver";
import { type Project, project } from "../../shared/protocol/project.ts";
import { LspClient } from "../support/lsp-client.ts";

const PLAN = (name: string) => `plan "${name}" { for 7-iron }\n`;

let client: LspClient;
const others: string[] = [];
afterEach(async () => {
  await client.stop();
  for (const folder of others.splice(0)) rmSync(folder, { recursive: true, force: true });
});

/** A folder beside that of the client. */
function folder(files: Readonly<Record<string, string>>): string {
  const path = mkdtempSync(join(tmpdir(), "drillwright-other-"));
  others.push(path);
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(join(path, name, ".."), { recursive: true });
    writeFileSync(join(path, name), text);
  }
  return pathToFileURL(path).toString();
}

const change = (added: readonly string[], removed: readonly string[]) =>
  client.connection.sendNotification("workspace/didChangeWorkspaceFolders", {
    event: {
      added: added.map((uri) => ({ uri, name: "folder" })),
      removed: removed.map((uri) => ({ uri, name: "folder" })),
    },
  });

const plans = async () => (await client.request<Project>(project.method, null)).plans.map(({ name }) => name);

async function until(wanted: readonly string[]): Promise<void> {
  for (let found = await plans(); found.join() !== wanted.join(); found = await plans())
    await new Promise((resolve) => setTimeout(resolve, 20));
}

test("the editor is asked to tell about folders", async () => {
  client = await LspClient.start({ files: {} });
  expect(client.capabilities.workspace?.workspaceFolders).toEqual({
    supported: true,
    changeNotifications: true,
  });
});

test("a folder that is added is read, and one that is taken out is forgotten", async () => {
  client = await LspClient.start({ files: { "plans/gate.drill": PLAN("Gate") } });
  const other = folder({ "plans/wedge.drill": PLAN("Wedge") });
  expect(await plans()).toEqual(["Gate"]);
  await change([other], []);
  await until(["Gate", "Wedge"]);
  await change([], [other]);
  await until(["Gate"]);
});

test("a file that is open stays known when its folder is taken out", async () => {
  client = await LspClient.start({ files: { "plans/gate.drill": PLAN("Gate") } });
  await client.open("plans/gate.drill", PLAN("Gate"));
  await change([], [client.uri("")]);
  await client.change("plans/gate.drill", PLAN("Gate").replace("for", "fro"));
  await client.diagnosticsOf("plans/gate.drill", (all) => all.some(({ severity }) => severity === 1));
});

test("equal names in two folders are kept apart", async () => {
  const plan = 'use "./library"\nplan "Gate" { for chipper }\n';
  client = await LspClient.start({ files: { "library.drill": "club chipper\n", "plan.drill": plan } });
  const other = folder({ "library.drill": "club jigger\n", "plan.drill": plan });
  await change([other], []);
  await until(["Gate", "Gate"]);
  const errors = (all: readonly Diagnostic[]) => all.filter(({ severity }) => severity === 1);
  const beside = `../${basename(other)}/plan.drill`;
  await client.open(beside, plan);
  await client.open("plan.drill", plan);
  const [unknown, ...more] = errors(await client.diagnosticsOf(beside, (all) => errors(all).length > 0));
  expect(String(unknown?.message)).toContain("chipper");
  expect(more).toEqual([]);
  expect(errors(await client.diagnosticsOf("plan.drill"))).toEqual([]);
});

test("each folder has its own settings", async () => {
  const files = {
    "plan.drill": `plan "Gate" {
  for 7-iron
  block "Start line" test {
    2 shots
    success average carry at least 150 yd
  }
}
`,
    "session.drill": `use "./plan"
player "P-01" { right-handed }
source "Table" { column "Carry" is carry in yd }
session "First try" { plan "Gate" player "P-01" data "shots.csv" from "Table" }
`,
    "shots.csv": "Carry\n140\n145\n",
  };
  client = await LspClient.start({ files, settings: {} });
  const other = folder(files);
  const settings = (scopeUri?: string) =>
    scopeUri === other ? { verdicts: { levels: { missed: "error" } } } : { verdicts: { show: false } };
  client.connection.onRequest("workspace/configuration", ({ items }: { items: { scopeUri?: string }[] }) =>
    items.map(({ scopeUri }) => settings(scopeUri)),
  );
  await change([other], []);
  const beside = `../${basename(other)}/plan.drill`;
  await client.open(beside, files["plan.drill"]);
  await client.open("plan.drill", files["plan.drill"]);
  const loud = (all: readonly Diagnostic[]) =>
    all.filter(({ code, severity }) => code === "missed" && severity === 1);
  expect(loud(await client.diagnosticsOf(beside, (all) => loud(all).length > 0))).toHaveLength(2);
  expect(await client.diagnosticsOf("plan.drill", (all) => all.length === 0)).toEqual([]);
});
