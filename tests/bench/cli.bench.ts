/**
 * What a command costs as a whole process, beside a Node that does nothing and beside what a team would write instead:
 * a JSON plan checked by ajv's command line, a script over a CSV library, SQL in an embedded engine. `npm run bench` builds and runs
 * it. It prints and decides nothing.
 */
import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { printFigure, printRatio } from "./figures.ts";
import { peerFile } from "./peers.ts";

const RUNS = 20;
const FILES = 1_000;
const ROWS = 100;

const root = fileURLToPath(new URL("../../", import.meta.url));
const program = join(root, "dist/cli/drillwright.cjs");
const folder = mkdtempSync(join(tmpdir(), "drillwright-bench-"));

/** @param more to add to the numbers of the lines, so that nothing is asked twice. */
const plan = (more = 0) => `plan "Start line" {
  for 7-iron
  block "Gate" test {
    ${ROWS} shots
    target start-direction within ±${2 + more / FILES}°
    success {
      at least ${ROWS / 2} of ${ROWS} shots on target
      average carry at least ${150 + more / FILES} yd at 90 % confidence
      at least 60 % of shots with start-direction within ±${3 + more / FILES}° at 80 % confidence
    }
  }
}
`;
const PLAN = plan();

const SESSION = `player "P-01" {
  right-handed
}

source "Table" {
  column "Start" is start-direction in ° positive right
  column "Carry" is carry in yd
}

session "Monday" {
  plan "Start line"
  player "P-01"
  data "shots.csv" from "Table"
}
`;

/** A table whose values lie on either side of what the plan asks for. */
function table(): string {
  const rows = Array.from({ length: ROWS }, (_, row) => `${((row * 7) % 9) - 4},${140 + ((row * 11) % 23)}`);
  return `Start,Carry\n${rows.join("\n")}\n`;
}

/** The plan as JSON, and a schema for it. */
const JSON_PLAN = JSON.stringify({
  plan: "Start line",
  club: "7-iron",
  blocks: [{ name: "Gate", kind: "test", shots: ROWS, success: [{ atLeast: ROWS / 2, of: ROWS }] }],
});
const JSON_SCHEMA = JSON.stringify({
  type: "object",
  required: ["plan", "blocks"],
  properties: {
    plan: { type: "string" },
    club: { type: "string" },
    blocks: {
      type: "array",
      items: {
        type: "object",
        required: ["name", "kind", "shots", "success"],
        properties: {
          name: { type: "string" },
          kind: { enum: ["warm-up", "baseline", "blocked", "test"] },
          shots: { type: "integer", minimum: 1 },
          success: { type: "array", items: { type: "object" } },
        },
      },
    },
  },
});

/** The three goals, counted by hand over a CSV library. */
const CSV_SCRIPT = `
const Papa = require(${JSON.stringify(peerFile("papaparse"))});
const text = require("fs").readFileSync("session/shots.csv", "utf8");
const { data } = Papa.parse(text, { header: true, dynamicTyping: true, skipEmptyLines: true });
const within = (limit) => data.filter((shot) => Math.abs(shot.Start) <= limit).length;
const carry = data.reduce((sum, shot) => sum + shot.Carry, 0) / data.length;
console.log(within(2) >= ${ROWS / 2}, carry >= 150, within(3) >= ${ROWS * 0.6});
`;

/** The same in SQL. */
const SQL_SCRIPT = `
const { DuckDBInstance } = require(${JSON.stringify(peerFile("@duckdb/node-api"))});
(async () => {
  const connection = await (await DuckDBInstance.create(":memory:")).connect();
  const result = await connection.runAndReadAll(
    "select count(*) filter (abs(Start) <= 2) >= ${ROWS / 2}, avg(Carry) >= 150, " +
      "count(*) filter (abs(Start) <= 3) >= ${ROWS * 0.6} from read_csv('session/shots.csv')",
  );
  console.log(result.getRows());
})();
`;

function write(path: string, text: string): void {
  mkdirSync(dirname(join(folder, path)), { recursive: true });
  writeFileSync(join(folder, path), text);
}

interface Contender {
  readonly name: string;
  readonly words: readonly string[];
  readonly times: number[];
}

function contender(name: string, ...words: readonly string[]): Contender {
  return { name, words, times: [] };
}

/** Milliseconds from start to end. */
function time({ words }: Contender): number {
  const start = performance.now();
  const { status, stderr } = spawnSync(process.execPath, words, { cwd: folder, encoding: "utf8" });
  const elapsed = performance.now() - start;
  if (status !== 0) throw new Error(`${words.join(" ")} answered ${status}: ${stderr}`);
  return elapsed;
}

/** Takes turns, so that whatever else the machine does meets all alike. The first turn warms the caches. */
function measure(contenders: readonly Contender[], runs: number): void {
  for (const each of contenders) time(each);
  for (let run = 0; run < runs; run++) for (const each of contenders) each.times.push(time(each));
  for (const { name, times } of contenders) printFigure(name, times);
}

try {
  write("one/irons.drill", PLAN);
  write("session/monday.drill", `${PLAN}\n${SESSION}`);
  write("session/shots.csv", table());
  write("one/irons.json", JSON_PLAN);
  write("schema.json", JSON_SCHEMA);
  write("csv.cjs", CSV_SCRIPT);
  write("sql.cjs", SQL_SCRIPT);
  for (let file = 0; file < FILES; file++) {
    write(`many/plan-${file}.drill`, PLAN);
    write(`different/plan-${file}.drill`, plan(file));
    write(`many-json/plan-${file}.json`, JSON_PLAN);
  }

  const nothing = contender("node -e 0", "-e", "0");
  const version = contender("drillwright --version", program, "--version");
  const checkOne = contender("drillwright check, one file", program, "check", "one/irons.drill");
  const score = contender(
    `drillwright score, ${ROWS} rows`,
    program,
    "score",
    "session",
    "--fail-on",
    "never",
  );
  const ajv = contender(
    "ajv on a JSON plan, one file",
    peerFile("ajv-cli/dist/index.js"),
    ...["validate", "-s", "schema.json", "-d", "one/irons.json"],
  );
  const script = contender(`script over a CSV library, ${ROWS} rows`, "csv.cjs");
  const sql = contender(`SQL in the embedded engine, ${ROWS} rows`, "sql.cjs");
  measure([nothing, version, checkOne, ajv, score, script, sql], RUNS);

  const checkMany = contender(`drillwright check, ${FILES} files`, program, "check", "many");
  const checkDifferent = contender(
    `drillwright check, ${FILES} files, other numbers in each`,
    program,
    "check",
    "different",
  );
  const ajvMany = contender(
    `ajv on ${FILES} JSON plans`,
    peerFile("ajv-cli/dist/index.js"),
    ...["validate", "-s", "schema.json", "-d", "many-json/*.json"],
  );
  measure([checkMany, checkDifferent, ajvMany], 5);

  printRatio("version / nothing", version.times, nothing.times);
  printRatio("check of one file / nothing", checkOne.times, nothing.times);
  printRatio("check of one file, against ajv", checkOne.times, ajv.times, 0.6);
  printRatio(`score of ${ROWS} rows, against SQL`, score.times, sql.times, 0.7);
  printRatio(`score of ${ROWS} rows, against the script`, score.times, script.times);
  printRatio("score / check of one file", score.times, checkOne.times);
  printRatio(`check of ${FILES} files, against ajv`, checkMany.times, ajvMany.times, 2);
  printRatio(
    `check of ${FILES} files with other numbers in each, against ajv`,
    checkDifferent.times,
    ajvMany.times,
    2,
  );
  printRatio(`check of ${FILES} files / of one`, checkMany.times, checkOne.times);
} finally {
  rmSync(folder, { recursive: true });
}
