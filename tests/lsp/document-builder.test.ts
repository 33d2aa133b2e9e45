/** Whoever waits until the files have reached a state is told, whatever becomes of the build. */
import { DocumentState, EmptyFileSystem, URI } from "langium";
import { expect, test } from "vitest";
import { createCoreServices } from "../../language/core-module.ts";
import { EditorDocumentBuilder } from "../../server/lsp/document-builder.ts";
import { UnreadFiles } from "../../server/lsp/unread-files.ts";

function start() {
  const { shared } = createCoreServices(EmptyFileSystem);
  const { LangiumDocumentFactory, LangiumDocuments } = shared.workspace;
  Object.assign(LangiumDocumentFactory, { readAhead: () => {} });
  const document = LangiumDocumentFactory.fromString("club chipper\n", URI.parse("memory:/words.drill"));
  LangiumDocuments.addDocument(document);
  return { builder: new EditorDocumentBuilder(shared, new UnreadFiles()), document };
}

/** Whether it has come by the time that everything has had its turn. */
function hasCome(promise: Promise<unknown>): Promise<boolean> {
  const late = new Promise<boolean>((resolve) => setTimeout(() => resolve(false), 50));
  return Promise.race([promise.then(() => true), late]);
}

test("when a build has nothing to do", async () => {
  const { builder, document } = start();
  await builder.build([document], { validation: true });
  const waited: Promise<void>[] = [];
  builder.onUpdate(() => {
    waited.push(builder.waitUntil(DocumentState.Linked));
  });
  await builder.update([], [URI.parse("memory:/nobody-knows-this.drill")]);
  expect(await Promise.all(waited.map(hasCome))).toEqual([true]);
});

test("when it waits again in the moment in which the state is reached", async () => {
  const { builder, document } = start();
  const waited: Promise<void>[] = [];
  builder.onBuildPhase(DocumentState.Linked, () => {
    waited.push(builder.waitUntil(DocumentState.Linked));
  });
  await builder.build([document], { validation: true });
  expect(await Promise.all(waited.map(hasCome))).toEqual([true]);
});

test("when the build is cut short, by the next one", async () => {
  const { builder, document } = start();
  const cut = builder.onBuildPhase(DocumentState.Parsed, () => {
    throw new Error("cut short");
  });
  const building = builder.build([document], { validation: true });
  const waited = builder.waitUntil(DocumentState.Linked);
  await expect(building).rejects.toThrow("cut short");
  expect(await hasCome(waited)).toBe(false);
  cut.dispose();
  await builder.build([document], { validation: true });
  expect(await hasCome(waited)).toBe(true);
});

test("that a file is gone, when it waits for that file", async () => {
  const { builder, document } = start();
  const waited = builder.waitUntil(DocumentState.Linked, document.uri);
  const answer = waited.then(
    () => "found",
    () => "gone",
  );
  await builder.update([], [document.uri]);
  expect(await hasCome(answer)).toBe(true);
  expect(await answer).toBe("gone");
});
