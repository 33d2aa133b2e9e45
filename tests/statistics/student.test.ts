import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { slackOf } from "../../shared/statistics/interval.ts";
import {
  meanLimits,
  meanLimitsTwoSided,
  meanShotsToDecide,
  meanVerdict,
} from "../../shared/statistics/student.ts";
import { type Sample, sampleOf } from "../../shared/statistics/summary.ts";
import { expectNear, numberIn, numbersIn, oracleRows } from "../support/oracle.ts";

const slack = slackOf(1);
const Infinite = Number.POSITIVE_INFINITY;

function sample(values: readonly number[]): Sample {
  const found = sampleOf(values);
  if (found === undefined) throw new Error("A sample needs values.");
  return found;
}

describe("the reference table", () => {
  const columns = [
    "id",
    "data",
    "n",
    "mean",
    "sd",
    "confidence",
    "lower_each_side_C",
    "upper_each_side_C",
    "lower_two_sided_C",
    "upper_two_sided_C",
    "limit_low",
    "limit_high",
    "verdict_missed_two_sided",
  ] as const;
  const rows = oracleRows("statistics/mean_intervals.csv", columns);

  test.each(rows)("$id at $confidence", (row) => {
    const tolerance = { relative: row.id.includes("offset") ? 1e-8 : 1e-10 };
    const found = sample(numbersIn(row.data));
    expect(found.n).toBe(numberIn(row.n));
    expectNear(found.mean, numberIn(row.mean), tolerance, row);
    expectNear(found.sd, numberIn(row.sd), tolerance, row);

    const confidence = numberIn(row.confidence);
    const eachSide = meanLimits(found, confidence);
    expectNear(eachSide?.low, numberIn(row.lower_each_side_C), tolerance, row);
    expectNear(eachSide?.high, numberIn(row.upper_each_side_C), tolerance, row);
    const twoSided = meanLimitsTwoSided(found, confidence);
    expectNear(twoSided?.low, numberIn(row.lower_two_sided_C), tolerance, row);
    expectNear(twoSided?.high, numberIn(row.upper_two_sided_C), tolerance, row);

    const claim = { low: numberIn(row.limit_low), high: numberIn(row.limit_high) };
    expect(meanVerdict(found, claim, confidence, slack)).toBe(row.verdict_missed_two_sided);
  });
});

describe("verdicts", () => {
  const carries = sample([159.5, 174.3, 161.1]); // limits each side at 80 %: 160.0 and 169.9

  test("one limit, from either side", () => {
    expect(meanVerdict(carries, { low: 159, high: Infinite }, 0.8, slack)).toBe("met");
    expect(meanVerdict(carries, { low: 165, high: Infinite }, 0.8, slack)).toBe("undecided");
    expect(meanVerdict(carries, { low: 171, high: Infinite }, 0.8, slack)).toBe("missed");
    expect(meanVerdict(carries, { low: -Infinite, high: 171 }, 0.8, slack)).toBe("met");
    expect(meanVerdict(carries, { low: -Infinite, high: 159 }, 0.8, slack)).toBe("missed");
  });

  test("a range is missed by the wider two-sided limits only", () => {
    expect(meanVerdict(carries, { low: 171, high: 172 }, 0.8, slack)).toBe("undecided");
    expect(meanVerdict(carries, { low: 174, high: 175 }, 0.8, slack)).toBe("missed");
  });

  test("equal readings exactly at the limit meet it", () => {
    const equal = sample([0.1 + 0.2, 0.1 + 0.2, 0.1 + 0.2]);
    expect(equal.sd).toBe(0);
    expect(meanVerdict(equal, { low: -Infinite, high: 0.3 }, 0.95, slack)).toBe("met");
  });

  test("one shot, or a confidence that is none, decides nothing", () => {
    expect(meanLimits(sample([5]), 0.8)).toBeUndefined();
    expect(meanVerdict(sample([5]), { low: 0, high: Infinite }, 0.8, slack)).toBe("undecided");
    expect(meanLimits(carries, 0.4)).toBeUndefined();
    expect(meanVerdict(carries, { low: 0, high: Infinite }, 1, slack)).toBe("undecided");
  });
});

describe("shots that would decide if the player goes on as observed", () => {
  test("the reference table", () => {
    const columns = [
      "case",
      "n_so_far_or_baseline_n",
      "gap_or_share",
      "sd_or_baseline_sd",
      "confidence",
      "total_shots_or_new_block_size",
    ] as const;
    for (const row of oracleRows("statistics/shots_to_decide.csv", columns, (r) => r.case === "mean")) {
      const gap = numberIn(row.gap_or_share);
      const confidence = numberIn(row.confidence);
      const expected = numberIn(row.total_shots_or_new_block_size);
      const soFar = { n: numberIn(row.n_so_far_or_baseline_n), sd: numberIn(row.sd_or_baseline_sd) };
      const reaches = { ...soFar, mean: gap };
      const fails = { ...soFar, mean: -gap };
      const claim = { low: 0, high: Infinite };
      expect(meanShotsToDecide(reaches, claim, confidence, slack), JSON.stringify(row)).toBe(expected);
      expect(meanShotsToDecide(fails, claim, confidence, slack), JSON.stringify(row)).toBe(expected);
    }
  });

  test("none while the average is at the limit, beyond the cap, or with a single shot", () => {
    const claim = { low: 0, high: Infinite };
    expect(meanShotsToDecide({ n: 10, mean: 0, sd: 2 }, claim, 0.8, slack)).toBeUndefined();
    expect(meanShotsToDecide({ n: 10, mean: 0.3, sd: 1.8 }, claim, 0.9, slack)).toBe(61);
    expect(meanShotsToDecide({ n: 10, mean: 0.3, sd: 1.8 }, claim, 0.9, slack, 60)).toBeUndefined();
    expect(meanShotsToDecide({ n: 1, mean: 3, sd: undefined }, claim, 0.9, slack)).toBeUndefined();
  });

  test("it is the first number of shots that decides", () => {
    const soFar = { n: 6, mean: 1.4, sd: 3 };
    const claim = { low: -2, high: 2 };
    const total = meanShotsToDecide(soFar, claim, 0.9, slack) ?? Number.NaN;
    expect(meanVerdict({ ...soFar, n: total }, claim, 0.9, slack)).toBe("met");
    expect(meanVerdict({ ...soFar, n: total - 1 }, claim, 0.9, slack)).toBe("undecided");
  });
});

describe("what must hold for all samples", () => {
  const value = fc.double({ min: -50, max: 50, noNaN: true });
  const values = fc.array(value, { minLength: 2, maxLength: 20 });
  const claim = fc.tuple(value, value).map(([a, b]) => ({ low: Math.min(a, b), high: Math.max(a, b) }));
  const width = fc.oneof(fc.double({ min: 0, max: 100, noNaN: true }), fc.constant(Infinite));
  const confidence = fc.constantFrom(0.5, 0.8, 0.9, 0.95);

  test("a wider interval keeps what is met", () => {
    fc.assert(
      fc.property(values, claim, width, width, confidence, (list, range, below, above, c) => {
        fc.pre(meanVerdict(sample(list), range, c, slack) === "met");
        const wider = { low: range.low - below, high: range.high + above };
        expect(meanVerdict(sample(list), wider, c, slack)).toBe("met");
      }),
    );
  });

  test("mirrored shots against the mirrored claim end the same", () => {
    fc.assert(
      fc.property(values, claim, confidence, (list, range, c) => {
        const mirrored = sample(list.map((x) => -x));
        const verdict = meanVerdict(mirrored, { low: -range.high, high: -range.low }, c, slack);
        expect(verdict).toBe(meanVerdict(sample(list), range, c, slack));
      }),
    );
  });

  test("more confidence decides nothing that less did not", () => {
    fc.assert(
      fc.property(values, claim, (list, range) => {
        const sure = meanVerdict(sample(list), range, 0.95, slack);
        fc.pre(sure !== "undecided");
        expect(meanVerdict(sample(list), range, 0.8, slack)).toBe(sure);
      }),
    );
  });
});
