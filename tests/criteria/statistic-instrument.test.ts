/** Statistics of readings that may be off. */
import { describe, expect, test } from "vitest";
import { evaluate } from "../../language/criteria/criteria.ts";
import { expectNear, numberIn, numbersIn, optionalNumberIn, oracleRows } from "../support/oracle.ts";
import { measured } from "./measured-shots.ts";
import { plainRange } from "./measured-words.ts";
import { criterion } from "./words.ts";

describe("the reference table of averages", () => {
  const columns = [
    "readings",
    "u_random",
    "u_systematic",
    "limit_low",
    "limit_high",
    "verdict_these_shots_level_0.95",
    "ability_confidence",
    "lower_each_side_C",
    "upper_each_side_C",
    "verdict_ability",
  ] as const;
  const average = criterion("statistic", "average smash-factor at most 1");
  const rows = oracleRows("statistics/mean_with_uncertainty.csv", columns);

  test.each(rows)("$readings with $u_random and $u_systematic", (row) => {
    const stated = { random: numberIn(row.u_random), systematic: numberIn(row.u_systematic) };
    const shots = measured(
      { "smash-factor": numbersIn(row.readings) },
      { uncertainty: { "smash-factor": stated } },
    );
    const bounds = plainRange(
      optionalNumberIn(row.limit_low) ?? Number.NEGATIVE_INFINITY,
      optionalNumberIn(row.limit_high) ?? Number.POSITIVE_INFINITY,
    );
    expect(evaluate({ ...average, bounds }, shots).verdict).toBe(row["verdict_these_shots_level_0.95"]);
    const ability = evaluate({ ...average, bounds, confidence: numberIn(row.ability_confidence) }, shots);
    expect(ability.verdict).toBe(row.verdict_ability);
    expectNear(ability.interval?.low ?? undefined, numberIn(row.lower_each_side_C), { absolute: 1e-9 }, row);
    expectNear(ability.interval?.high ?? undefined, numberIn(row.upper_each_side_C), { absolute: 1e-9 }, row);
  });
});

describe("an average of the shots hit", () => {
  const path = criterion("statistic", "average club-path within ±2°");
  const judge = (average: number, decisionLevel = 0.95) =>
    evaluate(
      path,
      measured(
        { "club-path": [average - 1, average, average + 1, average] },
        { uncertainty: { "club-path": { random: 0.4, systematic: 0.3 } }, decisionLevel },
      ),
    );

  test("is met and missed where its readings leave no doubt of that", () => {
    // Of the mean: √(0.4²/4 + 0.3²) = 0.36, times 1.645 is 0.59.
    expect(judge(1.4)).toMatchObject({
      verdict: "met",
      required: "average club-path within ±2°, at 95 % probability",
      observed: "average 1.4° in-to-out over 4 shots; probability that it is so: 95.2 %",
      interval: {
        confidence: 0.95,
        method: "what the readings may be off by",
        text: "0.81° to 1.99° in-to-out",
      },
      settles: null,
    });
    expect(judge(2.7).verdict).toBe("missed");
  });

  test("is undecided near its limits, and says how likely it is", () => {
    expect(judge(1.5)).toMatchObject({
      verdict: "undecided",
      observed: "average 1.5° in-to-out over 4 shots; probability that it is so: 92 %",
      settles: "surer readings: the average lies too near a limit for the instrument to tell",
    });
    expect(judge(1.5, 0.9).verdict).toBe("met");
  });

  test.each([
    // 1.645 · 0.6 / √4 is 0.49, and 1.645 · 0.3 the same.
    ["each by itself", { random: 0.6, systematic: 0 }],
    ["all together", { random: 0, systematic: 0.3 }],
  ])("may be off because readings are, %s", (_, stated) => {
    const shots = measured({ "club-path": [1, 1, 3, 1] }, { uncertainty: { "club-path": stated } });
    expect(evaluate(path, shots).interval?.text).toBe("1.01° to 1.99° in-to-out");
  });

  test("is held against its limits where the readings are exact", () => {
    const exact = { random: 0, systematic: 0 };
    const shots = measured({ "club-path": [1.9, 2.1] }, { uncertainty: { "club-path": exact } });
    expect(evaluate(path, shots)).toMatchObject({ verdict: "met", interval: null });
  });
});

describe("an average as ability", () => {
  const atLeast = criterion("statistic", "average carry at least 150 yd at 80 % confidence");
  const judge = (systematic: number) =>
    evaluate(
      atLeast,
      measured({ carry: [150, 152, 154, 151, 153] }, { uncertainty: { carry: { random: 1, systematic } } }),
    );

  test("carries what all readings may be off by", () => {
    expect(judge(0).verdict).toBe("met");
    expect(judge(2.3)).toMatchObject({
      verdict: "undecided",
      interval: { method: "one-sided limits of Student's t, with what all readings may be off by" },
      settles: expect.stringMatching(/^about \d+ more shots if/),
    });
  });

  test("no number of shots makes up for an instrument", () => {
    expect(judge(3).settles).toBe(
      "no number of shots decides it: what all readings of a session may be off by together is more than the gap",
    );
  });
});

describe("a spread", () => {
  test("is without what readings scatter by themselves: the reference table", () => {
    const columns = [
      "sd_of_readings",
      "n",
      "u_random",
      "confidence",
      "sd_of_shots",
      "lower_each_side_C",
      "upper_each_side_C",
    ] as const;
    const spread = criterion("statistic", "spread of smash-factor at most 5");
    for (const row of oracleRows("statistics/spread_less_instrument.csv", columns)) {
      const stated = { random: numberIn(row.u_random), systematic: 0.2 };
      const readings = withSpread(numberIn(row.sd_of_readings), numberIn(row.n));
      const shots = measured({ "smash-factor": readings }, { uncertainty: { "smash-factor": stated } });
      const hit = evaluate(spread, shots);
      expectNear(hit.value ?? undefined, numberIn(row.sd_of_shots), { relative: 1e-9 }, row);
      expect(hit.cautions).toContain(
        "What the instrument scatters by itself, from shot to shot, is taken off the spread.",
      );
      const { interval } = evaluate({ ...spread, confidence: numberIn(row.confidence) }, shots);
      expectNear(interval?.low ?? undefined, numberIn(row.lower_each_side_C), { absolute: 1e-9 }, row);
      expectNear(interval?.high ?? undefined, numberIn(row.upper_each_side_C), { absolute: 1e-9 }, row);
    }
  });
});

test.each(["median carry", "90th percentile of carry", "middle 80 % of carry spans", "best carry"])(
  "%s: a caution that the instrument's part is not in it",
  (text) => {
    const claim = criterion("statistic", `${text} at least 10 yd`);
    const shots = measured(
      { carry: [150, 160, 170] },
      { uncertainty: { carry: { random: 1, systematic: 1 } } },
    );
    expect(evaluate(claim, shots).cautions.at(-1)).toMatch(
      /^How far readings of carry may be off is not in the .+: it is judged as if they were exact\.$/,
    );
  },
);

/** Values with this standard deviation. */
function withSpread(spread: number, n: number): number[] {
  const steps = Array.from({ length: n }, (_, index) => index - (n - 1) / 2);
  const squares = steps.reduce((sum, step) => sum + step * step, 0);
  return steps.map((step) => (spread * step) / Math.sqrt(squares / (n - 1)));
}
