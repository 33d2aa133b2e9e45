import { describe, expect, test } from "vitest";
import { evaluate, sentence } from "../../language/criteria/criteria.ts";
import { numberIn, oracleRows } from "../support/oracle.ts";
import { shotsLike } from "./shots.ts";
import { criterion } from "./words.ts";

const sevenOfTen = criterion("count", "at least 7 of 10 shots on target");
const twoOfTen = criterion("count", "at most 2 of 10 shots with offline at least 20 yd left");

test("the reference table", () => {
  const columns = ["shots_planned", "hits_needed", "pattern_T_F_U", "verdict"] as const;
  for (const row of oracleRows("statistics/three_valued_counts.csv", columns)) {
    const planned = numberIn(row.shots_planned);
    const claim = { ...sevenOfTen, count: numberIn(row.hits_needed), outOf: planned };
    const { verdict } = evaluate(claim, shotsLike(row.pattern_T_F_U, { asked: planned }));
    expect(verdict, JSON.stringify(row)).toBe(row.verdict.replace(" ", "-"));
  }
});

describe("at least", () => {
  test("enough hits", () => {
    expect(evaluate(sevenOfTen, shotsLike("TTFTTFTTFT"))).toEqual({
      verdict: "met",
      required: "at least 7 of 10 shots on target",
      observed: "7 of 10 shots on target",
      value: 7,
      shotsUsed: 10,
      tally: { hits: 7, misses: 3, unknown: 0 },
      interval: null,
      settles: null,
      deciding: [0, 1, 3, 4, 6, 7, 9],
      cautions: [],
    });
  });

  test("too few hits: the misses decided", () => {
    const { verdict, deciding } = evaluate(sevenOfTen, shotsLike("FFFFTTTTTT"));
    expect({ verdict, deciding }).toEqual({ verdict: "missed", deciding: [0, 1, 2, 3] });
  });

  test.each([
    // pattern, asked, verdict, what settles it
    ["TTTT", 10, "undecided", "needs 3 of the next 6 shots"],
    ["TTTTTTFFF", 10, "undecided", "needs the next shot"],
    ["TTTTTFFF", 10, "undecided", "needs all of the next 2 shots"],
    ["TTTTTTFFFU", 10, "undecided", "needs the shot that could not be judged"],
    ["TTTTTTFFUU", 10, "undecided", "needs 1 of the 2 shots that could not be judged"],
    ["TTTTUUF", 10, "undecided", "needs 3 among the next 3 shots and the 2 that could not be judged"],
    ["TTTTTFFU", 10, "undecided", "needs 2 among the next 2 shots and the one that could not be judged"],
    ["TTTTTTT", 10, "met", null],
    ["FFFF", 10, "missed", null],
    ["", 10, "not-measured", "10 shots to come"],
    ["UUU", 10, "not-measured", "readings of the metrics it is about"],
  ])("%s of %d asked is %s", (pattern, asked, verdict, settles) => {
    expect(evaluate(sevenOfTen, shotsLike(pattern, { asked }))).toMatchObject({ verdict, settles });
  });

  test("what is open is said", () => {
    expect(evaluate(sevenOfTen, shotsLike("TTFTU", { asked: 10 }))).toMatchObject({
      observed: "3 of 4 shots on target; 1 more could not be judged; 5 to come",
      shotsUsed: 4,
      deciding: [4],
    });
    expect(evaluate(sevenOfTen, shotsLike("", { asked: 10 })).observed).toBe("no shots hit");
    expect(evaluate(sevenOfTen, shotsLike("UU", { asked: 10 })).observed).toBe(
      "none of 2 shots could be judged; 8 to come",
    );
  });
});

describe("at most", () => {
  test.each([
    ["FFFFFFFFFF", "met", null],
    ["TTFFFFFFFF", "met", null],
    ["TTTFF", "missed", null],
    ["TTFF", "undecided", "allows none of the next 6 shots"],
    ["TFFF", "undecided", "allows 1 of the next 6 shots"],
    ["TFFFFFFFUU", "undecided", "allows 1 of the 2 shots that could not be judged"],
  ])("%s is %s", (pattern, verdict, settles) => {
    expect(evaluate(twoOfTen, shotsLike(pattern, { asked: 10 }))).toMatchObject({ verdict, settles });
  });

  test("the hits too many decided, or the misses that were enough", () => {
    expect(evaluate(twoOfTen, shotsLike("TTTFFFFFFF")).deciding).toEqual([0, 1, 2]);
    expect(evaluate(twoOfTen, shotsLike("TTFFFFFFFF")).deciding).toEqual([2, 3, 4, 5, 6, 7, 8, 9]);
  });
});

test("only the first shots of a longer block count", () => {
  const threeOfFour = criterion("count", "at least 3 of 4 shots on target");
  expect(evaluate(threeOfFour, shotsLike("TTFFTTTT", { asked: 18 }))).toMatchObject({
    verdict: "missed",
    tally: { hits: 2, misses: 2, unknown: 0 },
    deciding: [2, 3],
  });
});

test("shots that failed a requirement are spoken of", () => {
  expect(evaluate(sevenOfTen, shotsLike("TTTTTTTTFF", { admitted: "TTTTTTTTFF" })).cautions).toEqual([
    "2 shots did not meet what the block requires: they use up their places but cannot count.",
  ]);
});

test("the criterion in a sentence", () => {
  expect(sentence(sevenOfTen)).toBe("At least 7 of the first 10 shots are on target.");
  expect(sentence(twoOfTen)).toBe("At most 2 of the first 10 shots have offline at least 20 yd left.");
});
