import { expect, test } from "vitest";
import {
  gainWithoutChange,
  gainWithoutChangeWhenPicked,
  isUnusuallyBad,
  reliability,
} from "../../shared/statistics/regression-to-the-mean.ts";
import { expectNear, numberIn, oracleRows } from "../support/oracle.ts";
import { sampleWith } from "./samples.ts";

const relative = 1e-9;

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
