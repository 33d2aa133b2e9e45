/** Rows of statistics among the shots of a table: `Average`, `Std dev`, and `Max` or `Total` beside them, `Count: 20`. */

import { fold } from "../../../shared/fold.ts";
import { type Lookup, remembered } from "../spelling.ts";

/**
 * Tells rows of statistics from shots, in their order. Rows that may be statistics are held until it is clear; all others
 * are passed on at once. Linear in rows.
 */
export class StatisticRows<Row> {
  readonly #cellsOf: (row: Row) => readonly string[];
  readonly #shot: (row: Row) => void;
  readonly #statistic: (row: Row) => void;
  #run: Row[] = [];
  #isUnmistakable = false;
  /** Words that may head a statistic and headed a shot. */
  readonly #ofShots = new Set<string>();

  constructor(
    cellsOf: (row: Row) => readonly string[],
    shot: (row: Row) => void,
    statistic: (row: Row) => void,
  ) {
    this.#cellsOf = cellsOf;
    this.#shot = shot;
    this.#statistic = statistic;
  }

  /** Whether the row was passed on as a shot, or its neighbours tell what it is: it is held, or was, or another before it. */
  push(row: Row): "shot" | "held" {
    const cells = this.#cellsOf(row);
    const text = firstText(cells);
    if (isCount(cells)) {
      this.#isUnmistakable ||= this.#run.length > 1;
      this.end();
      this.#statistic(row);
      return "held";
    }
    const kind = statisticIn(text);
    if (kind === undefined) {
      this.end();
      this.#shot(row);
      return "shot";
    }
    const word = fold(text);
    const before = this.#run.at(-1);
    // A word heads no two statistics in a row: it is a name or a kind, as `range` of balls.
    if (kind === "beside" && before !== undefined && this.#wordOf(before) === word) {
      this.#run.pop();
      this.end();
      this.#shotOf(word, before);
    }
    if (this.#ofShots.has(word)) {
      this.end();
      this.#shot(row);
    } else {
      this.#run.push(row);
      this.#isUnmistakable ||= kind === "statistic";
    }
    return "held";
  }

  /** Whether there are rows of which it is not clear what they are. */
  get isHolding(): boolean {
    return this.#run.length > 0;
  }

  /** Nothing more will come, or a shot that nobody asks for. */
  end(): void {
    if (this.#run.length === 0) return;
    const run = this.#run;
    const isStatistic = this.#isUnmistakable;
    this.#run = [];
    this.#isUnmistakable = false;
    for (const row of run) {
      if (isStatistic) this.#statistic(row);
      else this.#shotOf(this.#wordOf(row), row);
    }
  }

  #shotOf(word: string, row: Row): void {
    this.#ofShots.add(word);
    this.#shot(row);
  }

  #wordOf(row: Row): string {
    return fold(firstText(this.#cellsOf(row)));
  }
}

/** Words that head a statistic, folded. */
const STATISTICS = new Set(
  "average averages avg mean median stdev stddev sd standarddeviation mittelwert durchschnitt standardabweichung stdabw moyenne médiane écarttype media mediana promedio gemiddelde gemiddeld medel medelvärde gjennomsnitt ø μ σ".split(
    " ",
  ),
);
/** Words that may stand beside such a word, and leave it what it is: `Average of 6 shots`, `7 iron avg`, `Mean (yd)`. */
const AROUND_STATISTICS =
  /^(?:\d+|of|the|for|by|per|all|over|last|best|total|overall|club|group|set|session|today|shots|balls|n|p|m|ft|yds?|deg|mph|rpm|\p{L}\d{1,2}|\d{1,2}\p{L}{1,2}|dr|[apgslw]w|irons?|woods?|hybrid|wedge|driver|eisen|holz|fer|bois)$/u;
/** Words that head a statistic when they stand beside one of those; alone they may be anything. */
const BESIDE_STATISTICS = new Set(
  "min minimum max maximum range sum total count variance deviation best worst summe spannweite varianz streuung anzahl bester schlechtester".split(
    " ",
  ),
);

const LONGEST_WORD = 32;
const statisticNamed: Lookup = remembered((text) => {
  const word = fold(text);
  if (STATISTICS.has(word)) return "statistic";
  if (BESIDE_STATISTICS.has(word)) return "beside";
  const plain = text.normalize("NFKC").toLowerCase();
  const words =
    plain.replace(/\b(?:st|std|standard)[.\s]*dev(?:iation)?\b/, "stdev").match(/[\p{L}\p{N}]+/gu) ?? [];
  const around = words.filter((word) => !STATISTICS.has(word));
  const isOne = around.length < words.length && around.every((word) => AROUND_STATISTICS.test(word));
  return isOne ? "statistic" : undefined;
});

/** What a row that begins with this text may be: a `statistic` for certain, or `beside` one; undefined where it is neither. */
function statisticIn(text: string): string | undefined {
  const isNumber = text.charCodeAt(0) <= 0x39 && !(text.includes(" ") && /\p{L}\p{L}/u.test(text)); // most rows begin with one, or a time
  const mayBe = text.length <= LONGEST_WORD && !isNumber;
  return mayBe ? statisticNamed(text) : undefined;
}

/** What is counted. In the singular it may be the name of a shot: `Shot 12`. */
const COUNTED = "count|shots|balls|schläge|schlaege|bälle|baelle|anzahl|coups|balles|golpes|slagen|rows";
const COUNT = new RegExp(
  String.raw`^(?:(?:(?:total|number|no|of|all) )*(?:${COUNTED})(?: total| count)?(?: =)?|n =) \d{1,7}$|^\d{1,7} (?:${COUNTED})(?: total)?$`,
);
const LONGEST_COUNT = 32;

/** Whether all that a row says is a number of shots, in one cell or two: `n=20`, `Count: 20`, `20 shots`, `Shots` beside 20. */
function isCount(cells: readonly string[]): boolean {
  if (isOfMoreThanTwo(cells)) return false;
  const stated = cells.map((cell) => cell.trim()).filter((text) => text !== "");
  if (stated.some((text) => text.length > LONGEST_COUNT)) return false;
  const words = stated
    .join(" ")
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[:=\s]*[:=][:=\s]*/g, " = ")
    .replace(/[^\p{L}\p{N}=]+/gu, " ");
  return COUNT.test(words.trim());
}

/** Most rows have three cells that are not blank among the first. */
function isOfMoreThanTwo(cells: readonly string[]): boolean {
  let stated = 0;
  for (const cell of cells) if (cell !== "" && cell.trim() !== "" && ++stated > 2) return true;
  return false;
}

export function firstText(cells: readonly string[]): string {
  for (const cell of cells) {
    const text = cell.trim();
    if (text !== "") return text;
  }
  return "";
}
