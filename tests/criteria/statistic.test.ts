import { describe, expect, test } from "vitest";
import { evaluate, sentence } from "../../language/criteria/criteria.ts";
import { measured } from "./measured-shots.ts";
import { shotsWith } from "./shots.ts";
import { criterion } from "./words.ts";

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
    [
      "90th percentile of carry at least 150 yd",
      "carry",
      [100, 120, 140, 155],
      "met",
      "90th percentile 151 yd over 4 shots",
    ],
    [
      "10th percentile of carry at least 110 yd",
      "carry",
      [100, 120, 140],
      "missed",
      "10th percentile 104 yd over 3 shots",
    ],
    [
      "middle 80 % of carry spans at most 12 yd",
      "carry",
      [150, 155, 160],
      "met",
      "middle 80 % 8 yd over 3 shots",
    ],
    [
      "middle 50 % of offline spans at most 5 yd",
      "offline",
      [-8, 0, 8],
      "missed",
      "middle 50 % 8 yd over 3 shots",
    ],
    ["best carry at least 150 yd", "carry", [120, 152, 140], "met", "best 152 yd over 3 shots"],
    ["worst carry at least 130 yd", "carry", [120, 152, 140], "missed", "worst 120 yd over 3 shots"],
    ["best offline within ±2 yd", "offline", [-9, -3, 5], "missed", "best 3 yd left over 3 shots"],
    ["worst offline at most 8 yd left", "offline", [-9, -3, 5], "missed", "worst 9 yd left over 3 shots"],
    ["worst offline at most 8 yd left", "offline", [-8, -3, 12], "met", "worst 12 yd right over 3 shots"],
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
    expect(evaluate(neutralPath, shotsWith("club-path", [1, 1, null], { admitted: "TTF" })).cautions).toEqual(
      ["1 shot did not meet what the block requires and is not in the average."],
    );
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

  describe("the best and the worst shot", () => {
    const judge = (text: string, readings: readonly (number | null)[], asked = readings.length) =>
      evaluate(criterion("statistic", text), measured({ carry: readings, offline: readings }, { asked }));

    test("are settled as soon as no open shot can change it", () => {
      expect(judge("best carry at least 150 yd", [120, 152], 10)).toMatchObject({
        verdict: "met",
        observed: "best 152 yd over 2 shots; 8 shots short of 10",
        settles: null,
        deciding: [1],
      });
      expect(judge("worst carry at least 130 yd", [120, null], 10)).toMatchObject({
        verdict: "missed",
        deciding: [0],
      });
      expect(judge("worst offline within ±10 yd", [-12, 3], 10).verdict).toBe("missed");
      expect(judge("best offline within ±10 yd", [-8, 30], 10).verdict).toBe("met");
    });

    test("and no sooner, for an unknown shot may be it", () => {
      expect(judge("best carry at least 150 yd", [120, 130, 125, 120, null])).toMatchObject({
        verdict: "undecided",
        settles: "readings of carry for the shot that could not be judged",
        deciding: [4],
      });
      expect(judge("worst carry at least 110 yd", [120, null], 4)).toMatchObject({
        verdict: "undecided",
        settles: "the 2 shots not hit yet and the one that could not be judged",
        deciding: [1],
      });
      expect(judge("best carry at least 150 yd", [120, 130], 3).settles).toBe("the shot not hit yet");
      expect(judge("best offline at most 10 yd left", [-12, 30], 3).verdict).toBe("undecided");
      expect(judge("worst offline at most 10 yd left", [12, -3], 3).verdict).toBe("undecided");
      expect(judge("best carry between 140 yd and 150 yd", [145, 130], 3).verdict).toBe("undecided");
    });

    test("of two as far to either side the better is the best, and the worse the worst", () => {
      expect(judge("worst offline at most 10 yd left", [12, -12])).toMatchObject({
        verdict: "missed",
        observed: "worst 12 yd left over 2 shots",
      });
      expect(judge("best offline at most 10 yd left", [-12, 12])).toMatchObject({
        verdict: "met",
        observed: "best 12 yd right over 2 shots",
      });
    });
  });

  test("a percentile counts from out-to-in to in-to-out for either hand, and from left to right where that is written", () => {
    const path = [-4, -1, 0, 1, 2];
    const observed = (text: string, hand: "right" | "left", readings: readonly number[]) =>
      evaluate(criterion("statistic", text), shotsWith("club-path", readings, { hand })).observed;
    const handed = "75th percentile of club-path at most 3° in-to-out";
    expect(observed(handed, "right", path)).toBe("75th percentile 1.0° in-to-out over 5 shots");
    expect(
      observed(
        handed,
        "left",
        path.map((value) => -value),
      ),
    ).toBe("75th percentile 1.0° in-to-out over 5 shots");
    expect(observed("75th percentile of club-path at most 3° right", "left", path)).toBe(
      "75th percentile 1.0° right over 5 shots",
    );
  });

  test("a percentile that is none", () => {
    const beyond = {
      ...criterion("statistic", "90th percentile of carry at most 9 yd"),
      statistic: { kind: "percentile" as const, share: 1.2 },
    };
    expect(evaluate(beyond, shotsWith("carry", [1, 2]))).toMatchObject({
      verdict: "undecided",
      observed: "2 readings of carry only",
      settles: "a share between 0 % and 100 %",
    });
  });

  test("the criterion in a sentence", () => {
    expect(sentence(neutralPath)).toBe(
      "Over the block's shots, the average club-path is between 1° out-to-in and 3° in-to-out.",
    );
    expect(sentence(neutralPath, true)).toBe(
      "Over the block's shots that are as required, the average club-path is between 1° out-to-in and 3° in-to-out.",
    );
  });

  test.each([
    ["spread of carry at most 8 yd", "the spread of carry (standard deviation) is at most 8 yd"],
    ["best carry at least 150 yd", "the best carry (the largest value) is at least 150 yd"],
    ["worst carry at least 130 yd", "the worst carry (the smallest value) is at least 130 yd"],
    ["best offline within ±5 yd", "the best offline (the shot nearest to zero) is within ±5 yd"],
    [
      "worst offline at most 9 yd left",
      "the worst offline (the shot farthest from zero) is at most 9 yd left",
    ],
    [
      "middle 80 % of carry spans at most 12 yd",
      "the middle 80 % of carry (without the 10 % at either end) spans at most 12 yd",
    ],
    [
      "90th percentile of carry at least 150 yd",
      "the 90th percentile of carry (90 % of the shots are below it) is at least 150 yd",
    ],
    [
      "75th percentile of club-path at most 3° in-to-out",
      "the 75th percentile of club-path (75 % of the shots are not as far in-to-out) is at most 3° in-to-out",
    ],
    [
      "21st percentile of offline at most 3 yd left",
      "the 21st percentile of offline (21 % of the shots are farther left) is at most 3 yd left",
    ],
    [
      "12.5th percentile of offline within ±3 yd",
      "the 12.5th percentile of offline (12.5 % of the shots come before it) is within ±3 yd",
    ],
  ])("in a sentence: %s", (text, sense) => {
    expect(sentence(criterion("statistic", text))).toBe(`Over the block's shots, ${sense}.`);
  });
});
