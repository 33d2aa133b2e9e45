/** What a change is held against: another block, another session, the player's usual numbers. */
import { describe, expect, test } from "vitest";
import { comparisons } from "../../server/scoring/earlier/against.ts";
import type { KnownSession } from "../../server/scoring/earlier/other-sessions.ts";
import { frameOf } from "../../server/scoring/frame.ts";
import { sortShots } from "../../server/scoring/set-aside.ts";
import type { Against } from "../../shared/plan-model.ts";
import type { Shot } from "../../shared/session-data.ts";
import { otherSession } from "./other-sessions.ts";
import { type BlockWords, data, input, plan, type Stated, table, usual } from "./practice.ts";

const before: BlockWords = { name: "Before", shots: 2, leaveOut: "carry below 50 yd" };
const after: BlockWords = { name: "After", shots: 2 };
const shots = table(`
  carry block  club
  140   Before 7-iron
  20    Before 7-iron
  142   Before 7-iron
  150   After  7-iron
  152   After  7-iron
`);

interface Around {
  readonly stated?: Stated;
  readonly others?: readonly KnownSession[];
  readonly shots?: readonly Shot[];
}

/** What the carry of block "After" is held against: its name and the carries in yards, or why there is nothing. */
function comparison(against: Against, { stated = {}, others = [], shots: hit = shots }: Around = {}) {
  const scoring = input(plan(before, after), stated);
  const frame = frameOf(scoring);
  const { blocks } = sortShots(scoring.plan, data(hit), frame.player);
  const block = scoring.plan.blocks[1];
  if (block === undefined) throw new Error("The plan has no second block.");
  const found = comparisons(scoring, blocks, frame, others)(block)(against, "carry");
  if (typeof found === "string") return found;
  if (found.kind === "usual") return [found.name, Math.round(found.value / 0.9144)];
  const carries = found.shots.values("carry").map((value) => Math.round((value ?? Number.NaN) / 0.9144));
  return [found.name, ...carries, found.isSameSession];
}

describe("a block of this session", () => {
  test("with its shots that count", () => {
    expect(comparison({ kind: "block", block: "Before" })).toEqual(['"Before"', 140, 142, true]);
  });

  test("that is not there, or is the block itself", () => {
    expect(comparison({ kind: "block", block: "Elsewhere" })).toBe('the plan has no block "Elsewhere"');
    expect(comparison({ kind: "block", block: "After" })).toBe('"After" is this block itself');
  });
});

const ofAfter = (carries: string) => ({
  blocks: [after],
  shots: table(`carry\n${carries}`, "After"),
});
const monday = otherSession("Monday", "2026-10-05", 2, ofAfter("130\n131"));

describe("an earlier session", () => {
  const named: Against = { kind: "session", session: "Monday" };

  test("by its name: the block of the same name there", () => {
    expect(comparison(named, { others: [monday] })).toEqual([
      'session "Monday" of 2026-10-05',
      130,
      131,
      false,
    ]);
  });

  test("that nobody knows, that is this one, that is another player's", () => {
    const today = { session: { name: "Today" } };
    expect(comparison(named, { stated: today })).toBe(
      'session "Monday" is not among the files that were read',
    );
    expect(comparison(named, { stated: { session: { name: "Monday" } } })).toBe(
      'session "Monday" is this session itself',
    );
    const others = [otherSession("Monday", "2026-10-05", 2, { ...ofAfter("130\n131"), player: "P-12" })];
    expect(comparison(named, { others })).toBe('session "Monday" is not one of P-07');
  });

  test("that cannot be read, or has no such block, or no shot in it", () => {
    const unread = { ...monday, read: "there are errors in plan.drill" };
    expect(comparison(named, { others: [unread] })).toBe(
      'session "Monday" of 2026-10-05 cannot be read: there are errors in plan.drill',
    );
    const other = otherSession("Monday", null, 2);
    expect(comparison(named, { others: [other] })).toBe('session "Monday" has no block "After"');
    const empty = otherSession("Monday", null, 0, { blocks: [after] });
    expect(comparison(named, { others: [empty] })).toBe(
      'session "Monday" has no shot that counts in block "After"',
    );
  });
});

describe("the last session", () => {
  const last: Against = { kind: "last session" };
  const wednesday = otherSession("Wednesday", "2026-10-07", 2, ofAfter("135\n136"));

  test("is the latest of this plan by this player on a day before", () => {
    const others = [
      monday,
      wednesday,
      otherSession("Today", "2026-10-12", 2, ofAfter("1\n2")),
      otherSession("Another plan", "2026-10-08", 2, { ...ofAfter("1\n2"), plan: "Wedges" }),
      otherSession("Another player", "2026-10-08", 2, { ...ofAfter("1\n2"), player: "P-12" }),
      otherSession("Of another file", "2026-10-08", 2, { ...ofAfter("1\n2"), planFile: "old.drill" }),
      otherSession("A namesake", "2026-10-08", 2, { ...ofAfter("1\n2"), playerFile: "others.drill" }),
      otherSession("Undated", null, 2, ofAfter("1\n2")),
    ];
    const found = ['the last session ("Wednesday" of 2026-10-07)', 135, 136, false];
    expect(comparison(last, { others })).toEqual(found);
    expect(comparison(last, { others: others.toReversed() })).toEqual(found);
  });

  test("where there is none, or none can be told", () => {
    expect(comparison(last)).toBe(
      "no earlier session of this plan by P-07 is among the files that were read",
    );
    expect(comparison(last, { others: [monday], stated: { session: { date: null } } })).toBe(
      "the session states no date, so none can be said to be before it",
    );
  });
});

describe("the usual numbers", () => {
  const against: Against = { kind: "usual" };
  const lines = [usual("carry", 150, "driver"), usual("carry", 140, "7-iron"), usual("offline", 3)];

  test("are those of the club that the block is hit with, else those of any club", () => {
    expect(comparison(against, { stated: { player: { usual: lines } } })).toEqual(["usual", 140]);
    const general = [usual("carry", 145), usual("carry", 150, "driver")];
    expect(comparison(against, { stated: { player: { usual: general } } })).toEqual(["usual", 145]);
  });

  test("are not there, or not for this club", () => {
    expect(comparison(against)).toBe("nothing is stated of the usual carry of P-07");
    const others = { player: { usual: [usual("carry", 150, "driver")] } };
    expect(comparison(against, { stated: others })).toBe(
      "the usual carry of P-07 is stated with driver, and the block is hit with 7-iron",
    );
    const mixed = shots.map((shot, index) => (index === 4 ? { ...shot, club: "wedge" } : shot));
    expect(comparison(against, { stated: { player: { usual: lines } }, shots: mixed })).toBe(
      "the usual carry of P-07 is stated with driver and 7-iron, and the block is hit with 7-iron and wedge",
    );
  });
});
