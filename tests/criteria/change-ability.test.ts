/** Changes as ability: how the player's true number moved. */
import { describe, expect, test } from "vitest";
import { meanRatioLimits } from "../../language/criteria/change/methods/mean-ratio.ts";
import { evaluate } from "../../language/criteria/criteria.ts";
import type { Sample } from "../../shared/statistics/summary.ts";
import { expectNear, numberIn, numbersIn, oracleRows } from "../support/oracle.ts";
import { earlier, HERE, judge, now, YARD } from "./changes.ts";
import { criterion } from "./words.ts";

test("averages: the reference table", () => {
  const columns = [
    "baseline",
    "now",
    "confidence",
    "lower_each_side_C",
    "upper_each_side_C",
    "gain_at_least",
    "verdict",
  ] as const;
  for (const row of oracleRows("statistics/welch.csv", columns)) {
    const gain = numberIn(row.gain_at_least);
    const movement = gain < 0 ? `loses at most ${-gain} yd` : `gains ${gain} yd`;
    const gains = criterion("change", `carry ${movement} against ${HERE}`);
    const shots = now({ carry: numbersIn(row.now) }, earlier({ carry: numbersIn(row.baseline) }));
    const { verdict, interval } = evaluate({ ...gains, confidence: numberIn(row.confidence) }, shots);
    expect(verdict, JSON.stringify(row)).toBe(row.verdict);
    expectLimits(interval, row);
  }
});

test("medians: the reference table of the shift by ranks", () => {
  const columns = [
    "baseline",
    "now",
    "confidence",
    "lower_each_side_C",
    "upper_each_side_C",
    "gain_at_least",
    "verdict",
    "shift_now_minus_baseline",
  ] as const;
  for (const row of oracleRows(
    "statistics/hodges_lehmann_shift.csv",
    columns,
    (row) => row.lower_each_side_C !== "",
  )) {
    const gains = criterion("change", `median carry gains ${row.gain_at_least} yd against ${HERE}`);
    const shots = now({ carry: numbersIn(row.now) }, earlier({ carry: numbersIn(row.baseline) }));
    const { verdict, interval, value } = evaluate({ ...gains, confidence: numberIn(row.confidence) }, shots);
    expect(verdict, JSON.stringify(row)).toBe(row.verdict);
    expectNear((value ?? Number.NaN) / YARD, numberIn(row.shift_now_minus_baseline), { absolute: 1e-9 }, row);
    expectLimits(interval, row);
  }
});

test("medians: ranks reach a little more than is asked for, and it is said how much, never more", () => {
  const columns = ["n_first", "n_second", "confidence", "confidence_reached_each_side"] as const;
  const rows = oracleRows(
    "statistics/rank_sum_ranks.csv",
    columns,
    (row) => row.confidence_reached_each_side !== "",
  );
  for (const row of rows) {
    const [before, after] = [row.n_first, row.n_second].map((n) =>
      Array.from({ length: numberIn(n) }, (_, shot) => 150 + shot),
    ) as [number[], number[]];
    const gains = criterion("change", `median carry gains 1 yd against ${HERE}`);
    const { interval } = evaluate(
      { ...gains, confidence: numberIn(row.confidence) },
      now({ carry: after }, earlier({ carry: before })),
    );
    const said = Number(/ by ranks, which reach ([\d.]+) %$/.exec(interval?.method ?? "")?.[1]);
    const reached = 100 * numberIn(row.confidence_reached_each_side);
    expect(said, JSON.stringify(row)).toBeLessThanOrEqual(reached + 1e-9);
    expect(said, JSON.stringify(row)).toBeGreaterThan(reached - 0.1);
  }
});

test("spreads in %: the reference table of the ratio", () => {
  const columns = [
    "baseline",
    "now",
    "confidence",
    "lower_each_side_C",
    "upper_each_side_C",
    "direction",
  ] as const;
  for (const row of oracleRows("statistics/spread_ratio.csv", columns)) {
    const shots = now({ carry: numbersIn(row.now) }, earlier({ carry: numbersIn(row.baseline) }));
    const at = (movement: string) =>
      evaluate(
        {
          ...criterion("change", `spread of carry ${movement} against ${HERE}`),
          confidence: numberIn(row.confidence),
        },
        shots,
      );
    expect(at("rises by at least 0 %").verdict === "met").toBe(row.direction === "rose");
    expect(at("falls by at least 0 %").verdict === "met").toBe(row.direction === "fell");
    const { interval } = at("rises by at least 0 %");
    expectNear(1 + (interval?.low ?? Number.NaN), numberIn(row.lower_each_side_C), { relative: 1e-9 }, row);
    expectNear(1 + (interval?.high ?? Number.NaN), numberIn(row.upper_each_side_C), { relative: 1e-9 }, row);
  }
});

test("averages in %: there is no share of what is not above zero, nor one that is not", () => {
  const [some, none, less] = [150, 0, -1].map((mean) => ({ n: 5, mean, sd: 4 })) as [Sample, Sample, Sample];
  const limits = (before: Sample, now: Sample) => meanRatioLimits(before, now, 0.9, () => 0);
  expect(limits(some, some)).toBeDefined();
  for (const other of [none, less]) {
    expect([limits(other, some), limits(some, other)]).toEqual([undefined, undefined]);
  }
});

describe("averages: how many new shots would do, or that the baseline is too short", () => {
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

  test.each(rows)("a gap of $gap_or_share over $n_so_far_or_baseline_n shots at $confidence", (row) => {
    const old = withSpread(numberIn(row.sd_or_baseline_sd), numberIn(row.n_so_far_or_baseline_n));
    const fresh = withSpread(numberIn(row.sd_now), 2).map((value) => value + 20 + numberIn(row.gap_or_share));
    const gains = criterion("change", `carry gains 20 yd against ${HERE}`);
    const { settles } = evaluate(
      { ...gains, confidence: numberIn(row.confidence) },
      now({ carry: fresh }, earlier({ carry: old })),
    );
    const total = row.total_shots_or_new_block_size;
    expect(settles).toBe(
      total.startsWith("never")
        ? `a longer baseline: with its ${old.length} shots no number of new shots can decide`
        : `about ${numberIn(total) - 2} more shots if the player goes on as observed (estimate)`,
    );
  });
});

const steady = [150, 152, 148, 151, 149, 150, 153, 147];

test("averages, with all that belongs to the evidence", () => {
  const loses = `carry loses no more than 4 yd against ${HERE} at 80 % confidence`;
  expect(
    judge(
      loses,
      steady.map((value) => value - 2),
      steady,
    ),
  ).toMatchObject({
    verdict: "met",
    required: `in the long run, average carry falls by at most 4 yd against ${HERE}, at 80 % confidence`,
    observed: `average 148 yd over 8 shots; average 150 yd over 8 shots in ${HERE}; 2 yd less`,
    interval: {
      confidence: 0.8,
      method: "one-sided limits of Welch's t",
      text: "1 yd to 3 yd less",
    },
    // t(0.8; 14) = 0.868 times 2/√4
    comparison: { smallestShown: expect.closeTo(0.868 * YARD, 3) },
  });
});

test("averages in %: the limits of the ratio are where Welch's t is just decided", () => {
  const at = (movement: string) =>
    judge(
      `carry ${movement} against ${HERE} at 80 % confidence`,
      steady.map((value) => value * 0.96),
      steady,
    );
  const { interval } = at("falls by at least 2 %");
  const [low, high] = [interval?.low ?? Number.NaN, interval?.high ?? Number.NaN];
  expect(interval?.text).toBe("3 % to 5 % less");
  const percentOf = (share: number, inwards: number) => `${-100 * share + inwards} %`;
  expect(at(`falls by at least ${percentOf(high, -0.001)}`).verdict).toBe("met");
  expect(at(`falls by at least ${percentOf(high, 0.001)}`).verdict).toBe("undecided");
  expect(at(`falls by at most ${percentOf(low, 0.001)}`).verdict).toBe("met");
  expect(at(`falls by at most ${percentOf(low, -0.001)}`).verdict).toBe("undecided");
  expect(at("stays within 2 %").verdict).toBe("missed");
  expect(at("stays within 5 %").verdict).toBe("met");
  // The same claim, said in yards of a baseline that does not vary: 2 % of 150 yd are 3 yd.
  const exact = steady.map(() => 150);
  const inYards = judge(
    `carry falls by at least 3 yd against ${HERE} at 80 % confidence`,
    steady,
    exact,
  ).interval;
  const inPercent = judge(
    `carry falls by at least 2 % against ${HERE} at 80 % confidence`,
    steady,
    exact,
  ).interval;
  expectNear(
    150 * YARD * (inPercent?.high ?? Number.NaN),
    inYards?.high ?? Number.NaN,
    { absolute: 1e-9 },
    {},
  );
});

test("averages in % of a baseline that may be zero", () => {
  const gains = `carry gains 10 % against ${HERE} at 95 % confidence`;
  expect(judge(gains, [20, 22, 21], [1, 30, 2])).toMatchObject({
    verdict: "undecided",
    interval: { high: null, text: expect.stringMatching(/ on one side, no limit on the other$/) },
  });
});

test("spreads in a unit: both chi-square limits at half the error", () => {
  const wild = steady.map((value) => 150 + 6 * (value - 150));
  const falls = `spread of carry falls by at least 2 yd against ${HERE} at 80 % confidence`;
  expect(judge(falls, steady, wild)).toMatchObject({
    verdict: "met",
    interval: {
      method: "the chi-square limits of both spreads, for normally distributed shots (Bonferroni)",
    },
  });
  const livelier = steady.map((value) => 150 + 2 * (value - 150));
  expect(judge(falls, steady, livelier).verdict).toBe("undecided");
  expect(judge(falls, steady, steady).verdict).toBe("missed");
});

test("a short baseline of a spread", () => {
  const falls = `spread of carry falls by at least 20 % against ${HERE} at 95 % confidence`;
  expect(judge(falls, steady.slice(0, 4), [147.2, 150, 152.8]).settles).toBe(
    "a longer baseline: with its 3 shots no number of new shots can decide",
  );
});

test("too close to call is no fault of the baseline", () => {
  const gains = `carry gains 2 yd against ${HERE} at 80 % confidence`;
  expect(
    judge(
      gains,
      steady.map((value) => value + 2),
      steady,
    ).settles,
  ).toBe(
    "too close to call: not even 1,000 shots in all would decide it if the player goes on as observed (estimate)",
  );
});

test("limits on both sides of no change, the nearer first", () => {
  const gains = (by: number) =>
    judge(
      `carry gains 2 yd against ${HERE} at 80 % confidence`,
      steady.map((value) => value + by),
      steady,
    ).interval?.text;
  expect(gains(0)).toBe("1 yd less to 1 yd more");
  expect(gains(0.3)).toBe("0.6 yd less to 1.2 yd more");
  expect(gains(0.6)).toBe("no change to 1 yd more");
});

test("a range is missed by limits of half the error only, and those are shown", () => {
  const stays = `carry stays within 1 yd against ${HERE} at 80 % confidence`;
  expect(
    judge(
      stays,
      steady.map((value) => value + 3),
      steady,
    ),
  ).toMatchObject({
    verdict: "missed",
    interval: { confidence: 0.9 },
  });
});

test("too few shots", () => {
  const gains = `carry gains 2 yd against ${HERE} at 90 % confidence`;
  expect(judge(gains, [155], steady).settles).toBe("2 shots or more with a reading: 1 is too few to show it");
  expect(judge(gains, steady, [150]).settles).toBe(`2 shots or more in ${HERE}`);
  const median = `median carry gains 2 yd against ${HERE} at 95 % confidence`;
  expect(judge(median, [155], [150, 151, 152]).settles).toBe(
    "3 shots or more with a reading: 1 is too few to show it",
  );
});

test("only at the planned number of shots", () => {
  const gains = criterion("change", `carry gains 2 yd against ${HERE} at 90 % confidence`);
  expect(
    evaluate(gains, now({ carry: [155, 156, 157] }, earlier({ carry: steady }), { asked: 4 })),
  ).toMatchObject({
    verdict: "undecided",
    interval: null,
    settles: "the shot not hit yet: ability is judged on all 4",
  });
});

test.each([
  ["best carry gains 5 yd", "change of the best"],
  ["90th percentile of carry gains 5 yd", "change of the 90th percentile"],
  ["middle 80 % of carry falls by at least 5 yd", "change of the middle 80 %"],
  ["median carry gains 5 %", "change of the median in %"],
])("%s has no reading as ability", (text, what) => {
  expect(judge(`${text} against ${HERE} at 80 % confidence`, [150, 155, 160], steady)).toMatchObject({
    verdict: "undecided",
    interval: null,
    settles: `a sentence without the confidence: the ${what} is judged on the shots hit only`,
  });
});

function expectLimits(
  interval: { low: number | null; high: number | null } | null,
  row: { lower_each_side_C: string; upper_each_side_C: string },
) {
  const inYards = (limit: number | null = null) => (limit === null ? undefined : limit / YARD);
  expectNear(inYards(interval?.low), numberIn(row.lower_each_side_C), { absolute: 1e-8 }, row);
  expectNear(inYards(interval?.high), numberIn(row.upper_each_side_C), { absolute: 1e-8 }, row);
}

/** Values about zero with this standard deviation. */
function withSpread(spread: number, n: number): number[] {
  const steps = Array.from({ length: n }, (_, index) => index - (n - 1) / 2);
  const squares = steps.reduce((sum, step) => sum + step * step, 0);
  return steps.map((step) => (spread * step) / Math.sqrt(squares / (n - 1)));
}
