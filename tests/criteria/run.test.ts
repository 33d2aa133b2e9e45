import { describe, expect, test } from "vitest";
import { evaluate, sentence } from "../../language/criteria/criteria.ts";
import { numberIn, oracleRows } from "../support/oracle.ts";
import { shotsLike } from "./shots.ts";
import { criterion } from "./words.ts";

const threeInARow = criterion("run", "3 in a row on target");

test("the reference table", () => {
  const columns = ["shots_planned", "run_needed", "pattern_T_F_U", "verdict"] as const;
  for (const row of oracleRows("statistics/three_valued_streaks.csv", columns)) {
    const claim = { ...threeInARow, length: numberIn(row.run_needed) };
    const asked = numberIn(row.shots_planned);
    const planned = row.pattern_T_F_U.slice(0, asked); // surplus shots never reach a criterion
    const { verdict } = evaluate(claim, shotsLike(planned, { asked }));
    expect(verdict, JSON.stringify(row)).toBe(row.verdict);
  }
});

describe("a run of three", () => {
  test.each([
    // pattern, asked, verdict, observed, what settles it
    ["FTTTF", 5, "met", "longest run: 3 shots on target", null],
    ["TTFTT", 5, "missed", "longest run: 2 shots on target", null],
    ["FTFFF", 5, "missed", "longest run: 1 shot on target", null],
    ["FFFFF", 7, "missed", "no shot on target; 2 shots short of 7", null],
    ["", 5, "not-measured", "no shots hit", "the 5 shots not hit yet"],
    [
      "UUU",
      5,
      "not-measured",
      "none of 3 shots could be judged; 2 shots short of 5",
      "readings of club-path",
    ],
  ])("%s of %d is %s", (pattern, asked, verdict, observed, settles) => {
    expect(evaluate(threeInARow, shotsLike(pattern, { asked }))).toMatchObject({
      verdict,
      observed,
      settles,
    });
  });

  test.each([
    // pattern, asked, what settles it
    ["TTFTT", 6, "needs the next shot"],
    ["TTFTT", 8, "needs the next shot"],
    ["TTFTT", 9, "needs the next shot, or 3 in a row later"],
    ["TTFFT", 8, "needs the next 2 shots"],
    ["TTFFT", 9, "needs the next 2 shots, or 3 in a row later"],
    ["TTFFF", 8, "needs each of the 3 shots not hit yet"],
    ["TTFFF", 9, "needs 3 in a row among the 4 shots not hit yet"],
    ["TTUFF", 5, "readings of club-path for the shot that could not be judged"],
    ["UUTFF", 5, "readings of club-path for the 2 shots that could not be judged"],
    ["FFFTU", 6, "readings of club-path for the shot that could not be judged, and the shot not hit yet"],
    [
      "TTUFF",
      9,
      "needs 3 in a row among the 4 shots not hit yet, or readings of club-path for the shot that could not be judged",
    ],
    [
      "FFFTU",
      9,
      "needs 3 in a row among the 4 shots not hit yet, or fewer with readings of club-path for the shot that could not be judged",
    ],
  ])("%s of %d asked is undecided: %s", (pattern, asked, settles) => {
    expect(evaluate(threeInARow, shotsLike(pattern, { asked }))).toMatchObject({
      verdict: "undecided",
      settles,
    });
  });

  test("a hit that is not certain is not called one", () => {
    expect(evaluate(threeInARow, shotsLike("FUFUU")).observed).toBe(
      "no shot on target for certain; 3 shots could not be judged",
    );
    expect(evaluate(threeInARow, shotsLike("TFUTF")).observed).toBe(
      "longest run: 1 shot on target; 1 shot could not be judged",
    );
  });

  test("the first of the longest runs is shown", () => {
    expect(evaluate(threeInARow, shotsLike("TFTTTFTTT"))).toMatchObject({ value: 3, deciding: [2, 3, 4] });
    expect(evaluate(threeInARow, shotsLike("FFTFTT"))).toMatchObject({ value: 2, deciding: [4, 5] });
    expect(evaluate(threeInARow, shotsLike("TUTT"))).toMatchObject({ value: 2, deciding: [2, 3] });
    expect(evaluate(threeInARow, shotsLike("FFF"))).toMatchObject({ value: 0, deciding: [] });
  });
});

test("a single hit is a run of one", () => {
  const one = criterion("run", "1 in a row on target");
  expect(evaluate(one, shotsLike("FF", { asked: 3 })).settles).toBe("needs the shot not hit yet");
  expect(evaluate(one, shotsLike("FF", { asked: 4 })).settles).toBe("needs 1 of the 2 shots not hit yet");
});

test("a shot that fails a requirement ends a run", () => {
  expect(evaluate(threeInARow, shotsLike("TTTTT", { admitted: "TTFTT" }))).toMatchObject({
    verdict: "missed",
    required: "3 in a row on target and as required",
    observed: "longest run: 2 shots on target and as required",
    cautions: ["1 shot did not meet what the block requires: it ends a run."],
  });
});

test("the criterion in a sentence", () => {
  expect(sentence(threeInARow)).toBe("Somewhere in the block, 3 shots in a row are on target.");
  expect(sentence(threeInARow, true)).toBe(
    "Somewhere in the block, 3 shots in a row are on target and as required.",
  );
  expect(sentence(criterion("run", "1 in a row with carry at least 150 yd"))).toBe(
    "Somewhere in the block, 1 shot has carry at least 150 yd.",
  );
});
