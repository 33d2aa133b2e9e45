/** Readings that may be off: what an instrument's accuracy does to verdicts on counts, shares and runs. */
import { describe, expect, test } from "vitest";
import { uncertainShot } from "../../server/scoring/uncertainty/cells.ts";
import { numberIn, numbersIn, oracleRows } from "../support/oracle.ts";
import {
  type BlockWords,
  criterionOn,
  instrument,
  linesOf,
  plan,
  score,
  scoreBlock,
  table,
} from "./practice.ts";

function paths(...degrees: readonly number[]) {
  return table(`club-path\n${degrees.join("\n")}`);
}

function decideAt(level: number, words: BlockWords, ...degrees: readonly number[]) {
  return (unit: ReturnType<typeof instrument>) => {
    const demanding = { ...plan(words), decisionLevel: level };
    const [first] = score(demanding, paths(...degrees), { instrument: unit }).blocks;
    return first?.criteria[0];
  };
}

describe("the reference tables", () => {
  test("counts, with the error that all shots share integrated over", () => {
    const columns = [
      "readings",
      "u_random",
      "u_systematic",
      "limit_low",
      "limit_high",
      "hits_needed",
      "level",
      "prob_count_at_least_needed",
      "verdict",
    ] as const;
    for (const row of oracleRows("statistics/count_conformance.csv", columns)) {
      const readings = numbersIn(row.readings);
      const unit = instrument(`smash-factor ${row.u_random} random ${row.u_systematic} systematic`);
      const range = rangeOf(row.limit_low, row.limit_high);
      const success = `at least ${row.hits_needed} of ${readings.length} shots with smash-factor ${range}`;
      const words = { ...plan({ shots: readings.length, success }), decisionLevel: numberIn(row.level) };
      const shots = table(`smash-factor\n${readings.join("\n")}`);
      const [result] = score(words, shots, { instrument: unit }).blocks[0]?.criteria ?? [];
      expect(result?.verdict, JSON.stringify(row)).toBe(row.verdict);
      const [, said] = /probability of .*: ([\d.]+) %$/.exec(result?.evidence.observed ?? "") ?? [];
      if (said === undefined) continue; // under 1 %, over 99 %, or too near the level for whole percents
      expect(Math.abs(Number(said) / 100 - numberIn(row.prob_count_at_least_needed))).toBeLessThan(0.0051);
    }
  });

  test("runs", () => {
    const columns = ["readings", "u_random", "run_needed", "verdict_level_0.95"] as const;
    for (const row of oracleRows("statistics/streak_conformance.csv", columns)) {
      const readings = numbersIn(row.readings);
      const words = {
        shots: readings.length,
        success: `${row.run_needed} in a row with club-path within ±2°`,
      };
      const unit = instrument(`club-path ${row.u_random} random`);
      expect(criterionOn(words, paths(...readings), { instrument: unit }).verdict, JSON.stringify(row)).toBe(
        row["verdict_level_0.95"],
      );
    }
  });

  /** Numbers without a sign word can be negative in the test vocabulary only as a range about a centre. */
  function rangeOf(low: string, high: string): string {
    if (low === "") return `at most ${numberIn(high)}`;
    if (high === "") return `at least ${numberIn(low)}`;
    const [from, to] = [numberIn(low), numberIn(high)];
    if (from === -to) return `within ±${to}`;
    return `between ${from} and ${to}`;
  }
});

describe("a count", () => {
  const words = { shots: 4, success: "at least 3 of 4 shots with club-path within ±2°" };
  const unit = instrument("club-path 0.4 random");

  test("is met where that is probable enough, and the report says whose readings they were", () => {
    const report = score(plan(words), paths(0, 1, -1, 3), { instrument: unit });
    expect(report.instrument).toBe("Bay unit");
    expect(report.notes).toEqual([]);
    expect(report.blocks[0]?.criteria[0]).toMatchObject({
      verdict: "met",
      evidence: {
        required: "at least 3 of 4 shots with club-path within ±2°, at 95 % probability",
        observed: "as read, 3 of 4 shots with club-path within ±2°; probability of 3 or more: 99 %",
      },
    });
  });

  test("is open where a shot lies too near a limit", () => {
    const result = criterionOn(words, paths(0, 1, 1.9, 3), { instrument: unit });
    expect(result).toMatchObject({
      verdict: "undecided",
      evidence: {
        observed: "as read, 3 of 4 shots with club-path within ±2°; probability of 3 or more: 60 %",
        settles: "surer readings: some shots lie too near a limit for the instrument to tell",
      },
    });
    expect(linesOf(result.evidence.rows)).toEqual([4]);
  });

  test("of every verdict there are the shots that made it", () => {
    const rows = (success: string, ...degrees: number[]) => {
      const result = criterionOn({ shots: 4, success }, paths(...degrees), { instrument: unit });
      return [result.verdict, linesOf(result.evidence.rows)];
    };
    const least = "at least 3 of 4 shots with club-path within ±2°";
    const most = "at most 1 of 4 shots with club-path at least 2° right";
    // The table begins on line 2. A fifth shot is beyond the four that count.
    expect(rows(least, 0, 9, 0, 0)).toEqual(["met", [2, 4, 5]]);
    expect(rows(least, 9, 0, 9, 0)).toEqual(["missed", [2, 4]]);
    expect(rows(most, 0, 9, 0, 0)).toEqual(["met", [2, 4, 5]]);
    expect(rows(most, 9, 0, 9, 0)).toEqual(["missed", [2, 4]]);
    expect(rows(least, 1.9, 0, 0, 9, 1.9)).toEqual(["undecided", [2]]);
  });

  test("is as before where every shot is far from its limits", () => {
    const sharp = instrument("club-path 0.1 random");
    expect(criterionOn(words, paths(0, 0.1, 0.2, 9), { instrument: sharp }).evidence.observed).toBe(
      "3 of 4 shots with club-path within ±2°",
    );
  });

  test("takes unknown shots and those to come both ways", () => {
    const shots = table("club-path\n0\n1.9\n?");
    expect(criterionOn(words, shots, { instrument: unit })).toMatchObject({
      verdict: "undecided",
      evidence: {
        observed:
          "as read, 2 of 2 shots with club-path within ±2°; 1 more could not be judged; 1 shot short of 4; probability of 3 or more: 0 % to over 99 %",
      },
    });
    expect(criterionOn(words, paths(0, 9, 9), { instrument: unit }).verdict).toBe("missed");
  });

  test("at most: bad shots that are probable enough count against it", () => {
    const limited = { shots: 3, success: "at most 1 of 3 shots with club-path at least 2° right" };
    const verdict = (...degrees: number[]) =>
      criterionOn(limited, paths(...degrees), { instrument: unit }).verdict;
    expect(verdict(3, 0, 0)).toBe("met");
    expect(verdict(3, 3, 0)).toBe("missed");
    expect(verdict(3, 2.1, 0)).toBe("undecided");
  });

  test("what all shots share does not average out", () => {
    const many = { shots: 10, success: "at least 5 of 10 shots with club-path at least 1° right" };
    const readings = Array.from({ length: 10 }, () => 1.6);
    const own = decideAt(0.95, many, ...readings)(instrument("club-path 0.5 random"));
    const shared = decideAt(0.95, many, ...readings)(instrument("club-path 0.1 random 0.5 systematic"));
    expect(own?.verdict).toBe("met");
    expect(shared?.verdict).toBe("undecided");
  });

  test("the plan says how probable is probable enough", () => {
    const at = (level: number) => decideAt(level, words, 0, 1, 1.7, 3)(unit)?.verdict;
    expect(at(0.95)).toBe("undecided"); // 77 %
    expect(at(0.7)).toBe("met");
  });
});

describe("which accuracy", () => {
  const words = { shots: 1, success: "at least 1 of 1 shots with club-path within ±2°" };

  test("what is stated for the club of the shot comes first", () => {
    const unit = instrument("club-path 2 random", "club-path 0.1 random for 7-iron");
    const verdict = (club: string) =>
      criterionOn(words, table(`club-path club\n1.7 ${club}`), { instrument: unit }).verdict;
    expect(verdict("7-iron")).toBe("met");
    expect(verdict("driver")).toBe("undecided");
  });

  test("a shot with a club of which nothing is stated is exact beside others that are not", () => {
    const average = { shots: 4, success: "average club-path within ±2°" };
    const shots = table("club-path club\n1.5 driver\n1.5 7-iron\n1.5 7-iron\n1.5 7-iron");
    const judge = (unit: ReturnType<typeof instrument>) =>
      criterionOn(average, shots, { instrument: unit }).evidence.interval?.low;
    // Of the mean: √(0.8² / 4²) = 0.2 where one of four may be off by 0.8; all of them 0.4. Times 1.645: 0.33 and 0.66.
    const DEGREE = Math.PI / 180;
    expect(judge(instrument("club-path 0.8 random for driver"))).toBeCloseTo(1.171 * DEGREE, 4);
    expect(judge(instrument("club-path 0.8 random"))).toBeCloseTo(0.842 * DEGREE, 4);
  });

  test("a metric of which nothing is stated is exact, and a note says so", () => {
    const report = score(plan(words), paths(1.9), { instrument: instrument("carry 2 random") });
    expect(report.verdict).toBe("met");
    expect(report.notes).toEqual([
      'Readings of club-path taken as exact: instrument "Bay unit" says nothing of them.',
    ]);
  });
});

describe("a share as ability", () => {
  const words = { shots: 10, success: "at least 70 % of shots with club-path within ±2° at 80 % confidence" };
  const unit = instrument("club-path 0.4 random");
  const ten = (...last: number[]) => paths(...Array.from({ length: 10 - last.length }, () => 0), ...last);

  test("counts only what is sure: met with the surely good alone, missed with all that may be", () => {
    expect(criterionOn(words, ten(3), { instrument: unit }).verdict).toBe("met");
    expect(criterionOn(words, ten(3, 1.9), { instrument: unit })).toMatchObject({
      verdict: "undecided",
      evidence: {
        observed:
          "9 of 10 shots with club-path within ±2° (90 %); as far as the readings tell, 8 surely and up to 9 possibly",
        settles: "surer readings: some shots lie too near a limit for the instrument to tell",
      },
    });
    expect(criterionOn(words, ten(3, 3, 3, 3, 3, 3), { instrument: unit }).verdict).toBe("missed");
    expect(criterionOn(words, ten(3, 3, 3, 3, 2.1), { instrument: unit }).verdict).toBe("undecided");
  });
});

describe("one shot, a standard uncertainty from its limit or on it", () => {
  // Of the normal law 84.1 % lies below one standard deviation.
  test.each([
    ["at least 150 yd", 150, "50"],
    ["at least 150 yd", 151, "84"],
    ["at least 150 yd", 149, "16"],
    ["at most 150 yd", 150, "50"],
    ["at most 150 yd", 151, "16"],
    ["at most 150 yd", 149, "84"],
  ])(
    "%s, read as %s: %s %%, whether each reading is off by itself or all of them together",
    (limit, read, percent) => {
      const words = { shots: 1, success: `at least 1 of 1 shots with carry ${limit}` };
      for (const errors of ["1 random", "1 systematic", "0.6 random 0.8 systematic"]) {
        const unit = instrument(`carry ${errors}`);
        const { verdict, evidence } = criterionOn(words, table(`carry\n${read}`), { instrument: unit });
        expect([verdict, / (\d+) %$/.exec(evidence.observed)?.[1]]).toEqual(["undecided", percent]);
      }
    },
  );
});

test("of a shot with too many readings near their limits nothing is worked out", () => {
  const readings = (count: number) =>
    Array.from({ length: count }, (_, place) => ({
      metrics: [`m${place}`],
      value: 0,
      errors: { random: 1, shared: new Map<string, number>() },
      limits: [0.5],
    }));
  const shot = { values: {}, categories: {}, club: null };
  expect(uncertainShot(shot, readings(12), () => true).answers).toHaveLength(4096);
  expect(uncertainShot(shot, readings(13), () => true)).toEqual({ readings: [], answers: [undefined] });
});

test("goals of one block are judged as each would be alone", () => {
  const goals = [
    "at least 2 of 3 shots on target",
    "at least 2 of 3 shots with club-path within ±1°",
    "at least 2 of 3 shots with face-to-path within ±2°",
    "at most 1 of 3 shots on target",
    "at most 1 of 3 shots with club-path at least 1° right",
    "2 in a row on target",
    "2 in a row with face-to-path within ±2°",
  ];
  const unit = instrument("club-path 0.4 random 0.1 systematic", "face-to-path 0.3 random");
  const shots = table("club-path face-to-path\n0 2.1\n1.2 0\n1.9 4");
  const judge = (success: string | readonly string[]) =>
    scoreBlock({ shots: 3, target: "club-path within ±2°", success }, shots, {
      instrument: unit,
    }).criteria.map(({ verdict, evidence: { observed } }) => [verdict, observed]);
  expect(judge(goals)).toEqual(goals.flatMap(judge));
});

describe("conditions over several metrics", () => {
  const words = {
    shots: 2,
    target: ["club-path within ±2°", "face-to-path within ±2°"],
    success: "at least 1 of 2 shots on target",
  };

  test("each reading leaves its own doubt", () => {
    const shots = table("club-path face-to-path\n1.4 1.4\n9 9");
    const one = instrument("club-path 0.4 random");
    const two = instrument("club-path 0.4 random", "face-to-path 0.4 random");
    // 0.933 and 0.933² = 0.87
    const probability = (unit: typeof one) =>
      /: (\d+) %$/.exec(criterionOn(words, shots, { instrument: unit }).evidence.observed)?.[1];
    expect(probability(one)).toBe("93");
    expect(probability(two)).toBe("87");
  });

  test("a reading far outside settles the shot, whatever the other one is", () => {
    const shots = table("club-path face-to-path\n1.9 9\n9 9");
    const unit = instrument("club-path 0.4 random", "face-to-path 0.4 random");
    expect(criterionOn(words, shots, { instrument: unit }).verdict).toBe("missed");
  });
});
