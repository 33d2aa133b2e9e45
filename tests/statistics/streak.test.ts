import { describe, expect, test } from "vitest";
import { conformanceProbability, verdictByProbability } from "../../shared/statistics/conformance.ts";
import { slackOf } from "../../shared/statistics/interval.ts";
import { runProbability } from "../../shared/statistics/streak.ts";
import { expectNear, numberIn, numbersIn, oracleRows } from "../support/oracle.ts";

const absolute = 1e-12;

test("shots with equal chances", () => {
  const columns = ["n", "p", "run_length", "prob_longest_run_at_least"] as const;
  for (const row of oracleRows("statistics/streak_probabilities.csv", columns)) {
    const chances = Array<number>(numberIn(row.n)).fill(numberIn(row.p));
    const actual = runProbability(chances, numberIn(row.run_length));
    expectNear(actual, numberIn(row.prob_longest_run_at_least), { absolute }, row);
  }
});

test("shots with chances of their own", () => {
  const columns = ["p_list", "run_length", "prob_longest_run_at_least"] as const;
  for (const row of oracleRows("statistics/streak_probabilities_unequal.csv", columns)) {
    const actual = runProbability(numbersIn(row.p_list), numberIn(row.run_length));
    expectNear(actual, numberIn(row.prob_longest_run_at_least), { absolute }, row);
  }
});

test("a run over readings that may be off", () => {
  const columns = [
    "readings",
    "u_random",
    "limit_low",
    "limit_high",
    "run_needed",
    "prob_run",
    "verdict_level_0.95",
  ] as const;
  for (const row of oracleRows("statistics/streak_conformance.csv", columns)) {
    const claim = { low: numberIn(row.limit_low), high: numberIn(row.limit_high) };
    const chances = numbersIn(row.readings).map((reading) =>
      conformanceProbability(reading, numberIn(row.u_random), claim, slackOf(1)),
    );
    const actual = runProbability(chances, numberIn(row.run_needed));
    expectNear(actual, numberIn(row.prob_run), { absolute: 1e-9 }, row);
    expect(verdictByProbability(actual, 0.95)).toBe(row["verdict_level_0.95"]);
  }
});

describe("at the ends", () => {
  test("certain hits and misses are counted", () => {
    expect(runProbability([1, 1, 0, 1], 2)).toBe(1);
    expect(runProbability([1, 0, 1, 0], 2)).toBe(0);
    expect(runProbability([1, 0.5, 1], 3)).toBe(0.5);
  });

  test("no run asked for, more than there are shots, and chances that are none", () => {
    expect(runProbability([], 0)).toBe(1);
    expect(runProbability([0.9], 2)).toBe(0);
    expect(runProbability([0.9, Number.NaN], 1)).toBeNaN();
    expect(runProbability([0.9, 1.1], 1)).toBeNaN();
  });
});
