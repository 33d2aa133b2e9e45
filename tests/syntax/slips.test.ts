import { describe, expect, test } from "vitest";
import { SYNTAX_CODE } from "../../language/checks/document-validator.ts";
import { check, edited } from "../checks/checked-files.ts";
import { underlined, unmark } from "../checks/marks.ts";
import { SLIPS as CHANGES } from "./slips/changes.ts";
import { SLIPS as CHARACTERS } from "./slips/characters.ts";
import { SLIPS as LIMITS } from "./slips/limits.ts";
import { SLIPS as LISTS } from "./slips/lists.ts";
import { SLIPS as NAMES } from "./slips/names.ts";
import { SLIPS as NEXT } from "./slips/next.ts";
import { SLIPS as OTHER_WORDS } from "./slips/other-words.ts";
import { SLIPS as PHRASES } from "./slips/phrases.ts";
import { SLIPS as RECORDS } from "./slips/records.ts";
import { SLIPS as SHOTS } from "./slips/shots.ts";
import { SLIPS as STATEMENTS } from "./slips/statements.ts";
import { SLIPS as WORDS } from "./slips/words.ts";

const syntaxErrors = async (text: string) => (await check(text)).filter(({ code }) => code === SYNTAX_CODE);

const SLIPS = [
  ...CHANGES,
  ...CHARACTERS,
  ...LIMITS,
  ...LISTS,
  ...NAMES,
  ...NEXT,
  ...OTHER_WORDS,
  ...PHRASES,
  ...RECORDS,
  ...SHOTS,
  ...STATEMENTS,
  ...WORDS,
];

describe.each(SLIPS)("$name", ({ text: marked, messages, fixed }) => {
  const { text, ranges } = unmark(marked);

  test("is shown where it is, with what to do", async () => {
    const expected = ranges.map((range, index) => ({ range, message: messages[index] ?? "(no message)" }));
    expect(underlined(text, await syntaxErrors(text))).toBe(underlined(text, expected));
    expect(messages).toHaveLength(ranges.length);
  });

  test(fixed === undefined ? "is left to the writer" : "is put right by its first fix", async () => {
    const edits = (await syntaxErrors(text)).flatMap(({ fixes }) => fixes[0]?.edits ?? []);
    expect(edits.length > 0 ? edited(text, edits) : undefined).toBe(fixed);
  });

  test("loses by each fix what it was made for, and gains nothing", async () => {
    const found = await syntaxErrors(text);
    for (const [index, { fixes }] of found.entries()) {
      const others = found.filter((_, at) => at !== index).map(({ message }) => message);
      for (const { title, edits } of fixes) {
        const left = (await syntaxErrors(edited(text, edits))).map(({ message }) => message);
        // A statement that is half typed goes on after the word that is put right.
        const lastWord = edits[0]?.newText.trim();
        const isNext = (message: string) => message.startsWith(`Behind \`${lastWord}\` something is missing`);
        expect(
          left.filter((message) => !isNext(message)),
          title,
        ).toEqual(others);
      }
    }
  });

  test("is underlined by at least a character", async () => {
    for (const { range } of await syntaxErrors(text)) {
      expect(range.end.line).toBe(range.start.line);
      expect(range.end.character).toBeGreaterThan(range.start.character);
    }
  });
});
