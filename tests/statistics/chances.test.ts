import { describe, expect, test } from "vitest";
import { fewestShotsFor } from "../../shared/statistics/chances.ts";
import { slackOf } from "../../shared/statistics/interval.ts";
import { meanChances, meanChangeChances } from "../../shared/statistics/mean-chances.ts";
import { criticalCounts } from "../../shared/statistics/proportion.ts";
import { shareChances } from "../../shared/statistics/share-chances.ts";
import { spreadLimits } from "../../shared/statistics/spread.ts";
import { spreadChances, spreadRatioChances } from "../../shared/statistics/spread-chances.ts";
import { spreadRatioLimits } from "../../shared/statistics/spread-change.ts";
import { meanVerdict } from "../../shared/statistics/student.ts";
import { expectNear, numberIn, oracleRows } from "../support/oracle.ts";
import { sampleWith, shotsFrom, unlimited } from "./samples.ts";

const absolute = 1e-6;
const slack = slackOf(1);
const atLeast = (low: number) => ({ low, high: unlimited });

describe("averages", () => {
  const ofOne = (n: number, gap: number, confidence: number) =>
    meanChances({ n, mean: gap, sd: 1 }, atLeast(0), confidence);
  const ofTwo = (n: number, gap: number, confidence: number) =>
    meanChangeChances({ n, mean: 0, sd: 1 }, { n, mean: gap, sd: 1 }, atLeast(0), confidence);
  const chancesOf = (name: string) => (name.startsWith("two") ? ofTwo : ofOne);

  test("the chance of a decision: the reference table", () => {
    const columns = ["case", "gap_over_sd", "confidence", "n_each", "probability_of_deciding"] as const;
    for (const row of oracleRows("statistics/power_t.csv", columns)) {
      const [n, gap, confidence] = [
        numberIn(row.n_each),
        numberIn(row.gap_over_sd),
        numberIn(row.confidence),
      ];
      const expected = numberIn(row.probability_of_deciding);
      expectNear(chancesOf(row.case)(n, gap, confidence).met, expected, { absolute }, row);
      expectNear(chancesOf(row.case)(n, -gap, confidence).missed, expected, { absolute }, row);
    }
  });

  test("the fewest shots for a wanted chance: the reference table", () => {
    const columns = ["case", "gap_over_sd", "confidence", "power", "smallest_n_each"] as const;
    for (const row of oracleRows("statistics/sample_size_t.csv", columns)) {
      const [gap, confidence] = [numberIn(row.gap_over_sd), numberIn(row.confidence)];
      const chance = (n: number) => chancesOf(row.case)(n, gap, confidence).met;
      const fewest = fewestShotsFor(numberIn(row.power), chance, true);
      expect(fewest, JSON.stringify(row)).toBe(numberIn(row.smallest_n_each));
    }
  });

  test("a range: the share of simulated blocks that are called met, and missed", () => {
    const { normal } = shotsFrom(29);
    for (const [claim, mean] of [
      [{ low: -1, high: 1 }, 0.3],
      [{ low: -0.4, high: 0.4 }, 0.9],
      [{ low: -0.1, high: 0.1 }, 0],
    ] as const) {
      const seen = { met: 0, missed: 0, undecided: 0 };
      const tries = 4000;
      for (let trial = 0; trial < tries; trial++) {
        const block = sampleWith(Array.from({ length: 8 }, () => mean + normal()));
        seen[meanVerdict(block, claim, 0.8, slack)]++;
      }
      const { met, missed } = meanChances({ n: 8, mean, sd: 1 }, claim, 0.8);
      expectNear(met, seen.met / tries, { absolute: 0.025 }, { claim });
      expectNear(missed, seen.missed / tries, { absolute: 0.025 }, { claim });
    }
  });

  test("the promise: at the limit itself each wrong verdict has the probability allowed, and no more in a range", () => {
    const atLimit = meanChances({ n: 7, mean: 3, sd: 2 }, atLeast(3), 0.9);
    expectNear(atLimit.met, 0.1, { absolute: 1e-9 }, {});
    expectNear(atLimit.missed, 0.1, { absolute: 1e-9 }, {});
    for (const width of [0, 0.2, 0.5, 1, 3]) {
      const { missed } = meanChances({ n: 7, mean: 0, sd: 1 }, { low: -width, high: 0 }, 0.9);
      expect(missed).toBeLessThanOrEqual(0.1 + 1e-4);
    }
  });

  test("single shots and a confidence that is none decide nothing", () => {
    const nothing = { met: 0, missed: 0 };
    expect(meanChances({ n: 1, mean: 4, sd: undefined }, atLeast(0), 0.9)).toEqual(nothing);
    expect(meanChances({ n: 5, mean: 4, sd: 1 }, atLeast(0), 1)).toEqual(nothing);
    expect(meanChances({ n: 5, mean: 4, sd: 0 }, atLeast(4), 0.9)).toEqual({ met: 1, missed: 0 });
    expect(meanChances({ n: 5, mean: 4, sd: 0 }, atLeast(5), 0.9)).toEqual({ met: 0, missed: 1 });
    const one = { n: 1, mean: 4, sd: undefined };
    expect(meanChangeChances(one, { n: 5, mean: 4, sd: 1 }, atLeast(0), 0.9)).toEqual(nothing);
  });
});

describe("shares", () => {
  test("the reference table", () => {
    const columns = [
      "share",
      "true_rate",
      "confidence",
      "verdict_sought",
      "probability_n10",
      "probability_n20",
      "probability_n30",
      "first_n_with_probability_0.8",
    ] as const;
    for (const row of oracleRows("statistics/power_proportion.csv", columns)) {
      const [share, rate, confidence] = [row.share, row.true_rate, row.confidence].map(numberIn) as Three;
      const chance = (n: number) =>
        shareChances(n, rate, share, confidence)[row.verdict_sought === "met" ? "met" : "missed"];
      expectNear(chance(10), numberIn(row.probability_n10), { absolute }, row);
      expectNear(chance(20), numberIn(row.probability_n20), { absolute }, row);
      expectNear(chance(30), numberIn(row.probability_n30), { absolute }, row);
      const first = row["first_n_with_probability_0.8"];
      const expected = first === "over 120" ? undefined : numberIn(first);
      expect(fewestShotsFor(0.8, chance, false, 2, 120), JSON.stringify(row)).toBe(expected);
    }
  });

  test("at most is the mirror, and what no count decides has no chance", () => {
    const least = shareChances(20, 0.85, 0.7, 0.8);
    const most = shareChances(20, 0.85, 0.7, 0.8, "at most");
    expect(most).toEqual({ met: least.missed, missed: least.met });
    expect(criticalCounts(10, 0.9, 0.9).met).toBeUndefined();
    expect(shareChances(10, 1, 0.9, 0.9).met).toBe(0);
  });
});

describe("spreads", () => {
  test("the reference table", () => {
    const columns = [
      "true_sd_over_limit",
      "confidence",
      "verdict_sought",
      "probability_n5",
      "probability_n10",
      "probability_n20",
      "probability_n30",
      "first_n_with_probability_0.8",
    ] as const;
    for (const row of oracleRows("statistics/power_sd.csv", columns)) {
      const [sd, confidence] = [numberIn(row.true_sd_over_limit), numberIn(row.confidence)];
      const chance = (n: number) =>
        spreadChances(n, sd, 1, confidence)[row.verdict_sought === "met" ? "met" : "missed"];
      expectNear(chance(5), numberIn(row.probability_n5), { absolute }, row);
      expectNear(chance(10), numberIn(row.probability_n10), { absolute }, row);
      expectNear(chance(20), numberIn(row.probability_n20), { absolute }, row);
      expectNear(chance(30), numberIn(row.probability_n30), { absolute }, row);
      const first = row["first_n_with_probability_0.8"];
      const expected = first === "over 200" ? undefined : numberIn(first);
      expect(fewestShotsFor(0.8, chance, true, 2, 200), JSON.stringify(row)).toBe(expected);
    }
  });

  test("spread and ratio: the share of simulated blocks that are decided", () => {
    const { normal } = shotsFrom(31);
    const block = (n: number, sd: number) => sampleWith(Array.from({ length: n }, () => sd * normal()));
    const seen = { met: 0, missed: 0, fell: 0, notFell: 0 };
    const tries = 4000;
    for (let trial = 0; trial < tries; trial++) {
      const limits = spreadLimits(block(9, 1.4), 0.8);
      if (limits && limits.high <= 2) seen.met++;
      if (limits && limits.low > 2) seen.missed++;
      const ratio = spreadRatioLimits(block(12, 1), block(8, 0.6), 0.8);
      if (ratio && ratio.high <= 0.8) seen.fell++;
      if (ratio && ratio.low > 0.8) seen.notFell++;
    }
    const spread = spreadChances(9, 1.4, 2, 0.8);
    expectNear(spread.met, seen.met / tries, { absolute: 0.025 }, {});
    expectNear(spread.missed, seen.missed / tries, { absolute: 0.025 }, {});
    const ratio = spreadRatioChances({ baseline: 12, now: 8 }, 0.6, 0.8, 0.8);
    expectNear(ratio.met, seen.fell / tries, { absolute: 0.025 }, {});
    expectNear(ratio.missed, seen.notFell / tries, { absolute: 0.025 }, {});
  });

  test("at the limit itself each wrong verdict has the probability allowed", () => {
    for (const { met, missed } of [
      spreadChances(9, 2, 2, 0.9),
      spreadRatioChances({ baseline: 12, now: 8 }, 0.8, 0.8, 0.9),
    ]) {
      expectNear(met, 0.1, { absolute: 1e-12 }, {});
      expectNear(missed, 0.1, { absolute: 1e-12 }, {});
    }
  });

  test("single shots and a confidence that is none decide nothing", () => {
    const nothing = { met: 0, missed: 0 };
    expect(spreadChances(1, 2, 3, 0.9)).toEqual(nothing);
    expect(spreadChances(5, 2, 3, 1)).toEqual(nothing);
    expect(spreadRatioChances({ baseline: 1, now: 5 }, 0.5, 0.8, 0.9)).toEqual(nothing);
  });
});

type Three = [number, number, number];
