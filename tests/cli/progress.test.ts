/** How far large tables are read is shown to whoever waits at a terminal. */
import { beforeAll, expect, test } from "vitest";
import { drillwright } from "./command-line.ts";
import { POOR, practice } from "./practice.ts";

/** Every row has a long remark, in a column that the source does not read. */
let large: string;
beforeAll(() => {
  const [header, ...rows] = POOR.trimEnd().split("\n");
  const remark = "the wind came from the lake, ".repeat(100);
  const many = Array.from({ length: 700 }, () => rows).flat();
  large = [`${header},Remark`, ...many.map((row) => `${row},"${remark}"`)].join("\n");
});

test.each([
  ["score", ["score", "--format", "json"]],
  ["import", ["import", "data/monday.csv"]],
])("%s tells it on one line, which is gone in the end", async (_, words) => {
  const files = practice(large);
  const watched = await drillwright(files, words, { isTTY: true, env: { NO_COLOR: "1" } });
  const shown = watched.stderr.split("\r\u001b[K");
  expect(shown.slice(1, -1)).not.toEqual([]);
  for (const line of shown.slice(1, -1)) expect(line).toMatch(/^data\/monday\.csv: \d\d %$/);
  const unwatched = await drillwright(files, words);
  // What is written besides is the same.
  expect([shown[0], shown.at(-1), watched.stdout]).toEqual(["", unwatched.stderr, unwatched.stdout]);
});

test("nothing is told of tables that nobody has to wait for", async () => {
  expect((await drillwright(practice(), ["score"], { isTTY: true })).stderr).toBe("");
});
