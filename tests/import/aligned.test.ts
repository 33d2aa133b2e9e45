/** Tables whose cells stand under each other, with spaces between them. */
import { beforeAll, describe, expect, test } from "vitest";
import { propose } from "../../server/import/propose/propose.ts";
import type { Vocabulary } from "../../server/import/propose/vocabulary.ts";
import { cellsIn, gapsIn } from "../../server/import/table/aligned.ts";
import { libraryVocabulary } from "../../server/node/vocabulary.ts";
import { column, metricColumn } from "../support/scoring-input.ts";
import { importTable, outline, readings } from "./import-table.ts";

let vocabulary: Vocabulary;
beforeAll(async () => {
  vocabulary = await libraryVocabulary();
});

const columns = [
  column("Club", { kind: "club", spellings: [] }),
  column("Carry", metricColumn("carry", "m")),
  column("Side", metricColumn("offline", "m", "right")),
];

const lines = (...text: string[]) => `${text.join("\n")}\n`;

/** The cells of every line, by the gaps that are found from all of them. */
const split = (...text: string[]) => text.map((line) => cellsIn(line, gapsIn(lines(...text))).join("|"));

describe("columns are where spaces stand one under the other", () => {
  test.each([
    ["numbers to the right", ["Club  Carry  Side", "7i    150.2  -3.1", "Dr     95.0  12.0"]],
    ["one space between names", ["Club Carry Side", "7i   150.2 -3.1", "Dr    95.0 12.0"]],
    ["spaces in front", ["   Club   Carry    Side", "     7i   150.2    -3.1", "     Dr    95.0    12.0"]],
    [
      "spaces that do not break",
      ["Club\u00a0\u00a0Carry\u00a0\u00a0Side", "7i\u00a0   150.2  -3.1", "Dr     95.0  12.0"],
    ],
    [
      "cells wider than names",
      [
        "Club  Carry                 Side",
        "7i    150.2                 -3.1",
        "Dr    95.0                  12.0",
      ],
    ],
    ["a cell that reaches into a gap", ["Club  Carry    Side", "7i    150.2    -3.1", "Dr      95.0   12.0"]],
  ])("%s", (_, text) => {
    expect(split(...text)).toEqual(["Club|Carry|Side", "7i|150.2|-3.1", "Dr|95.0|12.0"]);
  });

  test.each([
    [
      ["Ball Speed  Carry", "      61.2  150.2", "      70.1  195.0"],
      ["Ball Speed|Carry", "61.2|150.2", "70.1|195.0"],
    ],
    [
      ["Club   Ball Speed", "7 Iron       61.2", "9 Iron       55.0"],
      ["Club|Ball Speed", "7 Iron|61.2", "9 Iron|55.0"],
    ],
    [
      ["  Club  Carry", "7 Iron  150.2", "9 Iron  130.0", "7 Iron  151.0"],
      ["Club|Carry", "7 Iron|150.2", "9 Iron|130.0", "7 Iron|151.0"],
    ],
  ])("names and cells may have spaces in them", (text, cells) => {
    expect(split(...text)).toEqual(cells);
  });

  test("numbers of rows without a name are a column of their own", () => {
    expect(split("   Club  Carry", "1    7i  150.2", "2    Dr   95.0")).toEqual([
      "|Club|Carry",
      "1|7i|150.2",
      "2|Dr|95.0",
    ]);
  });

  test("a cell that is blank stays so", () => {
    expect(split("Club  Carry  Side", "7i           -3.1", "Dr    195.0")).toEqual([
      "Club|Carry|Side",
      "7i||-3.1",
      "Dr|195.0|",
    ]);
  });

  test("prose, the header once more, blank lines and a comma in a name do not hide them", () => {
    const header = "Club    Carry  Side (m, + right)";
    const text = [
      header,
      "7i      150.2              -3.1",
      "",
      "Driver  235.0              12.0",
      header,
      "Note: windy, but not in our way at all",
    ];
    expect(split(...text)).toEqual([
      "Club|Carry|Side (m, + right)",
      "7i|150.2|-3.1",
      "",
      "Driver|235.0|12.0",
      "Club|Carry|Side (m, + right)",
      "Note: windy, but not in our way at all",
    ]);
  });

  test("a line that does not keep to them is parted by wide spaces, or by nothing", () => {
    const text = ["Club  Carry  Side", ...Array<string>(20).fill("7i    150.2  -3.1")];
    const gaps = gapsIn(lines(...text));
    expect(cellsIn("Pitching wedge  95.0  12.0", gaps)).toEqual(["Pitching wedge", "95.0", "12.0"]);
    expect(cellsIn("Pitching wedge 95.0 12.0", gaps)).toEqual(["Pitching wedge 95.0 12.0"]);
  });
});

const TABLE = ["Club  Carry  Side", "----  -----  ----", "7i    150.2  -3.1", "7i    151.0   2.0"];

describe("an aligned table is read", () => {
  test.each([{}, { separator: "spaces" as const }])("%j", (source) => {
    const read = importTable(lines(...TABLE), { columns, source });
    expect([readings(read, "carry"), readings(read, "offline")]).toEqual([
      [150.2, 151],
      [-3.1, 2],
    ]);
    expect(read.shots.map(({ club, row }) => [club, row.line])).toEqual([
      ["7-iron", 3],
      ["7-iron", 4],
    ]);
    expect(read.findings).toEqual([]);
  });

  test("in a mail, with words above and below", () => {
    const read = importTable(
      lines(
        "Hello,",
        "here are my shots:",
        "",
        ...TABLE,
        "-----------------",
        "Average  150.6  -0.5",
        "",
        "Best wishes, and see you soon",
      ),
      {
        columns,
        source: { headerRow: 4 },
      },
    );
    expect(readings(read, "carry")).toEqual([150.2, 151]);
    expect(outline(read.findings)).toEqual(["warning row-skipped line 9", "warning row-ragged line 11"]);
  });

  test("a shot without readings, written as dashes, is no rule", () => {
    const read = importTable(lines(...TABLE, "---   ---    ---"), { columns });
    expect(readings(read, "carry")).toEqual([150.2, 151, undefined]);
  });

  test("where names cannot be told apart it is said what was found instead", () => {
    const read = importTable(lines("Club Carry Side", "7i 150.2 -3.1", "Dr 95.0 12.0"), { columns });
    expect(read.shots).toEqual([]);
    expect(outline(read.findings)).toEqual(["error not-a-table line 1"]);
    expect(read.findings[0]?.message).toContain('it reads "Club Carry Side"');
  });
});

describe("a proposal", () => {
  const text = (content: string) => propose([{ path: "shots.txt", content }], { vocabulary }).text;

  test("finds an aligned table in a mail", () => {
    expect(text(lines("Hello, these are today's carry, side and club:", "", ...TABLE))).toContain(
      'source "shots table" {\n  separator spaces\n  header row 3\n  column "Club" is club\n',
    );
  });

  test("prefers a mark between cells, whatever is aligned", () => {
    expect(
      text(lines("Club, Carry (m), Side (m, right +)", "7i,   150.2,     -3.1", "Dr,   195.0,     12.0")),
    ).toContain('source "shots table" {\n  separator comma\n  column "Club" is club\n');
  });
});
