import { describe, expect, test } from "vitest";
import { evaluate, sentence } from "../../language/criteria/criteria.ts";
import type { Swings } from "../../language/criteria/criterion.ts";
import { shotsLike, swings } from "./shots.ts";
import { criterion } from "./words.ts";

function after(made: number, toCome: number, more: Partial<Swings> = {}) {
  const block = { ...swings(made), toCome: { all: toCome, fullEffort: toCome }, ...more };
  return { ...shotsLike("T".repeat(made)), swings: { block, session: swings(100) } };
}

const atMost40 = criterion("load", "at most 40 swings");
const atLeast30 = criterion("load", "at least 30 swings");

describe("at most", () => {
  test.each([
    // made, still planned, verdict, what settles it
    [30, 0, "met", null],
    [40, 0, "met", null],
    [41, 0, "missed", null],
    [41, 10, "missed", null],
    [30, 12, "undecided", "allows 10 of the 12 planned swings not made yet"],
    [40, 12, "undecided", "allows none of the 12 planned swings not made yet"],
    [30, 10, "undecided", "holds if no more than the 10 planned swings not made yet are made"],
    [39, 1, "undecided", "holds if no more than the planned swing not made yet is made"],
    [0, 12, "not-measured", "swings to count"],
  ])("%d made and %d planned: %s", (made, toCome, verdict, settles) => {
    expect(evaluate(atMost40, after(made, toCome))).toMatchObject({ verdict, settles });
  });
});

describe("at least", () => {
  test.each([
    [30, 0, "met", null],
    [30, 5, "met", null],
    [29, 0, "missed", null],
    [20, 15, "undecided", "needs 10 of the 15 planned swings not made yet"],
    [20, 10, "undecided", "needs the 10 planned swings not made yet"],
    [20, 5, "undecided", "needs 10 more, and the plan asks for 5"],
  ])("%d made and %d planned: %s", (made, toCome, verdict, settles) => {
    expect(evaluate(atLeast30, after(made, toCome))).toMatchObject({ verdict, settles });
  });
});

test("full effort counts those swings alone, and says which are taken for it", () => {
  const shots = after(50, 4, {
    fullEffort: 20,
    unknownEffort: 3,
    toCome: { all: 4, fullEffort: 0 },
  });
  expect(evaluate(criterion("load", "at most 20 full-effort swings"), shots)).toMatchObject({
    verdict: "met",
    required: "at most 20 full-effort swings in the block",
    observed: "20 full-effort swings",
    value: 20,
    cautions: ["The effort of 3 swings is neither measured nor stated: they are counted as full."],
  });
});

test("the whole session", () => {
  const whole = criterion("load", "at most 90 swings in the session");
  expect(evaluate(whole, after(3, 0))).toMatchObject({ verdict: "missed", observed: "100 swings" });
});

test("the criterion in a sentence", () => {
  expect(sentence(atMost40)).toBe(
    "In the block, at most 40 swings, those of shots that are set aside included.",
  );
  expect(sentence(criterion("load", "at least 1 full-effort swing in the session"))).toBe(
    "In the whole session, at least 1 full-effort swing, those of shots that are set aside included.",
  );
});
