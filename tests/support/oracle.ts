/**
 * Reads the tables of independently computed numbers under `tests/oracles/`.
 *
 * Cells stay text until a test asks for a number, so that an empty cell ("none") is never taken for zero.
 * A table, or the selection a test asks for, without rows is an error: a loop over nothing proves nothing.
 */
import { readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";
import { expect } from "vitest";

export type OracleRow<Column extends string> = Readonly<Record<Column, string>>;

/**
 * The rows of a table.
 * @param table file under `tests/oracles/`, such as `statistics/cdf.csv`
 * @param columns the columns the test reads; each must exist
 * @param where selects rows
 */
export function oracleRows<const Column extends string>(
  table: string,
  columns: readonly Column[],
  where: (row: OracleRow<Column>) => boolean = () => true,
): OracleRow<Column>[] {
  const text = readFileSync(new URL(`../oracles/${table}`, import.meta.url), "utf8");
  const rows = parse<OracleRow<Column>>(text, { columns: true });
  for (const column of columns) {
    if (rows.some((row) => row[column] === undefined)) throw new Error(`${table} has no column "${column}".`);
  }
  const selected = rows.filter(where);
  if (selected.length === 0) throw new Error(`${table} has no row that this test asks for.`);
  return selected;
}

/** A cell that must hold a number; `inf` and `-inf` are numbers. */
export function numberIn(cell: string): number {
  if (cell === "inf") return Number.POSITIVE_INFINITY;
  if (cell === "-inf") return Number.NEGATIVE_INFINITY;
  const value = Number(cell);
  if (cell.trim() === "" || Number.isNaN(value)) throw new Error(`"${cell}" is not a number.`);
  return value;
}

/** A cell that may be empty. */
export function optionalNumberIn(cell: string): number | undefined {
  return cell === "" ? undefined : numberIn(cell);
}

/** A cell with a list of numbers, separated by `;`. */
export function numbersIn(cell: string): number[] {
  return cell.split(";").map(numberIn);
}

/** Expects a number within a relative or absolute tolerance; a failure shows the row. */
export function expectNear(
  actual: number | undefined,
  expected: number,
  tolerance: { readonly relative: number } | { readonly absolute: number },
  row: object,
): void {
  const allowed = "relative" in tolerance ? tolerance.relative * Math.abs(expected) : tolerance.absolute;
  const distance = actual === undefined ? Number.NaN : Math.abs(actual - expected);
  expect(
    distance <= allowed,
    `got ${actual}, expected ${expected} within ${allowed}, for ${JSON.stringify(row)}`,
  ).toBe(true);
}
