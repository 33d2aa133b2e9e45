/** `drillwright cohort`. */
import { expect, test } from "vitest";
import { LESSON } from "../report/lesson.ts";
import { drillwright } from "./command-line.ts";
import { PLAN, POOR, practice, session } from "./practice.ts";

const OTHER = session("Tuesday", "../data/tuesday.csv").replace('player "P-01"', 'player "P-02"');
const TWO = {
  ...practice(),
  "library/range.drill": `${practice()["library/range.drill"]}\nplayer "P-02" { right-handed }\n`,
  "sessions/tuesday.drill": OTHER,
  "data/tuesday.csv": POOR,
};

test("every player, and of how many each goal is met", async () => {
  const { code, stdout, stderr } = await drillwright(TWO, ["cohort"]);
  expect([code, stderr]).toEqual([0, ""]);
  expect(stdout).toMatchInlineSnapshot(`
    "2 players of "Start line", by the latest session of each
      P-01  2026-10-12  ✓ met     2 of 2 goals met  1 session
      P-02  2026-10-12  ✗ missed  1 of 2 goals met  1 session

    Gate: at least 3 of 5 shots on target  met by 1 of 2
      P-01  ✓ met     4 of 5
      P-02  ✗ missed  1 of 5
    Gate: average carry at least 150 yd  met by 2 of 2
      P-01  ✓ met  154 yd
      P-02  ✓ met  154 yd

    Players are in the order of their names: one session each is too little for a rank.
    Verdicts and estimates are about numbers, not about health. Warm up, build effort gradually, keep clear space around you and follow the rules of the range. Stop on pain, dizziness or numbness, and see a licensed clinician before you go on: nothing here is medical advice. Minors practise with a guardian's consent.
    "
  `);
});

test("the latest session of each counts", async () => {
  const { stdout } = await drillwright(LESSON, ["cohort", "--format", "json"]);
  const { players } = JSON.parse(stdout);
  const shown = players.map(
    ({ name, sessions, latest }: { name: string; sessions: number; latest: { name: string } }) => [
      name,
      sessions,
      latest.name,
    ],
  );
  expect(shown).toEqual([
    ["P-07", 2, "Second visit"],
    ["P-12", 1, "First visit, left"],
  ]);
});

test("without dates the last session counts, and one with a date before those without", async () => {
  const undated = (name: string) => session(name, "../data/monday.csv").replace(/ {2}date .*\n/, "");
  const latest = async (files: Readonly<Record<string, string>>) => {
    const { stdout } = await drillwright({ ...practice(), ...files }, ["cohort", "--format", "json"]);
    return JSON.parse(stdout).players.map(({ latest: { name } }: { latest: { name: string } }) => name);
  };
  expect(await latest({ "sessions/a.drill": undated("A") })).toEqual(["Monday"]);
  expect(await latest({ "sessions/z.drill": undated("Z") })).toEqual(["Monday"]);
  expect(
    await latest({ "sessions/monday.drill": undated("Monday"), "sessions/z.drill": undated("Z") }),
  ).toEqual(["Z"]);
});

test("a goal of two blocks is one of each", async () => {
  const again = `  block "Gate again" test {
    5 shots
    target start-direction within ±2°
    success {
      at least 3 of 5 shots on target
    }
  }
}
`;
  const files = {
    ...practice(),
    "plans/irons.drill": `${PLAN.slice(0, -2)}${again}`,
    "data/monday.csv": `${practice()["data/monday.csv"]}${"Gate again,9,150,1.35\n".repeat(5)}`,
  };
  const { stdout } = await drillwright(files, ["cohort", "--format", "json"]);
  const { players, goals: shown } = JSON.parse(stdout);
  expect(shown.map(({ block }: { block: string }) => block)).toEqual(["Gate", "Gate", "Gate again"]);
  expect(players[0].results.map(({ brief }: { brief: string }) => brief)).toEqual([
    "4 of 5",
    "154 yd",
    "0 of 5",
  ]);
});

test("a table for spreadsheets", async () => {
  const { stdout } = await drillwright(TWO, ["cohort", "--format", "csv"]);
  expect(stdout.split("\r\n").slice(0, 2)).toEqual([
    "player,date,session,block,goal,verdict,observed",
    "P-01,2026-10-12,Monday,Gate,at least 3 of 5 shots on target,met,4 of 5",
  ]);
});

test("one plan is looked at", async () => {
  const files = {
    ...TWO,
    "plans/other.drill": 'plan "Other" { block "Gate" test { 5 shots } }\n',
    "sessions/tuesday.drill": OTHER.replace("plans/irons", "plans/other").replace("Start line", "Other"),
  };
  const { code, stderr } = await drillwright(files, ["cohort"]);
  expect(code).toBe(2);
  expect(stderr).toContain('Choose with --plan among "Other", "Start line".');
  expect((await drillwright(files, ["cohort", "--plan", "Other"])).code).toBe(0);
});
