/** Windows and the like ask for the club; where no table tells it, the plan does. */
import { expect, test } from "vitest";
import type { Condition, Plan } from "../../shared/plan-model.ts";
import { bounds, somewhere } from "../criteria/words.ts";
import { instrument, plan, score, table } from "./practice.ts";

/** Inside within ±2° with a 7-iron, within ±5° with a driver. */
const neutral: Condition = {
  anyOf: [
    {
      allOf: [
        {
          kind: "window",
          window: "Neutral",
          inside: true,
          variants: [
            { clubs: ["7-iron"], level: null, condition: pathWithin("±2°") },
            { clubs: ["driver"], level: null, condition: pathWithin("±5°") },
          ],
        },
      ],
    },
  ],
};

function pathWithin(range: string): Condition {
  return { anyOf: [{ allOf: [{ kind: "number", metric: "club-path", bounds: bounds(`within ${range}`) }] }] };
}

/** One block with these clubs, and "at least 2 of 2 shots inside the window". */
function planWith(...clubs: readonly string[]): Plan {
  const made = plan({ name: "Gate", success: "at least 2 of 2 shots with club-path within ±2°" });
  const [block] = made.blocks;
  const [criterion] = block?.success ?? [];
  if (block === undefined || criterion?.kind !== "count") throw new Error("The plan has no such block.");
  const shots = clubs.map((club) => ({ count: 1, open: false, club, effort: null }));
  const success = [{ ...criterion, subject: { kind: "meeting" as const, condition: neutral } }];
  return { ...made, blocks: [{ ...block, shots, success, location: somewhere }] };
}

const TAKEN = "No table tells the club: shots of a block with one club are taken to be hit with it.";

test("a table without clubs: a block with one club was hit with it, and a note says so", () => {
  const shots = table("club-path\n1\n3");
  const report = score(planWith("7-iron", "7-iron"), shots);
  expect(report.verdict).toBe("missed");
  expect(report.notes).toContain(TAKEN);
  expect(score(planWith("driver", "driver"), shots).verdict).toBe("met");
});

test("a block with several clubs, or a table that tells some: the others are unknown", () => {
  const mixed = score(planWith("7-iron", "driver"), table("club-path\n1\n1"));
  expect(mixed.verdict).toBe("not-measured");
  expect(mixed.blocks[0]?.criteria[0]?.evidence.settles).toBe(
    "a window that says what it asks with this club and at this level, and the club of each shot",
  );
  expect(mixed.notes).not.toContain(TAKEN);
  const [told, untold] = table("club-path club\n1 7-iron\n1 7-iron");
  if (told === undefined || untold === undefined) throw new Error("The table has two shots.");
  const some = score(planWith("7-iron", "7-iron"), [told, { ...untold, club: null }]);
  expect(some.verdict).toBe("undecided");
});

test("readings that may be off are held against the limits of their own club", () => {
  const shots = table("club-path club\n1.9 7-iron\n1.9 driver");
  const unit = { instrument: instrument("club-path 0.4 random") };
  const report = score(planWith("7-iron", "driver"), shots, unit);
  // With the driver 1.9° is far inside, with the iron it is 60 % sure.
  expect(report.blocks[0]?.criteria[0]?.evidence.observed).toMatch(/probability of 2 or more: 60 %$/);
});
