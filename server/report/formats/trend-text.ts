/** A trend as text for people. */

import { CAUTION } from "../../../shared/care.ts";
import type { Hand, Metric } from "../../../shared/plan-model.ts";
import { plural } from "../../../shared/plural.ts";
import { formatRange, formatReading } from "../../../shared/quantity.ts";
import type { Trend } from "../overview/trend.ts";
import type { Palette } from "../palette.ts";
import { printable } from "../printable.ts";
import { markWords } from "../section.ts";
import { tableLines } from "./table.ts";

/** What readings are shown by. */
export interface Reading {
  readonly metrics: ReadonlyMap<string, Metric>;
  readonly hand: Hand;
}

export function trendText(trend: Trend, reading: Reading, palette: Palette): string {
  const { plan, player, sessions, goals, averages, confidence } = trend;
  const dates = sessions.map(({ date, name }) => date ?? name);
  const lines = [
    palette.strong(printable(`${player} in "${plan}"`)),
    ...sessions.map(
      ({ name, date, verdict }) =>
        `  ${printable(`${date ?? "no date"}  ${name}  ${verdict === null ? "no goals" : markWords(verdict)}`)}`,
    ),
    ...(new Set(sessions.map(({ planSha256 }) => planSha256)).size > 1
      ? ["  The plan was not the same in all of them."]
      : []),
    "",
    ...goals.flatMap(({ block, text, results }) => [
      palette.strong(printable(`${block}: ${text}`)),
      ...tableLines(
        results.map((result, session) => [
          `  ${dates[session] ?? ""}`,
          result === null ? "not a goal then" : markWords(result.verdict),
          result?.brief ?? "",
        ]),
      ),
    ]),
    "",
    `Averages, with intervals at ${100 * confidence} % confidence, each by itself:`,
    ...averages.flatMap((average) => [
      palette.strong(
        printable(`${average.block}: ${average.metric}${average.isEstimate ? " (estimate)" : ""}`),
      ),
      ...tableLines(
        average.points.map((point, session) => [
          `  ${dates[session] ?? ""}`,
          ...pointCells(point, average.metric, reading),
        ]),
      ),
    ]),
    "",
    CAUTION,
  ];
  return `${lines.join("\n")}\n`;
}

function pointCells(
  point: Trend["averages"][number]["points"][number],
  name: string,
  { metrics, hand }: Reading,
): string[] {
  const metric = metrics.get(name);
  if (point === null || metric === undefined) return ["not measured"];
  const { average, low, high, shots } = point;
  const range =
    low === null || high === null ? "too few shots for an interval" : formatRange(low, high, metric, hand);
  return [formatReading(average, metric, hand), range, plural(shots, "shot")];
}
