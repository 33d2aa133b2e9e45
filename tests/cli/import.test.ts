/** `drillwright import`. */

import { execFileSync } from "node:child_process";
import { existsSync, readFileSync, statSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { describe, expect, test } from "vitest";
import { drillwright, folderWith } from "./command-line.ts";
import { LIBRARY, PLAN } from "./practice.ts";

const TABLE = "Club;Carry (m);Path (R+);Side\n7i;150;1,5;3 L\n7i;151;-0,5;4 R\n7i;149;0,5;1 L\n";
const SEASON =
  "Player,Date,Carry (m),Note\nAda Holt,2026-10-12,150,\nBo Lund,2026-10-12,151,with ada holt\nAda Holt,2026-10-13,152,=1+1\n";

describe("a proposal", () => {
  test("is written as text that can be settled; how sure it is stands beside", async () => {
    const { code, stdout, stderr } = await drillwright({ "data/monday.csv": TABLE }, [
      "import",
      "data/monday.csv",
    ]);
    expect(code).toBe(0);
    expect(stdout).toMatchInlineSnapshot(`
      "// A proposal. What is marked \`settle\` is for you to decide; delete the remark when it is.

      source "monday table" {
        separator semicolon
        decimal comma
        column "Club" is club
        column "Carry (m)" is carry in m
        column "Path (R+)" is club-path in ° positive right
        column "Side" is offline in m
      }

      session "monday" {
        // settle: Which plan was practised? plan "…"
        // settle: Who practised? player "…"
        data "data/monday.csv" from "monday table"
      }
      "
    `);
    expect(stderr).toMatchInlineSnapshot(`
      "monday table (semicolon between cells, decimal comma, column names in line 1)
        sure    "Club"       club                            its name says so  such as "7i"
        sure    "Carry (m)"  carry in m                      its name says so; its unit is m  such as "150", "151", "149"
        sure    "Path (R+)"  club-path in °, positive right  its name says so; its unit is °; its name says which way is positive  such as "1,5", "-0,5", "0,5"
        likely  "Side"       offline in m                    its name says so; its values are of a size for m, or its like are in it; its cells name the side  such as "3 L", "4 R", "1 L"

      1 session. 2 questions to settle: see the lines marked so.
      "
    `);
  });

  test("knows plan and player by name, and checks clean when nothing is left to settle", async () => {
    const folder = folderWith({
      "plans/irons.drill": PLAN,
      "library/range.drill": LIBRARY,
      "data/monday.csv": TABLE,
    });
    const words = [
      "import",
      "data/monday.csv",
      "--plan",
      "Start line",
      "--player",
      "P-01",
      "--output",
      "sessions/../monday.drill",
    ];
    const { code, stdout, stderr } = await drillwright(folder, words);
    expect([code, stdout]).toEqual([0, ""]);
    expect(stderr).toContain("Written to monday.drill.");
    const text = readFileSync(join(folder, "monday.drill"), "utf8");
    expect(text).toContain('use "./library/range"\nuse "./plans/irons"\n');
    expect(text).toContain('plan "Start line"\n  player "P-01"\n');
    expect(await drillwright(folder, ["check"])).toMatchObject({ code: 0 });
    expect(await drillwright(folder, ["score", "monday.drill", "--fail-on", "never"])).toMatchObject({
      code: 0,
    });
  });

  test("uses the source, the plan and the player that the working folder declares", async () => {
    const folder = folderWith({
      "plans/irons.drill": PLAN,
      "library/range.drill": LIBRARY.replace("{\n  column", '{\n  column "Who" is player\n  column'),
      "data/monday.csv": "Who,Block,Start,Carry,Smash\nP-01,Gate,1,151,1.3\nP-01,Gate,-1,149,1.3\n",
    });
    const words = ["import", "data/monday.csv", "--output", "sessions.drill"];
    const { stderr } = await drillwright(folder, words);
    expect(
      readFileSync(join(folder, "sessions.drill"), "utf8"),
    ).toBe(`// A proposal. What is marked \`settle\` is for you to decide; delete the remark when it is.

use "./library/range"
use "./plans/irons"

session "monday P-01" {
  plan "Start line"
  player "P-01"
  data "data/monday.csv" from "Table"
  // 2 rows
}
`);
    expect(stderr).toMatch(
      /^Table \(declared in \.\/library\/range\)\n {2}sure {2}"Who" +player +the source "Table" says so {2}such as "P-01"\n/,
    );
    expect(stderr).toContain("Nothing is left to settle.");
    expect(await drillwright(folder, ["check", "sessions.drill"])).toMatchObject({ code: 0 });
    expect(await drillwright(folder, [...words, "--force"])).toMatchObject({ code: 0 }); // not the one it replaces
    expect(readFileSync(join(folder, "sessions.drill"), "utf8")).toContain('session "monday P-01"');
  });

  test("without a plan shows what to settle when it is checked", async () => {
    const folder = folderWith({ "monday.csv": TABLE });
    await drillwright(folder, ["import", "monday.csv", "--output", "monday.drill"]);
    const { code, stdout } = await drillwright(folder, ["check"]);
    expect(code).toBe(3);
    expect(stdout.match(/error [\w-]+/g)).toEqual([
      "error session-must-name-its-plan",
      "error session-must-name-its-player",
    ]);
  });

  test("has a session for each player and day of a table", async () => {
    const { stdout, stderr } = await drillwright({ "season.csv.gz": new Uint8Array(gzipSync(SEASON)) }, [
      "import",
      "season.csv.gz",
    ]);
    expect(stdout.match(/^(?:session|player) .*(?= \{)/gm)).toEqual([
      'player "Ada Holt"',
      'player "Bo Lund"',
      'session "season Ada Holt 2026-10-12"',
      'session "season Bo Lund 2026-10-12"',
      'session "season Ada Holt 2026-10-13"',
    ]);
    expect(stderr).toContain("The table names players. --code-players puts codes in their place.");
  });

  test("is made for several tables at once; those alike share a source", async () => {
    const files = { "a.csv": TABLE, "b.csv": TABLE, "c.csv": "Weather\nfine\n" };
    const { code, stdout, stderr } = await drillwright(files, ["import", "a.csv", "b.csv", "c.csv"]);
    expect(code).toBe(4);
    expect(stdout.match(/^source .*|data .*/gm)).toEqual([
      'source "a table" {',
      'data "a.csv" from "a table"',
      'data "b.csv" from "a table"',
    ]);
    expect(stderr).toContain("c.csv: No column is known to mean anything.");
  });
});

test.each([
  ["nothing", "", "The file is empty."],
  ["bytes", "Club,Carry\n7i\0,150\n", "it holds bytes that no text has"],
  [
    "no names of columns",
    "1,7i,150.2\n2,7i,151.0\n",
    "Line 1 holds readings, and no line above it names the columns.",
  ],
  ["prose", "Today it rained,\nand nobody, but one, came.\n", "declare a source that says so"],
  ["cells that nothing parts", "Wind  Rain\n3     4\n", "Neither comma, semicolon, tab nor | seems to stand"],
  [
    "names in the first column",
    "Shot,1,2\nClub,7i,7i\nCarry (m),150,151\n",
    "The names stand under each other in the first column",
  ],
  ["JSON without names", "[[150, 3], [151, 4]]", "This looks like JSON, but holds no list of shots."],
  ["JSON that breaks off", '{"a":', "This looks like JSON, but holds no list of shots."],
])("a file that holds %s is told from a table", async (_, content, problem) => {
  const { code, stderr } = await drillwright({ "a.csv": content }, ["import", "a.csv"]);
  expect([code, stderr]).toEqual([4, expect.stringContaining(problem)]);
});

test("of very many columns that are not read, the first are named and the others counted", async () => {
  const more = Array.from({ length: 300 }, (_, at) => at);
  const table = `Carry (yd),${more.map((at) => `extra ${at}`).join()}\n150,${more.join()}\n`;
  const { stdout, stderr } = await drillwright({ "a.csv": table }, ["import", "a.csv"]);
  expect(stdout).toContain('"extra 39" and 260 more.\n');
  expect(stderr).toContain("  not read  260 more\n");
});

describe("what is there is not overwritten", () => {
  test("unless --force says so, and never a table", async () => {
    const folder = folderWith({ "monday.csv": TABLE, "monday.drill": "// mine\n" });
    const write = (...more: string[]) => drillwright(folder, ["import", "monday.csv", "--output", ...more]);
    expect(await write("monday.drill")).toMatchObject({
      code: 2,
      stderr: expect.stringContaining("monday.drill is there already."),
    });
    expect(readFileSync(join(folder, "monday.drill"), "utf8")).toBe("// mine\n");
    expect(await write("monday.drill", "--force")).toMatchObject({ code: 0 });
    expect(readFileSync(join(folder, "monday.drill"), "utf8")).toContain("source");
    expect(await write("monday.csv", "--force")).toMatchObject({
      code: 2,
      stderr: expect.stringContaining("never changed"),
    });
    expect(readFileSync(join(folder, "monday.csv"), "utf8")).toBe(TABLE);
  });

  test("and a slip of the name does not reach another table", async () => {
    const folder = folderWith({ "monday.csv": TABLE, "tuesday.csv": TABLE });
    const words = ["import", "monday.csv", "--output", "tuesday.csv", "--force"];
    expect(await drillwright(folder, words)).toMatchObject({
      code: 2,
      stderr: expect.stringContaining("Give a name that ends in .drill."),
    });
    expect(readFileSync(join(folder, "tuesday.csv"), "utf8")).toBe(TABLE);
  });
});

test.runIf(process.platform === "linux")(
  "what cannot be read in the working folder is passed over",
  async () => {
    const folder = folderWith({ "monday.csv": TABLE, "plans.drill": 'plan "Irons" {\n}\n' });
    symlinkSync("/proc/self/mem", join(folder, "odd.drill")); // a file that nobody can read from its beginning
    const answer = await drillwright(folder, ["import", "monday.csv", "--plan", "Irons"]);
    expect(answer).toMatchObject({ code: 0, stdout: expect.stringContaining('plan "Irons"') });
  },
);

test.each([
  [["import", "lost.csv"], 2, "There is no file lost.csv"],
  [["import", "."], 2, ". is a folder. Give the name of a table in it."],
  [["import"], 2, "import"],
  [["import", "a.csv", "--plan", "Ironz"], 2, 'declares a plan "Ironz". Did you mean Irons?'],
  [["import", "a.csv", "--player", "P-99"], 2, 'declares a player "P-99". There are "P-07", "P-12".'],
  [["import", "damaged.csv.gz"], 4, "damaged.csv.gz is packed with gzip, but the packing is damaged"],
  [["import", "empty.csv"], 4, "The file is empty."],
  [["import", "book.xlsx"], 4, "workbook"],
  [["import", "a.csv", "--code-players"], 2, "no column that is known to hold players"],
  [
    ["import", "a.csv", "--key", "team.csv"],
    2,
    "--key is about codes for players: give --code-players, too.",
  ],
])("%j is told what is wrong", async (words, code, message) => {
  const files = {
    "a.csv": TABLE,
    "damaged.csv.gz": Uint8Array.of(0x1f, 0x8b, 8, 0, 1, 2, 3),
    "empty.csv": "",
    "book.xlsx": "PK\u0003\u0004xyz",
    "plans.drill": 'plan "Irons" {\n}\nplayer "P-12" {\n}\nplayer "P-07" {\n}\n',
  };
  const answer = await drillwright(files, words);
  expect(answer.code).toBe(code);
  expect(answer.stderr).toContain(message);
  expect(answer.stdout).toBe("");
});

describe("codes for players", () => {
  const repository = () => {
    const folder = folderWith({ "data/season.csv": SEASON, ".gitignore": "dist/" });
    execFileSync("git", ["init", "-q"], { cwd: folder });
    return folder;
  };

  test("stand in a copy; the key stays here and out of the repository; the table is as it was", async () => {
    const folder = repository();
    const { code, stdout, stderr } = await drillwright(folder, [
      "import",
      "data/season.csv",
      "--code-players",
    ]);
    expect([code, stderr]).toEqual([
      0,
      expect.stringContaining("data/season.csv still has the names: keep it out of the repository."),
    ]);
    expect(readFileSync(join(folder, "data/season-coded.csv"), "utf8")).toBe(
      "Player,Date,Carry (m),Note\nP-01,2026-10-12,150,\nP-02,2026-10-12,151,\nP-01,2026-10-13,152,\n",
    );
    expect(readFileSync(join(folder, "player-key.csv"), "utf8")).toBe(
      "code,name\nP-01,Ada Holt\nP-02,Bo Lund\n",
    );
    expect(statSync(join(folder, "player-key.csv")).mode & 0o077).toBe(0);
    expect(readFileSync(join(folder, ".gitignore"), "utf8")).toBe("dist/\n/player-key.csv\n");
    expect(readFileSync(join(folder, "data/season.csv"), "utf8")).toBe(SEASON);
    expect(stdout).toContain('data "data/season-coded.csv"');
    expect(stdout + stderr).not.toMatch(/Ada|Holt|Lund/);
    expect(stderr).toContain(
      'Left out of the copy, since names may stand there: what is no reading in "Note".',
    );
  });

  test("are not given before it is clear that the proposal can be written", async () => {
    const folder = repository();
    const words = ["import", "data/season.csv", "--code-players", "--output", "sessions/season.drill"];
    const { code, stderr } = await drillwright(folder, words);
    expect([code, stderr]).toEqual([
      2,
      expect.stringContaining("sessions/season.drill cannot be written: there is no folder sessions."),
    ]);
    expect(existsSync(join(folder, "data/season-coded.csv"))).toBe(false);
    expect(existsSync(join(folder, "player-key.csv"))).toBe(false);
  });

  test("stand for names in any order of their words, and for parts of names where sessions are named; nothing else tells who it is", async () => {
    const table = `Golfer,E-mail,Phone,Lesson,Drill,Gadget,Carry (m)
Ada Holt,ada@example.org,0151 2345678,Ada Monday,Gate,12.512345678,150
"Holt, Ada",ada@example.org,01512345678,Ada Monday,Gate,13,151
Bo Lund,,,with Bo LUND,Gate,Bo,152
`;
    const folder = folderWith({ "a.csv": table });
    await drillwright(folder, ["import", "a.csv", "--code-players"]);
    expect(
      readFileSync(join(folder, "a-coded.csv"), "utf8"),
    ).toBe(`Golfer,E-mail,Phone,Lesson,Drill,Gadget,Carry (m)
P-01,,,P-01 Monday,Gate,12.512345678,150
P-01,,,P-01 Monday,Gate,13,151
P-02,,,with P-02,Gate,,152
`);
  });

  test("that are there already stay, and no names are spoken of", async () => {
    const table = "Player,Carry (m)\nP-07,150\nP-12,151\n";
    const folder = folderWith({ "a.csv": table });
    const { stderr } = await drillwright(folder, ["import", "a.csv", "--code-players"]);
    expect(stderr).toContain("a.csv has codes for its players already, and so has a-coded.csv.");
    expect(stderr).toContain("player-key.csv tells which code is whose. It has 0 players.");
    expect(readFileSync(join(folder, "a-coded.csv"), "utf8")).toBe(table);
  });

  test("leave readings as they are where players are numbers", async () => {
    const folder = folderWith({
      "a.csv": "Shot,Player,Carry (m),Lesson\n12,1502,1502,1502 again\n13,12,151,12\n",
    });
    await drillwright(folder, ["import", "a.csv", "--code-players"]);
    expect(readFileSync(join(folder, "a-coded.csv"), "utf8")).toBe(
      "Shot,Player,Carry (m),Lesson\n12,P-01,1502,P-01 again\n13,P-02,151,P-02\n",
    );
  });

  test("are given to nobody who is a statistic; a player may be called like one", async () => {
    const table = "Player,Carry (m)\nMax,150\nBo Lund,151\nMax,152\nTotal,453\nAverage,151\n";
    const folder = folderWith({ "a.csv": table });
    const { stdout } = await drillwright(folder, ["import", "a.csv", "--code-players"]);
    expect(readFileSync(join(folder, "a-coded.csv"), "utf8")).toBe(
      "Player,Carry (m)\nP-01,150\nP-02,151\nP-01,152\nTotal,453\nAverage,151\n",
    );
    expect(readFileSync(join(folder, "player-key.csv"), "utf8")).toBe("code,name\nP-01,Max\nP-02,Bo Lund\n");
    expect(stdout.match(/^player .*/gm)).toEqual(['player "P-01" {', 'player "P-02" {']);
  });

  test("are in a copy of its own for each table", async () => {
    const folder = folderWith({
      "a.csv": SEASON,
      "a.txt.gz": gzipSync(SEASON),
      "a.csv.gz": gzipSync(SEASON),
    });
    const { code, stderr } = await drillwright(folder, [
      "import",
      "a.csv",
      "a.txt.gz",
      "a.csv.gz",
      "--code-players",
    ]);
    expect(code).toBe(2);
    expect(stderr).toContain("a.csv and a.csv.gz would both be copied to a-coded.csv.");
    expect(existsSync(join(folder, "a-coded.csv"))).toBe(false);
  });

  test("are the same the next time, and go on from there", async () => {
    const folder = repository();
    writeFileSync(join(folder, "player-key.csv"), 'code,name\nP-07,"HOLT, Ada"\nP-01,ada  holt\n');
    await drillwright(folder, ["import", "data/season.csv", "--code-players"]);
    expect(readFileSync(join(folder, "player-key.csv"), "utf8")).toBe(
      'code,name\nP-07,"HOLT, Ada"\nP-01,ada  holt\nP-02,Bo Lund\n',
    );
  });

  test("are not written where the key would leave the folder, or is known to git", async () => {
    const folder = repository();
    const away = await drillwright(folder, [
      "import",
      "data/season.csv",
      "--code-players",
      "--key",
      "../key.csv",
    ]);
    expect(away).toMatchObject({ code: 2, stderr: expect.stringContaining("is not in the working folder") });
    writeFileSync(join(folder, "player-key.csv"), "code,name\n");
    execFileSync("git", ["add", "player-key.csv"], { cwd: folder });
    const known = await drillwright(folder, ["import", "data/season.csv", "--code-players"]);
    expect(known).toMatchObject({
      code: 2,
      stderr: expect.stringContaining("already part of the repository"),
    });
    expect(existsSync(join(folder, "data/season-coded.csv"))).toBe(false);
  });
});
