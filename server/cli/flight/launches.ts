/** Launches from options or from a table. */
import type { Source } from "../../../shared/plan-model.ts";
import { LAUNCH } from "../../flight/measured-launch.ts";
import { parseHeader } from "../../import/propose/header.ts";
import { TextDecoding } from "../../import/table/decode.ts";
import { TableReader, type TableRow } from "../../import/table/table.ts";
import { UsageError } from "../command.ts";
import type { AmountReader, Column } from "./amounts.ts";

/** What can be stated of a launch, as options and as columns. */
export const LAUNCH_METRICS = [
  ...LAUNCH,
  "carry",
  "dynamic-loft",
  "face-angle",
  "attack-angle",
  "club-path",
] as const;
export type LaunchMetric = (typeof LAUNCH_METRICS)[number];

export interface StatedLaunch {
  /** Line of the table, from 1; null for the launch of the options. */
  readonly line: number | null;
  /** SI, target frame. What was not stated, or cannot be read, is missing. */
  readonly values: Readonly<Record<string, number>>;
  /** What could not be read: sentences. */
  readonly problems: readonly string[];
}

export type LaunchOptions = Readonly<Record<LaunchMetric, string | undefined>>;

/** The values that the options state. @throws UsageError where one cannot be read. */
export function valuesIn(options: LaunchOptions, amounts: AmountReader): Record<string, number> {
  const values: Record<string, number> = {};
  for (const name of LAUNCH_METRICS) {
    const text = options[name];
    if (text === undefined) continue;
    const amount = amounts.ofMetric(text, name);
    if (typeof amount !== "number") {
      throw new UsageError(
        `--${name} says "${text}", which ${amount === "blank" ? "is empty" : amount.problem}.`,
      );
    }
    values[name] = amount;
  }
  return values;
}

export interface LaunchTable {
  readonly launches: readonly StatedLaunch[];
  /** Headers of columns that say nothing about a launch. */
  readonly passedOver: readonly string[];
  /** Why the table cannot be read; null where it can. */
  readonly error: string | null;
}

/**
 * The launches of a table: delimited text or JSON, whose columns are named as metrics are, with the unit in the header
 * (`ball-speed in m/s`, `Ball Speed (mph)`) or in every cell. `stated` fills columns that are not there.
 */
export function launchesIn(
  bytes: Uint8Array,
  stated: Readonly<Record<string, number>>,
  amounts: AmountReader,
): LaunchTable {
  let error: string | null = null;
  let names: readonly string[] = [];
  const rows: TableRow[] = [];
  const reader = new TableReader(
    SOURCE,
    ({ severity, message }) => {
      if (severity === "error") error ??= message;
    },
    {
      header: (header) => {
        names = header.names;
        return true;
      },
      row: (row) => void rows.push(row),
    },
  );
  const decoding = new TextDecoding();
  reader.push(decoding.push(bytes));
  reader.push(decoding.end());
  reader.end();
  const columns = names.map((name) => columnOf(name, amounts));
  const doubled = LAUNCH_METRICS.find(
    (metric) => columns.filter((column) => column?.metric === metric).length > 1,
  );
  if (doubled !== undefined) error ??= `The table has two columns for ${doubled}: leave one out.`;
  if (error === null && columns.every((column) => column === undefined)) {
    error = `No column of the table is named as a metric of a launch: ${LAUNCH_METRICS.slice(0, 5).join(", ")}.`;
  }
  return {
    launches: error === null ? rows.map((row) => launchOf(row, columns, stated, amounts)) : [],
    passedOver: names.filter((name, index) => name.trim() !== "" && columns[index] === undefined),
    error,
  };
}

interface LaunchColumn extends Column {
  readonly metric: LaunchMetric;
}

function columnOf(header: string, amounts: AmountReader): LaunchColumn | undefined {
  const { words, unit, positive } = parseHeader(header);
  const metric = LAUNCH_METRICS.find((name) => name === words.join("-"));
  if (metric === undefined) return undefined;
  const declared = amounts.metricCalled(metric);
  return {
    metric,
    unit: (unit === undefined ? undefined : amounts.unitOf(unit, declared)) ?? null,
    positive:
      declared.directions.find(({ word }) => positive !== undefined && word.startsWith(positive)) ?? null,
  };
}

function launchOf(
  { line, cells }: TableRow,
  columns: readonly (LaunchColumn | undefined)[],
  stated: Readonly<Record<string, number>>,
  amounts: AmountReader,
): StatedLaunch {
  const values: Record<string, number> = { ...stated };
  const problems: string[] = [];
  for (const [index, column] of columns.entries()) {
    if (column === undefined) continue;
    delete values[column.metric];
    const text = cells[index] ?? "";
    const amount = amounts.ofMetric(text, column.metric, column);
    if (typeof amount === "number") values[column.metric] = amount;
    else if (amount !== "blank") problems.push(`${column.metric} "${text.trim()}" ${amount.problem}.`);
  }
  return { line, values, problems };
}

/** A table as it comes: the header in its first line, numbers with a decimal point. */
const SOURCE: Source = {
  name: "launches",
  separator: null,
  decimal: "point",
  thousands: null,
  blanks: [],
  headerRow: 1,
  columns: [],
  orderedBy: null,
  location: { file: "", range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } } },
};
