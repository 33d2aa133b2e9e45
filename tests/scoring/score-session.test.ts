import { describe, expect, test } from "vitest";
import { scoreSession } from "../../server/scoring/score-session.ts";
import { data, input, linesOf, plan, score, scoreBlock, table } from "./practice.ts";

const gate = {
  shots: 5,
  target: ["club-path within 2° of 1° in-to-out", "face-to-path within ±2°"],
  require: "attack-angle between 6° down and 2° down",
  success: [
    "at least 2 of 5 shots on target",
    "2 in a row on target",
    "average club-path between 1° out-to-in and 3° in-to-out",
  ],
} as const;

const fiveShots = table(`
  club-path face-to-path attack-angle
   1.0       0.5         -3
   2.9      -1.0         -4
   0.4       0.0         -1
   5.0       1.0         -5
   2.0       3.5         -3
`);

describe("a block", () => {
  const report = scoreBlock(gate, fiveShots);

  test("tells how its shots stood to each target, to all of them, and to what it requires", () => {
    expect(report.shots).toEqual({ asked: 5, hit: 5, counted: 5 });
    expect(report.onTarget).toEqual({ hits: 3, misses: 2, unknown: 0 });
    expect(report.targets.map(({ tally, misses }) => [tally.hits, linesOf(misses)])).toEqual([
      [4, [5]],
      [4, [6]],
    ]);
    expect(report.requirements.map(({ tally, misses }) => [tally.hits, linesOf(misses)])).toEqual([[4, [4]]]);
  });

  test("a shot that fails a requirement uses up its place and is no hit", () => {
    expect(report.criteria[0]).toMatchObject({
      id: "Gate/1",
      kind: "count",
      verdict: "met",
      evidence: {
        observed: "2 of 5 shots on target and as required",
        cautions: ["1 shot did not meet what the block requires: it uses up its place but cannot count."],
      },
    });
    expect(report.criteria[2]).toMatchObject({ evidence: { shotsUsed: 4 } });
  });

  test("so it is with a goal that names its own condition", () => {
    const words = { ...gate, success: "at least 5 of 5 shots with club-path within ±9°" };
    expect(scoreBlock(words, fiveShots).criteria[0]).toMatchObject({
      verdict: "missed",
      evidence: { tally: { hits: 4, misses: 1, unknown: 0 } },
    });
  });

  test("where bad shots are limited, a shot that fails a requirement is one of them", () => {
    const words = { ...gate, success: "at most 1 of 5 shots with club-path above 4°" };
    expect(scoreBlock(words, fiveShots).criteria[0]).toMatchObject({
      verdict: "missed",
      evidence: {
        observed: "2 of 5 shots with club-path above 4°, or not as required",
        tally: { hits: 2, misses: 3, unknown: 0 },
        cautions: ["1 shot did not meet what the block requires: it counts against this goal."],
      },
    });
    expect(linesOf(scoreBlock(words, fiveShots).criteria[0]?.evidence.rows ?? [])).toEqual([4, 5]);
  });

  test("a goal that is not measured names the readings it would take", () => {
    const words = {
      ...gate,
      success: ["3 in a row on target", "at least 1 of 5 shots with carry at least 9 yd"],
    };
    const shots = table("club-path\n1\n?");
    expect(scoreBlock(words, shots).criteria.map(({ evidence }) => evidence.settles)).toEqual([
      "readings of club-path, face-to-path and attack-angle",
      "readings of carry and attack-angle",
    ]);
    expect(
      scoreBlock({ shots: 2, success: "2 in a row on target" }, shots).criteria[0]?.evidence.settles,
    ).toBe("a target, which the block does not have");
  });

  test("points at the rows that decided", () => {
    expect(report.criteria.map(({ evidence }) => linesOf(evidence.rows))).toEqual([
      [2, 3],
      [2, 3],
      [2, 3, 5, 6],
    ]);
  });

  test("is met when all its goals are", () => {
    expect(report.criteria.map(({ verdict }) => verdict)).toEqual(["met", "met", "met"]);
    expect(report.verdict).toBe("met");
  });

  test("is read with the player's hand", () => {
    const mirrored = scoreBlock(gate, fiveShots, { hand: "left" });
    expect(mirrored.targets[0]?.tally).toEqual({ hits: 2, misses: 3, unknown: 0 });
    expect(mirrored.verdict).toBe("missed");
  });

  test("a shot with a reading missing is neither a hit nor a miss", () => {
    const shots = table(`
      club-path face-to-path attack-angle
      1         ?            -3
      ?         3            -3
      1         0            ?
      1         0            -3
    `);
    const { onTarget, criteria } = scoreBlock(
      { ...gate, shots: 4, success: "at least 2 of 4 shots on target" },
      shots,
    );
    expect(onTarget).toEqual({ hits: 2, misses: 1, unknown: 1 });
    expect(criteria[0]).toMatchObject({
      verdict: "undecided",
      evidence: { tally: { hits: 1, misses: 1, unknown: 2 } },
    });
  });

  test("without goals has no verdict, without targets nothing on target", () => {
    expect(scoreBlock({ shots: 5 }, fiveShots)).toMatchObject({
      verdict: null,
      onTarget: null,
      criteria: [],
    });
    expect(scoreBlock({ shots: 5, success: "3 in a row on target" }, fiveShots)).toMatchObject({
      verdict: "not-measured",
    });
  });
});

describe("the plan", () => {
  const one = { name: "One", shots: 1, success: "at least 1 of 1 shots with carry at least 150 yd" };
  const two = { ...one, name: "Two" };
  const warmUp = { name: "Warm-up", shots: 1 };
  const carries = (first: string, second: string) =>
    table(`
      block   carry
      Warm-up 40
      One     ${first}
      Two     ${second}
    `);

  test.each([
    ["160", "155", "met"],
    ["160", "140", "missed"],
    ["160", "?", "undecided"],
    ["?", "140", "missed"],
    ["?", "?", "not-measured"],
  ])("%s yd and %s yd: %s", (first, second, verdict) => {
    expect(score(plan(warmUp, one, two), carries(first, second)).verdict).toBe(verdict);
  });

  test("without any goal has no verdict", () => {
    expect(score(plan(warmUp), carries("1", "1")).verdict).toBe(null);
  });
});

describe("while shots are still coming in", () => {
  test("the block says what is needed", () => {
    const [criterion] = scoreBlock(
      { ...gate, shots: 18, success: "at least 5 of 9 shots on target" },
      fiveShots,
    ).criteria;
    expect(criterion).toMatchObject({
      verdict: "undecided",
      evidence: {
        observed: "2 of 5 shots on target and as required; 4 shots short of 9",
        settles: "needs 3 of the 4 shots not hit yet",
      },
    });
  });

  test("before the first shot nothing is measured", () => {
    expect(scoreBlock(gate, [])).toMatchObject({
      verdict: "not-measured",
      shots: { asked: 5, hit: 0, counted: 0 },
      onTarget: { hits: 0, misses: 0, unknown: 0 },
    });
  });
});

describe("the report", () => {
  test("names what it was made from", () => {
    expect(score(plan(gate), fiveShots)).toMatchObject({
      tool: "1.2.3",
      plan: { name: "Start line" },
      session: { name: "Monday", date: "2026-10-12" },
      player: { name: "P-07", hand: "right" },
      data: [{ file: "shots.csv", shots: 5 }],
      assignment: { method: "column" },
    });
  });

  test("is the same, byte for byte, each time", () => {
    const text = () => JSON.stringify(scoreSession(input(plan(gate)), data(fiveShots), { version: "1" }));
    expect(text()).toBe(text());
  });

  test("holds nothing that JSON cannot", () => {
    const report = score(plan(gate), fiveShots);
    expect(JSON.parse(JSON.stringify(report))).toEqual(report);
  });

  test("carries the findings about the data on", () => {
    const finding = {
      code: "cell-unreadable" as const,
      severity: "warning" as const,
      file: "shots.csv",
      line: 3,
      column: "Path",
      text: "n/a",
      message: '"n/a" is not a number.',
    };
    const report = scoreSession(
      input(plan(gate)),
      { ...data(fiveShots), findings: [finding] },
      { version: "1" },
    );
    expect(report.findings).toEqual([finding]);
  });

  test("a metric that nobody declared does not stop it", () => {
    const odd = plan({ shots: 5, success: "average club-path within ±2°" });
    const report = scoreSession({ ...input(odd), metrics: new Map() }, data(fiveShots), { version: "1" });
    expect(report.blocks[0]?.verdict).toBe("missed");
    expect(report.notes).toContain("The plan speaks of club-path, but no metric of this name is declared.");
  });
});
