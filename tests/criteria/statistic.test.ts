import { describe, expect, test } from "vitest";
import { evaluate, sentence } from "../../language/criteria/criteria.ts";
import type { Amount, Bounds } from "../../shared/plan-model.ts";
import { expectNear, numberIn, numbersIn, oracleRows } from "../support/oracle.ts";
import { shotsWith } from "./shots.ts";
import { criterion, units } from "./words.ts";

const neutralPath = criterion("statistic", "average club-path between 1° out-to-in and 3° in-to-out");

describe("of the shots hit", () => {
  test("an average inside its range", () => {
    expect(evaluate(neutralPath, shotsWith("club-path", [0.4, 1.9, 1.3]))).toEqual({
      verdict: "met",
      required: "average club-path between 1° out-to-in and 3° in-to-out",
      observed: "average 1.2° in-to-out over 3 shots",
      brief: "1.2° in-to-out",
      value: expect.closeTo((1.2 * Math.PI) / 180, 12),
      shotsUsed: 3,
      tally: null,
      interval: null,
      settles: null,
      deciding: [0, 1, 2],
      cautions: [],
    });
  });

  test("direction words follow the hand", () => {
    const shots = shotsWith("club-path", [2.4, 2.2], { hand: "left" });
    expect(evaluate(neutralPath, shots)).toMatchObject({
      verdict: "missed",
      observed: "average 2.3° out-to-in over 2 shots",
    });
  });

  test("and are those the coach chose, where a metric has two for a side", () => {
    const shots = shotsWith("club-path", [2.4, 2.2], { hand: "left" });
    const observed = (text: string) => evaluate(criterion("statistic", text), shots).observed;
    expect(observed("average club-path at least 1° right")).toBe("average 2.3° right over 2 shots");
    expect(observed("average club-path within 3° of 1° left")).toBe("average 2.3° right over 2 shots");
    expect(observed("average club-path at least 1° out-to-in")).toBe("average 2.3° out-to-in over 2 shots");
    expect(observed("average club-path within ±3°")).toBe("average 2.3° out-to-in over 2 shots");
  });

  test.each([
    ["median carry at least 150 yd", "carry", [120, 152, 160], "met", "median 152 yd over 3 shots"],
    ["median carry at least 150 yd", "carry", [120, 140, 152, 160], "missed", "median 146 yd over 4 shots"],
    ["spread of carry at most 8 yd", "carry", [150, 158, 166], "met", "spread 8 yd over 3 shots"],
    ["spread of carry below 8 yd", "carry", [150, 158, 166], "missed", "spread 8 yd over 3 shots"],
    ["average offline at most 5 yd left", "offline", [-9, -3], "missed", "average 6 yd left over 2 shots"],
    ["average offline at most 5 yd left", "offline", [9, 3], "met", "average 6 yd right over 2 shots"],
  ])("%s", (text, metric, readings, verdict, observed) => {
    expect(evaluate(criterion("statistic", text), shotsWith(metric, readings))).toMatchObject({
      verdict,
      observed,
    });
  });

  test("a value is shown finely enough to tell it from the limit", () => {
    const spread = criterion("statistic", "spread of club-path at most 2.5°");
    expect(evaluate(spread, shotsWith("club-path", [0, 3.5496])).observed).toBe("spread 2.51° over 2 shots");
    const average = criterion("statistic", "average carry at least 150 yd");
    expect(evaluate(average, shotsWith("carry", [149.9, 150, 149.98])).observed).toBe(
      "average 149.96 yd over 3 shots",
    );
  });

  test("mirror images are shown with the same digits", () => {
    const median = criterion("statistic", "median club-path between 1° out-to-in and 1° in-to-out");
    expect(evaluate(median, shotsWith("club-path", [0.8, 1.3])).observed).toBe(
      "median 1.1° in-to-out over 2 shots",
    );
    expect(evaluate(median, shotsWith("club-path", [-0.8, -1.3], { hand: "left" })).observed).toBe(
      "median 1.1° in-to-out over 2 shots",
    );
  });

  test("exactly at the limit counts as inside, in spite of binary fractions", () => {
    const average = criterion("statistic", "average smash-factor at least 0.2");
    expect(evaluate(average, shotsWith("smash-factor", [0.1, 0.2, 0.3].toReversed())).verdict).toBe("met");
    const degrees = criterion("statistic", "average club-path at most 0.7° right");
    expect(evaluate(degrees, shotsWith("club-path", [0.1, 0.7, 1.3])).verdict).toBe("met");
  });

  test("a statistic of the shots hit cannot be settled early", () => {
    expect(evaluate(neutralPath, shotsWith("club-path", [1, 1], { asked: 12 }))).toMatchObject({
      verdict: "undecided",
      observed: "average 1.0° in-to-out over 2 shots; 10 shots short of 12",
      settles: "the 10 shots not hit yet",
    });
  });

  test("a spread needs two shots", () => {
    const spread = criterion("statistic", "spread of carry at most 8 yd");
    expect(evaluate(spread, shotsWith("carry", [150]))).toMatchObject({
      verdict: "undecided",
      observed: "one reading of carry only",
      value: null,
      settles: "a spread needs 2 shots or more",
    });
  });

  test("a spread of few shots, or of none, is cautioned about", () => {
    const spread = criterion("statistic", "spread of carry at most 8 yd");
    const over = (readings: readonly number[]) => evaluate(spread, shotsWith("carry", readings)).cautions;
    const ten = [150, 151, 152, 153, 154, 155, 156, 157, 158, 159];
    expect(over(ten)).toEqual([]);
    expect(over(ten.slice(1))).toEqual([
      "A spread over 9 shots is rough: luck alone often makes it a third smaller or larger.",
    ]);
    expect(over(ten.map(() => 150))).toEqual([
      "All values are equal: the readings are probably coarser than the shots differ.",
    ]);
    const average = criterion("statistic", "average carry at least 140 yd");
    expect(evaluate(average, shotsWith("carry", [150, 150])).cautions).toEqual([]);
  });

  describe("with readings missing", () => {
    test("most are known: judged on those, and said so", () => {
      expect(evaluate(neutralPath, shotsWith("club-path", [1, 1, 2, 2, null]))).toMatchObject({
        verdict: "met",
        observed: "average 1.5° in-to-out over 4 shots",
        shotsUsed: 4,
        deciding: [0, 1, 2, 3],
        cautions: ["1 shot without a reading of club-path is not in the average."],
      });
    });

    test("fewer than 80 % are known: undecided", () => {
      expect(evaluate(neutralPath, shotsWith("club-path", [1, 1, 2, null]))).toMatchObject({
        verdict: "undecided",
        settles: "readings of club-path for 1 more of the 4 shots: 3 are too few",
      });
    });

    test("none is known: not measured", () => {
      expect(evaluate(neutralPath, shotsWith("club-path", [null, null]))).toMatchObject({
        verdict: "not-measured",
        observed: "no reading of club-path in 2 shots",
        value: null,
        settles: "readings of club-path",
        cautions: [],
      });
      expect(evaluate(neutralPath, shotsWith("club-path", [], { asked: 12 }))).toMatchObject({
        verdict: "not-measured",
        observed: "no shots hit",
        settles: "the 12 shots not hit yet",
      });
    });
  });

  test("only shots that meet the requirements enter, and one that may not meet them is unknown", () => {
    const shots = shotsWith("club-path", [1, 1, 1, 1, 9, 9], { admitted: "TTTTFU" });
    expect(evaluate(neutralPath, shots)).toMatchObject({
      verdict: "met",
      observed: "average 1.0° in-to-out over 4 shots as required",
      cautions: [
        "1 shot is not in the average: whether the block's requirements were met cannot be told.",
        "1 shot did not meet what the block requires and is not in the average.",
      ],
    });
    expect(evaluate(neutralPath, shotsWith("club-path", [1, 1], { admitted: "FF" }))).toMatchObject({
      verdict: "not-measured",
      observed: "none of 2 shots met what the block requires",
      settles: "shots that meet what the block requires",
    });
    expect(evaluate(neutralPath, shotsWith("club-path", [1], { admitted: "F", asked: 3 }))).toMatchObject({
      observed: "the one shot did not meet what the block requires; 2 shots short of 3",
      settles: "the 2 shots not hit yet",
    });
    expect(evaluate(neutralPath, shotsWith("club-path", [1, 1], { admitted: "UU" }))).toMatchObject({
      verdict: "not-measured",
      observed: "no usable reading of club-path in 2 shots",
      settles: "readings of attack-angle",
    });
  });

  test("the criterion in a sentence", () => {
    expect(sentence(neutralPath)).toBe(
      "Over the block's shots, the average club-path is between 1° out-to-in and 3° in-to-out.",
    );
    expect(sentence(neutralPath, true)).toBe(
      "Over the block's shots that are as required, the average club-path is between 1° out-to-in and 3° in-to-out.",
    );
    expect(sentence(criterion("statistic", "spread of carry at most 8 yd"))).toBe(
      "Over the block's shots, the spread of carry (standard deviation) is at most 8 yd.",
    );
  });
});

describe("as ability", () => {
  const pathAt90 = criterion("statistic", "average club-path within ±2° at 90 % confidence");

  test("the reference table of averages", () => {
    const columns = [
      "data",
      "confidence",
      "lower_each_side_C",
      "upper_each_side_C",
      "limit_low",
      "limit_high",
      "verdict_missed_two_sided",
    ] as const;
    for (const row of oracleRows("statistics/mean_intervals.csv", columns)) {
      const claim = {
        ...pathAt90,
        metric: "smash-factor",
        confidence: numberIn(row.confidence),
        bounds: range(numberIn(row.limit_low), numberIn(row.limit_high)),
      };
      const { verdict, interval } = evaluate(claim, shotsWith("smash-factor", numbersIn(row.data)));
      expect(verdict, JSON.stringify(row)).toBe(row.verdict_missed_two_sided);
      expectNear(interval?.low ?? undefined, numberIn(row.lower_each_side_C), { absolute: 1e-7 }, row);
      expectNear(interval?.high ?? undefined, numberIn(row.upper_each_side_C), { absolute: 1e-7 }, row);
    }
  });

  test("met, with its limits", () => {
    expect(evaluate(pathAt90, shotsWith("club-path", [0.1, -0.4, 0.5, 0.8, 0]))).toMatchObject({
      verdict: "met",
      required: "in the long run, average club-path within ±2°, at 90 % confidence",
      interval: {
        confidence: 0.9,
        method: "one-sided limits of Student's t",
        text: "0.1° out-to-in to 0.5° in-to-out",
      },
      cautions: [],
    });
  });

  test.each([
    ["on one side, the smaller amount first", [2.6, 2.1, 2.4], "right", "2.1° to 2.6° in-to-out"],
    ["whichever side that is", [2.6, 2.1, 2.4], "left", "2.1° to 2.6° out-to-in"],
    ["from no side to one", [0, 0.1, 0.1, 0.1], "right", "0.0° to 0.1° in-to-out"],
    ["on both sides", [0.4, -0.1, -0.1, 0.4], "left", "0.1° in-to-out to 0.4° out-to-in"],
    ["so close that it takes a digit more", [1.01, 1.02, 1.03], "right", "1.01° to 1.03° in-to-out"],
  ] as const)("limits are shown %s", (_, readings, hand, text) => {
    const wide = criterion("statistic", "average club-path within ±30° at 90 % confidence");
    expect(evaluate(wide, shotsWith("club-path", readings, { hand })).interval?.text).toBe(text);
  });

  test("undecided: about how many more shots would decide it", () => {
    // the reference table: 5 shots, gap 1, standard deviation 2, confidence 0.9: 9 in all
    const atLeast = criterion("statistic", "average smash-factor at least 0 at 90 % confidence");
    const readings = [-1, -1, 0, 1, 1].map((step) => 1 + 2 * step);
    expect(evaluate(atLeast, shotsWith("smash-factor", readings))).toMatchObject({
      verdict: "undecided",
      settles: "about 4 more shots if the player goes on as observed (estimate)",
    });
  });

  test("exactly at the limit no number of shots decides", () => {
    expect(evaluate(pathAt90, shotsWith("club-path", [1, 2, 3])).settles).toBe(
      "too close to call: not even 1,000 shots in all would decide it if the player goes on as observed (estimate)",
    );
  });

  test("from a hundred shots on the estimate is rounded up to the next ten", () => {
    // Gap 0.1, standard deviation 1.044, t(0.9) about 1.29: (1.29 × 1.044 / 0.1)² = 181 in all, 169 more than the 12.
    const atLeast = criterion("statistic", "average smash-factor at least 0.9 at 90 % confidence");
    const readings = Array.from({ length: 12 }, (_, index) => (index % 2 === 0 ? 0 : 2));
    expect(evaluate(atLeast, shotsWith("smash-factor", readings)).settles).toBe(
      "about 170 more shots if the player goes on as observed (estimate)",
    );
  });

  test("equal readings are no proof, and it says so", () => {
    expect(evaluate(pathAt90, shotsWith("club-path", [1, 1, 1])).cautions).toEqual([
      "All values are equal, so the limits show no doubt at all: the readings are probably coarser than the shots differ.",
    ]);
  });

  test("limits just outside a range do not make it missed", () => {
    // 3.5 − 1.89/√3 = 2.41 is beyond 2, but 3.5 − 2.92/√3 = 1.81 is not
    const shots = shotsWith("club-path", [2.5, 3.5, 4.5]);
    expect(evaluate(pathAt90, shots)).toMatchObject({
      verdict: "undecided",
      cautions: [
        "The limits lie outside the range, but not far enough: a range has two sides to miss, and calling it missed takes wider limits.",
      ],
    });
  });

  test("only at the planned number of shots", () => {
    expect(evaluate(pathAt90, shotsWith("club-path", [0, 0.1, 0.2], { asked: 5 }))).toMatchObject({
      verdict: "undecided",
      interval: null,
      settles: "the 2 shots not hit yet: ability is judged on all 5",
    });
    expect(evaluate(pathAt90, shotsWith("club-path", [0, 0.1, 0.2], { asked: 2 })).verdict).toBe("met");
  });

  test.each([
    [
      { ...pathAt90, statistic: "median" as const },
      "ability is judged for an average only; without the confidence, the median of the shots hit is judged",
    ],
    [{ ...pathAt90, confidence: 1 }, "a confidence of at least 50 % and less than 100 %"],
  ])("what cannot be judged is undecided and says why", (claim, settles) => {
    expect(evaluate(claim, shotsWith("club-path", [0, 1, 2]))).toMatchObject({
      verdict: "undecided",
      settles,
    });
  });

  test("a single shot decides nothing", () => {
    expect(evaluate(pathAt90, shotsWith("club-path", [0]))).toMatchObject({
      verdict: "undecided",
      settles: "2 shots or more with a reading",
    });
  });

  test("the criterion in a sentence", () => {
    expect(sentence(pathAt90)).toBe(
      "In the long run, the player's average club-path is within ±2°, shown at 90 % confidence.",
    );
  });
});

/** Bounds without a unit; an infinite limit is none. */
function range(low: number, high: number): Bounds {
  const plain = (value: number): Amount => ({
    value: Math.abs(value),
    unit: units[""] ?? { symbol: "", factor: 1 },
    direction: value < 0 ? { word: "minus", sign: -1, handed: false } : null,
  });
  if (low === Number.NEGATIVE_INFINITY) return limit(high, "at most");
  if (high === Number.POSITIVE_INFINITY) return limit(low, "at least");
  return { kind: "between", one: plain(low), other: plain(high) };

  // A limit with the word of the negative side is a limit on the amount on that side.
  function limit(value: number, kind: "at most" | "at least"): Bounds {
    const mirrored = kind === "at most" ? "at least" : "at most";
    return { kind: value < 0 ? mirrored : kind, limit: plain(value) };
  }
}
