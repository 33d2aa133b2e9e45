import { describe, expect, test } from "vitest";
import { type BlockWords, block, linesOf, plan, score, table } from "./practice.ts";

const carryGoal = "at least 1 of 2 shots with carry at least 150 yd";

/** Line of the table, and why it does not count. */
function setAside(blocks: readonly BlockWords[], text: string): [number, string][] {
  return score(plan(...blocks), table(text)).setAside.map(({ row, reason }) => [row.line, reason]);
}

test("shots the data excludes, with its reason", () => {
  const report = score(
    plan({ shots: 2, success: carryGoal }),
    table(`
      carry excluded
      160   practice-swing
      150   -
      140   -
    `),
  );
  expect(report.setAside).toMatchObject([
    { row: { line: 2 }, block: "Gate", reason: "practice-swing", location: null },
  ]);
  expect(report.blocks[0]?.shots).toEqual({ asked: 2, hit: 3, counted: 2 });
});

test("shots the block leaves out, with the condition and its line", () => {
  const words = { shots: 2, leaveOut: ["smash-factor below 1.15", "carry below 50 yd"], success: carryGoal };
  const report = score(
    plan(words),
    table(`
      carry smash-factor
      160   1.10
      40    1.30
      150   1.15
      140   1.40
    `),
  );
  expect(report.setAside).toMatchObject([
    {
      row: { line: 2 },
      reason: "left out: smash-factor below 1.15",
      location: block(words).leaveOut[0]?.location,
    },
    { row: { line: 3 }, reason: "left out: carry below 50 yd" },
  ]);
  expect(report.blocks[0]?.shots).toEqual({ asked: 2, hit: 4, counted: 2 });
});

test("a shot that cannot be told to be left out is kept, and a note says so", () => {
  const report = score(
    plan({ shots: 3, leaveOut: "smash-factor below 1.15", success: carryGoal }),
    table(`
      carry smash-factor
      160   ?
      150   1.3
      150   ?
    `),
  );
  expect(report.setAside).toEqual([]);
  expect(report.notes).toContain(
    'Block "Gate": 2 shots were kept because readings are missing to tell whether to leave out "smash-factor below 1.15".',
  );
});

describe("surplus shots", () => {
  const four = `
    carry
    160
    150
    170
    180
  `;

  test("the first shots that count are taken, the rest is listed", () => {
    expect(setAside([{ shots: 2, success: carryGoal }], four)).toEqual([
      [4, "after the 2 shots the block asks for"],
      [5, "after the 2 shots the block asks for"],
    ]);
  });

  test("a shot left out does not use up a place", () => {
    expect(setAside([{ shots: 2, leaveOut: "carry below 155 yd" }], four)).toEqual([
      [3, "left out: carry below 155 yd"],
      [5, "after the 2 shots the block asks for"],
    ]);
  });

  test("`at least` so many shots, or no number, leaves no surplus", () => {
    expect(setAside([{ shots: "at least 2", success: carryGoal }], four)).toEqual([]);
    expect(setAside([{ success: carryGoal }], four)).toEqual([]);
  });
});

test("shots of no block, or of one the plan does not have, in the order they were hit", () => {
  const shots = table(`
    block carry
    Gate  150
    Putts 3
    none  160
    Gate  160
    Gate  170
  `).map((shot) => (shot.block === "none" ? { ...shot, block: null } : shot));
  const { setAside } = score(plan({ shots: 2, success: carryGoal }), shots);
  expect(linesOf(setAside.map(({ row }) => row))).toEqual([3, 4, 6]);
  expect(setAside).toMatchObject([
    { block: "Putts", reason: 'the plan has no block "Putts"' },
    { block: null, reason: "given to no block of the plan" },
    { block: "Gate", reason: "after the 2 shots the block asks for" },
  ]);
});

test("one shot is spoken of as one", () => {
  expect(setAside([{ shots: 1 }], "carry\n160\n150")).toEqual([[3, "after the 1 shot the block asks for"]]);
});

test("many shots set aside put a caution beside every verdict of the block", () => {
  const words = {
    shots: 4,
    leaveOut: "carry below 50 yd",
    success: ["average carry at least 150 yd", carryGoal],
  };
  const caution = "1 of the block's 5 shots was set aside before scoring.";
  const few = score(plan(words), table("carry\n40\n150\n150\n150\n150"));
  expect(few.blocks[0]?.criteria.map(({ evidence }) => evidence.cautions)).toEqual([[caution], [caution]]);
  const fewer = score(plan({ ...words, shots: 5 }), table("carry\n40\n150\n150\n150\n150\n150"));
  expect(fewer.blocks[0]?.criteria.map(({ evidence }) => evidence.cautions)).toEqual([[], []]);
});
