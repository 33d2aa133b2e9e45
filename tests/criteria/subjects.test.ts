/** Which shots a goal counts, in words. */
import { expect, test } from "vitest";
import { evaluate, sentence } from "../../language/criteria/criteria.ts";
import type { Condition, CountCriterion } from "../../shared/plan-model.ts";
import { shotsLike } from "./shots.ts";
import { condition, criterion } from "./words.ts";

function counting(condition: Condition): CountCriterion {
  return {
    ...criterion("count", "at least 1 of 2 shots on target"),
    subject: { kind: "meeting", condition },
  };
}

const window: Condition = {
  anyOf: [{ allOf: [{ kind: "window", window: "Neutral path", inside: true, variants: [] }] }],
};
const windowAndShape: Condition = {
  anyOf: [
    {
      allOf: [
        { kind: "window", window: "Neutral path", inside: true, variants: [] },
        { kind: "category", metric: "shape", categories: ["draw"] },
      ],
    },
  ],
};
const windows: Condition = { anyOf: [window, { ...window }].flatMap(({ anyOf }) => anyOf) };
const shape: Condition = {
  anyOf: [{ allOf: [{ kind: "category", metric: "shape", categories: ["draw", "straight"] }] }],
};

test.each([
  [condition("carry at least 150 yd"), "with carry at least 150 yd", "has carry at least 150 yd"],
  [window, 'inside "Neutral path"', 'is inside "Neutral path"'],
  [
    windowAndShape,
    'with inside "Neutral path" and shape is draw',
    'is such that inside "Neutral path" and shape is draw',
  ],
  [
    windows,
    'with inside "Neutral path" or inside "Neutral path"',
    'is such that inside "Neutral path" or inside "Neutral path"',
  ],
  [shape, "with shape is draw or straight", "is such that shape is draw or straight"],
])("%j", (subject, afterShots, predicate) => {
  const goal = counting(subject);
  expect(evaluate(goal, shotsLike("TF")).required).toBe(`at least 1 of 2 shots ${afterShots}`);
  expect(sentence(goal)).toBe(`At least 1 of the first 2 shots ${predicate}.`);
});

test("a number of shots that is not written is all of them", () => {
  const goal = { ...counting(condition("carry at least 150 yd")), outOf: null };
  expect(sentence(goal)).toBe("At least 1 of all shots has carry at least 150 yd.");
  expect(evaluate(goal, shotsLike("TFF", { asked: 5 })).required).toBe(
    "at least 1 of 5 shots with carry at least 150 yd",
  );
});
