/** What a plan says beside its blocks, as numbers and names. */
import { expect, test } from "vitest";
import { lowered } from "./lowered.ts";

test("time in seconds, clubs, needs, limits, and how sure a verdict must be", async () => {
  const { plans } = await lowered(`/** For wet days. */
plan "Strike first" {
  intent "Ball first, then the grass."
  for 7-iron, driver
  time 55 min
  needs club-path, face-angle
  limit 60 full-effort swings
  limit 100 swings
  decide at 90 %
  caution "Look around before every swing."
  block "Gate" test {
    5 shots
    success {
      3 in a row with carry at least 140 yd
    }
  }
  then {
    repeat when "Gate" is undecided or not-measured
    advance to "Windows" when every goal is met
    step back to "Windows" otherwise
  }
}

plan "Windows" {
  block "Gate" test {
    5 shots
  }
}
`);
  expect(plans[0]).toMatchObject({
    documentation: "For wet days.",
    intent: "Ball first, then the grass.",
    clubs: ["7-iron", "driver"],
    time: 3300,
    needs: ["club-path", "face-angle"],
    limits: [
      { count: 60, fullEffort: true },
      { count: 100, fullEffort: false },
    ],
    decisionLevel: 0.9,
    cautions: ["Look around before every swing."],
    next: [
      {
        move: "repeat",
        plan: null,
        when: [{ goals: { kind: "block", block: "Gate" }, verdicts: ["undecided", "not-measured"] }],
      },
      { move: "advance", plan: "Windows", when: [{ goals: { kind: "every" }, verdicts: ["met"] }] },
      { move: "step-back", plan: "Windows", when: [] },
    ],
  });
  expect(plans[1]).toMatchObject({
    documentation: null,
    intent: null,
    clubs: [],
    time: null,
    needs: [],
    limits: [],
    decisionLevel: 0.95,
    cautions: [],
    next: [],
  });
});

test("the baseline is the first one before a block", async () => {
  const GOAL = "success {\n      carry gains 5 yd against the baseline\n    }";
  const { plans } = await lowered(`plan "Longer" {
  block "One" baseline {
    6 shots
  }
  block "Two" baseline {
    6 shots
    ${GOAL}
  }
  block "Three" test {
    6 shots
    ${GOAL}
  }
}
`);
  const against = plans[0]?.blocks.flatMap(({ success }) => success);
  expect(against).toMatchObject([
    { against: { kind: "block", block: "One" } },
    { against: { kind: "block", block: "One" } },
  ]);
});

test("a metric's limits stand in order, whichever way they are written", async () => {
  const { metrics } = await lowered(`metric lean is angle {
  shown in ° to 0.1
  positive forward
  negative backward
  plausible between 30° backward and 20° forward
  formula attack-angle * 2 - 1°
}
`);
  const DEGREE = Math.PI / 180;
  expect(metrics.find(({ name }) => name === "lean")).toMatchObject({
    step: 0.1,
    plausible: { low: expect.closeTo(-30 * DEGREE, 12), high: expect.closeTo(20 * DEGREE, 12) },
    formula: {
      operator: "-",
      left: { operator: "*", left: { kind: "metric", name: "attack-angle" }, right: { value: 2 } },
      right: { kind: "number", value: expect.closeTo(DEGREE, 12) },
    },
  });
});
