/** `drillwright score`. */
import { describe, expect, test } from "vitest";
import { CAUTION } from "../../shared/care.ts";
import { drillwright } from "./command-line.ts";
import { CUT_SHORT, GOOD, PLAN, POOR, practice, session, table } from "./practice.ts";

describe("what is said", () => {
  test("every goal with its verdict, what was seen, and the rows that decided", async () => {
    const { code, stdout, stderr } = await drillwright(practice(), ["score"]);
    expect([code, stderr]).toEqual([0, ""]);
    expect(stdout.replace(/SHA-256 [0-9a-f]{12}/g, "SHA-256 012345abcdef")).toMatchInlineSnapshot(`
      "Monday, 2026-10-12  ✓ met  2 goals met
        plan "Start line"  (plans/irons.drill:1)
            content   SHA-256 012345abcdef…
        player "P-01", right-handed

      Wake up (warm-up)  2 of 2 shots

      Gate (test)  ✓ met  4 of 5 on target · 2 goals met
        target start-direction within ±2°: 4 of 5 shots  (line 12)
        ✓ met           at least 3 of 5 shots on target  (line 14)
            seen      4 of 5 shots on target
            rows      data/monday.csv:4–5, 7, 9
        ✓ met           average carry at least 150 yd  (line 15)
            seen      average 154 yd over 5 shots
            rows      data/monday.csv:4–5, 7–9

      Swings
        8 swings, 6 of them at full effort, those of unknown effort included

      1 shot set aside
        Gate: left out: smash-factor below 1.2  (line 11)
            rows      data/monday.csv:6

      Data
        data/monday.csv: 8 shots, SHA-256 012345abcdef…
        The tables name the block of each shot.

      Notes
        Readings taken as exact: no instrument is stated.
        No table tells the club: shots of a block with one club are taken to be hit with it.

      Verdicts and estimates are about numbers, not about health. Warm up, build effort gradually, keep clear space around you and follow the rules of the range. Stop on pain, dizziness or numbness, and see a licensed clinician before you go on: nothing here is medical advice. Minors practise with a guardian's consent.
      "
    `);
  });

  test("a missed goal, with the rows that missed it", async () => {
    const { code, stdout } = await drillwright(practice(POOR), ["score"]);
    expect(code).toBe(1);
    expect(stdout).toContain("Monday, 2026-10-12  ✗ missed  1 goal met · 1 missed\n");
    expect(stdout).toContain("✗ missed        at least 3 of 5 shots on target  (line 14)\n");
    expect(stdout).toContain("      seen      1 of 5 shots on target\n");
    expect(stdout).toContain("      rows      data/monday.csv:4–5, 7–8\n");
  });

  test("where blocks were taken to start, as lines that can be pasted into the session and then say the same", async () => {
    const files = practice(CUT_SHORT.replace(/^(?:Gate|Wake up),/gm, ","));
    const guessed = await drillwright(files, ["score", "--format", "json"]);
    const text = (await drillwright(files, ["score"])).stdout;
    const lines = text.match(/(?<=to be put into the session and corrected there:\n)(?: +block .*\n)+/)?.[0];
    expect(lines).toBe('      block "Wake up" from row 2\n      block "Gate" from row 4\n');
    const monday = files["sessions/monday.drill"] as string;
    const stated = { ...files, "sessions/monday.drill": monday.replace(/}\s*$/, `${lines}}\n`) };
    expect((await drillwright(stated, ["check"])).code).toBe(0);
    const read = await drillwright(stated, ["score", "--format", "json"]);
    const blocks = ({ stdout }: typeof read) => JSON.parse(stdout).reports[0].blocks;
    expect(blocks(read)).toEqual(blocks(guessed));
    expect((await drillwright(stated, ["score"])).stdout).not.toContain("to be put into the session");
  });

  test("an open goal, with what would settle it", async () => {
    const { code, stdout } = await drillwright(practice(CUT_SHORT), ["score"]);
    expect(code).toBe(0);
    expect(stdout).toContain("? undecided     at least 3 of 5 shots on target");
    expect(stdout).toMatch(/to settle needs each of the 2 shots not hit yet/);
  });

  test("long lists of rows are cut, unless all are wanted", async () => {
    // Every second of 40 shots is on target, so that no two rows follow each other.
    const shots = Array.from({ length: 40 }, (_, shot) => [shot % 2 === 0 ? 0 : 9, 150, 1.3] as const);
    const files = {
      ...practice(table(...shots)),
      "plans/irons.drill": PLAN.replace("5 shots\n", "40 shots\n").replace("3 of 5", "30 of 40"),
    };
    const short = await drillwright(files, ["score"]);
    expect(short.stdout).toContain("rows      data/monday.csv:5, 7, 9, 11, 13, 15, 17, 19 and 12 more\n");
    const complete = await drillwright(files, ["score", "--all-rows"]);
    expect(complete.stdout).toContain("15, 17, 19, 21, 23, 25, 27, 29, 31, 33, 35, 37, 39, 41, 43\n");
    expect(complete.stdout).not.toContain(" more\n");
  });

  test("what is odd about the data, with file, line and column", async () => {
    const { stdout } = await drillwright(practice(table(["two", 155, 1.35], [1, 155, 1.3])), ["score"]);
    expect(stdout).toMatch(/^ {2}! warning {7}"two" in column "Start" .* {2}\(data\/monday\.csv:4\)$/m);
  });

  test("several sessions are summed up, and the word of care comes once, at the end", async () => {
    const files = {
      ...practice(),
      "sessions/tuesday.drill": session("Tuesday", "../data/tuesday.csv"),
      "data/tuesday.csv": POOR,
    };
    const { code, stdout } = await drillwright(files, ["score", "sessions"]);
    expect(code).toBe(1);
    expect(stdout).toContain("\n2 sessions scored: 1 met, 1 missed.\n");
    expect(stdout.split(CAUTION)).toHaveLength(2);
    expect(stdout.endsWith(`\n${CAUTION}\n`)).toBe(true);
  });

  test("signs are never without their words, with colours or without", async () => {
    const plain = await drillwright(practice(POOR), ["score"]);
    const colored = await drillwright(practice(POOR), ["score", "--color", "always"]);
    expect(plain.stdout).toMatch(/✓ met/);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: colours are made of them
    expect(colored.stdout.replace(/\u001b\[\d+m/g, "")).toBe(plain.stdout);
    expect(colored.stdout).not.toBe(plain.stdout);
  });

  test("the same input gives the same bytes", async () => {
    const [first, second] = await Promise.all(
      [1, 2].map(() => drillwright(practice(), ["score", "--format", "json"])),
    );
    expect(first).toEqual(second);
  });
});

test.each([
  ["no report", { "sessions/monday.drill": 'session "Monday" {' }, 0],
  ["one report", {}, 1],
  ["two reports", { "sessions/tuesday.drill": session("Tuesday", "../data/monday.csv") }, 2],
])("JSON of %s is written as sessions are scored, and laid out as a whole", async (_, files, count) => {
  const { stdout } = await drillwright({ ...practice(), ...files }, [
    "score",
    "--format",
    "json",
    "sessions",
  ]);
  const output: { reports: unknown[] } = JSON.parse(stdout);
  expect(output.reports).toHaveLength(count);
  expect(stdout).toBe(`${JSON.stringify(output, null, 2)}\n`);
});

describe("which sessions", () => {
  const files = {
    ...practice(),
    "sessions/tuesday.drill": `${session("Tuesday", "../data/tuesday.csv")}${session("Tuesday again", "../data/tuesday.csv").replace(/^use.*\n/gm, "")}`,
    "data/tuesday.csv": POOR,
  };
  const scored = async (...words: string[]) => {
    const { stdout } = await drillwright(files, ["score", "--format", "json", ...words]);
    return (JSON.parse(stdout) as { reports: { session: { name: string } }[] }).reports.map(
      ({ session }) => session.name,
    );
  };

  test("all of the working folder", async () => {
    expect(await scored()).toEqual(["Monday", "Tuesday", "Tuesday again"]);
  });
  test("those of the files given", async () => {
    expect(await scored("sessions/tuesday.drill")).toEqual(["Tuesday", "Tuesday again"]);
  });
  test("those of a name, and of a plan", async () => {
    expect(await scored("--session", "Tuesday")).toEqual(["Tuesday"]);
    expect(await scored("--plan", "Start line", "--session=Monday")).toEqual(["Monday"]);
  });

  test.each([
    [["--session", "Mondy"], 'The files given declare no session "Mondy". Did you mean Monday?'],
    [
      ["--plan", "Star line"],
      'No session of the files given practised a plan "Star line". Did you mean Start line?',
    ],
    [["plans/irons.drill"], "The files given declare no session."],
  ])("%s: there is none", async (words, message) => {
    const { code, stdout, stderr } = await drillwright(files, ["score", ...words]);
    expect([code, stdout]).toEqual([2, ""]);
    expect(stderr).toContain(message);
  });
});

describe("the answer to the calling program", () => {
  test.each([
    { table: GOOD, "fail-on": "undecided", code: 0 },
    { table: POOR, "fail-on": "missed", code: 1 },
    { table: POOR, "fail-on": "never", code: 0 },
    { table: CUT_SHORT, "fail-on": "missed", code: 0 },
    { table: CUT_SHORT, "fail-on": "undecided", code: 1 },
  ])("--fail-on $fail-on answers $code", async ({ table, "fail-on": failOn, code }) => {
    expect((await drillwright(practice(table), ["score", "--fail-on", failOn])).code).toBe(code);
  });

  test("3 where a text has errors, and the other sessions are scored nevertheless", async () => {
    const files = {
      ...practice(),
      "plans/wrong.drill": PLAN.replace("3 of 5", "6 of 5"),
      "sessions/tuesday.drill": session("Tuesday", "../data/monday.csv").replace("irons", "wrong"),
    };
    const { code, stdout, stderr } = await drillwright(files, ["score", "sessions", "--format", "json"]);
    expect(code).toBe(3);
    const { reports, notScored, errors } = JSON.parse(stdout);
    expect(reports.map((report: { session: { name: string } }) => report.session.name)).toEqual(["Monday"]);
    expect(notScored).toMatchObject([
      { session: "Tuesday", reason: "plan-errors", message: "There are errors in plans/wrong.drill." },
    ]);
    expect(errors).toMatchObject([{ file: "plans/wrong.drill", code: "hits-must-not-exceed-shots" }]);
    expect(stderr).toContain("plans/wrong.drill:14:16 error hits-must-not-exceed-shots");
    expect(stderr).toContain(
      'sessions/tuesday.drill:4 session "Tuesday" is not scored. There are errors in plans/wrong.drill.',
    );
  });

  test("3 where an error may hide a session", async () => {
    const { code, stdout, stderr } = await drillwright({ "a.drill": 'session "Monday {\n' }, ["score"]);
    expect([code, stdout]).toEqual([3, ""]);
    expect(stderr).toContain("a.drill:1:9 error syntax");
  });

  test("errors of files that no session stands on are not asked about", async () => {
    const { code, stderr } = await drillwright({ ...practice(), "plans/wrong.drill": "plan {" }, ["score"]);
    expect([code, stderr]).toEqual([0, ""]);
  });

  test("errors go before unreadable data, and that before missed goals", async () => {
    const files: Record<string, string | Uint8Array> = {
      ...practice(POOR),
      "sessions/tuesday.drill": session("Tuesday", "../data/nothing.csv"),
    };
    expect((await drillwright(files, ["score"])).code).toBe(4);
    files["sessions/wednesday.drill"] = `${session("Wednesday", "../data/monday.csv")} x`;
    expect((await drillwright(files, ["score"])).code).toBe(3);
    expect((await drillwright(files, ["score", "--fail-on", "never"])).code).toBe(3);
  });
});
