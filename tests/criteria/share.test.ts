import { describe, expect, test } from "vitest";
import { evaluate, sentence } from "../../language/criteria/criteria.ts";
import { numberIn, oracleRows } from "../support/oracle.ts";
import { shotsLike } from "./shots.ts";
import { criterion } from "./words.ts";

/** So many hits, then so many misses. */
function result(hits: number, misses: number, unknown = 0): string {
  return "T".repeat(hits) + "F".repeat(misses) + "U".repeat(unknown);
}

describe("of the shots hit", () => {
  const seventy = criterion("share", "at least 70 % of shots on target");
  const tenth = criterion("share", "at most 10 % of shots with offline at least 20 yd right");

  test.each([
    [11, 9, "met"], // 0.55 × 20 is 11.000000000000002 in binary
    [10, 10, "missed"],
  ])("%d hits and %d misses, where 11 of 20 are needed: %s", (hits, misses, verdict) => {
    const fiftyFive = criterion("share", "at least 55 % of shots on target");
    expect(evaluate(fiftyFive, shotsLike(result(hits, misses)))).toMatchObject({
      verdict,
      required: "at least 55 % of shots on target (11 of 20)",
    });
  });

  test("a part of a shot is rounded up for at least, down for at most", () => {
    expect(evaluate(seventy, shotsLike(result(9, 3)))).toMatchObject({
      verdict: "met",
      required: "at least 70 % of shots on target (9 of 12)",
      observed: "9 of 12 shots on target (75 %)",
      value: 0.75,
    });
    expect(evaluate(seventy, shotsLike(result(8, 4))).verdict).toBe("missed");
    expect(evaluate(tenth, shotsLike(result(1, 18))).verdict).toBe("met");
    expect(evaluate(tenth, shotsLike(result(2, 17))).verdict).toBe("missed");
  });

  test("shots to come and unknown shots leave it open", () => {
    expect(evaluate(seventy, shotsLike(result(6, 1, 1), { asked: 12 }))).toMatchObject({
      verdict: "undecided",
      observed: "6 of 7 shots on target (86 %); 1 more could not be judged; 4 shots short of 12",
      settles: "needs 3 among the 4 shots not hit yet and the one that could not be judged",
    });
  });

  test("what is not measured still says which share is asked for", () => {
    expect(evaluate(seventy, shotsLike("UU", { asked: 10 }))).toMatchObject({
      verdict: "not-measured",
      required: "at least 70 % of shots on target (7 of 10)",
      observed: "none of 2 shots could be judged; 8 shots short of 10",
      value: null,
      settles: "readings of club-path",
    });
    expect(evaluate(seventy, shotsLike(""))).toMatchObject({
      verdict: "not-measured",
      required: "at least 70 % of shots on target",
      settles: "shots to judge",
    });
  });

  test("a share is shown finely enough to tell it from the one asked for", () => {
    expect(evaluate(seventy, shotsLike(result(16, 7)))).toMatchObject({
      verdict: "missed",
      observed: "16 of 23 shots on target (69.6 %)",
    });
    expect(evaluate(seventy, shotsLike(result(13, 10))).observed).toBe("13 of 23 shots on target (57 %)");
    expect(evaluate(seventy, shotsLike(result(7, 3))).observed).toBe("7 of 10 shots on target (70 %)");
  });

  test("a shot that fails a requirement is no hit, and one too many of at most", () => {
    const refused = { admitted: `${"T".repeat(19)}F` };
    expect(evaluate(seventy, shotsLike(`${result(14, 5)}T`, refused))).toMatchObject({
      verdict: "met",
      observed: "14 of 20 shots on target and as required (70 %)",
    });
    expect(evaluate(tenth, shotsLike(result(2, 18), refused))).toMatchObject({
      verdict: "missed",
      required: "at most 10 % of shots with offline at least 20 yd right, or not as required (2 of 20)",
      observed: "3 of 20 shots with offline at least 20 yd right, or not as required (15 %)",
    });
  });

  test("of a block that asks for at least so many shots, all that were hit count", () => {
    expect(evaluate(seventy, shotsLike(result(9, 6), { asked: 12 }))).toMatchObject({
      verdict: "missed",
      required: "at least 70 % of shots on target (11 of 15)",
    });
  });

  test("the criterion in a sentence", () => {
    expect(sentence(seventy)).toBe("Of the block's shots, at least 70 % are on target.");
    expect(sentence(tenth, true)).toBe(
      "Of the block's shots, at most 10 % have offline at least 20 yd right, or are not as required.",
    );
  });
});

describe("as ability", () => {
  const seventyAt80 = criterion("share", "at least 70 % of shots on target at 80 % confidence");
  const atMost30 = criterion("share", "at most 30 % of shots on target at 80 % confidence");

  test("the reference table of verdicts", () => {
    const columns = ["n", "hits", "share", "confidence", "verdict_exact"] as const;
    for (const row of oracleRows("statistics/proportion_verdicts.csv", columns)) {
      const hits = numberIn(row.hits);
      const claim = { ...seventyAt80, share: numberIn(row.share), confidence: numberIn(row.confidence) };
      const { verdict } = evaluate(claim, shotsLike(result(hits, numberIn(row.n) - hits)));
      expect(verdict, JSON.stringify(row)).toBe(row.verdict_exact);
    }
  });

  test("9 of 10 show it, 7 of 10 decide nothing, 5 of 10 refute it", () => {
    expect(evaluate(seventyAt80, shotsLike(result(9, 1)))).toMatchObject({
      verdict: "met",
      required: "in the long run, at least 70 % of shots on target, at 80 % confidence",
      observed: "9 of 10 shots on target (90 %)",
      settles: null,
    });
    expect(evaluate(seventyAt80, shotsLike(result(7, 3)))).toMatchObject({
      verdict: "undecided",
      settles:
        "too close to call: not even 1,000 shots in all would decide it if the player goes on as observed (estimate)",
    });
    expect(evaluate(seventyAt80, shotsLike(result(5, 5)))).toMatchObject({
      verdict: "missed",
      deciding: [5, 6, 7, 8, 9],
    });
  });

  test("the limits shown are those the verdict rests on", () => {
    // one-sided Clopper-Pearson limits of 9 in 10
    const { interval } = evaluate(seventyAt80, shotsLike(result(9, 1)));
    expect(interval?.low).toBeCloseTo(0.729, 3);
    expect(interval?.high).toBeCloseTo(0.9779, 3);
    expect(interval).toMatchObject({
      confidence: 0.8,
      method: "one-sided Clopper–Pearson limits (exact binomial)",
      text: "73 % to 98 %",
    });
  });

  test("about how many more shots would decide it", () => {
    expect(evaluate(seventyAt80, shotsLike(result(8, 2))).settles).toMatch(
      /^about \d+ more shots if the player goes on as observed \(estimate\)$/,
    );
  });

  test("nothing is decided before the planned number of shots, however clear", () => {
    expect(evaluate(seventyAt80, shotsLike(result(0, 9), { asked: 10 }))).toMatchObject({
      verdict: "undecided",
      interval: null,
      settles: "the shot not hit yet: ability is judged on all 10, and 9 or more of 10 show it",
    });
    expect(evaluate(atMost30, shotsLike("F", { asked: 10 })).settles).toBe(
      "the 9 shots not hit yet: ability is judged on all 10, and 1 or fewer of 10 show it",
    );
    expect(evaluate(seventyAt80, shotsLike("T", { asked: 3 })).settles).toBe(
      "the 2 shots not hit yet: ability is judged on all 3, and no result of 3 shots can show it",
    );
    expect(evaluate(seventyAt80, shotsLike("T", { asked: 5 })).settles).toBe(
      "the 4 shots not hit yet: ability is judged on all 5, and only all 5 show it",
    );
    expect(evaluate(atMost30, shotsLike("F", { asked: 5 })).settles).toBe(
      "the 4 shots not hit yet: ability is judged on all 5, and none of 5 shows it",
    );
  });

  test("a block that asks for at least so many is judged from there on", () => {
    expect(evaluate(seventyAt80, shotsLike(result(14, 1), { asked: 10 })).verdict).toBe("met");
  });

  test("unknown shots leave it open unless they cannot change it", () => {
    // 9 of 10 show it, 8 of 10 do not.
    expect(evaluate(seventyAt80, shotsLike(result(8, 1, 1)))).toMatchObject({
      verdict: "undecided",
      settles: "readings of club-path for the shot that could not be judged",
      shotsUsed: 9,
    });
    expect(evaluate(seventyAt80, shotsLike(result(9, 0, 1))).verdict).toBe("met");
    expect(evaluate(seventyAt80, shotsLike(result(4, 5, 1))).verdict).toBe("missed");
    expect(evaluate(seventyAt80, shotsLike("U".repeat(10))).verdict).toBe("not-measured");
  });

  test("at most is the same with the ends exchanged", () => {
    expect(evaluate(atMost30, shotsLike(result(1, 9))).verdict).toBe("met");
    expect(evaluate(atMost30, shotsLike(result(3, 7))).verdict).toBe("undecided");
    expect(evaluate(atMost30, shotsLike(result(5, 5))).verdict).toBe("missed");
  });

  test("a confidence that means nothing decides nothing", () => {
    for (const confidence of [0, 0.4, 1, Number.NaN])
      expect(evaluate({ ...seventyAt80, confidence }, shotsLike(result(10, 0)))).toMatchObject({
        verdict: "undecided",
        settles: "a confidence of at least 50 % and less than 100 %",
      });
  });

  test("the criterion in a sentence", () => {
    expect(sentence(seventyAt80)).toBe(
      "In the long run, at least 70 % of the player's shots are on target, shown at 80 % confidence.",
    );
  });
});
