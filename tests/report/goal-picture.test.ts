/** Pictures tell what the verdicts beside them tell. */
import { describe, expect, test } from "vitest";
import { countedShots, goalsById } from "../../server/report/counted.ts";
import { goalPicture } from "../../server/report/goal-picture.ts";
import type { ReportedSession } from "../../server/report/reported-session.ts";
import { scoredSessions } from "./lesson.ts";

const PLAN = `plan "Two sides" {
  block "Gate" test {
    6 shots
    target start-direction within ±2°
    require carry at least 140 yd
    success {
      at least 3 of 6 shots on target
      at most 2 of 6 shots with start-direction at least 3° right
      at least 50 % of shots with start-direction within ±3°
      average carry at least 150 yd
      spread of carry at most 9 yd
      at least 2 of 6 shots with spin-rate below 6000 rpm
    }
  }
}

player "P-21" {
  left-handed
}

source "Range" {
  column "Start" is start-direction in ° positive right
  column "Carry" is carry in yd
}

session "Monday" {
  plan "Two sides"
  player "P-21"
  data "a.csv" from "Range"
}
`;

/** Two shots are too short, one of them on target; one has no start. */
const TABLE = "Start,Carry\n0.5,150\n-1,130\n4,155\n,152\n1.5,149\n5,120\n";

/** The pictures of the block's goals, by text. */
async function pictures(plan = PLAN): Promise<ReadonlyMap<string, string | null>> {
  const [session] = await scoredSessions({ "a.drill": plan, "a.csv": TABLE });
  if (session === undefined) throw new Error("There is no session.");
  return picturesOf(session);
}

function picturesOf(session: ReportedSession): Map<string, string | null> {
  const goals = goalsById(session);
  const counted = countedShots(session);
  return new Map(
    session.report.blocks.flatMap(({ name, criteria }) =>
      criteria.map((result): [string, string | null] => {
        const goal = goals.get(result.id);
        if (goal === undefined) throw new Error(`There is no goal ${result.id}.`);
        return [result.text, goalPicture(goal, result, { name, session, counted })?.text ?? null];
      }),
    ),
  );
}

describe("a goal of a block that requires something", () => {
  test("at least: what is not as required does not count", async () => {
    expect((await pictures()).get("at least 3 of 6 shots on target")).toContain(
      "The count ended at 2 after 6 shots; at least 3 of 6 were asked for.",
    );
  });

  test("at most: what is not as required counts", async () => {
    expect((await pictures()).get("at most 2 of 6 shots with start-direction at least 3° right")).toContain(
      "The count ended at 3 after 6 shots; at most 2 of 6 were asked for.",
    );
  });
});

test.each([
  [4, "met", "The count ended at 3 after 6 shots; at least 3 of 6 were asked for."],
  [8, "undecided", "The count ended at 3 after 6 shots; at least 4 of 8 were asked for."],
])(
  "where a block asks for at least %i shots, a count is of all that are hit",
  async (asked, verdict, says) => {
    const wanted = asked / 2 + (asked === 4 ? 1 : 0);
    const goal = `at least ${wanted} shots with carry at least 149 yd`;
    const [session] = await scoredSessions({
      "a.drill": PLAN.replace("    6 shots", `    at least ${asked} shots`)
        .replace(/ *require .*\n/, "")
        .replace("at least 3 of 6 shots on target", goal),
      "a.csv": "Start,Carry\n0,130\n0,131\n0,132\n0,150\n0,151\n0,152\n",
    });
    const result = session?.report.blocks[0]?.criteria[0];
    expect(result).toMatchObject({ text: goal, verdict });
    expect(session && picturesOf(session).get(goal)).toContain(says);
  },
);

test("the running count ends where the verdict's tally does", async () => {
  const sessions = await scoredSessions();
  const counts = sessions.flatMap((session) => {
    const drawn = picturesOf(session);
    return session.report.blocks.flatMap(({ criteria }) =>
      criteria
        .filter(({ kind, evidence }) => kind === "count" && evidence.shotsUsed > 0)
        .map(({ text, evidence }) => [drawn.get(text), evidence.tally?.hits] as const),
    );
  });
  expect(counts.length).toBeGreaterThan(2);
  for (const [picture, hits] of counts) expect(picture).toContain(`The count ended at ${hits} after`);
});

test("every shot with a reading is a mark of its own, told apart by shape", async () => {
  const strip = (await pictures()).get("at least 50 % of shots with start-direction within ±3°") ?? "";
  expect(strip.match(/class="hit"/g)).toHaveLength(3);
  expect(strip.match(/class="miss"/g)).toHaveLength(2);
  expect(strip).toContain(
    "start-direction within ±3°: 3 of 5 shots inside, 2 outside: 0 to the left of it, 2 to the right.",
  );
});

test("an average stands among its shots", async () => {
  const picture = (await pictures()).get("average carry at least 150 yd") ?? "";
  expect(picture.match(/class="single"/g)).toHaveLength(6);
  expect(picture).toContain('class="mean"');
});

test("what words say alone, or nothing is known of, has no picture", async () => {
  expect((await pictures()).get("spread of carry at most 9 yd")).toBeNull();
  const requiringNothing = PLAN.replace(/ *require .*\n/, "");
  const drawn = await pictures(requiringNothing);
  expect(drawn.get("at least 2 of 6 shots with spin-rate below 6000 rpm")).toBeNull();
});
