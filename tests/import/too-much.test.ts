/** Tables larger or stranger than any practice: what they say is bounded, and helps. */
import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";
import { type DataFiles, importFiles } from "../../server/import/import-files.ts";
import { propose } from "../../server/import/propose/propose.ts";
import { libraryVocabulary } from "../../server/node/vocabulary.ts";
import { dataSection } from "../../server/report/sections/data.ts";
import type { ScoreReport } from "../../shared/score-report.ts";
import { column, metricColumn, scoringInput, source } from "../support/scoring-input.ts";
import { importTable, outline } from "./import-table.ts";

const columns = [
  column("Carry", metricColumn("carry", "m")),
  column("Path", metricColumn("club-path", "°", "right")),
];

test("a cell that cannot be read in every row is listed a few times, and counted", () => {
  const data = importTable(`Carry;Path\n${"far;out\n".repeat(20_000)}`, { columns });
  expect(data.shots).toHaveLength(20_000);
  const summaries = data.findings.filter(({ count }) => count !== undefined);
  expect(data.findings).toHaveLength(402);
  expect(summaries.map(({ code, column, count }) => [code, column, count])).toEqual([
    ["cell-unreadable", "Carry", 19_800],
    ["cell-unreadable", "Path", 19_800],
  ]);
  const report = { data: data.files, assignment: data.assignment, findings: data.findings } as ScoreReport;
  expect(dataSection(report, 10).entries.at(-1)?.text).toBe(
    'and 39990 more: 19995 in column "Carry", 19995 in column "Path"',
  );
});

test("a line that does not end is given up, and named", () => {
  const data = importTable(`Carry;Path\n150;1\n${"x".repeat(9_000_000)}`, { columns });
  expect(data.shots).toEqual([]);
  expect(outline(data.findings)).toEqual(["error file-unreadable line 3 Carry"]);
  expect(data.findings[0]?.message).toMatch(
    /^What begins in line 3 goes on for more than 4 million characters/,
  );
});

test("a column among thousands is read, and one that is missing is asked for in a sentence", () => {
  const names = Array.from({ length: 5000 }, (_, place) => (place === 4000 ? "Carry" : `Column ${place}`));
  const row = names.map((_, place) => place % 300).join(";");
  const table = `${names.join(";")}\n${`${row}\n`.repeat(20)}`;
  const [first, second] = columns as [(typeof columns)[0], (typeof columns)[0]];
  expect(importTable(table, { columns: [first] }).shots).toHaveLength(20);
  const [missing] = importTable(table, { columns: [first, second] }).findings;
  expect(missing?.code).toBe("column-missing");
  expect(missing?.message.length).toBeLessThan(500);
});

test("what is packed small and unpacks without an end is given up", async () => {
  const packed = new Uint8Array(gzipSync(`Carry\n${"1\n".repeat(1_100_000)}`));
  expect(packed.length).toBeLessThan(10_000);
  const files: DataFiles = { locate: (path) => path, read: async () => packed, sha256: () => "" };
  const [carry] = columns as [(typeof columns)[0]];
  const data = await importFiles(scoringInput({ sources: [source([carry])] }), files);
  expect(data.shots).toEqual([]);
  expect(data.findings.map(({ code, message }) => [code, message.slice(0, 84)])).toEqual([
    [
      "file-unreadable",
      'The file holds more than 1 million shots of session "Test session", which is more th',
    ],
  ]);
});

test("of more sessions than anybody declares the first are proposed, and that is said", async () => {
  const rows = Array.from({ length: 20_000 }, (_, row) => `P-${row};2026-03-04;150\n`).join("");
  const { sessions, text } = propose([{ path: "team.csv", content: `Player;Date;Carry (m)\n${rows}` }], {
    vocabulary: await libraryVocabulary(),
  });
  expect(sessions).toHaveLength(2000);
  expect(text.trimEnd().split("\n").at(-1)).toMatch(
    /^\/\/ settle: "team\.csv" holds more than 2000 sessions, and those that come first in it are proposed\./,
  );
});
