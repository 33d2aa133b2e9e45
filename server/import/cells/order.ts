/** In which order the shots of a table were hit. */
import type { Source } from "../../../shared/plan-model.ts";
import { quote, type Report } from "../finding.ts";
import type { Hit } from "./hits.ts";
import { moment, timeOfDay } from "./moment.ts";
import { isBlank, parseNumber } from "./number.ts";

type Key = number | string;

/** One way to read the cells of the column, and what to call what it reads. */
interface Kind {
  readonly noun: string;
  readonly key: (text: string) => Key | undefined;
}

/**
 * The shots in the order that a column gives: by number where most of its cells are numbers; else by time of day, or by
 * date and time, where most are that; else as text, in which runs of digits count as numbers. Rows that are equal keep
 * their order. A row without a cell to order it by stays behind the row above it; where there is one that is not like
 * the others, that is reported. Costs n log n comparisons.
 */
export function inOrder(
  hits: readonly Hit[],
  column: string,
  { decimal, thousands }: Source,
  report: Report,
): Hit[] {
  const kind = kindOf(
    hits.map(({ order }) => order).filter((text) => !isBlank(text)),
    (text) => parseNumber(text, decimal, thousands),
  );
  let last: Key | undefined;
  const keyed = hits.map((hit) => {
    const text = hit.order;
    const key = isBlank(text) ? undefined : kind.key(text);
    if (key === undefined && !isBlank(text)) {
      report({
        code: "cell-unreadable",
        severity: "warning",
        line: hit.row.line,
        column,
        text,
        message: `${quote(text)} in column ${quote(column)} is no ${kind.noun} as in the other rows, so this shot was put behind the one above it.`,
      });
    }
    last = key ?? last;
    return { hit, key: last };
  });
  return keyed.sort((one, other) => compare(one.key, other.key)).map(({ hit }) => hit);
}

function kindOf(texts: readonly string[], number: (text: string) => number | undefined): Kind {
  const kinds: Kind[] = [
    { noun: "number", key: number },
    { noun: "time of day", key: timeOfDay },
    { noun: "date with a time", key: moment },
  ];
  const most = kinds.find(({ key }) => {
    const read = texts.filter((text) => key(text) !== undefined).length;
    return read > texts.length / 2;
  });
  return most ?? { noun: "text", key: padded };
}

/** The text with its numbers padded, so that 9 comes before 10. */
function padded(text: string): string {
  return text.toLowerCase().replace(/\d+/g, (digits) => digits.padStart(20, "0"));
}

/** Keys of one column are all numbers or all texts; rows before the first key come first. */
function compare(one: Key | undefined, other: Key | undefined): number {
  if (one === other) return 0;
  if (one === undefined) return -1;
  if (other === undefined) return 1;
  return one < other ? -1 : 1;
}
