/** Statistics as ability: the player's true number. */
import { describe, expect, test } from "vitest";
import { evaluate, sentence } from "../../language/criteria/criteria.ts";
import { expectNear, numberIn, numbersIn, oracleRows } from "../support/oracle.ts";
import { plainRange } from "./measured-words.ts";
import { shotsWith } from "./shots.ts";
import { criterion } from "./words.ts";

describe("an average as ability", () => {
  const pathAt90 = criterion("statistic", "average club-path within ±2° at 90 % confidence");

  test("the reference table of averages", () => {
    const columns = [
      "data",
      "confidence",
      "lower_each_side_C",
      "upper_each_side_C",
      "lower_two_sided_C",
      "upper_two_sided_C",
      "limit_low",
      "limit_high",
      "verdict_missed_two_sided",
    ] as const;
    for (const row of oracleRows("statistics/mean_intervals.csv", columns)) {
      const claim = {
        ...pathAt90,
        metric: "smash-factor",
        confidence: numberIn(row.confidence),
        bounds: plainRange(numberIn(row.limit_low), numberIn(row.limit_high)),
      };
      const { verdict, interval } = evaluate(claim, shotsWith("smash-factor", numbersIn(row.data)));
      expect(verdict, JSON.stringify(row)).toBe(row.verdict_missed_two_sided);
      // The limits shown are those that decided: a range is missed by those of half the error on either side.
      const isTwoSided = interval?.confidence !== numberIn(row.confidence);
      expect(isTwoSided).toBe(verdict === "missed" && isRange(row.limit_low, row.limit_high));
      const [low, high] = isTwoSided
        ? [row.lower_two_sided_C, row.upper_two_sided_C]
        : [row.lower_each_side_C, row.upper_each_side_C];
      expectNear(interval?.low ?? undefined, numberIn(low), { absolute: 1e-7 }, row);
      expectNear(interval?.high ?? undefined, numberIn(high), { absolute: 1e-7 }, row);
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
      "The limits show no doubt at all: the readings are probably coarser than the shots differ.",
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

  test("a confidence that is none", () => {
    expect(evaluate({ ...pathAt90, confidence: 1 }, shotsWith("club-path", [0, 1, 2]))).toMatchObject({
      verdict: "undecided",
      settles: "a confidence of at least 50 % and less than 100 %",
    });
  });

  test("a single shot decides nothing", () => {
    expect(evaluate(pathAt90, shotsWith("club-path", [0]))).toMatchObject({
      verdict: "undecided",
      settles: "2 shots or more with a reading: 1 is too few to show it",
    });
  });

  test("the criterion in a sentence", () => {
    expect(sentence(pathAt90)).toBe(
      "In the long run, the player's average club-path is within ±2°, shown at 90 % confidence.",
    );
  });
});

function isRange(...limits: string[]): boolean {
  return limits.every((limit) => Number.isFinite(numberIn(limit)));
}

/** From 1 to n. */
function upTo(n: number): number[] {
  return Array.from({ length: n }, (_, index) => index + 1);
}

describe("a median or percentile as ability", () => {
  test("the reference table", () => {
    const columns = [
      "data",
      "percentile",
      "confidence",
      "lower_bound",
      "upper_bound",
      "limit_at_most",
      "verdict",
    ] as const;
    const plain = criterion("statistic", "median smash-factor at most 1 at 90 % confidence");
    for (const row of oracleRows("statistics/percentile_verdicts.csv", columns)) {
      const share = numberIn(row.percentile);
      const claim = {
        ...plain,
        statistic: share === 0.5 ? plain.statistic : { kind: "percentile" as const, share },
        confidence: numberIn(row.confidence),
        bounds: plainRange(Number.NEGATIVE_INFINITY, numberIn(row.limit_at_most)),
      };
      const { verdict, interval } = evaluate(claim, shotsWith("smash-factor", numbersIn(row.data)));
      expect(verdict, JSON.stringify(row)).toBe(row.verdict);
      expect([interval?.low ?? null, interval?.high ?? null], JSON.stringify(row)).toEqual(
        [row.lower_bound, row.upper_bound]
          .map(numberIn)
          .map((limit) => (Number.isFinite(limit) ? limit : null)),
      );
    }
  });

  test("the level that is reached belongs to the evidence", () => {
    const median = criterion("statistic", "median carry at least 140 yd at 90 % confidence");
    const readings = upTo(10).map((step) => 140 + 3 * step);
    expect(evaluate(median, shotsWith("carry", readings))).toMatchObject({
      verdict: "met",
      observed: "median 157 yd over 10 shots",
      interval: {
        confidence: 0.9,
        method: "order statistics: the 3rd (94.5 %) and the 8th (94.5 %) of 10 shots by size",
        text: "149 yd to 164 yd",
      },
    });
  });

  test("too few shots for a limit on the side that matters: which number would do", () => {
    const high = criterion("statistic", "90th percentile of carry at most 170 yd at 80 % confidence");
    expect(evaluate(high, shotsWith("carry", upTo(10)))).toMatchObject({
      verdict: "undecided",
      interval: { low: expect.any(Number), high: null, text: "at least 8 yd, no upper limit" },
      settles: "16 shots or more with a reading: 10 are too few to show it",
    });
    const median = criterion("statistic", "median carry at least 140 yd at 95 % confidence");
    expect(evaluate(median, shotsWith("carry", [150, 151, 152, 153]))).toMatchObject({
      verdict: "undecided",
      interval: null,
      settles: "5 shots or more with a reading: 4 are too few to show it",
    });
  });

  test("10 of 10 shots below what 90 % should be below is no proof, 22 of 22 at 90 % is", () => {
    const high = criterion("statistic", "90th percentile of carry at most 170 yd at 90 % confidence");
    const verdict = (n: number) => evaluate(high, shotsWith("carry", upTo(n))).verdict;
    expect([verdict(10), verdict(21), verdict(22)]).toEqual(["undecided", "undecided", "met"]);
  });

  test("undecided: about how many more shots", () => {
    const median = criterion("statistic", "median carry at least 5 yd at 80 % confidence");
    expect(evaluate(median, shotsWith("carry", upTo(10)))).toMatchObject({
      verdict: "undecided",
      // 12 of 30 below are the first 40 % that keep the error: P(at most 12 of 30) = 0.18
      settles: "about 20 more shots if the player goes on as observed (estimate)",
    });
  });
});

describe("a spread as ability", () => {
  test("the reference table", () => {
    const columns = [
      "data",
      "confidence",
      "chisq_lower",
      "chisq_upper",
      "limit_at_most",
      "verdict_chisq",
    ] as const;
    const plain = criterion("statistic", "spread of smash-factor at most 1 at 90 % confidence");
    for (const row of oracleRows("statistics/sd_intervals.csv", columns)) {
      const claim = {
        ...plain,
        confidence: numberIn(row.confidence),
        bounds: plainRange(Number.NEGATIVE_INFINITY, numberIn(row.limit_at_most)),
      };
      const { verdict, interval } = evaluate(claim, shotsWith("smash-factor", numbersIn(row.data)));
      expect(verdict, JSON.stringify(row)).toBe(row.verdict_chisq);
      expectNear(interval?.low ?? undefined, numberIn(row.chisq_lower), { relative: 1e-9 }, row);
      expectNear(interval?.high ?? undefined, numberIn(row.chisq_upper), { relative: 1e-9 }, row);
    }
  });

  test("of shots that do not look normal there are sturdier limits, as in the table", () => {
    const columns = ["data", "confidence", "bonett_lower", "bonett_upper"] as const;
    const spread = criterion("statistic", "spread of smash-factor at most 5");
    let compared = 0;
    for (const row of oracleRows("statistics/sd_intervals.csv", columns)) {
      const claim = { ...spread, confidence: numberIn(row.confidence) };
      const { cautions } = evaluate(claim, shotsWith("smash-factor", numbersIn(row.data)));
      const caution = cautions.find((text) => text.startsWith("The shots do not look normally distributed"));
      if (caution === undefined) continue;
      const [, low, high] = / Sturdier limits \(Bonett\): ([\d.]+) to ([\d.]+)\.$/.exec(caution) ?? [];
      expectNear(Number(low), numberIn(row.bonett_lower), { absolute: 0.05 }, row);
      expectNear(Number(high), numberIn(row.bonett_upper), { absolute: 0.05 }, row);
      compared++;
    }
    expect(compared).toBeGreaterThan(0);
  });

  test("10 shots need 4.08 yd to show that the spread is under 6 yd", () => {
    const spread = criterion("statistic", "spread of carry at most 6 yd at 90 % confidence");
    const shots = (factor: number) =>
      shotsWith(
        "carry",
        upTo(10).map((step) => factor * step),
      ); // spread 3.03
    expect(evaluate(spread, shots(1.34)).verdict).toBe("met");
    expect(evaluate(spread, shots(1.36))).toMatchObject({
      verdict: "undecided",
      interval: { method: "chi-square limits, for normally distributed shots", text: "3.2 yd to 6.1 yd" },
      settles: "about 1 more shot if the player goes on as observed (estimate)",
    });
  });
});

describe("a span as ability", () => {
  test("outer limits, when there are enough shots", () => {
    const span = criterion("statistic", "middle 80 % of carry spans at most 40 yd at 80 % confidence");
    expect(evaluate(span, shotsWith("carry", upTo(40)))).toMatchObject({
      verdict: "met",
      interval: { text: "27 yd to 37 yd" },
    });
    expect(evaluate(span, shotsWith("carry", upTo(12)))).toMatchObject({
      verdict: "undecided",
      interval: { high: null },
      settles: "22 shots or more with a reading: 12 are too few to show it",
    });
  });

  test("undecided: about how many more, in rounds of the shots observed", () => {
    const span = criterion("statistic", "middle 50 % of carry spans at most 20 yd at 80 % confidence");
    // The 5th and the 26th of 30 are 21 yd apart, the 11th and the 50th of the same shots twice 19 yd.
    expect(evaluate(span, shotsWith("carry", upTo(30)))).toMatchObject({
      verdict: "undecided",
      settles: "about 30 more shots if the player goes on as observed (estimate)",
    });
  });
});

test("the best and the worst shot have no reading as ability", () => {
  for (const name of ["best", "worst"]) {
    const claim = criterion("statistic", `${name} carry at least 140 yd at 80 % confidence`);
    expect(evaluate(claim, shotsWith("carry", [150, 160]))).toMatchObject({
      verdict: "undecided",
      interval: null,
      settles: `a sentence without the confidence: the ${name} shot is judged on the shots hit only`,
    });
  }
});
