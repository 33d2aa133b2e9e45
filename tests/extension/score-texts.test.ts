import { describe, expect, test } from "vitest";
import {
  goalsText,
  longText,
  noSessionText,
  planAt,
  scoreAt,
  shortText,
  type Translate,
} from "../../extension/score-texts.ts";
import type { Range } from "../../shared/plan-model.ts";
import type { PlanScore } from "../../shared/protocol/plan-score.ts";

/** As the editor does it: whatever stands between braces is taken for a place. */
const english: Translate = (sentence, ...values) =>
  sentence.replace(/\{([^}]+)\}/g, (braces, place) => String(values[place] ?? braces));

const file = "file:///plans/iron.drill";
const sessionFile = "file:///sessions/october.drill";

function lines(first: number, last: number): Range {
  return { start: { line: first, character: 0 }, end: { line: last, character: 1 } };
}

function score(given: Partial<PlanScore> = {}): PlanScore {
  return {
    plan: { file, name: "Iron" },
    range: lines(2, 20),
    session: { file: sessionFile, name: "October", range: lines(4, 9) },
    shown: true,
    picked: false,
    verdict: "missed",
    goals: { met: 3, missed: 1, undecided: 1, "not-measured": 0 },
    problem: null,
    before: null,
    ...given,
  };
}

describe("in a few words", () => {
  test("the outcome and the session", () => {
    expect(shortText(score(), english)).toBe("Missed · October");
    expect(shortText(score({ verdict: null }), english)).toBe("No goals · October");
  });

  test("that there is no session, or no score", () => {
    expect(shortText(score({ session: null, verdict: null }), english)).toBe("No session");
    expect(shortText(score({ verdict: null, problem: "The table is missing." }), english)).toBe(
      "Not scored · October",
    );
  });

  test("a long name is cut, never within a character", () => {
    const name = `${"🏌".repeat(31)} and more`;
    const text = shortText(score({ session: { file, name, range: lines(0, 1) } }), english);
    expect(text).toBe(`Missed · ${"🏌".repeat(31)}…`);
  });
});

describe("in full", () => {
  test("plan, session and goals", () => {
    expect(longText(score({ picked: true }), english)).toBe(
      "Plan: Iron\nSession: October (picked)\n3 of 5 goals met, 1 missed, 1 undecided",
    );
    expect(longText(score(), english)).toContain("October (the latest)");
    expect(longText(score({ shown: false }), english)).toContain("October (the plan is shown with another)");
  });

  test("why there is no score", () => {
    expect(longText(score({ problem: "The table is missing." }), english)).toMatch(
      /\nThe table is missing\.$/,
    );
    expect(longText(score({ session: null }), english)).toBe(
      "Plan: Iron\nNo session has practised this plan yet.",
    );
  });

  test("what was known before is told apart from what is", () => {
    const text = longText(score({ problem: "The table is missing.", before: "3 goals met" }), english);
    expect(text).toMatch(/\nThe table is missing\.\nBefore that: 3 goals met\. This is no longer current\.$/);
  });

  test("what to do when nobody has practised a plan", () => {
    expect(noSessionText("Iron", english)).toMatch(/^No session has practised “Iron” yet\. Declare one/);
  });

  test("only goals that came out so are named", () => {
    expect(goalsText(score({ goals: { met: 2, missed: 0, undecided: 0, "not-measured": 0 } }), english)).toBe(
      "2 of 2 goals met",
    );
    expect(goalsText(score({ goals: { met: 0, missed: 0, undecided: 0, "not-measured": 0 } }), english)).toBe(
      "The plan sets no goals.",
    );
  });
});

describe("of several plans", () => {
  const second = score({
    plan: { file, name: "Wedge" },
    range: lines(22, 30),
  });

  test("the one at the cursor is meant, else the first", () => {
    expect(planAt([score(), second], file, 25)).toBe(second);
    expect(planAt([score(), second], file, 21)?.plan.name).toBe("Iron");
    expect(planAt([], file, 0)).toBeUndefined();
  });

  test("lines count only in the plan's own file", () => {
    expect(planAt([score(), second], sessionFile, 25)?.plan.name).toBe("Iron");
  });
});

test("in a file of sessions the one at the cursor is meant, shown or not, else the one that is shown", () => {
  const other = score({
    session: { file: sessionFile, name: "November", range: lines(11, 16) },
    shown: false,
  });
  expect(scoreAt([score(), other], sessionFile, 12)).toBe(other);
  expect(scoreAt([score(), other], sessionFile, 5)?.session?.name).toBe("October");
  expect(scoreAt([score(), other], sessionFile, 0)?.session?.name).toBe("October");
  expect(scoreAt([score(), other], file, 12)?.session?.name).toBe("October");
});
