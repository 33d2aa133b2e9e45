/** A table of many sessions in which each reads its own rows only: it finds what it finds where it reads all of them. */
import { createHash } from "node:crypto";
import { gzipSync } from "node:zlib";
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type DataFiles, importFiles } from "../../server/import/import-files.ts";
import type { Pieces, Watcher } from "../../server/import/pieces.ts";
import type { ScoringInput, Source } from "../../shared/plan-model.ts";
import { column, metricColumn, scoringInput, source } from "../support/scoring-input.ts";

const COLUMNS = [
  column("Who", { kind: "player", spellings: [{ text: "K. Moor", player: "P-01" }] }),
  column("Day", { kind: "date", order: null }),
  column("Carry", metricColumn("carry", "m")),
  column("Path", metricColumn("club-path", "°", "in-to-out")),
];
const HEADER = "Who;Day;Carry;Path";

const sha256 = (content: Uint8Array) => createHash("sha256").update(content).digest("hex");

/** A file that can be looked into anywhere, and how much of it was read. */
class Table implements Pieces {
  readonly size: number;
  read = 0;
  readonly #content: Uint8Array;
  readonly #piece: number;

  constructor(content: Uint8Array, piece = 50) {
    this.#content = content;
    this.#piece = piece;
    this.size = content.length;
  }

  async *[Symbol.asyncIterator]() {
    for (let at = 0; at < this.size; at += this.#piece) {
      const piece = this.#content.subarray(at, at + this.#piece);
      this.read += piece.length;
      yield piece;
    }
  }

  async between(start: number, end: number) {
    this.read += end - start;
    return this.#content.subarray(start, end);
  }

  sha256() {
    return sha256(this.#content);
  }
}

const having = (content: Pieces): DataFiles => ({
  locate: (path) => path,
  read: async () => content,
  sha256,
});

function session(player: string, date: string | null, stated: Partial<Source> = {}): ScoringInput {
  const sources = [source(COLUMNS, stated)];
  return scoringInput({ sources, player: { name: player }, session: { date, player } });
}

const SESSIONS = ["P-01", "P-02", "P-99"].flatMap((player) =>
  ["2026-03-04", "2026-04-03", null].map((date) => session(player, date)),
);

/** Reads the sessions from one file, one after the other: from the second on, each is led to its own rows. */
async function fromParts(content: Uint8Array, sessions: readonly ScoringInput[], piece?: number) {
  const files = having(new Table(content, piece));
  const [first] = sessions;
  if (first !== undefined) await importFiles(first, files);
  const read = [];
  for (const session of sessions) read.push(await importFiles(session, files));
  return read;
}

const alone = (content: Uint8Array, sessions: readonly ScoringInput[], piece?: number) =>
  Promise.all(sessions.map((session) => importFiles(session, having(new Table(content, piece)))));

describe("what a session finds", () => {
  const often = <Value>(value: fc.Arbitrary<Value>, rare: fc.Arbitrary<Value>) =>
    fc.oneof({ weight: 6, arbitrary: value }, { weight: 1, arbitrary: rare });
  const who = often(
    fc.constantFrom("P-01", "P-02", "p 2", "K. Moor"),
    fc.constantFrom("", "-", "é", '"P-02"', "Average", "Min", "Wer länger heißt"),
  );
  const day = often(
    fc.constantFrom("2026-03-04", "2026-03-04 10:42", "3/4/2026", "4/3/2026"),
    fc.constantFrom("", "soon", "13/3/2026", "3/13/2026"),
  );
  const carry = often(fc.constantFrom("150", "160.5"), fc.constantFrom("", "x", "9999", "1;2", '"150', "\0"));
  const shot = fc.tuple(who, day, carry).map(([who, day, carry]) => `${who};${day};${carry};1.5`);
  const other = fc.constantFrom(
    "",
    ";;;",
    HEADER,
    "---;---;---;---",
    "Average;;150;",
    "Min;;1;",
    "[];[];[m];[°]",
    "P-02",
    "Who;Day;Distance;Direction",
    "Note: windy;;;",
    "n = 20;;;",
    "+---+---+",
  );
  const many = fc.tuple(
    fc.constantFrom("P-01;;1;1", ";;1;1", "P-02;soon;1;1"),
    fc.integer({ min: 150, max: 260 }),
  );
  const lines = fc.array(
    fc.oneof(
      { weight: 12, arbitrary: shot },
      { weight: 3, arbitrary: other },
      {
        weight: 1,
        arbitrary: many.map(([row, count]) => Array.from({ length: count }, () => row).join("\n")),
      },
    ),
    { maxLength: 40 },
  );
  const encoded = fc.constantFrom(
    (text: string) => new TextEncoder().encode(text),
    (text: string) => new TextEncoder().encode(`\uFEFF${text}`),
    (text: string) => new Uint8Array(Buffer.from(text, "latin1")),
    (text: string) => new Uint8Array(Buffer.from(`\uFEFF${text}`, "utf16le")),
    (text: string) => new Uint8Array(Buffer.from(`\uFEFF${text}`, "utf16le").swap16()),
    (text: string) => new Uint8Array(gzipSync(text)),
    (text: string) => new Uint8Array(gzipSync(Buffer.from(`\uFEFF${text}`, "utf16le"))),
    (text: string) => new Uint8Array(gzipSync(text).subarray(0, -9)),
  );

  test("does not depend on who read the table before", async () => {
    const lineEnd = fc.constantFrom("\n", "\r\n", "\r");
    await fc.assert(
      fc.asyncProperty(
        lines,
        lineEnd,
        encoded,
        fc.integer({ min: 1, max: 300 }),
        async (lines, end, encode, piece) => {
          const content = encode([HEADER, ...lines].join("\n").replaceAll("\n", end));
          expect(await fromParts(content, SESSIONS, piece)).toEqual(await alone(content, SESSIONS, piece));
        },
      ),
      { numRuns: 60 },
    );
  });

  test("does not depend on that in JSON Lines either", async () => {
    const shot = fc.record(
      {
        Who: who,
        Day: day,
        Carry: fc.oneof(fc.double(), carry),
        Path: fc.constantFrom(1.5, null),
        More: fc.constant(1),
      },
      { requiredKeys: ["Who"] },
    );
    const line = fc.oneof(
      { weight: 40, arbitrary: shot.map((value) => JSON.stringify(value)) },
      { weight: 1, arbitrary: fc.constantFrom("", "7", '{"Who":', "  ") },
    );
    const lineEnd = fc.oneof(
      { weight: 5, arbitrary: fc.constant("\n") },
      { weight: 1, arbitrary: fc.constant("\r\n") },
    );
    await fc.assert(
      fc.asyncProperty(
        fc.array(line, { minLength: 1, maxLength: 40 }),
        lineEnd,
        encoded,
        async (lines, end, encode) => {
          const content = encode(lines.join(end));
          expect(await fromParts(content, SESSIONS)).toEqual(await alone(content, SESSIONS));
        },
      ),
      { numRuns: 60 },
    );
  });

  test.each([
    ["no table", "nothing\nat all\n"],
    ["another header", "Who;Day;Carry\nP-01;2026-03-04;150\n"],
    ["nothing under the header", HEADER],
    ["JSON", '[{"Who":"P-01","Day":"2026-03-04","Carry":150,"Path":1}]'],
    ["an empty file", "\n"],
  ])("is the same of %s", async (_, text) => {
    const content = new TextEncoder().encode(text);
    expect(await fromParts(content, SESSIONS)).toEqual(await alone(content, SESSIONS));
  });
});

describe("how much is read", () => {
  const PLAYERS = 100;
  const ROWS = 2000;
  const NAMES = Array.from({ length: PLAYERS }, (_, player) => `P-${player + 100}`);
  const content = new TextEncoder().encode(
    `${HEADER}\n${NAMES.map((name) => `${name};2026-03-04;150;1\n`.repeat(ROWS)).join("")}`,
  );
  const sessions = NAMES.map((name) => session(name, "2026-03-04"));

  test("the table twice, and of each session its own rows and a little beyond", async () => {
    const table = new Table(content, 1 << 16);
    for (const session of sessions) {
      const { shots } = await importFiles(session, having(table));
      expect(shots).toHaveLength(ROWS);
    }
    expect(table.read).toBeLessThan(5.5 * table.size);
  });

  test.each([
    [
      "in UTF-16",
      (text: Uint8Array) => new Uint8Array(Buffer.from(`\uFEFF${Buffer.from(text)}`, "utf16le")),
      5.5,
    ],
    ["packed, which is not read any more then", (text: Uint8Array) => new Uint8Array(gzipSync(text)), 2],
  ])("so it is %s", async (_, encode, times) => {
    const table = new Table(encode(content), 1 << 16);
    for (const session of sessions) {
      const { shots, files } = await importFiles(session, having(table));
      expect(shots).toHaveLength(ROWS);
      expect(files[0]?.sha256).toBe(table.sha256());
    }
    expect(table.read).toBeLessThanOrEqual(times * table.size);
  });

  test("as a whole by whoever has other columns, or another source", async () => {
    const table = new Table(content, 1 << 16);
    for (const [input] of [[session("P-100", null)], [session("P-100", null, { blanks: ["x"] })]] as const)
      await importFiles(input, having(table));
    expect(table.read).toBe(2 * table.size);
  });

  test("whoever is told to stop keeps nobody else from reading", async () => {
    const table = new Table(content, 1 << 16);
    const files = having(table);
    const [first, second, third] = sessions as [ScoringInput, ScoringInput, ScoringInput];
    await importFiles(first, files);
    const controller = new AbortController();
    const stopping: Watcher = {
      signal: controller.signal,
      progress: () => controller.abort(new Error("enough")),
    };
    const [stopped, read] = await Promise.allSettled([
      importFiles(second, files, stopping),
      importFiles(third, files),
    ]);
    expect(stopped).toMatchObject({ status: "rejected", reason: new Error("enough") });
    expect(read).toMatchObject({ status: "fulfilled", value: { files: [{ shots: ROWS }] } });
  });
});
