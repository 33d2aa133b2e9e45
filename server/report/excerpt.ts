/** The line of a file that a message is about, with carets under the place. */
import type { Range } from "../../shared/plan-model.ts";
import { type Palette, PLAIN } from "./palette.ts";
import { printable } from "./printable.ts";

const TAB = "  ";

/** Columns of the terminal that an excerpt of a line may take. */
const WIDTH = 100;

/** Columns kept in front of the place where a long line is cut. */
const BEFORE = 40;

/** Characters on either side that are looked at in the first place: a line can be a megabyte long. */
const MOST_CHARACTERS = 10 * WIDTH;

/**
 * Two lines: the first of the range as it stands in `text`, and the carets. Tabs are shown as two spaces, and of long
 * lines the part around the place. Nothing where the text has no such line, or a blank one.
 *
 * ```
 *    12 |     at least 12 of 10 shots on target
 *       |              ^^
 * ```
 */
export function excerpt(text: string, range: Range, palette: Palette = PLAIN): string[] {
  const { start, end } = range;
  const line = lineOf(text, start.line);
  if (line === undefined || line.trim() === "") return [];
  const from = Math.min(start.character, line.length);
  const to = end.line === start.line ? Math.min(end.character, line.length) : line.length;
  const { before, marked, after } = cut(
    shown(line.slice(Math.max(0, from - MOST_CHARACTERS), from)),
    shown(line.slice(from, Math.min(to, from + MOST_CHARACTERS))),
    shown(line.slice(to, to + MOST_CHARACTERS)),
  );
  const carets = "^".repeat(Math.max(1, columns(marked)));
  const number = String(start.line + 1).padStart(5);
  return [
    `${palette.faint(`${number} |`)} ${before}${marked}${after}`.trimEnd(),
    `${palette.faint(`${" ".repeat(number.length)} |`)} ${" ".repeat(columns(before))}${palette.bad(carets)}`,
  ];
}

/** The line with that number, from 0, without its ending. */
function lineOf(text: string, number: number): string | undefined {
  let start = 0;
  for (let line = 0; line < number; line++) {
    const end = text.indexOf("\n", start);
    if (end < 0) return undefined;
    start = end + 1;
  }
  const end = text.indexOf("\n", start);
  return text.slice(start, end < 0 ? undefined : end).replace(/\r$/, "");
}

function shown(part: string): string {
  return printable(part.replaceAll("\t", TAB));
}

interface Parts {
  readonly before: string;
  readonly marked: string;
  readonly after: string;
}

/** The parts of a line, cut to the width where they are longer. */
function cut(before: string, marked: string, after: string): Parts {
  if (columns(before) + columns(marked) + columns(after) <= WIDTH) return { before, marked, after };
  const shortBefore = columns(before) <= BEFORE ? before : `…${fitting(before, BEFORE - 1, "end")}`;
  const left = WIDTH - columns(shortBefore);
  if (columns(marked) >= left) {
    return { before: shortBefore, marked: `${fitting(marked, left - 1, "start")}…`, after: "" };
  }
  const room = left - columns(marked);
  const shortAfter = columns(after) <= room ? after : `${fitting(after, room - 1, "start")}…`;
  return { before: shortBefore, marked, after: shortAfter };
}

/** As much of the start or the end of a text as fits into so many columns. */
function fitting(text: string, room: number, side: "start" | "end"): string {
  const characters = [...text];
  if (side === "end") characters.reverse();
  let used = 0;
  const kept: string[] = [];
  for (const character of characters) {
    used += columns(character);
    if (used > room) break;
    kept.push(character);
  }
  if (side === "end") kept.reverse();
  return kept.join("");
}

/** Characters that a terminal draws over the one before, and those it gives two columns (East Asian wide, emoji). */
const ZERO_WIDTH = /\p{Mn}|\p{Me}|[\u200B-\u200D]/gu;
const DOUBLE_WIDTH =
  /[\u1100-\u115F\u2E80-\u303E\u3041-\uA4CF\uAC00-\uD7A3\uF900-\uFAFF\uFE30-\uFE6F\uFF00-\uFF60\uFFE0-\uFFE6\p{Emoji_Presentation}]/gu;

/** How many columns a terminal gives a text. */
function columns(text: string): number {
  if (/^[\x20-\x7e]*$/.test(text)) return text.length;
  const visible = text.replace(ZERO_WIDTH, "");
  return [...visible].length + (visible.match(DOUBLE_WIDTH)?.length ?? 0);
}
