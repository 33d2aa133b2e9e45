/**
 * The centre of one block, and the shift between two, by ranks (Hodges & Lehmann 1963): medians of all averages of two
 * shots, and of all differences between a shot now and one before. Used where the median is asked for.
 *
 * The limits are K-th smallest and K-th largest of them. The pseudomedian is the median only where the shots are
 * symmetric about their centre; the shift assumes that the two blocks differ by nothing else.
 *
 * O(n log n): the averages and differences are searched, not written down. Up to 10,000 shots in each block take about a
 * fifth of a second.
 */
import type { Interval } from "./interval.ts";
import type { RankLimit } from "./percentile.ts";
import { rankSumLimit } from "./rank-sum.ts";
import { signedRankLimit } from "./signed-rank.ts";
import { kthSmallest, type SortedGrid } from "./sorted-grid.ts";
import { ascending } from "./summary.ts";

/** The median of the averages of each two shots, and of each shot with itself; `undefined` without values. */
export function pseudomedian(values: readonly number[]): number | undefined {
  return values.length === 0 ? undefined : medianOf(walshAverages(values));
}

/**
 * The true pseudomedian is below `low`, or above `high`, with probability at most 1 − confidence each; `undefined` with
 * too few shots for it, or a confidence outside 0.5 … 1.
 */
export function pseudomedianLimits(values: readonly number[], confidence: number): Interval | undefined {
  const limit = signedRankLimit(values.length, confidence);
  return limit && limitsOf(walshAverages(values), limit);
}

/** The median of the differences of each shot now and each of the baseline; `undefined` where either has none. */
export function shift(baseline: readonly number[], now: readonly number[]): number | undefined {
  return baseline.length === 0 || now.length === 0 ? undefined : medianOf(differences(baseline, now));
}

/**
 * The true shift, now − baseline, is below `low`, or above `high`, with probability at most 1 − confidence each;
 * `undefined` with too few shots for it, or a confidence outside 0.5 … 1.
 */
export function shiftLimits(
  baseline: readonly number[],
  now: readonly number[],
  confidence: number,
): Interval | undefined {
  const limit = rankSumLimit(baseline.length, now.length, confidence);
  return limit && limitsOf(differences(baseline, now), limit);
}

/** A grid and the number of its entries. */
type Counted = SortedGrid & { readonly size: number };

function walshAverages(values: readonly number[]): Counted {
  const sorted = ascending(values);
  const n = sorted.length;
  return {
    size: (n * (n + 1)) / 2,
    rows: n,
    columns: n,
    first: (row) => row,
    at: (row, column) => (at(sorted, row) + at(sorted, column)) / 2,
  };
}

function differences(baseline: readonly number[], now: readonly number[]): Counted {
  const before = ascending(baseline);
  const after = ascending(now);
  const last = before.length - 1;
  return {
    size: before.length * after.length,
    rows: after.length,
    columns: before.length,
    first: () => 0,
    at: (row, column) => at(after, row) - at(before, last - column),
  };
}

function medianOf(grid: Counted): number {
  const lower = kthSmallest(grid, Math.ceil(grid.size / 2));
  const upper = grid.size % 2 === 1 ? lower : kthSmallest(grid, grid.size / 2 + 1);
  return (lower + upper) / 2;
}

function limitsOf(grid: Counted, { rank }: RankLimit): Interval {
  return { low: kthSmallest(grid, rank), high: kthSmallest(grid, grid.size + 1 - rank) };
}

function at(values: readonly number[], index: number): number {
  return values[index] ?? Number.NaN;
}
