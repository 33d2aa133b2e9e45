/** A session is scored once for everybody who asks, until something that its score hangs on changes. */
import { EmptyFileSystemProvider, type FileSystemProvider, URI } from "langium";
import { expect, test } from "vitest";
import { createCoreServices } from "../../language/core-module.ts";
import { Lowering } from "../../language/lowering/document.ts";
import type { File } from "../../server/lsp/declared.ts";
import { type ScoredSession, Scorer } from "../../server/lsp/scorer.ts";

const TEXT = `plan "Gate" {
  for 7-iron
  block "Warm" warm-up { 2 shots at 50 % effort }
  block "Carry" test { 2 shots success average carry at least 150 yd }
}
player "P-01" { right-handed }
source "Table" {
  column "Block" is block
  column "Carry" is carry in yd
}
session "First" { plan "Gate" player "P-01" date 2026-10-12 data "a.csv" from "Table" }
`;
const FILE = URI.parse("memory:/all.drill");
const TABLE = "memory:/a.csv";

/** Counts how often tables are read, as it gives them. */
function tables(contents: Map<string, string>) {
  let reads = 0;
  const fileSystem: FileSystemProvider = Object.assign(new EmptyFileSystemProvider(), {
    exists: async (uri: URI) => contents.has(uri.toString()),
    readBinary: async (uri: URI) => {
      reads++;
      return new TextEncoder().encode(contents.get(uri.toString()));
    },
  });
  return { fileSystem, reads: () => reads };
}

async function start() {
  const contents = new Map([[TABLE, "Block,Carry\nCarry,155\nCarry,152\n"]]);
  const { fileSystem, reads } = tables(contents);
  const { shared, drillwright } = createCoreServices({ fileSystemProvider: () => fileSystem });
  const scorer = new Scorer(drillwright, new Lowering(drillwright, String), {
    sha256: String,
    version: "0.0.0",
  });
  const { LangiumDocuments, LangiumDocumentFactory, DocumentBuilder } = shared.workspace;
  const document = LangiumDocumentFactory.fromString(TEXT, FILE) as File;
  await shared.workspace.WorkspaceManager.initializeWorkspace([]);
  LangiumDocuments.addDocument(document);
  await DocumentBuilder.build([document], { validation: true });
  const score = async (): Promise<ScoredSession> => {
    const [session] = drillwright.names.Names.sessions();
    const scored = session && (await scorer.score(session));
    if (typeof scored !== "object") throw new Error(scored);
    return scored;
  };
  return { scorer, score, contents, reads, DocumentBuilder };
}

test("what came out is the same for all who ask", async () => {
  const { score } = await start();
  expect((await score()).report.verdict).toBe("met");
  expect(await score()).toBe(await score());
});

test("a table that changed is read and scored anew", async () => {
  const { scorer, score, contents, reads } = await start();
  const before = await score();
  contents.set(TABLE, "Block,Carry\nCarry,141\nCarry,139\n");
  expect(await score()).toBe(before);
  expect(await scorer.dataFiles.changed("memory:/other.csv")).toBe(false);
  expect(await score()).toBe(before);
  expect(await scorer.dataFiles.changed(TABLE)).toBe(true);
  expect((await score()).report.verdict).toBe("missed");
  expect(reads()).toBe(2);
  const again = await score();
  scorer.dataFiles.forgetAll();
  expect(await score()).not.toBe(again);
});

test("whatever text changes, sessions are scored anew", async () => {
  const { score, DocumentBuilder } = await start();
  const before = await score();
  await DocumentBuilder.update([], [URI.parse("memory:/gone.drill")]);
  expect(await score()).not.toBe(before);
});

test("an answer that a change overtook is kept for nobody", async () => {
  const { scorer, score, contents } = await start();
  const overtaken = score();
  contents.set(TABLE, "Block,Carry\nCarry,141\nCarry,139\n");
  scorer.dataFiles.forgetAll();
  await overtaken;
  expect((await score()).report.verdict).toBe("missed");
});
