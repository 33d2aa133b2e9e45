/** Laying out in the editor: a file, a part of it, and what was just typed. */
import { describe, expect, test } from "vitest";
import { edited } from "../checks/checked-files.ts";
import { openEditor } from "../support/editor.ts";

const OPTIONS = { tabSize: 8, insertSpaces: false };

async function laidOut(
  marked: string,
  how: "file" | "}" | "\n" | readonly [from: number, to: number],
): Promise<string> {
  const editor = await openEditor({ "a.drill": marked });
  const { document } = editor;
  const formatter = editor.services.lsp.Formatter;
  const textDocument = { uri: document.uri.toString() };
  const position = document.textDocument.positionAt(Math.max(0, marked.indexOf("<|>")));
  const edits =
    how === "file"
      ? formatter?.formatDocument(document, { textDocument, options: OPTIONS })
      : typeof how === "string"
        ? formatter?.formatDocumentOnType(document, { textDocument, position, ch: how, options: OPTIONS })
        : formatter?.formatDocumentRange(document, {
            textDocument,
            options: OPTIONS,
            range: {
              start: { line: how[0], character: 0 },
              end: { line: how[1], character: 100 },
            },
          });
  return edited(document.textDocument.getText(), (await edits) ?? []);
}

test("a file has one layout, whatever the editor's indentation", async () => {
  expect(await laidOut('plan "A" {\n\ttime   5 min\n}', "file")).toBe('plan "A" {\n  time 5 min\n}\n');
});

test("a part is laid out alone", async () => {
  expect(await laidOut('plan "A" {\n time   5 min\n intent   "x"\n needs   carry\n}', [2, 2])).toBe(
    'plan "A" {\n time   5 min\n  intent "x"\n  needs   carry\n}',
  );
});

describe("while typing", () => {
  test("a closing brace lays out what it closes", async () => {
    const text = 'plan "A" {\n time   5 min\n   block "B" {\n 3   shots\n      }<|>\n}';
    expect(await laidOut(text, "}")).toBe('plan "A" {\n time   5 min\n\n  block "B" {\n    3 shots\n  }\n}');
  });

  test("a line end lays out the line before it, and leaves the new one to the editor", async () => {
    const text = 'plan "A" {\n   time   5 min\n      <|>\n intent   "x"\n}';
    expect(await laidOut(text, "\n")).toBe('plan "A" {\n  time 5 min\n      \n intent   "x"\n}');
  });
});
