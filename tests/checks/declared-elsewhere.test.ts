/** A name that other files declare is offered with a `use` of each, as those files stand now. */
import { EmptyFileSystemProvider, type FileSystemProvider, type LangiumDocument, URI } from "langium";
import { beforeEach, expect, test } from "vitest";
import type { DiagnosticData } from "../../language/checks/document-validator.ts";
import { createCoreServices } from "../../language/core-module.ts";

const texts = new Map<string, string>();
const fileSystem: FileSystemProvider = Object.assign(new EmptyFileSystemProvider(), {
  stat: async (uri: URI) => ({ isFile: true, isDirectory: false, uri }),
  readFile: async (uri: URI) => texts.get(uri.toString()) ?? "",
});
const { shared } = createCoreServices({ fileSystemProvider: () => fileSystem });
await shared.workspace.WorkspaceManager.initializeWorkspace([]);
const { DocumentBuilder, LangiumDocuments } = shared.workspace;
DocumentBuilder.updateBuildOptions = { validation: true };

const uriOf = (name: string) => URI.parse(`file:///centre/${name}.drill`);

const PLAN = `plan "Gate" {
  block "Proof" from "Start line" {
  }
}
`;

const DRILL = `drill "Start line" test {
  10 shots
}
`;

beforeEach(async () => {
  const uris = [...texts.keys()].map((uri) => URI.parse(uri));
  texts.clear();
  await DocumentBuilder.update([], uris);
});

/** Puts a file in place, or another text into it. */
async function write(name: string, text: string): Promise<void> {
  texts.set(uriOf(name).toString(), text);
  await DocumentBuilder.update([uriOf(name)], []);
}

/** What the plan is offered for the drill that it does not know. */
async function offered(): Promise<string[]> {
  await DocumentBuilder.update([uriOf("plan")], []);
  const plan = LangiumDocuments.getDocument(uriOf("plan")) as LangiumDocument;
  return (plan.diagnostics ?? []).flatMap(({ data }) =>
    (data as DiagnosticData).fixes.map(({ title }) => title),
  );
}

test("every file that declares it, in the order of their names", async () => {
  await write("tests/wedges", DRILL);
  await write("tests/irons", `${DRILL}${DRILL}`);
  await write("plan", PLAN);
  expect(await offered()).toEqual(['Use "./tests/irons"', 'Use "./tests/wedges"']);
});

test("no longer where it is called otherwise, or its file is gone", async () => {
  await write("one", DRILL);
  await write("other", DRILL);
  await write("plan", PLAN);
  await write("one", DRILL.replace("Start line", "Carry"));
  expect(await offered()).toEqual(['Use "./other"']);
  await DocumentBuilder.update([], [uriOf("other")]);
  expect(await offered()).toEqual([]);
});

test("as soon as a file declares it", async () => {
  await write("plan", PLAN);
  expect(await offered()).toEqual([]);
  await write("one", DRILL);
  expect(await offered()).toEqual(['Use "./one"']);
});

test("not where something else has the name", async () => {
  await write("plan", PLAN);
  await write("one", `window "Start line" is club-path within ±2°\n`);
  expect(await offered()).toEqual([]);
});
