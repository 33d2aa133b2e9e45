/**
 * The canonical layout of a file: one statement a line, two spaces for each pair of braces, single spaces, a blank line
 * around what has braces, at most one elsewhere. Only white space is changed, so a layout never changes what a file says.
 */
import { CstUtils, type LangiumDocument, type Lexer } from "langium";
import type { TextEdit } from "../checks/check.ts";
import type { Document } from "../generated/tree/ast.ts";
import type { Token } from "../syntax/tokens.ts";
import { type Line, linesOf } from "./lines.ts";
import { spaceBetween } from "./spacing.ts";

const INDENTATION = "  ";

/** Lists longer than a line go on in the next, further in. */
const WIDEST = 100;
const CONTINUATION = INDENTATION.repeat(2);

/** White space between two tokens: how many line ends, and what follows them; or the spaces in a line. */
interface Gap {
  readonly lineEnds: number;
  readonly space: string;
}

/**
 * The changes that bring a file into its layout, in the order of the text; none where it is laid out already. In a file
 * with syntax errors what could not be read stays as it is, and no lines are joined.
 *
 * Cost: linear in the tokens.
 */
export function layoutEdits(document: LangiumDocument<Document>, lexer: Lexer): TextEdit[] {
  return new Layout(document, lexer).edits();
}

class Layout {
  private readonly document: LangiumDocument<Document>;
  private readonly text: string;
  private readonly lineEnd: string;
  private readonly tokens: readonly Token[];
  private readonly lines: ReadonlyMap<number, Line>;
  private readonly ends: ReadonlySet<number>;
  /** The offsets of what was read, where something was not. */
  private readonly read: ReadonlySet<number> | undefined;
  private depth = 0;

  constructor(document: LangiumDocument<Document>, lexer: Lexer) {
    const { value, parserErrors } = document.parseResult;
    this.document = document;
    this.text = document.textDocument.getText();
    this.lineEnd = /\r\n|\r|\n/.exec(this.text)?.[0] ?? "\n";
    const { tokens, hidden } = lexer.tokenize(this.text);
    this.tokens = [...tokens, ...hidden].sort((one, other) => one.startOffset - other.startOffset);
    this.lines = linesOf(value);
    this.ends = new Set([...this.lines.values()].filter(({ isRoomy }) => isRoomy).map(({ end }) => end));
    const root = value.$cstNode;
    if (parserErrors.length > 0 && root !== undefined) {
      this.read = new Set(CstUtils.flattenCst(root).map(({ offset }) => offset));
    }
  }

  edits(): TextEdit[] {
    const edits: TextEdit[] = [];
    const change = (start: number, end: number, text: string) => {
      if (this.text.slice(start, end) !== text) edits.push(this.edit(start, end, text));
    };
    const gaps = this.wrapped(this.tokens.map((token, index) => this.gapBefore(index, token)));
    let end = 0;
    for (const [index, token] of this.tokens.entries()) {
      const gap = gaps[index];
      if (gap !== undefined) change(end, token.startOffset, this.lineEnd.repeat(gap.lineEnds) + gap.space);
      end = endOf(token);
      if (isComment(token)) end = this.tidyComment(token, gap, change);
    }
    const last = this.tokens.at(-1);
    // A comment or a text that is never closed reaches to the end of the file.
    if (last === undefined || this.isRead(last)) {
      change(end, this.text.length, last === undefined ? "" : this.lineEnd);
    }
    return edits;
  }

  /** What belongs before a token; undefined where that is to stay as it is. */
  private gapBefore(index: number, token: Token): Gap | undefined {
    const before = this.tokens[index - 1];
    if (token.image === "}") this.depth = Math.max(0, this.depth - 1);
    const { depth } = this;
    if (token.image === "{") this.depth++;
    if (before === undefined) return { lineEnds: 0, space: "" };
    const white = this.text.slice(endOf(before), token.startOffset);
    const found = white.split(/\r\n|\r|\n/).length - 1;
    const startsLine = this.startsLine(index, token, before, found);
    if (!this.mayChange(before, token, found, startsLine)) return undefined;
    if (!startsLine) return { lineEnds: 0, space: spaceBetween(before, token) };
    const isFirst = before.image === "{" || token.image === "}";
    const isDocumented = before.image.startsWith("/**") && !isComment(token);
    const wanted = !isFirst && !isDocumented && (found > 1 || this.needsRoom(index, before)) ? 2 : 1;
    return { lineEnds: wanted, space: INDENTATION.repeat(depth) };
  }

  private startsLine(index: number, token: Token, before: Token, found: number): boolean {
    if (isComment(token)) return found > 0;
    if (before.tokenType.name === "SL_COMMENT") return true;
    if (token.image === "}") return before.image !== "{";
    const line = this.lines.get(token.startOffset);
    if (line !== undefined) return !line.needsBrace || this.wordBefore(index)?.image === "{";
    return isComment(before) && found > 0 && this.startsOwnLine(index - 1);
  }

  /** The last token before this one that is no comment. */
  private wordBefore(index: number): Token | undefined {
    let before = index - 1;
    while (isComment(this.tokens[before])) before--;
    return this.tokens[before];
  }

  /** Whether a comment stands on a line of its own. */
  private startsOwnLine(index: number): boolean {
    const before = this.tokens[index - 1];
    const token = this.tokens[index];
    if (before === undefined || token === undefined) return true;
    return /[\r\n]/.test(this.text.slice(endOf(before), token.startOffset));
  }

  private mayChange(before: Token, token: Token, found: number, startsLine: boolean): boolean {
    if (this.read === undefined) return true;
    return this.isRead(before) && this.isRead(token) && (startsLine || found === 0);
  }

  private isRead(token: Token): boolean {
    return this.read === undefined || isComment(token) || this.read.has(token.startOffset);
  }

  /** Whether a blank line belongs between the part before a token and the part it begins, past comments of their own. */
  private needsRoom(index: number, before: Token): boolean {
    let from = index - 1;
    while (isComment(this.tokens[from])) {
      // Comments on lines of their own belong to what follows, and got the room in front of them.
      if (this.startsOwnLine(from)) return false;
      from--;
    }
    const last = this.tokens[from] ?? before;
    if (last.image === "{") return false;
    let to = index;
    while (isComment(this.tokens[to])) to++;
    const next = this.tokens[to];
    if (next === undefined || next.image === "}") return false;
    return this.ends.has(endOf(last)) || this.lines.get(next.startOffset)?.isRoomy === true;
  }

  /** Breaks lines that are too wide behind their commas. */
  private wrapped(gaps: readonly (Gap | undefined)[]): (Gap | undefined)[] {
    const wrapped = [...gaps];
    let first = 0;
    while (first < this.tokens.length) {
      let next = first + 1;
      while (next < this.tokens.length && (gaps[next]?.lineEnds ?? 1) === 0) next++;
      this.wrapLine(first, next, wrapped);
      first = next;
    }
    return wrapped;
  }

  private wrapLine(first: number, next: number, gaps: (Gap | undefined)[]): void {
    const indentation = gaps[first]?.space ?? "";
    let column = indentation.length;
    let comma = -1;
    let sinceComma = 0;
    for (let index = first; index < next; index++) {
      const token = this.tokens[index] as Token;
      const width = (index === first ? 0 : (gaps[index]?.space.length ?? 0)) + token.image.length;
      column += width;
      sinceComma += width;
      if (column > WIDEST && comma > first && comma + 1 < next) {
        gaps[comma + 1] = { lineEnds: 1, space: indentation + CONTINUATION };
        column = indentation.length + CONTINUATION.length + sinceComma - 1;
        comma = -1;
      }
      if (token.image === "," && !isComment(this.tokens[index + 1])) {
        comma = index;
        sinceComma = 0;
      }
    }
  }

  /** Takes white space off the ends of a comment's lines, and lines the stars of a long one up. Returns where it ends. */
  private tidyComment(
    token: Token,
    gap: Gap | undefined,
    change: (start: number, end: number, text: string) => void,
  ): number {
    const end = endOf(token);
    if (token.tokenType.name === "SL_COMMENT") {
      const length = token.image.trimEnd().length;
      change(token.startOffset + length, end, "");
      return end;
    }
    if (gap === undefined) return end;
    let at = token.startOffset;
    for (const [line, text] of token.image.split(/\r\n|\r|\n/).entries()) {
      const start = line === 0 ? at : this.text.indexOf(text, at);
      const indented = /^\s*(?=\*)/.exec(text)?.[0];
      const isStarred = line > 0 && indented !== undefined && gap.lineEnds > 0;
      if (isStarred) change(start, start + indented.length, `${gap.space} `);
      const trimmed = text.trimEnd().length;
      if (trimmed > 0 || !isStarred) change(start + trimmed, start + text.length, "");
      at = start + text.length;
    }
    return end;
  }

  private edit(start: number, end: number, newText: string): TextEdit {
    const { textDocument } = this.document;
    return { range: { start: textDocument.positionAt(start), end: textDocument.positionAt(end) }, newText };
  }
}

function endOf(token: Token): number {
  return token.startOffset + token.image.length;
}

function isComment(token: Token | undefined): boolean {
  const name = token?.tokenType.name;
  return name === "SL_COMMENT" || name === "ML_COMMENT";
}
