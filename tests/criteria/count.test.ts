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
    expect(verdict, JSON.stringify(row)).toBe(row.verdict);
  }
});

describe("what the shots to come must bring, in few words", () => {
  test.each([
    ["at least 7 of 10 shots on target", "TTTT", "needs 3 of the next 6"],
    ["at least 7 of 10 shots on target", "TTTTTFFF", "needs each of the next 2"],
    ["at least 7 of 10 shots on target", "TTTTTTFFF", "needs the next shot"],
    ["at most 2 of 10 shots on target", "TFFF", "allows 1 of the next 6"],
    ["at most 2 of 10 shots on target", "TTFF", "allows none of the next 6"],
    ["at most 2 of 10 shots on target", "TTFFFFFFF", "holds unless the next is one more"],
    // Shots that could not be judged leave it open as well, or nothing does.
    ["at least 7 of 10 shots on target", "TTTTUUF", undefined],
    ["at least 7 of 10 shots on target", "TTTTTTT", undefined],
    ["at least 7 of 10 shots on target", "", undefined],
  ])("%s, after %s: %s", (words, pattern, needs) => {
    expect(evaluate(criterion("count", words), shotsLike(pattern, { asked: 10 })).needs).toBe(needs);
  });
});

describe("at least", () => {
  test("enough hits", () => {
    expect(evaluate(sevenOfTen, shotsLike("TTFTTFTTFT"))).toEqual({
      verdict: "met",
      required: "at least 7 of 10 shots on target",
      observed: "7 of 10 shots on target",
      brief: "7 of 10",
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
    ["TTTT", 10, "undecided", "needs 3 of the 6 shots not hit yet"],
    ["TTTTTTFFF", 10, "undecided", "needs the shot not hit yet"],
    ["TTTTTFFF", 10, "undecided", "needs each of the 2 shots not hit yet"],
    ["TTTTTTFFFU", 10, "undecided", "needs the shot that could not be judged"],
    ["TTTTTTFFUU", 10, "undecided", "needs 1 of the 2 shots that could not be judged"],
    ["TTTTUUF", 10, "undecided", "needs 3 among the 3 shots not hit yet and the 2 that could not be judged"],
    [
      "TTTTTFFU",
      10,
      "undecided",
      "needs 2 among the 2 shots not hit yet and the one that could not be judged",
    ],
    ["TTTTTFFFU", 10, "undecided", "needs both the shot not hit yet and the one that could not be judged"],
    ["TTTTTTT", 10, "met", null],
    ["FFFF", 10, "missed", null],
    ["", 10, "not-measured", "the 10 shots not hit yet"],
    ["UUU", 10, "not-measured", "readings of club-path"],
  ])("%s of %d asked is %s", (pattern, asked, verdict, settles) => {
    expect(evaluate(sevenOfTen, shotsLike(pattern, { asked }))).toMatchObject({ verdict, settles });
  });

  test("what is open is said", () => {
    expect(evaluate(sevenOfTen, shotsLike("TTFTU", { asked: 10 }))).toMatchObject({
      observed: "3 of 4 shots on target; 1 more could not be judged; 5 shots short of 10",
      shotsUsed: 4,
      deciding: [4],
    });
    expect(evaluate(sevenOfTen, shotsLike("", { asked: 10 })).observed).toBe("no shots hit");
    expect(evaluate(sevenOfTen, shotsLike("UU", { asked: 10 })).observed).toBe(
      "none of 2 shots could be judged; 8 shots short of 10",
    );
  });
});

describe("at most", () => {
  test.each([
    ["FFFFFFFFFF", "met", null],
    ["TTFFFFFFFF", "met", null],
    ["TTTFF", "missed", null],
    ["TTFF", "undecided", "allows none of the 6 shots not hit yet"],
    ["TFFF", "undecided", "allows 1 of the 6 shots not hit yet"],
    ["TFFFFFFFUU", "undecided", "allows 1 of the 2 shots that could not be judged"],
    ["TTFFFFFFF", "undecided", "holds unless the shot not hit yet is one more"],
    ["TTFFFFFFFU", "undecided", "holds unless the shot that could not be judged is one more"],
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

describe("in a block that requires something", () => {
  test("at least: a shot that fails a requirement is no hit", () => {
    expect(evaluate(sevenOfTen, shotsLike("TTTTTTTTFF", { admitted: "TTTTTTTFTF" }))).toMatchObject({
      verdict: "met",
      required: "at least 7 of 10 shots on target and as required",
      observed: "7 of 10 shots on target and as required",
      tally: { hits: 7, misses: 3, unknown: 0 },
      deciding: [0, 1, 2, 3, 4, 5, 6],
      cautions: ["2 shots did not meet what the block requires: they use up their places but cannot count."],
    });
  });

  test("at most: a shot that fails a requirement counts against the goal", () => {
    expect(evaluate(twoOfTen, shotsLike("TTFFFFFFFF", { admitted: "TTTTFTTTTT" }))).toMatchObject({
      verdict: "missed",
      required: "at most 2 of 10 shots with offline at least 20 yd left, or not as required",
      observed: "3 of 10 shots with offline at least 20 yd left, or not as required",
      tally: { hits: 3, misses: 7, unknown: 0 },
      deciding: [0, 1, 4],
      cautions: ["1 shot did not meet what the block requires: it counts against this goal."],
    });
    expect(evaluate(twoOfTen, shotsLike("TTFFFFFFFF", { admitted: "FFTTTTTTTT" })).verdict).toBe("met");
  });

  test("at most: it leaves nothing open that the shot itself settles", () => {
    expect(evaluate(twoOfTen, shotsLike("TTTFFFFFFF", { admitted: "UUUTTTTTTT" })).verdict).toBe("missed");
    expect(evaluate(twoOfTen, shotsLike("TTUFFFFFFF", { admitted: "TTFTTTTTTT" })).verdict).toBe("missed");
    expect(evaluate(twoOfTen, shotsLike("TTFFFFFFFF", { admitted: "TTUTTTTTTT" })).verdict).toBe("undecided");
  });

  test("only the shots that the goal looks at are cautioned about", () => {
    const threeOfFour = criterion("count", "at least 3 of 4 shots on target");
    expect(evaluate(threeOfFour, shotsLike("TTTTTT", { admitted: "TTTTFF" })).cautions).toEqual([]);
  });

  test("what is not measured names the metrics that no shot has", () => {
    const shots = shotsLike("UUU", { admitted: "UUU" });
    expect(evaluate(sevenOfTen, shots).settles).toBe("readings of club-path and attack-angle");
    const pathIsKnown = (name: string) => [0, 0, 0].map((path) => (name === "club-path" ? path : undefined));
    expect(evaluate(sevenOfTen, { ...shots, values: pathIsKnown }).settles).toBe("readings of attack-angle");
  });
});

test("one shot is spoken of as one", () => {
  const one = criterion("count", "at least 1 of 1 shots on target");
  expect(evaluate(one, shotsLike("T"))).toMatchObject({
    required: "at least 1 of 1 shot on target",
    observed: "1 of 1 shot on target",
  });
  expect(evaluate(one, shotsLike("U")).observed).toBe("the one shot could not be judged");
  expect(evaluate(one, shotsLike("", { asked: 1 })).settles).toBe("the shot not hit yet");
});

test("a goal about shots on target in a block without a target says what is missing", () => {
  const shots = { ...shotsLike("UU"), metricsOf: () => [] };
  expect(evaluate(sevenOfTen, shots).settles).toBe("a target, which the block does not have");
});

test("the criterion in a sentence", () => {
  expect(sentence(sevenOfTen)).toBe("At least 7 of the first 10 shots are on target.");
  expect(sentence(sevenOfTen, true)).toBe("At least 7 of the first 10 shots are on target and as required.");
  expect(sentence(twoOfTen)).toBe("At most 2 of the first 10 shots have offline at least 20 yd left.");
  expect(sentence(twoOfTen, true)).toBe(
    "At most 2 of the first 10 shots have offline at least 20 yd left, or are not as required.",
  );
  expect(sentence(criterion("count", "at least 1 of 1 shots with carry at least 150 yd"), true)).toBe(
    "At least 1 of 1 shot has carry at least 150 yd, and is as required.",
  );
});
