/** The colouring grammar, which editors use until the server answers and wherever there is none. */
import { expect, test } from "vitest";
import { DrillwrightTerminals } from "../../language/generated/tree/ast.ts";
import { grammarWords } from "../support/grammar-words.ts";

const { declarations, statements, choices, phrases, units, all } = grammarWords();

// Two engines read these expressions, the editor's and that of the tests: characters stand for themselves, since the
// two spell them differently, and nothing is captured that is not coloured.
const terminal = (name: keyof typeof DrillwrightTerminals) =>
  DrillwrightTerminals[name].source
    .replace(/\\u([0-9A-F]{4})/g, (_, code) => String.fromCodePoint(Number.parseInt(code, 16)))
    .replace(/(?<!\\)\((?!\?)/g, "(?:");
const [WORD, NUMBER, STRING, DATE] = [
  terminal("WORD"),
  terminal("NUMBER"),
  terminal("STRING"),
  terminal("DATE"),
];
const letters = /\[(a-z[^\]]+)\]/.exec(WORD)?.[1];

/** One of these words or phrases, and nothing that only begins like one. */
function oneOf(words: Iterable<string>): string {
  const longestFirst = [...words].sort((a, b) => b.length - a.length || (a < b ? -1 : 1));
  const spelled = longestFirst.map((word) => word.replaceAll(" ", "\\s+")).join("|");
  return `(?:${spelled})(?![${letters}0-9_]|[-/][${letters}0-9_])`;
}

/** Where a word may begin: not within a longer one. */
const border = `(?<![${letters}0-9_/-])`;
/** Where a declaration or a statement begins. */
const start = "(?:^|(?<=[{}]))\\s*";
const unit = `(?!${oneOf([...all, ...phrases].filter((word) => !units.includes(word)))})(?:${WORD}|%)`;
const direction = `(?!${oneOf(all)})(?:${WORD})`;

const named = (terminalName: string) =>
  oneOf([...declarations].filter(([, name]) => name === terminalName).map(([word]) => word));
const scope = (name: string) => ({ name: `${name}.drillwright` });
const rule = (name: string, match: string) => ({ ...scope(name), match });

const colouring = {
  information_for_contributors: "Written from the grammar by tests/generated/colouring.test.ts. Do not edit.",
  name: "Drillwright",
  scopeName: "source.drillwright",
  patterns: [
    "comments",
    "declarations",
    "statements",
    "strings",
    "dates",
    "phrases",
    "choices",
    "words",
    "names",
    "quantities",
    "signs",
  ].map((name) => ({ include: `#${name}` })),
  repository: {
    comments: {
      patterns: [
        { ...scope("comment.block.documentation"), begin: "/\\*\\*(?!/)", end: "\\*/" },
        { ...scope("comment.block"), begin: "/\\*", end: "\\*/" },
        rule("comment.line.double-slash", "//.*$"),
      ],
    },
    declarations: {
      patterns: [
        {
          match: `${start}(${named("STRING")})(?:\\s*(${STRING}))?`,
          captures: {
            1: scope("storage.type.declaration"),
            2: scope("string.quoted.double entity.name.section"),
          },
        },
        {
          match: `${start}(${named("WORD")})(?:\\s+(${WORD}))?`,
          captures: { 1: scope("storage.type.declaration"), 2: scope("entity.name.type") },
        },
      ],
    },
    statements: {
      match: `${start}(${oneOf(statements)})`,
      captures: { 1: scope("keyword.other.statement") },
    },
    strings: {
      ...scope("string.quoted.double"),
      begin: '"',
      end: '"|$',
      patterns: [rule("constant.character.escape", "\\\\.")],
    },
    dates: rule("constant.other.date", DATE),
    phrases: rule("keyword.operator.word", border + oneOf(phrases)),
    choices: rule("constant.language", border + oneOf(choices)),
    words: rule("keyword.operator.word", border + oneOf(all)),
    names: rule("variable.other", WORD),
    quantities: {
      match: `(${NUMBER})(?:\\s*(${unit})(?:\\s+(${direction}))?)?`,
      captures: {
        1: scope("constant.numeric"),
        2: scope("keyword.other.unit"),
        3: scope("constant.other.direction"),
      },
    },
    signs: rule("keyword.operator", "\\+/-|[±=*/+%-]"),
  },
};

test("the colouring grammar knows the words of the language", async () => {
  await expect(`${JSON.stringify(colouring, null, 2)}\n`).toMatchFileSnapshot(
    "../../extension/drillwright.tmLanguage.json",
  );
});
