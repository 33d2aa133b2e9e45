/** Which words are coloured by what they mean. */
import { describe, expect, test } from "vitest";
import { openEditor, type TestEditor } from "../support/editor.ts";
import { SAMPLE } from "../support/sample.ts";

const RANGE = { start: { line: 0, character: 0 }, end: { line: 2, character: 0 } };

/** The coloured words, each with its colour: `club-path variable defaultLibrary`. */
async function coloured(editor: TestEditor, range?: typeof RANGE): Promise<string[]> {
  const provider = editor.services.lsp.SemanticTokenProvider;
  if (provider === undefined) throw new Error("No provider of colours.");
  const params = { textDocument: editor.params.textDocument };
  const { data } =
    range === undefined
      ? await provider.semanticHighlight(editor.document, params)
      : await provider.semanticHighlightRange(editor.document, { ...params, range });
  const { tokenTypes, tokenModifiers } = provider.semanticTokensOptions.legend;
  const words: string[] = [];
  let [line, character] = [0, 0];
  for (let i = 0; i < data.length; i += 5) {
    const [lines = 0, characters = 0, length = 0, type = 0, modifiers = 0] = data.slice(i, i + 5);
    character = lines === 0 ? character + characters : characters;
    line += lines;
    const start = { line, character };
    const text = editor.document.textDocument.getText({
      start,
      end: { line, character: character + length },
    });
    const named = tokenModifiers.filter((_, index) => modifiers & (1 << index));
    words.push([text, tokenTypes[type], ...named].join(" "));
  }
  return words;
}

describe("colours", () => {
  test("of a plan", async () => {
    const words = await coloured((await openEditor(SAMPLE)).at("plans/gate.drill", 0));
    expect(words.slice(0, 7)).toEqual([
      '"Seven-iron: \\"gate\\"" function declaration',
      "7-iron class defaultLibrary",
      "chipper class",
      "min type defaultLibrary",
      "club-path variable defaultLibrary",
      "carry variable defaultLibrary",
      "miss-share variable",
    ]);
    expect(words).toContain("in-to-out enumMember defaultLibrary");
    expect(words).toContain("° type defaultLibrary");
    expect(words).toContain('"Gate" function declaration');
  });

  test("of vocabulary, and of what a session refers to", async () => {
    const editor = await openEditor(SAMPLE);
    expect(await coloured(editor.at("library/words.drill", 0))).toEqual(
      expect.arrayContaining([
        "miss-share variable declaration",
        "fade enumMember declaration",
        "half type declaration",
        "chip type",
        "chipper class declaration",
      ]),
    );
    expect(await coloured(editor.at("sessions/first.drill", 0))).toEqual([
      '"First try" function declaration',
      '"Seven-iron: \\"gate\\"" function',
      '"P-07" function',
      '"Field" function',
      '"Gate" function',
    ]);
  });

  test("show by their absence that a name means nothing", async () => {
    const editor = await openEditor({ "a.drill": 'plan "P" {\n  needs carry, nothing\n}' });
    expect(await coloured(editor)).toEqual(['"P" function declaration', "carry variable defaultLibrary"]);
  });

  test("of a part of the file are those of the whole file there", async () => {
    const editor = await openEditor({ "a.drill": 'plan "P" {\n  needs carry\n  needs total\n}' });
    expect(await coloured(editor, RANGE)).toEqual([
      '"P" function declaration',
      "carry variable defaultLibrary",
    ]);
  });

  test("of two files that are asked for at once do not mix", async () => {
    const editor = await openEditor(SAMPLE);
    const paths = ["plans/gate.drill", "library/words.drill", "sessions/first.drill"];
    const alone: string[][] = [];
    for (const path of paths) alone.push(await coloured(editor.at(path, 0)));
    expect(await Promise.all(paths.map((path) => coloured(editor.at(path, 0))))).toEqual(alone);
  });
});
