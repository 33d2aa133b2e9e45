import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { studentCdf } from "../../shared/statistics/distributions.ts";
import { type Interval, slackOf } from "../../shared/statistics/interval.ts";
import { MOST_SHOTS, newShotsThatDecide } from "../../shared/statistics/shots-to-decide.ts";
import type { Sample } from "../../shared/statistics/summary.ts";
import { judgeByLimits, verdictByLimits } from "../../shared/statistics/verdict.ts";
import { meanChange, meanChangeLimits, smallestChangeShown } from "../../shared/statistics/welch.ts";
import { expectNear, numberIn, oracleRows } from "../support/oracle.ts";
import { sampleIn, sampleWith, unlimited } from "./samples.ts";

const slack = slackOf(1);

describe("the reference table", () => {
  const columns = [
    "id",
    "baseline",
    "now",
    "difference_now_minus_baseline",
    "standard_error",
    "df",
    "confidence",
    "lower_each_side_C",
    "upper_each_side_C",
    "gain_at_least",
    "p_one_sided_gain_above",
    "verdict",
  ] as const;

  test.each(oracleRows("statistics/welch.csv", columns))("$id at $confidence", (row) => {
    const tolerance = { relative: 1e-10 };
    const [baseline, now] = [sampleIn(row.baseline), sampleIn(row.now)];
    const [confidence, gain] = [numberIn(row.confidence), numberIn(row.gain_at_least)];
    const change = meanChange(baseline, now);
    if (change === undefined) throw new Error("Both blocks have a spread.");
    const { difference, standardError, degreesOfFreedom } = change;
    expectNear(difference, numberIn(row.difference_now_minus_baseline), tolerance, row);
    expectNear(standardError, numberIn(row.standard_error), tolerance, row);
    expectNear(degreesOfFreedom, numberIn(row.df), tolerance, row);

    const limits = meanChangeLimits(baseline, now, confidence);
    expectNear(limits?.low, numberIn(row.lower_each_side_C), tolerance, row);
    expectNear(limits?.high, numberIn(row.upper_each_side_C), tolerance, row);

    const p = studentCdf((gain - difference) / standardError, degreesOfFreedom);
    expectNear(p, numberIn(row.p_one_sided_gain_above), tolerance, row);
    expect(judge(baseline, now, { low: gain, high: unlimited }, confidence)).toBe(row.verdict);
  });
});

describe("the sentences of a change", () => {
  const before: Sample = { n: 12, mean: 150, sd: 4 };
  const after: Sample = { n: 12, mean: 158, sd: 4 }; // limits each side at 90 %: 5.84 … 10.16

  test.each([
    ["gains at least 5 yd", { low: 5, high: unlimited }, "met"],
    ["gains at least 7 yd", { low: 7, high: unlimited }, "undecided"],
    ["gains at least 11 yd", { low: 11, high: unlimited }, "missed"],
    ["loses no more than 4 yd", { low: -4, high: unlimited }, "met"],
    ["falls by at least 2 yd", { low: -unlimited, high: -2 }, "missed"],
    ["stays within ±3 yd", { low: -3, high: 3 }, "missed"],
    ["stays within ±11 yd", { low: -11, high: 11 }, "met"],
  ] as const)("%s", (_, claim, verdict) => {
    expect(judge(before, after, claim, 0.9)).toBe(verdict);
  });
});

test("the smallest change that two equal blocks can show, and the true one found 8 times in 10", () => {
  const columns = [
    "sd_within",
    "n_each",
    "confidence",
    "smallest_observed_difference_deciding",
    "true_difference_found_8_times_in_10_approx",
  ] as const;
  for (const row of oracleRows("statistics/minimal_detectable_change.csv", columns)) {
    const block = { n: numberIn(row.n_each), mean: 0, sd: numberIn(row.sd_within) };
    const shown = smallestChangeShown(block, block, numberIn(row.confidence)) ?? Number.NaN;
    expectNear(shown, numberIn(row.smallest_observed_difference_deciding), { relative: 1e-10 }, row);
    const found = shown + (smallestChangeShown(block, block, 0.8) ?? Number.NaN);
    expectNear(found, numberIn(row.true_difference_found_8_times_in_10_approx), { relative: 1e-10 }, row);
  }
});

describe("shots that would decide if the player goes on as observed", () => {
  const columns = [
    "case",
    "n_so_far_or_baseline_n",
    "gap_or_share",
    "sd_or_baseline_sd",
    "sd_now",
    "confidence",
    "total_shots_or_new_block_size",
  ] as const;
  const rows = oracleRows("statistics/shots_to_decide.csv", columns, (row) => row.case.startsWith("Welch"));

  test.each(rows)("a gap of $gap_or_share over a baseline of $n_so_far_or_baseline_n", (row) => {
    const baseline = {
      n: numberIn(row.n_so_far_or_baseline_n),
      mean: 0,
      sd: numberIn(row.sd_or_baseline_sd),
    };
    const gap = numberIn(row.gap_or_share);
    const now = { n: 2, mean: 20 + gap, sd: numberIn(row.sd_now) };
    const total = row.total_shots_or_new_block_size;
    const expected = total === "never with this baseline" ? "never" : numberIn(total);
    const claim = { low: 20, high: unlimited };
    const confidence = numberIn(row.confidence);
    expect(newShotsToDecide(baseline, now, claim, confidence)).toBe(expected);
    const fails = { ...now, mean: 20 - gap };
    expect(newShotsToDecide(baseline, fails, claim, confidence)).toBe(expected);
  });

  test("never and not with so many are two things", () => {
    const baseline = { n: 10, mean: 0, sd: 6 };
    const now = { n: 10, mean: 1.9, sd: 6 };
    const claim = { low: 0, high: unlimited };
    expect(newShotsToDecide(baseline, now, claim, 0.8, 29)).toBeUndefined();
    expect(newShotsToDecide(baseline, now, claim, 0.8)).toBe(30);
    expect(newShotsToDecide({ ...baseline, n: 8 }, now, claim, 0.8)).toBe("never");
  });
});

test("in different set-ups the systematic parts of the readings do not cancel", () => {
  const [baseline, now] = [sampleWith([150, 152, 148, 151]), sampleWith([153, 156, 154, 155])];
  const shared = meanChangeLimits(baseline, now, 0.9);
  const apart = meanChangeLimits(baseline, now, 0.9, 2 * 1.5 * 1.5);
  expect(apart?.low).toBeLessThan(shared?.low ?? Number.NaN);
  expectNear(
    meanChange(baseline, now, 4.5)?.standardError,
    Math.sqrt(35 / 12 / 4 + 5 / 3 / 4 + 4.5),
    { relative: 1e-12 },
    {},
  );
});

test("single shots, readings that are all equal, and a confidence that is none", () => {
  const many: Sample = { n: 5, mean: 150, sd: 3 };
  const one: Sample = { n: 1, mean: 155, sd: undefined };
  expect(meanChangeLimits(many, one, 0.9)).toBeUndefined();
  expect(meanChangeLimits(one, many, 0.9)).toBeUndefined();
  expect(smallestChangeShown(many, many, 1)).toBeUndefined();
  const equal: Sample = { n: 5, mean: 0.1 + 0.2, sd: 0 };
  expect(meanChangeLimits(equal, equal, 0.9)).toEqual({ low: 0, high: 0 });
  expect(judge({ ...equal, mean: 0.1 }, equal, { low: -unlimited, high: 0.2 }, 0.9)).toBe("met");
});

test("exchanged blocks have the mirrored limits", () => {
  const values = fc.array(fc.integer({ min: -300, max: 300 }), { minLength: 2, maxLength: 12 });
  fc.assert(
    fc.property(values, values, fc.constantFrom(0.8, 0.95), (one, other, confidence) => {
      const [first, second] = [sampleWith(one), sampleWith(other)];
      const forth = meanChangeLimits(first, second, confidence);
      const back = meanChangeLimits(second, first, confidence);
      expect(forth?.low).toBeCloseTo(-(back?.high ?? Number.NaN), 9);
      expect(forth?.high).toBeCloseTo(-(back?.low ?? Number.NaN), 9);
    }),
  );
});

function judge(baseline: Sample, now: Sample, claim: Interval, confidence: number) {
  const limitsAt = (level: number) => meanChangeLimits(baseline, now, level);
  return judgeByLimits(limitsAt, claim, confidence, slack).decision;
}

/** How many new shots in all would decide against a baseline that stays as it is. */
function newShotsToDecide(
  baseline: Sample,
  now: Sample,
  claim: Interval,
  confidence: number,
  most = MOST_SHOTS,
) {
  return newShotsThatDecide(now.n, most, (n) => {
    const limitsAt = (level: number) => meanChangeLimits(baseline, { ...now, n }, level);
    return verdictByLimits(limitsAt, claim, confidence, slack) !== "undecided";
  });
}
