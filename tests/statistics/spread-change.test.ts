import { describe, expect, test } from "vitest";
import { slackOf } from "../../shared/statistics/interval.ts";
import { spreadLimits } from "../../shared/statistics/spread.ts";
import { spreadDifferenceLimits, spreadRatioLimits } from "../../shared/statistics/spread-change.ts";
import { judgeByLimits } from "../../shared/statistics/verdict.ts";
import { expectNear, numberIn, oracleRows } from "../support/oracle.ts";
import { sampleIn, sampleWith, shotsFrom, unlimited } from "./samples.ts";

const slack = slackOf(1);

describe("the ratio: the reference table", () => {
  const columns = [
    "id",
    "baseline",
    "now",
    "confidence",
    "sd_ratio_now_over_baseline",
    "lower_each_side_C",
    "upper_each_side_C",
    "direction",
  ] as const;

  test.each(oracleRows("statistics/spread_ratio.csv", columns))("$id at $confidence", (row) => {
    const relative = 1e-10;
    const [baseline, now] = [sampleIn(row.baseline), sampleIn(row.now)];
    const limits = spreadRatioLimits(baseline, now, numberIn(row.confidence));
    if (limits === undefined) throw new Error("Both blocks have a spread.");
    const ratio = (now.sd ?? Number.NaN) / (baseline.sd ?? Number.NaN);
    expectNear(ratio, numberIn(row.sd_ratio_now_over_baseline), { relative }, row);
    expectNear(limits.low, numberIn(row.lower_each_side_C), { relative }, row);
    expectNear(limits.high, numberIn(row.upper_each_side_C), { relative }, row);
    const direction = limits.low > 1 ? "rose" : limits.high < 1 ? "fell" : "undecided";
    expect(direction).toBe(row.direction);
  });
});

test("falls by at least 20 %: the whole of the ratio is below 0.8", () => {
  const judge = (sd: number) => {
    const limitsAt = (level: number) => spreadRatioLimits({ n: 20, sd: 6 }, { n: 20, sd }, level);
    return judgeByLimits(limitsAt, { low: -unlimited, high: 0.8 }, 0.8, slack).decision;
  };
  expect(judge(3.5)).toBe("met");
  expect(judge(4.5)).toBe("undecided");
  expect(judge(6)).toBe("missed");
});

describe("the difference", () => {
  const before = { n: 20, sd: 7 };
  const after = { n: 20, sd: 3 };

  test("each limit takes one limit of each spread, at half the error", () => {
    const [old, fresh] = [spreadLimits(before, 0.9), spreadLimits(after, 0.9)];
    expect(spreadDifferenceLimits(before, after, 0.8)).toEqual({
      low: (fresh?.low ?? Number.NaN) - (old?.high ?? Number.NaN),
      high: (fresh?.high ?? Number.NaN) - (old?.low ?? Number.NaN),
    });
  });

  test("falls by at least 2 yd", () => {
    const judge = (fall: number) => {
      const limitsAt = (level: number) => spreadDifferenceLimits(before, after, level);
      return judgeByLimits(limitsAt, { low: -unlimited, high: -fall }, 0.8, slack).decision;
    };
    expect(judge(2)).toBe("met");
    expect(judge(4)).toBe("undecided");
    expect(judge(7)).toBe("missed");
  });

  test("the promise is kept for normal shots: a change that is none is rarely called one", () => {
    const { normal } = shotsFrom(11);
    const block = () => sampleWith(Array.from({ length: 10 }, normal));
    const tries = 3000;
    const wrong = { ratio: 0, difference: 0 };
    for (let trial = 0; trial < tries; trial++) {
      const [old, fresh] = [block(), block()];
      if ((spreadRatioLimits(old, fresh, 0.8)?.high ?? 1) < 1) wrong.ratio++;
      if ((spreadDifferenceLimits(old, fresh, 0.8)?.high ?? 0) < 0) wrong.difference++;
    }
    expect(wrong.ratio / tries).toBeGreaterThan(0.17);
    expect(wrong.ratio / tries).toBeLessThan(0.23);
    expect(wrong.difference / tries).toBeLessThan(0.2);
    expect(wrong.difference).toBeGreaterThan(0);
  });
});

test("single shots, a baseline of equal readings, and a confidence that is none", () => {
  const many = { n: 5, sd: 3 };
  const one = { n: 1, sd: undefined };
  expect(spreadRatioLimits(one, many, 0.9)).toBeUndefined();
  expect(spreadRatioLimits(many, one, 0.9)).toBeUndefined();
  expect(spreadRatioLimits({ n: 5, sd: 0 }, many, 0.9)).toBeUndefined();
  expect(spreadRatioLimits(many, many, 1)).toBeUndefined();
  expect(spreadDifferenceLimits(many, one, 0.9)).toBeUndefined();
  expect(spreadDifferenceLimits(many, many, 0.3)).toBeUndefined();
  expect(spreadRatioLimits(many, { n: 5, sd: 0 }, 0.9)).toEqual({ low: 0, high: 0 });
});
