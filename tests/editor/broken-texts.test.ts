/** While a text is typed it is broken most of the time. Nothing that an editor asks may fail then. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { openEditor, type TestEditor } from "../support/editor.ts";
import { SAMPLE } from "../support/sample.ts";

const PATHS = Object.keys(SAMPLE).filter((path) => path.endsWith(".drill"));

/** Pieces that upset a reader of plans. */
const DEBRIS = ['"', "{", "}", "/*", "//", "°", "±", "at", "within 2", "-", "\\", "\n", "\u{1F3CC}", "'"];

/** A file of the sample, cut short or with something thrown in, and a place in it. */
const broken = fc
  .record({
    path: fc.constantFrom(...PATHS),
    from: fc.nat(1500),
    removed: fc.nat(400),
    debris: fc.array(fc.constantFrom(...DEBRIS), { maxLength: 3 }),
    isCut: fc.boolean(),
    offset: fc.nat(1500),
  })
  .map(({ path, from, removed, debris, isCut, offset }) => {
    const text = SAMPLE[path] as string;
    const at = from % (text.length + 1);
    const rest = isCut ? "" : text.slice(at + removed);
    const result = text.slice(0, at) + debris.join("") + rest;
    return { path, text: result, offset: isCut ? result.length : offset % (result.length + 1) };
  });

/** What checks make of broken texts is shown by their own tests. */
async function opened(path: string, text: string, offset: number): Promise<TestEditor> {
  return (await openEditor({ ...SAMPLE, [path]: text }, { validation: false })).at(path, offset);
}

async function askEverything(editor: TestEditor): Promise<void> {
  await editor.hover();
  await editor.completion();
  await editor.definitions();
  await editor.references();
  await editor.highlights();
  await editor.symbols();
  await editor.foldings();
  await editor.codeActions();
  const { document, params, services } = editor;
  await services.lsp.SemanticTokenProvider?.semanticHighlight(document, params);
  await services.lsp.DocumentLinkProvider?.getDocumentLinks(document, params);
  await editor.rename("mine").catch(expectReason);
}

/** A rename may be refused, in words. */
function expectReason(error: unknown): void {
  expect((error as { code?: number }).code).toBeTypeOf("number");
}

test("no question fails on a broken text, wherever it is asked", async () => {
  await fc.assert(
    fc.asyncProperty(broken, async ({ path, text, offset }) => {
      await askEverything(await opened(path, text, offset));
    }),
    { numRuns: 300 },
  );
});

test("completion edits only the line of the cursor, and spans the cursor", async () => {
  await fc.assert(
    fc.asyncProperty(broken, async ({ path, text, offset }) => {
      const editor = await opened(path, text, offset);
      const { position } = editor.params;
      for (const { textEdit } of (await editor.completion()).items) {
        if (textEdit === undefined) throw new Error("An offer without an edit.");
        const ranges = "range" in textEdit ? [textEdit.range] : [textEdit.insert, textEdit.replace];
        for (const { start, end } of ranges) {
          expect([start.line, end.line]).toEqual([position.line, position.line]);
          expect(start.character).toBeLessThanOrEqual(position.character);
          expect(end.character).toBeGreaterThanOrEqual(position.character);
        }
      }
    }),
    { numRuns: 200 },
  );
});
