import { describe, expect, test } from "vitest";
import { plan, score, table } from "./practice.ts";

const EXACT = "Readings taken as exact: no instrument is stated.";
const carryGoal = { shots: 1, success: "at least 1 of 1 shots with carry at least 150 yd" };
const shots = table("carry\n160");

test("readings are taken as exact", () => {
  expect(score(plan(carryGoal), shots).notes).toEqual([EXACT]);
});

test("a player without a stated hand is read as a right-hander", () => {
  const goal = { shots: 1, success: "at least 1 of 1 shots with club-path at least 1° in-to-out" };
  const report = score(plan(goal), table("club-path\n2"), null);
  expect(report.verdict).toBe("met");
  expect(report.player.hand).toBe(null);
  expect(report.notes).toEqual([
    EXACT,
    'Player "P-07" has no hand stated: direction words are those of a right-hander.',
  ]);
});

test("metrics that no shot has, that the plan needs or uses", () => {
  const demanding = {
    ...plan({ ...carryGoal, leaveOut: "smash-factor below 1.15" }),
    needs: ["club-path", "carry"],
  };
  expect(score(demanding, shots).notes).toEqual([
    EXACT,
    "No shot has a reading of club-path, which the plan needs.",
    "No shot has a reading of smash-factor, which the plan uses.",
    'Block "Gate": 1 shot was kept because readings are missing to tell whether to leave out "smash-factor below 1.15".',
  ]);
});

test("metrics that were computed", () => {
  const computed = shots.map((shot) => ({ ...shot, derived: ["carry", "offline"] }));
  expect(score(plan(carryGoal), computed).notes).toEqual([
    EXACT,
    "carry was computed from other readings for 1 shot.",
  ]);
});

test("no shots at all", () => {
  expect(score(plan(carryGoal), []).notes).toEqual([EXACT, "The data holds no shots."]);
});

test("a goal about shots on target where there is no target", () => {
  expect(score(plan({ shots: 1, success: "1 in a row on target" }), shots).notes).toEqual([
    EXACT,
    'Block "Gate" has no target, so no shot of it can be said to be on target.',
  ]);
});

describe("several verdicts about ability", () => {
  const sure = "average carry at least 150 yd at 90 % confidence";
  const unsure = "at least 50 % of shots with carry at least 150 yd at 80 % confidence";
  const eight = table(`carry\n${"160\n161\n".repeat(4)}`.trim());
  const abilityNotes = (...success: string[]) =>
    score(plan({ shots: 8, success }), eight).notes.filter((note) => note.includes("ability"));

  test("are less sure together, and a note says how sure", () => {
    expect(abilityNotes(sure, unsure, unsure)).toEqual([
      "Each of the 3 verdicts about ability, at 80 % and 90 % confidence, can be wrong on its own: the chance that all 3 are right may be no more than 58 %.",
    ]);
    expect(abilityNotes(sure, sure)).toEqual([
      "Each of the 2 verdicts about ability, at 90 % confidence, can be wrong on its own: the chance that both are right may be no more than 81 %.",
    ]);
  });

  test("are counted over all blocks of the plan", () => {
    const blocks = ["Gate", "Test"].map((name) => ({ name, shots: 4, success: sure }));
    const shots = eight.map((shot, index) => ({ ...shot, block: index < 4 ? "Gate" : "Test" }));
    expect(score(plan(...blocks), shots).notes.join("\n")).toContain("Each of the 2 verdicts about ability");
  });

  test("a single one, those about the shots hit, and those that decide nothing need no note", () => {
    expect(abilityNotes(sure)).toEqual([]);
    expect(
      abilityNotes(sure, "average carry at least 150 yd", "8 in a row with carry at least 150 yd"),
    ).toEqual([]);
    expect(abilityNotes(sure, "average carry at least 160.5 yd at 90 % confidence")).toEqual([]);
  });
});
