/** Where the statement at the end of a text may have started. */
import { textParts } from "../text-parts.ts";

/** Lines that nobody's statement has more of, those aside that certainly go on with the line before. */
const MOST_LINES = 20;

/**
 * What stands between each of these places and the end of the text, the nearest first: the line at the end, then each line
 * before it. A line behind a comma, and one that is but an opening brace, go on with the line before and start nothing.
 *
 * @param text what follows a brace, without its comments
 */
export function* statementStarts(text: string): Generator<string, void> {
  const lines = text.split("\n");
  let statement = lines.pop() ?? "";
  for (let found = 0; found < MOST_LINES; ) {
    const before = lines.findLastIndex((line) => line.trim() !== "");
    if (before === -1 || !(isBrace(statement) || endsInComma(lines[before] ?? ""))) {
      yield statement;
      found++;
    }
    if (before === -1) return;
    statement = [...lines.splice(before), statement].join("\n");
  }
}

function isBrace(text: string): boolean {
  return text.trim() === "{";
}

/** Whether a line ends in a comma; one within a text that is not closed is none. */
function endsInComma(line: string): boolean {
  if (!line.trimEnd().endsWith(",")) return false;
  const last = [...textParts(line)].at(-1);
  return last === undefined || last.isClosed || last.end < line.trimEnd().length;
}
