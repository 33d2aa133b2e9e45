/** A tree is made from one version of a text, which goes on without it. */
import { Cancellation, EmptyFileSystem, TextDocument, URI } from "langium";
import { expect, test } from "vitest";
import { createEditorServices } from "../../language/editor/editor-module.ts";
import { serverModule, sharedServerModule } from "../../server/lsp/server-module.ts";
import { newServerState } from "../../server/lsp/start-server.ts";

test("a text that goes on leaves the version of its tree until it is parsed again", async () => {
  const state = newServerState();
  const { shared } = createEditorServices(EmptyFileSystem, {
    module: serverModule(state),
    sharedModule: sharedServerModule(state),
  });
  const { LangiumDocumentFactory, TextDocuments } = shared.workspace;
  const uri = "memory:/plan.drill";
  const text = TextDocument.create(uri, "drillwright", 7, "");
  TextDocuments.set(text);
  const document = LangiumDocumentFactory.fromString("", URI.parse(uri));
  expect(state.versions.of(uri)).toBeUndefined();
  const updated = LangiumDocumentFactory.update(document, Cancellation.CancellationToken.None);
  TextDocument.update(text, [{ text: 'plan "Gate" {}' }], 8);
  await updated;
  expect(document.parseResult.value.$cstNode?.text).toBe("");
  expect(state.versions.of(uri)).toBe(7);
  const before = state.versions.all();
  await LangiumDocumentFactory.update(document, Cancellation.CancellationToken.None);
  expect(state.versions.of(uri)).toBe(8);
  expect(before.get(uri)).toBe(7);
});
