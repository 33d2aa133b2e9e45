import { describe, expect, test } from "vitest";
import { plan, score, table } from "./practice.ts";

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
