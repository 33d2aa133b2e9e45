/** Reading the column of one metric. */
import { oppositeOf } from "../../../shared/interval.ts";
import type { Hand, Metric, ScoringInput, Source, Unit } from "../../../shared/plan-model.ts";
import { formatReading } from "../../../shared/quantity.ts";
import type { DataFinding } from "../../../shared/session-data.ts";
import { type BoundMetric, stateHand } from "../columns.ts";
import { quote, type Report } from "../finding.ts";
import type { TableRow } from "../table/table.ts";
import { blankTest } from "./blank.ts";
import { type DecimalMark, decimalsOf, parseNumber, plainText } from "./number.ts";
import { minusBeside, type Notation, readCell } from "./reading.ts";

/** What a last digit is worth behind so many decimals. */
const TENTHS = [1, 1e-1, 1e-2, 1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8, 1e-9];

/**
 * A function that reads one column's cell in a row and adds the reading to `values`, unless the metric has one there
 * already, and half of its last digit to `roundings`, both in SI. What cannot be read, or is not plausible, is reported; the latter is added all the same.
 */
export function metricReader(column: BoundMetric, source: Source, input: ScoringInput, report: Report) {
  const { metric: name, unit, positive, sides, sidesIn } = column.content;
  const metric = input.metrics.get(name);
  const { hand } = input.player;
  const directions = metric?.directions ?? [];
  const { decimal, thousands } = source;
  const notation: Notation = { decimal, thousands, unit, positive, directions, sides, hand };
  const isBlank = blankTest(source);
  const plausible = metric && plausibleRange(metric, hand, unit);
  const complain: Complain = (code, line, text, message) =>
    report({
      code,
      severity: "warning",
      line,
      column: column.header,
      text,
      message: `${quote(text)} in column ${quote(column.header)} ${message}`,
    });
  return (
    { cells, line }: TableRow,
    values: Record<string, number>,
    roundings: Record<string, number>,
  ): void => {
    let text = (cells[column.index] ?? "").trim();
    if (isBlank(text)) return;
    if (column.side !== null && parseNumber(text, decimal, thousands) !== 0) {
      const side = (cells[column.side] ?? "").trim();
      if (!isBlank(side)) text = `${text} ${side}`;
      else if (positive === null) {
        complain(
          "cell-unreadable",
          line,
          text,
          `has no side in column ${quote(sidesIn ?? "")}; the reading is left unknown.`,
        );
        return;
      }
    }
    let reading = readCell(text, notation);
    if (reading === "unreadable") {
      text = plainText(text);
      reading = readCell(text, notation);
    }
    if (reading === "blank") return;
    if (reading === "hand-missing") {
      const message = `means a side that depends on the hand, so the reading is left unknown. ${stateHand(input.player)}`;
      complain(reading, line, text, message);
    } else if (reading === "unreadable") {
      const hint = sideBeside(text, notation) ?? otherMark(text, source);
      const message = `is not ${expected(notation)}; the reading is left unknown.${hint}`;
      complain("cell-unreadable", line, text, message);
    } else {
      if (plausible !== undefined && (reading < plausible.low || reading > plausible.high)) {
        const message = `is no plausible ${name}, which lies ${plausible.text}. The reading is kept: check the unit and the sign of the column in source ${quote(source.name)}.`;
        complain("value-implausible", line, text, message);
      }
      if (Object.hasOwn(values, name)) return;
      values[name] = reading;
      roundings[name] = (unit.factor / 2) * (TENTHS[decimalsOf(text, decimal)] ?? 0);
    }
  };
}

type Complain = (code: DataFinding["code"], line: number, text: string, message: string) => void;

/** The plausible readings of a player of this hand, SI and target frame, and in words: `between 0 m and 350 m`. */
function plausibleRange(metric: Metric, hand: Hand | null, unit: Unit) {
  const { plausible, directions } = metric;
  if (plausible === null) return undefined;
  // The range is given for a right-hander; where the metric's words mirror with the hand, so does the range.
  const mirrored = hand === "left" && directions.some((direction) => direction.handed);
  const low = mirrored ? -plausible.high : plausible.low;
  const high = mirrored ? -plausible.low : plausible.high;
  const sayable = { ...metric, directions: directions.filter(({ handed }) => !handed || hand !== null) };
  const [from, to] = [low, high].map((end) => formatReading(end, sayable, hand ?? "right", unit));
  return { low, high, text: `between ${from} and ${to}` };
}

/** `a number in °, which the word right or left may follow` */
function expected({ unit, directions }: Notation): string {
  const number = `a number${unit.symbol === "" ? "" : ` in ${unit.symbol}`}`;
  const words = [...new Set(directions.map((direction) => direction.word))];
  const last = words.pop();
  if (last === undefined) return number;
  return `${number}, which the word ${words.length === 0 ? last : `${words.join(", ")} or ${last}`} may follow`;
}

/** A hint where a minus seems to be written otherwise than in front of the number, and the source does not say so. */
function sideBeside(text: string, { directions, sides, positive }: Notation): string | undefined {
  const minus = minusBeside(text);
  const isSaid = sides.some((side) => side.text.trim() === minus);
  if (minus === undefined || isSaid || directions.length === 0 || /^\W*[+\-−–]/.test(text)) return undefined;
  const side = oppositeOf(positive, directions)?.word ?? "…";
  const what = minus === "()" ? "brackets mean" : "a dash behind the number means";
  return ` If ${what} minus in this table, say which side that is: \`where "${minus}" is ${side}\`.`;
}

/** A hint where the text would be a number if decimals stood after the other mark. */
function otherMark(text: string, source: Source): string {
  if (source.thousands !== null && parseNumber(text, source.decimal) !== undefined)
    return ` Its thousands are not marked by the ${source.thousands} that source ${quote(source.name)} states.`;
  const other: DecimalMark = source.decimal === "comma" ? "point" : "comma";
  return parseNumber(text, other) === undefined
    ? ""
    : ` Where decimals stand after a ${other}, write \`decimal ${other}\` in source ${quote(source.name)}.`;
}
