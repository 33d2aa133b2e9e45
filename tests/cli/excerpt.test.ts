/** The line a message is about, and the carets under the place. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { excerpt } from "../../server/report/excerpt.ts";

/** The excerpt of the part of a text between `«` and `»`. */
function marked(text: string): string[] {
  const start = text.indexOf("«");
  const before = text.slice(0, start);
  const inside = text.slice(start + 1, text.indexOf("»"));
  const line = before.split("\n").length - 1;
  const character = before.length - (before.lastIndexOf("\n") + 1);
  const breaks = inside.split("\n");
  const end =
    breaks.length === 1
      ? { line, character: character + inside.length }
      : { line: line + breaks.length - 1, character: breaks.at(-1)?.length ?? 0 };
  return excerpt(text.replace(/[«»]/g, ""), { start: { line, character }, end });
}

test.each([
  ["a word", "plan\n  «cue»  'x'", ["    2 |   cue  'x'", "      |   ^^^"]],
  ["nothing wide still has a caret", "plan«» {", ["    1 | plan {", "      |     ^"]],
  ["the end of a line", "plan {«»\nx", ["    1 | plan {", "      |       ^"]],
  ["Windows line ends", "a\r\n  «b»\r\nc\r\n", ["    2 |   b", "      |   ^"]],
  ["tabs", "\t«a\tb»\tc", ["    1 |   a  b  c", "      |   ^^^^"]],
  ["several lines: the first", "a «b\nc» d", ["    1 | a b", "      |   ^"]],
  ["wide characters", "中文 «中文» b", ["    1 | 中文 中文 b", "      |      ^^^^"]],
  ["accents of their own", "e\u0301 «e\u0301»", ["    1 | e\u0301 e\u0301", "      |   ^"]],
  ["emoji", "🏌 «⛳»", ["    1 | 🏌 ⛳", "      |   ^^"]],
  ["control characters", "a\u001b«[2J»", ["    1 | a\uFFFD[2J", "      |   ^^^"]],
  ["line numbers of any length", `${"\n".repeat(123_455)}«x»`, ["123456 | x", "       | ^"]],
  ["a blank line has nothing to show", "a\n  «»\nb", []],
])("%s", (_, text, lines) => {
  expect(marked(text)).toEqual(lines);
});

test("a line that is not there has nothing to show", () => {
  expect(excerpt("a", { start: { line: 3, character: 0 }, end: { line: 3, character: 1 } })).toEqual([]);
});

test("of a long line the part around the place is shown", () => {
  const filler = "0123456789".repeat(1000);
  const [line = "", carets = ""] = marked(`${filler}«here»${filler}`);
  expect(line).toMatch(/^ {4}1 \| ….*here.*…$/);
  expect(line.length).toBeLessThanOrEqual(8 + 100);
  expect(carets.indexOf("^")).toBe(line.indexOf("here"));
  expect(carets.match(/\^+/)?.[0]).toHaveLength(4);
  const [wide = ""] = marked(`a «${filler}» b`);
  expect(wide.length).toBeLessThanOrEqual(8 + 100);
});

test("whatever the line, no line is long, and the carets stand under it", () => {
  fc.assert(
    fc.property(
      fc.string({ unit: "binary", maxLength: 300 }),
      fc.nat(300),
      fc.nat(300),
      (text, from, length) => {
        const range = { start: { line: 0, character: from }, end: { line: 0, character: from + length } };
        const lines = excerpt(text, range);
        expect(lines.length === 0 || lines.length === 2).toBe(true);
        for (const line of lines) {
          expect([...line].length).toBeLessThanOrEqual(8 + 300);
          expect(line).not.toMatch(/[\p{Cc}]/u);
        }
      },
    ),
  );
});
