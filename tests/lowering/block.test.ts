/** What the lines of a block come to: numbers, not the words they were written in. */
import { describe, expect, test } from "vitest";
import type { Block } from "../../shared/plan-model.ts";
import { lowered } from "./lowered.ts";

const DEGREE = Math.PI / 180;
const YARD = 0.9144;

/** The last block of a plan with a baseline before it. */
async function block(lines: string, before = "", from = "test"): Promise<Block> {
  const { plans } = await lowered(`${before}

plan "Gate" {
  for 7-iron
  block "Where we are" baseline {
    6 shots
  }
  block "Prove it" ${from} {
    ${lines}
  }
}
`);
  const last = plans[0]?.blocks.at(-1);
  if (last === undefined) throw new Error("The plan has no block.");
  return last;
}

/** The only goal of a block of 20 shots. */
async function goal(text: string) {
  const { success } = await block(`20 shots\n    success {\n      ${text}\n    }`);
  return success[0];
}

const amount = (value: number) => expect.objectContaining({ value: expect.closeTo(value, 12) });

describe("goals", () => {
  const BEFORE = 'against "Where we are"';

  test.each([
    ["at least 6 of 12 shots with carry at least 140 yd", { bound: "least", count: 6, outOf: 12 }],
    ["at most 3 shots with carry below 140 yd", { bound: "most", count: 3, outOf: 20 }],
    ["5 in a row with carry at least 140 yd", { kind: "run", length: 5 }],
    [
      "at least 70 % of shots with carry at least 140 yd at 80 % confidence",
      { kind: "share", share: 0.7, confidence: 0.8 },
    ],
    [
      "average club-path between 1° out-to-in and 3° in-to-out",
      {
        statistic: { kind: "average" },
        confidence: null,
        bounds: { kind: "between", one: amount(DEGREE), other: amount(3 * DEGREE) },
      },
    ],
    [
      "90th percentile of carry at least 140 yd",
      { statistic: { kind: "percentile", share: 0.9 }, bounds: { limit: amount(140 * YARD) } },
    ],
    ["middle 80 % of carry spans at most 12 yd", { statistic: { kind: "span", share: 0.8 } }],
    [
      "area of the 75 % ellipse of offline and carry at most 250 yd²",
      {
        measure: "area",
        share: 0.75,
        metrics: ["offline", "carry"],
        bounds: { limit: amount(250 * YARD * YARD) },
      },
    ],
    [
      `carry gains 5 yd ${BEFORE}`,
      {
        statistic: { kind: "average" },
        movement: { kind: "rises", bound: "least", amount: amount(5 * YARD) },
      },
    ],
    [`carry loses no more than 4 yd ${BEFORE}`, { movement: { kind: "falls", bound: "most" } }],
    [`spread of carry falls by at least 20 % ${BEFORE}`, { movement: { amount: amount(0.2) } }],
    [
      "carry stays within 5 yd against the baseline",
      { movement: { kind: "stays" }, against: { kind: "block", block: "Where we are" } },
    ],
    ["at most 40 full-effort swings", { kind: "load", count: 40, fullEffort: true, over: "block" }],
    ["at most 60 swings in the session", { kind: "load", count: 60, fullEffort: false, over: "session" }],
  ])("%s", async (text, model) => {
    expect(await goal(text)).toMatchObject({ text, id: "Prove it/1", ...model });
  });

  test("are numbered, also inside of others", async () => {
    const group = await goal(
      "any of { 3 in a row with carry at least 140 yd\n average carry at least 140 yd }",
    );
    expect(group).toMatchObject({
      needed: "any",
      criteria: [{ id: "Prove it/1.1" }, { id: "Prove it/1.2" }],
    });
    const { success } = await block(`20 shots
    success {
      average carry at least 140 yd
      2 of { 3 in a row with carry at least 140 yd\n average carry at least 140 yd }
    }`);
    expect(success).toMatchObject([{ id: "Prove it/1" }, { id: "Prove it/2", needed: 2 }]);
  });
});

describe("shots", () => {
  test("are with the plan's club, at an effort from 0 to 1", async () => {
    const { shots } = await block("5 shots at 60 % effort\n    at least 7 shots with driver");
    expect(shots).toEqual([
      { count: 5, open: false, club: "7-iron", effort: 0.6 },
      { count: 7, open: true, club: "driver", effort: null },
    ]);
  });

  test("of several lines are as many together", async () => {
    const { success } = await block(`5 shots
    7 shots with driver
    success {
      at least 9 shots with carry at least 140 yd
    }`);
    expect(success).toMatchObject([{ count: 9, outOf: 12 }]);
  });
});

describe("a block from a drill", () => {
  const DRILL = `drill "Start line" (width: angle = 3°, hits: ratio = 12) blocked {
  18 shots
  cue "Brush the grass"
  time 10 min
  target start-direction within ±width
  require attack-angle between 2° down and 6° down
  success {
    at least hits of 18 shots on target
  }
}`;
  const from = (lines: string, use = 'from "Start line"') => block(lines, DRILL, use);

  test("is the drill with what its parameters stand for", async () => {
    const made = await from("", 'from "Start line" with width = 2°');
    expect(made).toMatchObject({
      kind: "blocked",
      time: 600,
      cues: ["Brush the grass"],
      shots: [{ count: 18 }],
      targets: [{ text: "target start-direction within ±2°" }],
      success: [{ text: "at least 12 of 18 shots on target", count: 12, outOf: 18 }],
    });
    expect(made.targets[0]?.condition.anyOf[0]?.allOf[0]).toMatchObject({
      bounds: { plusMinus: true, tolerance: amount(2 * DEGREE), centre: amount(0) },
    });
  });

  test("says its own shots, time and goals instead of the drill's", async () => {
    const made = await from("10 shots\n    time 5 min\n    success {\n      5 in a row on target\n    }");
    expect(made).toMatchObject({ time: 300, shots: [{ count: 10 }], success: [{ kind: "run" }] });
  });

  test("says its own target instead of the drill's of the same metric, and others besides", async () => {
    const targets = async (lines: string) => (await from(lines)).targets.map(({ text }) => text);
    expect(await targets("target start-direction within ±1°")).toEqual(["target start-direction within ±1°"]);
    expect(await targets("target carry at least 140 yd")).toEqual([
      "target start-direction within ±3°",
      "target carry at least 140 yd",
    ]);
    const both = "target start-direction within ±1° and carry at least 140 yd";
    expect(await targets(both)).toEqual(["target start-direction within ±3°", both]);
    const { targets: kept, requirements } = await from("require start-direction within ±5°");
    expect(kept).toHaveLength(1);
    expect(requirements).toHaveLength(2);
  });

  test("keeps the drill's cues and adds its own", async () => {
    expect((await from('cue "Finish high"')).cues).toEqual(["Brush the grass", "Finish high"]);
  });
});

test("of the variants of a window the more special come first: for a club, then at a level", async () => {
  const { targets } = await block(
    '20 shots\n    target inside "Path"',
    `window "Path" {
  is club-path within ±1°
  at level "first year" is club-path within ±2°
  for 7-iron is club-path within ±3°
  for 7-iron at level "first year" is club-path within ±4°
}`,
  );
  const [test] = targets[0]?.condition.anyOf[0]?.allOf ?? [];
  expect(test).toMatchObject({
    kind: "window",
    inside: true,
    variants: [
      { clubs: ["7-iron"], level: "first year" },
      { clubs: ["7-iron"], level: null },
      { clubs: [], level: "first year" },
      { clubs: [], level: null },
    ],
  });
});
