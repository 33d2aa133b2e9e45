import { describe, expect, test } from "vitest";
import { column, metricColumn } from "../support/scoring-input.ts";
import { importTable, outline, readings } from "./import-table.ts";

const carry = column("Carry", metricColumn("carry", "m"));
const side = column("Side", metricColumn("offline", "m", "right"));
const columns = [carry, side];

describe("separators", () => {
  test.each([
    ["comma", "No,Carry,Side\n1,150,3"],
    ["semicolon", "No;Carry;Side\n1;150;3"],
    ["tab", "No\tCarry\tSide\n1\t150\t3"],
  ] as const)("a %s is found from the header", (separator, text) => {
    for (const stated of [{}, { separator }]) {
      const data = importTable(text, { columns, source: stated });
      expect(readings(data, "carry")).toEqual([150]);
      expect(readings(data, "offline")).toEqual([3]);
      expect(data.findings).toEqual([]);
    }
  });

  test("the separator is the one under which the columns are found, not the most frequent one", () => {
    const text = "No;Carry;Remark, in words, if any, at all\n1;150;good, straight, high, long";
    expect(readings(importTable(text, { columns: [carry] }), "carry")).toEqual([150]);
  });

  test("one column needs none", () => {
    const data = importTable("Carry\n150,5\n151\n", { columns: [carry], source: { decimal: "comma" } });
    expect([readings(data, "carry"), data.findings]).toEqual([[150.5, 151], []]);
  });
});

describe("the header", () => {
  test.each([" carry ;SIDE", "\uFEFFCarry;Side", '"Carry"; "Side"', "Carry\u00a0;  side"])(
    "is found as %j",
    (header) => {
      const data = importTable(`${header}\n150;3`, { columns });
      expect([readings(data, "carry"), readings(data, "offline"), data.findings]).toEqual([[150], [3], []]);
    },
  );

  test("is found in either Unicode form of an accent", () => {
    const accented = column("Écart", metricColumn("offline", "m", "right"));
    expect(readings(importTable("E\u0301cart\n4", { columns: [accented] }), "offline")).toEqual([4]);
  });

  test("as written goes before much alike", () => {
    const data = importTable("carry;Carry\n1;150", { columns: [carry] });
    expect([readings(data, "carry"), data.findings]).toEqual([[150], []]);
  });

  test("may stand below other lines, which are not looked at", () => {
    const text = 'Export of "today\n\nPlayer;P-01\nCarry;Side\n150;3\n';
    const data = importTable(text, { columns, source: { headerRow: 4 } });
    expect(data.shots.map(({ row }) => row.line)).toEqual([5]);
    expect(data.findings).toEqual([]);
  });

  test("that stands twice is one error, if it is one that is read", () => {
    const twice = importTable("Carry;Side;Carry\n150;3;151", { columns });
    expect(outline(twice.findings)).toEqual(["error column-ambiguous line 1 Carry"]);
    const other = importTable("No;Carry;Side;No\n1;150;3;1", { columns });
    expect(other.findings).toEqual([]);
  });

  test("that lacks a column is one error, which says what there is", () => {
    const data = importTable("No;Cary;Side\n1;150;3", { columns });
    expect(outline(data.findings)).toEqual(["error column-missing line 1 Carry"]);
    expect(data.findings[0]?.message).toBe(
      'The table has no column "Carry", which source "Bay table" reads. Did you mean "Cary"? It has "No", "Cary", "Side".',
    );
    expect(data.shots).toEqual([]);
  });

  test("that has a longer name is suggested, but not taken", () => {
    const data = importTable("Carry [yd];Side\n150;3", { columns });
    expect(data.findings[0]?.message).toContain('Did you mean "Carry [yd]"?');
  });

  test("the column that gives the order must be there, too", () => {
    const data = importTable("Carry;Side\n150;3", { columns, source: { orderedBy: "Time" } });
    expect(outline(data.findings)).toEqual(["error column-missing line 1 Time"]);
  });

  test("on another line than stated is one error, which says where it is", () => {
    const data = importTable("Bay 4\n\nCarry;Side\n150;3", { columns });
    expect(outline(data.findings)).toEqual(["error not-a-table line 1"]);
    expect(data.findings[0]?.message).toBe(
      'Line 1 should hold the column names "Carry", "Side", but it reads "Bay 4". Line 3 holds them: write `header row 3` in source "Bay table".',
    );
  });

  test("past the end of the file is one error", () => {
    const data = importTable("Carry;Side\n150;3", { columns, source: { headerRow: 9 } });
    expect(outline(data.findings)).toEqual(["error not-a-table line 9"]);
    expect(data.findings[0]?.message).toContain("the file ends before it");
  });
});

describe("lines", () => {
  test.each([
    ["LF", "\n"],
    ["CRLF", "\r\n"],
    ["CR", "\r"],
  ])("are counted as an editor does, from 1, with %s", (_, end) => {
    const text = ["Carry;Note", "150;", "", '151;"two', 'lines"', ";;", "152;x", ""].join(end);
    const data = importTable(text, { columns: [carry] });
    expect(data.shots.map(({ row }) => row.line)).toEqual([2, 4, 7]);
    expect(readings(data, "carry")).toEqual([150, 151, 152]);
    expect(data.findings).toEqual([]);
  });

  test("may end in different ways in one file", () => {
    expect(readings(importTable("Carry\n150\r\n151\r152", { columns: [carry] }), "carry")).toEqual([
      150, 151, 152,
    ]);
  });
});

describe("quotation marks", () => {
  test("keep separators, quotation marks and line ends inside a cell", () => {
    const text = 'Note,Carry\n"a, ""b""\nc","1,150"\n';
    expect(readings(importTable(text, { columns: [carry] }), "carry")).toEqual([1150]);
  });

  test("inside a cell without them are text", () => {
    expect(readings(importTable('Note;Carry\n5" putt;150\n', { columns: [carry] }), "carry")).toEqual([150]);
  });

  test("that are never closed are one error, where they open", () => {
    const data = importTable('Note;Carry\n"two\nlines";150\nfine;151\n"open;152\nfine;153\n', {
      columns: [carry],
    });
    expect(outline(data.findings)).toEqual(["error file-unreadable line 5 Note"]);
    expect(data.shots).toEqual([]);
  });

  test("that swallow other rows are reported", () => {
    const data = importTable('Note;Carry\n"a;150\nb;151\nc";152\n', { columns: [carry] });
    expect(outline(data.findings)).toEqual(["warning row-ragged line 2"]);
    expect(readings(data, "carry")).toEqual([152]);
  });
});

describe("rows that are no shots", () => {
  const data = (text: string) =>
    importTable(text, { columns: [column("Club", { kind: "club", spellings: [] }), ...columns] });

  test("a row of units, and a header that is repeated, are passed over", () => {
    const read = data("Club;Carry;Side\n;[m];m\n7i;150;3\nClub;Carry;Side\n7i;151;4\n");
    expect([readings(read, "carry"), read.findings]).toEqual([[150, 151], []]);
  });

  test("so is a row of units with figures in them", () => {
    const read = importTable("Ball speed;Carry\n[ms-1];(m)\n48.5;150\n", {
      columns: [column("Ball speed", metricColumn("ball-speed", "m/s")), carry],
    });
    expect([readings(read, "carry"), readings(read, "ball-speed"), read.findings]).toEqual([
      [150],
      [48.5],
      [],
    ]);
  });

  test("a rule under the header is passed over, as in Markdown, and units under it", () => {
    const read = data("|Club|Carry|Side|\n|---|---:|:--:|\n||[m]|[m]|\n|7i|150|3|\n|7i|---|4|\n");
    expect([readings(read, "carry"), read.findings]).toEqual([[150, undefined], []]);
  });

  test.each([
    ["with a word for no reading", ";error;-\n;151;4\n", [undefined, 151]],
    ["with a club", "7i;[lost];-\n7i;151;4\n", [undefined, 151]],
    ["further down", ";151;4\n;[lost];-\n", [151, undefined]],
  ])("a shot that was not measured is not taken for a row of units: %s", (_, rows, carries) => {
    expect(readings(data(`Club;Carry;Side\n${rows}`), "carry")).toEqual(carries);
  });

  test("statistics under the shots are passed over, and reported", () => {
    const read = data("Club;Carry;Side\n7i;150;3\n7i;152;5\n\nAverage;151;4\nStd. dev.;1,4;1,4\nMax;152;5\n");
    expect(readings(read, "carry")).toEqual([150, 152]);
    expect(outline(read.findings)).toEqual([5, 6, 7].map((line) => `warning row-skipped line ${line}`));
  });

  test("a word that may be a statistic is none where it begins row after row", () => {
    const read = importTable("Ball;Carry\nrange;150\nrange;151\nrange;152\nAverage;151\nMax;152\n", {
      columns: [carry],
    });
    expect(readings(read, "carry")).toEqual([150, 151, 152]);
    expect(outline(read.findings)).toEqual([5, 6].map((line) => `warning row-skipped line ${line}`));
  });

  test("nor where it began a shot before, among others", () => {
    const read = importTable("Who;Carry\nMax;150\nBo;151\nMax;152\nMin;150\nAverage;151\n", {
      columns: [carry],
    });
    expect(readings(read, "carry")).toEqual([150, 151, 152]);
    expect(outline(read.findings)).toEqual([5, 6].map((line) => `warning row-skipped line ${line}`));
  });

  test("a row that begins with a word that may be a statistic, or a name, is a shot where it stands alone", () => {
    const read = importTable("Who;Carry\nMax;150\nMax;151\n", { columns: [carry] });
    expect([readings(read, "carry"), read.findings]).toEqual([[150, 151], []]);
  });

  test.each([
    "n=20",
    "N = 20;;",
    "Count: 20",
    ";Shots: 20;",
    "Shots;20;",
    "20 shots;;",
    "Anzahl;;20",
    "Total shots: 20",
  ])("so is a number of shots: %s", (footer) => {
    const read = data(`Club;Carry;Side\n7i;150;3\n7i;151;4\n${footer}\n`);
    expect(readings(read, "carry")).toEqual([150, 151]);
    expect(outline(read.findings)).toEqual(["warning row-skipped line 4"]);
  });

  test.each(["Average of 6 shots", "Averages", "7 iron avg.", "Avg (6)", "St. dev. (m)", "Ø", "Mean PW"])(
    "so is a statistic in more words: %s",
    (word) => {
      const read = data(`Club;Carry;Side\n7i;150;3\n${word};150;3\n`);
      expect(readings(read, "carry")).toEqual([150]);
      expect(outline(read.findings)).toEqual(["warning row-skipped line 3"]);
    },
  );

  test.each(["Averell", "Meanwhile", "7 iron", "Average joe"])(
    "a shot is one whose first word is %s",
    (word) => {
      expect(readings(data(`Club;Carry;Side\n${word};150;3\n`), "carry")).toEqual([150]);
    },
  );

  test.each(["Note: windy", "* to sea level", "(c) of the bay", "measured on a Monday at four", "7 Iron"])(
    "a remark or a heading that stands alone is no shot: %s",
    (text) => {
      const read = importTable(`Shot;Carry;Side\n1;150;3\n${text};;\n2;151;4\n`, { columns });
      expect(readings(read, "carry")).toEqual([150, 151]);
      expect(outline(read.findings)).toEqual(["warning row-skipped line 3"]);
    },
  );

  test("so it is between the edges of a table in Markdown", () => {
    const read = importTable("|Shot|Carry|Side|\n|1|150|3|\n|Note: windy| | |\n", { columns });
    expect(outline(read.findings)).toEqual(["warning row-skipped line 3"]);
  });

  test("a club alone is a shot that was not measured where clubs are read, and so is any name", () => {
    const clubs = column("Club", { kind: "club", spellings: [] });
    const read = importTable("Club;Carry;Side\n7i;150;3\n7 Iron;;\nchipper;;\nNote: windy;;\n", {
      columns: [clubs, ...columns],
    });
    expect(readings(read, "carry")).toEqual([150, undefined, undefined]);
    expect(outline(read.findings)).toEqual([
      "warning row-skipped line 5",
      "warning club-unknown line 4 Club",
    ]);
  });

  test("a text alone is a shot that was not measured where its column is read", () => {
    const where = column("Where", { kind: "block" });
    const read = importTable("Where;Carry\nGate;150\nNote: windy;\n", { columns: [where, carry] });
    expect(readings(read, "carry")).toEqual([150, undefined]);
    expect(outline(read.findings)).toContain("warning block-unknown line 3 Where");
  });

  test("what stands under other column names is another table's, until the header is repeated", () => {
    const read = data(
      "Club;Carry;Side\n7i;150;3\n\nClub;Shots;Mean side\n7i;20;150\nDr;20;200\nClub;Carry;Side\n;m;m\n7i;151;4\n",
    );
    expect(readings(read, "carry")).toEqual([150, 151]);
    expect(outline(read.findings)).toEqual(["warning row-skipped line 4"]);
    const short = data("Club;Carry;Side\n7i;150;3\nClub;Shots\n7i;20\n");
    expect(readings(short, "carry")).toEqual([150]);
  });

  test("a line of a grid is none", () => {
    const read = data("+---+---+\n|Club|Carry|Side|\n+---+---+\n|7i|150|3|\n+===+===+\n".slice(10));
    expect([readings(read, "carry"), read.findings]).toEqual([[150], []]);
  });

  test("a number of shots makes statistics of several rows that may be some, and a shot of one", () => {
    const read = data("Club;Carry;Side\n7i;150;3\nMin;150;3\nMax;150;3\nn=1;;\n");
    expect(readings(read, "carry")).toEqual([150]);
    const who = importTable("Who;Carry\nMax;150\nn=1;\n", { columns: [carry] });
    expect(readings(who, "carry")).toEqual([150]);
  });

  test.each(["Shot 3;;", "3;;", "7i;;", "Hit;150;", "n;20;", "n;3;4"])(
    "a shot that was not measured is none: %s",
    (row) => {
      expect(data(`Club;Carry;Side\n7i;150;3\n${row}\n`).shots).toHaveLength(2);
    },
  );

  test("text under the table is passed over, and reported", () => {
    const read = data("Club;Carry;Side\n7i;150;3\nexported on a Monday\n");
    expect(readings(read, "carry")).toEqual([150]);
    expect(outline(read.findings)).toEqual(["warning row-ragged line 3"]);
  });
});

test("a formula of a spreadsheet that is only a text is that text", () => {
  const clubs = column("Club", { kind: "club", spellings: [{ text: "07", club: "7-iron" }] });
  const read = importTable('="Club";"=""Carry""";Side\n="07";="150.5"; ="3"\n"=""07""";="say ""no""";=4\n', {
    columns: [clubs, ...columns],
  });
  expect(read.shots.map(({ club }) => club)).toEqual(["7-iron", "7-iron"]);
  expect([readings(read, "carry"), readings(read, "offline")]).toEqual([
    [150.5, undefined],
    [3, undefined],
  ]);
  expect(read.findings.map(({ text }) => text)).toEqual(['say "no"', "=4"]);
});

test.each([
  ["of full width", "１５０．５", "－３"],
  ["between marks that nobody sees", "\u200e150.5\u200b", "\u200e-3"],
  ["in quotation marks", "“150.5”", "'-3'"],
  ["that a spreadsheet is told to keep as text", "'150.5", "'-3"],
])("numbers %s are numbers", (_, carry, side) => {
  const read = importTable(`\u200bCarry;Side\n${carry};${side}\n`, { columns });
  expect([readings(read, "carry"), readings(read, "offline"), read.findings]).toEqual([[150.5], [-3], []]);
});

test.each(["\u00ad3", "'3\"", "“3", "3'", "—3"])("%s is none: it may be something else", (side) => {
  const read = importTable(`Carry;Side\n150;${side}\n`, { columns });
  expect(readings(read, "offline")).toEqual([undefined]);
  expect(outline(read.findings)).toEqual(["warning cell-unreadable line 2 Side"]);
});

test.each([
  ["comma", ","],
  ["semicolon", ";"],
] as const)("lines in quotation marks are taken apart at the %s", (separator, mark) => {
  const lines = ["Carry,Side,Note", '150,3,""calm, warm""', "151,4,", "152,,"].map((line) =>
    line.replaceAll(",", mark),
  );
  const text = lines.map((line) => `"${line}"\n`).join("");
  for (const stated of [{}, { separator }]) {
    const read = importTable(text, { columns, source: stated });
    expect([readings(read, "carry"), readings(read, "offline")]).toEqual([
      [150, 151, 152],
      [3, 4, undefined],
    ]);
    expect(read.findings).toEqual([]);
  }
});

test("what may be a minus, but need not be, is not read, and it is said how it can be", () => {
  const read = importTable("Carry;Side\n(150);(3)\n151-;3-\n", { columns });
  expect([readings(read, "carry"), readings(read, "offline")]).toEqual([
    [undefined, undefined],
    [undefined, undefined],
  ]);
  expect(read.findings.map(({ message }) => message.split(". ").slice(-1)[0])).toEqual([
    '"(150)" in column "Carry" is not a number in m; the reading is left unknown.',
    expect.stringContaining('`where "()" is left`'),
    '"151-" in column "Carry" is not a number in m; the reading is left unknown.',
    expect.stringContaining('`where "-" is left`'),
  ]);
});

describe("rows of another length than the header", () => {
  test("leave what is missing unknown, and say so", () => {
    const data = importTable("Carry;Side\n150\n151;4", { columns });
    expect(readings(data, "offline")).toEqual([undefined, 4]);
    expect(outline(data.findings)).toEqual(["warning row-ragged line 2"]);
  });

  test("may end in separators too many", () => {
    expect(importTable("Carry;Side\n150;3;;\n", { columns }).findings).toEqual([]);
  });

  test("are not read where their cells may be shifted", () => {
    const data = importTable("Club,Carry,Side\n7i,150,5,3\n7i,151,4\n", { columns });
    expect(readings(data, "carry")).toEqual([undefined, 151]);
    expect(readings(data, "offline")).toEqual([undefined, 4]);
    expect(outline(data.findings)).toEqual(["warning row-ragged line 2"]);
  });
});
