/** Names that follow from readings, as the shape of a shot, where the readings may be off; and numbers from a model. */
import { describe, expect, test } from "vitest";
import { scoreSession } from "../../server/scoring/score-session.ts";
import type { Criterion, Metric } from "../../shared/plan-model.ts";
import type { Shot } from "../../shared/session-data.ts";
import { condition, metricCalled, somewhere, vocabulary } from "../criteria/words.ts";
import { metric } from "../support/scoring-input.ts";
import { data, input, instrument, plan, type Stated, table } from "./practice.ts";

/** Straight within ±2° of path; else in or out. */
const side: Metric = metric("side", {
  categories: [
    { name: "straight", condition: condition("club-path within ±2°") },
    { name: "out", condition: condition("club-path above 2° right") },
    { name: "in", condition: condition("club-path above 2° left") },
  ],
});

const straight: Criterion = {
  kind: "count",
  id: "Gate/1",
  text: "at least 1 of 1 shots with side is straight",
  location: somewhere,
  bound: "least",
  count: 1,
  outOf: 1,
  subject: {
    kind: "meeting",
    condition: { anyOf: [{ allOf: [{ kind: "category", metric: "side", categories: ["straight"] }] }] },
  },
};

function report(shot: Partial<Shot>, criterion: Criterion, metrics: readonly Metric[], stated: Stated = {}) {
  const [read] = table("club-path carry\n1.9 150");
  const made = plan({ name: "Gate", shots: 1 });
  const [block] = made.blocks;
  if (read === undefined || block === undefined) throw new Error("There is no shot, or no block.");
  const scoring = {
    ...input({ ...made, blocks: [{ ...block, success: [criterion] }] }, stated),
    metrics: new Map([...vocabulary, ...metrics.map((each) => [each.name, each] as const)]),
  };
  return scoreSession(scoring, data([{ ...read, ...shot }]), { version: "1" });
}

function scored(...of: Parameters<typeof report>) {
  return report(...of).blocks[0]?.criteria[0];
}

describe("a name", () => {
  const unit = { instrument: instrument("club-path 0.4 random") };

  test("that was computed is as doubtful as the readings it follows from", () => {
    const computed = { categories: { side: "straight" }, derived: ["side"] };
    const result = scored(computed, straight, [side], unit);
    expect(result?.verdict).toBe("undecided");
    expect(result?.evidence.observed).toMatch(/probability of 1 or more: 60 %$/);
    expect(scored(computed, straight, [side])?.verdict).toBe("met");
  });

  test("that was read is what was read", () => {
    expect(scored({ categories: { side: "straight" } }, straight, [side], unit)?.verdict).toBe("met");
  });

  test("is a reading like any other in the notes", () => {
    const notes = (shot: Partial<Shot>) => report(shot, straight, [side]).notes.slice(1);
    expect(notes({ categories: { side: "straight" } })).toEqual([]);
    expect(notes({ categories: { side: "straight" }, derived: ["side"] })).toEqual([
      "side was computed from other readings for 1 shot.",
    ]);
    expect(notes({})).toEqual(["No shot has a reading of side, which the plan uses."]);
  });
});

describe("a verdict on what a model computed", () => {
  const modelled = metric("standard-carry", {
    ...metricCalled("carry"),
    name: "standard-carry",
    model: "flight",
  });
  const longer = metric("longer", {
    formula: {
      kind: "operation",
      operator: "*",
      left: { kind: "metric", name: "standard-carry" },
      right: { kind: "number", value: 2 },
    },
  });
  const average = (name: string): Criterion => ({
    kind: "statistic",
    id: "Gate/1",
    text: name,
    location: somewhere,
    statistic: { kind: "average" },
    metric: name,
    bounds: { kind: "at least", limit: { value: 1, unit: { symbol: "m", factor: 1 }, direction: null } },
    confidence: null,
  });
  const values = { "standard-carry": 150, longer: 300 };

  test("is an estimate, and so is what follows from it", () => {
    const derived = ["standard-carry", "longer"];
    for (const name of derived) {
      const result = scored({ values, derived }, average(name), [modelled, longer]);
      expect(result?.evidence.isEstimate).toBe(true);
    }
    expect(report({ values, derived }, average("longer"), [modelled, longer]).notes).toContain(
      "longer was computed from estimates for 1 shot.",
    );
  });

  test("is none where it was read", () => {
    const result = scored({ values, derived: ["longer"] }, average("longer"), [modelled, longer]);
    expect(result?.evidence.isEstimate).toBe(false);
  });
});
