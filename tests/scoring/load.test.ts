import { describe, expect, test } from "vitest";
import type { Shots } from "../../shared/plan-model.ts";
import { somewhere } from "../criteria/words.ts";
import { otherSession } from "./other-sessions.ts";
import { plan, type Stated, score, table } from "./practice.ts";

const line = (count: number, effort: number | null, club: string | null = null): Shots => ({
  count,
  open: false,
  club,
  effort,
});

function planWith(
  lines: readonly Shots[],
  success: readonly string[] | string = [],
  limit?: { count: number; fullEffort: boolean },
) {
  const made = plan({ success });
  const [block] = made.blocks;
  if (block === undefined) throw new Error("The plan has no block.");
  return {
    ...made,
    limits: limit === undefined ? [] : [{ ...limit, location: somewhere }],
    blocks: [{ ...block, shots: [...lines] }],
  };
}

const swings = (count: number) => table(`carry\n${"150\n".repeat(count)}`);
const loadOf = (...of: Parameters<typeof score>) => score(...of).load;

describe("swings", () => {
  test("are all shots, those that are set aside and those of no block among them", () => {
    const shots = table(`
      carry excluded block
      150   -        Gate
      150   mishit   Gate
      150   -        Elsewhere
    `);
    expect(loadOf(plan({ shots: 1 }), shots)).toMatchObject({ swings: 3, fullEffort: 3 });
  });

  test("are at full effort from 90 % on: the plan's lines say so, in order", () => {
    const lines = [line(2, 0.5), line(2, 0.9), line(2, null)];
    const report = score(planWith(lines, "at most 4 full-effort swings"), swings(6));
    expect(report.load).toMatchObject({ swings: 6, fullEffort: 4 });
    expect(report.blocks[0]?.criteria[0]).toMatchObject({
      verdict: "met",
      evidence: {
        cautions: ["The effort of 2 swings is neither measured nor stated: they are counted as full."],
      },
    });
  });

  test("with a club of their own belong to its line", () => {
    const lines = [line(1, 0.5, "wedge"), line(1, 1, "driver")];
    const shots = table("carry club\n250 driver\n80 wedge");
    const report = score(planWith(lines, "at most 1 full-effort swing"), shots);
    expect(report.load.fullEffort).toBe(1);
  });

  test("a shot that does not count takes no place in its line", () => {
    const shots = table("carry excluded\n150 mishit\n150 -\n150 -");
    expect(loadOf(planWith([line(1, 0.5), line(1, 1)]), shots).fullEffort).toBe(1);
  });

  test("with the putter are none at full effort, and nothing is missing of theirs", () => {
    const lines = [line(2, null, "putter"), line(1, null, "driver")];
    const shots = table("carry club\n5 putter\n250 driver");
    const report = score(planWith(lines, "at most 1 full-effort swing"), shots);
    expect(report.load).toMatchObject({ swings: 2, fullEffort: 1 });
    expect(report.blocks[0]?.criteria[0]).toMatchObject({
      verdict: "met",
      evidence: {
        cautions: ["The effort of 1 swing is neither measured nor stated: it is counted as full."],
      },
    });
  });

  test("whose effort was measured are what was measured", () => {
    const shots = swings(2).map((shot, index) => ({ ...shot, values: { effort: index === 0 ? 0.6 : 0.95 } }));
    expect(loadOf(planWith([line(2, 0.5)]), shots).fullEffort).toBe(1);
  });

  test("planned swings that are not made yet keep a limit open", () => {
    const one = score(planWith([line(2, 0.5), line(2, 1)], "at most 1 full-effort swing"), swings(3));
    expect(one.blocks[0]?.criteria[0]).toMatchObject({
      verdict: "undecided",
      evidence: { observed: "1 full-effort swing; 1 more planned" },
    });
  });

  test("swings beyond what a line plans do not stand for those of another line", () => {
    const lines = [line(1, 1, "driver"), line(2, 1, "wedge")];
    const shots = table("carry club\n250 driver\n251 driver\n252 driver");
    expect(
      score(planWith(lines, "at most 4 full-effort swings"), shots).blocks[0]?.criteria[0],
    ).toMatchObject({
      verdict: "undecided",
      evidence: { observed: "3 full-effort swings; 2 more planned" },
    });
  });
});

describe("limits", () => {
  const withLimits = (...limits: NonNullable<NonNullable<Stated["player"]>["limits"]>): Stated => ({
    player: { limits },
  });
  const limit = (count: number, period: "session" | "day" | "week", fullEffort = false) => ({
    count,
    period,
    fullEffort,
    location: somewhere,
  });

  test("of the plan and of the player", () => {
    const limited = planWith([line(3, 0.5)], [], { count: 2, fullEffort: true });
    const report = score(limited, swings(3), withLimits(limit(2, "session")));
    expect(report.load.limits).toMatchObject([
      { text: "0 of at most 2 full-effort swings in a session", isExceeded: false },
      { text: "3 of at most 2 swings in a session", isExceeded: true, count: 3, limit: 2, period: "session" },
    ]);
    expect(report.cautions).toEqual([
      "More swings than agreed: 3 of at most 2 swings in a session. Rest before the next full swing.",
    ]);
  });

  test("of the day and the week count the player's other sessions", () => {
    const others = [
      otherSession("Morning", "2026-10-12", 4),
      otherSession("Six days before", "2026-10-06", 5),
      otherSession("A week before", "2026-10-05", 6),
      otherSession("Tomorrow", "2026-10-13", 7),
      otherSession("Somebody else's", "2026-10-12", 8, { player: "P-12" }),
    ];
    const report = score(plan({ shots: 3 }), swings(3), withLimits(limit(9, "day"), limit(9, "week")), {
      others,
    });
    expect(report.load.limits.map(({ text, isExceeded }) => [text, isExceeded])).toEqual([
      ["7 of at most 9 swings in a day", false],
      ["12 of at most 9 swings in a week", true],
    ]);
  });

  test("a week of many more swings than the one before is cautioned about", () => {
    const before = otherSession("Before", "2026-10-03", 10);
    const report = (count: number) => score(plan({ shots: count }), swings(count), {}, { others: [before] });
    expect(report(15).cautions).toEqual([]);
    expect(report(16).cautions).toEqual([
      "Many more swings than the week before: 16 in the seven days up to 2026-10-12, 1.6 times the 10 of the seven days before that, by the sessions that were read. Build up slowly.",
    ]);
  });

  test("the week before is the seven days before the seven that end today, to the day", () => {
    const ratios = (date: string) => {
      const others = [otherSession("Before", "2026-10-03", 10), otherSession("Other", date, 10)];
      const { cautions } = score(plan({ shots: 40 }), swings(40), {}, { others });
      return cautions.map((caution) =>
        caution
          .match(/: (\d+) in .* the (\d+) of/)
          ?.slice(1)
          .map(Number),
      );
    };
    expect(ratios("2026-10-06")).toEqual([[50, 10]]);
    expect(ratios("2026-10-05")).toEqual([[40, 20]]);
    expect(ratios("2026-09-29")).toEqual([[40, 20]]);
    expect(ratios("2026-09-28")).toEqual([[40, 10]]);
    const lost = (date: string) => {
      const unread = { ...otherSession("Lost", date, 0), read: "there are errors in plan.drill" };
      return score(plan({ shots: 1 }), swings(1), {}, { others: [unread] }).notes.some((note) =>
        note.includes("Lost"),
      );
    };
    expect([lost("2026-09-28"), lost("2026-09-29")]).toEqual([false, true]);
  });

  test("what cannot be counted is said", () => {
    const unread = { ...otherSession("Lost", "2026-10-11", 0), read: "there are errors in plan.drill" };
    const stated = { ...withLimits(limit(9, "week")) };
    expect(score(plan({ shots: 1 }), swings(1), stated, { others: [unread] }).notes).toContain(
      'Not all swings of session "Lost" are counted: there are errors in plan.drill.',
    );
    const undated = { ...stated, session: { date: null } };
    expect(score(plan({ shots: 1 }), swings(1), undated).notes).toContain(
      "The session states no date: of its day and its week only its own swings are counted.",
    );
  });
});
