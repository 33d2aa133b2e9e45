/** `drillwright trend`. */
import { expect, test } from "vitest";
import { LESSON } from "../report/lesson.ts";
import { drillwright } from "./command-line.ts";
import { PLAN, POOR, practice, session, table } from "./practice.ts";

const TWO = {
  ...practice(POOR),
  "sessions/a-later.drill": session("=Later", "../data/later.csv").replace("2026-10-12", "2026-10-19"),
  "data/later.csv": practice()["data/monday.csv"] ?? "",
};

test("verdicts and averages by date, whatever the files are called", async () => {
  const { code, stdout, stderr } = await drillwright(TWO, ["trend"]);
  expect([code, stderr]).toEqual([0, ""]);
  expect(stdout).toMatchInlineSnapshot(`
    "P-01 in "Start line"
      2026-10-12  Monday  ✗ missed
      2026-10-19  =Later  ✓ met

    Gate: at least 3 of 5 shots on target
      2026-10-12  ✗ missed  1 of 5
      2026-10-19  ✓ met     4 of 5
    Gate: average carry at least 150 yd
      2026-10-12  ✓ met  154 yd
      2026-10-19  ✓ met  154 yd

    Averages, with intervals at 90 % confidence, each by itself:
    Gate: start-direction
      2026-10-12  1.4° right  2.9° left to 5.7° right  5 shots
      2026-10-19  1.2° right  0.5° left to 2.9° right  5 shots
    Gate: carry
      2026-10-12  154 yd  151 yd to 157 yd  5 shots
      2026-10-19  154 yd  151 yd to 157 yd  5 shots

    Verdicts and estimates are about numbers, not about health. Warm up, build effort gradually, keep clear space around you and follow the rules of the range. Stop on pain, dizziness or numbness, and see a licensed clinician before you go on: nothing here is medical advice. Minors practise with a guardian's consent.
    "
  `);
});

test("a player of several, in the words of their hand", async () => {
  const { stdout } = await drillwright(LESSON, ["trend", "--player", "P-07"]);
  expect(stdout).toMatch(/^P-07 in "From cut to start line"\n {2}2026-10-05 {2}First visit/);
  expect(stdout).toMatch(/Gate: club-path\n {2}2026-10-05 {2}.*out-to-in.*\n {2}2026-10-12 {2}.*in-to-out/);
});

test("of one session, and of three the goals of the latest", async () => {
  const first = async (files: Readonly<Record<string, string | Uint8Array>>) =>
    (await drillwright(files, ["trend"])).stdout.match(/^Gate: at least .*(?:\n {2}\d.*)+/m)?.[0];
  expect(await first(practice())).toBe("Gate: at least 3 of 5 shots on target\n  2026-10-12  ✓ met  4 of 5");
  const dated = (day: string) => session(`On ${day}`, "../data/monday.csv").replace("2026-10-12", day);
  const three = {
    ...practice(),
    "sessions/b.drill": dated("2026-10-14"),
    "sessions/a.drill": dated("2026-10-16").replace("plans/irons", "plans/new"),
    "plans/new.drill": PLAN.replace("at least 3 of 5", "at least 2 of 5"),
  };
  expect(await first(three)).toMatch(
    /^Gate: at least 2 of 5 shots on target\n(.*\n)* {2}2026-10-16 {2}✓ met +4 of 5$/,
  );
});

test("a single shot has an average and no interval", async () => {
  const { stdout } = await drillwright(practice(table([0, 150, 1.4])), ["trend"]);
  expect(stdout).toContain("Gate: carry\n  2026-10-12  150 yd  too few shots for an interval  1 shot\n");
});

test("a table in which nothing is a formula", async () => {
  const { stdout } = await drillwright(TWO, ["trend", "--format", "csv"]);
  const lines = stdout.split("\r\n");
  expect(lines[0]).toBe("date,session,block,what,verdict,value,low,high,unit,shots");
  expect(lines).toContain("2026-10-12,Monday,Gate,at least 3 of 5 shots on target,missed,1 of 5,,,,");
  expect(lines).toContain("2026-10-19,'=Later,Gate,at least 3 of 5 shots on target,met,4 of 5,,,,");
  expect(lines.filter((line) => line.includes("average carry,"))[1]).toMatch(/,,154\.2,[\d.]+,[\d.]+,yd,5$/);
});

test.each([
  [["trend"], "These are sessions of 2 players, and one is looked at. Choose with --player among"],
  [["trend", "--player", "P-70"], 'No session is one of a player "P-70". There are "P-07", "P-12".'],
  [["trend", "--plan", "Iron"], 'No session of the files given practised a plan "Iron".'],
])("%s", async (words, message) => {
  const { code, stdout, stderr } = await drillwright(LESSON, words);
  expect([code, stdout]).toEqual([2, ""]);
  expect(stderr).toContain(message);
});

test("what cannot be scored is told of, and the rest is shown", async () => {
  const files = { ...TWO, "sessions/a-later.drill": session("Later", "../data/none.csv") };
  const { code, stdout } = await drillwright(files, ["trend"]);
  expect(code).toBe(4);
  expect(stdout).toContain("Monday");
});
