/** From a word to what it means, and from there to all that speak of it. */
import { URI } from "langium";
import { describe, expect, test } from "vitest";
import { LIBRARY_FILES } from "../../language/generated/library.ts";
import { openEditor, type TestEditor } from "../support/editor.ts";
import { SAMPLE } from "../support/sample.ts";

/** The sample with the cursor behind a piece of text. */
async function behind(path: string, piece: string): Promise<TestEditor> {
  const text = SAMPLE[path] as string;
  const offset = text.indexOf(piece) + piece.length;
  expect(text).toContain(piece);
  return (await openEditor(SAMPLE)).at(path, offset);
}

describe("definition", () => {
  test.each([
    [
      "a metric of the library",
      "plans/gate.drill",
      "needs club-pa",
      "drillwright-library:/metrics.drill: club-path",
    ],
    ["a unit", "plans/gate.drill", "club-path within 2°", "drillwright-library:/dimensions.drill: °"],
    ["a direction word", "plans/gate.drill", "of 1° in-to", "drillwright-library:/metrics.drill: in-to-out"],
    [
      "a direction word of a column",
      "library/range.drill",
      "positive out",
      "drillwright-library:/metrics.drill: out-to-in",
    ],
    ["a club of one's own", "plans/gate.drill", "7-iron, chip", "library/words.drill: chipper"],
    ["a metric of a used file", "plans/gate.drill", "carry, miss", "library/words.drill: miss-share"],
    ["a plan", "sessions/first.drill", '  plan "Seven', 'plans/gate.drill: "Seven-iron: \\"gate\\""'],
    [
      "a plan, in front of its quotation mark",
      "sessions/first.drill",
      "  plan ",
      'plans/gate.drill: "Seven-iron: \\"gate\\""',
    ],
    ["a player", "sessions/first.drill", '  player "P', 'library/range.drill: "P-07"'],
    ["a source", "sessions/first.drill", ' from "Fi', 'library/range.drill: "Field"'],
    ["a block of a session's plan", "sessions/first.drill", '  block "Ga', 'plans/gate.drill: "Gate"'],
    ["a base unit", "library/words.drill", "0.5 ch", "library/words.drill: chip"],
    [
      "a metric in a formula",
      "library/words.drill",
      "formula off",
      "drillwright-library:/metrics.drill: offline",
    ],
  ])("of %s", async (_what, path, piece, place) => {
    expect(await (await behind(path, piece)).definition()).toBe(place);
  });

  test("of a `use` path is its file", async () => {
    const [link] = await (await behind("plans/gate.drill", 'use "../lib')).definitions();
    expect(link?.targetUri).toBe("file:///coach/library/words.drill");
  });

  test("of a word that means nothing is nowhere", async () => {
    const editor = await openEditor({ "a.drill": 'use "./no<|>where"\n' });
    expect(await editor.definitions()).toEqual([]);
    const unknown = await openEditor({ "a.drill": 'plan "P" {\n  needs noth<|>ing\n}' });
    expect(await unknown.definitions()).toEqual([]);
  });
});

describe("references", () => {
  test("to a plan are found in the sessions", async () => {
    expect(await (await behind("plans/gate.drill", 'plan "Sev')).references()).toEqual([
      'plans/gate.drill: "Seven-iron: \\"gate\\""',
      'sessions/first.drill: "Seven-iron: \\"gate\\""',
    ]);
  });

  test("to a metric of the library are found in all files", async () => {
    const found = await (await behind("plans/gate.drill", "needs club-pa")).references();
    expect(found.filter((place) => place.startsWith("plans/gate.drill"))).toHaveLength(2);
    expect(found).toContain("library/range.drill: club-path");
    expect(found).toContain("drillwright-library:/metrics.drill: club-path");
  });

  test("to a direction word are those said of its metric only", async () => {
    const found = await (await behind("plans/gate.drill", "at least 5° le")).references();
    expect(found).toEqual([
      "drillwright-library:/metrics.drill: left",
      "drillwright-library:/metrics.drill: left",
      "plans/gate.drill: left",
    ]);
  });

  test("in the same file are marked while the cursor is on one", async () => {
    const editor = await behind("plans/gate.drill", "needs club-pa");
    const marked = await editor.highlights();
    expect(marked.map(({ range }) => editor.document.textDocument.getText(range))).toEqual([
      "club-path",
      "club-path",
    ]);
  });
});

test("used files and recorded tables are links", async () => {
  const editor = await openEditor(SAMPLE);
  const { document } = editor.at("sessions/first.drill", 0);
  const links = await editor.services.lsp.DocumentLinkProvider?.getDocumentLinks(document, editor.params);
  expect(links?.map(({ range, target }) => [document.textDocument.getText(range), target])).toEqual([
    ["../library/range", "file:///coach/library/range.drill"],
    ["../plans/gate", "file:///coach/plans/gate.drill"],
    ["../data/first.csv", "file:///coach/data/first.csv"],
  ]);
});

test("a `use` of a file that is not there is no link", async () => {
  const editor = await openEditor({ "a.drill": 'use "./nowhere"\nsession "S" {\n  data "" from "X"\n}' });
  const links = await editor.services.lsp.DocumentLinkProvider?.getDocumentLinks(
    editor.document,
    editor.params,
  );
  expect(links).toEqual([]);
});

test("files of the library can be read by their address", async () => {
  const { services } = await openEditor(SAMPLE);
  const provider = services.shared.lsp.TextDocumentContentProvider;
  expect(provider?.schemes).toEqual(["drillwright-library"]);
  const ask = (uri: string) =>
    provider?.provideTextDocumentContent(
      { uri },
      { isCancellationRequested: false, onCancellationRequested: () => ({ dispose() {} }) },
    );
  for (const [name, text] of Object.entries(LIBRARY_FILES)) {
    const uri = URI.from({ scheme: "drillwright-library", path: `/${name}` }).toString();
    expect(await ask(uri)).toEqual({ text });
  }
  expect(await ask("drillwright-library:/nothing.drill")).toBeUndefined();
});
