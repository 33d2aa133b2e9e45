/** The sessions that tables of several players and days are parted into. */
import { beforeAll, expect, test } from "vitest";
import { NOTHING_DECLARED } from "../../server/import/propose/project.ts";
import { propose } from "../../server/import/propose/propose.ts";
import type { Vocabulary } from "../../server/import/propose/vocabulary.ts";
import { libraryVocabulary } from "../../server/node/vocabulary.ts";

let vocabulary: Vocabulary;
beforeAll(async () => {
  vocabulary = await libraryVocabulary();
});

type Table = readonly [path: string, content: string];

/** Sessions as `name | player | date | rows | tables`. */
function sessionsIn(...tables: readonly Table[]): string[] {
  const { sessions } = propose(
    tables.map(([path, content]) => ({ path, content })),
    {
      vocabulary,
      project: { ...NOTHING_DECLARED, players: [{ name: "P-07", use: "./players", hand: null }] },
    },
  );
  return sessions.map(({ name, player, date, rows, data }) =>
    [name, player ?? "-", date ?? "-", rows ?? "all", data.map(({ path }) => path).join("+")].join(" | "),
  );
}

test("a table that names neither players nor days is one session", () => {
  expect(sessionsIn(["data/monday.csv", "Carry (m)\n150\n151\n"])).toEqual([
    "monday | - | - | all | data/monday.csv",
  ]);
});

test.each(["shots.csv", "shots.jsonl", "shots.ndjson.gz", "shots.TXT"])(
  "its name is that of its file: %s",
  (path) => {
    expect(sessionsIn([path, "Carry (m)\n150\n151\n"])).toEqual([`shots | - | - | all | ${path}`]);
  },
);

test("the day of a time stamp is the session's; several days are several sessions", () => {
  const day = "Timestamp,Carry (m)\n2026-10-12 10:42,150\n2026-10-12 10:43,151\n";
  expect(sessionsIn(["a.csv", day])).toEqual(["a | - | 2026-10-12 | all | a.csv"]);
  expect(sessionsIn(["a.csv", `${day}2026-10-13 10:43,151\n`])).toEqual([
    "a 2026-10-12 | - | 2026-10-12 | 2 | a.csv",
    "a 2026-10-13 | - | 2026-10-13 | 1 | a.csv",
  ]);
});

test("each player and day is one, and players are those of the project, however the table writes them", () => {
  const text =
    "Player;Date;Carry (m)\np 7;12.10.2026;150\nP-12;12.10.2026;151\np 7;13.10.2026;152\np 7;12.10.2026;153\n;12.10.2026;9\n";
  expect(sessionsIn(["team.csv", text])).toEqual([
    "team P-07 2026-10-12 | P-07 | 2026-10-12 | 2 | team.csv",
    "team P-12 2026-10-12 | P-12 | 2026-10-12 | 1 | team.csv",
    "team P-07 2026-10-13 | P-07 | 2026-10-13 | 1 | team.csv",
  ]);
});

test("day or month first is what some row proves; else it is asked", () => {
  const text = (last: string) => `Date;Carry (m)\n10/12/2026;150\n10/12/2026;150\n${last};151\n`;
  expect(sessionsIn(["a.csv", text("10/13/2026")])).toEqual([
    "a 2026-10-12 | - | 2026-10-12 | 2 | a.csv",
    "a 2026-10-13 | - | 2026-10-13 | 1 | a.csv",
  ]);
  const open = propose([{ path: "a.csv", content: text("11/12/2026") }], { vocabulary }).text;
  expect(open).toContain("// settle: Does the day or the month stand first? No row tells.");
  expect(open).toContain('column "Date" is date as day-month-year');
  const both = "Date;Carry (m)\n13/10/2026;150\n10/14/2026;150\n";
  expect(propose([{ path: "a.csv", content: both }], { vocabulary }).text).toContain(
    "// settle: Does the day or the month stand first? Some dates can only be read the one way, others only the other.",
  );
});

test("what the table calls a session is its name, over several tables", () => {
  const text = "Session;Carry (m)\nFirst visit;150\nSecond visit;151\nSecond visit;152\n";
  expect(sessionsIn(["a.csv", text], ["b.csv", "Session;Carry (m)\nSecond visit;153\n"])).toEqual([
    "First visit | - | - | 1 | a.csv",
    "Second visit | - | - | 3 | a.csv+b.csv",
  ]);
});

test("what several players have in common is no name of a session", () => {
  const text = "Player;Session;Carry (m)\nP-07;1st;150\nP-12;1st;151\nP-07;2nd;152\n";
  const { text: proposed } = propose([{ path: "a.csv", content: text }], { vocabulary });
  expect(sessionsIn(["a.csv", text])).toEqual([
    "a P-07 | P-07 | - | 2 | a.csv",
    "a P-12 | P-12 | - | 1 | a.csv",
  ]);
  expect(proposed).not.toContain("is session");
});

test("JSON by columns is understood as JSON by rows is", () => {
  const rows = Array.from({ length: 12 }, (_, row) => ({
    club: "7i",
    "carry (m)": 150 + row,
    day: `2026-03-${10 + (row % 2)}`,
  }));
  const columns = Object.fromEntries(
    (["club", "carry (m)", "day"] as const).map((name) => [name, rows.map((row) => row[name])]),
  );
  const proposed = (value: unknown) =>
    propose([{ path: "shots.json", content: JSON.stringify(value) }], { vocabulary }).text;
  expect(proposed(columns)).toBe(proposed(rows));
  expect(proposed(columns)).toContain("// 6 rows");
});

test.each([
  [
    "one that is repeated is the first",
    "Club;Carry (m)\n7i;150\n\nClub;Carry (m)\n7i;151\n7i;152\n",
    ['"Club"', '"Carry (m)"'],
  ],
  [
    "of two lines, that with the names",
    "Club;Ball;Ball\n;Carry (m);Apex (m)\n7i;150;20\n7i;151;21\n",
    ["header row 2", '"Carry (m)"', '"Apex (m)"'],
  ],
  [
    "in quotation marks with its line",
    '"Club,Carry (m)"\n"7i,150"\n"7i,151"\n',
    ["separator comma", '"Club"', '"Carry (m)"'],
  ],
])("the header: %s", (_, content, parts) => {
  const { text } = propose([{ path: "shots.csv", content }], { vocabulary });
  for (const part of parts) expect(text).toContain(part);
  if (!parts.includes("header row 2")) expect(text).not.toContain("header row");
});
