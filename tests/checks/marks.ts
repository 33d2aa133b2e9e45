/** Texts in which `«…»` marks what is to be found. */
import type { TextRange } from "../../language/checks/check.ts";

/** A text without its marks, and what they marked. */
export interface Marked {
  readonly text: string;
  readonly ranges: readonly TextRange[];
}

export function unmark(marked: string): Marked {
  const ranges: TextRange[] = [];
  const open: TextRange["start"][] = [];
  let text = "";
  let line = 0;
  let character = 0;
  for (const letter of marked) {
    if (letter === "«") open.push({ line, character });
    else if (letter === "»") {
      const start = open.pop();
      if (start === undefined) throw new Error("A mark is closed that was not opened.");
      ranges.push({ start, end: { line, character } });
    } else {
      text += letter;
      if (letter === "\n") {
        line++;
        character = 0;
      } else character += letter.length;
    }
  }
  if (open.length > 0) throw new Error("A mark is not closed.");
  return { text, ranges: ranges.sort(byPlace) };
}

/** The text with carets and messages under what was found, to be compared as a whole. */
export function underlined(text: string, found: readonly { range: TextRange; message: string }[]): string {
  const sorted = [...found].sort((one, other) => byPlace(one.range, other.range));
  return text
    .split("\n")
    .flatMap((content, line) => [
      content,
      ...sorted
        .filter(({ range }) => range.start.line === line)
        .map(({ range, message }) => {
          const end = range.end.line === line ? range.end.character : content.length;
          const width = Math.max(0, end - range.start.character);
          return `${" ".repeat(range.start.character)}${"^".repeat(width)} ${message}`.trimEnd();
        }),
    ])
    .join("\n");
}

function byPlace(one: TextRange, other: TextRange): number {
  return (
    one.start.line - other.start.line ||
    one.start.character - other.start.character ||
    one.end.line - other.end.line ||
    one.end.character - other.end.character
  );
}
