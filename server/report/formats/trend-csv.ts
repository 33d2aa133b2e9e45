/** A trend as a table: a row for each number, that spreadsheets can open without harm. */
import { csvLine } from "../../../shared/csv.ts";
import type { Trend } from "../overview/trend.ts";

const HEADER = ["date", "session", "block", "what", "verdict", "value", "low", "high", "unit", "shots"];

/** Averages in the unit of their metric, target frame; the number of a goal as people read it. RFC 4180. */
export function trendCsv({ sessions, goals, averages }: Trend): string {
  const rows = sessions.flatMap(({ date, name }, place) => {
    const head = [date ?? "", name];
    return [
      ...goals.map(({ block, text, results }) => {
        const result = results[place];
        return [...head, block, text, result?.verdict ?? "", result?.brief ?? "", "", "", "", ""];
      }),
      ...averages.map(({ block, metric, unit, points }) => {
        const point = points[place] ?? null;
        const number = (value: number | null | undefined) =>
          value == null ? "" : String(Number((value / unit.factor).toPrecision(6)));
        return [
          ...head,
          block,
          `average ${metric}`,
          "",
          ...[point?.average, point?.low, point?.high].map(number),
          unit.symbol,
          point === null ? "" : String(point.shots),
        ];
      }),
    ];
  });
  return [HEADER, ...rows].map((row) => `${csvLine(row)}\r\n`).join("");
}
