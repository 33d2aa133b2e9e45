import { describe, expect, test } from "vitest";
import { SYNTAX_CODE } from "../../language/checks/document-validator.ts";
import { check, edited } from "../checks/checked-files.ts";
import { underlined, unmark } from "../checks/marks.ts";
import { SLIPS } from "./slips.ts";

const syntaxErrors = async (text: string) => (await check(text)).filter(({ code }) => code === SYNTAX_CODE);

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

  test("loses by each fix what it was made for", async () => {
    const found = await syntaxErrors(text);
    for (const { fixes, message } of found) {
      for (const fix of fixes) {
        const after = await syntaxErrors(edited(text, fix.edits));
        expect(after.length, `${message} ${fix.title}`).toBeLessThan(found.length);
      }
    }
  });
});
