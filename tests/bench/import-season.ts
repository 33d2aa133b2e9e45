/** One reading of a season's export, in a process of its own: `node import-season.ts WHO FILE`. Prints what it saw as JSON. */
import { createReadStream } from "node:fs";
import { parse } from "csv-parse";
import { importFiles } from "../../server/import/import-files.ts";
import { dataFilesOnDisk } from "../../server/node/data-files.ts";
import type { Column, ScoringInput } from "../../shared/plan-model.ts";
import { column, metricColumn, NOWHERE, scoringInput, source } from "../support/scoring-input.ts";
import { peerFile } from "./peers.ts";

const [, , who = "", file = ""] = process.argv;

/** Who practised when, in the season's export. */
const PLAYERS = Array.from({ length: 40 }, (_, place) => `P-${String(place + 1).padStart(2, "0")}`);
const DAYS = Array.from({ length: 250 }, (_, place) =>
  new Date(Date.UTC(2026, 0, 1 + place)).toISOString().slice(0, 10),
);

/** The columns of the season's export; `split`: only one player's day is taken. */
function season(split: boolean, name = "P-07", date = "2026-03-14"): ScoringInput {
  const columns: Column[] = [
    ...(split
      ? [column("Player", { kind: "player", spellings: [] }), column("Date", { kind: "date", order: null })]
      : []),
    column("Club", { kind: "club", spellings: [] }),
    column("Club speed (mph)", metricColumn("club-speed", "mph")),
    column("Ball speed (mph)", metricColumn("ball-speed", "mph")),
    column("Attack (deg)", metricColumn("attack-angle", "°", "up")),
    column("Path (deg)", metricColumn("club-path", "°", "right")),
    column("Face (deg)", metricColumn("face-angle", "°", "right")),
    column("Carry (yd)", metricColumn("carry", "yd")),
    column("Side (yd)", metricColumn("offline", "yd", "right")),
  ];
  return scoringInput({
    sources: [source(columns)],
    player: { name },
    session: {
      player: name,
      date,
      data: [{ path: file, source: "Bay table", location: { ...NOWHERE, file: "/season.drill" } }],
    },
    plan: {},
  });
}

const readers: Record<string, () => Promise<number>> = {
  async ours() {
    const data = await importFiles(season(true), dataFilesOnDisk("/"));
    const { shots = 0, others = 0 } = data.files[0] ?? {};
    if (shots === 0 || data.findings.length > 0) throw new Error(JSON.stringify(data.findings.slice(0, 3)));
    return shots + others;
  },
  /** One session that takes every row: all shots are kept, so memory grows with them. */
  async "ours, all"() {
    const data = await importFiles(season(false), dataFilesOnDisk("/"));
    return data.shots.length;
  },
  "ours, a player": () => sessions(["P-07"]),
  "ours, each": () => sessions(PLAYERS),
  async "csv-parse"() {
    let rows = -1;
    let carry = 0;
    for await (const record of createReadStream(file, { highWaterMark: 1 << 18 }).pipe(parse())) {
      rows++;
      if (rows > 0) carry += Number((record as string[])[8]);
    }
    if (!Number.isFinite(carry)) throw new Error("The carries do not add up.");
    return rows;
  },
  async duckdb() {
    const { DuckDBInstance } = await import(peerFile("@duckdb/node-api"));
    const connection = await (await DuckDBInstance.create(":memory:")).connect();
    const result = await connection.runAndReadAll(
      `select count(*), avg("Carry (yd)") filter (Player = 'P-07' and Date = '2026-03-14') from read_csv('${file}')`,
    );
    return Number(result.getRows()[0][0]);
  },
};

/** Every session of these players, one after the other, each with its own shots. How many rows of the table were seen. */
async function sessions(players: readonly string[]): Promise<number> {
  const dataFiles = dataFilesOnDisk("/");
  let own = 0;
  let seen = 0;
  for (const date of DAYS)
    for (const player of players) {
      const { files, shots } = await importFiles(season(true, player, date), dataFiles);
      own += shots.length;
      seen = shots.length + (files[0]?.others ?? 0);
    }
  if (own * PLAYERS.length !== seen * players.length) throw new Error(`${own} shots of ${seen} rows`);
  return seen;
}

const start = performance.now();
const rows = (await readers[who]?.()) ?? 0;
const seconds = (performance.now() - start) / 1000;
const megabytes = process.resourceUsage().maxRSS / 1024;
console.log(JSON.stringify({ rows, seconds, megabytes }));
