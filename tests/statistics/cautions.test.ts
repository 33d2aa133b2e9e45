import { describe, expect, test } from "vitest";
import { looksNormal } from "../../shared/statistics/looks-normal.ts";
import {
  lag1Autocorrelation,
  orderOfShots,
  worthInIndependentShots,
} from "../../shared/statistics/order-of-shots.ts";
import { flagged, modifiedScores } from "../../shared/statistics/outliers.ts";
import {
  gainWithoutChange,
  gainWithoutChangeWhenPicked,
  isUnusuallyBad,
  reliability,
} from "../../shared/statistics/regression-to-the-mean.ts";
import { chanceAllRight, confidenceEach } from "../../shared/statistics/several-criteria.ts";
import { expectNear, numberIn, numbersIn, oracleRows } from "../support/oracle.ts";
import { nistData } from "./nist.ts";
import { sampleWith, shotsFrom } from "./samples.ts";

const relative = 1e-9;

describe("shots that stand apart", () => {
  test("the reference table", () => {
    const columns = ["id", "data", "modified_z", "flagged_positions_over_3.5"] as const;
    for (const row of oracleRows("statistics/outlier_modified_z.csv", columns)) {
      const values = numbersIn(row.data);
      const expected = numbersIn(row.modified_z);
      for (const [index, score] of modifiedScores(values).entries()) {
        expectNear(score, expected[index] ?? Number.NaN, { absolute: 1e-9 }, row);
      }
      const positions = row["flagged_positions_over_3.5"];
      const found = flagged(values).map((index) => index + 1);
      expect(found.join(";"), JSON.stringify(row)).toBe(values.length < 5 ? "" : positions);
    }
  });

  test("four shots are too few to flag one", () => {
    expect(flagged([1, 1.1, 0.9, 40])).toEqual([]);
    expect(flagged([1, 1.1, 0.9, 1.05, 40])).toEqual([4]);
    expect([modifiedScores([]), flagged([])]).toEqual([[], []]);
  });
});

describe("shots that follow one another", () => {
  test("the autocorrelation of the reference table", () => {
    for (const row of oracleRows("statistics/autocorrelation.csv", ["id", "data", "lag1_autocorrelation"])) {
      const actual = lag1Autocorrelation(numbersIn(row.data));
      expectNear(actual, numberIn(row.lag1_autocorrelation), { relative }, row);
    }
  });

  test.each(oracleRows("statistics/nist_univariate_certified.csv", ["data_set", "lag1_17_digits"]))(
    "NIST reference data $data_set",
    (row) => {
      const actual = lag1Autocorrelation(nistData(row.data_set));
      // NumAcc3 and NumAcc4 hold their first digits only: 10000000.2 is not exact in binary
      const digits = { NumAcc3: 9, NumAcc4: 8 }[row.data_set] ?? 13;
      expectNear(actual, numberIn(row.lag1_17_digits), { relative: 10 ** -digits }, row);
    },
  );

  test("what they are worth in independent shots", () => {
    const columns = ["n", "rho", "effective_n"] as const;
    for (const row of oracleRows("statistics/autocorrelation_inflation.csv", columns)) {
      const actual = worthInIndependentShots(numberIn(row.n), numberIn(row.rho));
      expectNear(actual, numberIn(row.effective_n), { relative }, row);
    }
  });

  test("a drift, a swing from side to side, and neither", () => {
    const rising = [1, 2.2, 2.8, 4.1, 5, 5.9, 7.2, 8, 9.1, 9.8];
    expect(orderOfShots(rising)).toMatchObject({ followsOn: true, drifts: true });
    expectNear(orderOfShots(rising)?.slope, 0.99, { absolute: 0.01 }, {});
    const swinging = [1, -1, 1.2, -0.8, 0.9, -1.1, 1, -1.3, 0.8, -1];
    expect(orderOfShots(swinging)).toMatchObject({ followsOn: true, drifts: false });
    const mixed = [0.3, -1.2, 0.8, 1.1, -0.4, 0.9, -0.7, 0.2, -1, 0.5];
    expect(orderOfShots(mixed)).toMatchObject({ followsOn: false, drifts: false });
  });

  test("a straight line drifts; nine shots, or equal ones, show nothing", () => {
    expect(orderOfShots([...Array(12).keys()])).toMatchObject({ slope: 1, drifts: true });
    expect(orderOfShots([...Array(9).keys()])).toBeUndefined();
    expect(orderOfShots(Array<number>(12).fill(3))).toBeUndefined();
    expect(lag1Autocorrelation([2, 2])).toBeUndefined();
  });

  test("independent shots are called drifting once in twenty times, and following on less", () => {
    const { normal } = shotsFrom(17);
    const tries = 3000;
    const seen = { drifts: 0, followsOn: 0 };
    for (let trial = 0; trial < tries; trial++) {
      const order = orderOfShots(Array.from({ length: 12 }, normal));
      if (order?.drifts) seen.drifts++;
      if (order?.followsOn) seen.followsOn++;
    }
    expect(seen.drifts / tries).toBeGreaterThan(0.03);
    expect(seen.drifts / tries).toBeLessThan(0.07);
    expect(seen.followsOn / tries).toBeLessThan(0.05);
  });
});

describe("shots that look normal", () => {
  test("normal ones do nine times in ten; with one in ten at three times the spread, fifty hardly do", () => {
    const { normal, even } = shotsFrom(23);
    const share = (shot: () => number, n: number) => {
      const seen = Array.from({ length: 1500 }, () => looksNormal(Array.from({ length: n }, shot)));
      return seen.filter(Boolean).length / seen.length;
    };
    const wild = () => normal() * (even() < 0.1 ? 3 : 1);
    for (const n of [5, 10, 30]) {
      expect(share(normal, n)).toBeGreaterThan(0.86);
      expect(share(normal, n)).toBeLessThan(0.93);
    }
    expect(share(wild, 10)).toBeLessThan(0.8);
    expect(share(wild, 50)).toBeLessThan(0.4);
  });

  test("four shots, or equal ones, cannot be told", () => {
    expect(looksNormal([1, 2, 3, 9])).toBeUndefined();
    expect(looksNormal(Array<number>(8).fill(2))).toBeUndefined();
    expect(looksNormal([1, 2, 3, 4, 5])).toBe(true);
    expect(looksNormal([1, 2, 3, 4, 100])).toBe(false);
  });
});

describe("a baseline that was picked because it was bad", () => {
  test("the reference table", () => {
    const columns = [
      "usual_mean",
      "sd_between_sessions",
      "sd_within_session",
      "shots",
      "baseline_at_z",
      "reliability",
      "mean_of_baselines_below_z",
      "expected_gain_if_chosen_below_z",
      "expected_gain_if_baseline_equals_z",
    ] as const;
    for (const row of oracleRows("statistics/regression_to_the_mean.csv", columns)) {
      const sessions = {
        between: numberIn(row.sd_between_sessions),
        within: numberIn(row.sd_within_session),
        shots: numberIn(row.shots),
      };
      const below = -numberIn(row.baseline_at_z);
      const share = reliability(sessions);
      expectNear(share, numberIn(row.reliability), { relative }, row);
      const atZ = gainWithoutChange(below, sessions);
      expectNear(atZ, numberIn(row.expected_gain_if_baseline_equals_z), { relative }, row);
      const picked = gainWithoutChangeWhenPicked(below, sessions);
      expectNear(picked, numberIn(row.expected_gain_if_chosen_below_z), { relative }, row);
      const average = numberIn(row.usual_mean) - picked / (1 - share);
      expectNear(average, numberIn(row.mean_of_baselines_below_z), { relative }, row);
    }
  });

  test("worse than usual by more than its own standard error, on the side that is worse", () => {
    const baseline = sampleWith([144, 146, 148, 142, 145]); // 145 ± 1
    expect(isUnusuallyBad(baseline, 147, 1)).toBe(true);
    expect(isUnusuallyBad(baseline, 145.5, 1)).toBe(false);
    expect(isUnusuallyBad(baseline, 147, -1)).toBe(false);
    expect(isUnusuallyBad(baseline, 142, -1)).toBe(true);
    expect(isUnusuallyBad(sampleWith([140]), 147, 1)).toBe(false);
  });

  test("shots that do not vary, and sessions that do not", () => {
    expect(reliability({ between: 2, within: 0, shots: 5 })).toBe(1);
    expect(reliability({ between: 0, within: 3, shots: 5 })).toBe(0);
  });
});

describe("several criteria", () => {
  const rows = oracleRows("statistics/multiplicity.csv", [
    "p_values_or_case",
    "bonferroni_or_any_false",
    "holm_or_all_right",
  ]);

  test("the chance that all are right", () => {
    const cases = rows.flatMap((row) => {
      const found = /^(\d+) independent criteria each at confidence (\S+)$/.exec(row.p_values_or_case);
      return found ? [{ row, k: Number(found[1]), confidence: Number(found[2]) }] : [];
    });
    expect(cases.length).toBeGreaterThan(10);
    for (const { row, k, confidence } of cases) {
      expectNear(chanceAllRight(confidence, k), numberIn(row.holm_or_all_right), { relative }, row);
      expectNear(1 - chanceAllRight(confidence, k), numberIn(row.bonferroni_or_any_false), { relative }, row);
    }
  });

  test("any of k: an error kept by one is k times as large for all", () => {
    const lists = rows.filter((row) => /^[\d.;]+$/.test(row.p_values_or_case));
    expect(lists.length).toBeGreaterThan(3);
    for (const row of lists) {
      const values = numbersIn(row.p_values_or_case);
      const adjusted = numbersIn(row.bonferroni_or_any_false);
      for (const [index, p] of values.entries()) {
        for (const error of [0.05, 0.1, 0.2, 0.3]) {
          const each = 1 - confidenceEach(1 - error, values.length, 1);
          const expected = (adjusted[index] ?? Number.NaN) <= error + 1e-9;
          expect(p <= each + 1e-9, JSON.stringify({ row, p, error })).toBe(expected);
        }
      }
    }
  });

  test("all of them need no correction, and the more are needed the less it is", () => {
    expectNear(confidenceEach(0.9, 5, 5), 0.9, { relative: 1e-12 }, {});
    expectNear(confidenceEach(0.9, 5, 4), 0.95, { relative: 1e-12 }, {});
    expectNear(confidenceEach(0.9, 5, 1), 0.98, { relative: 1e-12 }, {});
    expect(confidenceEach(0.3, 5, 1)).toBeNaN();
    expect(chanceAllRight(0.9, 0)).toBe(1);
  });
});
