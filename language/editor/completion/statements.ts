/** The statement at the cursor and what may follow there, over however many lines it goes. */
import { GrammarAST } from "langium";
import type { Expectation, Expectations } from "./expectations.ts";
import { statementStarts } from "./statement-starts.ts";

/** A statement as far as it is written, and what the grammar lets follow. */
export interface OpenStatement {
  readonly text: string;
  readonly expected: readonly Expectation[];
}

/** Where texts are handed in, they are without their comments. */
export class Statements {
  private readonly expectations: Expectations;

  constructor(expectations: Expectations) {
    this.expectations = expectations;
  }

  /**
   * What opened the braces around the cursor, outermost first: `plan "Gate" {`. What nobody can read between the first
   * word and the brace is left out, as the parser does it.
   *
   * @param texts for each pair of braces what stands between the brace before it and its own
   */
  openings(texts: readonly string[]): string[] {
    const openings: string[] = [];
    for (const text of texts) {
      const candidates = [...statementStarts(text)];
      const [nearest = text] = candidates;
      if (!this.open(openings, candidates) && !this.open(openings, shortened(nearest)))
        openings.push(nearest);
    }
    return openings;
  }

  /** Adds the first that can be read to those around it, or to fewer of them, where closing braces are missing. */
  private open(openings: string[], candidates: readonly string[]): boolean {
    for (let depth = openings.length; depth >= 0; depth--) {
      const around = openings.slice(0, depth);
      const readable = candidates.find((candidate) => this.after([...around, candidate]).length > 0);
      if (readable === undefined) continue;
      openings.splice(depth, Infinity, readable);
      return true;
    }
    return false;
  }

  /**
   * Cost: that of parsing the statement, and where it cannot be read, a few lines before it.
   *
   * @param body what stands between the last brace and the cursor
   */
  at(openings: readonly string[], body: string): OpenStatement {
    const [line = "", ...longer] = statementStarts(body);
    if (line.trim() === "") return this.atStartOfLine(openings, line, longer);
    for (const text of this.candidates(openings, line, longer)) {
      const expected = this.after([...openings, text]);
      if (expected.length === 0) continue;
      const isOnOpeningLine = openings.length > 0 && !body.includes("\n");
      return { text, expected: isOnOpeningLine ? expected : this.withoutNext(openings, expected) };
    }
    return { text: line, expected: [] };
  }

  /** Where a line starts, the next statement does; or the one before goes on, where it must or stands further out. */
  private atStartOfLine(openings: readonly string[], line: string, longer: readonly string[]): OpenStatement {
    const starts = this.after(openings);
    for (const text of longer) {
      const expected = this.after([...openings, text]);
      if (expected.length === 0) continue;
      if (!this.mayEnd(openings, expected)) return { text, expected: [...expected, ...starts] };
      if (indentation(text) >= indentation(line)) break;
      // A name on a new line is never what a statement could still go on with.
      return { text, expected: [...expected.filter(GrammarAST.isKeyword), ...starts] };
    }
    return { text: line, expected: starts };
  }

  /**
   * What the statement may be. A line that starts with a name goes on with the one before it where that must go on, and
   * only there: a misspelt word is no unit or side of the amount that stands at its end.
   */
  private candidates(
    openings: readonly string[],
    line: string,
    longer: readonly string[],
  ): readonly string[] {
    if (!this.expectations.startsWithName(line)) return [line, ...longer];
    for (const text of longer) {
      const expected = this.after([...openings, text.slice(0, text.length - line.length)]);
      if (expected.length > 0) return this.mayEnd(openings, expected) ? [line] : longer;
    }
    return [line];
  }

  /** One statement a line: behind a statement that is complete the next one is not offered in the same line. */
  private withoutNext(openings: readonly string[], expected: readonly Expectation[]): readonly Expectation[] {
    if (!this.mayEnd(openings, expected)) return expected;
    const starts = this.after(openings);
    return expected.filter((next) => !(GrammarAST.isKeyword(next) && starts.includes(next)));
  }

  /** Whether a statement could end here: what closes its body may follow, or in a file the next declaration. */
  private mayEnd(openings: readonly string[], expected: readonly Expectation[]): boolean {
    const keywords = expected.filter(GrammarAST.isKeyword);
    if (openings.length > 0) return keywords.some(({ value }) => value === "}");
    const declarations = this.expectations.declarations();
    return keywords.some(({ value }) => declarations.has(value));
  }

  private after(pieces: readonly string[]): readonly Expectation[] {
    return this.expectations.after(pieces.join("\n"));
  }
}

function indentation(text: string): number {
  return text.search(/\S|$/);
}

const WORDS = /"(?:\\.|[^"\\\r\n])*"|[^\s"]+/g;

/** An opening with ever less between its first word and the brace; and one whose name is missing or no text. */
function shortened(opening: string): string[] {
  const words = opening.replace(/\{\s*$/, "").match(WORDS) ?? [];
  const shorter = words.map((_, dropped) => words.slice(0, words.length - dropped));
  return [...shorter, [words[0] ?? "", '""']].map((each) => `${each.join(" ")} {`);
}
