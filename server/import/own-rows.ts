/** Which rows of a table that holds several players, days or sessions belong to the session that is read. */

import { foldNumbered } from "../../shared/fold.ts";
import type { ScoringInput, Source } from "../../shared/plan-model.ts";
import { type BlankTest, blankTest } from "./cells/blank.ts";
import { type DateReading, parseDate } from "./cells/date.ts";
import type { Bound, Columns } from "./columns.ts";
import { list, quote, type Report } from "./finding.ts";
import { lookup, remembered } from "./spelling.ts";
import type { TableRow } from "./table/table.ts";

/** Under which order of day and month a row belongs to the session; `any` where that makes no difference. */
export type Membership = "any" | "day-first" | "month-first";

/** Nobody can tell whose a row is: it `what` in this column. */
interface Unclear {
  readonly what: string;
  readonly column: string;
  readonly text: string;
}

type Standing = Membership | "another's" | Unclear;

/** How many different texts are remembered to be shown where none of them is the session's. */
const MOST_SHOWN = 12;

/**
 * Sorts out the rows of other players, days and sessions by the columns that name them. Player and session are matched
 * whatever the case, spaces, punctuation and zeros before numbers. Where dates read two ways, rows of either reading are
 * kept until the whole column tells, or does not. A session that states no date takes all days.
 */
export class OwnRows {
  /** Rows that belong to somebody, some day or some session else. */
  others = 0;
  readonly #tests: readonly NameTest[];
  readonly #dates: readonly Bound<"date">[];
  readonly #input: ScoringInput;
  readonly #report: Report;
  readonly #isBlank: BlankTest;
  /** Whether every date so far can be read in this order. */
  #canBe = { dayFirst: true, monthFirst: true };
  #isOrderNeeded = false;
  #ambiguous: { readonly text: string; readonly column: string } | undefined;
  readonly #days = new Set<string>();

  constructor(columns: Columns, source: Source, input: ScoringInput, report: Report) {
    this.#input = input;
    this.#report = report;
    this.#dates = columns.dates;
    this.#isBlank = blankTest(source);
    this.#tests = [
      ...columns.players.map((column) => {
        const spellings = column.content.spellings.map(({ text, player }) => [text, player] as const);
        return nameTest(column, "player", input.player.name, spellings, this.#isBlank);
      }),
      ...columns.sessions.map((column) => nameTest(column, "session", input.session.name, [], this.#isBlank)),
    ];
  }

  /** Undefined where the row is not the session's. */
  membership(row: TableRow): Membership | undefined {
    const standing = this.#standing(row.cells);
    if (standing === "another's") this.others++;
    else if (typeof standing === "object") this.#skip(row.line, standing, 1);
    else return standing;
    return undefined;
  }

  /**
   * Whether rows with these cells are wanted: because they are the session's, or because nobody can tell whose they are, which
   * is to be said of each. Where they are another's, so many of them are counted.
   */
  wants({ cells }: Pick<TableRow, "cells">, rows: number): boolean {
    const isWanted = this.#standing(cells) !== "another's";
    if (!isWanted) this.others += rows;
    return isWanted;
  }

  /** So many rows more have the cells of this one, of which nobody can tell whose it is: that was said often enough. */
  skipLike({ cells, line }: TableRow, rows: number): void {
    const standing = this.#standing(cells);
    if (typeof standing === "object") this.#skip(line, standing, rows);
  }

  #standing(cells: readonly string[]): Standing {
    for (const test of this.#tests) {
      const cell = cells[test.index] ?? "";
      const whose = test.whose(cell);
      if (whose === "own") test.found = true;
      else {
        if (whose === "another's" && test.seen.size < MOST_SHOWN) test.seen.add(cell.trim());
        return whose;
      }
    }
    return this.#onTheDay(cells);
  }

  #onTheDay(cells: readonly string[]): Standing {
    const { date } = this.#input.session;
    let membership: Membership = "any";
    for (const { index, header, content } of this.#dates) {
      const text = (cells[index] ?? "").trim();
      const isBlank = this.#isBlank(text);
      const read = isBlank ? undefined : parseDate(text, content.order);
      if (read === undefined) {
        return { what: isBlank ? "has no date" : `has ${quote(text)} for a date`, column: header, text };
      }
      if (date === null) this.#noteDay(read);
      else {
        const found = this.#readings(read, text, header);
        if (found === undefined) return "another's";
        if (found !== "any") membership = found;
      }
    }
    return membership;
  }

  #readings({ dayFirst, monthFirst }: DateReading, text: string, column: string): Membership | undefined {
    const { date } = this.#input.session;
    this.#canBe.dayFirst &&= dayFirst !== undefined;
    this.#canBe.monthFirst &&= monthFirst !== undefined;
    if (dayFirst === date && monthFirst === date) return "any";
    if (dayFirst !== date && monthFirst !== date) return undefined;
    this.#isOrderNeeded = true;
    this.#ambiguous ??= { text, column };
    return dayFirst === date ? "day-first" : "month-first";
  }

  #noteDay({ dayFirst, monthFirst }: DateReading): void {
    if (this.#days.size < MOST_SHOWN) this.#days.add(dayFirst ?? monthFirst ?? "");
  }

  #skip(line: number, { what, column, text }: Unclear, times: number): void {
    this.others += times;
    this.#report({
      code: "row-skipped",
      severity: "warning",
      line,
      column,
      text,
      message: `Line ${line} ${what} in column ${quote(column)}, so nobody can tell whose it is, and it was left out.`,
      times,
    });
  }

  /** Whether rows of this membership are the session's, now that the whole table was read. */
  decide(): (membership: Membership) => boolean {
    const { dayFirst, monthFirst } = this.#canBe;
    if (!this.#isOrderNeeded) return () => true;
    if (dayFirst === monthFirst) return (membership) => membership === "any";
    return (membership) => membership === "any" || (membership === "day-first") === dayFirst;
  }

  /** Reports what the whole table says about its columns; false where it says that no row can be taken. `kept` is how many were the session's. */
  reportOn(kept: number, report: Report): boolean {
    const { session } = this.#input;
    for (const test of this.#tests) {
      if (!test.found && test.seen.size > 0) {
        report({ code: "rows-missing", severity: "error", column: test.header, message: whyNone(test) });
        return false;
      }
    }
    const isUndecided = this.#isOrderNeeded && this.#canBe.dayFirst === this.#canBe.monthFirst;
    if (isUndecided && this.#ambiguous !== undefined) {
      const { text, column } = this.#ambiguous;
      report({
        code: "date-ambiguous",
        severity: "error",
        column,
        text,
        message: `${quote(text)} in column ${quote(column)} may have the day or the month first, and no other row tells. Say which: \`column ${quote(column)} is date as day-month-year\`, or \`as month-day-year\`.`,
      });
      return false;
    }
    const [column] = this.#dates;
    if (kept === 0 && this.others > 0) {
      const isDay = column !== undefined && session.date !== null;
      const why = isDay
        ? `No row has the date ${session.date} of session ${quote(session.name)} in column ${quote(column.header)}.`
        : `No row says that it belongs to session ${quote(session.name)}: see the findings about rows that were left out.`;
      report({
        code: "rows-missing",
        severity: "error",
        ...(isDay ? { column: column.header } : {}),
        message: why,
      });
      return false;
    }
    if (column !== undefined && session.date === null && this.#days.size > 1) {
      report({
        code: "date-missing",
        severity: "warning",
        column: column.header,
        message: `The table holds shots of several days (${list([...this.#days].sort())}), and session ${quote(session.name)} states no date, so all were taken. Write \`date …\` in the session to take one day.`,
      });
    }
    return true;
  }
}

/** A column whose texts name something the session has, too. */
interface NameTest {
  readonly index: number;
  readonly header: string;
  readonly noun: "player" | "session";
  readonly wanted: string;
  /** Of a cell. */
  readonly whose: (cell: string) => "own" | "another's" | Unclear;
  /** Texts of others. */
  readonly seen: Set<string>;
  found: boolean;
}

function nameTest(
  { index, header }: { index: number; header: string },
  noun: "player" | "session",
  wanted: string,
  spellings: readonly (readonly [string, string])[],
  isBlank: BlankTest,
): NameTest {
  const find = lookup([...spellings, [wanted, wanted]], foldNumbered);
  const unclear: Unclear = { what: `names no ${noun}`, column: header, text: "" };
  return {
    index,
    header,
    noun,
    wanted,
    whose: remembered((cell) => {
      const text = cell.trim();
      if (isBlank(text)) return unclear;
      return find(text) === wanted ? "own" : "another's";
    }),
    seen: new Set(),
    found: false,
  };
}

function whyNone({ header, noun, wanted, seen }: NameTest): string {
  const column = `column ${quote(header)}`;
  const advice =
    noun === "player"
      ? `Say how the table calls the player: \`${column} is player where ${quote([...seen][0] ?? "…")} is ${quote(wanted)}\`.`
      : "Name the session as the table does.";
  return `No row is of ${noun} ${quote(wanted)}: ${column} holds ${list([...seen])}${seen.size === MOST_SHOWN ? " …" : ""}. ${advice}`;
}
