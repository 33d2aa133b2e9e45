/**
 * What a command costs as a whole process, beside a Node that does nothing. `npm run bench` builds and runs it. It
 * prints and decides nothing.
 */
import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { printFigure, printRatio } from "./figures.ts";

const RUNS = 20;
const FILES = 1_000;
const ROWS = 100;

const root = fileURLToPath(new URL("../../", import.meta.url));
const program = join(root, "dist/cli/drillwright.cjs");
const folder = mkdtempSync(join(tmpdir(), "drillwright-bench-"));

const PLAN = `plan "Start line" {
  for 7-iron
  block "Gate" test {
    ${ROWS} shots
    target start-direction within ±2°
    success {
      at least ${ROWS / 2} of ${ROWS} shots on target
      average carry at least 150 yd at 90 % confidence
      at least 60 % of shots with start-direction within ±3° at 80 % confidence
    }
  }
}
`;

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
  for (let file = 0; file < FILES; file++) write(`many/plan-${file}.drill`, PLAN);

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
  measure([nothing, version, checkOne, score], RUNS);

  const checkMany = contender(`drillwright check, ${FILES} files`, program, "check", "many");
  measure([checkMany], 5);

  printRatio("version / nothing", version.times, nothing.times);
  printRatio("check of one file / nothing", checkOne.times, nothing.times);
  printRatio("score / check of one file", score.times, checkOne.times);
  printRatio(`check of ${FILES} files / of one`, checkMany.times, checkOne.times);
} finally {
  rmSync(folder, { recursive: true });
}
