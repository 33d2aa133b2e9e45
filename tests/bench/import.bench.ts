/**
 * Reading sessions out of a season's export of a million rows: one player's day, all days of a player, all days of everybody,
 * and every row as one session. Beside a plain streaming reader that only adds up a column, and an embedded analytical engine.
 * It prints and decides nothing.
 */
import { spawnSync } from "node:child_process";
import { closeSync, mkdtempSync, openSync, rmSync, writeSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { median } from "./figures.ts";

const ROWS = 1_000_000;
const RUNS = 3;
const PLAYERS = 40;
const DAYS = 250;

const HEADER =
  "Player,Date,Club,Club speed (mph),Ball speed (mph),Attack (deg),Path (deg),Face (deg),Carry (yd),Side (yd),Time,Remark";
const CLUBS = ["7i", "Dr", "GW"];

const folder = mkdtempSync(join(tmpdir(), "drillwright-bench-"));
const file = join(folder, "season.csv");
const program = fileURLToPath(new URL("import-season.ts", import.meta.url));

/** Shots of a team, day after day; values that vary and are plausible. */
function writeSeason(): void {
  const output = openSync(file, "w");
  let lines = [HEADER];
  for (let row = 0; row < ROWS; row++) {
    const player = String(1 + (Math.floor(row / 100) % PLAYERS)).padStart(2, "0");
    const day = new Date(Date.UTC(2026, 0, 1 + Math.floor((row * DAYS) / ROWS))).toISOString().slice(0, 10);
    const wander = (step: number, width: number) => ((row * step) % width) - width / 2;
    const clock = new Date((row % 86_400) * 1000).toISOString().slice(11, 19);
    lines.push(
      `P-${player},${day},${CLUBS[row % 3]},${(80 + wander(7, 9)).toFixed(1)},${(110 + wander(11, 13)).toFixed(1)},${(wander(3, 5) - 2).toFixed(2)},${wander(5, 9).toFixed(2)},${wander(7, 8).toFixed(2)},${(150 + wander(13, 31)).toFixed(1)},${wander(17, 23).toFixed(1)},${clock},`,
    );
    if (lines.length === 10_000) {
      writeSync(output, `${lines.join("\n")}\n`);
      lines = [];
    }
  }
  writeSync(output, lines.join("\n"));
  closeSync(output);
}

interface Reading {
  readonly rows: number;
  readonly seconds: number;
  readonly megabytes: number;
}

function read(who: string): Reading {
  const { stdout, stderr, status } = spawnSync(process.execPath, [program, who, file], { encoding: "utf8" });
  if (status !== 0) throw new Error(`${who}: ${stderr}`);
  const reading: Reading = JSON.parse(stdout);
  if (reading.rows !== ROWS) throw new Error(`${who} saw ${reading.rows} rows.`);
  return reading;
}

try {
  writeSeason();
  const contenders = ["ours", "ours, a player", "ours, each", "ours, all", "csv-parse", "duckdb"];
  const readings = new Map<string, Reading[]>(contenders.map((who) => [who, []]));
  for (let run = 0; run < RUNS; run++) for (const who of contenders) readings.get(who)?.push(read(who));
  const speed = (who: string) => median((readings.get(who) ?? []).map(({ rows, seconds }) => rows / seconds));
  const memory = (who: string) => Math.max(...(readings.get(who) ?? []).map(({ megabytes }) => megabytes));
  for (const who of contenders) {
    console.log(
      `${who.padEnd(16)} ${Math.round(speed(who)).toLocaleString("en").padStart(12)} rows/s   at most ${memory(who).toFixed(0).padStart(4)} MB`,
    );
  }
  const ratio = speed("ours") / speed("csv-parse");
  console.log(
    `against the plain reader   ratio ${ratio.toFixed(2)}   must ≥ 0.5: ${ratio >= 0.5 ? "holds" : "DOES NOT HOLD"}`,
  );
  console.log(`against the engine         ratio ${(speed("ours") / speed("duckdb")).toFixed(2)}`);
  console.log(
    `every shot kept            ratio ${(speed("ours, all") / speed("csv-parse")).toFixed(2)} of the plain reader`,
  );
  const seconds = (who: string) => median((readings.get(who) ?? []).map((reading) => reading.seconds));
  console.log(
    `sessions of a player, of everybody   ${seconds("ours, a player").toFixed(1)} s, ${seconds("ours, each").toFixed(1)} s; a day of a player alone ${seconds("ours").toFixed(1)} s`,
  );
  const most = Math.max(...["ours", "ours, a player", "ours, each"].map(memory));
  console.log(
    `memory                     ${most.toFixed(0)} MB   must < 250: ${most < 250 ? "holds" : "DOES NOT HOLD"}`,
  );
} finally {
  rmSync(folder, { recursive: true });
}
