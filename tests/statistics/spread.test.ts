import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bonettLimits } from "../../shared/statistics/bonett.ts";
import { slackOf } from "../../shared/statistics/interval.ts";
import { spreadLimits } from "../../shared/statistics/spread.ts";
import { judgeByLimits } from "../../shared/statistics/verdict.ts";
import { expectNear, numberIn, numbersIn, optionalNumberIn, oracleRows } from "../support/oracle.ts";
import { sampleIn, unlimited } from "./samples.ts";

const slack = slackOf(1);

describe("the reference table", () => {
  const columns = [
    "id",
    "data",
    "sd",
    "confidence",
    "chisq_lower",
    "chisq_upper",
    "bonett_lower",
    "bonett_upper",
    "limit_at_most",
    "verdict_chisq",
  ] as const;

  test.each(oracleRows("statistics/sd_intervals.csv", columns))("$id at $confidence", (row) => {
    const relative = 1e-9;
    const sample = sampleIn(row.data);
    const confidence = numberIn(row.confidence);
    expectNear(sample.sd, numberIn(row.sd), { relative }, row);

    const limits = spreadLimits(sample, confidence);
    expectNear(limits?.low, numberIn(row.chisq_lower), { relative }, row);
    expectNear(limits?.high, numberIn(row.chisq_upper), { relative }, row);

    const sturdy = bonettLimits(numbersIn(row.data), confidence);
    const [low, high] = [optionalNumberIn(row.bonett_lower), optionalNumberIn(row.bonett_upper)];
    if (low === undefined || high === undefined) expect(sturdy).toBeUndefined();
    else {
      expectNear(sturdy?.low, low, { relative }, row);
      expectNear(sturdy?.high, high, { relative }, row);
    }

    const claim = { low: -unlimited, high: numberIn(row.limit_at_most) };
    expect(judge(sample, claim, confidence).decision).toBe(row.verdict_chisq);
  });
});

test("the factors of the limits", () => {
  const columns = ["n", "confidence", "lower_factor", "upper_factor"] as const;
  for (const row of oracleRows("statistics/sd_factors.csv", columns)) {
    const limits = spreadLimits({ n: numberIn(row.n), sd: 1 }, numberIn(row.confidence));
    expectNear(limits?.low, numberIn(row.lower_factor), { relative: 1e-12 }, row);
    expectNear(limits?.high, numberIn(row.upper_factor), { relative: 1e-12 }, row);
  }
});

test("under 6 yd at 90 % with 10 shots needs an observed spread below 4.08 yd", () => {
  const claim = { low: -unlimited, high: 6 };
  expect(judge({ n: 10, sd: 4.07 }, claim, 0.9).decision).toBe("met");
  expect(judge({ n: 10, sd: 4.09 }, claim, 0.9).decision).toBe("undecided");
  expect(judge({ n: 10, sd: 7.7 }, claim, 0.9).decision).toBe("missed");
});

test("one shot, or a confidence that is none, has no limits; equal readings have them at zero", () => {
  expect(spreadLimits({ n: 1, sd: undefined }, 0.9)).toBeUndefined();
  expect(spreadLimits({ n: 10, sd: 2 }, 1)).toBeUndefined();
  expect(spreadLimits({ n: 10, sd: 2 }, 0.4)).toBeUndefined();
  expect(spreadLimits({ n: 5, sd: 0 }, 0.9)).toEqual({ low: 0, high: 0 });
  expect(bonettLimits([2, 2, 2, 2], 0.9)).toBeUndefined();
  expect(bonettLimits([2, 3, 2], 0.9)).toBeUndefined();
  expect(bonettLimits([2, 3, 2, 5], 1)).toBeUndefined();
});

test("Bonett's limits widen with a wild shot more than the standard deviation does", () => {
  const calm = [-3, -2, -2, -1, -1, 0, 0, 1, 1, 2, 2, 3];
  const wild = [...calm.slice(0, -1), 14];
  const width = (values: number[]) => {
    const limits = bonettLimits(values, 0.9);
    return limits && limits.high / limits.low;
  };
  expect(width(wild)).toBeGreaterThan((width(calm) ?? Number.NaN) * 1.3);
});

test("the limits scale with the shots and keep what is below and above", () => {
  const n = fc.integer({ min: 2, max: 60 });
  const sd = fc.double({ min: 0.01, max: 50, noNaN: true });
  fc.assert(
    fc.property(n, sd, fc.constantFrom(0.6, 0.8, 0.9, 0.95), (shots, spread, confidence) => {
      const limits = spreadLimits({ n: shots, sd: spread }, confidence);
      const unit = spreadLimits({ n: shots, sd: 1 }, confidence);
      expectNear(limits?.low, (unit?.low ?? Number.NaN) * spread, { relative: 1e-12 }, {});
      expect(limits?.low).toBeLessThan(limits?.high ?? Number.NaN);
    }),
  );
});

function judge(
  sample: Parameters<typeof spreadLimits>[0],
  claim: { low: number; high: number },
  confidence: number,
) {
  return judgeByLimits((level) => spreadLimits(sample, level), claim, confidence, slack);
}
