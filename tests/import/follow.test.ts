/** A session while its tables are written: half-written rows, emptied, rewritten and replaced files. */
import { createHash } from "node:crypto";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { FollowedSession } from "../../server/import/follow/followed-session.ts";
import { FollowedTable } from "../../server/import/follow/followed-table.ts";
import { SETTLED } from "../../server/import/follow/pace.ts";
import { column, metricColumn, scoringInput, source } from "../support/scoring-input.ts";
import { importSession } from "./import-session.ts";
import { outline, readings } from "./import-table.ts";

const columns = [column("Carry", metricColumn("carry", "m"))];
const input = scoringInput({ sources: [source(columns)] });

/** A file in memory. */
class Written {
  bytes: Uint8Array | undefined;
  modified = 0;
  /** How many bytes were read of it. */
  read = 0;

  write(text: string | undefined): void {
    this.bytes = text === undefined ? undefined : new TextEncoder().encode(text);
    this.modified++;
  }

  readonly file = {
    state: async () =>
      this.bytes === undefined ? undefined : { size: this.bytes.length, modified: this.modified },
    read: async (from: number, to: number) => {
      const bytes = (this.bytes ?? new Uint8Array()).slice(from, to);
      this.read += bytes.length;
      return bytes;
    },
  };
}

function hash() {
  const hash = createHash("sha256");
  return { update: (bytes: Uint8Array) => void hash.update(bytes), soFar: () => hash.copy().digest("hex") };
}

function following(...names: string[]) {
  const written = names.map(() => new Written());
  const tables = names.map((path, at) => ({
    path,
    source: "Bay table",
    file: (written[at] as Written).file,
  }));
  const session = new FollowedSession(input, tables, hash);
  return { written: written as [Written, ...Written[]], session };
}

const carries = (session: FollowedSession) => readings(session.data(), "carry");

test("a row counts when its line has ended, and whatever is added is read once", async () => {
  const {
    written: [table],
    session,
  } = following("shots.csv");
  expect([await session.look(), carries(session)]).toEqual([false, []]);
  table.write("Carry;No");
  expect([await session.look(), carries(session), session.data().findings]).toEqual([true, [], []]);
  table.write("Carry;Note\n150;a\n15");
  expect([await session.look(), carries(session)]).toEqual([true, [150]]);
  expect(await session.look()).toBe(false);
  table.write('Carry;Note\n150;a\n151;"two\n');
  await session.look();
  expect(carries(session)).toEqual([150]);
  table.write('Carry;Note\n150;a\n151;"two\nlines"\n152;c\n');
  await session.look();
  expect(carries(session)).toEqual([150, 151, 152]);
  expect(readings(await session.settledData(), "carry")).toEqual([150, 151, 152]);
});

test("of what stood there already no more is read than tells that it is the same", async () => {
  const {
    written: [table],
    session,
  } = following("shots.csv");
  let text = `Carry\n${"150\n".repeat(100_000)}`;
  table.write(text);
  await session.look();
  const before = table.read;
  text += "151\n";
  table.write(text);
  await session.look();
  expect(table.read - before).toBeLessThan(text.length / 5);
  expect(session.data().shots).toHaveLength(100_001);
});

describe("everything is read again where the table", () => {
  test.each([
    ["was emptied and begun again", "", "Carry\n152\n"],
    ["is shorter", undefined, "Carry\n152\n"],
    ["was corrected and is longer", undefined, `Carry\n159\n151\n152\n`],
    ["is longer, but another one", undefined, `Carry\n152\n${"153\n".repeat(10)}`],
    ["has the same length", undefined, "Carry\n250\n251\n"],
    ["was gone for a while", "gone", "Carry\n152\n"],
  ])("%s", async (_, between, after) => {
    const {
      written: [table],
      session,
    } = following("shots.csv");
    table.write("Carry\n150\n151\n");
    await session.look();
    if (between !== undefined) {
      table.write(between === "gone" ? undefined : between);
      expect([await session.look(), carries(session)]).toEqual([true, []]);
    }
    table.write(after);
    expect(await session.look()).toBe(true);
    expect(carries(session)).toEqual(after.trim().split("\n").slice(1).map(Number));
    expect(session.data().findings).toEqual([]);
  });
});

test("several tables keep their order, and findings are those of the tables as they are", async () => {
  const {
    written: [first, second],
    session,
  } = following("a.csv", "b.csv");
  second?.write("Carry\n160\nx\n");
  await session.look();
  first.write("Carry\n150\n");
  await session.look();
  expect(carries(session)).toEqual([150, 160, undefined]);
  expect(outline(session.data().findings)).toEqual(["warning cell-unreadable line 3 Carry"]);
  second?.write("Carry\n161\n");
  await session.look();
  expect([carries(session), session.data().findings]).toEqual([[150, 161], []]);
});

test("a packed table is told that it cannot be followed", async () => {
  const {
    written: [table],
    session,
  } = following("shots.csv.gz");
  table.bytes = Uint8Array.of(0x1f, 0x8b, 8, 0);
  table.modified++;
  await session.look();
  expect(outline(session.data().findings)).toEqual(["error file-unreadable"]);
});

test("however a table is written, in the end it is the table as it is read at once", async () => {
  const row = fc.constantFrom("150\n", "1,5\n", '"a\nb"\n', "\n", "x\n", "151\r\n", "é\n");
  const parts = fc.array(fc.oneof(row, fc.constantFrom("1", "5", '"', "\n")), { maxLength: 12 });
  await fc.assert(
    fc.asyncProperty(parts, fc.nat(3), async (parts, restarts) => {
      const {
        written: [table],
        session,
      } = following("shots.csv");
      let text = "Carry\n";
      for (const [at, part] of parts.entries()) {
        text = restarts > 0 && at === restarts ? `Carry\n${part}` : text + part;
        table.write(text);
        await session.look();
        session.data();
      }
      table.write(`${text}\n`);
      await session.look();
      const content = table.bytes;
      const whole = importSession(input, [{ path: "shots.csv", source: "Bay table", content, sha256: "" }]);
      const settled = await session.settledData();
      expect(settled.shots).toEqual(whole.shots);
      expect(settled.findings).toEqual(whole.findings);
      const isBroken = whole.findings.some(({ code }) => code === "file-unreadable");
      if (!isBroken) expect(session.data().shots).toEqual(whole.shots);
    }),
    { numRuns: 300 },
  );
});

describe("a table that is held", () => {
  const looks = async (table: FollowedTable, times: number) => {
    const changes: boolean[] = [];
    for (let look = 0; look < times; look++) changes.push(await table.look());
    return changes.lastIndexOf(true);
  };

  test("counts as it stands at first, grows with what is added, and settles when nothing more comes", async () => {
    const written = new Written();
    written.write("Carry\n15");
    const table = new FollowedTable(written.file);
    expect([await table.look(), table.isGrowing]).toEqual([true, false]);
    expect(await looks(table, 2 * SETTLED)).toBe(-1);
    written.write("Carry\n152\n1");
    expect([await table.look(), table.isGrowing]).toEqual([true, true]);
    expect(await looks(table, SETTLED)).toBe(SETTLED - 1);
    expect([table.isGrowing, await looks(table, 2 * SETTLED)]).toEqual([false, -1]);
  });

  test("is compared byte by byte where somebody says that it was written", async () => {
    const written = new Written();
    written.write("Carry\n150\n");
    const table = new FollowedTable(written.file);
    await table.look();
    written.bytes = new TextEncoder().encode("Carry\n250\n"); // within a tick of the clock
    expect([await table.look(), await table.look(true), await table.look(true)]).toEqual([
      false,
      true,
      false,
    ]);
    expect(new TextDecoder().decode(table.content)).toBe("Carry\n250\n");
  });

  test("is never growing where it is packed: half of it says nothing", async () => {
    const written = new Written();
    const table = new FollowedTable(written.file);
    await table.look();
    written.bytes = Uint8Array.of(0x1f, 0x8b, 8, 0);
    written.modified++;
    expect([await table.look(), table.isGrowing]).toEqual([true, false]);
  });

  test("is the file, whatever happens to it", async () => {
    const text = fc.constantFrom("", "Carry\n", "Carry\n150\n", "Carry\n250\n", "x".repeat(200));
    const step = fc.oneof(
      fc.record({ add: text }),
      fc.record({ put: text }),
      fc.constant({ put: undefined }),
      fc.constant({}),
    );
    await fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 12 }), async (steps) => {
        const written = new Written();
        const table = new FollowedTable(written.file);
        let stands: string | undefined;
        for (const step of steps) {
          if ("add" in step) stands = (stands ?? "") + step.add;
          else if ("put" in step) stands = step.put;
          if ("add" in step || "put" in step) written.write(stands);
          await table.look();
          expect(table.content && new TextDecoder().decode(table.content)).toBe(stands);
        }
      }),
      { numRuns: 300 },
    );
  });
});
