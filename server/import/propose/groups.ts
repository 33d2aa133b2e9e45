/** The sessions that one table holds: who hit on which day in which lesson. */
import { parseDate } from "../cells/date.ts";
import { isBlank } from "../cells/number.ts";

/** Rows that belong together. Null where no column tells. */
export interface Group {
  readonly player: string | null;
  /** `2026-10-12` */
  readonly date: string | null;
  readonly session: string | null;
  /** The blocks that its rows name, as far as they are few. */
  readonly blocks: ReadonlySet<string>;
  rows: number;
}

/** Places of the columns that part the table, from 0; undefined where there is none. */
export interface GroupColumns {
  readonly player: number | undefined;
  readonly date: number | undefined;
  readonly session: number | undefined;
  /** Not one that parts the table. */
  readonly block: number | undefined;
}

/** More than a plan has. */
const MOST_BLOCKS = 100;

interface Found {
  readonly player: string | null;
  /** In both readings. */
  readonly date: string | null;
  readonly session: string | null;
  readonly blocks: Set<string>;
  rows: number;
}

/** What a row says in the columns that part the table. */
type GroupTexts = Readonly<Record<"player" | "date" | "session", string | null>>;

/** More sessions than this are not proposed. */
export const MOST_GROUPS = 2000;

function textAt(cells: readonly string[], place: number | undefined): string | null {
  const text = place === undefined ? "" : (cells[place] ?? "").trim();
  return isBlank(text) ? null : text;
}

/** Collects the groups row by row. Days and months are told apart when all rows were seen. */
export class Groups {
  /** Whether dates may be read so. */
  canBe = { dayFirst: true, monthFirst: true };
  isOrderNeeded = false;
  /** Whether there are more groups than are listed. */
  isCut = false;
  /** Every player's name or code, as written. */
  readonly players = new Set<string>();
  readonly #columns: GroupColumns;
  readonly #found = new Map<string, Found>();
  #last: { readonly texts: GroupTexts; readonly found: Found | undefined } | undefined;

  constructor(columns: GroupColumns) {
    this.#columns = columns;
  }

  add(cells: readonly string[]): void {
    const { player, date, session, block } = this.#columns;
    const texts: GroupTexts = {
      player: textAt(cells, player),
      date: textAt(cells, date),
      session: textAt(cells, session),
    };
    // Rows of one group mostly stand together.
    const last = this.#last;
    const isSame =
      texts.player === last?.texts.player &&
      texts.date === last.texts.date &&
      texts.session === last.texts.session;
    const found = isSame ? last?.found : this.#groupOf(texts);
    if (!isSame) this.#last = { texts, found };
    if (found === undefined) return;
    found.rows++;
    const text = textAt(cells, block);
    if (text !== null && found.blocks.size < MOST_BLOCKS) found.blocks.add(text);
  }

  /** Undefined where there are too many. */
  #groupOf({ player, date: dateText, session }: GroupTexts): Found | undefined {
    if (player !== null) this.players.add(player);
    const day = dateText === null ? undefined : parseDate(dateText);
    if (day !== undefined) {
      this.canBe.dayFirst &&= day.dayFirst !== undefined;
      this.canBe.monthFirst &&= day.monthFirst !== undefined;
      this.isOrderNeeded ||= day.dayFirst !== day.monthFirst;
    }
    // Without the time that may follow a date.
    const date = day === undefined ? null : `${day.dayFirst ?? ""}|${day.monthFirst ?? ""}`;
    const key = JSON.stringify([player, date, session]);
    let found = this.#found.get(key);
    if (found === undefined) {
      if (this.#found.size >= MOST_GROUPS) {
        this.isCut = true;
        return undefined;
      }
      found = { player, date, session, blocks: new Set(), rows: 0 };
      this.#found.set(key, found);
    }
    return found;
  }

  /** What to ask where both readings of the dates remain and make a difference, or neither does: the day is taken to stand first. */
  get dateDoubt(): string | null {
    const { dayFirst, monthFirst } = this.canBe;
    if (!this.isOrderNeeded || dayFirst !== monthFirst) return null;
    return dayFirst
      ? "Does the day or the month stand first? No row tells."
      : "Does the day or the month stand first? Some dates can only be read the one way, others only the other. Rows whose date cannot be read are left out: mend them in the table.";
  }

  get isMonthFirst(): boolean {
    return this.canBe.monthFirst && !this.canBe.dayFirst;
  }

  /**
   * Whether each session's name is one player's on one day. Where one is several, the column of names tells sessions apart
   * only together with the others, and none can be called so.
   */
  get areSessionNamesUnique(): boolean {
    const named = this.#whole().flatMap(({ session }) => session ?? []);
    return new Set(named).size === named.length;
  }

  /** In the order in which they were met. Rows that say nothing in a column that parts the table are nobody's. */
  list(): Group[] {
    const isNamed = this.areSessionNamesUnique;
    const groups = new Map<string, Group & { readonly blocks: Set<string> }>();
    for (const { player, date, session, blocks, rows } of this.#whole()) {
      const [dayFirst = "", monthFirst = ""] = date?.split("|") ?? [];
      const day = (this.isMonthFirst ? monthFirst : dayFirst || monthFirst) || null;
      const name = isNamed ? session : null;
      const key = JSON.stringify([player, day, name]);
      const group = groups.get(key);
      if (group === undefined)
        groups.set(key, { player, date: day, session: name, blocks: new Set(blocks), rows });
      else {
        group.rows += rows;
        for (const block of blocks) group.blocks.add(block);
      }
    }
    return [...groups.values()];
  }

  #whole(): Found[] {
    const { player, date, session } = this.#columns;
    return [...this.#found.values()].filter(
      (group) =>
        (player === undefined || group.player !== null) &&
        (date === undefined || group.date !== null) &&
        (session === undefined || group.session !== null),
    );
  }
}
