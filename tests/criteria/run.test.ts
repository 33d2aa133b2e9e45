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
    expect(verdict, JSON.stringify(row)).toBe(row.verdict.replace(" ", "-"));
  }
});

describe("a run of three", () => {
  test.each([
    // pattern, asked, verdict, observed, what settles it
    ["FTTTF", 5, "met", "longest run 3 in a row", null],
    ["TTFTT", 5, "missed", "longest run 2 in a row", null],
    ["TTFTT", 8, "undecided", "longest run 2 in a row; 3 to come", "needs the next shot on target"],
    [
      "TTFFT",
      8,
      "undecided",
      "longest run 2 in a row; 3 to come",
      "needs the next 2 shots in a row on target",
    ],
    ["FFFFF", 7, "missed", "no hit for certain; 2 to come", null],
    [
      "TTUFF",
      5,
      "undecided",
      "longest run 2 in a row; 1 could not be judged",
      "readings for the shots that could not be judged",
    ],
    [
      "UUU",
      5,
      "not-measured",
      "none of 3 shots could be judged; 2 to come",
      "readings of the metrics it is about",
    ],
    ["", 5, "not-measured", "no shots hit", "5 shots to come"],
  ])("%s of %d is %s", (pattern, asked, verdict, observed, settles) => {
    expect(evaluate(threeInARow, shotsLike(pattern, { asked }))).toMatchObject({
      verdict,
      observed,
      settles,
    });
  });

  test("the first of the longest runs is shown", () => {
    expect(evaluate(threeInARow, shotsLike("TFTTTFTTT"))).toMatchObject({ value: 3, deciding: [2, 3, 4] });
    expect(evaluate(threeInARow, shotsLike("FFTFTT"))).toMatchObject({ value: 2, deciding: [4, 5] });
    expect(evaluate(threeInARow, shotsLike("TUTT"))).toMatchObject({ value: 2, deciding: [2, 3] });
    expect(evaluate(threeInARow, shotsLike("FFF"))).toMatchObject({ value: 0, deciding: [] });
  });
});

test("the criterion in a sentence", () => {
  expect(sentence(threeInARow)).toBe("Somewhere in the block, 3 shots in a row are on target.");
});
