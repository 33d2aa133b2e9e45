import { describe, expect, test } from "vitest";
import { SessionData } from "../../shared/session-data.ts";
import { block, column, metricColumn, scoringInput, source, UNITS } from "../support/scoring-input.ts";
import { importSession } from "./import-session.ts";
import { file, importTable, outline, readings } from "./import-table.ts";

const DEGREE = UNITS["°"].factor;
const carry = column("Carry", metricColumn("carry", "m"));
const club = column("Club", { kind: "club", spellings: [{ text: "Big one", club: "driver" }] });
const drill = column("Drill", { kind: "block" });
const use = column("Use", { kind: "exclusion", texts: ["N", "practice swing"] });

test("a table becomes shots in SI units, with their rows", () => {
  const text = "No;Club;Path;Carry;Use\n1;7i;-1,5;1.150,5;Y\n2;Dr;2;;n\n";
  const data = importTable(text, {
    columns: [club, column("Path", metricColumn("club-path", "°", "right")), carry, use],
    source: { decimal: "comma" },
    metrics: [],
  });
  expect(data.shots).toEqual([
    {
      row: { file: "shots.csv", line: 2 },
      values: { "club-path": -1.5 * DEGREE, carry: 1150.5 },
      categories: {},
      derived: [],
      club: "7-iron",
      time: null,
      block: "Gate",
      excluded: null,
    },
    {
      row: { file: "shots.csv", line: 3 },
      values: { "club-path": 2 * DEGREE },
      categories: {},
      derived: [],
      club: "driver",
      time: null,
      block: "Gate",
      excluded: 'marked "N" in column "Use"',
    },
  ]);
  expect(data.files).toEqual([{ file: "shots.csv", sha256: "0".repeat(64), shots: 2 }]);
  expect(data.findings).toEqual([]);
  expect(SessionData.parse(data)).toEqual(data);
});

describe("a left-hander", () => {
  const header = "Path;Face;Side;Carry\n";
  const importAs = (positive: "right" | "left" | "in-to-out" | "out-to-in", rows: string) =>
    importTable(header + rows, {
      hand: "left",
      columns: [
        column("Path", metricColumn("club-path", "°", positive)),
        column("Face", metricColumn("face-angle", "°", positive)),
        column("Side", metricColumn("offline", "yd", "right")),
        carry,
      ],
    }).shots;
  const asRight = importAs("right", "1.5;-0.3;4.25;150\n-2.1;0;-3;149\n");

  test("has the same shots, whichever side the table counts as positive", () => {
    expect(importAs("left", "-1.5;0.3;4.25;150\n2.1;0;-3;149\n")).toEqual(asRight);
    expect(importAs("in-to-out", "-1.5;0.3;4.25;150\n2.1;0;-3;149\n")).toEqual(asRight);
    expect(importAs("out-to-in", "1.5;-0.3;4.25;150\n-2.1;0;-3;149\n")).toEqual(asRight);
  });

  test("has the same shots where the table writes words", () => {
    const rows = "1.5 out-to-in;0.3 L;4.25;150\n2.1 in-to-out;0;-3;149\n";
    expect(importAs("right", rows)).toEqual(asRight);
  });

  test("is told to say so, where the sign of a column depends on it", () => {
    const data = importTable("Path;Carry\n1;150", {
      hand: null,
      columns: [column("Path", metricColumn("club-path", "°", "in-to-out")), carry],
    });
    expect(outline(data.findings)).toEqual(["error hand-missing Path"]);
    expect(data.findings[0]?.message).toBe(
      'What is positive in "Path" depends on the side the player swings from. Write `right-handed` or `left-handed` in player "P-01".',
    );
    expect(data.shots).toEqual([]);
  });

  test("need not say so where it does not", () => {
    const columns = [column("Path", metricColumn("club-path", "°", "right"))];
    expect(importTable("Path\n1", { hand: null, columns }).findings).toEqual([]);
  });
});

describe("cells that cannot be read", () => {
  test("leave one value unknown, and are reported with row, column and text", () => {
    const data = importTable("Carry\n150\n15O\n0\n", { columns: [carry] });
    expect(readings(data, "carry")).toEqual([150, undefined, 0]);
    expect(data.findings).toEqual([
      {
        code: "cell-unreadable",
        severity: "warning",
        file: "shots.csv",
        line: 3,
        column: "Carry",
        text: "15O",
        message: '"15O" in column "Carry" is not a number in m; the reading is left unknown.',
      },
    ]);
  });

  test.each([
    [
      "attack-angle",
      "is not a number in °, which the word up or down may follow; the reading is left unknown.",
    ],
    [
      "club-path",
      "is not a number in °, which the word right, in-to-out, left or out-to-in may follow; the reading is left unknown.",
    ],
  ])("say which words %s may have", (metric, message) => {
    const data = importTable("Angle\nO,6\n", { columns: [column("Angle", metricColumn(metric, "°"))] });
    expect(data.findings.map(({ message }) => message)).toEqual([`"O,6" in column "Angle" ${message}`]);
  });

  test("hint at the decimal mark where that would help", () => {
    const data = importTable("Carry\n150,5\n", { columns: [carry] });
    expect(data.findings[0]?.message).toContain("write `decimal comma` in source");
  });

  test("are all listed up to two hundred of a kind in a column; the others are counted", () => {
    const rows = Array.from({ length: 2000 }, (_, row) => `x;${row === 7 ? "y" : "3"}\n`).join("");
    const side = column("Side", metricColumn("offline", "m", "right"));
    const data = importTable(`Carry;Side\n${rows}`, { columns: [carry, side] });
    expect(data.shots).toHaveLength(2000);
    expect(outline(data.findings).slice(0, 7)).toEqual(
      [2, 3, 4, 5, 6, 7, 8].map((line) => `warning cell-unreadable line ${line} Carry`),
    );
    expect(data.findings.filter(({ column }) => column === "Side")).toHaveLength(1);
    expect(data.findings).toHaveLength(202);
    expect(data.findings.at(-1)).toEqual({
      code: "cell-unreadable",
      severity: "warning",
      file: "shots.csv",
      line: null,
      column: "Carry",
      text: null,
      message: '1800 more findings like the 200 listed (cell-unreadable) in column "Carry" are not listed.',
      count: 1800,
    });
  });
});

describe("implausible readings", () => {
  const path = column("Path", metricColumn("club-path", "°", "right"));

  test("are kept and reported", () => {
    const data = importTable("Path\n31\n-21\n30\n-20\n", { columns: [path] });
    expect(readings(data, "club-path", DEGREE)).toEqual([31, -21, 30, -20]);
    expect(outline(data.findings)).toEqual([
      "warning value-implausible line 2 Path",
      "warning value-implausible line 3 Path",
    ]);
    expect(data.findings[0]?.message).toContain("between 20.0° out-to-in and 30.0° in-to-out");
  });

  test("are not put in words that depend on a hand nobody stated", () => {
    const data = importTable("Path\n31\n", { columns: [path], hand: null });
    expect(data.findings[0]?.message).toContain("between 20.0° left and 30.0° right");
  });

  test("are judged in the mirror for a left-hander, where the metric's words mirror", () => {
    const data = importTable("Path\n-31\n21\n-30\n20\n", { columns: [path], hand: "left" });
    expect(outline(data.findings)).toEqual([
      "warning value-implausible line 2 Path",
      "warning value-implausible line 3 Path",
    ]);
    expect(data.findings[0]?.message).toContain("between 30.0° in-to-out and 20.0° out-to-in");
  });
});

describe("clubs", () => {
  const clubsOf = (...texts: string[]) =>
    importTable(`Club;Carry\n${texts.map((text) => `${text};150\n`).join("")}`, { columns: [club, carry] });

  test.each(["7-iron", "7 Iron", "7IRON", "7i", "7 I", "Iron-7", "iron 7"])("%j is the 7-iron", (text) => {
    const data = clubsOf(text);
    expect([data.shots[0]?.club, data.findings]).toEqual(["7-iron", []]);
  });

  test("may be spelled as the source says", () => {
    expect(clubsOf("big ONE").shots[0]?.club).toBe("driver");
  });

  test("that are not known are reported once each, with how often and where first", () => {
    const data = clubsOf("7i", "7j", "7j", "?", "");
    expect(data.shots.map((shot) => shot.club)).toEqual(["7-iron", null, null, null, null]);
    expect(outline(data.findings)).toEqual([
      "warning club-unknown line 3 Club",
      "warning club-unknown line 5 Club",
    ]);
    expect(data.findings[1]?.message).toBe(
      '"?" in column "Club", in line 5, is no club that is known. Say which it is in source "Bay table": `column "Club" is club where "?" is …`.',
    );
    expect(data.findings[0]?.message).toBe(
      '"7j" in column "Club", on 2 rows, the first in line 3, is no club that is known; did you mean "7-iron"? Say which it is in source "Bay table": `column "Club" is club where "7j" is 7-iron`.',
    );
  });
});

describe("blocks", () => {
  const blocks = [block("Wake up", 2), block("Gate 1", 2), block("Gate 2", 2)];
  const blocksOf = (...texts: string[]) =>
    importTable(`Drill;Carry\n${texts.map((text) => `${text};150\n`).join("")}`, {
      columns: [drill, carry],
      blocks,
    });

  test.each(["Gate 1", "GATE-1", "gate1", "Gate #01", "2", "2.0", "Block 2", "2. Gate 1"])(
    "%j is Gate 1",
    (text) => {
      const data = blocksOf(text);
      expect([data.shots[0]?.block, data.findings]).toEqual(["Gate 1", []]);
    },
  );

  test("that are alike but for case and punctuation must be written as they are", () => {
    const alike = [block("Gate", 1), block("gate!", 1)];
    const data = importTable("Drill;Carry\nGate;1\ngate!;2\nGATE;3\n", {
      columns: [drill, carry],
      blocks: alike,
    });
    expect(data.shots.map((shot) => shot.block)).toEqual(["Gate", "gate!", null]);
  });

  test("that the plan does not have are reported once each, and their shots belong to none", () => {
    const data = blocksOf("Wake up", "Wake up", "Gate", "Gate", "4");
    expect(data.shots.map((shot) => shot.block)).toEqual(["Wake up", "Wake up", null, null, null]);
    expect(outline(data.findings)).toEqual([
      "warning block-unknown line 4 Drill",
      "warning block-unknown line 6 Drill",
      "warning shots-unassigned line 4",
    ]);
    expect(data.findings[0]?.message).toBe(
      '"Gate" in column "Drill", on 2 rows, the first in line 4, is no block of plan "Test plan"; did you mean "Gate 1"? It has "Wake up", "Gate 1", "Gate 2".',
    );
  });
});

test("marks that set a shot aside are found whatever the case and the spaces around", () => {
  const data = importTable("Use;Carry\nn ;1\nPractice Swing;2\nY;3\n;4\n", { columns: [use, carry] });
  expect(data.shots.map((shot) => shot.excluded)).toEqual([
    'marked "N" in column "Use"',
    'marked "practice swing" in column "Use"',
    null,
    null,
  ]);
});

test("a blank may be a mark, too", () => {
  const blank = column("Use", { kind: "exclusion", texts: [""] });
  const data = importTable("Use;Carry\n;1\nY;2\n", { columns: [blank, carry] });
  expect(data.shots.map((shot) => shot.excluded)).toEqual(['blank in column "Use"', null]);
});

test("where two columns hold one metric, the first in the source that has a reading counts", () => {
  const columns = [carry, column("Carry 2", metricColumn("carry", "m"))];
  expect(readings(importTable("Carry 2;Carry\n1;2\n3;\n", { columns }), "carry")).toEqual([2, 3]);
});

describe("several tables", () => {
  const input = scoringInput({
    sources: [
      source([carry]),
      source([column("Weite", metricColumn("carry", "m"))], { name: "Hall", decimal: "comma" }),
    ],
    blocks: [block("Gate", 3)],
  });

  test("follow each other in the order they are written, each read by its source", () => {
    const data = importSession(input, [
      file("Weite\n99,5\n98\n", "b.csv", "Hall"),
      file("Carry\n150\n", "a.csv"),
    ]);
    expect(data.shots.map(({ row, values }) => [row.file, row.line, values.carry])).toEqual([
      ["b.csv", 2, 99.5],
      ["b.csv", 3, 98],
      ["a.csv", 2, 150],
    ]);
    expect(data.files.map(({ file, shots }) => [file, shots])).toEqual([
      ["b.csv", 2],
      ["a.csv", 1],
    ]);
  });

  test("are read without the ones that cannot be, each of which is one error", () => {
    const data = importSession(input, [
      file(undefined, "missing.csv"),
      file("", "empty.csv"),
      file("\uFEFF \r\n\t", "blank.csv"),
      file("Carry\n", "header.csv"),
      file("Carry\n150\n", "lost.csv", "No such source"),
      file("Carry\n150\n", "good.csv"),
    ]);
    expect(data.findings.map(({ severity, code, file }) => [severity, code, file])).toEqual([
      ["error", "file-missing", "missing.csv"],
      ["error", "file-empty", "empty.csv"],
      ["error", "file-empty", "blank.csv"],
      ["error", "file-empty", "header.csv"],
      ["error", "file-unreadable", "lost.csv"],
    ]);
    expect(readings(data, "carry")).toEqual([150]);
    expect(data.files.map(({ file, shots }) => [file, shots])).toEqual([
      ["empty.csv", 0],
      ["blank.csv", 0],
      ["header.csv", 0],
      ["lost.csv", 0],
      ["good.csv", 1],
    ]);
  });

  test("may be none at all", () => {
    expect(importSession(input, [])).toMatchObject({ files: [], shots: [], findings: [] });
  });
});
