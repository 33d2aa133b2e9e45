import { describe, expect, test } from "vitest";
import { conformanceProbability, verdictByProbability } from "../../shared/statistics/conformance.ts";
import { slackOf } from "../../shared/statistics/interval.ts";
import {
  limitsWithoutReadings,
  spreadWithoutReadings,
  uncertaintyOfMean,
} from "../../shared/statistics/reading-uncertainty.ts";
import { spreadLimits } from "../../shared/statistics/spread.ts";
import { meanLimits } from "../../shared/statistics/student.ts";
import { judgeByLimits } from "../../shared/statistics/verdict.ts";
import { expectNear, numberIn, optionalNumberIn, oracleRows } from "../support/oracle.ts";
import { sampleIn, sampleWith, unlimited } from "./samples.ts";

const slack = slackOf(1);
const absolute = 1e-9;

describe("a mean: the reference table", () => {
  const columns = [
    "readings",
    "u_random",
    "u_systematic",
    "limit_low",
    "limit_high",
    "mean",
    "u_of_mean_of_these_shots",
    "conformance_probability",
    "verdict_these_shots_level_0.95",
    "ability_confidence",
    "combined_standard_uncertainty",
    "effective_df",
    "lower_each_side_C",
    "upper_each_side_C",
    "verdict_ability",
  ] as const;
  const rows = oracleRows("statistics/mean_with_uncertainty.csv", columns);

  test.each(rows)("of the shots hit, $readings", (row) => {
    const sample = sampleIn(row.readings);
    const uncertainty = { random: numberIn(row.u_random), systematic: numberIn(row.u_systematic) };
    expectNear(sample.mean, numberIn(row.mean), { absolute }, row);
    const ofMean = uncertaintyOfMean(sample.n, uncertainty);
    expectNear(ofMean, numberIn(row.u_of_mean_of_these_shots), { absolute }, row);
    const probability = conformanceProbability(sample.mean, ofMean, claimIn(row), slack);
    expectNear(probability, numberIn(row.conformance_probability), { absolute }, row);
    expect(verdictByProbability(probability, 0.95)).toBe(row["verdict_these_shots_level_0.95"]);
  });

  test.each(rows)("as ability, $readings", (row) => {
    const sample = sampleIn(row.readings);
    const confidence = numberIn(row.ability_confidence);
    const limitsAt = (level: number) => meanLimits(sample, level, numberIn(row.u_systematic));
    expectNear(limitsAt(confidence)?.low, numberIn(row.lower_each_side_C), { absolute }, row);
    expectNear(limitsAt(confidence)?.high, numberIn(row.upper_each_side_C), { absolute }, row);
    const { decision } = judgeByLimits(limitsAt, claimIn(row), confidence, slack);
    expect(decision).toBe(row.verdict_ability);
  });

  function claimIn(row: (typeof rows)[number]) {
    return {
      low: optionalNumberIn(row.limit_low) ?? -unlimited,
      high: optionalNumberIn(row.limit_high) ?? unlimited,
    };
  }
});

test("no number of shots averages the shared part out", () => {
  const uncertainty = { random: 0.4, systematic: 0.3 };
  expectNear(uncertaintyOfMean(10, uncertainty), 0.326, { absolute: 5e-4 }, {});
  expect(uncertaintyOfMean(1e9, uncertainty)).toBeGreaterThanOrEqual(0.3);
});

test("equal readings leave the shared part, which is normal", () => {
  const limits = meanLimits(sampleWith([150, 150, 150]), 0.9, 2);
  expectNear(limits?.low, 150 - 2 * 1.2815515655446, { absolute }, {});
  expect(meanLimits(sampleWith([150]), 0.9, 2)).toBeUndefined();
});

test("a spread without that of its readings: the reference table", () => {
  const columns = [
    "sd_of_readings",
    "n",
    "u_random",
    "confidence",
    "sd_of_shots",
    "lower_each_side_C",
    "upper_each_side_C",
  ] as const;
  for (const row of oracleRows("statistics/spread_less_instrument.csv", columns)) {
    const [sd, random] = [numberIn(row.sd_of_readings), numberIn(row.u_random)];
    expectNear(spreadWithoutReadings(sd, random), numberIn(row.sd_of_shots), { absolute }, row);
    const readings = spreadLimits({ n: numberIn(row.n), sd }, numberIn(row.confidence));
    const limits = readings && limitsWithoutReadings(readings, random);
    expectNear(limits?.low, numberIn(row.lower_each_side_C), { absolute }, row);
    expectNear(limits?.high, numberIn(row.upper_each_side_C), { absolute }, row);
  }
});
