import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Interval, isAtMost, slackOf } from "../../shared/statistics/interval.ts";
import {
  fewestShotsForLimits,
  percentileLimits,
  percentileRanks,
  percentileShotsToDecide,
} from "../../shared/statistics/percentile.ts";
import { shareVerdict } from "../../shared/statistics/proportion.ts";
import { judgeByLimits } from "../../shared/statistics/verdict.ts";
import { expectNear, numberIn, numbersIn, optionalNumberIn, oracleRows } from "../support/oracle.ts";
import { unlimited } from "./samples.ts";

const slack = slackOf(1);

test("the ranks of the reference table", () => {
  const columns = [
    "n",
    "percentile",
    "confidence",
    "lower_rank",
    "lower_confidence_reached",
    "upper_rank",
    "upper_confidence_reached",
  ] as const;
  for (const row of oracleRows("statistics/percentile_ranks.csv", columns)) {
    const { low, high } = percentileRanks(
      numberIn(row.n),
      numberIn(row.percentile),
      numberIn(row.confidence),
    );
    expect(low?.rank, JSON.stringify(row)).toBe(optionalNumberIn(row.lower_rank));
    expect(high?.rank, JSON.stringify(row)).toBe(optionalNumberIn(row.upper_rank));
    const absolute = 1e-12;
    if (low) expectNear(low.reached, numberIn(row.lower_confidence_reached), { absolute }, row);
    if (high) expectNear(high.reached, numberIn(row.upper_confidence_reached), { absolute }, row);
  }
});

describe("limits and verdicts of the reference table", () => {
  const columns = [
    "id",
    "data",
    "percentile",
    "confidence",
    "lower_bound",
    "upper_bound",
    "limit_at_most",
    "count_at_or_below",
    "verdict",
  ] as const;

  test.each(oracleRows("statistics/percentile_verdicts.csv", columns))(
    "$id: $percentile at $confidence",
    (row) => {
      const values = numbersIn(row.data);
      const [percentile, confidence] = [numberIn(row.percentile), numberIn(row.confidence)];
      const limit = numberIn(row.limit_at_most);
      const limits = percentileLimits(values, percentile, confidence) ?? { low: -unlimited, high: unlimited };
      expect(limits).toEqual({ low: numberIn(row.lower_bound), high: numberIn(row.upper_bound) });
      expect(judge(values, percentile, atMost(limit), confidence)).toBe(row.verdict);

      const count = values.filter((value) => isAtMost(value, limit, slack)).length;
      expect(count).toBe(numberIn(row.count_at_or_below));
      expect(shareVerdict(count, values.length, percentile, confidence)).toBe(row.verdict);
    },
  );
});

test("a percentile at most T is a share of shots at most T, and one at least T leaves at most the share below", () => {
  const reading = fc.integer({ min: -60, max: 60 }).map((tenths) => tenths / 10);
  const values = fc.array(reading, { minLength: 1, maxLength: 30 });
  const percentile = fc.constantFrom(0.1, 0.25, 0.5, 0.75, 0.9);
  fc.assert(
    fc.property(values, percentile, reading, fc.constantFrom(0.5, 0.8, 0.9), (list, p, limit, confidence) => {
      const n = list.length;
      const upTo = list.filter((value) => value <= limit).length;
      const below = list.filter((value) => value < limit).length;
      expect(judge(list, p, atMost(limit), confidence)).toBe(shareVerdict(upTo, n, p, confidence));
      expect(judge(list, p, atLeast(limit), confidence)).toBe(
        shareVerdict(below, n, p, confidence, "at most"),
      );
    }),
  );
});

describe("the median", () => {
  const starts = [-1.4, 0.2, 0.9, 1.1, 1.2, 1.6, 2.1, 2.4, 3, 7.5];

  test("of ten shots the fourth from either end reaches 82.8 %", () => {
    expect(percentileLimits(starts, 0.5, 0.8)).toEqual({ low: 1.1, high: 2.1 });
    expectNear(percentileRanks(10, 0.5, 0.8).low?.reached, 0.828125, { absolute: 1e-12 }, {});
  });

  test("a range is missed only by the wider limits", () => {
    expect(judge(starts, 0.5, { low: 0, high: 3 }, 0.8)).toBe("met");
    expect(judge(starts, 0.5, { low: 2.2, high: 3 }, 0.8)).toBe("undecided");
    expect(judge(starts, 0.5, { low: 2.5, high: 3 }, 0.8)).toBe("missed");
  });

  test("equal readings at the limit meet it", () => {
    const equal = Array<number>(5).fill(0.1 + 0.2);
    expect(judge(equal, 0.5, atMost(0.3), 0.95)).toBe("met");
  });
});

test("the fewest shots with a limit", () => {
  expect(fewestShotsForLimits(0.5, 0.8)).toEqual({ low: 3, high: 3 });
  expect(fewestShotsForLimits(0.9, 0.9)).toEqual({ low: 1, high: 22 });
  expect(percentileRanks(21, 0.9, 0.9).high).toBeUndefined();
  expect(percentileRanks(22, 0.9, 0.9).high?.rank).toBe(22);
});

test("no shots, or a confidence that is none, have no limits", () => {
  expect(percentileLimits([], 0.5, 0.8)).toBeUndefined();
  expect(percentileLimits([1, 2, 3, 4], 0.5, 0.3)).toBeUndefined();
  expect(percentileLimits([1, 2, 3, 4], 1.5, 0.8)).toBeUndefined();
});

describe("shots that would decide if the player goes on as observed", () => {
  const offline = [3, 4, 5, 6, 7, 8, 9, 12, 15, 21];

  test("the first number of shots at which a share of shots so far decides", () => {
    expect(percentileShotsToDecide(offline, 0.5, atMost(8), 0.8, slack)).toBe(30);
    expect(shareVerdict(Math.floor(0.6 * 30), 30, 0.5, 0.8)).toBe("met");
    expect(shareVerdict(Math.floor(0.6 * 29), 29, 0.5, 0.8)).toBe("undecided");
    expect(percentileShotsToDecide(offline, 0.5, atLeast(12), 0.8, slack)).toBe(10);
  });

  test("a range takes all its ends to be met", () => {
    const both = percentileShotsToDecide(offline, 0.5, { low: 4, high: 8 }, 0.8, slack);
    expect(both).toBe(30);
  });

  test("none when as many shots as the percentile asks for are on either side, or beyond the cap", () => {
    expect(percentileShotsToDecide(offline, 0.5, atMost(7), 0.8, slack)).toBeUndefined();
    expect(percentileShotsToDecide(offline, 0.5, atMost(8), 0.8, slack, 20)).toBeUndefined();
  });
});

function judge(values: readonly number[], percentile: number, claim: Interval, confidence: number) {
  const limitsAt = (level: number) => percentileLimits(values, percentile, level);
  return judgeByLimits(limitsAt, claim, confidence, slack).decision;
}

function atMost(high: number): Interval {
  return { low: -unlimited, high };
}

function atLeast(low: number): Interval {
  return { low, high: unlimited };
}
