/** What a project declares already is referred to, and not declared again. */
import { beforeAll, describe, expect, test } from "vitest";
import { meaningText } from "../../server/import/propose/meaning-text.ts";
import { NOTHING_DECLARED, type ProjectDeclarations } from "../../server/import/propose/project.ts";
import { propose } from "../../server/import/propose/propose.ts";
import type { Vocabulary } from "../../server/import/propose/vocabulary.ts";
import { libraryVocabulary } from "../../server/node/vocabulary.ts";

let vocabulary: Vocabulary;
beforeAll(async () => {
  vocabulary = await libraryVocabulary();
});

const TABLE = "Who;Drill;Path;Carry\nP 7;Gate;1,5;150,5\nP 7;Prove it;-0,5;151,0\n";

const HALL: ProjectDeclarations["sources"][number] = {
  name: "Hall table",
  use: "./library/sources",
  separator: "semicolon",
  decimal: "comma",
  headerRow: 1,
  columns: [
    { header: "Path", says: "club-path in ° positive out-to-in" },
    { header: "Carry", says: "carry in m" },
    { header: "Drill", says: "block" },
    { header: "Who", says: "player" },
  ],
};

const plan = (name: string, ...blocks: string[]) => ({ name, use: `./plans/${name.toLowerCase()}`, blocks });
const P07 = { name: "P-07", use: "./players", hand: "left" } as const;

function proposed(project: Partial<ProjectDeclarations>, content = TABLE) {
  return propose([{ path: "data/monday.csv", content }], {
    vocabulary,
    project: { ...NOTHING_DECLARED, ...project },
  });
}

test("all of it together: nothing is left to settle", () => {
  const { text, open } = proposed({
    sources: [HALL],
    players: [P07],
    plans: [plan("Irons", "Wake up", "Gate", "Prove it"), plan("Driver", "Wake up", "Tee")],
  });
  expect(
    text,
  ).toBe(`// A proposal. What is marked \`settle\` is for you to decide; delete the remark when it is.

use "./library/sources"
use "./plans/irons"
use "./players"

session "monday P-07" {
  plan "Irons"
  player "P-07"
  data "data/monday.csv" from "Hall table"
  // 2 rows
}
`);
  expect(open).toBe(0);
});

describe("a plan", () => {
  const planLines = (...plans: ProjectDeclarations["plans"]) =>
    proposed({ plans })
      .text.split("\n")
      .filter((line) => /\bplans?\b/.test(line))
      .map((line) => line.trim());

  test("is the one that has every block that the rows name, however they write it", () => {
    expect(planLines(plan("Irons", "gate", "Prove  It", "More"))).toEqual([
      'use "./plans/irons"',
      'plan "Irons"',
    ]);
  });

  test("is asked for where it may be any of several, or none has the blocks", () => {
    expect(planLines(plan("A", "Gate", "Prove it"), plan("B", "Gate", "Prove it"))).toEqual([
      "// settle: Which plan was practised? These have the blocks that the table names. Keep one of these lines.",
      '// plan "A"',
      '// plan "B"',
    ]);
    expect(planLines(plan("A", "Gate"))).toEqual([
      "// settle: Which plan was practised? Keep one of these lines.",
      '// plan "A"',
    ]);
    expect(planLines()).toEqual(['// settle: Which plan was practised? plan "…"']);
  });

  test("is not told by numbers: every plan has a first block", () => {
    const content = "Block;Carry (m)\n1;150\n2;151\n";
    expect(proposed({ plans: [plan("A", "1", "2")] }, content).text).toContain("settle: Which plan");
  });

  test("is told for each session by its own rows", () => {
    const content = "Date;Drill;Carry (m)\n2026-10-12;Gate;150\n2026-10-13;Tee;151\n";
    const plans = [plan("Irons", "Gate"), plan("Driver", "Tee")];
    expect(proposed({ plans }, content).sessions.map((session) => session.plans)).toEqual([
      ["Irons"],
      ["Driver"],
    ]);
  });
});

test("who practised is asked with the players to choose from, if they are few", () => {
  const linesWith = (count: number) =>
    proposed(
      { players: Array.from({ length: count }, (_, at) => ({ ...P07, name: `P-${at + 1}` })) },
      "Carry (m)\n150\n",
    )
      .text.split("\n")
      .filter((line) => line.includes("player"))
      .map((line) => line.trim());
  expect(linesWith(2)).toEqual(['// player "P-1"', '// player "P-2"']);
  expect(linesWith(40)).toEqual(['// settle: Who practised? player "…"']);
});

describe("a source", () => {
  const sourceOf = (source: Partial<typeof HALL>, ...others: (typeof HALL)[]) =>
    proposed({ sources: [{ ...HALL, ...source }, ...others] }).sources[0]?.name;

  test("is used again for a table that is written in the same way and has all its columns", () => {
    expect(sourceOf({})).toBe("Hall table");
    expect(sourceOf({ separator: null })).toBe("Hall table");
    expect(sourceOf({ columns: HALL.columns.slice(0, 2) })).toBe("Hall table");
  });

  test.each<[string, Partial<typeof HALL>]>([
    ["another separator", { separator: "tab" }],
    ["another decimal mark", { decimal: "point" }],
    ["column names in another line", { headerRow: 3 }],
    ["a column that is not there", { columns: [...HALL.columns, { header: "Spin", says: "spin-rate" }] }],
    ["few of the columns", { columns: HALL.columns.slice(0, 1) }],
    ["no columns", { columns: [] }],
  ])("is proposed anew where that of the project has %s", (_, source) => {
    expect(sourceOf(source)).toBe("monday table");
  });

  test("is not used where it does not read what parts the table: every session would have all the rows", () => {
    const dated = (...days: string[]) =>
      `Who;Drill;Path;Carry;Date\n${days.map((day) => `P 7;Gate;1,5;150,5;${day}\n`).join("")}`;
    const dataLine = (content: string) => proposed({ sources: [HALL] }, content).text.match(/data .*/)?.[0];
    expect(dataLine(dated("2026-10-12", "2026-10-12"))).toBe('data "data/monday.csv" from "Hall table"');
    expect(dataLine(dated("2026-10-12", "2026-10-13"))).toBe('data "data/monday.csv" from "monday table"');
  });

  test("is the one that reads the most, and none where two read as much", () => {
    const less = { ...HALL, name: "Less", columns: HALL.columns.slice(0, 2) };
    expect(sourceOf({}, less)).toBe("Hall table");
    expect(sourceOf({}, { ...HALL, name: "Same" })).toBe("monday table");
  });

  test("tells what its columns are, so that nothing is asked about them", () => {
    const { columns } = proposed({ sources: [HALL] });
    expect(
      columns.map(({ header, says, confidence, settle }) => ({ header, says, confidence, settle }))[2],
    ).toEqual({
      header: "Path",
      says: "club-path in ° positive out-to-in",
      confidence: "sure",
      settle: [],
    });
  });

  test("reads a column that nothing would have been known of", () => {
    const remark = { header: "Remark", says: 'excludes when "mishit"' };
    const content = TABLE.replace("Carry\n", "Carry;Remark\n").replace("150,5", "150,5;mishit");
    const { columns } = proposed({ sources: [{ ...HALL, columns: [...HALL.columns, remark] }] }, content);
    expect(columns.map(meaningText)).toContain(remark.says);
  });

  test("that is proposed has no name that the project has given", () => {
    const other = { ...HALL, name: "monday table", separator: "tab" } as const;
    expect(proposed({ sources: [other] }).text).toContain('source "monday table 2" {');
  });
});
