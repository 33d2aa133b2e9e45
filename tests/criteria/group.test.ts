import { describe, expect, test } from "vitest";
import { evaluate, metricsReadBy, sentence } from "../../language/criteria/criteria.ts";
import type { CountedShots } from "../../language/criteria/criterion.ts";
import { shotsWith } from "./shots.ts";
import { criterion } from "./words.ts";

function carries(readings: readonly (number | null)[]): CountedShots {
  const shots = shotsWith("carry", readings);
  return { ...shots, meeting: ({ kind }) => readings.map((value) => kind === "meeting" && truth(value)) };
}

/** Every condition of these tests asks for 150 yd. */
function truth(value: number | null): boolean | undefined {
  return value === null ? undefined : value >= 150;
}

const MET = "average carry at least 100 yd";
const MISSED = "average carry at least 200 yd";
const OPEN = "at least 3 of 5 shots with carry at least 150 yd";
const UNMEASURED = "average offline within ±5 yd";

describe("so many of several criteria", () => {
  const shots = carries([160, 140, 155, 145, null]);

  test.each([
    [`any of { ${MISSED} / ${MET} }`, "met"],
    [`any of { ${MISSED} / ${OPEN} }`, "undecided"],
    [`any of { ${MISSED} / ${MISSED} }`, "missed"],
    [`any of { ${MISSED} / ${UNMEASURED} }`, "undecided"],
    [`any of { ${UNMEASURED} / ${UNMEASURED} }`, "not-measured"],
    [`all of { ${MET} / ${MET} }`, "met"],
    [`all of { ${MET} / ${OPEN} }`, "undecided"],
    [`all of { ${OPEN} / ${MISSED} }`, "missed"],
    [`all of { ${MET} / ${UNMEASURED} }`, "undecided"],
    [`2 of { ${MET} / ${MET} / ${MISSED} }`, "met"],
    [`2 of { ${MET} / ${OPEN} / ${MISSED} }`, "undecided"],
    [`2 of { ${MISSED} / ${OPEN} / ${MISSED} }`, "missed"],
  ])("%s: %s", (text, verdict) => {
    expect(evaluate(criterion("group", text), shots).verdict).toBe(verdict);
  });

  test("says how many are met, and how each came out", () => {
    expect(evaluate(criterion("group", `2 of { ${MET} / ${OPEN} / ${MISSED} }`), shots)).toMatchObject({
      required: "2 of 3 goals",
      observed: `1 of 2 needed; ${MET}: met; ${OPEN}: undecided; ${MISSED}: missed`,
      brief: "1 of 2 needed",
      value: 1,
      settles: `1 more of: ${OPEN} (needs the shot that could not be judged)`,
      deciding: [4],
    });
  });

  test("holds the outcome of each part, of groups in it as well", () => {
    const { parts } = evaluate(criterion("group", `any of { ${MISSED} / ${MET} }`), shots);
    expect(parts?.map(({ verdict }) => verdict)).toEqual(["missed", "met"]);
    const inner = criterion("group", `any of { ${MISSED} / ${MET} }`);
    const outer = { ...criterion("group", `all of { ${MET} / ${MET} }`), criteria: [inner] };
    expect(evaluate(outer, shots).parts?.[0]?.parts?.map(({ verdict }) => verdict)).toEqual([
      "missed",
      "met",
    ]);
  });

  test("more than are needed, and a group in a group", () => {
    const all = `all of { ${MET} / ${MET} }`;
    const outer = {
      ...criterion("group", `any of { ${MET} / ${MET} }`),
      criteria: [criterion("group", all), criterion("statistic", MET)],
    };
    expect(evaluate(outer, shots).observed).toBe(`2 met, 1 needed; all of 2: met; ${MET}: met`);
  });

  test("reads what its parts read", () => {
    expect(metricsReadBy(criterion("group", `any of { ${MET} / ${UNMEASURED} }`))).toEqual([
      "carry",
      "offline",
    ]);
  });
});

describe("where not all parts about ability are needed", () => {
  // 7 of 8 shows "at least 60 %" at 80 % confidence (the error is 0.106), but not at 90 %.
  const shots = carries([160, 160, 160, 160, 160, 160, 160, 140]);
  const share = "at least 60 % of shots with carry at least 150 yd at 80 % confidence";

  test("each has a share of the error only, and a caution says so", () => {
    expect(evaluate(criterion("share", share), shots).verdict).toBe("met");
    const either = evaluate(criterion("group", `any of { ${share} / ${share} }`), shots);
    expect(either.verdict).toBe("undecided");
    expect(either.parts?.map(({ required }) => required)).toEqual(
      Array(2).fill("in the long run, at least 60 % of shots with carry at least 150 yd, at 90 % confidence"),
    );
    expect(either.cautions).toEqual([
      "Not all of these goals are needed, so each about ability is judged at 90 % confidence instead of 80 %: several chances to be met by luck share the error that one may have.",
    ]);
  });

  test("the level that is told is the one that decides", () => {
    const either = evaluate(criterion("group", `any of { ${share} / ${share} / ${share} }`), shots);
    // A third of 20 % is 6.67 %, of which no more than is told may be used.
    expect(either.parts?.map(({ required }) => required)).toEqual(
      Array(3).fill(
        "in the long run, at least 60 % of shots with carry at least 150 yd, at 93.34 % confidence",
      ),
    );
    expect(either.parts?.[0]?.interval?.confidence).toBeCloseTo(0.9334, 12);
    expect(either.cautions[0]).toContain("is judged at 93.34 % confidence instead of 80 %");
  });

  test("where one error alone does not decide, there are fewer shares", () => {
    const judgedAt = (text: string) => evaluate(criterion("group", text), shots).cautions[0];
    expect(judgedAt(`2 of { ${share} / ${share} / ${share} }`)).toContain(
      "at 90 % confidence instead of 80 %",
    );
    expect(judgedAt(`3 of { ${share} / ${share} / ${share} / ${share} }`)).toContain("at 93.34 % confidence");
    expect(judgedAt(`2 of { ${share} / ${MISSED} / ${share} / ${MISSED} }`)).toContain("at 90 % confidence");
  });

  test("parts about the shots hit take no share", () => {
    const mixed = evaluate(criterion("group", `any of { ${share} / ${MISSED} }`), shots);
    expect(mixed).toMatchObject({ verdict: "met", cautions: [] });
  });

  test("all of them needed: each keeps its confidence", () => {
    const both = evaluate(criterion("group", `all of { ${share} / ${share} }`), shots);
    expect(both).toMatchObject({ verdict: "met", cautions: [] });
    expect(evaluate(criterion("group", `2 of { ${share} / ${share} }`), shots).verdict).toBe("met");
  });
});

test("the criterion in a sentence", () => {
  expect(sentence(criterion("group", `any of { ${MET} / ${OPEN} }`))).toBe(
    "At least one of these: over the block's shots, the average carry is at least 100 yd; at least 3 of the first 5 shots have carry at least 150 yd.",
  );
  expect(sentence(criterion("group", `2 of { ${MET} / ${MET} / ${MET} }`))).toMatch(
    /^At least 2 of these 3: /,
  );
  expect(sentence(criterion("group", `all of { ${MET} / ${MET} }`))).toMatch(/^All of these: /);
});
