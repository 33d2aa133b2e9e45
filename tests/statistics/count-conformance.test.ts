import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { binomialProbabilities } from "../../shared/statistics/binomial.ts";
import { conformanceProbability, verdictByProbability } from "../../shared/statistics/conformance.ts";
import { normalCdf } from "../../shared/statistics/distributions.ts";
import { type Interval, slackOf } from "../../shared/statistics/interval.ts";
import { atLeastHits, hitCountProbabilities } from "../../shared/statistics/poisson-binomial.ts";
import type { ReadingUncertainty } from "../../shared/statistics/reading-uncertainty.ts";
import { averageOverShared } from "../../shared/statistics/shared-error.ts";
import { expectNear, numberIn, numbersIn, optionalNumberIn, oracleRows } from "../support/oracle.ts";
import { unlimited } from "./samples.ts";

const slack = slackOf(1);

/**
 * P(at least `needed` of the true values lie in `claim`), as counts over uncertain readings are judged: the random parts are
 * independent, so that the count is Poisson-binomial; the systematic part is shared, so that it is averaged over.
 */
function countConformance(
  readings: readonly number[],
  { random, systematic }: ReadingUncertainty,
  claim: Interval,
  needed: number,
): number {
  return averageOverShared([systematic === 0 ? 0 : systematic / random], ([error = 0]) => {
    const chances = readings.map((reading) =>
      conformanceProbability(reading - error * systematic, random, claim, slack),
    );
    return atLeastHits(chances, needed);
  });
}

describe("hits with chances of their own", () => {
  test("the reference table", () => {
    const columns = ["p_list", "k", "prob_exactly_k", "prob_at_least_k", "prob_at_most_k"] as const;
    const absolute = 1e-12;
    for (const row of oracleRows("statistics/poisson_binomial.csv", columns)) {
      const [chances, k] = [numbersIn(row.p_list), numberIn(row.k)];
      expectNear(hitCountProbabilities(chances)[k], numberIn(row.prob_exactly_k), { absolute }, row);
      expectNear(atLeastHits(chances, k), numberIn(row.prob_at_least_k), { absolute }, row);
      expectNear(1 - atLeastHits(chances, k + 1), numberIn(row.prob_at_most_k), { absolute }, row);
    }
  });

  test("with equal chances it is the binomial distribution, for few shots and for many", () => {
    for (const [n, p] of [
      [7, 0.3],
      [400, 0.62],
      [10_000, 0.5],
    ] as const) {
      const expected = binomialProbabilities(n, p);
      const actual = hitCountProbabilities(Array<number>(n).fill(p));
      const worst = Math.max(...expected.map((probability, k) => Math.abs(probability - (actual[k] ?? 1))));
      expect(worst).toBeLessThan(1e-13);
    }
  });

  test("a count so far off that it is certain is not computed, and is right", () => {
    const chances = Array<number>(10_000).fill(0.5);
    expect([atLeastHits(chances, 4000), atLeastHits(chances, 6000)]).toEqual([1, 0]);
    expectNear(atLeastHits(chances, 5100), 0.02329, { absolute: 1e-5 }, {});
  });

  test("no shots, counts that cannot occur, and chances that are none", () => {
    expect([atLeastHits([], 0), atLeastHits([], 1)]).toEqual([1, 0]);
    expect(atLeastHits([0.5], -3)).toBe(1);
    expect(atLeastHits([1, 0, 1], 2)).toBe(1);
    expect(atLeastHits([0.5, Number.NaN], 1)).toBeNaN();
    expect(atLeastHits([0.5, 1.2], 1)).toBeNaN();
  });
});

describe("a count of uncertain readings", () => {
  const columns = [
    "readings",
    "u_random",
    "u_systematic",
    "limit_low",
    "limit_high",
    "hits_needed",
    "level",
    "prob_count_at_least_needed",
    "same_if_all_treated_as_independent",
    "verdict",
  ] as const;

  test("the reference table", () => {
    for (const row of oracleRows("statistics/count_conformance.csv", columns)) {
      const readings = numbersIn(row.readings);
      const uncertainty = { random: numberIn(row.u_random), systematic: numberIn(row.u_systematic) };
      const claim = {
        low: optionalNumberIn(row.limit_low) ?? -unlimited,
        high: optionalNumberIn(row.limit_high) ?? unlimited,
      };
      const [needed, level] = [numberIn(row.hits_needed), numberIn(row.level)];
      const absolute = uncertainty.systematic > 0 ? 1e-7 : 1e-9;
      const actual = countConformance(readings, uncertainty, claim, needed);
      expectNear(actual, numberIn(row.prob_count_at_least_needed), { absolute }, row);
      expect(verdictByProbability(actual, level), JSON.stringify(row)).toBe(row.verdict);

      const { random, systematic } = uncertainty;
      const together = Math.sqrt(random * random + systematic * systematic);
      const chances = readings.map((reading) => conformanceProbability(reading, together, claim, slack));
      const independent = numberIn(row.same_if_all_treated_as_independent);
      expectNear(atLeastHits(chances, needed), independent, { absolute: 1e-9 }, row);
    }
  });

  test("what a shared error makes undecided would be met if it were treated as independent", () => {
    const carries = [150.08, 145.9, 144.19, 145.45, 150.87, 152.65, 144.51, 155.16, 150.14, 146.98];
    const claim = { low: 145, high: unlimited };
    const shared = countConformance(carries, { random: 1.5, systematic: 1.5 }, claim, 6);
    const independent = countConformance(carries, { random: 1.5 * Math.SQRT2, systematic: 0 }, claim, 6);
    expect([shared, independent].map((p) => verdictByProbability(p, 0.95))).toEqual(["undecided", "met"]);
  });

  test("exact readings are counted", () => {
    const exact = { random: 0, systematic: 0 };
    const claim = { low: -2, high: 2 };
    expect(countConformance([1, 2, 2.5], exact, claim, 2)).toBe(1);
    expect(countConformance([1, 2, 2.5], exact, claim, 3)).toBe(0);
  });
});

describe("an error that all readings share", () => {
  test("one reading at a limit: the two uncertainties are as good as one", () => {
    for (const [random, systematic] of [
      [1, 0.5],
      [0.6, 1],
      [0.05, 1],
      [0.003, 1],
    ] as const) {
      const together = Math.sqrt(random * random + systematic * systematic);
      const claim = { low: 0.8, high: unlimited };
      const actual = countConformance([1.5], { random, systematic }, claim, 1);
      expectNear(actual, normalCdf(0.7 / together), { absolute: 1e-8 }, { random, systematic });
    }
  });

  test("without a random part the probability jumps, and is still right to 1e-4", () => {
    const claim = { low: 0.8, high: unlimited };
    const actual = countConformance([1.5, 1.7, 0], { random: 0, systematic: 1 }, claim, 2);
    expectNear(actual, normalCdf(0.7), { absolute: 1e-4 }, {});
  });

  test("many shots: the count follows the shared error alone", () => {
    const readings = Array<number>(2000).fill(0);
    const claim = { low: -1, high: unlimited };
    // K ≥ 1000 as soon as half of the shots conform: for errors below 1
    const actual = countConformance(readings, { random: 0.5, systematic: 1 }, claim, 1000);
    expectNear(actual, normalCdf(1), { absolute: 2e-4 }, {});
    const finer = averageOverShared([20], ([error = 0]) =>
      atLeastHits(Array<number>(2000).fill(normalCdf((1 - error) / 0.5)), 1000),
    );
    expectNear(actual, finer, { absolute: 1e-9 }, {});
  });

  test("two shared errors are averaged over both", () => {
    const actual = averageOverShared(
      [1, 2],
      ([one = 0, other = 0]) => normalCdf(0.3 + one) * normalCdf(-0.2 + 2 * other),
    );
    expectNear(actual, normalCdf(0.3 / Math.SQRT2) * normalCdf(-0.2 / Math.sqrt(5)), { absolute: 1e-8 }, {});
    expect(averageOverShared([], () => 0.25)).toBe(0.25);
    expect(averageOverShared([0], ([error]) => (error === 0 ? 0.25 : 1))).toBe(0.25);
  });

  test("more doubt never makes a sure verdict of an open one at the same readings", () => {
    const readings = fc.array(fc.integer({ min: -30, max: 30 }), { minLength: 3, maxLength: 8 });
    fc.assert(
      fc.property(readings, fc.integer({ min: 1, max: 8 }), (tenths, needed) => {
        const values = tenths.map((tenth) => tenth / 10);
        const claim = { low: -unlimited, high: 1 };
        const p = countConformance(values, { random: 0.5, systematic: 0.5 }, claim, needed);
        expect(p).toBeGreaterThanOrEqual(0);
        expect(p).toBeLessThanOrEqual(1 + 1e-12);
        const more = countConformance(values, { random: 0.5, systematic: 0.5 }, claim, needed + 1);
        expect(more).toBeLessThanOrEqual(p + 1e-12);
      }),
      { numRuns: 40 },
    );
  });
});
