/** Questions that are asked before the server can know the file, against the bundled server. */
import { afterEach, expect, test } from "vitest";
import type { CompletionList } from "vscode-languageserver";
import { LspClient } from "../support/lsp-client.ts";
import { SAMPLE } from "../support/sample.ts";

let client: LspClient;
afterEach(() => client.stop());

function offersAt(path: string, line: number, character: number): Promise<CompletionList> {
  const textDocument = { uri: client.uri(path) };
  return client.request("textDocument/completion", { textDocument, position: { line, character } });
}

test("a file that nobody has saved is answered for as soon as it is opened, while the folder is read", async () => {
  client = await LspClient.start({ files: SAMPLE });
  for (const path of ["new.drill", "newer.drill", "newest.drill"]) {
    await client.open(path, 'plan "New" {\n  needs carry,\n    club-\n}\n');
    const { items } = await offersAt(path, 2, 9);
    expect(items.map(({ label }) => label).sort()).toEqual(["club-path", "club-speed"]);
    await client.close(path);
  }
});

test("a file that nobody has opened is refused, which is no answer", async () => {
  client = await LspClient.start({ files: SAMPLE });
  await expect(offersAt("nowhere.drill", 0, 0)).rejects.toMatchObject({ code: -32802 });
});
