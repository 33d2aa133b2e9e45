import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  pseudomedian,
  pseudomedianLimits,
  shift,
  shiftLimits,
} from "../../shared/statistics/hodges-lehmann.ts";
import { type Interval, slackOf } from "../../shared/statistics/interval.ts";
import { rankSumLimit } from "../../shared/statistics/rank-sum.ts";
import { signedRankLimit } from "../../shared/statistics/signed-rank.ts";
import { kthSmallest } from "../../shared/statistics/sorted-grid.ts";
import { median } from "../../shared/statistics/summary.ts";
import { judgeByLimits } from "../../shared/statistics/verdict.ts";
import { expectNear, numberIn, numbersIn, optionalNumberIn, oracleRows } from "../support/oracle.ts";
import { shotsFrom, unlimited } from "./samples.ts";

const tolerance = { relative: 1e-9 };
const nowhere: Interval = { low: -unlimited, high: unlimited };

describe("one block: the reference table", () => {
  const columns = [
    "id",
    "data",
    "n",
    "confidence",
    "pseudomedian",
    "rank_from_each_end",
    "lower_each_side_C",
    "upper_each_side_C",
    "confidence_reached_each_side",
  ] as const;

  test.each(oracleRows("statistics/hodges_lehmann_one_sample.csv", columns))("$id at $confidence", (row) => {
    const values = numbersIn(row.data);
    const confidence = numberIn(row.confidence);
    expectNear(pseudomedian(values), numberIn(row.pseudomedian), tolerance, row);

    const limit = signedRankLimit(numberIn(row.n), confidence);
    expect(limit?.rank ?? 0).toBe(numberIn(row.rank_from_each_end));
    const reached = optionalNumberIn(row.confidence_reached_each_side);
    if (reached !== undefined) expectNear(limit?.reached, reached, { absolute: 1e-12 }, row);

    const limits = pseudomedianLimits(values, confidence) ?? nowhere;
    expectLimits(limits, numberIn(row.lower_each_side_C), numberIn(row.upper_each_side_C), row);
  });
});

describe("two blocks: the reference table", () => {
  const columns = [
    "id",
    "baseline",
    "now",
    "confidence",
    "shift_now_minus_baseline",
    "rank_from_each_end",
    "lower_each_side_C",
    "upper_each_side_C",
    "confidence_reached_each_side",
    "gain_at_least",
    "verdict",
  ] as const;

  test.each(oracleRows("statistics/hodges_lehmann_shift.csv", columns))("$id at $confidence", (row) => {
    const [baseline, now] = [numbersIn(row.baseline), numbersIn(row.now)];
    const confidence = numberIn(row.confidence);
    expectNear(shift(baseline, now), numberIn(row.shift_now_minus_baseline), tolerance, row);

    const limit = rankSumLimit(baseline.length, now.length, confidence);
    expect(limit?.rank ?? 0).toBe(numberIn(row.rank_from_each_end));
    const reached = optionalNumberIn(row.confidence_reached_each_side);
    if (reached !== undefined) expectNear(limit?.reached, reached, { absolute: 1e-12 }, row);

    const limits = shiftLimits(baseline, now, confidence) ?? nowhere;
    expectLimits(limits, numberIn(row.lower_each_side_C), numberIn(row.upper_each_side_C), row);

    const claim = { low: numberIn(row.gain_at_least), high: unlimited };
    const limitsAt = (level: number) => shiftLimits(baseline, now, level);
    expect(judgeByLimits(limitsAt, claim, confidence, slackOf(1)).decision).toBe(row.verdict);
  });
});

test("the ranks of the rank-sum law", () => {
  const columns = [
    "n_first",
    "n_second",
    "confidence",
    "rank_from_each_end",
    "confidence_reached_each_side",
  ] as const;
  for (const row of oracleRows("statistics/rank_sum_ranks.csv", columns)) {
    const limit = rankSumLimit(numberIn(row.n_first), numberIn(row.n_second), numberIn(row.confidence));
    expect(limit?.rank ?? 0, JSON.stringify(row)).toBe(numberIn(row.rank_from_each_end));
    const reached = optionalNumberIn(row.confidence_reached_each_side);
    if (reached !== undefined) expectNear(limit?.reached, reached, { absolute: 1e-12 }, row);
  }
});

describe("many shots", () => {
  test("where the laws are no longer counted, the ranks go on as they did", () => {
    for (const confidence of [0.8, 0.9, 0.95, 0.975]) {
      const ranks = [199, 200, 201, 202].map((n) => signedRankLimit(n, confidence)?.rank ?? Number.NaN);
      expectSmooth(ranks);
      const sums = [157, 158, 159, 160].map((n) => rankSumLimit(n, n, confidence)?.rank ?? Number.NaN);
      expectSmooth(sums);
    }
  });

  test("the limits of a thousand shots are those of all pairs written down", () => {
    const { normal } = shotsFrom(3);
    const before = Array.from({ length: 70 }, normal);
    const after = Array.from({ length: 80 }, () => normal() + 0.5);
    const pairs = after.flatMap((y) => before.map((x) => y - x)).sort((a, b) => a - b);
    const rank = rankSumLimit(70, 80, 0.9)?.rank ?? Number.NaN;
    expect(shiftLimits(before, after, 0.9)).toEqual({ low: pairs[rank - 1], high: pairs[5600 - rank] });
    expect(shift(before, after)).toBe(median(pairs));
  });

  test("ten thousand shots", () => {
    const { normal } = shotsFrom(5);
    const values = Array.from({ length: 10_000 }, () => 150 + 6 * normal());
    const limits = pseudomedianLimits(values, 0.9);
    // 1.2816·6·√(π/3)/√10000, Hodges–Lehmann's efficiency for normal shots being 3/π
    expectNear(limits && (limits.high - limits.low) / 2, 0.0787, { relative: 0.05 }, {});
    expect(pseudomedian(values)).toBeGreaterThan(limits?.low ?? Number.NaN);
  });

  /** Second differences of a rank that grows with a little more than n: none jumps. */
  function expectSmooth([a, b, c, d]: readonly number[]) {
    const [first, second, third] = [diff(b, a), diff(c, b), diff(d, c)];
    expect(Math.abs(second - first)).toBeLessThanOrEqual(2);
    expect(Math.abs(third - second)).toBeLessThanOrEqual(2);
    expect(first).toBeGreaterThan(50);
  }

  function diff(later: number | undefined, earlier: number | undefined) {
    return (later ?? Number.NaN) - (earlier ?? Number.NaN);
  }
});

test("the k-th entry of a sorted grid, with equal entries and without", () => {
  const list = fc.array(fc.integer({ min: -5, max: 5 }), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(list, list, fc.boolean(), (one, other, onlyUpper) => {
      const [rows, columns] = [one.sort((a, b) => a - b), other.sort((a, b) => a - b)];
      const first = (row: number) => (onlyUpper ? Math.min(row, columns.length) : 0);
      const entries = rows.flatMap((x, row) => columns.slice(first(row)).map((y) => x * 0.1 + y * 0.3));
      const sorted = entries.sort((a, b) => a - b);
      const at = (row: number, column: number) => (rows[row] ?? 0) * 0.1 + (columns[column] ?? 0) * 0.3;
      const grid = {
        rows: Math.min(rows.length, onlyUpper ? columns.length : 99),
        columns: columns.length,
        first,
        at,
      };
      for (let k = 1; k <= sorted.length; k++) expect(kthSmallest(grid, k)).toBe(sorted[k - 1]);
      expect(kthSmallest(grid, sorted.length + 1)).toBeNaN();
      expect(kthSmallest(grid, 0)).toBeNaN();
    }),
  );
});

test("no shots, or a confidence that is none", () => {
  expect(pseudomedian([])).toBeUndefined();
  expect(pseudomedianLimits([], 0.8)).toBeUndefined();
  expect(pseudomedianLimits([1, 2, 3], 0.3)).toBeUndefined();
  expect(shift([], [1])).toBeUndefined();
  expect(shiftLimits([1], [], 0.8)).toBeUndefined();
  expect(shiftLimits([1, 2], [3, 4], 1)).toBeUndefined();
  expect(signedRankLimit(1000, 1)).toBeUndefined();
});

function expectLimits({ low, high }: Interval, expectedLow: number, expectedHigh: number, row: object) {
  if (Number.isFinite(expectedLow)) expectNear(low, expectedLow, tolerance, row);
  else expect(low).toBe(expectedLow);
  if (Number.isFinite(expectedHigh)) expectNear(high, expectedHigh, tolerance, row);
  else expect(high).toBe(expectedHigh);
}
