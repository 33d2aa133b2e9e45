import { describe, expect, test } from "vitest";
import type { NextStep, NextTest } from "../../shared/plan-model.ts";
import { somewhere } from "../criteria/words.ts";
import { type BlockWords, plan, score, table } from "./practice.ts";

const goal = (limit: number) => `average carry at least ${limit} yd`;
const shots = table("carry\n150\n150");
const block: BlockWords = { shots: 2, success: [goal(100), goal(140)] };

function step(move: NextStep["move"], ...when: readonly NextTest[]): NextStep {
  return { move, plan: move === "repeat" ? null : "Next", when: [...when], text: move, location: somewhere };
}

const every = (...verdicts: NextTest["verdicts"]): NextTest => ({ goals: { kind: "every" }, verdicts });
const any = (...verdicts: NextTest["verdicts"]): NextTest => ({ goals: { kind: "any" }, verdicts });
const ofBlock = (name: string, ...verdicts: NextTest["verdicts"]): NextTest => ({
  goals: { kind: "block", block: name },
  verdicts,
});

function next(steps: readonly NextStep[], ...blocks: readonly BlockWords[]) {
  return score({ ...plan(...blocks), next: [...steps] }, shots).next;
}

describe("what comes next", () => {
  test("is the first step whose tests all hold", () => {
    const steps = [step("repeat", any("missed")), step("advance", every("met")), step("step-back")];
    expect(next(steps, block)).toMatchObject({
      move: "advance",
      plan: "Next",
      reason: "Every goal is met (2 of 2).",
    });
    expect(next(steps, { ...block, success: [goal(100), goal(170)] })).toMatchObject({
      move: "repeat",
      plan: null,
      reason: "1 of 2 goals is missed.",
    });
    expect(next(steps, { ...block, success: goal(170) })).toMatchObject({
      reason: "1 of 1 goal is missed.",
    });
  });

  test("may hang on one block, and on several tests", () => {
    const steps = [step("advance", ofBlock("Gate", "met", "undecided"), any("met"))];
    expect(next(steps, block)).toMatchObject({
      reason: 'Block "Gate" is met and 2 of 2 goals are met.',
    });
    expect(next(steps, { ...block, success: goal(170) })).toBe(null);
    expect(next([step("advance", ofBlock("Elsewhere", "met"))], block)).toBe(null);
  });

  test("without a test says how the goals came out", () => {
    const steps = [step("advance", every("met")), step("step-back")];
    const open = { name: "Later", shots: 3, success: goal(100) };
    expect(next(steps, { ...block, success: [goal(100), goal(170)] }, open)).toMatchObject({
      move: "step-back",
      reason: "No step before it holds: 1 goal is met, 1 missed, 1 not measured.",
    });
  });

  test("where nothing was asked, nothing is every goal, and no goal is any", () => {
    expect(next([step("advance", every("met")), step("repeat", any("met"))], { shots: 2 })).toBe(null);
    expect(next([step("step-back")], { shots: 2 })?.reason).toBe(
      "No step before it holds: the plan sets no goals.",
    );
  });
});
