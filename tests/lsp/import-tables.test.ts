/** What tables are taken for, as an editor shows it before a file is made of them. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { afterEach, expect, test } from "vitest";
import { importTables, type TableImport } from "../../shared/protocol/import-tables.ts";
import { LspClient } from "../support/lsp-client.ts";

let client: LspClient;
afterEach(() => client.stop());

const TABLE = `Shot,Carry (yd),Mood
1,151.5,calm
2,149.0,hasty
3,155.2,calm
4,150.1,calm
`;

const proposalFor = (...tables: string[]) =>
  client.request<TableImport>(importTables.method, { tables: tables.map((table) => client.uri(table)) });

test("each column with its first cells, what it is taken for and how sure that is; the table stays as it is", async () => {
  client = await LspClient.start({ files: { "data/monday.csv": TABLE } });
  const { columns, text, problems } = await proposalFor("data/monday.csv");
  expect(problems).toEqual([]);
  expect(columns.map(({ header }) => header)).toEqual(["Shot", "Carry (yd)", "Mood"]);
  expect(columns[1]).toMatchObject({
    table: "monday.csv",
    meaning: "carry in yd",
    confidence: "sure",
    cells: ["151.5", "149.0", "155.2", "150.1"],
  });
  expect(columns[1]?.questions).toEqual([]);
  expect(columns[2]?.meaning).toBeNull();
  expect(text).toContain('"monday.csv"');
  expect(text).not.toContain(client.folder);
  expect(readFileSync(join(client.folder, "data/monday.csv"), "utf8")).toBe(TABLE);
});

test("what the table does not tell is asked", async () => {
  client = await LspClient.start({ files: { "monday.csv": "Path (°)\n1.5\n-2\n0.5\n" } });
  const { columns, open } = await proposalFor("monday.csv");
  expect(columns[0]).toMatchObject({
    confidence: "doubtful",
    questions: [expect.stringContaining("Which way is positive?")],
  });
  expect(open).toBeGreaterThan(0);
});

test("a table that changes is read again", async () => {
  client = await LspClient.start({ files: { "monday.csv": TABLE } });
  await proposalFor("monday.csv");
  await client.write("monday.csv", TABLE.replace("151.5", "161.5"));
  expect((await proposalFor("monday.csv")).columns[1]?.cells[0]).toBe("161.5");
});

test("what is no table, damaged or not there is said, and the rest is proposed all the same", async () => {
  const files = { "a.csv": TABLE, "prose.txt": "" };
  client = await LspClient.start({ files });
  writeFileSync(join(client.folder, "cut.csv.gz"), gzipSync(TABLE).subarray(0, 30));
  const { problems, columns } = await proposalFor("a.csv", "prose.txt", "gone.csv", "cut.csv.gz");
  expect(columns).toHaveLength(3);
  expect(problems).toEqual([
    "gone.csv: There is no such file, or it cannot be read.",
    "prose.txt: The file is empty. Export the shots again, or leave the file out.",
    expect.stringMatching(/^cut\.csv\.gz: It is packed with gzip, but /),
  ]);
  expect(await proposalFor("gone.csv")).toMatchObject({ text: "", columns: [] });
});

test("what the workspace declares is used: the plan with these blocks, and the source that reads these columns", async () => {
  client = await LspClient.start({
    files: {
      "plan.drill": 'plan "Gate" {\n  for 7-iron\n  block "Start" {\n    10 shots\n  }\n}\n',
      "sources.drill":
        'source "Bay" {\n  column "Path (°)" is club-path in ° positive left\n  column "Drill" is block\n}\n',
      "data/monday.csv": "Path (°),Drill\n1.5,start\n-2,Start\n0.5,Start\n",
    },
  });
  const { text, columns } = await proposalFor("data/monday.csv");
  expect(text).toContain('use "../plan"\nuse "../sources"');
  expect(text).toContain('  plan "Gate"\n');
  expect(text).toContain('  data "monday.csv" from "Bay"\n');
  expect(columns[0]).toMatchObject({
    meaning: "club-path in ° positive left",
    confidence: "sure",
    questions: [],
  });
});
