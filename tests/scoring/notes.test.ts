import { expect, test } from "vitest";
import { plan, score, table } from "./practice.ts";

const EXACT = "Readings taken as exact: no instrument is stated.";
const carryGoal = { shots: 1, success: "at least 1 of 1 shots with carry at least 150 yd" };
const shots = table("carry\n160");

test("readings are taken as exact", () => {
  expect(score(plan(carryGoal), shots).notes).toEqual([EXACT]);
});

test("a player without a stated hand is read as a right-hander", () => {
  const goal = { shots: 1, success: "at least 1 of 1 shots with club-path at least 1° in-to-out" };
  const report = score(plan(goal), table("club-path\n2"), { hand: null });
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
