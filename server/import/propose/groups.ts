/** The sessions that one table holds: who hit on which day in which lesson. */
import { parseDate } from "../cells/date.ts";
import { isBlank } from "../cells/number.ts";

/** Rows that belong together. Null where no column tells. */
export interface Group {
  readonly player: string | null;
  /** `2026-10-12` */
  readonly date: string | null;
  readonly session: string | null;
  rows: number;
}

/** Places of the columns that part the table, from 0; undefined where there is none. */
export interface GroupColumns {
  readonly player: number | undefined;
  readonly date: number | undefined;
  readonly session: number | undefined;
}

const MOST_GROUPS = 2000;

/** Collects the groups row by row. Days and months are told apart when all rows were seen. */
export class Groups {
  /** Whether dates may be read so. */
  canBe = { dayFirst: true, monthFirst: true };
  isOrderNeeded = false;
  isCut = false;
  /** Every player's name or code, as written. */
  readonly players = new Set<string>();
  readonly #columns: GroupColumns;
  readonly #found = new Map<
    string,
    { player: string | null; date: string | null; session: string | null; rows: number }
  >();

  constructor(columns: GroupColumns) {
    this.#columns = columns;
  }

  add(cells: readonly string[]): void {
    const textAt = (place: number | undefined) => {
      const text = place === undefined ? "" : (cells[place] ?? "").trim();
      return isBlank(text) ? null : text;
    };
    const [player, dateText, session] = [this.#columns.player, this.#columns.date, this.#columns.session].map(
      textAt,
    );
    if (player != null) this.players.add(player);
    const day = dateText == null ? undefined : parseDate(dateText);
    if (day !== undefined) {
      this.canBe.dayFirst &&= day.dayFirst !== undefined;
      this.canBe.monthFirst &&= day.monthFirst !== undefined;
      this.isOrderNeeded ||= day.dayFirst !== day.monthFirst;
    }
    // Without the time that may follow a date.
    const date = day === undefined ? null : `${day.dayFirst ?? ""}|${day.monthFirst ?? ""}`;
    const key = JSON.stringify([player, date, session]);
    const found = this.#found.get(key);
    if (found !== undefined) found.rows++;
    else if (this.#found.size < MOST_GROUPS)
      this.#found.set(key, { player: player ?? null, date, session: session ?? null, rows: 1 });
    else this.isCut = true;
  }

  /** True where both readings of the dates remain and make a difference: the day is taken to stand first. */
  get isOrderUnknown(): boolean {
    return this.isOrderNeeded && this.canBe.dayFirst === this.canBe.monthFirst;
  }

  get isMonthFirst(): boolean {
    return this.canBe.monthFirst && !this.canBe.dayFirst;
  }

  /** In the order in which they were met. Rows that say nothing in a column that parts the table are nobody's. */
  list(): Group[] {
    return [...this.#found.values()]
      .filter(({ player }) => player !== null || this.#columns.player === undefined)
      .filter(({ date }) => date !== null || this.#columns.date === undefined)
      .filter(({ session }) => session !== null || this.#columns.session === undefined)
      .map((group) => {
        const [dayFirst = "", monthFirst = ""] = group.date?.split("|") ?? [];
        const date = this.isMonthFirst ? monthFirst : dayFirst || monthFirst;
        return { ...group, date: date === "" ? null : date };
      });
  }
}
