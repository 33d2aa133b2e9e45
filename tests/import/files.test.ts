/** Files that come in pieces, packed or not, watched and stopped. */
import { createHash } from "node:crypto";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { describe, expect, onTestFinished, test } from "vitest";
import { type DataFiles, importFiles } from "../../server/import/import-files.ts";
import type { Pieces } from "../../server/import/pieces.ts";
import { dataFilesOnDisk } from "../../server/node/data-files.ts";
import { column, metricColumn, NOWHERE, scoringInput, source } from "../support/scoring-input.ts";
import { outline, readings } from "./import-table.ts";

const columns = [column("Carry", metricColumn("carry", "m"))];
const input = scoringInput({ sources: [source(columns)] });
const TEXT = `Carry;Note\n${Array.from({ length: 500 }, (_, row) => `${row};é\n`).join("")}`;
const bytes = new TextEncoder().encode(TEXT);
const sha256 = (content: Uint8Array) => createHash("sha256").update(content).digest("hex");

function inPieces(content: Uint8Array, size: number): Pieces {
  return {
    async *[Symbol.asyncIterator]() {
      for (let at = 0; at < content.length; at += size) yield content.subarray(at, at + size);
    },
    sha256: () => sha256(content),
    size: content.length,
  };
}

const having = (content: Uint8Array | Pieces | undefined): DataFiles => ({
  locate: (path) => path,
  read: async () => content,
  sha256,
});

describe("the same shots and the hash of the file as it is stored", () => {
  const packed = new Uint8Array(gzipSync(bytes));
  test.each([
    ["at once", bytes, bytes],
    ["in pieces", inPieces(bytes, 7), bytes],
    ["packed", packed, packed],
    ["packed, in pieces", inPieces(packed, 5), packed],
  ])("%s", async (_, content, stored) => {
    const data = await importFiles(input, having(content));
    expect(readings(data, "carry")).toEqual(Array.from({ length: 500 }, (_, row) => row));
    if (stored !== undefined) expect(data.files[0]?.sha256).toBe(sha256(stored));
    expect(data.findings.filter(({ severity }) => severity === "error")).toEqual([]);
  });
});

describe("one error", () => {
  const packed = new Uint8Array(gzipSync(bytes));
  test.each([
    ["where the packing is cut short", packed.subarray(0, packed.length - 20), "file-unreadable"],
    [
      "where the packing is damaged",
      Uint8Array.from(packed, (byte, at) => (at > 12 ? byte ^ 0x5a : byte)),
      "file-unreadable",
    ],
    [
      "where two were packed one behind the other",
      new Uint8Array([...gzipSync(bytes), ...gzipSync(bytes)]),
      "file-unreadable",
    ],
    ["where nothing but a gzip header is there", packed.subarray(0, 2), "file-unreadable"],
    ["where what was packed is no table", new Uint8Array(gzipSync(new Uint8Array(100_000))), "not-a-table"],
    ["where there is no file", undefined, "file-missing"],
    ["where it is empty", new Uint8Array(), "file-empty"],
    ["where no piece comes", inPieces(new Uint8Array(), 9), "file-empty"],
  ])("%s", async (_, content, code) => {
    const data = await importFiles(input, having(content));
    expect(data.findings.map((finding) => [finding.severity, finding.code])).toEqual([["error", code]]);
    expect(data.shots).toEqual([]);
  });
});

test("the hash is that of the whole file though reading stopped early", async () => {
  const data = await importFiles(input, having(inPieces(new TextEncoder().encode(`nothing\n${TEXT}`), 100)));
  expect(outline(data.findings)).toEqual(["error not-a-table line 1"]);
  expect(data.files[0]?.sha256).toBe(sha256(new TextEncoder().encode(`nothing\n${TEXT}`)));
});

test("progress is told after every piece, and reading stops when it is told to", async () => {
  const seen: number[] = [];
  const controller = new AbortController();
  const reading = importFiles(input, having(inPieces(bytes, 1000)), {
    signal: controller.signal,
    progress: (file, read, size) => {
      seen.push(read);
      expect([file, size]).toEqual(["shots.csv", bytes.length]);
      if (read >= 2000) controller.abort(new Error("enough"));
    },
  });
  await expect(reading).rejects.toThrow("enough");
  expect(seen).toEqual([1000, 2000]);
});

test("a large file on disk is read in pieces", async () => {
  const folder = mkdtempSync(join(tmpdir(), "drillwright-"));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  const rows = `${"x".repeat(100)};1\n`.repeat(50_000);
  writeFileSync(join(folder, "shots.csv"), `Note;Who;Carry\n${rows}y;2;150\n`);
  const columns = [
    column("Who", { kind: "player", spellings: [{ text: "2", player: "P-01" }] }),
    column("Carry", metricColumn("carry", "m")),
  ];
  const split = scoringInput({
    sources: [source(columns)],
    session: {
      data: [{ path: "shots.csv", source: "Bay table", location: { ...NOWHERE, file: "a.drill" } }],
    },
  });
  const pieces: number[] = [];
  const data = await importFiles(split, dataFilesOnDisk(folder), {
    progress: (_, read) => pieces.push(read),
  });
  expect(readings(data, "carry")).toEqual([150]);
  expect(data.files[0]).toMatchObject({ shots: 1, others: 50_000 });
  expect(pieces.length).toBeGreaterThan(10);
});
