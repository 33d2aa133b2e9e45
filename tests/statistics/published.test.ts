/** Against numbers in print, as far as they are printed. */
import { expect, test } from "vitest";
import { conformanceProbability } from "../../shared/statistics/conformance.ts";
import { normalQuantile, studentQuantile } from "../../shared/statistics/distributions.ts";
import { guardBand } from "../../shared/statistics/guard-band.ts";
import { toleranceFactor } from "../../shared/statistics/tolerance-limits.ts";
import { expectNear, numberIn, oracleRows } from "../support/oracle.ts";

const columns = ["what", "inputs", "published", "tolerance"] as const;

/** The published number of an entry, and how near ours must come. */
function published(what: string) {
  const [row] = oracleRows("statistics/published_crosschecks.csv", columns, (r) => r.what.startsWith(what));
  if (row === undefined) throw new Error(`Nothing is published about ${what}.`);
  return { row, value: numberIn(row.published), tolerance: { absolute: numberIn(row.tolerance) } };
}

test("coverage factors of Student's t", () => {
  const rows = oracleRows(
    "statistics/published_crosschecks.csv",
    columns,
    (r) => r.what === "t coverage factor",
  );
  for (const row of rows) {
    const [, degrees, level] = /^df (\d+), two-sided (\S+)$/.exec(row.inputs) ?? [];
    const actual = studentQuantile((1 + Number(level)) / 2, Number(degrees));
    expectNear(actual, numberIn(row.published), { absolute: numberIn(row.tolerance) }, row);
  }
  expect(rows.length).toBeGreaterThan(20);
});

test("the factor of a one-sided normal tolerance limit", () => {
  const { row, value, tolerance } = published("normal tolerance factor, one-sided");
  expect(row.inputs).toContain("n 40, content 0.90, confidence 0.99");
  expectNear(toleranceFactor(40, 0.9, 0.99), value, tolerance, row);
});

test("the scales of the modified z-score", () => {
  const median = published("scale of the modified z-score");
  expectNear(normalQuantile(0.75), median.value, median.tolerance, median.row);
  const mean = published("scale for the mean absolute deviation");
  expectNear(Math.sqrt(Math.PI / 2), mean.value, mean.tolerance, mean.row);
});

test("guard bands", () => {
  const band = published("standard-normal quantile for one-sided 95 % conformity");
  expectNear(guardBand(1, 0.95), band.value, band.tolerance, band.row);
  const risk = published("false acceptance at r = 1");
  const above = conformanceProbability(0, 1, { low: 2, high: Number.POSITIVE_INFINITY }, 0);
  expectNear(above, risk.value, risk.tolerance, risk.row);
});
