import { describe, expect, test } from "vitest";
import { scoreSession } from "../../server/scoring/score-session.ts";
import { metric } from "../support/scoring-input.ts";
import { data, input, plan, score, table } from "./practice.ts";

describe("several verdicts about ability", () => {
  const sure = "average carry at least 150 yd at 90 % confidence";
  const unsure = "at least 50 % of shots with carry at least 150 yd at 80 % confidence";
  const eight = table(`carry\n${"160\n161\n".repeat(4)}`.trim());
  const abilityCautions = (...success: string[]) =>
    score(plan({ shots: 8, success }), eight).cautions.filter((caution) =>
      caution.includes("verdicts about ability"),
    );

  test("are less sure together, and a caution says how sure", () => {
    expect(abilityCautions(sure, unsure, unsure)).toEqual([
      "Each of the 3 verdicts about ability, at 80 % and 90 % confidence, can be wrong on its own: the chance that all 3 are right may be no more than 58 %.",
    ]);
    expect(abilityCautions(sure, sure)).toEqual([
      "Each of the 2 verdicts about ability, at 90 % confidence, can be wrong on its own: the chance that both are right may be no more than 81 %.",
    ]);
  });

  test("are counted over all blocks of the plan", () => {
    const blocks = ["Gate", "Test"].map((name) => ({ name, shots: 4, success: sure }));
    const shots = eight.map((shot, index) => ({ ...shot, block: index < 4 ? "Gate" : "Test" }));
    expect(score(plan(...blocks), shots).cautions.join("\n")).toContain(
      "Each of the 2 verdicts about ability",
    );
  });

  test("a single one, those about the shots hit, and those that decide nothing need no caution", () => {
    expect(abilityCautions(sure)).toEqual([]);
    expect(
      abilityCautions(sure, "average carry at least 150 yd", "8 in a row with carry at least 150 yd"),
    ).toEqual([]);
    expect(abilityCautions(sure, "average carry at least 160.5 yd at 90 % confidence")).toEqual([]);
  });
});

describe("shots in the order they were hit", () => {
  const sure = "average carry at least 100 yd at 80 % confidence";
  const cautions = (readings: readonly number[], ...success: string[]) =>
    score(
      plan({ shots: readings.length, success, target: "carry at least 120 yd" }),
      table(`carry\n${readings.join("\n")}`),
    ).cautions.filter((caution) => caution.includes("less sure"));
  const rising = Array.from({ length: 12 }, (_, shot) => 140 + 2 * shot + (shot % 3));
  const steady = [150, 147, 152, 149, 153, 148, 151, 146, 152, 150, 149, 151];
  const waves = [150, 152, 153, 152, 150, 147, 146, 147, 150, 152, 153, 152, 150, 147, 146, 147];

  test("that drift, or follow one another, make ability less sure", () => {
    expect(cautions(rising, sure)).toEqual([
      'Block "Gate": carry drifts from the first shot to the last, so goals about ability are less sure than they say.',
    ]);
    // r₁ = 0.709, by which 16 shots are worth 16/(1 + 2Σ(1 − k/16)·0.709ᵏ) = 3.3
    expect(cautions(waves, sure)).toEqual([
      'Block "Gate": carry of a shot is not independent of the one before (about an average, 16 shots say as much as about 3 independent ones would: an estimate), so goals about ability are less sure than they say.',
    ]);
    // Neighbours that are unlike each other take nothing away from an average.
    const seesaw = [150, 140, 151, 139, 150, 141, 149, 140, 151, 139, 150, 141];
    expect(cautions(seesaw, sure)).toEqual([
      'Block "Gate": carry of a shot is not independent of the one before, so goals about ability are less sure than they say.',
    ]);
    expect(cautions(steady, sure)).toEqual([]);
  });

  test("the metrics of shares and of groups are looked at too, those of goals about the shots hit are not", () => {
    const share = "at least 50 % of shots on target at 80 % confidence";
    expect(cautions(rising, share)).toHaveLength(1);
    expect(cautions(rising, `any of { ${share} / ${sure} }`)).toHaveLength(1);
    expect(cautions(rising, "average carry at least 100 yd")).toEqual([]);
  });
});

describe("a shot that stands apart", () => {
  const five = "carry club\n150 7-iron\n151 7-iron\n149 7-iron\n150 7-iron\n90 7-iron";
  const apart = (text: string, success: string) => score(plan({ shots: 10, success }), table(text)).cautions;
  const average = "average carry at least 100 yd";

  test("is pointed at, and counted like the others", () => {
    expect(apart(five, average)).toEqual([
      'Block "Gate": by carry, line 6 of shots.csv (90 yd) stands apart from the other shots: look at this shot. It is counted like the others.',
    ]);
    expect(
      score(plan({ shots: 5, success: average }), table(five)).blocks[0]?.criteria[0]?.evidence.shotsUsed,
    ).toBe(5);
  });

  test("among few shots, with another club, or where shots are only counted, is not", () => {
    expect(apart(`${five.split("\n").slice(0, -2).join("\n")}\n90 7-iron`, average)).toEqual([]);
    expect(apart(five.replace("90 7-iron", "90 wedge"), average)).toEqual([]);
    expect(apart(five, "at least 4 of 5 shots with carry at least 100 yd")).toEqual([]);
  });

  test("many are counted, not all named", () => {
    const many = `carry\n${"150\n151\n149\n".repeat(8)}${"60\n".repeat(5)}`;
    expect(score(plan({ shots: 29, success: average }), table(many)).cautions[0]).toMatch(
      / and 2 more stand apart/,
    );
  });
});

describe("readings that cannot all be true", () => {
  const speeds = new Map(["ball-speed", "club-speed", "carry", "total"].map((name) => [name, metric(name)]));
  const findings = (values: Record<string, number>, derived: string[] = []) => {
    const [shot] = table("carry\n1");
    if (shot === undefined) throw new Error("The table has no shot.");
    const scoring = { ...input(plan({})), metrics: speeds };
    return scoreSession(scoring, data([{ ...shot, values, derived }]), { version: "1" }).findings;
  };

  test("are pointed at in their row", () => {
    expect(findings({ "ball-speed": 15, "club-speed": 40 })).toMatchObject([
      { code: "value-inconsistent", severity: "warning", file: "shots.csv", line: 2 },
    ]);
    expect(findings({ total: 80, carry: 100 })[0]?.message).toBe(
      "total is 80.0 m and carry 100.0 m: a ball does not roll back that far. One of the readings, or the unit of a column, is wrong. Both are kept as they were read.",
    );
  });

  test("are those that no ball can do, not those that are rare", () => {
    expect(findings({ "ball-speed": 32, "club-speed": 36 })).toEqual([]);
    expect(findings({ total: 97, carry: 100 })).toEqual([]);
    // The limits: half of the club's speed, and nine tenths of the carry.
    expect(findings({ "ball-speed": 20, "club-speed": 40 })).toEqual([]);
    expect(findings({ "ball-speed": 19.9, "club-speed": 40 })).toHaveLength(1);
    expect(findings({ total: 90, carry: 100 })).toEqual([]);
    expect(findings({ total: 89.9, carry: 100 })).toHaveLength(1);
    expect(findings({ carry: 100 })).toEqual([]);
    expect(findings({ total: 80, carry: 100 }, ["total"])).toEqual([]);
  });
});
